using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Notes that lead into a target by step, spelled as players read them.</summary>
internal static class ApproachNotes
{
    /// <summary>A half step below: the letter below where that needs no odd spelling (B to C, D to Eb), else the simplest spelling.</summary>
    public static Pitch ChromaticBelow(Pitch target)
    {
        var leading = target - Interval.MinorSecond;
        return IsPlain(leading.Name) ? leading : Simplest(target.MidiNumber - 1, preferSharps: true);
    }

    /// <summary>A half step above: the letter above (Db to C), or the target's letter raised where the letter above would be odd (E to Eb).</summary>
    public static Pitch ChromaticAbove(Pitch target)
    {
        var upper = target + Interval.MinorSecond;
        if (IsPlain(upper.Name)) return upper;
        var raised = target + new Interval(0, 1);
        return IsPlain(raised.Name) ? raised : Simplest(target.MidiNumber + 1, preferSharps: false);
    }

    /// <summary>The tone of the scale over a chord that lies a half or whole step below; the chromatic note where the scale has none.</summary>
    public static Pitch ScaleBelow(HarmonyStep step, Pitch target) => Neighbour(step, target, -1) ?? ChromaticBelow(target);

    /// <summary>The tone of the scale over a chord that lies a half or whole step above; the chromatic note where the scale has none.</summary>
    public static Pitch ScaleAbove(HarmonyStep step, Pitch target) => Neighbour(step, target, 1) ?? ChromaticAbove(target);

    /// <summary>The fifth of the target below it, or above it: the root of its dominant.</summary>
    public static Pitch Dominant(Pitch target, bool below) => below ? target - Interval.PerfectFourth : target + Interval.PerfectFifth;

    private static Pitch? Neighbour(HarmonyStep step, Pitch target, int direction)
    {
        for (var distance = 2; distance >= 1; distance--)
        {
            var midi = target.MidiNumber + (direction * distance);
            foreach (var degree in step.Scale)
            {
                var note = step.Chord.NoteOf(degree);
                if (note.PitchClass != NoteMath.Modulo(midi, 12)) continue;
                return Pitch.AtOrAbove(note, midi);
            }
        }
        return null;
    }

    /// <summary>The spelling of a sound with at most one accidental.</summary>
    public static Pitch Simplest(int midiNumber, bool preferSharps)
    {
        ReadOnlySpan<sbyte> sharps = [0, 7, 2, 9, 4, -1, 6, 1, 8, 3, 10, 5];
        ReadOnlySpan<sbyte> flats = [0, -5, 2, -3, 4, -1, -6, 1, -4, 3, -2, 5];
        var name = NoteName.FromFifths((preferSharps ? sharps : flats)[NoteMath.Modulo(midiNumber, 12)]);
        return Pitch.AtOrAbove(name, midiNumber);
    }

    // At most one accidental, and none that turns a white key into another.
    private static bool IsPlain(NoteName note) => note.Fifths is >= -6 and <= 10;
}
