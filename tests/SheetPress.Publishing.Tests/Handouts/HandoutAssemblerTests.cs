using SheetPress.Engraving;
using SheetPress.Lessons;

namespace SheetPress.Publishing.Tests.Handouts;

public class HandoutAssemblerTests
{
    [Fact]
    public void A_tuning_is_said_once()
    {
        var facts = Content("instrument:\n  base: guitar-6\n  tuning: D2 A2 D3 G3 B3 E4\n").Facts;
        facts.ShouldContain(new FactItem("Instrument", "6-string guitar"));
        facts.ShouldContain(new FactItem("Tuning", "D A D G B E"));
    }

    [Fact]
    public void A_name_of_ones_own_stays_whole()
    {
        var facts = Content("instrument:\n  base: guitar-6\n  tuning: D2 A2 D3 G3 B3 E4\n  name: The old one in the corner\n").Facts;
        facts.ShouldContain(new FactItem("Instrument", "The old one in the corner"));
    }

    [Fact]
    public void A_book_has_its_page_number_alone_and_no_form()
    {
        var book = Content("pages: book\n");
        book.NameAndDate.ShouldBeFalse();
        string.Format(System.Globalization.CultureInfo.InvariantCulture, book.Labels.PageOf, 3, 12).ShouldBe("3");
        Content("pages: large-print\n").NameAndDate.ShouldBeTrue();
    }

    [Theory]
    [InlineData(PageKind.Handout, 7, false)]
    [InlineData(PageKind.Book, 6.5, true)]
    [InlineData(PageKind.LargePrint, 10, false)]
    public void Each_kind_of_pages_has_its_look(PageKind kind, double staff, bool facing)
    {
        var style = PageStyles.For(kind, PaperSize.A5);
        (4 * style.StaffSpace).ShouldBe(staff, 1e-9);
        (style.FacingPages, style.Justify).ShouldBe((facing, facing));
        style.Paper.ShouldBe(PaperSize.A5);
        // Common practice of associations for the blind, from memory: 16 points or more.
        // Figures in diagrams grow with the rest.
        (style.Diagram.LabelSize / TextStyle.Point).ShouldBeGreaterThanOrEqualTo(kind == PageKind.LargePrint ? 12 : 7);
        if (kind == PageKind.LargePrint) Math.Min(style.Small.Size, style.Body.Size).ShouldBeGreaterThanOrEqualTo(16 * TextStyle.Point - 1e-9);
    }

    // At the nut an open string without a dot would not seem to be a tone of the chord.
    [Theory]
    [InlineData("chord: F#7", true)]
    [InlineData("chord: F#7\n    frets: 1-5", false)]
    [InlineData("chord: C7", false)]
    public void A_map_that_begins_at_the_nut_has_its_open_strings(string diagram, bool open)
    {
        var dots = Content($"instrument: bass-4\ndiagrams:\n  - {diagram}\n").Diagrams.ShouldHaveSingleItem().Dots;
        dots.Any(d => d.Position.Fret == 0).ShouldBe(open);
    }

    private static HandoutContent Content(string entries)
    {
        var source = new SourceText("tiny.yaml", $"title: x\nkey: C\nprogression: C | G\nexercises: [roots]\n{entries}");
        var bag = new DiagnosticBag(source);
        var lesson = LessonReader.Read(source, bag).ShouldNotBeNull(string.Join("\n", bag.Items.Select(d => d.Message)));
        return HandoutAssembler.Assemble(LessonBuilder.Build(lesson, bag), HandoutWording.English);
    }
}
