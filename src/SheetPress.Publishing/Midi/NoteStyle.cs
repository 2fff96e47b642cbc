using SheetPress.Scores;

namespace SheetPress.Publishing;

/// <summary>How marks change the length and loudness of a note. The amounts are our own, by ear and common practice.</summary>
internal static class NoteStyle
{
    private static readonly Fraction Detached = new(15, 16);
    private static readonly Fraction DeadLength = new(1, 8);

    /// <summary>Where the note stops sounding, in quarter notes.</summary>
    public static Fraction EndOf(PlayedNote note)
    {
        var marks = note.Event.Articulations;
        var length = note.End - note.Start;
        if (note.Tone.Head == Notehead.Dead) return note.Start + Fraction.Min(length, DeadLength);
        if (marks.HasFlag(Articulations.LetRing)) return Fraction.Max(note.End, note.MeasureEnd);
        if (marks.HasFlag(Articulations.Staccato)) return note.Start + (length / 2);
        if (marks.HasFlag(Articulations.PalmMute)) return note.Start + (length * new Fraction(5, 8));
        if (note.Tone.Head == Notehead.Ghost) return note.Start + (length * new Fraction(3, 4));
        var held = note.Connection != Connection.None || marks.HasFlag(Articulations.Tenuto) || marks.HasFlag(Articulations.Fermata);
        return held ? note.End : note.Start + (length * Detached);
    }

    /// <summary>MIDI velocity, 1 to 127.</summary>
    public static int VelocityOf(PlayedNote note)
    {
        var marks = note.Event.Articulations;
        var velocity = note.Level;
        if (marks.HasFlag(Articulations.Accent)) velocity += 16;
        if (marks.HasFlag(Articulations.Marcato)) velocity += 28;
        if (marks.HasFlag(Articulations.Tenuto)) velocity += 4;
        if (marks.HasFlag(Articulations.PalmMute)) velocity -= 8;
        velocity += note.Event.Stroke switch { Stroke.Pop => 12, Stroke.Thumb => 6, _ => 0 };
        velocity += note.Tone.Head switch { Notehead.Ghost => -36, Notehead.Dead => -16, _ => 0 };
        velocity += note.ArrivedBy switch { Connection.HammerOn or Connection.PullOff => -16, Connection.Slide => -8, _ => 0 };
        return Math.Clamp(velocity, 1, 127);
    }
}
