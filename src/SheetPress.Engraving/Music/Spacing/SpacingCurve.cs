using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>How much room a duration takes: each doubling 1.45 times as much (the handbooks ask for 1.4 to 1.6).</summary>
internal static class SpacingCurve
{
    /// <summary>From the left of a quarter note to the left of what follows, in staff spaces.</summary>
    public const double Quarter = 3.6;

    /// <summary>Growth of the space when the duration doubles.</summary>
    public const double Doubling = 1.45;

    /// <summary>Natural space of a duration in quarter notes.</summary>
    public static double Space(Fraction duration) => Quarter * Math.Pow(Doubling, Math.Log2(duration.ToDouble()));

    /// <summary>Natural space of a stretch of time in which the shortest event has a given length: equal durations take equal space.</summary>
    public static double Space(Fraction stretch, Fraction shortest) => Space(shortest) * (stretch / shortest).ToDouble();
}
