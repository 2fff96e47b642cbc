using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Publishing;

/// <summary>Writes the chord symbols as held chords in close position around middle C, so that they stay out of a bass's way.</summary>
internal static class ChordTrack
{
    /// <summary>General MIDI "pad 2", a soft held sound, counted from 1.</summary>
    public const int Program = 90;

    private const int LowestTone = 54;
    private const int LowestBass = 42;
    private const int Velocity = 52;
    private const int MostTones = 5;

    public static void Write(MidiTrack track, int channel, Performance performance, Fraction start)
    {
        var marks = new List<(Fraction Time, Chord? Chord)>();
        foreach (var played in performance.Measures)
        {
            foreach (var harmony in played.Measure.Harmonies) marks.Add((start + played.Start + harmony.Offset, harmony.Chord));
        }
        for (var i = 0; i < marks.Count; i++)
        {
            if (marks[i].Chord is not { } chord) continue;
            var end = i + 1 < marks.Count ? marks[i + 1].Time : start + performance.Length;
            foreach (var key in Voicing(chord)) track.Note(channel, MidiClock.TickOf(marks[i].Time), MidiClock.TickOf(end), key, Velocity);
        }
    }

    // From low to high: up to five tones within an octave, the fifth left out first, and a slash bass below.
    private static SortedSet<int> Voicing(Chord chord)
    {
        var keys = new SortedSet<int>();
        var tones = chord.Tones;
        foreach (var tone in tones)
        {
            if (tones.Length > MostTones && tone.Degree == new Degree(5)) continue;
            if (keys.Count < MostTones) keys.Add(Pitch.AtOrAbove(tone.Note, LowestTone).MidiNumber);
        }
        if (chord.Bass is { } bass) keys.Add(Pitch.AtOrAbove(bass, LowestBass).MidiNumber);
        return keys;
    }
}
