using System.Text;

namespace SheetPress.PageCorpus;

/// <summary>Writes lines as a teacher would: degrees with rhythm, double stops, ties, tuplets, ghost and dead notes, and all marks, those that span several notes among them.</summary>
/// <param name="random">Where the choice comes from.</param>
/// <param name="meter">The meter as a lesson has it.</param>
/// <param name="lowest">The lowest note of the instrument (MIDI number).</param>
internal sealed class OwnLineWriter(Random random, string meter, int lowest)
{
    private const int MostBars = 4;

    private static readonly string[] Tones = ["R", "R", "3", "5", "5", "7", "8", "8", "9", "10", "low-5", "b3", "b7", "#4"];
    private static readonly string[] Names = ["C", "C#", "D", "Eb", "E", "F", "F#", "G", "Ab", "A", "Bb", "B"];
    private static readonly string[] DoubleStops = ["R&10", "3&7", "R&5", "5&10", "R&8"];
    private static readonly string[] NoteMarks = ["accent", "strong", "staccato", "tenuto", "mute", "let-ring", "vibrato", "thumb", "pop", "down", "up", "index", "middle", "ring"];
    private static readonly string[] Joins = ["hammer", "pull", "slide"];
    private static readonly string[] LooseMarks =
    [
        "slide-from-below", "slide-from-above", "slide-off-down", "slide-off-up", "bend-quarter", "bend-half", "bend-full", "bend-full-and-half", "harmonic", "fermata",
    ];
    private static readonly string[] Levels = ["ppp", "pp", "p", "mp", "mf", "f", "ff", "fff", "fp", "sfz"];

    private bool _slurred;
    private bool _swelling;

    /// <summary>The line, and in one of four lessons a second voice below it.</summary>
    public (string Line, string? Lower) Write()
    {
        if (random.Next(4) > 0) return (Voice(Tones, random.Next(2) == 0, DoubleStops, sparse: false), null);
        // Pitches an octave and more apart, so that the voices do not cross; the lower moves in longer notes.
        return (Voice(Pitches(lowest + 13, lowest + 22), random.Next(3) == 0, [], sparse: random.Next(2) == 0), Voice(Pitches(lowest, lowest + 9), random.Next(4) == 0, [], sparse: true));
    }

    private static string[] Pitches(int from, int to) => [.. Enumerable.Range(from, to - from + 1).Select(p => Names[p % 12] + ((p / 12) - 1))];

    private string Voice(string[] tones, bool marked, string[] doubleStops, bool sparse)
    {
        var notes = Values(sparse).ToList();
        var first = notes.FindIndex(n => !n.IsRest);
        var last = notes.FindLastIndex(n => !n.IsRest);
        var spans = random.Next(3) == 0;
        (_slurred, _swelling) = (false, false);
        var text = new StringBuilder();
        for (var i = 0; i < notes.Count; i++)
        {
            var (value, isRest, startsBar) = notes[i];
            if (startsBar) text.Append("| ");
            text.Append(value).Append(' ');
            if (isRest)
            {
                text.Append("rest ");
                continue;
            }
            // The last note is struck: it ends what is open.
            var note = Note(tones, marked, isInside: i > first && i < last, doubleStops);
            text.Append(note);
            if (spans && note != "-") text.Append(Spans(isLast: i == last));
            text.Append(' ');
        }
        return text.ToString().Trim();
    }

    private IEnumerable<(string Value, bool IsRest, bool StartsBar)> Values(bool sparse)
    {
        var bars = random.Next(1, MostBars + 1);
        for (var bar = 0; bar < bars; bar++)
        {
            var isFirst = bar > 0;
            foreach (var value in new RhythmWriter(random, meter, sparse).Figures().SelectMany(f => f.Split(' ')))
            {
                yield return value[0] == 'r' ? (value[1..], true, isFirst) : (value, false, isFirst);
                isFirst = false;
            }
        }
    }

    private string Note(string[] tones, bool marked, bool isInside, string[] doubleStops)
    {
        var kind = random.Next(24);
        if (isInside && kind == 0) return "-";
        if (isInside && kind == 1) return "x";
        if (kind == 2) return $"({tones[random.Next(tones.Length)]})";
        if (kind == 3 && doubleStops.Length > 0) return doubleStops[random.Next(doubleStops.Length)];
        var note = tones[random.Next(tones.Length)];
        if (!marked) return note;
        return random.Next(9) switch
        {
            0 => note + ":" + Joins[random.Next(Joins.Length)],
            1 or 2 => note + ":" + NoteMarks[random.Next(NoteMarks.Length)],
            3 => note + ":" + NoteMarks[random.Next(7)] + ":" + NoteMarks[random.Next(7, NoteMarks.Length)],
            4 => note + ":" + LooseMarks[random.Next(LooseMarks.Length)],
            _ => note,
        };
    }

    // Slurs and hairpins that begin, go on and end, and levels.
    private string Spans(bool isLast)
    {
        var text = "";
        if (_slurred && (isLast || random.Next(3) == 0))
        {
            text += ":end-slur";
            _slurred = false;
        }
        else if (!_slurred && !isLast && random.Next(6) == 0)
        {
            text += ":slur";
            _slurred = true;
        }
        if (_swelling && (isLast || random.Next(4) == 0))
        {
            text += random.Next(2) == 0 ? ":end-hairpin" : ":" + Levels[random.Next(Levels.Length)];
            _swelling = false;
        }
        else if (!_swelling && !isLast && random.Next(8) == 0)
        {
            text += random.Next(2) == 0 ? ":crescendo" : ":diminuendo";
            _swelling = true;
        }
        else if (!_swelling && random.Next(10) == 0)
        {
            text += ":" + Levels[random.Next(Levels.Length)];
        }
        return text;
    }
}
