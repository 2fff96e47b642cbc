using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>A lesson, read and checked: everything is resolved, nothing is generated yet.</summary>
public sealed record Lesson
{
    private readonly Instrument? _writtenFor;

    /// <summary>Name for files, from the file name: lower-case words joined with hyphens.</summary>
    public required string Id { get; init; }
    /// <summary>Title.</summary>
    public required string Title { get; init; }
    /// <summary>Subtitle; may be empty.</summary>
    public string Subtitle { get; init; } = "";
    /// <summary>Author; may be empty.</summary>
    public string Author { get; init; } = "";
    /// <summary>Key.</summary>
    public required Key Key { get; init; }
    /// <summary>Meter.</summary>
    public required Meter Meter { get; init; }
    /// <summary>Tempo.</summary>
    public required Tempo Tempo { get; init; }
    /// <summary>Feel.</summary>
    public Feel Feel { get; init; }
    /// <summary>Instrument, with the lesson's own tuning, capo and the like applied.</summary>
    public required Instrument Instrument { get; init; }
    /// <summary>The instrument the lesson is written for; another than <see cref="Instrument"/> when the run asked for another. Absolute pitches and places on the neck are meant for it.</summary>
    public Instrument WrittenFor { get => _writtenFor ?? Instrument; init => _writtenFor = value; }
    /// <summary>Level, 1 (first months) to 5 (advanced).</summary>
    public int Level { get; init; } = 2;
    /// <summary>The progression.</summary>
    public required Progression Progression { get; init; }
    /// <summary>
    /// From the key the lesson is written in to the key it is to be played in: the perfect unison unless the lesson was re-keyed.
    /// Chords are moved already; a style that takes absolute pitches moves them by this. At most a tritone up or down.
    /// </summary>
    public Interval Transposition { get; init; }
    /// <summary>The teacher's own notes as Markdown, chord symbols in square brackets moved to the key; may be empty.</summary>
    public string Notes { get; init; } = "";
    /// <summary>The exercises asked for, in order.</summary>
    public required ImmutableArray<ExerciseRequest> Exercises { get; init; }
    /// <summary>Neck diagrams asked for, in order.</summary>
    public ImmutableArray<DiagramRequest> Diagrams { get; init; } = [];
    /// <summary>Whether the lesson says which diagrams it wants (perhaps none); when false, default ones are made.</summary>
    public bool HasOwnDiagrams { get; init; }
    /// <summary>The practice plan rows, in order.</summary>
    public ImmutableArray<PracticeStep> PracticePlan { get; init; } = [];
    /// <summary>Whether the lesson has a plan of its own (perhaps none); when false, one is made from the exercises.</summary>
    public bool HasOwnPracticePlan { get; init; }
    /// <summary>The kind of pages it is set on.</summary>
    public PageKind Pages { get; init; }
    /// <summary>The file it came from.</summary>
    public required SourceText Source { get; init; }
}
