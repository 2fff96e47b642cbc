using SheetPress.Engraving;
using SheetPress.Lessons;

namespace SheetPress.Publishing;

/// <summary>The looks of the kinds of pages.</summary>
public static class PageStyles
{
    /// <summary>The look of a kind of pages on a paper.</summary>
    public static PageStyle For(PageKind kind, PaperSize paper) => kind switch
    {
        PageKind.Book => PageStyle.Book(paper),
        PageKind.LargePrint => PageStyle.LargePrint(paper),
        _ => PageStyle.Handout(paper),
    };
}
