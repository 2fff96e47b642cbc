using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Makes the progression from its written bars: who sounds when, in which key and meter.</summary>
/// <param name="rekeying">The way from the written key.</param>
/// <param name="bag">Where problems go.</param>
internal sealed class ProgressionBuilder(KeyTransposition rekeying, DiagnosticBag bag)
{
    private readonly HarmonyReader _harmony = new(rekeying, bag);
    private readonly ImmutableArray<ChordSpan>.Builder _chords = ImmutableArray.CreateBuilder<ChordSpan>();
    private readonly ImmutableArray<FrameMeasure>.Builder _measures = ImmutableArray.CreateBuilder<FrameMeasure>();

    /// <summary>The progression of some bars, at least one.</summary>
    public Progression Build(ImmutableArray<WrittenBar> bars, Key key, Meter meter)
    {
        var endings = EndingPlan.Of(bars);
        var start = Fraction.Zero;
        Tempo? first = null;
        for (var i = 0; i < bars.Length; i++)
        {
            var bar = bars[i];
            meter = bar.Meter ?? meter;
            var (tempo, equation) = bar.Tempo is { } text ? TempoReader.ReadChange(text, meter, bag) : default;
            if (i == 0)
            {
                if (equation is not null) bag.Add(bar.Tempo!.Span, ProgressionProblems.EquationAtStart());
                (first, tempo, equation) = (tempo, null, null);
            }
            if (bar.Key is { } change) key = rekeying.Move(change);
            var length = LengthOf(bar, meter);
            var firstChord = _chords.Count;
            AddChords(bar, i, start, length, meter, key);
            _measures.Add(new FrameMeasure
            {
                Meter = meter,
                Key = key,
                Length = length,
                Harmonies = [.. _chords.Skip(firstChord).Where(c => !c.IsHeld).Select(c => new HarmonyMark(c.Start - start, c.Chord))],
                Directions = DirectionsOf(bar, tempo, equation, length),
                RepeatStart = bar.RepeatStart,
                RepeatEndTimes = endings[i].Times,
                EndingStart = bar.Ending,
                EndingStop = endings[i].Stops,
                EndingClosed = endings[i].Closed,
                BreakBefore = bar.BreakBefore,
                RepeatsPrevious = i > 0 && bar.Chords.Exists(c => IsSame(c.Text.Value)),
                Barline = bar.DoubleBarline && i < bars.Length - 1 ? Barline.Double : null,
            });
            start += length;
        }
        return new Progression(_measures.ToImmutable(), _chords.ToImmutable()) { Tempo = first };
    }

    private static ImmutableArray<Direction> DirectionsOf(WrittenBar bar, Tempo? tempo, TempoEquation? equation, Fraction length)
    {
        var directions = ImmutableArray.CreateBuilder<Direction>();
        foreach (var mark in bar.StartMarks) directions.Add(new Direction(Fraction.Zero, mark.Kind, mark.Text));
        if (tempo is not null) directions.Add(Direction.OfTempo(Fraction.Zero, tempo));
        if (equation is not null) directions.Add(Direction.OfEquation(Fraction.Zero, equation));
        foreach (var mark in bar.EndMarks) directions.Add(new Direction(length, mark.Kind, mark.Text));
        return directions.ToImmutable();
    }

    private Fraction LengthOf(WrittenBar bar, Meter meter)
    {
        if (bar.Pickup is not { } beats) return meter.MeasureLength;
        var length = meter.UnitLength * beats;
        if (length < meter.MeasureLength) return length;
        bag.Add(bar.Span, ProgressionProblems.PickupTooLong(meter.ToString()));
        return meter.MeasureLength;
    }

    private void AddChords(WrittenBar bar, int index, Fraction start, Fraction length, Meter meter, Key key)
    {
        if ((bar.Chords.Find(c => IsSame(c.Text.Value)) ?? (bar.Chords is [{ Text.Value: "%" } sign] ? sign : null)) is { } word)
        {
            AddSame(bar, word, index, start, length);
            return;
        }
        var chords = ReadChords(bar, key);
        // How an unreadable bar is shared out is not worth a word.
        var durations = chords.Contains(null) ? BarShares.Equal(bar.Chords.Count, length) : BarShares.Of(bar, length, meter, bag);
        var at = start;
        for (var i = 0; i < chords.Length; i++)
        {
            var (chord, isHeld) = chords[i] ?? default;
            if (i > 0 && IsBeat(bar.Chords[i].Text.Value))
            {
                _chords[^1] = _chords[^1] with { Duration = _chords[^1].Duration + durations[i] };
                at += durations[i];
                continue;
            }
            _chords.Add(new ChordSpan(at, durations[i], chord, null, bar.Chords[i].Text.Span) { Measure = index, IsHeld = isHeld });
            at += durations[i];
        }
    }

    // The chords of a bar; an entry is null where none could be read. A null chord is "no chord".
    private (Chord? Chord, bool IsHeld)?[] ReadChords(WrittenBar bar, Key key)
    {
        var chords = new (Chord? Chord, bool IsHeld)?[bar.Chords.Count];
        for (var i = 0; i < chords.Length; i++)
        {
            var written = bar.Chords[i];
            var text = written.Text;
            if (text.Value.Equals("hold", StringComparison.OrdinalIgnoreCase) || IsBeat(text.Value))
            {
                var before = i > 0 ? chords[i - 1] : _chords.Count > 0 ? (_chords[^1].Chord, false) : null;
                if (before is { } held) chords[i] = (held.Chord, true);
                else if (i == 0) bag.Add(text.Span, ProgressionProblems.NothingToHold());
            }
            else if (text.Length == 0)
            {
                bag.Add(written.Span, ProgressionProblems.BeatsWithoutChord());
            }
            else if (HarmonyReader.IsNoChord(text.Value))
            {
                chords[i] = (null, false);
            }
            else if (text.Value[0] == '/' && (i > 0 ? chords[i - 1]?.Chord : _chords.Count > 0 ? _chords[^1].Chord : null) is { } upper && NoteName.TryParse(text.Value[1..], out var bass))
            {
                // The chord goes on over another bass.
                bass = rekeying.Move(bass);
                chords[i] = (upper with { Bass = bass == upper.Root ? null : bass }, false);
            }
            else if (_harmony.Read(text, key, i > 0 ? bar.Chords[i - 1].Text.Value : null) is { } chord)
            {
                chords[i] = (chord, false);
            }
        }
        return chords;
    }

    private void AddSame(WrittenBar bar, WrittenChord word, int index, Fraction start, Fraction length)
    {
        var before = _measures.Count > 0 ? _measures[^1] : null;
        if (bar.Chords.Count > 1) bag.Add(word.Span, ProgressionProblems.SameNotAlone());
        if (word.Beats is not null) bag.Add(word.Span, ProgressionProblems.SameWithBeats());
        if (before is null) bag.Add(word.Span, ProgressionProblems.NothingBefore());
        else if (before.Length != length) bag.Add(word.Span, ProgressionProblems.SameInOtherLength());
        if (before is null || before.Length != length)
        {
            _chords.Add(new ChordSpan(start, length, null, null, word.Span) { Measure = index });
            return;
        }
        foreach (var chord in _chords.Where(c => c.Measure == index - 1).ToArray())
        {
            _chords.Add(chord with { Start = chord.Start + before.Length, Measure = index, Span = word.Span });
        }
    }

    // A stroke or a point for each beat that the chord before goes on.
    private static bool IsBeat(string text) => text is "/" or "." or "%";

    private static bool IsSame(string text) => text.Equals("same", StringComparison.OrdinalIgnoreCase);
}
