namespace SheetPress.Engraving;

/// <summary>Choices of the page that the music has to know.</summary>
public sealed record EngravingOptions
{
    /// <summary>Length of one staff space on paper in millimetres, so that no text comes out below seven points: 1.75 for a 7 mm staff.</summary>
    public double StaffSpace { get; init; } = 1.75;

    /// <summary>How far the first system is set in from the left, in staff spaces.</summary>
    public double FirstIndent { get; init; }

    /// <summary>Whether the tempo stands over the first measure, and the sign for swung pairs behind it.</summary>
    public bool ShowTempo { get; init; } = true;

    /// <summary>Whether a tempo is followed by the sign for swung pairs if the score has such a feel.</summary>
    public bool ShowSwing { get; init; } = true;

    /// <summary>What stands behind a tempo without that sign, such as "straight" after one with swing; empty for nothing.</summary>
    public string StraightWord { get; init; } = "";

    /// <summary>Whether every system after the first begins with its measure number.</summary>
    public bool ShowMeasureNumbers { get; init; } = true;

    /// <summary>Whether two or more empty measures in a row are drawn as one rest with a number.</summary>
    public bool MergeEmptyMeasures { get; init; } = true;
}
