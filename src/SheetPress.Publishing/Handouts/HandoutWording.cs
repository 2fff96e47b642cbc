using SheetPress.Scores;

namespace SheetPress.Publishing;

/// <summary>The sentences and words of a handout that do not come from the lesson. Kept in one place, so that a language can have its own.</summary>
public sealed record HandoutWording
{
    /// <summary>English.</summary>
    public static HandoutWording English { get; } = new();

    /// <summary>Label of the key.</summary>
    public string Key { get; init; } = "Key";
    /// <summary>Label of the meter.</summary>
    public string Meter { get; init; } = "Meter";
    /// <summary>Label of the tempo.</summary>
    public string Tempo { get; init; } = "Tempo";
    /// <summary>Label of the feel.</summary>
    public string Feel { get; init; } = "Feel";
    /// <summary>Label of the instrument.</summary>
    public string Instrument { get; init; } = "Instrument";
    /// <summary>Label of the tuning.</summary>
    public string Tuning { get; init; } = "Tuning";
    /// <summary>Label of the capo.</summary>
    public string Capo { get; init; } = "Capo";
    /// <summary>Label of the level.</summary>
    public string Level { get; init; } = "Level";
    /// <summary>The level; {0} is the number.</summary>
    public string LevelOf { get; init; } = "{0} of 5";
    /// <summary>The capo; {0} is the fret.</summary>
    public string CapoAt { get; init; } = "fret {0}";
    /// <summary>Caption of one of several positions; {0} is its number.</summary>
    public string DiagramPosition { get; init; } = "position {0}";
    /// <summary>Caption of the path of one bar; {0} is the exercise, {1} the bar.</summary>
    public string PathOfBar { get; init; } = "Exercise {0}, bar {1}: the notes in order";
    /// <summary>Caption of the path of several bars; {0} is the exercise, {1} and {2} the bars.</summary>
    public string PathOfBars { get; init; } = "Exercise {0}, bars {1}–{2}: the notes in order";
    /// <summary>The line of caution.</summary>
    public string Caution { get; init; } =
        "Warm up before you play and rest often. Keep the volume safe. Stop when something hurts, and ask your teacher or a doctor if it does not go away.";

    /// <summary>Swung eighths in words.</summary>
    public string SwingEighths { get; init; } = "swing";
    /// <summary>Swung sixteenths in words.</summary>
    public string SwingSixteenths { get; init; } = "swing sixteenths";
    /// <summary>No swing in words.</summary>
    public string Straight { get; init; } = "straight";

    /// <summary>The feel in words.</summary>
    public string FeelName(Feel feel) => feel switch
    {
        Scores.Feel.SwingEighths => SwingEighths,
        Scores.Feel.SwingSixteenths => SwingSixteenths,
        _ => Straight,
    };
}
