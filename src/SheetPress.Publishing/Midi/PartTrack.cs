using SheetPress.Scores;

namespace SheetPress.Publishing;

/// <summary>Writes the instrument's notes and bends.</summary>
internal static class PartTrack
{
    private const int BendRange = 12;
    private const int BendSteps = 8;

    /// <summary>Sets the range of the pitch wheel to an octave (registered parameter 0 of MIDI 1.0), so that wide bends fit.</summary>
    public static void SetBendRange(MidiTrack track, int channel)
    {
        track.Control(channel, 0, 101, 0);
        track.Control(channel, 0, 100, 0);
        track.Control(channel, 0, 6, BendRange);
        track.Control(channel, 0, 38, 0);
        track.Control(channel, 0, 101, 127);
        track.Control(channel, 0, 100, 127);
    }

    public static bool HasBends(Score score) =>
        score.Measures.Any(m => m.Voices.Any(v => v.Events.Any(e => e.BendHalfSteps is not null)));

    public static void Write(MidiTrack track, int channel, Performance performance, Fraction start)
    {
        var notes = performance.Notes
            .Select((note, index) => (Note: note, Index: index, Start: MidiClock.TickOf(start + note.Start), End: MidiClock.TickOf(start + NoteStyle.EndOf(note)), Key: note.Tone.Pitch.MidiNumber))
            .OrderBy(n => n.Start).ThenBy(n => n.Index)
            .ToList();
        var struck = new HashSet<(long, int)>();
        // A key can sound once at a time: the same pitch struck again ends the one before, and so does a new note on its string.
        for (var i = 0; i < notes.Count; i++)
        {
            var note = notes[i];
            if (!struck.Add((note.Start, note.Key))) continue;
            var end = note.End;
            for (var j = i + 1; j < notes.Count && notes[j].Start < end; j++)
            {
                var next = notes[j];
                var sameString = note.Note.Tone.Position is { } a && next.Note.Tone.Position is { } b && a.String == b.String;
                if (next.Start > note.Start && (next.Key == note.Key || sameString)) end = next.Start;
            }
            track.Note(channel, note.Start, end, note.Key, NoteStyle.VelocityOf(note.Note));
            if (note.Note.Event.BendHalfSteps is { } bend) WriteBend(track, channel, note.Start, end, bend);
        }
    }

    // Up over the first half of the note, held, and back when it ends.
    private static void WriteBend(MidiTrack track, int channel, long start, long end, double halfSteps)
    {
        var rise = (end - start) / 2;
        for (var step = 1; step <= BendSteps; step++)
        {
            track.Wheel(channel, start + (rise * step / BendSteps), (int)Math.Round(halfSteps * 8192 / BendRange * step / BendSteps));
        }
        track.Wheel(channel, end, 0);
    }
}
