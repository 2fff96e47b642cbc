using System.Collections.Immutable;
using System.Globalization;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>
/// Reads a rhythm of note values. In words: "quarters" or "dotted quarters" fill the bar; "half, quarter, 2 eighths", "eighth rest",
/// "triplet eighth", "quarter + eighth" (tied). In letters: w h q e s t from whole to thirty-second, a point behind for a dot, a number
/// behind for a tuplet (e3 is one of three in the time of two, s5 of five in the time of four), r in front for a rest: "q. e h",
/// "e3 e3 e3", "q rq". Marks follow a colon: "e:ghost", "s:thumb:accent". "|" parts bars and lets each be checked.
/// </summary>
/// <param name="meter">The meter it is for.</param>
/// <param name="bag">Where problems go.</param>
internal sealed class ValueReader(Meter meter, DiagnosticBag bag)
{
    private const int MaximumStrokes = 512;
    private const int MaximumBars = 64;

    private readonly List<Value> _values = [];
    private bool _fine = true;

    private sealed record Value(Fraction Duration, int Tuplet, bool IsRest, StrokeMarks Marks, bool IsTied, int Bar, SourceSpan Span);

    /// <summary>The pattern; null with the reasons reported.</summary>
    public RhythmPattern? Read(LocatedText text)
    {
        var words = RhythmWords.Of(text);
        if (Fill(words) is { } fill) return FillBar(fill, text);
        var bar = 0;
        var barSpans = new List<SourceSpan>();
        var tie = false;
        LocatedText? tieWord = null;
        for (var i = 0; i < words.Length;)
        {
            if (words[i].Value == "|")
            {
                if (_values.Count > 0 && _values[^1].Bar == bar) bar++;
                else if (_values.Count > 0) Report(words[i].Span, RhythmProblems.EmptyRhythmBar());
                i++;
                continue;
            }
            if (words[i].Value == "+")
            {
                if (_values.Count == 0 || tie) Report(words[i].Span, RhythmProblems.TieToNothing());
                tie = true;
                tieWord = words[i];
                i++;
                continue;
            }
            var first = i;
            var phrase = NotePhrase.Read(words, ref i, bag);
            if (phrase is null)
            {
                _fine = false;
                tie = false;
                continue;
            }
            var span = new SourceSpan(words[first].Span.Start, words[i - 1].Span.End);
            if (phrase.IsFill)
            {
                Report(span, RhythmProblems.FillAmongOthers());
                continue;
            }
            if (tie && (phrase.IsRest || (_values.Count > 0 && _values[^1].IsRest))) Report(tieWord!.Span, RhythmProblems.TieToRest());
            for (var n = 0; n < phrase.Count; n++)
            {
                _values.Add(new Value(phrase.Value.Duration, phrase.Tuplet, phrase.IsRest, phrase.Marks, tie && n == 0, bar, span));
            }
            tie = false;
            if (_values.Count > MaximumStrokes)
            {
                bag.Add(text.Span, RhythmProblems.RhythmTooLong());
                return null;
            }
        }
        if (tie) Report(tieWord!.Span, RhythmProblems.TieToNothing());
        if (_values.Count == 0)
        {
            if (_fine) bag.Add(text.Span, RhythmProblems.EmptyRhythm());
            return null;
        }
        if (_fine) CheckTuplets();
        if (_fine) CheckBars(text);
        return _fine ? Build() : null;
    }

    // A single plural: "eighths", "dotted quarters", "triplets".
    private static NotePhrase? Fill(ImmutableArray<LocatedText> words)
    {
        var at = 0;
        if (words.IsEmpty || NotePhrase.Read(words, ref at, null) is not { IsFill: true } phrase) return null;
        return at == words.Length ? phrase : null;
    }

    private RhythmPattern? FillBar(NotePhrase fill, LocatedText text)
    {
        var duration = fill.Value.Duration;
        var count = fill.Tuplet > 0 ? fill.Tuplet : 1;
        var length = duration * count;
        if (!meter.MeasureLength.IsMultipleOf(length))
        {
            bag.Add(text.Span, RhythmProblems.DoesNotFill(text.Value.Trim(), meter.ToString()));
            return null;
        }
        var cells = Enumerable.Range(0, count).Select(n => new RhythmCell { Start = duration * n, Duration = duration }.With(fill.Marks));
        return new RhythmPattern([.. cells], length);
    }

    private void CheckTuplets()
    {
        var at = Fraction.Zero;
        Value? open = null;
        foreach (var value in _values)
        {
            var isWhole = IsPowerOfTwo(at.Denominator);
            if (!isWhole && open is not null && value.Tuplet != open.Tuplet)
            {
                Report(open.Span, RhythmProblems.TupletOpen(open.Tuplet));
                return;
            }
            if (isWhole) open = value.Tuplet > 0 ? value : null;
            at += value.Duration;
        }
        if (open is not null && !IsPowerOfTwo(at.Denominator)) Report(open.Span, RhythmProblems.TupletOpen(open.Tuplet));
    }

    private void CheckBars(LocatedText text)
    {
        var bars = _values[^1].Bar + 1;
        if (bars == 1)
        {
            var sum = _values.Aggregate(Fraction.Zero, (s, v) => s + v.Duration);
            var whole = sum / meter.MeasureLength;
            if (whole.Numerator != 1 && whole.Denominator != 1) Report(text.Trim().Span, Amount(sum));
            else if (whole > MaximumBars) Report(text.Trim().Span, RhythmProblems.RhythmTooLong());
            return;
        }
        for (var bar = 0; bar < bars; bar++)
        {
            var values = _values.Where(v => v.Bar == bar).ToArray();
            var sum = values.Aggregate(Fraction.Zero, (s, v) => s + v.Duration);
            if (sum != meter.MeasureLength) Report(new SourceSpan(values[0].Span.Start, values[^1].Span.End), Amount(sum));
        }
    }

    private Problem Amount(Fraction sum) => sum > meter.MeasureLength
        ? RhythmProblems.RhythmTooFull(Beats(sum), Beats(meter.MeasureLength), meter.ToString())
        : RhythmProblems.RhythmTooShort(Beats(sum), Beats(meter.MeasureLength), meter.ToString());

    private string Beats(Fraction quarters)
    {
        var beats = quarters / meter.UnitLength;
        if (beats.Denominator == 1) return beats.Numerator.ToString(CultureInfo.InvariantCulture);
        var part = beats - new Fraction(beats.Floor);
        return beats.Floor == 0 ? part.ToString() : string.Create(CultureInfo.InvariantCulture, $"{beats.Floor} {part}");
    }

    private RhythmPattern Build()
    {
        var cells = ImmutableArray.CreateBuilder<RhythmCell>(_values.Count);
        var at = Fraction.Zero;
        foreach (var value in _values)
        {
            if (value.IsTied) cells[^1] = (cells[^1] with { Duration = cells[^1].Duration + value.Duration }).With(value.Marks);
            else cells.Add(new RhythmCell { Start = at, Duration = value.Duration, IsRest = value.IsRest }.With(value.Marks));
            at += value.Duration;
        }
        return new RhythmPattern(cells.ToImmutable(), at);
    }

    private void Report(SourceSpan span, Problem problem)
    {
        _fine = false;
        bag.Add(span, problem);
    }

    private static bool IsPowerOfTwo(long number) => (number & (number - 1)) == 0;
}
