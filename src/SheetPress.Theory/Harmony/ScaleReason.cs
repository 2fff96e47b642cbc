namespace SheetPress.Theory;

/// <summary>Why a scale is suggested over a chord.</summary>
public enum ScaleReason
{
    /// <summary>The key's own notes, from the root of the chord.</summary>
    KeyMode,
    /// <summary>The notes of another mode on the same tonic, from which the chord is borrowed.</summary>
    ParallelMode,
    /// <summary>The fifth mode of harmonic minor on the chord that the dominant leads to.</summary>
    HarmonicMinorFifthMode,
    /// <summary>The seventh mode of harmonic minor on the chord that the diminished chord leads to.</summary>
    HarmonicMinorSeventhMode,
    /// <summary>The notes of a key that rules for a moment.</summary>
    KeyOfMoment,
    /// <summary>Of the scales that fit, the one that keeps most notes of the key.</summary>
    KeepsKey,
    /// <summary>Lydian dominant over a dominant that does not fall a fifth.</summary>
    UnresolvedDominant,
    /// <summary>Mixolydian over the tonic or subdominant seventh of the blues.</summary>
    Blues,
    /// <summary>Altered, because the symbol alters fifth and ninth.</summary>
    AlteredTensions,
    /// <summary>Half-whole diminished, because the symbol alters the ninth and keeps the fifth or thirteenth.</summary>
    AlteredNinth,
    /// <summary>Whole tone, because the symbol alters the fifth alone.</summary>
    AlteredFifth,
    /// <summary>Whole-half diminished: chord tones and a leading tone to each.</summary>
    DiminishedChord,
    /// <summary>The minor scale with the natural sixth or seventh that the symbol asks for.</summary>
    MinorVariant,
    /// <summary>It holds every tone of the symbol.</summary>
    HoldsTones,
}
