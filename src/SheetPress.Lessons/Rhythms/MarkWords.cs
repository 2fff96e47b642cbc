using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>The words that mark a stroke: "accent", "ghost", "thumb", "hammer".</summary>
public static class MarkWords
{
    /// <summary>Signs of loudness, from soft to loud, and the sudden ones.</summary>
    private static string[] Dynamics { get; } = ["ppp", "pp", "p", "mp", "mf", "f", "ff", "fff", "fp", "sfz"];

    /// <summary>Every word with what it marks, in the order help shows them.</summary>
    public static IReadOnlyList<(string Word, StrokeMarks Marks)> All { get; } =
    [
        ("plain", default),
        ("accent", new(Articulations.Accent)),
        ("strong", new(Articulations.Marcato)),
        ("staccato", new(Articulations.Staccato)),
        ("tenuto", new(Articulations.Tenuto)),
        ("mute", new(Articulations.PalmMute)),
        ("let-ring", new(Articulations.LetRing)),
        ("vibrato", new(Articulations.Vibrato)),
        ("fermata", new(Articulations.Fermata)),
        ("ghost", new(Head: Notehead.Ghost)),
        ("dead", new(Head: Notehead.Dead)),
        ("harmonic", new(Head: Notehead.Harmonic)),
        ("thumb", new(Stroke: Stroke.Thumb)),
        ("pop", new(Stroke: Stroke.Pop)),
        ("down", new(Stroke: Stroke.Down)),
        ("up", new(Stroke: Stroke.Up)),
        ("index", new(Stroke: Stroke.Index)),
        ("middle", new(Stroke: Stroke.Middle)),
        ("ring", new(Stroke: Stroke.Ring)),
        ("hammer", new(Connection: Connection.HammerOn)),
        ("pull", new(Connection: Connection.PullOff)),
        ("slide", new(Connection: Connection.Slide)),
        ("slide-from-below", new() { SlideIn = LooseSlide.Below }),
        ("slide-from-above", new() { SlideIn = LooseSlide.Above }),
        ("slide-off-down", new() { SlideOut = LooseSlide.Below }),
        ("slide-off-up", new() { SlideOut = LooseSlide.Above }),
        ("bend-quarter", new() { Bend = 0.5 }),
        ("bend-half", new() { Bend = 1 }),
        ("bend-full", new() { Bend = 2 }),
        ("bend-full-and-half", new() { Bend = 3 }),
        ("bend-two-full", new() { Bend = 4 }),
        ("slur", new() { SlurStart = true }),
        ("end-slur", new() { SlurStop = true }),
        .. Dynamics.Select(d => (d, new StrokeMarks { Dynamic = d })),
        ("crescendo", new() { Hairpin = Hairpin.Crescendo }),
        ("diminuendo", new() { Hairpin = Hairpin.Diminuendo }),
        ("end-hairpin", new() { Hairpin = Hairpin.Stop }),
    ];

    /// <summary>Reads one word, or several joined by colons ("thumb:accent"); "plain" and "-" mark nothing.</summary>
    /// <returns>The marks; null with the reason reported when a word is unknown.</returns>
    public static StrokeMarks? Read(LocatedText text, DiagnosticBag bag)
    {
        if (text.Value == "-") return default(StrokeMarks);
        var sum = default(StrokeMarks);
        var start = 0;
        while (start <= text.Length)
        {
            var end = text.Value.IndexOf(':', start);
            if (end < 0) end = text.Length;
            var word = text.Value[start..end];
            if (Find(word) is not { } marks)
            {
                bag.Add(text.SpanOf(start, end - start), RhythmProblems.UnknownMarkWord(word, NearestWord.Find(word, All.Select(m => m.Word))));
                return null;
            }
            sum = sum.With(marks);
            start = end + 1;
        }
        return sum;
    }

    private static StrokeMarks? Find(string word)
    {
        foreach (var (name, marks) in All) if (name.Equals(word, StringComparison.OrdinalIgnoreCase)) return marks;
        return null;
    }
}
