namespace SheetPress.Engraving;

/// <summary>A diagram that has been drawn.</summary>
/// <param name="Drawing">Marks in millimetres; all ink within the box from (0, 0) to (width, height).</param>
/// <param name="Width">Width.</param>
/// <param name="Height">Height.</param>
/// <param name="NeckTop">Top of the neck itself, under whatever stands over it; diagrams side by side are levelled by it.</param>
/// <param name="NeckLeft">Left end of the neck itself.</param>
/// <param name="NeckRight">Right end of the neck itself.</param>
public sealed record DiagramLayout(Drawing Drawing, double Width, double Height, double NeckTop, double NeckLeft, double NeckRight)
{
    /// <summary>Bottom of the neck itself, over whatever stands under it.</summary>
    public double NeckBottom { get; init; }
}
