using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>A way of turning a progression into a line. Stateless; shared by all lessons.</summary>
public abstract class ExerciseStyle
{
    /// <summary>Name in lessons: lower-case words joined with hyphens.</summary>
    public abstract string Name { get; }
    /// <summary>Title on the page when the lesson gives none.</summary>
    public abstract string Title { get; }
    /// <summary>One line for the list of styles.</summary>
    public abstract string Summary { get; }
    /// <summary>The group in the catalogue: "chord tones", "scales", "links", "lines", "grooves", "neck", "own".</summary>
    public abstract string Group { get; }
    /// <summary>Options it takes besides the common ones.</summary>
    public abstract ImmutableArray<StyleOption> Options { get; }
    /// <summary>The one-line instruction on the page when the lesson gives none.</summary>
    public abstract string Instruction(ExerciseRequest request);
    /// <summary>The title as it is true of a progression; differs from <see cref="Title"/> where a style is made for certain meters.</summary>
    public virtual string TitleIn(Progression progression) => Title;
    /// <summary>The instruction as it is true of a progression; empty for none.</summary>
    public virtual string InstructionIn(Progression progression, ExerciseRequest request) => Instruction(request);
    /// <summary>A longer guide for the style's own page in the catalogue, plain text of up to 100 columns; empty for none.</summary>
    public virtual string Guide => "";
    /// <summary>The meter it is at home in, for its picture in the catalogue; null when any will do.</summary>
    public virtual Meter? HomeMeter => null;
    /// <summary>The instrument it is at home on, for its picture in the catalogue; null when any will do.</summary>
    public virtual string? HomeInstrument => null;
    /// <summary>Whether its point is where on the neck the notes are, so that a staff alone has to say on which string.</summary>
    public virtual bool IsAboutPlaces => false;
    /// <summary>How pairs are played in this style whatever the lesson's feel; null to follow the lesson.</summary>
    public virtual Feel? OwnFeel => null;
    /// <summary>What makes no sense together in a request: the option to point at and what to say; null when all is well.</summary>
    public virtual (string Option, Problem Problem)? ClashIn(ExerciseRequest request) => null;
    /// <summary>The exercises that a request stands for: itself, or several that its options ask for.</summary>
    public virtual ImmutableArray<ExerciseRequest> Expand(ExerciseRequest request) => [request];
    /// <summary>Makes the line: sounding pitches with degrees, rhythm and marks, before fingering. Problems are reported to the context.</summary>
    public abstract Line Generate(ExerciseContext context);
    /// <summary>The lower of two voices on one staff; null for a single voice.</summary>
    public virtual Line? GenerateLower(ExerciseContext context) => null;
}

/// <summary>All that a style may look at.</summary>
/// <param name="Lesson">The lesson.</param>
/// <param name="Request">The exercise.</param>
/// <param name="Diagnostics">Where problems go.</param>
public sealed record ExerciseContext(Lesson Lesson, ExerciseRequest Request, DiagnosticBag Diagnostics)
{
    /// <summary>The progression.</summary>
    public Progression Progression => Lesson.Progression;
    /// <summary>The instrument.</summary>
    public Instrument Instrument => Lesson.Instrument;
    /// <summary>The key.</summary>
    public Key Key => Lesson.Key;
    /// <summary>The level in force.</summary>
    public int Level => Request.Level ?? Lesson.Level;
}
