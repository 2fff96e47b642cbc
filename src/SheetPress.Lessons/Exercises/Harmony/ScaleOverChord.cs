using System.Collections.Immutable;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Scales as they lie above the root of a chord: degrees counted from that root, from low to high, within one octave.</summary>
internal static class ScaleOverChord
{
    /// <summary>A scale, whatever its own tonic, seen from the root of a chord.</summary>
    public static ImmutableArray<Degree> From(NoteName root, Scale scale) =>
        scale.Root.PitchClass == root.PitchClass ? scale.Type.Degrees : Order(root, scale.Notes);

    /// <summary>
    /// The notes of the key with the chord's own tones in place of those they alter, one note a letter:
    /// the usual answer to a chord borrowed from outside the key.
    /// </summary>
    public static ImmutableArray<Degree> FromKey(Chord chord, Key key)
    {
        var notes = new NoteName[7];
        for (var letter = 0; letter < 7; letter++) notes[letter] = key.Spell((Letter)letter);
        // The lower degrees are set last, so that a root or a third wins over an altered ninth on its letter.
        var tones = chord.Tones;
        for (var i = tones.Length - 1; i >= 0; i--) notes[(int)tones[i].Note.Letter] = tones[i].Note;
        return Order(chord.Root, notes);
    }

    private static ImmutableArray<Degree> Order(NoteName root, IEnumerable<NoteName> notes)
    {
        var degrees = new List<Degree>(8);
        foreach (var note in notes)
        {
            var interval = root.IntervalTo(note);
            // A spelling far from the root (B double sharp over G flat) has no degree; a C flat over C counts as a major seventh.
            if (interval.HalfSteps is < 0 or > 11 || Math.Abs(interval.Alteration) > 3) interval = Respell(interval.HalfSteps);
            var degree = Degree.FromInterval(interval);
            if (!degrees.Exists(d => d.HalfSteps == degree.HalfSteps)) degrees.Add(degree);
        }
        degrees.Sort(static (a, b) => a.HalfSteps.CompareTo(b.HalfSteps));
        return [.. degrees];
    }

    private static Interval Respell(int halfSteps)
    {
        ReadOnlySpan<sbyte> steps = [0, 1, 1, 2, 2, 3, 4, 4, 5, 5, 6, 6];
        var within = ((halfSteps % 12) + 12) % 12;
        return new Interval(steps[within], within);
    }
}
