using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Moves chords, keys and names from the key a lesson is written in to the key it is asked for.</summary>
internal sealed class Rekeying
{
    private Rekeying(Interval interval) => Interval = interval;

    /// <summary>No move at all.</summary>
    public static Rekeying None { get; } = new(default);

    /// <summary>The way from the written key to the wanted one: at most a tritone, upward when both ways are as long.</summary>
    public Interval Interval { get; }

    /// <summary>Whether nothing moves.</summary>
    public bool IsNone => Interval == default;

    /// <summary>From one tonic to another.</summary>
    public static Rekeying Between(NoteName from, NoteName to)
    {
        if (from == to) return None;
        var up = from.IntervalTo(to);
        return new Rekeying(up.HalfSteps > 6 ? up - new Interval(7, 12) : up);
    }

    /// <summary>
    /// The key with a tonic and mode; where such a key would need more than seven flats or sharps, the one that sounds the same.
    /// </summary>
    public static Key KeyOf(NoteName tonic, Mode mode)
    {
        // Twelve fifths up or down name the same sound.
        foreach (var fifths in (ReadOnlySpan<int>)[0, 12, -12])
        {
            if (Math.Abs(tonic.Fifths + fifths) > 20) continue;
            var candidate = NoteName.FromFifths(tonic.Fifths + fifths);
            if (Key.TryParse($"{candidate} {mode}", out var key)) return key;
        }
        throw new ArgumentOutOfRangeException(nameof(tonic), tonic, "No key sounds like this.");
    }

    /// <summary>A key moved along; where its signature would be too large, the key that sounds the same.</summary>
    public Key Move(Key key) => IsNone ? key : KeyOf(key.Tonic + Interval, key.Mode);

    /// <summary>A note name moved along. A double sharp or flat, which no chord symbol is printed with, becomes the plain name of the same sound.</summary>
    public NoteName Move(NoteName note)
    {
        if (IsNone) return note;
        return (note + Interval).Simplest;
    }

    /// <summary>A chord moved along.</summary>
    public Chord Move(Chord chord)
    {
        if (IsNone) return chord;
        var root = Move(chord.Root);
        if (chord.Bass is not { } bass) return new Chord(root, chord.Quality);
        // The bass keeps its distance from the root, so that both are spelled alike.
        var moved = root + chord.Root.IntervalTo(bass);
        return new Chord(root, chord.Quality, moved.Simplest);
    }
}
