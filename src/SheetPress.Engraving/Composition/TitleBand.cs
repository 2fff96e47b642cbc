using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>The top of the first page: title, subtitle, author, room for name and date, the line of facts.</summary>
internal static class TitleBand
{
    private const double WidestForm = 58;
    private const double FormShare = 0.36;
    private const double FormGap = 8;
    private const double FormLine = 8.5;
    private const double LabelGap = 2;
    private const double NameShare = 0.6;
    private const double WidestFactGap = 28;
    private const double LeastFactGap = 6;
    // Gaps grow by so much where the last fact would end a little short of the right edge.
    private const double NearlyLevel = 1.25;
    private const double SmallestTitle = 0.72;
    private const int TitleLines = 2;
    private const int MostTitleLines = 3;

    internal static FlowBox Make(HandoutContent content, PageStyle style)
    {
        var marks = ImmutableArray.CreateBuilder<Mark>();
        var width = style.TextWidth - (content.NameAndDate ? FormWidth(style) + FormGap : 0);
        var title = TitleLook(content.Title, style.Title, width);
        // A title too long to stand beside the form has the width for itself, and the form stands in a line of its own below.
        var formBelow = content.NameAndDate && ParagraphSetter.Set([new TextInline(content.Title)], title, width).Length > MostTitleLines;
        if (formBelow) (width, title) = (style.TextWidth, TitleLook(content.Title, style.Title, style.TextWidth));
        var y = AddParagraph(marks, content.Title, title, Emphasis.None, width, 0, MarkRole.Title);
        if (content.NameAndDate && !formBelow) AddFormBeside(marks, content.Labels, style, title);
        if (content.Subtitle.Length > 0) y = AddParagraph(marks, content.Subtitle, style.Body, Emphasis.Italic, width, y + 0.3, MarkRole.BodyText);
        if (content.Author.Length > 0) y = AddParagraph(marks, content.Author, style.Small, Emphasis.None, width, y + 0.6, MarkRole.BodyText);
        if (formBelow) y = AddFormBelow(marks, content.Labels, style, y);
        else if (content.NameAndDate) y = Math.Max(y, (2 * FormLine) + 1);
        if (!content.Facts.IsEmpty)
        {
            y += 3;
            AddRule(marks, style, y, 0.45);
            y = AddFacts(marks, content.Facts, style, y + 1.6) + 1.6;
            AddRule(marks, style, y, 0.2);
        }
        return FlowBox.Of(new Drawing(marks.DrainToImmutable()), y);
    }

    // A long title is set smaller, so that it takes two lines, three where it is very long.
    private static TextStyle TitleLook(string text, TextStyle look, double width)
    {
        var (words, points) = (ImmutableArray.Create<Inline>(new TextInline(text)), look.Size / TextStyle.Point);
        foreach (var share in (ReadOnlySpan<double>)[1, 0.85, SmallestTitle])
        {
            var smaller = new TextStyle(Math.Max(7, share * points), share * look.Leading / TextStyle.Point, look.Upright, look.Italic, look.Strong);
            if (share == SmallestTitle || ParagraphSetter.Set(words, smaller, width).Length <= TitleLines) return smaller;
        }
        return look;
    }

    private static double AddParagraph(ImmutableArray<Mark>.Builder marks, string text, TextStyle look, Emphasis emphasis, double width, double y, MarkRole role)
    {
        foreach (var line in Level([new TextInline(text) { Emphasis = emphasis }], look, width))
        {
            foreach (var mark in line.As(role).Marks) marks.Add(mark.Transform(1, 0, y + LineBox.Baseline(line, look)));
            y += LineBox.Height(line, look);
        }
        return y;
    }

    // Lines of like length: the narrowest column that takes no more lines.
    private static ImmutableArray<SetLine> Level(ImmutableArray<Inline> inlines, TextStyle look, double width)
    {
        var lines = ParagraphSetter.Set(inlines, look, width);
        if (lines.Length < 2) return lines;
        var (narrow, wide) = (width / 2, width);
        while (wide - narrow > 0.5)
        {
            var middle = (narrow + wide) / 2;
            var tried = ParagraphSetter.Set(inlines, look, middle);
            if (tried.Length > lines.Length || tried.Any(l => l.Width > middle)) narrow = middle;
            else (wide, lines) = (middle, tried);
        }
        return lines;
    }

    private static double FormWidth(PageStyle style) => Math.Min(WidestForm, FormShare * style.TextWidth);

    private static void AddFormBeside(ImmutableArray<Mark>.Builder marks, SheetLabels labels, PageStyle style, TextStyle title)
    {
        var left = style.TextWidth - FormWidth(style);
        var small = style.Small;
        var indent = LabelGap + Math.Max(TextSetter.Measure(labels.Name, small.Upright, small.Size), TextSetter.Measure(labels.Date, small.Upright, small.Size));
        // The first of the two lines stands on the baseline of the title.
        var y = LineBox.Baseline(new SetLine([], 0, 0, 0), title);
        foreach (var label in (ReadOnlySpan<string>)[labels.Name, labels.Date])
        {
            AddFormLine(marks, label, small, left, left + indent, style.TextWidth, y);
            y += FormLine;
        }
    }

    // Name and date side by side; the name has the greater part of the width.
    private static double AddFormBelow(ImmutableArray<Mark>.Builder marks, SheetLabels labels, PageStyle style, double y)
    {
        var small = style.Small;
        y += FormLine;
        var middle = NameShare * style.TextWidth;
        AddFormLine(marks, labels.Name, small, 0, LabelGap + TextSetter.Measure(labels.Name, small.Upright, small.Size), middle, y);
        middle += FormGap;
        AddFormLine(marks, labels.Date, small, middle, middle + LabelGap + TextSetter.Measure(labels.Date, small.Upright, small.Size), style.TextWidth, y);
        return y + 2;
    }

    private static void AddFormLine(ImmutableArray<Mark>.Builder marks, string label, TextStyle small, double left, double lineLeft, double lineRight, double y)
    {
        TextSetter.Set(label, small.Upright, small.Size).PlaceAt(marks, left, y);
        marks.Add(new LineMark(new Point(lineLeft, y + 0.5), new Point(lineRight, y + 0.5), 0.2) { Role = MarkRole.TableRule });
    }

    private static void AddRule(ImmutableArray<Mark>.Builder marks, PageStyle style, double y, double thickness) =>
        marks.Add(new LineMark(new Point(0, y), new Point(style.TextWidth, y), thickness) { Role = MarkRole.TableRule });

    // Label over value, side by side over the width; what needs more rows than one stands in columns, in rows as full as each other.
    private static double AddFacts(ImmutableArray<Mark>.Builder marks, ImmutableArray<FactItem> facts, PageStyle style, double y)
    {
        var (small, body) = (style.Small, style.Body);
        var widths = FactColumns([.. facts.Select(Width)], style.TextWidth);
        var level = (style.TextWidth - widths.Sum()) / Math.Max(1, widths.Length - 1);
        var gap = level <= NearlyLevel * WidestFactGap ? level : WidestFactGap;
        for (var start = 0; start < facts.Length; start += widths.Length)
        {
            if (start > 0) y += 1.5;
            var x = 0.0;
            for (var c = 0; c < widths.Length && start + c < facts.Length; c++)
            {
                TextSetter.Set(facts[start + c].Label, small.Upright, small.Size).PlaceAt(marks, x, y + (TextStyle.Ascent * small.Size));
                TextSetter.Set(facts[start + c].Value, body.Strong, body.Size).PlaceAt(marks, x, y + small.Leading + (TextStyle.Ascent * body.Size));
                x += widths[c] + gap;
            }
            y += small.Leading + ((TextStyle.Ascent + TextStyle.Descent) * body.Size);
        }
        return y;

        double Width(FactItem fact) => Math.Max(TextSetter.Measure(fact.Label, small.Upright, small.Size), TextSetter.Measure(fact.Value, body.Strong, body.Size));
    }

    // Widths of as many columns as fit, and then of as few as that number of rows needs.
    private static double[] FactColumns(ReadOnlySpan<double> facts, double width)
    {
        var most = facts.Length;
        while (most > 1 && !Fit(Columns(facts, most))) most--;
        var rows = (facts.Length + most - 1) / most;
        var even = Columns(facts, (facts.Length + rows - 1) / rows);
        return Fit(even) ? even : Columns(facts, most);

        bool Fit(double[] columns) => columns.Sum() + ((columns.Length - 1) * LeastFactGap) <= width;
    }

    private static double[] Columns(ReadOnlySpan<double> facts, int count)
    {
        var widths = new double[count];
        for (var i = 0; i < facts.Length; i++) widths[i % count] = Math.Max(widths[i % count], facts[i]);
        return widths;
    }
}
