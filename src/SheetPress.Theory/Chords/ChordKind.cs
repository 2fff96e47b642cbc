namespace SheetPress.Theory;

/// <summary>
/// The basic kinds of chord that interchange formats name, in the sense of the W3C MusicXML 4.0 type kind-value. A quality that none of
/// them covers is the nearest kind with <see cref="ChordQuality.KindChanges"/>.
/// </summary>
public enum ChordKind
{
    /// <summary>1 3 5.</summary>
    Major,
    /// <summary>1 b3 5.</summary>
    Minor,
    /// <summary>1 3 #5.</summary>
    Augmented,
    /// <summary>1 b3 b5.</summary>
    Diminished,
    /// <summary>1 3 5 b7.</summary>
    Dominant,
    /// <summary>1 3 5 7.</summary>
    MajorSeventh,
    /// <summary>1 b3 5 b7.</summary>
    MinorSeventh,
    /// <summary>1 b3 b5 bb7.</summary>
    DiminishedSeventh,
    /// <summary>1 3 #5 b7.</summary>
    AugmentedSeventh,
    /// <summary>1 b3 b5 b7.</summary>
    HalfDiminished,
    /// <summary>1 b3 5 7: a minor triad with a major seventh.</summary>
    MajorMinor,
    /// <summary>1 3 5 6.</summary>
    MajorSixth,
    /// <summary>1 b3 5 6.</summary>
    MinorSixth,
    /// <summary>1 3 5 b7 9.</summary>
    DominantNinth,
    /// <summary>1 3 5 7 9.</summary>
    MajorNinth,
    /// <summary>1 b3 5 b7 9.</summary>
    MinorNinth,
    /// <summary>1 3 5 b7 9 11.</summary>
    DominantEleventh,
    /// <summary>1 3 5 7 9 11.</summary>
    MajorEleventh,
    /// <summary>1 b3 5 b7 9 11.</summary>
    MinorEleventh,
    /// <summary>1 3 5 b7 9 13; the standard counts an 11th in, which players leave out.</summary>
    DominantThirteenth,
    /// <summary>1 3 5 7 9 13; the standard counts an 11th in, which players leave out.</summary>
    MajorThirteenth,
    /// <summary>1 b3 5 b7 9 11 13.</summary>
    MinorThirteenth,
    /// <summary>1 2 5.</summary>
    SuspendedSecond,
    /// <summary>1 4 5.</summary>
    SuspendedFourth,
    /// <summary>1 5.</summary>
    Power,
}
