namespace SheetPress.Cli;

/// <summary>Text of the page made fit for a terminal.</summary>
internal static class TerminalText
{
    /// <summary>Markdown without its marks: emphasis and the brackets of inline music go, the words stay.</summary>
    public static string Plain(string markdown)
    {
        var plain = new System.Text.StringBuilder(markdown.Length);
        foreach (var c in markdown) if (c is not ('*' or '[' or ']' or '{' or '}' or '`')) plain.Append(c);
        return plain.ToString();
    }
}
