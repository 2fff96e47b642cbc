using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>Puts the parts of a handout into one flow, in the order in which they are read.</summary>
internal sealed class HandoutFlow(HandoutContent content, PageStyle style)
{
    private const double HeadingGap = 2;
    // Text higher than this share of a page is set in one column that runs over pages, not in two level ones.
    private const double TallestColumns = 0.4;
    // The same for one of the parts into which its headings and rules divide a longer text.
    private const double TallestPart = 0.25;
    private const double ReadingMeasure = 36;
    private const int FewestLinesForColumns = 8;
    // Two texts stand side by side while the longer is at most so many times the shorter.
    private const double MostUneven = 1.8;

    // The theory notes are read beside the harmony table: a break between them costs about what a fifth of a page of white would.
    private const double ReadTogether = 150;

    // The exercises begin on a new page where white has to be left before them or further on, but not only to share out white of the last pages.
    private const double NewPart = 100;

    // Rows of diagrams are seen together where it costs no more white than a row would take; but a single diagram that stands alone in the
    // last row is not left to the next page for less than a third of a page of white.
    private const double MidDiagrams = 12;
    private const double LonelyDiagram = 200;

    // A page with nothing but the caution costs more than splitting what stands before it, or carrying it over whole.
    private const double LonelyCaution = 4 * FlowBox.Unwanted;

    // A text is read on one page where it can be: a break within it costs more than white at the foot of the next one.
    private const double MidText = 80;

    // A text that takes less than this share of a page, heading and all, is not broken but for want of a page.
    private const double ShortText = 0.25;
    private const double MidShortText = 1000;

    private readonly FlowBuilder _flow = new();

    private FlowSpace SectionSpace => new(style.SectionGap, 0.8 * style.SectionGap, 0.25 * style.SectionGap);

    private static FlowSpace TextSpace => new(0.6);

    private double ColumnWidth => (style.TextWidth - style.ColumnGap) / 2;

    private double PageHeight => style.Paper.Height - style.TopMargin - style.HeadHeight - style.BottomMargin - style.FootHeight;

    internal IReadOnlyList<FlowBox> Build()
    {
        _flow.Add(default, TitleBand.Make(content, style));
        AddHarmony();
        AddProse();
        AddDiagrams();
        AddExercises();
        AddPractice();
        AddCaution();
        return _flow.Boxes;
    }

    private void AddHarmony()
    {
        if (content.Harmony.IsEmpty) return;
        AddHeading(content.Labels.Harmony, content.Labels.HarmonyShort);
        // Before the table, where the reader of its first page finds it.
        ImmutableArray<FlowBox> explanation = content.Labels.ChangedNotes.Length > 0 && content.Harmony.Any(HasChangedNotes)
            ? ProseSetter.Paragraph([new TextInline(content.Labels.ChangedNotes)], style.Small, style.TextWidth, ParagraphEdge.Ragged)
            : [];
        if (!explanation.IsEmpty) _flow.AddKept(TextSpace, explanation.AsSpan());
        var gap = new FlowSpace(HeadingGap - 1.2);
        // And again where the table goes on, for a reader of that page.
        var again = explanation.IsEmpty ? null : ColumnBalancer.Stack([.. explanation[..^1], explanation[^1] with { After = gap }, FlowBox.Of(new Drawing([]), 0)]);
        _flow.AddKept(gap, TableFlow.Boxes(TableSetter.Set(HarmonyTable.Make(content, style), style.TextWidth), over: next => content.Harmony.Skip(next).Any(HasChangedNotes) ? again : null).AsSpan());
    }

    private static bool HasChangedNotes(HarmonyRow row) => row.ScaleNotes.Any(n => n.IsChanged);

    // Theory and the teacher's words stand side by side when they are short and of like length, each under its heading; else one
    // after the other.
    private void AddProse()
    {
        var theory = content.TheoryNotes.SelectMany(n => MarkdownReader.Read(n)).ToImmutableArray();
        var own = MarkdownReader.Read(content.TeacherNotes);
        if (!theory.IsEmpty && !content.Harmony.IsEmpty) _flow.Discourage(ReadTogether);
        if (!theory.IsEmpty && !own.IsEmpty && SideBySide(theory, own) is { } box)
        {
            _flow.Add(SectionSpace, box);
            return;
        }
        AddSection(content.Labels.Theory, theory);
        AddSection(content.Labels.TeacherNotes, own);
    }

    private FlowBox? SideBySide(ImmutableArray<TextBlock> left, ImmutableArray<TextBlock> right)
    {
        var prose = new ProseSetter(style);
        if (!prose.Fits(left, ColumnWidth) || !prose.Fits(right, ColumnWidth)) return null;
        var (first, second) = (Column(content.Labels.Theory, left), Column(content.Labels.TeacherNotes, right));
        var (shorter, longer) = (Math.Min(first.Height, second.Height), Math.Max(first.Height, second.Height));
        if (longer > TallestColumns * PageHeight || longer > MostUneven * shorter) return null;
        return new FlowBox(longer, [.. first.Drawings, .. second.Indent(ColumnWidth + style.ColumnGap).Drawings])
        {
            Bookmarks = [new(content.Labels.Theory, 0), new(content.Labels.TeacherNotes, 0)],
            Head = new HeadMark(content.Labels.Theory, "", IsExercise: false),
        };

        FlowBox Column(string title, ImmutableArray<TextBlock> blocks)
        {
            var flow = new FlowBuilder();
            flow.Add(default, Heading(title));
            flow.AddKept(TextSpace, prose.Set(blocks, ColumnWidth).AsSpan());
            return ColumnBalancer.Stack([.. flow.Boxes]);
        }
    }

    // A section of text: in two level columns, so that lines are of a length to read, unless it is too short or too long for them.
    private void AddSection(string title, ImmutableArray<TextBlock> blocks)
    {
        if (blocks.IsEmpty) return;
        var prose = new ProseSetter(style);
        AddHeading(title);
        if (Columns(blocks, TallestColumns) is { } box)
        {
            _flow.AddKept(TextSpace, box);
            return;
        }
        var measure = Math.Min(style.TextWidth, ReadingMeasure * style.Body.Size);
        var text = new FlowBuilder();
        foreach (var part in ProseParts.Of(blocks))
        {
            var boxes = !ProseParts.HasListInList(part) && Columns(part, TallestPart) is { } columns ? [columns] : Together(prose.Set(part, prose.Fits(part, measure) ? measure : style.TextWidth), MidText);
            if (part is [RuleBlock]) text.AddNear(prose.ParagraphSpace, boxes.AsSpan());
            else text.Add(prose.ParagraphSpace, boxes.AsSpan());
        }
        ImmutableArray<FlowBox> whole = [.. text.Boxes];
        var height = style.Heading.Leading + TextSpace.Natural + whole.Sum(b => b.Height + b.After.Natural);
        _flow.AddKept(TextSpace, (height < ShortText * PageHeight ? Together(whole, MidShortText) : whole).AsSpan());
    }

    private static ImmutableArray<FlowBox> Together(ImmutableArray<FlowBox> text, double penalty) =>
        [.. text.Select((box, i) => i + 1 < text.Length ? box with { BreakPenalty = box.BreakPenalty + penalty } : box)];

    // Two level columns, under the heading that the text begins with when it has no other; null where it is too short or too long for them.
    private FlowBox? Columns(ImmutableArray<TextBlock> blocks, double tallest)
    {
        var prose = new ProseSetter(style);
        ImmutableArray<TextBlock> heading = blocks is [HeadingBlock, ..] && blocks.Count(b => b is HeadingBlock) == 1 ? [blocks[0]] : [];
        var words = blocks.RemoveRange(0, heading.Length);
        if (!prose.Fits(words, ColumnWidth)) return null;
        var lines = prose.Set(words, ColumnWidth);
        if (lines.Length < FewestLinesForColumns) return null;
        var box = ColumnBalancer.Balance(lines, ColumnWidth + style.ColumnGap);
        if (!heading.IsEmpty) box = ColumnBalancer.Stack([.. prose.Set(heading, style.TextWidth), box]);
        return box.Height <= tallest * PageHeight ? box : null;
    }

    private void AddDiagrams()
    {
        if (content.Diagrams.IsEmpty) return;
        AddHeading(content.Labels.Diagrams);
        // Before the first row, so that the reader of each page has seen it.
        if (DiagramRows.Legend(DiagramRows.Shapes(content.Diagrams), content.Labels, style) is { } legend) _flow.AddKept(TextSpace, legend);
        var rows = DiagramRows.Make(content.Diagrams, style);
        _flow.AddKept(new FlowSpace(HeadingGap), rows[0]);
        for (var i = 1; i < rows.Length; i++)
        {
            var isLonely = i == rows.Length - 1 && rows[i].Drawings.Length == 1 && rows[i - 1].Drawings.Length > 1;
            _flow.Discourage(isLonely ? LonelyDiagram : MidDiagrams);
            _flow.Add(rows[i - 1].After, rows[i]);
        }
    }

    private void AddExercises()
    {
        // What shapes mean is said once, with the diagrams before the exercises if there are any.
        var isSaid = !content.Diagrams.IsEmpty;
        var statements = TempoStatements.Of(content.Exercises.Select(e => e.Score), content.Labels.Straight);
        for (var i = 0; i < content.Exercises.Length; i++)
        {
            var heading = Heading(content.Labels.Exercises);
            var withHeading = i == 0 && content.Labels.Exercises.Length > 0;
            // Where the caution follows, an exercise that leaves no room for it may be split: two systems go over with it.
            var withCaution = i == content.Exercises.Length - 1 && content.PracticePlan.IsEmpty && content.Caution.Length > 0;
            var room = PageHeight - (withHeading ? heading.Height + HeadingGap : 0) - (withCaution ? SectionSpace.Natural + Caution().Sum(l => l.Height) : 0);
            var (systems, look) = ExerciseEngraver.Engrave(content.Exercises[i].Score, style, statements[i]);
            var legend = isSaid ? null : DiagramRows.Legend(ExerciseSetter.Shapes(content.Exercises[i]), content.Labels, style);
            isSaid |= legend is not null;
            var boxes = ExerciseSetter.Make(content.Exercises[i], systems, look, room, legend);
            if (withHeading)
            {
                _flow.EndPart();
                _flow.Discourage(NewPart);
                _flow.Add(SectionSpace, heading);
                _flow.AddKept(new FlowSpace(HeadingGap), boxes.AsSpan());
            }
            else
            {
                _flow.Add(new FlowSpace(style.ExerciseGap, 1.2 * style.ExerciseGap, 0.25 * style.ExerciseGap), boxes.AsSpan());
            }
        }
    }

    private void AddPractice()
    {
        if (content.PracticePlan.IsEmpty) return;
        AddHeading(content.Labels.Practice);
        var table = PracticePlan.Make(content, style);
        _flow.AddKept(new FlowSpace(HeadingGap - 1.2), TableFlow.Boxes(TableSetter.Set(table, style.TextWidth), keepLast: table.LastRowIsTotal).AsSpan());
    }

    private void AddCaution()
    {
        if (content.Caution.Length == 0) return;
        // Alone on a page it would be lost.
        _flow.Discourage(LonelyCaution);
        _flow.Add(SectionSpace, Caution().AsSpan());
    }

    private ImmutableArray<FlowBox> Caution()
    {
        ImmutableArray<Inline> words = content.Labels.Caution.Length > 0
            ? [new TextInline(content.Labels.Caution + " ") { Emphasis = Emphasis.Strong }, new TextInline(content.Caution)]
            : [new TextInline(content.Caution)];
        return ProseSetter.Paragraph(words, style.Small, style.TextWidth, ParagraphEdge.Ragged);
    }

    private void AddHeading(string text, string shortText = "") => _flow.Add(SectionSpace, Heading(text, shortText));

    private FlowBox Heading(string text, string shortText = "")
    {
        var look = style.Heading;
        var piece = TextSetter.Set(text, look.Upright, look.Size);
        var drawing = new PlacedDrawing(new Drawing(piece.Marks), 1, 0, LineBox.Baseline(new SetLine([], 0, 0, 0), look));
        return new FlowBox(look.Leading, [drawing]) { BreakPenalty = FlowBox.Never, Bookmarks = [new FlowBookmark(text, 0)], Head = new HeadMark(text, "", IsExercise: false) { ShortText = shortText } };
    }
}
