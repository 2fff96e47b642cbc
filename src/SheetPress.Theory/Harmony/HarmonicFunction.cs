namespace SheetPress.Theory;

/// <summary>What a chord does in its key.</summary>
public enum HarmonicFunction
{
    /// <summary>Home.</summary>
    Tonic,
    /// <summary>Stands in for the tonic, with which it shares two tones or more.</summary>
    TonicSubstitute,
    /// <summary>Leads away from home and toward the dominant.</summary>
    Subdominant,
    /// <summary>Wants to go home.</summary>
    Dominant,
    /// <summary>The chord on the fifth degree of a key with its minor third: it has no leading tone.</summary>
    MinorDominant,
    /// <summary>The diminished chord on the leading tone, a dominant without its root.</summary>
    LeadingTone,
    /// <summary>The major chord on the seventh degree of a minor key.</summary>
    Subtonic,
    /// <summary>A chord of the key that is the dominant of another degree, as VII7 of III in minor.</summary>
    DominantWithinKey,
    /// <summary>A chord from outside the key that is the dominant of another degree.</summary>
    SecondaryDominant,
    /// <summary>A dominant a half step above its goal, in place of the one a fifth above it.</summary>
    SubstituteDominant,
    /// <summary>The diminished chord on the leading tone of another degree.</summary>
    LeadingToneOf,
    /// <summary>The second degree of a key that another degree rules for a moment, before its dominant.</summary>
    SupertonicOf,
    /// <summary>The dominant seventh on the flat seventh degree, going up a whole step to a major tonic.</summary>
    BackdoorDominant,
    /// <summary>The tonic with the minor seventh of the blues.</summary>
    BluesTonic,
    /// <summary>The subdominant with the minor seventh of the blues.</summary>
    BluesSubdominant,
    /// <summary>Taken from another mode on the same tonic.</summary>
    Borrowed,
    /// <summary>The major chord on the flat second degree.</summary>
    FlatSecond,
    /// <summary>The half-diminished chord on the raised fourth degree.</summary>
    RaisedFourth,
    /// <summary>The tonic of a minor key with a major third.</summary>
    MajorTonicInMinor,
    /// <summary>A chord that shows the note by which a mode differs from major or minor.</summary>
    ModalColor,
    /// <summary>A diminished chord that steps down to the next chord.</summary>
    PassingDiminished,
    /// <summary>A diminished chord around a chord that shares its tones.</summary>
    CommonToneDiminished,
    /// <summary>Subdominant tones over the root of the dominant, which they suspend.</summary>
    SuspendedDominant,
    /// <summary>The tonic of a key that rules for a moment, reached from its own dominant.</summary>
    TonicOfMoment,
    /// <summary>Another chord of a key that rules for a moment.</summary>
    ChordOfMoment,
    /// <summary>Right before a change of key, the dominant of the key that follows.</summary>
    DominantOfNewKey,
    /// <summary>Before that dominant, the second degree of the key that follows.</summary>
    SupertonicOfNewKey,
    /// <summary>A half step away from a chord of the same kind, into which it slides.</summary>
    Sliding,
    /// <summary>None of these.</summary>
    Chromatic,
}
