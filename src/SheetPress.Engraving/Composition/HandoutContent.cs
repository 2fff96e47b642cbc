using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>
/// All that stands on a handout, in words and values, before anything is laid out. Plain strings are set as they are, with ♭ ♯ ♮
/// taken from the music font; Markdown is read as <see cref="MarkdownReader"/> says.
/// </summary>
public sealed record HandoutContent
{
    /// <summary>Title of the sheet.</summary>
    public required string Title { get; init; }

    /// <summary>Subtitle; may be empty.</summary>
    public string Subtitle { get; init; } = "";

    /// <summary>Author; may be empty.</summary>
    public string Author { get; init; } = "";

    /// <summary>Language tag (BCP 47) of all text.</summary>
    public string Language { get; init; } = "en";

    /// <summary>The line of facts under the title: key, meter, tempo, instrument, level.</summary>
    public ImmutableArray<FactItem> Facts { get; init; } = [];

    /// <summary>Whether there is room for a name and a date in the title band.</summary>
    public bool NameAndDate { get; init; } = true;

    /// <summary>The harmony at a glance, one row a chord; empty for no table.</summary>
    public ImmutableArray<HarmonyRow> Harmony { get; init; } = [];

    /// <summary>Theory notes as Markdown, one paragraph each.</summary>
    public ImmutableArray<string> TheoryNotes { get; init; } = [];

    /// <summary>The teacher's own notes as Markdown; may be empty.</summary>
    public string TeacherNotes { get; init; } = "";

    /// <summary>Neck diagrams, in order.</summary>
    public ImmutableArray<NeckDiagram> Diagrams { get; init; } = [];

    /// <summary>The exercises, in order.</summary>
    public ImmutableArray<ExerciseContent> Exercises { get; init; } = [];

    /// <summary>The practice plan; empty for none.</summary>
    public ImmutableArray<PracticeRow> PracticePlan { get; init; } = [];

    /// <summary>Sum of the minutes of the practice plan as printed; empty for none.</summary>
    public string PracticeTotal { get; init; } = "";

    /// <summary>The line of caution, plain text; empty for none.</summary>
    public string Caution { get; init; } = "";

    /// <summary>Headings and other fixed words.</summary>
    public SheetLabels Labels { get; init; } = new();
}

/// <summary>One fact of the line under the title.</summary>
/// <param name="Label">What it is: "Key".</param>
/// <param name="Value">The value: "C minor", "♩ = 92" (note signs U+2669 and U+266A come from the music font).</param>
public sealed record FactItem(string Label, string Value);
