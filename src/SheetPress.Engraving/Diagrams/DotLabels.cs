namespace SheetPress.Engraving;

/// <summary>What stands inside dots.</summary>
public enum DotLabels
{
    /// <summary>Degrees above the root: R, ♭3, 5.</summary>
    Degrees,
    /// <summary>Note names.</summary>
    Notes,
    /// <summary>Fretting fingers.</summary>
    Fingers,
    /// <summary>Nothing.</summary>
    None,
}
