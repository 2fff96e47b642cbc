using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>
/// One pitch, one place within a chord: a shortest path sees only neighbours, so a first path may finger a repeated tone in two ways.
/// The place that the first path uses most within each chord becomes dearer to leave for a second path.
/// </summary>
internal static class PlaceHabits
{
    private const double OtherPlace = 1.5;

    /// <summary>The grips with a surcharge on those that leave the usual place of their pitch within the chord.</summary>
    public static ImmutableArray<Grip>[] Apply(ImmutableArray<LineNote> notes, ImmutableArray<Grip>[] grips, Grip[] path, ImmutableArray<Fraction> chordStarts)
    {
        var usual = new Dictionary<(int Chord, int Midi), FretPosition>();
        var uses = new Dictionary<(int Chord, int Midi, FretPosition Place), int>();
        var chords = new int[notes.Length];
        for (var n = 0; n < notes.Length; n++)
        {
            chords[n] = ChordTimes.IndexAt(chordStarts, notes[n].Start);
            if (notes[n].Tones.Length > 1) continue;
            var (midi, place) = (notes[n].Tones[0].Pitch.MidiNumber, path[n].Positions[0]);
            var count = uses[(chords[n], midi, place)] = uses.GetValueOrDefault((chords[n], midi, place)) + 1;
            if (!usual.TryGetValue((chords[n], midi), out var best) || IsMoreUsual(place, count, best, uses[(chords[n], midi, best)])) usual[(chords[n], midi)] = place;
        }

        var habits = new ImmutableArray<Grip>[grips.Length];
        for (var n = 0; n < grips.Length; n++)
        {
            habits[n] = notes[n].Tones.Length == 1 && usual.TryGetValue((chords[n], notes[n].Tones[0].Pitch.MidiNumber), out var place)
                ? [.. grips[n].Select(g => g.Positions[0] == place ? g : g.Dearer(OtherPlace))]
                : grips[n];
        }
        return habits;
    }

    // Used as often, a fretted place is better kept than an open string: it moves to the next chord in the same shape.
    private static bool IsMoreUsual(FretPosition place, int count, FretPosition best, int bestCount) =>
        count > bestCount || (count == bestCount && best.Fret == 0 && place.Fret > 0);
}
