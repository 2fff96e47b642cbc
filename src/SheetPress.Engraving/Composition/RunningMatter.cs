using System.Collections.Immutable;
using System.Globalization;

namespace SheetPress.Engraving;

/// <summary>Running head and footer.</summary>
internal static class RunningMatter
{
    private const double HeadRuleGap = 1.4;
    private const double HeadGap = 8;
    // What the page is about is cut only where it takes more than this share of the head and the title needs the rest.
    private const double MarkShare = 0.55;

    /// <summary>Adds both to a page.</summary>
    /// <param name="marks">The marks of the page, in millimetres from its corner.</param>
    /// <param name="content">Words.</param>
    /// <param name="style">How pages look.</param>
    /// <param name="page">Index of the page.</param>
    /// <param name="pages">Number of pages.</param>
    /// <param name="headMark">What the page is about, at the right of its head; may be empty.</param>
    internal static void Add(ImmutableArray<Mark>.Builder marks, HandoutContent content, PageStyle style, int page, int pages, string headMark)
    {
        var small = style.Small;
        var left = style.LeftMargin(page);
        var right = left + style.TextWidth;
        if (page > 0)
        {
            var y = style.TopMargin + (TextStyle.Ascent * small.Size);
            var room = style.TextWidth - HeadGap;
            var title = TextSetter.Measure(content.Title, small.Upright, small.Size);
            var mark = Fit(headMark, small.Upright, small.Size, Math.Max(room - title, MarkShare * room));
            mark.PlaceAt(marks, right - mark.Width, y);
            Fit(content.Title, small.Upright, small.Size, room - mark.Width).PlaceAt(marks, left, y);
            y += (TextStyle.Descent * small.Size) + HeadRuleGap;
            marks.Add(new LineMark(new Point(left, y), new Point(right, y), 0.2) { Role = MarkRole.TableRule });
        }
        var foot = style.Paper.Height - style.BottomMargin - (TextStyle.Descent * small.Size);
        var number = string.Format(CultureInfo.InvariantCulture, content.Labels.PageOf, page + 1, pages);
        var piece = TextSetter.Set(number, small.Upright, small.Size);
        // The title is in the running head from page two.
        var words = Fit(page == 0 ? content.Title : content.Author, small.Upright, small.Size, style.TextWidth - piece.Width - HeadGap);
        // The number is at the outer edge: left on the even pages of a book, whose index is odd.
        var numberLeft = style.FacingPages && page % 2 == 1;
        piece.PlaceAt(marks, numberLeft ? left : right - piece.Width, foot);
        words.PlaceAt(marks, numberLeft ? right - words.Width : left, foot);
    }

    // The text, cut at a word with an ellipsis when it is too long; within the word where it is all one.
    private static TextPiece Fit(string text, TextFont font, double size, double width)
    {
        var piece = TextSetter.Set(text, font, size);
        for (var cut = text.LastIndexOf(' '); piece.Width > width && cut > 0; cut = text.LastIndexOf(' ', cut - 1)) piece = TextSetter.Set(text[..cut] + " …", font, size);
        if (piece.Width <= width) return piece;
        var word = text.AsSpan().IndexOf(' ') is var space and > 0 ? text[..space] : text;
        for (var cut = word.Length; piece.Width > width && cut > 1;)
        {
            cut -= char.IsLowSurrogate(word[cut - 1]) ? 2 : 1;
            piece = TextSetter.Set(word[..cut] + "…", font, size);
        }
        return piece;
    }
}
