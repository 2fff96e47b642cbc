using System.Collections.Immutable;
using System.Text;
using NAudio.Midi;
using SheetPress.Engraving;
using SheetPress.Lessons;
using SheetPress.Publishing.Tests.MusicXml;
using SheetPress.Scores;

namespace SheetPress.Publishing.Tests.Torture;

/// <summary>
/// Sheets of all the notation that lessons need, made to be hard to engrave: lessons beside this file, and <see cref="NotationScores"/>
/// for what no lesson asks for. They are whole as scores, valid as MusicXML, clean to the lint, and their display lists are those that
/// were approved after looking at the pages. With SHEETPRESS_PICTURES naming a folder the pages are written there to be looked at.
/// </summary>
public class NotationSheetTests
{
    // 170 mm of A4 between margins at a staff space of 1.75 mm, as on a handout.
    private const double LineWidth = 170 / 1.75;

    private const string OfScores = "notation-0-scores";

    public static TheoryData<string> Sheets => [OfScores, .. Directory.GetFiles(Folder, "notation-*.yaml").Select(f => Path.GetFileNameWithoutExtension(f)).Order(StringComparer.Ordinal)];

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
    public void Scores_are_whole_and_valid_as_MusicXML(string sheet)
    {
        var scores = ScoresOf(sheet);
        foreach (var score in scores) ScoreChecks.Run(score).ShouldBeEmpty(score.Title);
        foreach (var score in scores) MusicXmlSchema.Validate(Written.Exercise(score), score.Title);
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Pages_have_nothing_to_circle_in_red(string sheet)
    {
        var content = ContentOf(sheet);
        foreach (var paper in (PaperSize[])[PaperSize.A4, PaperSize.Letter])
        {
            var document = SheetComposer.Compose(content, PageStyle.Handout(paper));
            if (paper == PaperSize.A4) Picture(sheet, document);
            var findings = PageLint.Check(document, margin: 15);
            findings.ShouldBeEmpty($"{paper.Name}\n{string.Join("\n", findings.Take(20))}");
        }
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Music_is_drawn_as_approved(string sheet)
    {
        var text = new StringBuilder();
        foreach (var score in ScoresOf(sheet))
        {
            foreach (var (system, number) in ScoreEngraver.Engrave(score, LineWidth, new EngravingOptions()).Systems.Select((s, i) => (s, i + 1)))
            {
                // The lines of staff and tab say nothing that the width does not.
                var marks = system.Drawing.Marks.Where(m => m.Role is not (MarkRole.StaffLine or MarkRole.TabLine));
                text.Append(FormattableString.Invariant($"{score.Title}, system {number}, width {system.Width:0.##}\n"));
                text.Append(DrawingText.Of(new Drawing([.. marks])));
            }
        }
        Snapshot.Match(text.ToString(), test: sheet);
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Every_note_is_heard_as_often_as_it_is_played(string sheet)
    {
        foreach (var score in ScoresOf(sheet))
        {
            using var stream = new MemoryStream();
            MidiWriter.WriteExercise(score, MidiOptions.Default, stream);
            stream.Position = 0;
            // Channel 10 is the click (General MIDI).
            var heard = new MidiFile(stream, strictChecking: true).Events.SelectMany(t => t).OfType<NoteOnEvent>().Count(n => n.Velocity > 0 && n.Channel != 10);
            // A unison of both voices is one key.
            var played = PlaybackOrder.Of(score).Sum(m => score.Measures[m].Voices.SelectMany(v => v.Events).SelectMany(e => e.Tones.Where(t => !t.TieStop).Select(t => (e.Onset, t.Pitch.MidiNumber))).Distinct().Count());
            heard.ShouldBe(played, score.Title);
        }
    }

    private static ImmutableArray<Score> ScoresOf(string sheet) => sheet == OfScores ? NotationScores.All : [.. Lesson(sheet).Exercises.Select(e => e.Score)];

    private static HandoutContent ContentOf(string sheet)
    {
        if (sheet != OfScores) return HandoutAssembler.Assemble(Lesson(sheet), HandoutWording.English);
        return new HandoutContent { Title = "What no lesson asks for", Exercises = [.. NotationScores.All.Select((s, i) => new ExerciseContent { Number = FormattableString.Invariant($"{i + 1}"), Score = s })] };
    }

    private static BuiltLesson Lesson(string sheet)
    {
        var (source, bag) = LessonFiles.Load(Path.Combine(Folder, sheet + ".yaml"));
        var lesson = LessonReader.Read(source, bag).ShouldNotBeNull(string.Join("\n", bag.Items.Select(d => d.Message)));
        var built = LessonBuilder.Build(lesson, bag);
        bag.Items.ShouldBeEmpty(string.Join("\n", bag.Items.Select(d => d.Message)));
        return built;
    }

    private static void Picture(string sheet, SheetDocument document)
    {
        if (Environment.GetEnvironmentVariable("SHEETPRESS_PICTURES") is not { Length: > 0 } folder) return;
        Directory.CreateDirectory(folder);
        for (var i = 0; i < document.Pages.Length; i++)
        {
            using var stream = File.Create(Path.Combine(folder, FormattableString.Invariant($"{sheet}-{i + 1}.png")));
            PngWriter.Write(document.Pages[i], stream);
        }
    }
}
