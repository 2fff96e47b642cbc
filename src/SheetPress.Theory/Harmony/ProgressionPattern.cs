namespace SheetPress.Theory;

/// <summary>The patterns that are looked for in a progression.</summary>
public enum ProgressionPatternKind
{
    /// <summary>ii7 V7 Imaj7, in the key or in one that rules for a moment.</summary>
    MajorTwoFiveOne,
    /// <summary>iiø7 V7 i7, in the key or in one that rules for a moment.</summary>
    MinorTwoFiveOne,
    /// <summary>ii7 bII7 I: the dominant is replaced by the one a tritone away.</summary>
    SubstituteTwoFiveOne,
    /// <summary>ii7 V7 without its goal.</summary>
    TwoFive,
    /// <summary>ii V and a minor chord that is the ii of the dominant that follows.</summary>
    TwoFiveOnward,
    /// <summary>ii7 V7 a half step above the next ii7 V7.</summary>
    SlidingTwoFive,
    /// <summary>Four or more roots, each a fourth above the one before.</summary>
    CycleOfFourths,
    /// <summary>The same inside a key, where one step is a tritone.</summary>
    CycleOfFourthsWithTritone,
    /// <summary>I VI II V, with their substitutes.</summary>
    Turnaround,
    /// <summary>III VI II V, with their substitutes.</summary>
    TurnaroundFromThird,
    /// <summary>A dominant seventh chord that is not the key's resolves to its goal.</summary>
    SecondaryDominant,
    /// <summary>The same with a triad.</summary>
    SecondaryDominantTriad,
    /// <summary>A dominant seventh chord resolves down a half step.</summary>
    TritoneSubstitute,
    /// <summary>iv bVII7 I or bVII7 I in major.</summary>
    Backdoor,
    /// <summary>V I at the end.</summary>
    FullClose,
    /// <summary>IV I at the end.</summary>
    PlagalClose,
    /// <summary>The end is on V.</summary>
    HalfClose,
    /// <summary>V vi, or V VI in minor and V bVI in major.</summary>
    DeceptiveCadence,
    /// <summary>i VII VI V in minor.</summary>
    DescendingMinor,
    /// <summary>I #i°7 ii and the like: a diminished chord between two chords a whole step apart.</summary>
    ClimbingDiminished,
}

/// <summary>What kinds of patterns have in common.</summary>
public static class ProgressionPatternKinds
{
    /// <summary>Whether it is a turnaround, from the tonic or from the third degree.</summary>
    public static bool IsTurnaround(this ProgressionPatternKind kind) => kind is ProgressionPatternKind.Turnaround or ProgressionPatternKind.TurnaroundFromThird;

    /// <summary>Whether it is a cycle of fourths, with a tritone in it or without.</summary>
    public static bool IsCycle(this ProgressionPatternKind kind) => kind is ProgressionPatternKind.CycleOfFourths or ProgressionPatternKind.CycleOfFourthsWithTritone;
}

/// <summary>A pattern found in a progression.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="First">Index of the first chord of the pattern in the progression, from 0.</param>
/// <param name="Last">Index of the last chord that belongs to it, that one included; of a goal that is repeated, the first.</param>
/// <param name="Markup">What to say about it, in one or two full sentences, chords and roman numerals in square brackets: "[Bb7] is the dominant of [Ebmaj7]".</param>
public sealed record ProgressionPattern(ProgressionPatternKind Kind, int First, int Last, string Markup)
{
    /// <summary>What to say in place of <paramref name="Markup"/> where the same kind of pattern has been explained before; null where that is said in full again.</summary>
    public string? Again { get; init; }

    /// <summary>The sentences in plain text: "B♭7 is the dominant of E♭maj7".</summary>
    public string Sentence => MarkedText.Plain(Markup);
}
