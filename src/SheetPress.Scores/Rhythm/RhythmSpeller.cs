using System.Collections.Immutable;

namespace SheetPress.Scores;

/// <summary>A sounding stretch within one measure.</summary>
/// <param name="Start">Start in quarter notes from the start of the measure.</param>
/// <param name="End">End in quarter notes from the start of the measure, after the start.</param>
public readonly record struct SoundingSpan(Fraction Start, Fraction End);

/// <summary>One written value of a spelled rhythm.</summary>
/// <param name="Onset">Start in quarter notes from the start of the measure.</param>
/// <param name="Value">The written value; its duration is exact, tuplets included.</param>
/// <param name="Span">Index of the sounding span it belongs to; -1 for a rest. Values of one span that follow each other are tied.</param>
public readonly record struct SpelledValue(Fraction Onset, NoteValue Value, int Span)
{
    /// <summary>Whether it is a rest.</summary>
    public bool IsRest => Span < 0;
}

/// <summary>A measure's rhythm as it is written.</summary>
/// <param name="Values">Values in order, without gaps, filling the measure.</param>
/// <param name="Tuplets">Tuplets by indexes into the values, outer ones before those nested in them.</param>
public sealed record SpelledRhythm(ImmutableArray<SpelledValue> Values, ImmutableArray<TupletSpan> Tuplets);

/// <summary>
/// Writes sounding time as note values: cut so that the beats of the meter show, joined by ties, gaps filled with rests, tuplets
/// of 3, 5, 6 and 7 found (nested once). Rules of the engraving handbooks (Read, Gould), from memory.
/// </summary>
public static class RhythmSpeller
{
    /// <summary>Spells one measure.</summary>
    /// <param name="meter">Meter in force.</param>
    /// <param name="offset">Where in a full measure this one starts, in quarter notes: above zero for a pickup or the second part of a divided measure.</param>
    /// <param name="length">Length of the measure in quarter notes; offset and length together are at most a full measure.</param>
    /// <param name="spans">Sounding stretches in order, not overlapping, inside the measure.</param>
    /// <exception cref="ArgumentException">The spans overlap or leave the measure.</exception>
    /// <exception cref="UnwritableRhythmException">A time fits no value down to a sixty-fourth note and no tuplet.</exception>
    public static SpelledRhythm Spell(Meter meter, Fraction offset, Fraction length, IReadOnlyList<SoundingSpan> spans) =>
        Spell(meter, MetricNode.OfMeter(meter), offset, length, spans);

    /// <summary>The same with the tree of the meter at hand.</summary>
    internal static SpelledRhythm Spell(Meter meter, MetricNode tree, Fraction offset, Fraction length, IReadOnlyList<SoundingSpan> spans)
    {
        if (offset < Fraction.Zero || length <= Fraction.Zero || offset + length > meter.MeasureLength) throw new ArgumentException($"A measure of {length} quarter notes at {offset} does not lie within {meter}.", nameof(length));
        var stretches = Tile(spans, offset, length);
        var writer = new Writer(offset);
        writer.Write(tree, stretches, origin: Fraction.Zero, actual: 1, normal: 1, level: 0);
        return writer.ToRhythm();
    }

    private static List<Stretch> Tile(IReadOnlyList<SoundingSpan> spans, Fraction offset, Fraction length)
    {
        var stretches = new List<Stretch>(spans.Count * 2);
        var at = Fraction.Zero;
        for (var i = 0; i < spans.Count; i++)
        {
            var span = spans[i];
            if (span.Start < at || span.End <= span.Start || span.End > length) throw new ArgumentException($"The stretch from {span.Start} to {span.End} overlaps another or leaves the measure of {length} quarter notes.", nameof(spans));
            if (span.Start > at) stretches.Add(new Stretch(at + offset, span.Start + offset, -1));
            stretches.Add(new Stretch(span.Start + offset, span.End + offset, i));
            at = span.End;
        }
        if (at < length) stretches.Add(new Stretch(at + offset, length + offset, -1));
        return stretches;
    }

    private sealed class Writer(Fraction offset)
    {
        private readonly ImmutableArray<SpelledValue>.Builder _values = ImmutableArray.CreateBuilder<SpelledValue>();
        private readonly ImmutableArray<TupletSpan>.Builder _tuplets = ImmutableArray.CreateBuilder<TupletSpan>();
        private readonly List<(Fraction Start, NoteValue Value)> _pieces = [];

        public SpelledRhythm ToRhythm() => new(_values.ToImmutable(), _tuplets.ToImmutable());

        // Times of the tree are written times; origin and ratio bring them back to sounding time in the full measure.
        public void Write(MetricNode tree, List<Stretch> stretches, Fraction origin, int actual, int normal, int level)
        {
            var plans = TupletFinder.Find(tree, stretches, mayNest: level == 0)
                ?? throw new UnwritableRhythmException("The rhythm has times that fit neither note values down to sixty-fourths nor tuplets of 3, 5, 6 or 7.");
            var at = stretches[0].Start;
            foreach (var plan in plans)
            {
                WritePlain(tree, stretches, at, plan.Start, origin, actual, normal);
                var slot = _tuplets.Count;
                var first = _values.Count;
                _tuplets.Add(default);
                var start = origin + (plan.Start * new Fraction(normal, actual));
                Write(plan.ToTree(), plan.Inside(stretches), start, actual * plan.Actual, normal * plan.Normal, level + 1);
                _tuplets[slot] = new TupletSpan(first, _values.Count - 1, plan.Actual, plan.Normal, level);
                at = plan.End;
            }
            WritePlain(tree, stretches, at, stretches[^1].End, origin, actual, normal);
        }

        private void WritePlain(MetricNode tree, List<Stretch> stretches, Fraction from, Fraction to, Fraction origin, int actual, int normal)
        {
            foreach (var stretch in stretches)
            {
                var start = Fraction.Max(stretch.Start, from);
                var end = Fraction.Min(stretch.End, to);
                if (start >= end) continue;
                _pieces.Clear();
                ValueSpeller.Spell(tree, start, end, stretch.IsRest, _pieces);
                foreach (var (pieceStart, value) in _pieces)
                {
                    var sounding = actual == 1 ? pieceStart : origin + (pieceStart * new Fraction(normal, actual));
                    _values.Add(new SpelledValue(sounding - offset, value.InTuplet(actual, normal), stretch.Source));
                }
            }
        }
    }
}
