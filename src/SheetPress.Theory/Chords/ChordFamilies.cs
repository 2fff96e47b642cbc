namespace SheetPress.Theory;

/// <summary>Coarse questions about a quality that harmonic thinking asks.</summary>
internal static class ChordFamilies
{
    /// <summary>A minor seventh over a major third or a suspension: the chord wants to resolve.</summary>
    internal static bool IsDominantSeventh(this ChordQuality quality) =>
        quality.Shape is { Seventh: { Alteration: -1 }, IsMinor: false } shape && (shape.Third is not null || shape.IsSuspendedFourth || shape.IsSuspendedSecond);

    /// <summary>A major third and no minor seventh.</summary>
    internal static bool IsPlainMajor(this ChordQuality quality) => quality.Shape is { Third: { Alteration: 0 }, Seventh: null or { Alteration: 0 } };

    /// <summary>A minor third over a fifth that is not diminished.</summary>
    internal static bool IsPlainMinor(this ChordQuality quality) => quality.Shape.IsMinor && !quality.Shape.FifthIs(-1);

    /// <summary>A diminished triad under a minor seventh.</summary>
    internal static bool IsHalfDiminished(this ChordQuality quality) => quality.Shape.IsMinor && quality.Shape.FifthIs(-1) && quality.Shape.Seventh is { Alteration: -1 };

    /// <summary>A diminished triad, alone or under a diminished or major seventh.</summary>
    internal static bool IsDiminished(this ChordQuality quality) => quality.Shape.IsDiminished;

    /// <summary>Whether the symbol alters the fifth, ninth, eleventh or thirteenth.</summary>
    internal static bool HasAlteredTension(this ChordQuality quality)
    {
        foreach (var degree in quality.Degrees) if (degree.Number is 5 or 9 or 11 or 13 && degree.Alteration != 0) return true;
        return false;
    }
}
