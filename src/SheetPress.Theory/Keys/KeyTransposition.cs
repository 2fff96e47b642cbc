using System.Collections.Immutable;

namespace SheetPress.Theory;

/// <summary>
/// Moves music from one key to another so that the spelling goes along: what was the flat sixth is the flat sixth again. Chords and notes move
/// by one exact interval, so moving back restores them.
/// </summary>
public sealed record KeyTransposition
{
    /// <summary>The key of the music as it stands.</summary>
    public Key From { get; }

    /// <summary>The key wanted.</summary>
    public Key To { get; }

    /// <summary>From tonic to tonic by the nearer way: at most six half steps, up when both ways are equally near.</summary>
    public Interval Interval { get; }

    /// <summary>Makes the transposition between two keys. Their modes may differ; only the tonics count.</summary>
    public KeyTransposition(Key from, Key to)
    {
        ArgumentNullException.ThrowIfNull(from);
        ArgumentNullException.ThrowIfNull(to);
        From = from;
        To = to;
        var up = from.Tonic.IntervalTo(to.Tonic);
        Interval = up.HalfSteps > 6 ? up - Interval.Octave : up;
    }

    /// <summary>The way back.</summary>
    public KeyTransposition Inverse => new(To, From);

    /// <summary>The note moved, octave left out.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The spelling would need more than six flats or sharps.</exception>
    public NoteName Apply(NoteName note) => note + Interval;

    /// <summary>The pitch moved by the nearer way.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The spelling would need more than six flats or sharps.</exception>
    public Pitch Apply(Pitch pitch) => pitch + Interval;

    /// <summary>The chord moved. In remote keys a root can come out with two signs; <see cref="Chord.Readable"/> gives the symbol that players expect.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The spelling would need more than six flats or sharps.</exception>
    public Chord Apply(Chord chord)
    {
        ArgumentNullException.ThrowIfNull(chord);
        return chord.Transpose(Interval);
    }

    /// <summary>Another key of the same music moved along: its dominant key becomes the dominant key again. A key without a signature is taken in its simpler spelling.</summary>
    public Key Apply(Key key)
    {
        ArgumentNullException.ThrowIfNull(key);
        return Key.Nearest(key.Tonic + Interval, key.Mode);
    }
}
