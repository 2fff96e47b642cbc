using System.Collections.Immutable;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>The tones of a chord or scale over a range of the neck, from low to high.</summary>
internal static class ScaleLadder
{
    /// <summary>Every tone of the degrees over a root that can be played from one MIDI number to another, low to high.</summary>
    public static ImmutableArray<NamedPitch> Of(HarmonyStep step, ImmutableArray<Degree> degrees, NeckRange range, int from, int to)
    {
        var tones = ImmutableArray.CreateBuilder<NamedPitch>();
        foreach (var degree in degrees)
        {
            var note = step.Chord.NoteOf(degree);
            for (var pitch = Pitch.AtOrAbove(note, from); pitch.MidiNumber <= to; pitch += Interval.Octave)
            {
                if (range.CanPlay(pitch.MidiNumber)) tones.Add(new NamedPitch(pitch, degree.Simple));
            }
        }
        tones.Sort(static (a, b) => a.Pitch.CompareTo(b.Pitch));
        return tones.DrainToImmutable();
    }
}
