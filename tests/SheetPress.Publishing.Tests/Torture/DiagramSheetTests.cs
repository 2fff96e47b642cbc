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

    public static TheoryData<string> Sheets => [.. Directory.GetFiles(Folder, "diagrams-*.yaml").Select(f => Path.GetFileNameWithoutExtension(f)).Order(StringComparer.Ordinal)];

    private static string Folder
    {
        get
        {
            var root = new DirectoryInfo(AppContext.BaseDirectory);
            while (!File.Exists(Path.Combine(root.FullName, "SheetPress.sln"))) root = root.Parent.ShouldNotBeNull();
            return Path.Combine(root.FullName, "tests", "SheetPress.Publishing.Tests", "Torture");
        }
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Pages_have_nothing_to_circle_in_red(string sheet)
    {
        var content = HandoutAssembler.Assemble(Built(sheet), HandoutWording.English);
        foreach (var style in (PageStyle[])[PageStyle.Handout(PaperSize.A4), PageStyle.Handout(PaperSize.Letter)])
        {
            var findings = PageLint.Check(SheetComposer.Compose(content, style), margin: 15);
            findings.ShouldBeEmpty(string.Join("\n", findings.Take(20)));
        }
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Diagrams_are_as_approved(string sheet)
    {
        var style = PageStyle.Handout(PaperSize.A4);
        var built = Built(sheet);
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
        foreach (var exercise in Built(sheet).Exercises) MusicXmlSchema.Validate(Written.Exercise(exercise.Score), exercise.Score.Title);
    }

    private static BuiltLesson Built(string sheet)
    {
        var (source, bag) = LessonFiles.Load(Path.Combine(Folder, sheet + ".yaml"));
        var lesson = LessonReader.Read(source, bag).ShouldNotBeNull(string.Join("\n", bag.Items.Select(d => d.Message)));
        var built = LessonBuilder.Build(lesson, bag);
        bag.Items.ShouldBeEmpty(string.Join("\n", bag.Items.Select(d => d.Message)));
        return built;
    }
}
