using SheetPress.Scores;

namespace SheetPress.Lessons.Tests;

/// <summary>The table of levels that teachers read, and that the exercises do what it says.</summary>
public class LevelTests
{
    private const string Progression = "Cm7 | Fm7 | Bb7 | Ebmaj7 | Abmaj7 | Dm7b5 | G7 | Cm7 | Fm7 | Bb7 | Ebmaj7 | Abmaj7 | Dm7b5 | G7 | Cm7 | Cm7";

    public static TheoryData<int> Levels => [1, 2, 3, 4, 5];

    [Fact]
    public void The_guide_to_lessons_shows_the_table_as_it_is()
    {
        File.ReadAllText(RepositoryRoot.Combine("lesson-sources", "README.md")).ReplaceLineEndings("\n").ShouldContain(LevelGuide.Markdown());
    }

    [Fact]
    public void Every_row_has_a_cell_a_level_and_changes_somewhere()
    {
        foreach (var row in LevelGuide.Rows)
        {
            row.Length.ShouldBe(6);
            row.Skip(1).Distinct().Count().ShouldBeGreaterThan(1, row[0]);
        }
    }

    [Theory]
    [MemberData(nameof(Levels))]
    public void Lines_keep_to_the_frets_of_their_level(int level)
    {
        // On four strings every figure here has a place within them: the lowest place of each pitch is what the table promises.
        var highest = int.TryParse(Cell("frets of the lines", level).Split(' ')[^1], out var fret) ? fret : 24;
        foreach (var style in (string[])["roots", "arpeggio", "walking-line", "two-feel", "bossa", "rock-eighths", "ballad"])
        {
            var lesson = LessonMaker.Lesson(Progression, level: level);
            foreach (var note in LessonMaker.Generate(lesson, style, style == "arpeggio" ? [("octaves", 1)] : []).Notes)
            {
                var lowest = Enumerable.Range(1, 4).Select(s => note.Tones[0].Pitch.MidiNumber - lesson.Instrument.MidiNumberAt(s, 0)).Where(f => f >= 0).Min();
                lowest.ShouldBeLessThanOrEqualTo(Math.Max(highest, 9), $"{style}: {note.Tones[0].Pitch}");
                if (style is "walking-line" or "two-feel" or "roots") lowest.ShouldBeLessThanOrEqualTo(highest, $"{style}: {note.Tones[0].Pitch}");
            }
        }
    }

    [Theory]
    [MemberData(nameof(Levels))]
    public void Runs_move_in_the_value_of_their_level(int level)
    {
        var value = Cell("scales, arpeggios", level) switch { "beats" => Fraction.One, "eighths" => new Fraction(1, 2), "sixteenths" => new Fraction(1, 4), var other => throw new InvalidDataException(other) };
        var line = LessonMaker.Generate(LessonMaker.Lesson(Progression, level: level), "scale-run");
        line.Notes.Where(n => n.Start < 48).ShouldAllBe(n => n.Duration == value);
    }

    [Theory]
    [MemberData(nameof(Levels))]
    public void Walking_lines_have_the_notes_range_and_skips_of_their_level(int level)
    {
        var lesson = LessonMaker.Lesson(Progression, level: level);
        var range = int.Parse(Cell("walking, two-feel: range", level).Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture);
        var every = Cell("walking, two-feel: skips", level) switch { "none" => 0, "every four bars" => 4, "every two bars" => 2, var other => throw new InvalidDataException(other) };
        var (passing, chromatic) = (0, 0);
        for (var seed = 1; seed <= 12; seed++)
        {
            var line = LessonMaker.Generate(lesson, LessonMaker.Request("walking-line") with { Seed = seed }).Line;
            line.Notes.Max(n => n.Tones[0].Pitch.MidiNumber).ShouldBeLessThanOrEqualTo(28 + range + 2);
            line.Notes.Count(n => n.Tones[0].Head == Notehead.Dead).ShouldBe(every == 0 ? 0 : (16 / every) - (level >= 4 ? 1 : 0), $"seed {seed}");
            foreach (var note in line.Notes)
            {
                var span = lesson.Progression.Chords.Single(c => c.Start <= note.Start && note.Start < c.End);
                var degree = note.Tones[0].Pitch.Name.PitchClass;
                if (note.Start - span.Start is var at && at < 3 && span.Chord!.Tones.All(t => t.Note.PitchClass != degree)) passing++;
                if (span.Analysis!.Scale.Notes.All(n => n.PitchClass != degree)) chromatic++;
            }
        }
        (passing > 0).ShouldBe(Cell("walking: notes", level) != "chord tones");
        (chromatic > 0).ShouldBe(Cell("walking: notes", level) == "and half steps");
    }

    [Theory]
    [MemberData(nameof(Levels))]
    public void Two_feels_lead_and_grooves_fill_as_often_as_the_table_says(int level)
    {
        var lesson = LessonMaker.Lesson(Progression, level: level);
        var leads = LessonMaker.Generate(lesson, "two-feel", ("skips", "never")).Notes.Count(n => n.Duration == 1 && n.Start.Modulo(4) == 3);
        leads.ShouldBe(Cell("two-feel: leads", level) switch { "none" => 0, "every second chord" => 7, "every chord" => 15, var other => throw new InvalidDataException(other) });
        var fills = Cell("fills in grooves", level) switch { "none" => 0, "every eight bars" => 2, "every four bars" => 4, var other => throw new InvalidDataException(other) };
        var bare = LessonMaker.Degrees(lesson, LessonMaker.Generate(lesson, "disco-octaves", ("fill-every", 0))).Split(" | ");
        var usual = LessonMaker.Degrees(lesson, LessonMaker.Generate(lesson, "disco-octaves")).Split(" | ");
        bare.Zip(usual).Count(b => b.First != b.Second).ShouldBe(fills);
    }

    [Theory]
    [InlineData(1, 1)]
    [InlineData(2, 2)]
    [InlineData(3, 2)]
    [InlineData(4, 4)]
    [InlineData(5, 4)]
    public void A_rhythm_on_one_note_has_the_values_of_its_level(int level, int partsOfABeat)
    {
        var shortest = Fraction.One;
        for (var seed = 1; seed <= 10; seed++)
        {
            foreach (var meter in (Meter[])[new(4, 4), new(3, 4), new(2, 2), new(5, 4), new(7, 4)])
            {
                var pattern = RhythmBook.Of(meter, level, seed);
                pattern.Length.ShouldBe(meter.MeasureLength * 8);
                Whole(pattern);
                shortest = Fraction.Min(shortest, pattern.Cells.Min(c => c.Duration));
            }
            foreach (var meter in (Meter[])[new(6, 8), new(7, 8), new(12, 8), new(5, 8), new(3, 8)]) Whole(RhythmBook.Of(meter, level, seed));
        }
        shortest.ShouldBe(Fraction.One / partsOfABeat);
    }

    [Fact]
    public void The_range_of_walking_lines_grows_with_the_level()
    {
        var ranges = Enumerable.Range(1, 5).Select(level => Enumerable.Range(1, 30).Average(seed =>
        {
            var notes = LessonMaker.Generate(LessonMaker.Lesson(Progression, level: level), LessonMaker.Request("walking-line") with { Seed = seed }).Line.Notes;
            return notes.Max(n => n.Tones[0].Pitch.MidiNumber) - notes.Min(n => n.Tones[0].Pitch.MidiNumber);
        })).ToList();
        // Up to level 3 a line stays near the first position, which chord tones alone fill as well as steps.
        ranges[4].ShouldBeGreaterThan(ranges[3] + 1, string.Join(' ', ranges));
        ranges[3].ShouldBeGreaterThan(ranges[2] + 1, string.Join(' ', ranges));
    }

    private static void Whole(RhythmPattern pattern)
    {
        var at = Fraction.Zero;
        foreach (var cell in pattern.Cells)
        {
            cell.Start.ShouldBe(at);
            at += cell.Duration;
        }
        at.ShouldBe(pattern.Length);
        pattern.Cells[0].IsRest.ShouldBeFalse();
    }

    private static string Cell(string row, int level) => LevelGuide.Rows.Single(r => r[0] == row)[level];
}
