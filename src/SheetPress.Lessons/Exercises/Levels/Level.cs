using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>What one level changes in the exercises. A lesson's own rhythm, range or options always win over it.</summary>
internal sealed record Level
{
    /// <summary>1 to 5.</summary>
    public required int Number { get; init; }
    /// <summary>Who plays at it.</summary>
    public required string Player { get; init; }
    /// <summary>The highest fret at which it is at home; notes beyond are used only where a chord leaves no other octave.</summary>
    public int HighestFret => HandModel.HomeFret(Number);
    /// <summary>The value in which scales, arpeggios and runs move when the lesson gives no rhythm.</summary>
    public required RunValue Runs { get; init; }
    /// <summary>Octaves of an arpeggio when the lesson does not say.</summary>
    public required int ArpeggioOctaves { get; init; }
    /// <summary>The notes of a walking line.</summary>
    public required WalkingNotes Walking { get; init; }
    /// <summary>Half steps from the lowest root that a walking line or a two-feel stays within.</summary>
    public required int LineRange { get; init; }
    /// <summary>Bars of a walking line from one that has a skip to the next; 0 for no skips.</summary>
    public required int SkipEvery { get; init; }
    /// <summary>Chords of a two-feel from one that is led out of to the next; 0 for no leads.</summary>
    public required int LeadEvery { get; init; }
    /// <summary>What a groove has at it that it lacks a level below.</summary>
    public required string Groove { get; init; }
    /// <summary>Bars of a phrase of a groove, the last of which has a fill; 0 for no fills.</summary>
    public required int FillEvery { get; init; }
    /// <summary>What a rhythm on one note is made of.</summary>
    public required string OneNote { get; init; }
}

/// <summary>The value in which runs move.</summary>
internal enum RunValue
{
    /// <summary>One note a beat.</summary>
    Beats,
    /// <summary>Eighths.</summary>
    Eighths,
    /// <summary>Sixteenths.</summary>
    Sixteenths,
}

/// <summary>The notes of a walking line, each kind with those before it.</summary>
internal enum WalkingNotes
{
    /// <summary>Chord tones, and a scale step into the next root.</summary>
    ChordTones,
    /// <summary>Scale steps on weak beats too.</summary>
    ScaleSteps,
    /// <summary>Half steps into the next root too.</summary>
    HalfSteps,
}
