using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Engraving;

/// <summary>A measure (or a run of empty ones drawn as one rest) with what holds in it and what held before it.</summary>
internal sealed record MeasureContext
{
    /// <summary>The (first) measure.</summary>
    public required Measure Measure { get; init; }

    /// <summary>Its index in the score.</summary>
    public required int Index { get; init; }

    /// <summary>How many measures it stands for; above 1 only for a multi-bar rest.</summary>
    public int Count { get; init; } = 1;

    /// <summary>The last measure it stands for, whose end is its end.</summary>
    public required Measure LastMeasure { get; init; }

    /// <summary>Clef in force.</summary>
    public required Clef Clef { get; init; }

    /// <summary>Clef of the measure before, or its own at the start.</summary>
    public required Clef ClefBefore { get; init; }

    /// <summary>Whether this is the second part of a divided measure, which bears the number of the first.</summary>
    public bool IsContinued { get; init; }

    /// <summary>Key of the measure before; null at the start.</summary>
    public Key? KeyBefore { get; init; }

    /// <summary>Meter of the measure before; null at the start.</summary>
    public Meter? MeterBefore { get; init; }

    /// <summary>The chord symbols that are shown: none where the sign for the measure before says them too.</summary>
    public ImmutableArray<HarmonyMark> Harmonies { get; init; } = [];

    /// <summary>Index in the score of the last measure.</summary>
    public int LastIndex => Index + Count - 1;

    /// <summary>Whether this is the start of the score.</summary>
    public bool IsStart => KeyBefore is null;

    /// <summary>Whether the clef changes here.</summary>
    public bool ClefChanges => Clef != ClefBefore;

    /// <summary>Whether the signature changes here.</summary>
    public bool KeyChanges => KeyBefore is { } before && before.Fifths != Measure.Key.Fifths;

    /// <summary>Whether the meter is stated here: at the start or where it changes.</summary>
    public bool MeterStarts => MeterBefore is not { } before || before.Beats != Measure.Meter.Beats || before.BeatUnit != Measure.Meter.BeatUnit;

    /// <summary>Whether the measure is shorter than its meter because the music starts with an upbeat.</summary>
    public bool IsPickup => Measure.Number == 0;
}
