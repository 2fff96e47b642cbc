using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>How one stroke of a rhythm is played. The default value marks nothing.</summary>
/// <param name="Articulations">Articulations.</param>
/// <param name="Stroke">Thumb, pop and the like.</param>
/// <param name="Head">Ghost or dead.</param>
/// <param name="Connection">How it is joined to the next stroke.</param>
public readonly record struct StrokeMarks(Articulations Articulations = Articulations.None, Stroke Stroke = Stroke.None, Notehead Head = Notehead.Normal, Connection Connection = Connection.None)
{
    /// <summary>These marks and others: articulations add up, of the rest the others win where they say anything.</summary>
    public StrokeMarks With(StrokeMarks others) => new(
        Articulations | others.Articulations,
        others.Stroke == Stroke.None ? Stroke : others.Stroke,
        others.Head == Notehead.Normal ? Head : others.Head,
        others.Connection == Connection.None ? Connection : others.Connection);
}
