using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>One way to play one event: a place and a finger for each tone, and where the hand is.</summary>
internal sealed class Grip
{
    /// <summary>String and fret of each tone, in the order of the tones.</summary>
    public required ImmutableArray<FretPosition> Positions { get; init; }

    /// <summary>Finger of each tone, 0 for an open string.</summary>
    public required ImmutableArray<int> Fingers { get; init; }

    /// <summary>Hand position: the fret under the index finger.</summary>
    public required int Hand { get; init; }

    /// <summary>Effort of the grip by itself.</summary>
    public required double Cost { get; init; }

    /// <summary>Whether every tone is an open string, so that the hand is free to move.</summary>
    public required bool IsOpen { get; init; }

    /// <summary>String of the first (lowest) tone.</summary>
    public int String => Positions[0].String;

    /// <summary>Fret of the first tone.</summary>
    public int Fret => Positions[0].Fret;

    /// <summary>Finger of the first tone.</summary>
    public int Finger => Fingers[0];

    /// <summary>The same grip at a higher cost.</summary>
    public Grip Dearer(double by) => new() { Positions = Positions, Fingers = Fingers, Hand = Hand, Cost = Cost + by, IsOpen = IsOpen };

    /// <summary>The same open grip with the hand somewhere else.</summary>
    public Grip WithHand(int hand) => new() { Positions = Positions, Fingers = Fingers, Hand = hand, Cost = Cost, IsOpen = IsOpen };
}
