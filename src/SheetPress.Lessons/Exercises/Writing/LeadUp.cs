using System.Collections.Immutable;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>How a figure goes over into the notes that lead on to the next chord.</summary>
internal static class LeadUp
{
    // A sixth: what a line may leap before a lead. Beyond it another tone of the chord, or another octave of it, lies better.
    private const int WidestLeap = 9;
    private const double LeapWeight = 0.7;
    private const double WideLeapWeight = 0.7;

    /// <summary>What a leap between two notes costs: a wide one more than in proportion.</summary>
    public static double LeapCost(Pitch from, Pitch to)
    {
        var leap = Math.Abs(to.MidiNumber - from.MidiNumber);
        return (leap * LeapWeight) + (Math.Max(0, leap - WidestLeap) * WideLeapWeight);
    }

    /// <summary>
    /// The tone of a figure that is played right before a lead: the planned one, or where that is the note the lead starts with, or
    /// more than a sixth away from it, the tone of the figure or the chord that makes the smallest leaps.
    /// </summary>
    /// <param name="figure">The figure.</param>
    /// <param name="planned">The tone whose turn it is.</param>
    /// <param name="step">The chord.</param>
    /// <param name="root">The root that the figure is counted from.</param>
    /// <param name="before">The note before.</param>
    /// <param name="after">The first note of the lead.</param>
    /// <param name="range">What can be played.</param>
    public static CellTone ToneBefore(ImmutableArray<CellTone> figure, CellTone planned, HarmonyStep step, Pitch root, Pitch before, Pitch after, NeckRange range)
    {
        var pitch = root + planned.FromRoot;
        if (!IsSameNote(pitch, after) && Math.Abs(pitch.MidiNumber - after.MidiNumber) <= WidestLeap) return planned;
        var best = planned;
        var lowest = double.MaxValue;
        foreach (var tone in figure) Try(tone, tone == planned ? 0 : 1);
        foreach (var degree in step.BasicTones) Try(CellTone.Of(degree), 2);
        return best;

        void Try(CellTone tone, double strangeness)
        {
            for (var octave = -1; octave <= 1; octave++)
            {
                var moved = tone.FromRoot + (Interval.Octave * octave);
                var candidate = root + moved;
                if (!range.CanPlay(candidate.MidiNumber) || IsSameNote(candidate, after) || candidate == before) continue;
                var cost = LeapCost(before, candidate) + (1.5 * LeapCost(candidate, after)) + (2 * range.Strain(candidate.MidiNumber)) + strangeness + (octave == 0 ? 0 : 1);
                if (cost >= lowest) continue;
                lowest = cost;
                best = new CellTone(moved, octave == 0 ? tone.Degree : tone.Degree?.Simple);
            }
        }
    }

    private static bool IsSameNote(Pitch a, Pitch b) => (a.MidiNumber - b.MidiNumber) % 12 == 0;
}
