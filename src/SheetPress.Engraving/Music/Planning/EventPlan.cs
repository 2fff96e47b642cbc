using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>An event as it stands on the five-line staff, all but the free end of a beamed stem, with x from its column and y from the top line.</summary>
internal sealed record EventPlan
{
    private const double HalfHead = 0.5;

    /// <summary>The event.</summary>
    public required ScoreEvent Event { get; init; }

    /// <summary>Where its marks come from.</summary>
    public required MarkOrigin Origin { get; init; }

    /// <summary>Voice, 0 the upper.</summary>
    public required int Voice { get; init; }

    /// <summary>Heads from low to high; empty for a rest.</summary>
    public ImmutableArray<HeadPlan> Heads { get; init; } = [];

    /// <summary>Direction of the stem, or the one a whole note would have.</summary>
    public StemDirection Stem { get; init; }

    /// <summary>Whether there is a stem.</summary>
    public bool HasStem { get; init; }

    /// <summary>Whether the event is under a beam.</summary>
    public bool IsBeamed { get; init; }

    /// <summary>Whether it is a rest inside a beamed group, which the beam may move up or down.</summary>
    public bool IsUnderBeam { get; init; }

    /// <summary>Middle of the stem.</summary>
    public double StemX { get; init; }

    /// <summary>y where the stem starts: at the head furthest from its free end.</summary>
    public double StemRoot { get; init; }

    /// <summary>Free end of the stem when it is not beamed.</summary>
    public double StemTip { get; init; }

    /// <summary>Box of its flag, null where there is none.</summary>
    public Box? FlagBounds => HasStem && !IsBeamed && Event.Value.Flags > 0
        ? Ink.Glyph(FlagGlyphs.Name(Event.Value.Flags, Stem)).Bounds.Transform(1, StemX - (Ink.Defaults.StemThickness / 2), StemTip)
        : null;

    /// <summary>Heads, ledger lines, accidentals, dots, rest sign.</summary>
    public ImmutableArray<Mark> Marks { get; init; } = [];

    /// <summary>Whether it stands in the middle of the measure (whole-bar rest) whatever its onset.</summary>
    public bool IsCentred { get; init; }

    /// <summary>Whether it is a rest that is left out, since the other voice shows it.</summary>
    public bool IsHidden { get; init; }

    /// <summary>Left edge of the heads (or of the rest).</summary>
    public double Left { get; init; }

    /// <summary>Right edge of the heads (or of the rest).</summary>
    public double Right { get; init; }

    /// <summary>Middle of the head nearest the column.</summary>
    public double Centre { get; init; }

    /// <summary>y of the highest head.</summary>
    public double TopHead => Heads[^1].Y;

    /// <summary>y of the lowest head.</summary>
    public double BottomHead => Heads[0].Y;

    /// <summary>y of its end on a side: the free end of the stem and its flag where the stem points there, else the outer edge of the heads.</summary>
    /// <param name="above">The side.</param>
    /// <param name="stemTip">Free end of the stem.</param>
    public double Edge(bool above, double stemTip)
    {
        var edge = above ? TopHead - HalfHead : BottomHead + HalfHead;
        if (!HasStem || (Stem == StemDirection.Up) != above) return edge;
        return above ? Math.Min(edge, Math.Min(stemTip, FlagBounds?.Top ?? stemTip)) : Math.Max(edge, Math.Max(stemTip, FlagBounds?.Bottom ?? stemTip));
    }
}
