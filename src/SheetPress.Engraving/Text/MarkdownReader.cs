namespace SheetPress.Engraving;

/// <summary>Reads Markdown into blocks of text.</summary>
public static class MarkdownReader
{
}
