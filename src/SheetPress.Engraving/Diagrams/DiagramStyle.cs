namespace SheetPress.Engraving;

/// <summary>Measures of neck diagrams, in millimetres.</summary>
public sealed record DiagramStyle
{
    /// <summary>Distance of two strings of a lying neck.</summary>
    public double StringGap { get; init; } = 5.2;

    /// <summary>Distance of two strings of an upright diagram.</summary>
    public double UprightStringGap { get; init; } = 5.2;

    /// <summary>Distance of two frets of an upright diagram.</summary>
    public double UprightFretGap { get; init; } = 7;

    /// <summary>Length a fret of a lying neck gets on average, where there is room.</summary>
    public double FretGap { get; init; } = 14;

    /// <summary>Half the height of a dot.</summary>
    public double DotRadius { get; init; } = 2.25;

    /// <summary>Text inside dots and beside the neck: size of the em.</summary>
    public double LabelSize { get; init; } = 7.2 * TextStyle.Point;

    /// <summary>Thickness of a fret wire.</summary>
    public double FretThickness { get; init; } = 0.25;

    /// <summary>Thickness of the nut.</summary>
    public double NutThickness { get; init; } = 1.1;

    /// <summary>Thickness of the bar of a barre.</summary>
    public double BarreThickness { get; init; } = 1.7;

    /// <summary>Thickness of the outline of an open circle.</summary>
    public double OutlineThickness { get; init; } = 0.3;

    /// <summary>The same with all that is read enlarged: dots, labels, and the room for them.</summary>
    /// <param name="factor">How many times, above zero.</param>
    public DiagramStyle Enlarged(double factor) => this with
    {
        StringGap = factor * StringGap,
        UprightStringGap = factor * UprightStringGap,
        UprightFretGap = factor * UprightFretGap,
        FretGap = factor * FretGap,
        DotRadius = factor * DotRadius,
        LabelSize = factor * LabelSize,
        NutThickness = factor * NutThickness,
        BarreThickness = factor * BarreThickness,
        OutlineThickness = factor * OutlineThickness,
    };
}
