using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>The words that mark a note of a line.</summary>
internal static class NoteMarkWords
{
    private static readonly (string Word, StrokeMarks Marks)[] All =
    [
        ("accent", new(Articulations.Accent)), ("strong", new(Articulations.Marcato)), ("staccato", new(Articulations.Staccato)), ("tenuto", new(Articulations.Tenuto)),
        ("mute", new(Articulations.PalmMute)), ("let-ring", new(Articulations.LetRing)), ("vibrato", new(Articulations.Vibrato)),
        ("ghost", new(Head: Notehead.Ghost)), ("dead", new(Head: Notehead.Dead)),
        ("thumb", new(Stroke: Stroke.Thumb)), ("pop", new(Stroke: Stroke.Pop)), ("down", new(Stroke: Stroke.Down)), ("up", new(Stroke: Stroke.Up)),
        ("index", new(Stroke: Stroke.Index)), ("middle", new(Stroke: Stroke.Middle)), ("ring", new(Stroke: Stroke.Ring)),
        ("hammer", new(Connection: Connection.HammerOn)), ("pull", new(Connection: Connection.PullOff)), ("slide", new(Connection: Connection.Slide)),
    ];

    /// <summary>Every word.</summary>
    public static IEnumerable<string> Names => All.Select(m => m.Word);

    /// <summary>What a word marks, or null.</summary>
    public static StrokeMarks? Find(string word)
    {
        foreach (var (name, marks) in All) if (name == word) return marks;
        return null;
    }

    /// <summary>Two sets of marks as one; the second wins where only one can hold.</summary>
    public static StrokeMarks Join(StrokeMarks first, StrokeMarks second) => new(
        first.Articulations | second.Articulations,
        second.Stroke == Stroke.None ? first.Stroke : second.Stroke,
        second.Head == Notehead.Normal ? first.Head : second.Head,
        second.Connection == Connection.None ? first.Connection : second.Connection);
}
