using System.Collections.Immutable;
using Markdig;
using Markdig.Extensions.Tables;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace SheetPress.Engraving;

/// <summary>
/// Reads Markdown (CommonMark with pipe tables) into blocks of text. Within words, music is read as <see cref="MusicMarkup"/> says;
/// a backslash before the bracket or brace keeps it as written. Raw HTML is text like any other; a picture becomes its description.
/// </summary>
public static class MarkdownReader
{
    private static readonly Lazy<MarkdownPipeline> Pipeline = new(() => new MarkdownPipelineBuilder().UsePipeTables().DisableHtml().Build());

    /// <summary>Reads a Markdown source.</summary>
    public static ImmutableArray<TextBlock> Read(string source) =>
        PlainParagraphs.Read(source) ?? ReadMarkup(source);

    /// <summary>Reads a source with the full parser.</summary>
    internal static ImmutableArray<TextBlock> ReadMarkup(string source) =>
        string.IsNullOrWhiteSpace(source) ? [] : Blocks(Markdown.Parse(source, Pipeline.Value));

    /// <summary>Reads a Markdown source that is meant as one line or paragraph; blocks beyond paragraphs lose their form.</summary>
    public static ImmutableArray<Inline> ReadInline(string source)
    {
        var inlines = ImmutableArray.CreateBuilder<Inline>();
        foreach (var block in Read(source))
        {
            if (inlines.Count > 0) inlines.Add(new TextInline(" "));
            if (block is ParagraphBlock paragraph) inlines.AddRange(paragraph.Inlines);
            else return MusicMarkup.Read(source);
        }
        return inlines.DrainToImmutable();
    }

    private static ImmutableArray<TextBlock> Blocks(ContainerBlock container)
    {
        var blocks = ImmutableArray.CreateBuilder<TextBlock>(container.Count);
        foreach (var block in container)
        {
            if (ReadBlock(block) is { } read) blocks.Add(read);
        }
        return blocks.DrainToImmutable();
    }

    private static TextBlock? ReadBlock(Block block) => block switch
    {
        Markdig.Syntax.HeadingBlock heading => new HeadingBlock(heading.Level, Inlines(heading.Inline)),
        Markdig.Syntax.ParagraphBlock paragraph => new ParagraphBlock(Inlines(paragraph.Inline)),
        Markdig.Syntax.ListBlock list => ReadList(list),
        Markdig.Syntax.QuoteBlock quote => new QuoteBlock(Blocks(quote)),
        ThematicBreakBlock => new RuleBlock(),
        Table table => ReadTable(table),
        Markdig.Syntax.CodeBlock code => new CodeBlock(CodeLines(code)),
        _ => null,
    };

    private static ListBlock ReadList(Markdig.Syntax.ListBlock list)
    {
        var items = ImmutableArray.CreateBuilder<ImmutableArray<TextBlock>>(list.Count);
        foreach (var item in list) if (item is ListItemBlock entry) items.Add(Blocks(entry));
        int? first = !list.IsOrdered ? null : int.TryParse(list.OrderedStart, out var number) ? number : 1;
        return new ListBlock(first, items.DrainToImmutable(), list.IsLoose);
    }

    private static ImmutableArray<string> CodeLines(Markdig.Syntax.CodeBlock code)
    {
        var lines = ImmutableArray.CreateBuilder<string>(code.Lines.Count);
        for (var i = 0; i < code.Lines.Count; i++) lines.Add(code.Lines.Lines[i].Slice.ToString().Replace("\t", "    ", StringComparison.Ordinal));
        return lines.DrainToImmutable();
    }

    private static TableBlock ReadTable(Table table)
    {
        var columns = 0;
        foreach (var row in table) if (row is TableRow cells) columns = Math.Max(columns, cells.Count);
        ImmutableArray<ImmutableArray<Inline>> header = [];
        var rows = ImmutableArray.CreateBuilder<ImmutableArray<ImmutableArray<Inline>>>(table.Count);
        foreach (var child in table)
        {
            if (child is not TableRow row) continue;
            var cells = ImmutableArray.CreateBuilder<ImmutableArray<Inline>>(columns);
            for (var c = 0; c < columns; c++) cells.Add(c < row.Count && row[c] is Markdig.Extensions.Tables.TableCell cell ? CellInlines(cell) : []);
            if (row.IsHeader) header = cells.DrainToImmutable();
            else rows.Add(cells.DrainToImmutable());
        }
        var alignments = ImmutableArray.CreateBuilder<ColumnAlignment>(columns);
        for (var c = 0; c < columns; c++)
        {
            var alignment = c < table.ColumnDefinitions.Count ? table.ColumnDefinitions[c].Alignment : null;
            alignments.Add(alignment switch { TableColumnAlign.Right => ColumnAlignment.Right, TableColumnAlign.Center => ColumnAlignment.Centre, _ => ColumnAlignment.Left });
        }
        return new TableBlock(header, rows.DrainToImmutable(), alignments.MoveToImmutable());
    }

    private static ImmutableArray<Inline> CellInlines(Markdig.Extensions.Tables.TableCell cell) =>
        cell.Count > 0 && cell[0] is LeafBlock leaf ? Inlines(leaf.Inline) : [];

    private static ImmutableArray<Inline> Inlines(ContainerInline? container)
    {
        var inlines = new InlineCollector();
        if (container is not null) inlines.Add(container, Emphasis.None, null);
        return inlines.Finish();
    }

    // Joins neighbouring literals before music is looked for in them: the parser cuts a text at every bracket.
    private sealed class InlineCollector
    {
        private readonly ImmutableArray<Inline>.Builder _parts = ImmutableArray.CreateBuilder<Inline>();
        private string _text = "";
        private Emphasis _emphasis;
        private string? _link;
        private (Emphasis Emphasis, string? Link)? _lineEnd;
        private char _last;

        internal void Add(ContainerInline container, Emphasis emphasis, string? link)
        {
            foreach (var inline in container)
            {
                switch (inline)
                {
                    case LiteralInline { IsFirstCharacterEscaped: true } escaped:
                        AddPart(new TextInline(escaped.Content.ToString()) { Emphasis = emphasis, Link = link });
                        break;
                    case LiteralInline literal:
                        AddText(literal.Content.ToString(), emphasis, link);
                        break;
                    case HtmlEntityInline entity:
                        AddText(entity.Transcoded.ToString(), emphasis, link);
                        break;
                    case CodeInline code:
                        AddPart(new TextInline(code.Content) { Emphasis = emphasis | Emphasis.Code, Link = link });
                        break;
                    case AutolinkInline auto:
                        AddPart(new TextInline(auto.Url) { Emphasis = emphasis, Link = auto.IsEmail ? "mailto:" + auto.Url : auto.Url });
                        break;
                    case LineBreakInline lineBreak:
                        if (lineBreak.IsHard) AddPart(new BreakInline());
                        else _lineEnd = (emphasis, link);
                        break;
                    case EmphasisInline strong:
                        Add(strong, emphasis | (strong.DelimiterCount >= 2 ? Emphasis.Strong : Emphasis.Italic), link);
                        break;
                    case LinkInline target:
                        Add(target, emphasis, target.IsImage ? link : target.Url);
                        break;
                    case ContainerInline other:
                        Add(other, emphasis, link);
                        break;
                    default:
                        AddText(inline.ToString() ?? "", emphasis, link);
                        break;
                }
            }
        }

        internal ImmutableArray<Inline> Finish()
        {
            Flush();
            return _parts.DrainToImmutable();
        }

        private void AddText(string text, Emphasis emphasis, string? link)
        {
            if (text.Length == 0) return;
            EndLine(text[0]);
            if (emphasis != _emphasis || link != _link) Flush();
            (_emphasis, _link, _last) = (emphasis, link, text[^1]);
            _text += text;
        }

        // A line end of the source is a space, but for scripts that have none.
        private void EndLine(char next)
        {
            if (_lineEnd is not { } end) return;
            _lineEnd = null;
            if (!WideScripts.JoinLines(_last, next)) AddText(" ", end.Emphasis, end.Link);
        }

        private void AddPart(Inline part)
        {
            EndLine(part is TextInline { Text: [var first, ..] } ? first : '\0');
            Flush();
            _parts.Add(part);
            _last = part is TextInline { Text: [.., var last] } ? last : '\0';
        }

        private void Flush()
        {
            if (_text.Length > 0) _parts.AddRange(MusicMarkup.Read(_text, _emphasis, _link));
            _text = "";
        }
    }
}
