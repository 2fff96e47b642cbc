using System.Globalization;

namespace SheetPress.Cli;

/// <summary>A plain text table: columns as wide as their widest cell, two spaces between them, a line under the head.</summary>
internal sealed class TextTable(params string[] head)
{
    private readonly List<string[]> _rows = [];

    public void Add(params string[] cells) => _rows.Add(cells);

    public void Write(TextWriter writer)
    {
        var widths = new int[head.Length];
        for (var c = 0; c < head.Length; c++)
        {
            widths[c] = Width(head[c]);
            foreach (var row in _rows) widths[c] = Math.Max(widths[c], Width(row[c]));
        }
        WriteRow(writer, head, widths);
        writer.WriteLine(string.Join("  ", widths.Select(w => new string('-', w))));
        foreach (var row in _rows) WriteRow(writer, row, widths);
    }

    private static void WriteRow(TextWriter writer, string[] cells, int[] widths)
    {
        var line = string.Join("  ", cells.Select((cell, c) => cell + new string(' ', widths[c] - Width(cell))));
        writer.WriteLine(line.TrimEnd());
    }

    // Characters a reader sees: an accent that combines with the letter before it takes no column.
    private static int Width(string text) => new StringInfo(text).LengthInTextElements;
}
