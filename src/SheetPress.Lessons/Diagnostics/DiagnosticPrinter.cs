using System.Globalization;
using System.Text;

namespace SheetPress.Lessons;

/// <summary>
/// Writes findings for people: "file:line:column: error[code]: message", below it the source line with the place underlined, and the advice.
/// </summary>
public static class DiagnosticPrinter
{
    private const int TabWidth = 4;
    private const int MaximumColumns = 110;
    private const string Margin = "    ";

    /// <summary>The finding as lines joined with line feeds, one at the end too.</summary>
    public static string Print(Diagnostic diagnostic)
    {
        ArgumentNullException.ThrowIfNull(diagnostic);
        var text = new StringBuilder();
        text.Append(Head(diagnostic)).Append('\n');
        if (diagnostic.Source.Text.Length > 0) AppendSource(text, diagnostic);
        if (diagnostic.Advice.Length > 0) text.Append(Margin).Append(diagnostic.Advice).Append('\n');
        return text.ToString();
    }

    /// <summary>The first line alone: "file:line:column: error[code]: message"; without line and column when it is about the file as a whole.</summary>
    public static string Head(Diagnostic diagnostic)
    {
        ArgumentNullException.ThrowIfNull(diagnostic);
        var severity = diagnostic.Severity == Severity.Error ? "error" : "warning";
        var position = diagnostic.Position;
        var place = diagnostic.Source.Text.Length == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $":{position.Line}:{position.Column}");
        return $"{diagnostic.Source.Path}{place}: {severity}[{diagnostic.Code}]: {diagnostic.Message}";
    }

    private static void AppendSource(StringBuilder text, Diagnostic diagnostic)
    {
        var source = diagnostic.Source;
        var line = source.LineOf(diagnostic.Span.Start);
        var content = source.LineText(line);
        var start = Math.Min(diagnostic.Span.Start - source.LineStart(line), content.Length);
        // What goes on in later lines is underlined to the end of this one.
        var end = Math.Clamp(diagnostic.Span.End - source.LineStart(line), start, content.Length);
        if (content.Trim().Length == 0) return;

        var shown = new StringBuilder();
        var columns = 0;
        var from = 0;
        var to = 0;
        var index = 0;
        foreach (var rune in content.EnumerateRunes())
        {
            if (index == start) from = columns;
            if (index == end) to = columns;
            var width = rune.Value == '\t' ? TabWidth - (columns % TabWidth) : DisplayWidth.Of(rune);
            if (rune.Value == '\t') shown.Append(' ', width);
            else if (Rune.IsControl(rune)) shown.Append('?');
            else shown.Append(rune.ToString());
            columns += width;
            index += rune.Utf16SequenceLength;
        }
        if (index <= start) from = columns;
        if (index <= end) to = columns;
        var (window, cut) = Window(shown.ToString(), from, columns);
        text.Append(Margin).Append(window).Append('\n');
        text.Append(Margin).Append(' ', from - cut).Append('^', Math.Max(1, Math.Min(to, cut + MaximumColumns) - from)).Append('\n');
    }

    // Long lines are cut to the part around the place; the cut is in columns.
    private static (string Text, int Cut) Window(string shown, int from, int columns)
    {
        if (columns <= MaximumColumns) return (shown.TrimEnd(), 0);
        var first = from > MaximumColumns - 30 ? from - 30 : 0;
        var window = new StringBuilder();
        var at = 0;
        var cut = -1;
        foreach (var rune in shown.EnumerateRunes())
        {
            var width = DisplayWidth.Of(rune);
            if (at >= first && at + width <= first + MaximumColumns)
            {
                if (cut < 0) cut = at;
                window.Append(rune.ToString());
            }
            at += width;
        }
        return (window.ToString().TrimEnd(), Math.Max(0, cut));
    }
}
