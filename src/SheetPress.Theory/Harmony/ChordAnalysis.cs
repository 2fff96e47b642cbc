using System.Collections.Immutable;

namespace SheetPress.Theory;

/// <summary>What a chord does in a key, ready for the harmony table.</summary>
/// <param name="Chord">The chord.</param>
/// <param name="Roman">Its roman numeral in the key, as printed: "ii7", "V7/ii", "iiø7". Flats and sharps are b and #.</param>
/// <param name="Function">A short phrase: "tonic", "dominant", "secondary dominant of ii".</param>
/// <param name="Scale">The scale to use over it; it holds the sound of every tone of the chord.</param>
/// <param name="ScaleReason">Why that scale, in one short phrase.</param>
/// <param name="GuideTones">Third and seventh, or what stands for them: the suspended tone, the sixth, the fifth of a triad.</param>
public sealed record ChordAnalysis(Chord Chord, string Roman, string Function, Scale Scale, string ScaleReason, ImmutableArray<ChordTone> GuideTones)
{
    /// <summary>The numeral itself. A chord spelled against the key (Ab7 in E major) is read as the one that the key would spell (G#7).</summary>
    public required RomanNumeral Numeral { get; init; }

    /// <summary>The phrase for the function with numerals in square brackets, as in <see cref="MarkedText"/>: "secondary dominant of [ii]".</summary>
    public required string FunctionMarkup { get; init; }

    /// <summary>The function as a value.</summary>
    public required HarmonicFunction Kind { get; init; }

    /// <summary>The notes of the scale from its root up, the tones of the chord spelled as the chord has them, but no raised fifth beside a natural one.</summary>
    public ImmutableArray<NoteName> ScaleNotes => [.. Scale.Notes.Select(n => ChordScales.Spelled(n, Scale, Chord))];

    /// <summary>Notes of the scale, spelled as in <see cref="ScaleNotes"/>, that sound outside the key, in order from the scale's root: the B natural of a G7 in C minor.</summary>
    public required ImmutableArray<NoteName> ChangedNotes { get; init; }
}
