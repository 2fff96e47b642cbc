using SheetPress.Engraving;
using SheetPress.Lessons;
using SheetPress.Publishing.Tests.MusicXml;

namespace SheetPress.Publishing.Tests.Torture;

/// <summary>
/// Sheets of neck diagrams made to be hard to draw, each beside this file as a lesson: pages are looked over by the lint, and the display
/// lists of the diagrams are compared with those that were approved after looking at the pages.
/// </summary>
public class DiagramSheetTests
{
    private const double ColumnWidth = 80;

    public static TheoryData<string> Sheets => [.. TortureSheets.Named("diagrams")];

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Pages_have_nothing_to_circle_in_red(string sheet) =>
        TortureSheets.LookOver(sheet, TortureSheets.Content(sheet), PageStyle.Handout(PaperSize.A4), PageStyle.Handout(PaperSize.Letter));

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Diagrams_are_as_approved(string sheet)
    {
        var style = PageStyle.Handout(PaperSize.A4);
        var built = TortureSheets.Build(sheet);
        var large = HandoutAssembler.Assemble(built, HandoutWording.English).Diagrams
            .Select((d, i) => $"diagram {i + 1}\n{DrawingText.Of(DiagramFigure.Draw(d, style.Diagram, style.Small, style.Heading.Size, ColumnWidth).Drawing)}");
        var small = built.Exercises.SelectMany(e => e.Score.Measures).SelectMany(m => m.Harmonies).Where(h => !h.Frame.IsEmpty).Select(h =>
            $"over {h.Chord} {string.Join(' ', h.Frame.Select(p => $"{p.String}:{p.Fret}"))}{string.Concat(h.FrameBarres.Select(b => $" barre {b.Fret} {b.FirstString}-{b.LastString}"))}\n");
        Snapshot.Match(string.Concat(large.Concat(small)), test: sheet);
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Small_diagrams_are_valid_as_MusicXML(string sheet)
    {
        foreach (var exercise in TortureSheets.Build(sheet).Exercises) MusicXmlSchema.Validate(Written.Exercise(exercise.Score), exercise.Score.Title);
    }
}
