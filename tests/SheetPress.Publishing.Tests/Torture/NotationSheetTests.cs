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

    public static TheoryData<string> Sheets => [OfScores, .. TortureSheets.Named("notation")];

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
    public void Pages_have_nothing_to_circle_in_red(string sheet) =>
        TortureSheets.LookOver(sheet, ContentOf(sheet), PageStyle.Handout(PaperSize.A4), PageStyle.Handout(PaperSize.Letter));

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

    private static ImmutableArray<Score> ScoresOf(string sheet) => sheet == OfScores ? NotationScores.All : [.. TortureSheets.Build(sheet).Exercises.Select(e => e.Score)];

    private static HandoutContent ContentOf(string sheet)
    {
        if (sheet != OfScores) return TortureSheets.Content(sheet);
        return new HandoutContent { Title = "What no lesson asks for", Exercises = [.. NotationScores.All.Select((s, i) => new ExerciseContent { Number = FormattableString.Invariant($"{i + 1}"), Score = s })] };
    }
}
