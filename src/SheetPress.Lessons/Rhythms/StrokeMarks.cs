using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>How one stroke is played. The default value marks nothing.</summary>
/// <param name="Articulations">Articulations.</param>
/// <param name="Stroke">Thumb, pop and the like.</param>
/// <param name="Head">Ghost, dead or harmonic.</param>
/// <param name="Connection">How it is joined to the next stroke.</param>
public readonly record struct StrokeMarks(Articulations Articulations = Articulations.None, Stroke Stroke = Stroke.None, Notehead Head = Notehead.Normal, Connection Connection = Connection.None)
{
    /// <summary>A slide into it from nowhere.</summary>
    public LooseSlide SlideIn { get; init; }

    /// <summary>A slide out of it to nowhere.</summary>
    public LooseSlide SlideOut { get; init; }

    /// <summary>Bend in half steps; null for none.</summary>
    public double? Bend { get; init; }

    /// <summary>Whether a slur starts.</summary>
    public bool SlurStart { get; init; }

    /// <summary>Whether a slur ends.</summary>
    public bool SlurStop { get; init; }

    /// <summary>Loudness from here on; null for as before.</summary>
    public string? Dynamic { get; init; }

    /// <summary>A change of loudness that starts or ends.</summary>
    public Hairpin Hairpin { get; init; }

    /// <summary>These marks and others: articulations and slurs add up, of the rest the others win where they say anything.</summary>
    public StrokeMarks With(StrokeMarks others) => new(
        Articulations | others.Articulations,
        others.Stroke == Stroke.None ? Stroke : others.Stroke,
        others.Head == Notehead.Normal ? Head : others.Head,
        others.Connection == Connection.None ? Connection : others.Connection)
    {
        SlideIn = others.SlideIn == LooseSlide.None ? SlideIn : others.SlideIn,
        SlideOut = others.SlideOut == LooseSlide.None ? SlideOut : others.SlideOut,
        Bend = others.Bend ?? Bend,
        SlurStart = SlurStart || others.SlurStart,
        SlurStop = SlurStop || others.SlurStop,
        Dynamic = others.Dynamic ?? Dynamic,
        Hairpin = others.Hairpin == Hairpin.None ? Hairpin : others.Hairpin,
    };

    /// <summary>A note played like this; its tones keep their own heads.</summary>
    public LineNote On(LineNote note) => note with
    {
        Articulations = Articulations,
        Stroke = Stroke,
        Connection = Connection,
        SlideIn = SlideIn,
        SlideOut = SlideOut,
        BendHalfSteps = Bend,
        SlurStart = SlurStart,
        SlurStop = SlurStop,
        Dynamic = Dynamic,
        Hairpin = Hairpin,
    };
}
