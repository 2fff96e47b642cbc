using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>Composes sheets: from content to finished pages.</summary>
public static class SheetComposer
{
    /// <summary>Composes a handout.</summary>
    /// <param name="content">What stands on it.</param>
    /// <param name="style">How it looks.</param>
    public static SheetDocument Compose(HandoutContent content, PageStyle style)
    {
        var flow = new HandoutFlow(content, style).Build();
        var top = style.TopMargin + style.HeadHeight;
        var height = style.Paper.Height - style.BottomMargin - style.FootHeight - top;
        var pages = PageBreaker.Break(flow, height, style.HeadHeight, style.FacingPages);
        var bodies = new List<ImmutableArray<Mark>.Builder>(pages.Length);
        var heads = new List<PageHead>(pages.Length);
        var bookmarks = ImmutableArray.CreateBuilder<Bookmark>();
        HeadMark? running = null;
        for (var i = 0; i < pages.Length; i++)
        {
            var marks = ImmutableArray.CreateBuilder<Mark>();
            var left = style.LeftMargin(i);
            var y = i == 0 ? style.TopMargin : top;
            if (i > 0 && flow[pages[i].Start - 1].Repeated is { } repeated)
            {
                Draw(marks, repeated, left, y);
                y += repeated.Height;
            }
            var begun = new List<HeadMark>();
            for (var b = pages[i].Start; b < pages[i].End; b++)
            {
                var box = flow[b];
                foreach (var (name, level) in box.Bookmarks) bookmarks.Add(new Bookmark(name, i, y, level));
                if (box.Head is { } mark) begun.Add(mark);
                Draw(marks, box, left, y);
                var spread = pages[i].Spread;
                y += box.Height + box.After.Natural + (spread * (spread > 0 ? box.After.Stretch : box.After.Shrink));
            }
            heads.Add(PageHead.Of(running, flow[pages[i].Start].Head is not null, begun, content.Labels));
            if (begun.Count > 0) running = begun[^1];
            bodies.Add(marks);
        }
        var title = RunningMatter.Title(content.Title, [.. heads.Skip(1)], style);
        var drawn = ImmutableArray.CreateBuilder<Page>(pages.Length);
        for (var i = 0; i < pages.Length; i++)
        {
            RunningMatter.Add(bodies[i], content, style, i, pages.Length, title, heads[i]);
            drawn.Add(new Page(style.Paper.Width, style.Paper.Height, new Drawing(bodies[i].DrainToImmutable())));
        }
        return new SheetDocument
        {
            Title = content.Title,
            Author = content.Author,
            Language = content.Language,
            Pages = drawn.MoveToImmutable(),
            Bookmarks = bookmarks.DrainToImmutable(),
        };
    }

    private static void Draw(ImmutableArray<Mark>.Builder marks, FlowBox box, double x, double y)
    {
        foreach (var placed in box.Drawings)
        {
            foreach (var mark in placed.Drawing.Marks) marks.Add(mark.Transform(placed.Scale, x + placed.X, y + placed.Y));
        }
    }
}
