using System.Collections.Immutable;
using SheetPress.Theory;

namespace SheetPress.Engraving;

/// <summary>One chord in the table "the harmony at a glance". Note names are strings, so that a language can have its own.</summary>
public sealed record HarmonyRow
{
    /// <summary>The chord; null for no chord.</summary>
    public required Chord? Chord { get; init; }

    /// <summary>Measures it stands in, as text: "1, 5–6"; empty to say nothing.</summary>
    public string Measures { get; init; } = "";

    /// <summary>Roman numeral in plain text: "iiø7", "V7/ii".</summary>
    public string Roman { get; init; } = "";

    /// <summary>Function in a short phrase; music in it as in <see cref="MusicMarkup"/>: "secondary dominant of [ii]".</summary>
    public string Function { get; init; } = "";

    /// <summary>Chord tones from the root up.</summary>
    public ImmutableArray<LabelledTone> Tones { get; init; } = [];

    /// <summary>Guide tones.</summary>
    public ImmutableArray<LabelledTone> GuideTones { get; init; } = [];

    /// <summary>Name of the scale to use: "C natural minor".</summary>
    public string ScaleName { get; init; } = "";

    /// <summary>Notes of the scale from its root up.</summary>
    public ImmutableArray<ScaleNote> ScaleNotes { get; init; } = [];

    /// <summary>Why that scale, in one short phrase; music in it as in <see cref="MusicMarkup"/>.</summary>
    public string Reason { get; init; } = "";
}

/// <summary>A tone by note name and by degree.</summary>
/// <param name="Note">Note name as printed: "E♭".</param>
/// <param name="Degree">Its degree above the root of the chord.</param>
/// <param name="IsChanged">Whether it is not in the key; printed underlined.</param>
public sealed record LabelledTone(string Note, Degree Degree, bool IsChanged = false);

/// <summary>A note of a scale.</summary>
/// <param name="Note">Note name as printed.</param>
/// <param name="IsChanged">Whether it is not in the key; printed in bold and underlined.</param>
public sealed record ScaleNote(string Note, bool IsChanged = false);
