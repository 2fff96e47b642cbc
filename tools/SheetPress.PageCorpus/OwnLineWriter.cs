using System.Text;

namespace SheetPress.PageCorpus;

/// <summary>Writes lines as a teacher would: degrees with rhythm, double stops, ties, tuplets, ghost and dead notes, and all marks.</summary>
internal sealed class OwnLineWriter(Random random, string meter)
{
    private const int MostBars = 4;

    private static readonly string[] Tones = ["R", "R", "3", "5", "5", "7", "8", "8", "9", "10", "low-5", "b3", "b7", "#4"];
    private static readonly string[] DoubleStops = ["R&10", "3&7", "R&5", "5&10", "R&8"];
    private static readonly string[] NoteMarks = ["accent", "strong", "staccato", "tenuto", "mute", "let-ring", "vibrato", "thumb", "pop", "down", "up", "index", "middle", "ring"];
    private static readonly string[] Joins = ["hammer", "pull", "slide"];

    /// <summary>The line.</summary>
    public string Write()
    {
        var bars = random.Next(1, MostBars + 1);
        var marked = random.Next(2) == 0;
        var text = new StringBuilder();
        for (var bar = 0; bar < bars; bar++)
        {
            if (bar > 0) text.Append(" | ");
            var started = false;
            foreach (var value in new RhythmWriter(random, meter).Figures().SelectMany(f => f.Split(' ')))
            {
                var isRest = value[0] == 'r';
                text.Append(isRest ? value[1..] : value).Append(' ').Append(isRest ? "rest" : Note(marked, started)).Append(' ');
                started |= !isRest;
            }
        }
        return text.ToString().Trim();
    }

    private string Note(bool marked, bool started)
    {
        var kind = random.Next(24);
        if (started && kind == 0) return "-";
        if (started && kind == 1) return "x";
        if (kind == 2) return "(5)";
        if (kind == 3) return DoubleStops[random.Next(DoubleStops.Length)];
        var note = Tones[random.Next(Tones.Length)];
        if (!marked) return note;
        return random.Next(8) switch
        {
            0 => note + ":" + Joins[random.Next(Joins.Length)],
            1 or 2 => note + ":" + NoteMarks[random.Next(NoteMarks.Length)],
            3 => note + ":" + NoteMarks[random.Next(7)] + ":" + NoteMarks[random.Next(7, NoteMarks.Length)],
            _ => note,
        };
    }
}
