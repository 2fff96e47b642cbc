using SheetPress.Engraving;
using SheetPress.Lessons;

namespace SheetPress.Publishing.Tests.Torture;

/// <summary>
/// Sheets of text, tables and pages made to be hard to set, each beside this file as a lesson: their pages are looked over by the lint in several styles, and
/// their display lists are compared with those that were approved after looking at the pages.
/// </summary>
public class TextSheetTests
{
    // Words in scripts that the shipped fonts lack are as wide as the fonts of the machine make them.
    private const string DependsOnMachine = "text-scripts";

    // A sheet of nothing but exercises moves with every change of a fingering: what stands on which page is compared.
    private const string DependsOnMusic = "text-pages";

    public static TheoryData<string> Sheets => [.. TortureSheets.Named("text")];

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Pages_have_nothing_to_circle_in_red(string sheet) => TortureSheets.LookOver(
        sheet,
        TortureSheets.Content(sheet),
        PageStyle.Handout(PaperSize.A4),
        PageStyle.Handout(PaperSize.Letter),
        PageStyle.Handout(PaperSize.A5),
        PageStyle.Book(PaperSize.Letter),
        PageStyle.LargePrint(PaperSize.A4),
        PageStyle.LargePrint(PaperSize.Letter));

    public static TheoryData<string> FixedSheets => [.. Sheets.Select(s => s.Data).Where(s => s != DependsOnMachine)];

    [Theory]
    [MemberData(nameof(FixedSheets))]
    public void Pages_are_as_approved(string sheet)
    {
        var pages = SheetComposer.Compose(TortureSheets.Content(sheet), PageStyle.Handout(PaperSize.A4)).Pages;
        Snapshot.Match(string.Concat(pages.Select((page, i) => $"page {i + 1}\n{(sheet == DependsOnMusic ? Titles(page) : DrawingText.WithoutMusic(page.Drawing))}")), test: sheet);
    }

    private static string Titles(Page page) => string.Concat(page.Drawing.Marks.OfType<TextMark>().Where(m => m.Role == MarkRole.Title).Select(m => m.Run.Text.Trim() + "\n"));
}
