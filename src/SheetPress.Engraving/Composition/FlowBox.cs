using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>A drawing placed in a box: scaled about its origin, then moved.</summary>
/// <param name="Drawing">The drawing.</param>
/// <param name="Scale">Millimetres to its unit.</param>
/// <param name="X">Millimetres to the right of the left edge of the text area.</param>
/// <param name="Y">Millimetres below the top of the box.</param>
public readonly record struct PlacedDrawing(Drawing Drawing, double Scale, double X, double Y)
{
    /// <summary>The same, moved.</summary>
    public PlacedDrawing Offset(double dx, double dy) => this with { X = X + dx, Y = Y + dy };
}

/// <summary>White between two boxes; it vanishes where a page ends.</summary>
/// <param name="Natural">Its natural height in millimetres.</param>
/// <param name="Stretch">How far it can grow when slack is shared out.</param>
/// <param name="Shrink">How far it can shrink to save a page.</param>
public readonly record struct FlowSpace(double Natural, double Stretch = 0, double Shrink = 0);

/// <summary>A bookmark of something in the flow.</summary>
/// <param name="Title">Its text.</param>
/// <param name="Level">Its level, 0 the outermost.</param>
public readonly record struct FlowBookmark(string Title, int Level);

/// <summary>What a running head can say of a page.</summary>
/// <param name="Text">A section, or an exercise by number and title.</param>
/// <param name="Number">Number of the exercise; empty for a section or an exercise without one.</param>
/// <param name="IsExercise">Whether it is an exercise.</param>
public sealed record HeadMark(string Text, string Number, bool IsExercise)
{
    /// <summary>A section in fewer words, for narrow pages; empty for none.</summary>
    public string ShortText { get; init; } = "";
}

/// <summary>One thing in the flow of a page from top to bottom, never cut.</summary>
/// <param name="Height">Height in millimetres.</param>
/// <param name="Drawings">What is in it.</param>
public sealed record FlowBox(double Height, ImmutableArray<PlacedDrawing> Drawings)
{
    /// <summary>Penalty of a break that is not wanted but possible.</summary>
    public const double Unwanted = 400;

    /// <summary>Penalty of a break that must not be.</summary>
    public const double Never = double.PositiveInfinity;

    /// <summary>White after it.</summary>
    public FlowSpace After { get; init; }

    /// <summary>Penalty of a page break after it, as in <see cref="FitItem.Penalty"/>.</summary>
    public double BreakPenalty { get; init; }

    /// <summary>A box that is drawn again at the top of the next page when a page breaks after this one, such as a table header; null for none.</summary>
    public FlowBox? Repeated { get; init; }

    /// <summary>Whether the box after it goes on with the same table, so that a page which ends between them should be full.</summary>
    public bool RunsOn { get; init; }

    /// <summary>Whether a part of the document ends with it, so that white below it on its page looks meant.</summary>
    public bool EndsPart { get; init; }

    /// <summary>Bookmarks that point at it.</summary>
    public ImmutableArray<FlowBookmark> Bookmarks { get; init; } = [];

    /// <summary>What begins with it, for running heads; null when nothing does.</summary>
    public HeadMark? Head { get; init; }

    /// <summary>A box that holds one drawing in millimetres.</summary>
    public static FlowBox Of(Drawing drawing, double height) => new(height, [new PlacedDrawing(drawing, 1, 0, 0)]);

    /// <summary>The same box set in from the left.</summary>
    public FlowBox Indent(double by) => by == 0 ? this : this with { Drawings = [.. Drawings.Select(d => d.Offset(by, 0))], Repeated = Repeated?.Indent(by) };
}
