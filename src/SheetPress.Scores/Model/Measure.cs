using System.Collections.Immutable;
using SheetPress.Theory;

namespace SheetPress.Scores;

/// <summary>A chord symbol over the staff.</summary>
/// <param name="Offset">Quarter notes from the start of the measure.</param>
/// <param name="Chord">The chord; null means no chord (N.C.).</param>
/// <param name="Roman">Roman numeral to show beneath, or null.</param>
public sealed record HarmonyMark(Fraction Offset, Chord? Chord, string? Roman = null)
{
    /// <summary>A small chord diagram to show over the symbol: tones with string and fret; empty for none.</summary>
    public ImmutableArray<FretPosition> Frame { get; init; } = [];

    /// <summary>Fingers that lie over several strings of the diagram.</summary>
    public ImmutableArray<Barre> FrameBarres { get; init; } = [];

    /// <summary>Whether the diagram shows where the tones lie, to be played one after the other: strings without a tone are then not marked as silent.</summary>
    public bool FrameIsMap { get; init; }
}

/// <summary>Kinds of marks that stand at a point in time.</summary>
public enum DirectionKind
{
    /// <summary>Plain words in italics above the staff.</summary>
    Words,
    /// <summary>A rehearsal mark.</summary>
    Rehearsal,
    /// <summary>A dynamic such as "mf" (the text).</summary>
    Dynamic,
    /// <summary>A crescendo hairpin starts.</summary>
    CrescendoStart,
    /// <summary>A diminuendo hairpin starts.</summary>
    DiminuendoStart,
    /// <summary>The open hairpin ends.</summary>
    HairpinStop,
    /// <summary>The segno sign.</summary>
    Segno,
    /// <summary>The coda sign.</summary>
    Coda,
    /// <summary>"D.C.", with "al Fine" or "al Coda" as the text says.</summary>
    DaCapo,
    /// <summary>"D.S.", with "al Fine" or "al Coda" as the text says.</summary>
    DalSegno,
    /// <summary>"To Coda".</summary>
    ToCoda,
    /// <summary>"Fine".</summary>
    Fine,
    /// <summary>A new tempo from here on.</summary>
    Tempo,
}

/// <summary>A mark at a point in time.</summary>
/// <param name="Offset">Quarter notes from the start of the measure.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Text">Its text, where the kind has one.</param>
public sealed record Direction(Fraction Offset, DirectionKind Kind, string Text = "")
{
    /// <summary>Of dynamics and hairpins, the voice that they belong to where two voices have their own: 0 for the upper, 1 for the lower; null for all there is.</summary>
    public int? Voice { get; init; }

    /// <summary>The tempo of a <see cref="DirectionKind.Tempo"/>; null for every other kind.</summary>
    public Tempo? Tempo { get; init; }

    /// <summary>The equation of note values that the tempo follows from and that is shown in its place; null for a tempo that is shown as itself.</summary>
    public TempoEquation? Equation { get; init; }

    /// <summary>A new tempo from a point in time on.</summary>
    /// <param name="offset">Quarter notes from the start of the measure.</param>
    /// <param name="tempo">The tempo.</param>
    public static Direction OfTempo(Fraction offset, Tempo tempo) => new(offset, DirectionKind.Tempo) { Tempo = tempo };

    /// <summary>A new tempo from a point in time on that an equation of note values says. A frame states it so; the score that is built has the tempo beside it.</summary>
    /// <param name="offset">Quarter notes from the start of the measure.</param>
    /// <param name="equation">The equation.</param>
    public static Direction OfEquation(Fraction offset, TempoEquation equation) => new(offset, DirectionKind.Tempo) { Equation = equation };
}

/// <summary>Questions to the marks of a measure.</summary>
public static class MeasureDirections
{
    /// <summary>Whether a mark of a kind stands at the start of the measure.</summary>
    /// <param name="directions">The marks of the measure.</param>
    /// <param name="kind">The kind.</param>
    public static bool BeginWith(this ImmutableArray<Direction> directions, DirectionKind kind) => directions.Any(d => d.Kind == kind && d.Offset == Fraction.Zero);
}

/// <summary>Barlines that can end a measure.</summary>
public enum Barline
{
    /// <summary>A single line.</summary>
    Single,
    /// <summary>A thin double line, the end of a section.</summary>
    Double,
    /// <summary>Thin and thick, the end.</summary>
    Final,
    /// <summary>No line.</summary>
    None,
}

/// <summary>One measure.</summary>
public sealed record Measure
{
    /// <summary>The number shown, from 1; 0 for a pickup.</summary>
    public required int Number { get; init; }

    /// <summary>Meter in force.</summary>
    public required Meter Meter { get; init; }

    /// <summary>Key in force.</summary>
    public required Key Key { get; init; }

    /// <summary>Actual length in quarter notes; shorter than the meter for a pickup or a measure that completes one.</summary>
    public required Fraction Length { get; init; }

    /// <summary>One or two voices, upper first.</summary>
    public required ImmutableArray<Voice> Voices { get; init; }

    /// <summary>Chord symbols in order.</summary>
    public ImmutableArray<HarmonyMark> Harmonies { get; init; } = [];

    /// <summary>Other marks in order.</summary>
    public ImmutableArray<Direction> Directions { get; init; } = [];

    /// <summary>Whether a repeat starts here.</summary>
    public bool RepeatStart { get; init; }

    /// <summary>How many times the section that ends here is played; 0 when no repeat ends here, else 2 or more.</summary>
    public int RepeatEndTimes { get; init; }

    /// <summary>Numbers of the ending that starts here (1, 2); empty when none does.</summary>
    public ImmutableArray<int> EndingStart { get; init; } = [];

    /// <summary>Whether an ending bracket stops at the end of this measure.</summary>
    public bool EndingStop { get; init; }

    /// <summary>Whether the stopping ending bracket is closed with a hook.</summary>
    public bool EndingClosed { get; init; }

    /// <summary>The barline at the end, when no repeat ends here.</summary>
    public Barline Barline { get; init; }

    /// <summary>Whether a new system is wanted before this measure.</summary>
    public bool BreakBefore { get; init; }

    /// <summary>Whether the measure is printed as the sign "repeat the measure before" (its voices still hold the notes).</summary>
    public bool RepeatsPrevious { get; init; }

    /// <summary>A clef change that holds from this measure on; null for none.</summary>
    public Clef? ClefChange { get; init; }
}
