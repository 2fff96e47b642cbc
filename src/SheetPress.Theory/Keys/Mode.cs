namespace SheetPress.Theory;

/// <summary>The modes a key can have: major, (natural) minor and the church modes.</summary>
public enum Mode
{
    /// <summary>Major, the same notes as Ionian.</summary>
    Major,
    /// <summary>Minor; its signature is that of natural minor.</summary>
    Minor,
    /// <summary>Ionian, the same notes as major.</summary>
    Ionian,
    /// <summary>Dorian: minor with a major sixth.</summary>
    Dorian,
    /// <summary>Phrygian: minor with a minor second.</summary>
    Phrygian,
    /// <summary>Lydian: major with an augmented fourth.</summary>
    Lydian,
    /// <summary>Mixolydian: major with a minor seventh.</summary>
    Mixolydian,
    /// <summary>Aeolian, the same notes as natural minor.</summary>
    Aeolian,
    /// <summary>Locrian: minor with a minor second and a diminished fifth.</summary>
    Locrian,
}
