using System.Collections.Immutable;
using System.Globalization;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>Reads where on the neck an exercise is to be played.</summary>
/// <param name="instrument">The instrument the lesson is written for.</param>
/// <param name="bag">Where problems go.</param>
internal sealed class NeckReader(Instrument instrument, DiagnosticBag bag)
{
    /// <summary>What the author asks for.</summary>
    public NeckRequest Read(FieldReader fields)
    {
        var range = fields.JoinedText("range", ' ') is { } text ? Range(text, "range") : null;
        return new NeckRequest
        {
            Position = fields.Number("position", 1, instrument.PlayableFrets),
            LowestFret = range?.From,
            HighestFret = range?.To,
            Strings = Strings(fields),
            OpenStrings = fields.Flag("open-strings"),
        };
    }

    /// <summary>A range of frets, "5-9" or "5 to 9"; null with the reason reported.</summary>
    public (int From, int To)? Range(LocatedText text, string name)
    {
        text = text.Trim();
        var numbers = new List<int>();
        var rest = text.Value.Replace(" to ", "-", StringComparison.OrdinalIgnoreCase).Replace('–', '-').Replace(',', '-').Replace(' ', '-');
        foreach (var part in rest.Split('-', StringSplitOptions.RemoveEmptyEntries))
        {
            if (int.TryParse(part, NumberStyles.None, CultureInfo.InvariantCulture, out var number)) numbers.Add(number);
            else numbers.AddRange([-1, -1, -1]);
        }
        if (numbers.Count != 2 || numbers[0] > numbers[1])
        {
            bag.Add(text.Span, ExerciseProblems.BadRange(name));
            return null;
        }
        if (numbers[1] <= instrument.PlayableFrets) return (numbers[0], numbers[1]);
        bag.Add(text.Span, ExerciseProblems.FretOffNeck(numbers[1], instrument.PlayableFrets));
        return null;
    }

    /// <summary>A place "string:fret" on the neck; null with the reason reported.</summary>
    public FretPosition? Place(LocatedText text)
    {
        var colon = text.Value.IndexOf(':', StringComparison.Ordinal);
        if (colon < 1 || !Number(text.Value[..colon], out var stringNumber) || !Number(text.Value[(colon + 1)..], out var fret))
        {
            bag.Add(text.Span, ExerciseProblems.BadPlace(text.Value));
            return null;
        }
        if (stringNumber < 1 || stringNumber > instrument.StringCount) bag.Add(text.SpanOf(0, colon), ExerciseProblems.NoSuchString(stringNumber, instrument.StringCount));
        else if (fret > instrument.PlayableFrets) bag.Add(text.SpanOf(colon + 1, text.Length - colon - 1), ExerciseProblems.FretOffNeck(fret, instrument.PlayableFrets));
        else return new FretPosition(stringNumber, fret);
        return null;
    }

    private ImmutableArray<int> Strings(FieldReader fields)
    {
        var strings = new SortedSet<int>();
        foreach (var word in fields.Words("strings"))
        {
            var ends = word.Value.Split('-', '–');
            if (ends.Length > 2 || !Number(ends[0], out var first) || !Number(ends[^1], out var last))
            {
                bag.Add(word.Span, ExerciseProblems.BadStrings(word.Value));
                continue;
            }
            var (low, high) = (Math.Min(first, last), Math.Max(first, last));
            if (low < 1 || high > instrument.StringCount)
            {
                bag.Add(word.Span, ExerciseProblems.NoSuchString(low < 1 ? low : high, instrument.StringCount));
                continue;
            }
            for (var n = low; n <= high; n++) strings.Add(n);
        }
        return [.. strings];
    }

    private static bool Number(string text, out int number) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out number) && number < 1000;
}
