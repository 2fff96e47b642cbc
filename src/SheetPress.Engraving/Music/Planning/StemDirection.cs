namespace SheetPress.Engraving;

/// <summary>Which way a stem points.</summary>
internal enum StemDirection
{
    /// <summary>Upward.</summary>
    Up,
    /// <summary>Downward.</summary>
    Down,
}
