using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Moves what a lesson names from the key it is written in to the key it is asked for, spelled as players want to read it.</summary>
internal static class Rekeying
{
    /// <summary>Whether nothing moves.</summary>
    public static bool IsNone(this KeyTransposition transposition) => transposition.Interval == default;

    /// <summary>A chord moved; as written when nothing moves.</summary>
    public static Chord Move(this KeyTransposition transposition, Chord chord) => transposition.IsNone() ? chord : transposition.Apply(chord).Readable;

    /// <summary>A note moved; as written when nothing moves.</summary>
    public static NoteName Move(this KeyTransposition transposition, NoteName note) => transposition.IsNone() ? note : transposition.Apply(note).Simplest;

    /// <summary>A key moved; as written when nothing moves.</summary>
    public static Key Move(this KeyTransposition transposition, Key key) => transposition.IsNone() ? key : transposition.Apply(key);
}
