using System.Collections.Immutable;
using SheetPress.Theory;

namespace SheetPress.Publishing;

/// <summary>One degree element: number, alteration, how it departs from the kind, and what to print for that.</summary>
internal readonly record struct KindDegree(int Number, int Alteration, string Type, string? Text);

/// <summary>A chord quality as MusicXML says it.</summary>
/// <param name="Value">The kind-value of the standard.</param>
/// <param name="Text">What to print for the kind; alterations are in the degrees alone.</param>
/// <param name="Degrees">What departs from the kind.</param>
internal sealed record HarmonyKind(string Value, string Text, ImmutableArray<KindDegree> Degrees)
{
    public static HarmonyKind Of(ChordQuality quality)
    {
        var value = quality.Suffix switch
        {
            "" => "major",
            "m" => "minor",
            "dim" => "diminished",
            "7" => "dominant",
            "maj7" => "major-seventh",
            "m7" => "minor-seventh",
            "m7b5" => "half-diminished",
            "dim7" => "diminished-seventh",
            _ => "other",
        };
        return new HarmonyKind(value, quality.Suffix, []);
    }
}
