using System.Collections.Immutable;
using System.Globalization;

namespace SheetPress.Engraving;

/// <summary>Running head and footer.</summary>
internal static class RunningMatter
{
    private const double HeadRuleGap = 1.4;
    private const double HeadGap = 8;
    // What a page is about is cut only where it takes more than this share of the head and the title needs the rest.
    private const double MarkShare = 0.55;
    // A title may be called by its words before one of these.
    private static readonly string[] Breaks = [": ", "; ", ", ", " – ", " — ", " ("];
    private const int ShortestTitle = 4;

    /// <summary>
    /// The title as all running heads of a sheet have it: whole, or by its first words, where what the pages are about fits beside it in full;
    /// else in its fewest words, cut only where not even the short words of the pages fit.
    /// </summary>
    /// <param name="title">The title of the sheet.</param>
    /// <param name="heads">What the pages that have a running head are about.</param>
    /// <param name="style">How pages look.</param>
    internal static string Title(string title, IReadOnlyList<PageHead> heads, PageStyle style)
    {
        var small = style.Small;
        var room = style.TextWidth - HeadGap;
        var (full, least) = (0.0, 0.0);
        foreach (var head in heads)
        {
            full = Math.Max(full, Width(head.Text));
            least = Math.Max(least, Width(head.ShortText));
        }
        var name = title;
        while (Width(name) > room - full && Shorter(name) is { } shorter) name = shorter;
        return Cut(name, small.Upright, small.Size, room - Math.Min(least, MarkShare * room));

        double Width(string text) => TextSetter.Measure(text, small.Upright, small.Size);
    }

    // The title without its last part, where it has parts.
    private static string? Shorter(string title)
    {
        var end = -1;
        foreach (var mark in Breaks) end = Math.Max(end, title.LastIndexOf(mark, StringComparison.Ordinal));
        return end >= ShortestTitle ? title[..end] : null;
    }

    /// <summary>Adds both to a page.</summary>
    /// <param name="marks">The marks of the page, in millimetres from its corner.</param>
    /// <param name="content">Words.</param>
    /// <param name="style">How pages look.</param>
    /// <param name="page">Index of the page.</param>
    /// <param name="pages">Number of pages.</param>
    /// <param name="title">The title as running heads have it.</param>
    /// <param name="head">What the page is about, at the right of its head.</param>
    internal static void Add(ImmutableArray<Mark>.Builder marks, HandoutContent content, PageStyle style, int page, int pages, string title, PageHead head)
    {
        var small = style.Small;
        var left = style.LeftMargin(page);
        var right = left + style.TextWidth;
        if (page > 0)
        {
            var y = style.TopMargin + (TextStyle.Ascent * small.Size);
            var name = TextSetter.Set(title, small.Upright, small.Size);
            var room = style.TextWidth - HeadGap - name.Width;
            var mark = TextSetter.Set(head.Text, small.Upright, small.Size);
            if (mark.Width > room) mark = Fit(head.ShortText, small.Upright, small.Size, room);
            mark.PlaceAt(marks, right - mark.Width, y);
            name.PlaceAt(marks, left, y);
            y += (TextStyle.Descent * small.Size) + HeadRuleGap;
            marks.Add(new LineMark(new Point(left, y), new Point(right, y), 0.2) { Role = MarkRole.TableRule });
        }
        var foot = style.Paper.Height - style.BottomMargin - (TextStyle.Descent * small.Size);
        var number = string.Format(CultureInfo.InvariantCulture, content.Labels.PageOf, page + 1, pages);
        var piece = TextSetter.Set(number, small.Upright, small.Size);
        // The title is in the running head from page two. On the first page, where it stands in full, it is not cut.
        var footRoom = style.TextWidth - piece.Width - HeadGap;
        var isWhole = page == 0 && TextSetter.Measure(content.Title, small.Upright, small.Size) <= footRoom;
        var words = Fit(isWhole ? content.Title : content.Author, small.Upright, small.Size, footRoom);
        // The number is at the outer edge: left on the even pages of a book, whose index is odd.
        var numberLeft = style.FacingPages && page % 2 == 1;
        piece.PlaceAt(marks, numberLeft ? left : right - piece.Width, foot);
        words.PlaceAt(marks, numberLeft ? right - words.Width : left, foot);
    }

    private static TextPiece Fit(string text, TextFont font, double size, double width) => TextSetter.Set(Cut(text, font, size, width), font, size);

    // The text, cut at a word with an ellipsis when it is too long; within the word where it is all one.
    private static string Cut(string text, TextFont font, double size, double width)
    {
        if (Fits(text)) return text;
        for (var end = text.LastIndexOf(' '); end > 0; end = text.LastIndexOf(' ', end - 1)) if (Fits(text[..end] + " …")) return text[..end] + " …";
        var word = text.AsSpan().IndexOf(' ') is var space and > 0 ? text[..space] : text;
        for (var end = word.Length; end > 1;)
        {
            end -= char.IsLowSurrogate(word[end - 1]) ? 2 : 1;
            if (end <= 1 || Fits(word[..end] + "…")) return word[..end] + "…";
        }
        return word;

        bool Fits(string part) => TextSetter.Measure(part, font, size) <= width;
    }
}
