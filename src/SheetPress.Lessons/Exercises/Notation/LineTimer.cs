using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>A bar that a written line has to fill.</summary>
/// <param name="Length">Quarter notes.</param>
/// <param name="Meter">Its meter, for messages.</param>
/// <param name="Strokes">The strokes of the exercise's rhythm in it, from the start of the bar; empty when it has none.</param>
internal readonly record struct LineBar(Fraction Length, Meter Meter, ImmutableArray<RhythmCell> Strokes);

/// <summary>Gives the notes of a written line their times and checks every bar.</summary>
internal sealed class LineTimer(DiagnosticBag bag)
{
    private readonly List<WrittenNote> _notes = [];
    private readonly List<WrittenChange> _changes = [];
    private ValueToken? _value;
    private Fraction _at;

    /// <summary>The line with its times; null with the reasons reported.</summary>
    /// <param name="bars">Words by bar.</param>
    /// <param name="frame">The bars to fill; a line may have fewer.</param>
    /// <param name="usesRhythm">Whether the strokes of the frame are to be used.</param>
    public WrittenLine? Time(List<List<LineToken>> bars, IReadOnlyList<LineBar> frame, bool usesRhythm)
    {
        var problems = bag.Items.Count;
        var hasValues = bars.Exists(b => b.Exists(t => t is ValueToken));
        for (var i = 0; i < bars.Count && i < frame.Count; i++)
        {
            var start = _at;
            if (bars[i].Count == 0) continue;
            var words = TakeChanges(bars[i], frame[i].Meter);
            if (words.Count == 0) bag.Add(bars[i][^1].Word.Span, LineProblems.EmptyBar(i + 1));
            else if (words.Find(t => t is RepeatBarToken) is RepeatBarToken repeat) RepeatBar(words, repeat, i, frame);
            else if (hasValues) ByValues(words, i, frame[i]);
            else if (usesRhythm) ByRhythm(words, i, frame[i]);
            else ByShares(words, i, frame[i]);
            _at = start + frame[i].Length;
        }
        return bag.Items.Count > problems ? null : new WrittenLine(_notes, _at, Math.Min(bars.Count, frame.Count)) { Changes = _changes };
    }

    /// <summary>
    /// A line that has only its own values to go by: of one bar it may be any part of a bar, of several each has to fill its meter.
    /// </summary>
    public WrittenLine? TimeByValues(List<List<LineToken>> bars, Meter meter)
    {
        if (bars.Count > 1) return Time(bars, [.. bars.Select(_ => new LineBar(meter.MeasureLength, meter, []))], usesRhythm: false);
        var problems = bag.Items.Count;
        foreach (var token in bars[0])
        {
            if (token is ValueToken value) _value = value;
            else if (token is RepeatBarToken) bag.Add(token.Word.Span, LineProblems.NothingToRepeat());
            else if (_value is { } current) Put(token, current.Value.Duration, null);
            else bag.Add(token.Word.Span, LineProblems.MissingValue());
        }
        if (_at > meter.MeasureLength) bag.Add(SpanOf(bars[0]), LineProblems.BarLength(1, _at, meter.MeasureLength, meter));
        return bag.Items.Count > problems ? null : new WrittenLine(_notes, _at, 1);
    }

    // Notes the changes at the front of a bar and gives the words behind them.
    private List<LineToken> TakeChanges(List<LineToken> bar, Meter meter)
    {
        var words = new List<LineToken>(bar.Count);
        var (hasClef, hasTempo) = (false, false);
        foreach (var token in bar)
        {
            if (token is not (ClefToken or TempoToken)) words.Add(token);
            else if (words.Count > 0) bag.Add(token.Word.Span, LineProblems.ChangeBehindNote(token.Word.Value));
            else if (token is ClefToken ? hasClef : hasTempo) bag.Add(token.Word.Span, ProgressionProblems.ChangeTwice(token is ClefToken ? "clef" : "tempo"));
            else if (token is ClefToken clef) _changes.Add(new WrittenChange(_at, token.Word.Span) { IsBass = clef.IsBass });
            else if (TempoReader.ReadChange(((TempoToken)token).Tempo, meter, bag) is var (tempo, equation) && (tempo is not null || equation is not null)) _changes.Add(new WrittenChange(_at, token.Word.Span) { Tempo = tempo, Equation = equation });
            hasClef |= token is ClefToken;
            hasTempo |= token is TempoToken;
        }
        return words;
    }

    private void RepeatBar(List<LineToken> tokens, RepeatBarToken repeat, int bar, IReadOnlyList<LineBar> frame)
    {
        if (tokens.Count > 1) bag.Add(repeat.Word.Span, LineProblems.RepeatAmongNotes(repeat.Word.Value));
        else if (bar == 0) bag.Add(repeat.Word.Span, LineProblems.NothingToRepeat());
        else if (frame[bar].Length != frame[bar - 1].Length) bag.Add(repeat.Word.Span, LineProblems.BarLength(bar + 1, frame[bar - 1].Length, frame[bar].Length, frame[bar].Meter));
        else
        {
            var from = _at - frame[bar - 1].Length;
            var end = _at;
            foreach (var note in _notes.Where(n => n.Start >= from && n.Start < end).ToArray())
            {
                // A note that runs on into this bar was one of two bars; its repeat stays within its own.
                _notes.Add(note with { Start = note.Start + frame[bar].Length, Duration = Fraction.Min(note.Duration, end - note.Start), Span = repeat.Word.Span, IsSimile = repeat.IsSimile });
            }
        }
    }

    private void ByValues(List<LineToken> tokens, int bar, LineBar frame)
    {
        var start = _at;
        var inner = new InnerTuplets();
        foreach (var token in tokens)
        {
            if (token is ValueToken value)
            {
                _value = value;
                continue;
            }
            if (_value is not { } current)
            {
                bag.Add(token.Word.Span, LineProblems.MissingValue());
                return;
            }
            if (!inner.Take(current.Phrase.InnerTuplet, current.Phrase.InnerTime, token.Word.Span)) break;
            Put(token, current.Value.Duration, null);
        }
        if (inner.Open is { } open) bag.Add(open, RhythmProblems.TupletOpen(inner.Tuplet));
        else if (_at - start != frame.Length) bag.Add(SpanOf(tokens), LineProblems.BarLength(bar + 1, _at - start, frame.Length, frame.Meter));
    }

    private void ByRhythm(List<LineToken> tokens, int bar, LineBar frame)
    {
        if (tokens.Count != frame.Strokes.Length)
        {
            bag.Add(SpanOf(tokens), LineProblems.StrokeCount(bar + 1, tokens.Count, frame.Strokes.Length));
            return;
        }
        var start = _at;
        for (var i = 0; i < tokens.Count; i++)
        {
            var cell = frame.Strokes[i];
            _at = start + cell.Start;
            Put(tokens[i], cell.Duration, cell);
        }
    }

    private void ByShares(List<LineToken> tokens, int bar, LineBar frame)
    {
        var share = frame.Length / tokens.Count;
        if (!IsWritten(share))
        {
            bag.Add(SpanOf(tokens), LineProblems.CannotShare(bar + 1, tokens.Count));
            return;
        }
        foreach (var token in tokens) Put(token, share, null);
    }

    // A binary value, plain or dotted.
    private static bool IsWritten(Fraction quarters) => (quarters.Denominator & (quarters.Denominator - 1)) == 0 && quarters.Numerator is 1 or 2 or 3 or 4 or 6;

    private void Put(LineToken token, Fraction duration, RhythmCell? cell)
    {
        switch (token)
        {
            case NoteToken note:
                var marks = cell is null ? note.Marks : cell.Marks.With(note.Marks);
                _notes.Add(new WrittenNote(_at, duration, note.Tones, marks, note.Pin, cell?.Count, note.Word.Span) { IsJoined = note.Marks.Connection != Connection.None });
                break;
            case HoldToken when _notes.Count > 0 && _notes[^1].End == _at:
                _notes[^1] = _notes[^1] with { Duration = _notes[^1].Duration + duration };
                break;
            case HoldToken:
                // At the start of a line it carries on what sounded when the line came round; over a rest it is more rest.
                if (_at == Fraction.Zero) _notes.Add(new WrittenNote(_at, duration, [], default, default, null, token.Word.Span));
                break;
        }
        _at += duration;
    }

    private static SourceSpan SpanOf(List<LineToken> tokens) => new(tokens[0].Word.Span.Start, tokens[^1].Word.Span.End);
}
