using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>A lesson, read and checked: everything is resolved, nothing is generated yet.</summary>
public sealed record Lesson
{
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
    /// <summary>Level, 1 (first months) to 5 (advanced).</summary>
    public int Level { get; init; } = 2;
    /// <summary>The progression.</summary>
    public required Progression Progression { get; init; }
    /// <summary>The teacher's own notes as Markdown; may be empty.</summary>
    public string Notes { get; init; } = "";
    /// <summary>The exercises asked for, in order.</summary>
    public required ImmutableArray<ExerciseRequest> Exercises { get; init; }
    /// <summary>Neck diagrams asked for; default ones when the lesson says nothing.</summary>
    public ImmutableArray<DiagramRequest> Diagrams { get; init; } = [];
    /// <summary>The practice plan rows; made from the exercises when the lesson says nothing.</summary>
    public ImmutableArray<PracticeStep> PracticePlan { get; init; } = [];
    /// <summary>The file it came from.</summary>
    public required SourceText Source { get; init; }
}

/// <summary>A neck diagram asked for.</summary>
/// <param name="Kind">"chord" (tones of one chord), "scale", "shape" (explicit positions).</param>
/// <param name="Subject">Chord symbol or scale as text: "Cm7", "C natural minor".</param>
/// <param name="FromFret">Lowest fret, or null to fit.</param>
/// <param name="ToFret">Highest fret, or null to fit.</param>
/// <param name="Upright">Whether it is an upright chord box instead of a horizontal neck.</param>
/// <param name="ShowNotes">Whether dots hold note names instead of degrees.</param>
/// <param name="Caption">Caption; may be empty.</param>
/// <param name="Span">Where it is written.</param>
public sealed record DiagramRequest(string Kind, string Subject, int? FromFret, int? ToFret, bool Upright, bool ShowNotes, string Caption, SourceSpan Span)
{
    /// <summary>Explicit positions of a shape.</summary>
    public ImmutableArray<FretPosition> Positions { get; init; } = [];
}

/// <summary>One row of the practice plan.</summary>
/// <param name="Task">What to do.</param>
/// <param name="Tempos">Tempo steps, beats a minute.</param>
/// <param name="Repetitions">Times at each tempo; 0 when not said.</param>
/// <param name="Minutes">Minutes; 0 when not said.</param>
public sealed record PracticeStep(string Task, ImmutableArray<double> Tempos, int Repetitions, double Minutes);
