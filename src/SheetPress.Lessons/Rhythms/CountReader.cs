using System.Collections.Immutable;
using System.Globalization;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>
/// Reads a rhythm that is counted: "1 &amp; 2 &amp; 3 e &amp; a 4". A syllable starts a note that lasts until the next one; a syllable in round
/// brackets is silent, "1 (2) 3 4"; bars are parted by "|", or a new one starts at "1". Marks follow a colon: "1:thumb &amp;:ghost".
/// A syllable other than a number falls on its first place behind the one before it. In compound meters the dotted beat is counted
/// ("1 la li 2 la li"), or every eighth once a number is higher than there are dotted beats. Triplets of sixteenths are counted by the
/// half beat, "1 trip let &amp; trip let", in compound meters by the eighth, "1 trip let la trip let li"; the sixteenths of a triplet with "ta", "1 ta trip ta let ta".
/// </summary>
/// <param name="meter">The meter it is for.</param>
/// <param name="bag">Where problems go.</param>
internal sealed class CountReader(Meter meter, DiagnosticBag bag)
{
    private const int MaximumStrokes = 512;

    private readonly List<Count> _counts = [];
    private Fraction _beat;
    private bool _isCompound;
    private BeatDivision _division;
    private Fraction _barStart;
    private Fraction? _last;

    private sealed record Count(Fraction At, bool IsSilent, string Syllable, StrokeMarks Marks);

    /// <summary>The pattern; null with the reasons reported.</summary>
    public RhythmPattern? Read(LocatedText text)
    {
        var words = RhythmWords.Of(text);
        _isCompound = meter.IsCompound && HighestNumber(words) <= meter.Groups.Length;
        _beat = _isCompound ? meter.UnitLength * 3 : meter.UnitLength;
        var fine = true;
        for (var i = 0; i < words.Length; i++)
        {
            if (i == 0 || BeginsBeat(words[i])) _division = DivisionFrom(words, i);
            if (words[i].Value == "|") fine &= NextBar(words[i]);
            else fine &= ReadWord(words[i]);
            if (_counts.Count > MaximumStrokes)
            {
                bag.Add(text.Span, RhythmProblems.RhythmTooLong());
                return null;
            }
        }
        if (_counts.Count == 0)
        {
            if (fine) bag.Add(text.Span, RhythmProblems.EmptyRhythm());
            return null;
        }
        if (_last is not null) _barStart += meter.MeasureLength;
        return fine ? Build(_barStart) : null;
    }

    private bool NextBar(LocatedText word)
    {
        if (_last is null && _counts.Count == 0) return true;
        if (_last is null)
        {
            bag.Add(word.Span, RhythmProblems.EmptyRhythmBar());
            return false;
        }
        _barStart += meter.MeasureLength;
        _last = null;
        return true;
    }

    private bool ReadWord(LocatedText word)
    {
        var colon = word.Value.IndexOf(':', StringComparison.Ordinal);
        StrokeMarks? marks = default(StrokeMarks);
        if (colon >= 0)
        {
            marks = MarkWords.Read(word.Slice(colon + 1, word.Length - colon - 1), bag);
            word = word.Slice(0, colon);
        }
        var (name, isSilent) = Syllable(word.Value);
        if (Place(name, word) is not { } at || marks is null) return false;
        _last = at;
        _counts.Add(new Count(_barStart + at, isSilent, name, marks.Value));
        return true;
    }

    private static (string Name, bool IsSilent) Syllable(string word)
    {
        var isSilent = word.StartsWith('(') && word.EndsWith(')') && word.Length > 2;
        var name = (isSilent ? word[1..^1] : word).ToLowerInvariant();
        return (name is "and" or "+" ? "&" : name, isSilent);
    }

    private static string NameOf(LocatedText word) => Syllable(word.Value.Split(':')[0]).Name;

    private static bool BeginsBeat(LocatedText word) => NameOf(word) is "|" or [>= '0' and <= '9', ..];

    // How the beat is divided that begins with a word: what its other syllables mean depends on it.
    private BeatDivision DivisionFrom(ImmutableArray<LocatedText> words, int first)
    {
        var names = words.Skip(first + 1).TakeWhile(w => !BeginsBeat(w)).Select(NameOf).Append(NameOf(words[first])).ToHashSet();
        var hasTriplet = names.Contains("trip") || names.Contains("let");
        // Without a syllable for another third, "1 trip let" are the thirds themselves.
        if (_isCompound) return hasTriplet && names.Overlaps(["la", "li", "&", "a"]) ? BeatDivision.TripletThirds : BeatDivision.Dotted;
        if (!hasTriplet) return BeatDivision.Halves;
        return names.Contains("&") ? BeatDivision.TripletHalves : BeatDivision.Triplet;
    }

    // Where a syllable falls in its bar; null with the reason reported.
    private Fraction? Place(string name, LocatedText word)
    {
        if (name.Length > 0 && char.IsAsciiDigit(name[0])) return PlaceOfNumber(name, word);
        var places = Counting.PlacesOf(name, _division);
        if (places.IsEmpty)
        {
            bag.Add(word.Span, name is "-" or "rest" or "r" ? RhythmProblems.SilentCount() : RhythmProblems.UnknownSyllable(word.Value, NearestWord.Find(name, Counting.Syllables)));
            return null;
        }
        var beat = _last is { } last ? (int)(last / _beat).Floor : 0;
        for (; _beat * beat < meter.MeasureLength; beat++)
        {
            foreach (var place in places)
            {
                var at = _beat * (beat + place);
                if ((_last is null || at > _last) && at < meter.MeasureLength) return at;
            }
        }
        bag.Add(word.Span, RhythmProblems.CountPastBar(word.Value, meter.ToString()));
        return null;
    }

    private Fraction? PlaceOfNumber(string name, LocatedText word)
    {
        var beats = (int)(meter.MeasureLength / _beat).Floor;
        if (!int.TryParse(name, NumberStyles.None, CultureInfo.InvariantCulture, out var number) || number < 1 || number > beats)
        {
            bag.Add(word.Span, RhythmProblems.CountTooHigh(name, meter.ToString(), beats));
            return null;
        }
        var at = _beat * (number - 1);
        if (_last is null || at > _last) return at;
        if (number == 1)
        {
            _barStart += meter.MeasureLength;
            return at;
        }
        bag.Add(word.Span, RhythmProblems.CountOutOfOrder(name));
        return null;
    }

    private static int HighestNumber(ImmutableArray<LocatedText> words)
    {
        var highest = 0;
        foreach (var word in words)
        {
            if (int.TryParse(NameOf(word), NumberStyles.None, CultureInfo.InvariantCulture, out var number)) highest = Math.Max(highest, number);
        }
        return highest;
    }

    private RhythmPattern Build(Fraction length)
    {
        var cells = ImmutableArray.CreateBuilder<RhythmCell>(_counts.Count + 1);
        if (_counts[0].At > Fraction.Zero) cells.Add(new RhythmCell { Start = Fraction.Zero, Duration = _counts[0].At, IsRest = true });
        for (var i = 0; i < _counts.Count; i++)
        {
            var count = _counts[i];
            var end = i + 1 < _counts.Count ? _counts[i + 1].At : length;
            var cell = new RhythmCell { Start = count.At, Duration = end - count.At, IsRest = count.IsSilent, Count = count.Syllable };
            cells.Add(cell.With(count.Marks));
        }
        return new RhythmPattern(cells.ToImmutable(), length);
    }
}
