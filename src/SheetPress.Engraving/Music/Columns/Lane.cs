namespace SheetPress.Engraving;

/// <summary>Rows of a system in which things keep clear of each other sideways.</summary>
internal enum Lane
{
    /// <summary>The five-line staff; y counts.</summary>
    Staff,
    /// <summary>The tab; y counts.</summary>
    Tab,
    /// <summary>Chord symbols.</summary>
    Chord,
    /// <summary>Degree names.</summary>
    Degree,
    /// <summary>Counting syllables.</summary>
    Count,
    /// <summary>Roman numerals.</summary>
    Roman,
    /// <summary>Letters of the plucking hand.</summary>
    Stroke,
    /// <summary>Dynamics under the staff, and the least room of hairpins.</summary>
    Dynamic,
    /// <summary>The same above the staff, where two voices have dynamics of their own.</summary>
    DynamicAbove,
    /// <summary>Numbers of strings over a staff.</summary>
    StringNumber,
    /// <summary>Articulations beside a tab that stands alone, those as wide as a head or wider.</summary>
    Articulation,
}

/// <summary>Ink in a lane, with x from its column.</summary>
/// <param name="Lane">The lane.</param>
/// <param name="Box">The ink; y from the top line in <see cref="Lane.Staff"/> and <see cref="Lane.Tab"/>, without meaning elsewhere.</param>
internal readonly record struct LaneBox(Lane Lane, Box Box);
