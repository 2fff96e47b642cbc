using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>What a measure shows.</summary>
internal enum MeasureKind
{
    /// <summary>Notes and rests.</summary>
    Music,
    /// <summary>The sign to repeat the measure before.</summary>
    RepeatSign,
    /// <summary>A rest over several measures.</summary>
    MultiBarRest,
}

/// <summary>A measure planned: which voices it shows and how they stand on the staff.</summary>
/// <param name="Context">What holds in it.</param>
/// <param name="Kind">What it shows.</param>
/// <param name="Voices">Its voices, the upper first; empty unless it shows music.</param>
internal sealed record MeasurePlan(MeasureContext Context, MeasureKind Kind, ImmutableArray<VoicePlan> Voices)
{
    /// <summary>Whether the stems of each voice keep to one side.</summary>
    public bool HasTwoVoices => Voices.Length > 1;

    /// <summary>Actual length in quarter notes of what is drawn.</summary>
    public Fraction Length => Context.Measure.Length;
}
