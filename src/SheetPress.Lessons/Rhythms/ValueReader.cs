using System.Collections.Immutable;
using System.Globalization;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>
/// Reads a rhythm of note values. In words: "quarters" or "dotted quarters" fill the bar; "half, quarter, 2 eighths", "eighth rest",
/// "triplet eighth", "quarter + eighth" (tied). In letters: w h q e s t from whole to thirty-second, a point behind for a dot, a number
/// behind for a tuplet (e3 is one of three in the time of two, s5 of five in the time of four, e3in3 of three within such a triplet), r in front for a rest: "q. e h",
/// "e3 e3 e3", "q rq". Marks follow a colon: "e:ghost", "s:thumb:accent". "|" parts bars and lets each be checked.
/// </summary>
/// <param name="meter">The meter it is for.</param>
/// <param name="bag">Where problems go.</param>
internal sealed class ValueReader(Meter meter, DiagnosticBag bag)
{
    private const int MaximumStrokes = 512;
    private const int MaximumBars = 64;

    private readonly List<Value> _values = [];
    private int _bar;
    // The sign + that waits for the note it ties to.
    private LocatedText? _tie;
    private bool _fine = true;

    private sealed record Value(Fraction Duration, int Tuplet, bool IsRest, StrokeMarks Marks, bool IsTied, int Bar, SourceSpan Span, int InnerTuplet, Fraction? InnerTime);

    /// <summary>The pattern; null with the reasons reported.</summary>
    public RhythmPattern? Read(LocatedText text)
    {
        var words = RhythmWords.Of(text);
        if (Fill(words) is { } fill) return FillBar(fill, text);
        for (var at = 0; at < words.Length && _values.Count <= MaximumStrokes;)
        {
            if (words[at].Value == "|") StartBar(words[at++]);
            else if (words[at].Value == "+") StartTie(words[at++]);
            else ReadPhrase(words, ref at);
        }
        if (_tie is not null) Report(_tie.Span, RhythmProblems.TieToNothing());
        if (_values.Count > MaximumStrokes) Report(text.Trim().Span, RhythmProblems.RhythmTooLong());
        else if (_fine && _values.Count == 0) Report(text.Trim().Span, RhythmProblems.EmptyRhythm());
        if (_fine) CheckTuplets();
        if (_fine) CheckBars(text);
        return _fine ? Build() : null;
    }

    private void StartBar(LocatedText sign)
    {
        if (_values.Count == 0) return;
        if (_values[^1].Bar == _bar) _bar++;
        else Report(sign.Span, RhythmProblems.EmptyRhythmBar());
    }

    private void StartTie(LocatedText sign)
    {
        if (_values.Count == 0 || _tie is not null) Report(sign.Span, RhythmProblems.TieToNothing());
        else _tie = sign;
    }

    private void ReadPhrase(ImmutableArray<LocatedText> words, ref int at)
    {
        var tie = _tie;
        _tie = null;
        var first = at;
        var phrase = NotePhrase.Read(words, ref at, bag);
        var span = new SourceSpan(words[first].Span.Start, words[at - 1].Span.End);
        if (phrase is null)
        {
            _fine = false;
            return;
        }
        if (phrase.IsFill) Report(span, RhythmProblems.FillAmongOthers());
        if (tie is not null && (phrase.IsRest || _values[^1].IsRest)) Report(tie.Span, RhythmProblems.TieToRest());
        for (var n = 0; n < phrase.Count; n++)
        {
            _values.Add(new Value(phrase.Value.Duration, phrase.Tuplet, phrase.IsRest, phrase.Marks, tie is not null && n == 0, _bar, span, phrase.InnerTuplet, phrase.InnerTime));
        }
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
        var inner = new InnerTuplets();
        foreach (var value in _values)
        {
            if (!inner.Take(value.InnerTuplet, value.InnerTime, value.Span)) break;
            var isWhole = IsPowerOfTwo(at.Denominator);
            if (!isWhole && open is not null && value.Tuplet != open.Tuplet)
            {
                Report(open.Span, RhythmProblems.TupletOpen(open.Tuplet));
                return;
            }
            if (isWhole) open = value.Tuplet > 0 ? value : null;
            at += value.Duration;
        }
        if (inner.Open is { } span) Report(span, RhythmProblems.TupletOpen(inner.Tuplet));
        else if (open is not null && !IsPowerOfTwo(at.Denominator)) Report(open.Span, RhythmProblems.TupletOpen(open.Tuplet));
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
