namespace SheetPress.Engraving;

/// <summary>The engravingDefaults of the font's SMuFL metadata, in staff spaces.</summary>
public sealed record EngravingDefaults
{
    /// <summary>Thickness of a staff line.</summary>
    public required double StaffLineThickness { get; init; }
    /// <summary>Thickness of a stem.</summary>
    public required double StemThickness { get; init; }
    /// <summary>Thickness of a beam.</summary>
    public required double BeamThickness { get; init; }
    /// <summary>White between two beams.</summary>
    public required double BeamSpacing { get; init; }
    /// <summary>Thickness of a ledger line.</summary>
    public required double LegerLineThickness { get; init; }
    /// <summary>How far a ledger line reaches beyond the notehead on each side.</summary>
    public required double LegerLineExtension { get; init; }
    /// <summary>Thickness of a slur at its ends.</summary>
    public required double SlurEndpointThickness { get; init; }
    /// <summary>Thickness of a slur in its middle.</summary>
    public required double SlurMidpointThickness { get; init; }
    /// <summary>Thickness of a tie at its ends.</summary>
    public required double TieEndpointThickness { get; init; }
    /// <summary>Thickness of a tie in its middle.</summary>
    public required double TieMidpointThickness { get; init; }
    /// <summary>Thickness of a thin barline.</summary>
    public required double ThinBarlineThickness { get; init; }
    /// <summary>Thickness of a thick barline.</summary>
    public required double ThickBarlineThickness { get; init; }
    /// <summary>White between the lines of a double barline.</summary>
    public required double BarlineSeparation { get; init; }
    /// <summary>White between repeat dots and the line beside them.</summary>
    public required double RepeatBarlineDotSeparation { get; init; }
    /// <summary>Thickness of the bracket at the left of a system.</summary>
    public required double BracketThickness { get; init; }
    /// <summary>Thickness of a hairpin.</summary>
    public required double HairpinThickness { get; init; }
    /// <summary>Thickness of the line of an ending.</summary>
    public required double RepeatEndingLineThickness { get; init; }
    /// <summary>Thickness of a tuplet bracket.</summary>
    public required double TupletBracketThickness { get; init; }
    /// <summary>Thickness of the box of a rehearsal mark.</summary>
    public required double TextEnclosureThickness { get; init; }
}
