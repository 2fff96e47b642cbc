namespace SheetPress.Engraving;

/// <summary>What the engraving lint looks for.</summary>
public enum LintRule
{
    /// <summary>Ink of unrelated things overlaps or comes closer than 0.15 staff spaces.</summary>
    Ink,
    /// <summary>Ink lies outside the margins (of a system: beyond its ends).</summary>
    Margin,
    /// <summary>A stem is too short or too long.</summary>
    Stem,
    /// <summary>A beam is too steep.</summary>
    Beam,
    /// <summary>A notehead and the fret number of the same event are not under each other, or an articulation has left its note.</summary>
    Alignment,
    /// <summary>A barline does not run from the first staff to the last, or its repeat dots do not stand under each other.</summary>
    Barline,
    /// <summary>A system is stretched or squeezed beyond the limits.</summary>
    Stretch,
    /// <summary>Text is smaller than seven points.</summary>
    TextSize,
    /// <summary>A line of text runs into other text or over a rule of its table.</summary>
    Text,
    /// <summary>A title stands at the foot of a page without its music.</summary>
    Title,
}
