namespace SheetPress.Engraving;

/// <summary>The fixed words of a sheet. They are data, so that a language (or a teacher) can have its own; the defaults are English.</summary>
public sealed record SheetLabels
{
    /// <summary>Room for the student's name.</summary>
    public string Name { get; init; } = "Name";
    /// <summary>Room for the date.</summary>
    public string Date { get; init; } = "Date";
    /// <summary>Heading of the harmony table.</summary>
    public string Harmony { get; init; } = "The harmony at a glance";
    /// <summary>The same in the running head of a narrow page.</summary>
    public string HarmonyShort { get; init; } = "Harmony";
    /// <summary>Column of chord symbols.</summary>
    public string Chord { get; init; } = "Chord";
    /// <summary>Column of measure numbers.</summary>
    public string Measures { get; init; } = "Bars";
    /// <summary>Before the number of a single measure.</summary>
    public string Measure { get; init; } = "Bar";
    /// <summary>Column of roman numeral and function.</summary>
    public string Function { get; init; } = "In the key";
    /// <summary>Column of chord tones.</summary>
    public string Tones { get; init; } = "Chord tones";
    /// <summary>Column of guide tones.</summary>
    public string GuideTones { get; init; } = "Guide tones";
    /// <summary>Column of the scale.</summary>
    public string Scale { get; init; } = "Scale to use, and why";
    /// <summary>Line under the harmony table that explains the marked notes; empty for none.</summary>
    public string ChangedNotes { get; init; } = "Underlined: notes that are not in the key.";
    /// <summary>Heading of the theory notes.</summary>
    public string Theory { get; init; } = "What is going on";
    /// <summary>Heading of the teacher's notes.</summary>
    public string TeacherNotes { get; init; } = "From your teacher";
    /// <summary>Heading of the neck diagrams.</summary>
    public string Diagrams { get; init; } = "On the neck";
    /// <summary>What a filled square means in a diagram.</summary>
    public string RootLegend { get; init; } = "root";
    /// <summary>What a filled circle means in a diagram.</summary>
    public string ToneLegend { get; init; } = "chord tone";
    /// <summary>What an open circle means in a diagram.</summary>
    public string OtherLegend { get; init; } = "other note of the scale";
    /// <summary>Heading of the exercises.</summary>
    public string Exercises { get; init; } = "Exercises";
    /// <summary>An exercise in the running head of a narrow page; {0} is its number.</summary>
    public string ExerciseShort { get; init; } = "Exercise {0}";
    /// <summary>Beside the tempo of an exercise without swing that follows one with swing.</summary>
    public string Straight { get; init; } = "straight";
    /// <summary>Heading of the practice plan.</summary>
    public string Practice { get; init; } = "Practice plan";
    /// <summary>Column of what to practise.</summary>
    public string Task { get; init; } = "Exercise";
    /// <summary>Column of tempo steps.</summary>
    public string Tempos { get; init; } = "Tempo steps";
    /// <summary>Column of repetitions.</summary>
    public string Repetitions { get; init; } = "Times each";
    /// <summary>Column of minutes.</summary>
    public string Minutes { get; init; } = "Minutes";
    /// <summary>Row that adds up the minutes.</summary>
    public string Total { get; init; } = "Total";
    /// <summary>Lead-in of the caution.</summary>
    public string Caution { get; init; } = "Take care of your hands and ears.";
    /// <summary>Footer: {0} is the page, {1} the number of pages.</summary>
    public string PageOf { get; init; } = "{0} / {1}";
}
