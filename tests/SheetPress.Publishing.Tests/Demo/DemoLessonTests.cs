using System.Text;
using NAudio.Midi;
using SheetPress.Engraving;
using SheetPress.Lessons;
using SheetPress.Scores;
using UglyToad.PdfPig;
using UglyToad.PdfPig.DocumentLayoutAnalysis.TextExtractor;

namespace SheetPress.Publishing.Tests.Demo;

/// <summary>Every demo lesson as a whole: what it gives is read back with libraries of others, and its pages are looked over by the lint.</summary>
public class DemoLessonTests
{
    public static TheoryData<string> Names => [.. LessonFiles.Find([Sources]).Paths.Select(p => Path.GetFileName(p))];

    private static string Sources
    {
        get
        {
            var folder = new DirectoryInfo(AppContext.BaseDirectory);
            while (!File.Exists(Path.Combine(folder.FullName, "SheetPress.sln"))) folder = folder.Parent.ShouldNotBeNull();
            return Path.Combine(folder.FullName, "lesson-sources");
        }
    }

    private static BuiltLesson Build(string name, LessonOverrides? overrides = null)
    {
        var (source, bag) = LessonFiles.Load(Path.Combine(Sources, name));
        var lesson = LessonReader.Read(source, bag, overrides).ShouldNotBeNull(string.Join("\n", bag.Items.Select(d => d.Message)));
        var built = LessonBuilder.Build(lesson, bag);
        bag.Items.ShouldBeEmpty(string.Join("\n", bag.Items.Select(d => d.Message)));
        return built;
    }

    private static SheetDocument Compose(BuiltLesson built, PaperSize paper) =>
        SheetComposer.Compose(HandoutAssembler.Assemble(built, HandoutWording.English), PageStyle.Handout(paper));

    [Theory]
    [MemberData(nameof(Names))]
    public void Scores_are_whole_and_every_note_lies_where_it_sounds(string name)
    {
        foreach (var exercise in Build(name).Exercises) ScoreChecks.Run(exercise.Score).ShouldBeEmpty(exercise.Score.Title);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Pdf_reads_back_with_its_words_bookmarks_and_pages(string name)
    {
        var built = Build(name);
        var document = Compose(built, PaperSize.A4);
        using var stream = new MemoryStream();
        PdfWriter.Write(document, stream);

        using var pdf = PdfDocument.Open(stream.ToArray());
        pdf.NumberOfPages.ShouldBe(document.Pages.Length);
        pdf.Information.Title.ShouldBe(built.Lesson.Title);
        // ISO 216: A4 is 210 x 297 mm; a PDF point is 1/72 inch (ISO 32000).
        pdf.GetPage(1).Width.ShouldBe(210 / 25.4 * 72, 0.6);
        pdf.GetPage(1).Height.ShouldBe(297 / 25.4 * 72, 0.6);
        var text = new StringBuilder();
        foreach (var page in pdf.GetPages()) text.Append(ContentOrderTextExtractor.GetText(page)).Append(' ');
        var words = Squeezed(text.ToString());
        words.ShouldContain(Squeezed(built.Lesson.Title));
        foreach (var exercise in built.Exercises) words.ShouldContain(Squeezed(exercise.Score.Title));
        words.ShouldContain(Squeezed("Warm up before you play"));
        pdf.TryGetBookmarks(out var bookmarks).ShouldBeTrue();
        var titles = bookmarks.GetNodes().Select(b => b.Title).ToArray();
        foreach (var exercise in built.Exercises) titles.ShouldContain(t => t.Contains(exercise.Score.Title));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Midi_reads_back_with_every_note_of_the_score(string name)
    {
        foreach (var exercise in Build(name).Exercises)
        {
            using var stream = new MemoryStream();
            MidiWriter.WriteExercise(exercise.Score, MidiOptions.Default, stream);
            stream.Position = 0;
            var played = new MidiFile(stream, strictChecking: true).Events.SelectMany(t => t).OfType<NoteOnEvent>().Count(n => n.Velocity > 0 && n.Channel != 10);
            var order = PlaybackOrder.Of(exercise.Score);
            var sounding = order.Sum(m => exercise.Score.Measures[m].Voices.Sum(v => v.Events.Sum(e => e.Tones.Count(t => !t.TieStop))));
            played.ShouldBe(sounding, exercise.Score.Title);
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Pages_have_nothing_to_circle_in_red(string name)
    {
        var built = Build(name);
        (PageKind Kind, PaperSize Paper)[] looks =
        [
            (PageKind.Handout, PaperSize.A4), (PageKind.Handout, PaperSize.Letter), (PageKind.Handout, PaperSize.A5), (PageKind.Book, PaperSize.A4),
            (PageKind.Book, PaperSize.Letter), (PageKind.LargePrint, PaperSize.A4), (PageKind.LargePrint, PaperSize.A5),
        ];
        foreach (var (kind, paper) in looks)
        {
            var findings = SheetLint.Check(HandoutAssembler.Assemble(built, HandoutWording.English), PageStyles.For(kind, paper), margin: 15);
            findings.ShouldBeEmpty($"{kind} on {paper.Name}\n{string.Join("\n", findings.Take(20))}");
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Lesson_can_be_had_in_all_twelve_keys(string name)
    {
        var notes = Build(name).Exercises.Length;
        foreach (var key in Theory.Key.Twelve(Build(name).Lesson.Key.Mode)) Build(name, new LessonOverrides { Key = key }).Exercises.Length.ShouldBe(notes);
    }

    private static string Squeezed(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));

    // The table of each demo lesson fits on one page: it is not cut while the page has room.
    [Theory]
    [MemberData(nameof(Names))]
    public void The_harmony_table_is_whole(string name) =>
        Compose(Build(name), PaperSize.A4).Pages.SelectMany(p => p.Drawing.Marks).OfType<TextMark>().Count(t => t.Run.Text.Trim() == "Chord tones").ShouldBeLessThanOrEqualTo(1);

    // Two texts side by side begin the second page: its running head names them and not the table before.
    [Fact]
    public void A_running_head_names_what_begins_on_its_page() =>
        Compose(Build("two-chords-a-bar.yaml"), PaperSize.A4).Pages[1].Drawing.Marks.OfType<TextMark>().Select(t => t.Run.Text.Trim()).ShouldNotContain("The harmony at a glance");
}
