using System.Globalization;
using System.Text;
using SheetPress.Scores;

namespace SheetPress.Cli;

/// <summary>A score as tab in text: chord symbols on top, one line a string, degrees below; a picture of an exercise for the terminal.</summary>
internal static class TabText
{
    /// <summary>Writes the score, breaking lines between measures.</summary>
    /// <param name="writer">Where to.</param>
    /// <param name="score">The score, fingered.</param>
    /// <param name="width">Characters a line may have.</param>
    public static void Write(TextWriter writer, Score score, int width)
    {
        var names = score.Instrument.OpenStrings.Select(p => p.Name.ToDisplayString().PadLeft(2)).ToArray();
        var block = NewBlock(names);
        var empty = true;
        foreach (var measure in score.Measures)
        {
            var cells = DrawMeasure(measure, score.Instrument.StringCount);
            if (!empty && block[0].Length + cells[0].Length > width)
            {
                Flush(writer, block);
                block = NewBlock(names);
            }
            for (var i = 0; i < block.Length; i++) block[i].Append(cells[i]);
            empty = false;
        }
        Flush(writer, block);
    }

    // Rows: chord symbols, then the strings from 1 up, then degrees.
    private static StringBuilder[] NewBlock(string[] names) =>
        [new("   "), .. names.Select(n => new StringBuilder(n + "|")), new("   ")];

    private static void Flush(TextWriter writer, StringBuilder[] block)
    {
        foreach (var row in block)
        {
            var text = row.ToString().TrimEnd();
            if (text.Length > 0) writer.WriteLine(text);
        }
        writer.WriteLine();
    }

    private static string[] DrawMeasure(Measure measure, int strings)
    {
        var rows = Enumerable.Range(0, strings + 2).Select(_ => new StringBuilder()).ToArray();
        var symbols = rows[0];
        var degrees = rows[^1];
        foreach (var row in rows[1..^1]) row.Append('-');
        symbols.Append(' ');
        degrees.Append(' ');
        foreach (var item in measure.Voices[0].Events)
        {
            var at = rows[1].Length;
            foreach (var harmony in measure.Harmonies.Where(h => h.Offset >= item.Onset && h.Offset < item.End))
            {
                Pad(symbols, Math.Max(at, symbols.Length + (symbols.Length > 1 ? 1 : 0)), ' ');
                symbols.Append(harmony.Chord?.ToString() ?? "N.C.");
            }
            foreach (var tone in item.Tones.Where(t => t.Position is not null && !t.TieStop))
            {
                var place = tone.Position!.Value;
                var fret = tone.Head is Notehead.Ghost or Notehead.Dead ? "x" : place.Fret.ToString(CultureInfo.InvariantCulture);
                rows[place.String].Append(fret);
            }
            if (item.Tones is [var first, ..] && !first.TieStop && first.Degree is { } degree) degrees.Append(degree.ToDisplayString());
            // A column is as wide as its time, two characters for an eighth, and never so narrow that figures touch.
            var widest = rows.Skip(1).Max(r => r.Length);
            var end = Math.Max(widest + 1, at + Math.Max(2, (int)Math.Ceiling(item.Value.Duration.ToDouble() * 4)));
            foreach (var row in rows[1..^1]) Pad(row, end, '-');
            Pad(degrees, end, ' ');
        }
        var length = Math.Max(rows[1].Length, symbols.Length);
        foreach (var row in rows[1..^1]) Pad(row, length, '-').Append('|');
        Pad(symbols, length, ' ').Append(' ');
        Pad(degrees, length, ' ').Append(' ');
        return [.. rows.Select(r => r.ToString())];
    }

    private static StringBuilder Pad(StringBuilder row, int length, char fill) => row.Append(fill, Math.Max(0, length - row.Length));
}
