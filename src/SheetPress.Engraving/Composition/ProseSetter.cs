using System.Collections.Immutable;
using System.Globalization;

namespace SheetPress.Engraving;

/// <summary>Sets blocks of text into the flow, line by line, with no widow or orphan: a page never parts the first or last line of a paragraph from its neighbour.</summary>
/// <param name="style">How pages look.</param>
internal sealed class ProseSetter(PageStyle style)
{
    private const double ListIndent = 1.5;
    private const double MarkerGap = 0.55;
    private const double QuoteIndent = 1.6;
    private const double CodeCell = 0.6;
    private const double MidParagraph = 20;
    // The first or the last item of a list alone on a page looks lost, as the line of a paragraph does.
    private const double LonelyItem = 60;

    private readonly TextStyle _body = style.Body;

    private ParagraphEdge Edge => style.Justify ? ParagraphEdge.Justified : ParagraphEdge.Ragged;

    /// <summary>White between two paragraphs.</summary>
    internal FlowSpace ParagraphSpace => new(0.45 * _body.Leading, 0.25 * _body.Leading, 0.1 * _body.Leading);

    private FlowSpace TightSpace => new(0.12 * _body.Leading);

    /// <summary>Sets blocks in a column.</summary>
    /// <param name="blocks">The blocks.</param>
    /// <param name="width">Width of the column in millimetres.</param>
    internal ImmutableArray<FlowBox> Set(ImmutableArray<TextBlock> blocks, double width)
    {
        var flow = ImmutableArray.CreateBuilder<FlowBox>();
        Add(flow, blocks, width, ParagraphSpace);
        return flow.DrainToImmutable();
    }

    /// <summary>Sets one paragraph in the flow.</summary>
    internal static ImmutableArray<FlowBox> Paragraph(ImmutableArray<Inline> inlines, TextStyle text, double width, ParagraphEdge edge)
    {
        var flow = ImmutableArray.CreateBuilder<FlowBox>();
        AddLines(flow, ParagraphSetter.Set(inlines, text, width, edge), text);
        return flow.DrainToImmutable();
    }

    /// <summary>Whether everything in the blocks fits a column without being cut.</summary>
    internal bool Fits(ImmutableArray<TextBlock> blocks, double width)
    {
        foreach (var block in blocks)
        {
            if (block is TableBlock table && TableSetter.LeastWidth(Spec(table)) > width) return false;
            if (block is CodeBlock code && code.Lines.Any(l => l.Length * CodeCell * style.Small.Size > width)) return false;
        }
        return true;
    }

    private void Add(ImmutableArray<FlowBox>.Builder flow, ImmutableArray<TextBlock> blocks, double width, FlowSpace between)
    {
        for (var i = 0; i < blocks.Length; i++)
        {
            var start = flow.Count;
            AddBlock(flow, blocks[i], width);
            if (flow.Count == start || i + 1 == blocks.Length || flow[^1].BreakPenalty == FlowBox.Never) continue;
            flow[^1] = flow[^1] with { After = between, BreakPenalty = LeadsInto(blocks[i], blocks[i + 1]) ? FlowBox.Never : blocks[i + 1] is RuleBlock ? FlowBox.Unwanted : flow[^1].BreakPenalty };
        }
    }

    // Words that end with a colon stay with the list, table or code they announce.
    private static bool LeadsInto(TextBlock block, TextBlock next) =>
        next is ListBlock or TableBlock or CodeBlock && block is ParagraphBlock { Inlines: [.., TextInline last] } && last.Text.AsSpan().TrimEnd().EndsWith(":");

    private void AddBlock(ImmutableArray<FlowBox>.Builder flow, TextBlock block, double width)
    {
        switch (block)
        {
            case ParagraphBlock paragraph:
                AddLines(flow, ParagraphSetter.Set(paragraph.Inlines, _body, width, Edge), _body);
                break;
            case HeadingBlock heading:
                AddHeading(flow, heading, width);
                break;
            case ListBlock list:
                AddList(flow, list, width);
                break;
            case QuoteBlock quote:
                AddQuote(flow, quote, width);
                break;
            case CodeBlock code:
                AddCode(flow, code);
                break;
            case TableBlock table:
                flow.AddRange(TableFlow.Boxes(TableSetter.Set(Spec(table), width)));
                break;
            case RuleBlock:
                AddRule(flow, width);
                break;
        }
    }

    // A heading stays with two lines of what follows it: the lines of a paragraph see to the second.
    private void AddHeading(ImmutableArray<FlowBox>.Builder flow, HeadingBlock heading, double width)
    {
        var emphasis = heading.Level <= 2 ? Emphasis.Strong : Emphasis.Italic;
        var inlines = heading.Inlines.Select(i => i with { Emphasis = i.Emphasis | emphasis }).ToImmutableArray();
        AddLines(flow, ParagraphSetter.Set(inlines, _body, width), _body);
        if (flow.Count > 0) flow[^1] = flow[^1] with { BreakPenalty = FlowBox.Never, After = new FlowSpace(0.15 * _body.Leading) };
    }

    private void AddList(ImmutableArray<FlowBox>.Builder flow, ListBlock list, double width)
    {
        var number = list.FirstNumber;
        var indent = ListIndent * _body.Size;
        if (number is { } first)
        {
            var widest = (first + list.Items.Length - 1).ToString(CultureInfo.InvariantCulture) + ". ";
            indent = Math.Max(indent, TextSetter.Measure(widest, _body.Upright, _body.Size) + (0.3 * _body.Size));
        }
        for (var i = 0; i < list.Items.Length; i++)
        {
            var start = flow.Count;
            var inner = ImmutableArray.CreateBuilder<FlowBox>();
            Add(inner, list.Items[i], width - indent, list.IsLoose ? ParagraphSpace : TightSpace);
            var toLeft = list.Items[i].FirstOrDefault() is ParagraphBlock words && InlineLevels.Of(words.Inlines).BaseLevel == 1;
            foreach (var box in inner) flow.Add(toLeft ? box : box.Indent(indent));
            if (flow.Count == start) continue;
            var marker = number is { } n ? (n + i).ToString(CultureInfo.InvariantCulture) + "." : "•";
            flow[start] = WithMarker(flow[start], marker, indent, toLeft ? width : null);
            if (i + 1 == list.Items.Length) continue;
            var lonely = list.Items.Length > 2 && (i == 0 || i == list.Items.Length - 2);
            flow[^1] = flow[^1] with { After = list.IsLoose ? ParagraphSpace : TightSpace, BreakPenalty = Math.Max(flow[^1].BreakPenalty, lonely ? LonelyItem : 0) };
        }
    }

    // Before the first line: at its left, or at the right edge of the column where the item is written to the left.
    private FlowBox WithMarker(FlowBox box, string marker, double indent, double? rightEdge)
    {
        var piece = TextSetter.Set(marker + " ", _body.Upright, _body.Size);
        var width = TextSetter.Measure(marker, _body.Upright, _body.Size);
        var gap = MarkerGap * _body.Size;
        var x = rightEdge is { } edge ? Math.Min(edge - width, edge - indent + gap) : Math.Max(0, indent - width - gap);
        var baseline = LineBox.Baseline(new SetLine([], 0, 0, 0), _body);
        return box with { Drawings = box.Drawings.Insert(0, new PlacedDrawing(new Drawing(piece.Marks), 1, x, baseline)) };
    }

    private void AddQuote(ImmutableArray<FlowBox>.Builder flow, QuoteBlock quote, double width)
    {
        var indent = QuoteIndent * _body.Size;
        var inner = ImmutableArray.CreateBuilder<FlowBox>();
        Add(inner, quote.Blocks, width - indent, new FlowSpace(ParagraphSpace.Natural));
        for (var i = 0; i < inner.Count; i++)
        {
            // The bar at the left runs on through the white between lines, so that white must not stretch.
            var height = inner[i].Height + (i + 1 < inner.Count ? inner[i].After.Natural : 0);
            var x = 0.45 * _body.Size;
            var bar = new LineMark(new Point(x, 0), new Point(x, height), 0.5) { Role = MarkRole.BodyText, Ink = 0.6 };
            var box = inner[i].Indent(indent);
            flow.Add(box with { Drawings = box.Drawings.Insert(0, new PlacedDrawing(new Drawing([bar]), 1, 0, 0)), After = new FlowSpace(inner[i].After.Natural) });
        }
    }

    private void AddCode(ImmutableArray<FlowBox>.Builder flow, CodeBlock code)
    {
        var text = style.Small;
        var cell = CodeCell * text.Size;
        var start = flow.Count;
        foreach (var line in code.Lines)
        {
            var marks = ImmutableArray.CreateBuilder<Mark>();
            for (var i = 0; i < line.Length; i++)
            {
                if (line[i] == ' ') continue;
                var length = char.IsHighSurrogate(line[i]) && i + 1 < line.Length ? 2 : 1;
                var piece = TextSetter.Set(line.Substring(i, length), TextStyle.Code, text.Size);
                piece.PlaceAt(marks, (i * cell) + ((cell - piece.Width) / 2), 0);
                i += length - 1;
            }
            AddLines(flow, [new SetLine(marks.DrainToImmutable(), line.Length * cell, 0, 0)], text);
        }
        KeepEnds(flow, start);
    }

    private void AddRule(ImmutableArray<FlowBox>.Builder flow, double width)
    {
        var half = width / 8;
        var y = _body.Leading / 2;
        var rule = new LineMark(new Point((width / 2) - half, y), new Point((width / 2) + half, y), 0.2) { Role = MarkRole.BodyText };
        flow.Add(FlowBox.Of(new Drawing([rule]), _body.Leading));
    }

    private TableSpec Spec(TableBlock table)
    {
        var columns = ImmutableArray.CreateBuilder<TableColumn>();
        for (var c = 0; c < table.Alignments.Length; c++)
        {
            var header = c < table.Header.Length ? table.Header[c].Select(i => i with { Emphasis = i.Emphasis | Emphasis.Strong }).ToImmutableArray() : [];
            columns.Add(new TableColumn(TableCell.Of(header, style.Small), table.Alignments[c]));
        }
        var rows = table.Rows.Select(r => r.Select(c => TableCell.Of(c, style.Small)).ToImmutableArray());
        return new TableSpec(columns.DrainToImmutable(), [.. rows]) { FillWidth = false };
    }

    private static void AddLines(ImmutableArray<FlowBox>.Builder flow, ImmutableArray<SetLine> lines, TextStyle text)
    {
        var start = flow.Count;
        foreach (var line in lines)
        {
            var drawing = new PlacedDrawing(new Drawing(line.Marks), 1, 0, LineBox.Baseline(line, text));
            flow.Add(new FlowBox(LineBox.Height(line, text), [drawing]) { BreakPenalty = MidParagraph });
        }
        KeepEnds(flow, start);
    }

    // No break after the first line of a paragraph or before its last one.
    private static void KeepEnds(ImmutableArray<FlowBox>.Builder flow, int start)
    {
        for (var i = start; i < flow.Count - 1; i++)
        {
            if (i == start || i == flow.Count - 2) flow[i] = flow[i] with { BreakPenalty = FlowBox.Never };
        }
        if (flow.Count > start) flow[^1] = flow[^1] with { BreakPenalty = 0 };
    }
}
