using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>One way to play a pattern for a time: a bar, part of a bar or several bars.</summary>
/// <param name="Line">What is played.</param>
/// <param name="Meter">The meter it is for.</param>
/// <param name="Level">The level from which it is used.</param>
/// <param name="Over">The kind of chord it is for; null for any.</param>
internal sealed record PatternLine(WrittenLine Line, Meter Meter, int Level, ThirdKind? Over);

/// <summary>What a chord's third makes of it.</summary>
internal enum ThirdKind
{
    /// <summary>A major third: major, dominant and augmented chords.</summary>
    Major,
    /// <summary>A minor third: minor, half-diminished and diminished chords.</summary>
    Minor,
}

/// <summary>A pattern as its file gives it: either degrees that take any rhythm, or lines with a rhythm of their own.</summary>
internal sealed record Pattern
{
    /// <summary>Title on the page.</summary>
    public required string Title { get; init; }
    /// <summary>One line for the list of styles.</summary>
    public string Summary { get; init; } = "";
    /// <summary>The one-line instruction on the page: what is true in every meter.</summary>
    public string Instruction { get; init; } = "";
    /// <summary>What more is true only in the meters that its lines are for.</summary>
    public string InOwnMeter { get; init; } = "";
    /// <summary>The group in the catalogue.</summary>
    public string Group { get; init; } = "grooves";
    /// <summary>How pairs are played, where the pattern depends on it.</summary>
    public Feel? Feel { get; init; }
    /// <summary>Families of instruments it makes sense on; empty for all.</summary>
    public ImmutableArray<InstrumentFamily> Families { get; init; } = [];
    /// <summary>Degrees that take any rhythm; empty for a pattern of lines.</summary>
    public ImmutableArray<DegreeRequest> Tones { get; init; } = [];
    /// <summary>The lines.</summary>
    public ImmutableArray<PatternLine> Lines { get; init; } = [];
    /// <summary>Lines that lead into a new phrase.</summary>
    public ImmutableArray<PatternLine> Fills { get; init; } = [];

    /// <summary>Whether lines of one meter are played in another: 2/2 is written like 4/4.</summary>
    public static bool Alike(Meter a, Meter b) => a.MeasureLength == b.MeasureLength && a.IsCompound == b.IsCompound;

    /// <summary>Whether it has lines for a meter.</summary>
    public bool IsFor(Meter meter) => Lines.Any(l => Alike(l.Meter, meter));

    /// <summary>Whether its bars begin with what was struck before the bar line, as a tumbao's do.</summary>
    public bool IsTiedOver => !Lines.IsEmpty && Lines.All(l => l.Line.Notes is [{ IsHold: true }, ..]);
}
