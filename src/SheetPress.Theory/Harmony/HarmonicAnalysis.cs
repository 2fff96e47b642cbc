using System.Collections.Immutable;

namespace SheetPress.Theory;

/// <summary>What a chord does in a key, ready for the harmony table.</summary>
/// <param name="Chord">The chord.</param>
/// <param name="Roman">Its roman numeral in the key, as printed: "ii", "V7/ii", "iiø7".</param>
/// <param name="Function">A short phrase: "tonic", "dominant", "secondary dominant of ii".</param>
/// <param name="Scale">The scale to use over it.</param>
/// <param name="ScaleReason">Why that scale, in one short phrase.</param>
/// <param name="GuideTones">Third and seventh (or what stands for them).</param>
public sealed record ChordAnalysis(Chord Chord, string Roman, string Function, Scale Scale, string ScaleReason, ImmutableArray<ChordTone> GuideTones);
