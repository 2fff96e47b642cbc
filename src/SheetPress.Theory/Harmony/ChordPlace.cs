namespace SheetPress.Theory;

/// <summary>A chord as a key hears it.</summary>
internal sealed record ChordPlace
{
    /// <summary>The chord as written.</summary>
    internal required Chord Chord { get; init; }

    /// <summary>Its numeral, read in the key's spelling.</summary>
    internal required RomanNumeral Numeral { get; init; }

    /// <summary>What it does.</summary>
    internal required HarmonicFunction Function { get; init; }

    /// <summary>Whether every tone belongs to the signature.</summary>
    internal required bool IsDiatonic { get; init; }

    /// <summary>The degree that it leads to, where the function has one.</summary>
    internal RomanNumeral? Target { get; init; }

    /// <summary>The mode on the key's tonic from which it is borrowed, where it is.</summary>
    internal Mode? BorrowedFrom { get; init; }

    /// <summary>The key that rules for a moment, spelled as the chords are written; null where the key itself rules.</summary>
    internal Key? KeyOfMoment { get; init; }
}
