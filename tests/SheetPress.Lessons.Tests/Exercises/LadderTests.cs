using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Lessons.Tests;

public class LadderTests
{
    private static readonly Lesson Lesson = LessonMaker.Lesson("Cm7 | Fm7 | G7 | Cm7");

    [Fact]
    public void An_exercise_without_a_ladder_is_itself()
    {
        var request = LessonMaker.Request("roots");
        Ladder.Expand(request, Lesson).ShouldBe([request]);
    }

    [Fact]
    public void Tones_climb_from_roots_to_the_style()
    {
        // Common practice: roots, octaves, fifths, thirds, sevenths, then lines that link the chords.
        Steps("walking-line", LadderKind.Tones).Select(s => s.Style.Name).ShouldBe(["roots", "root-octave", "tone-cell", "tone-cell", "tone-cell", "approaches", "walking-line"]);
        Steps("root-octave", LadderKind.Tones).Select(s => s.Style.Name).ShouldBe(["roots", "root-octave"]);
        Steps("walking-line", LadderKind.Tones)[2].Title.ShouldBe("Walking line, step 3 of 7: with the fifth");
    }

    [Fact]
    public void Tempo_rises_to_that_of_the_lesson() =>
        Steps("arpeggio", LadderKind.Tempo).Select(s => s.Tempo!.BeatsPerMinute).ShouldBe([54, 68, 80, 90]);

    [Fact]
    public void Rhythm_goes_from_long_notes_to_short_ones() =>
        Steps("roots", LadderKind.Rhythm).Select(s => s.Rhythm!.Cells[0].Duration).ShouldBe([4, 1, new(1, 2), new(1, 3), new(1, 4)]);

    [Fact]
    public void Positions_are_two() => Steps("arpeggio", LadderKind.Positions).Select(s => s.Neck.Position).ShouldBe([2, 7]);

    [Theory]
    [InlineData(4, 4)]
    [InlineData(3, 4)]
    [InlineData(5, 4)]
    [InlineData(2, 2)]
    [InlineData(6, 8)]
    [InlineData(12, 8)]
    [InlineData(7, 8)]
    public void Every_step_of_every_ladder_fills_its_bars(int beats, int unit)
    {
        var lesson = LessonMaker.Lesson("Cm7 | Fm7 Bb7 | G7 | Cm7", meter: new Meter(beats, unit));
        foreach (var kind in Enum.GetValues<LadderKind>())
        {
            foreach (var step in Ladder.Expand(LessonMaker.Request("arpeggio") with { Ladder = kind }, lesson))
            {
                if (step.Rhythm is { } rhythm)
                {
                    rhythm.Cells[0].Start.ShouldBe(Fraction.Zero);
                    for (var i = 1; i < rhythm.Cells.Length; i++) rhythm.Cells[i].Start.ShouldBe(rhythm.Cells[i - 1].End);
                    rhythm.Cells[^1].End.ShouldBe(rhythm.Length);
                }
                var (line, diagnostics) = LessonMaker.Generate(lesson, step);
                diagnostics.Items.ShouldBeEmpty(step.Title);
                line.Notes.ShouldNotBeEmpty(step.Title);
                ScoreBuilder.Build(Header(lesson, step), lesson.Progression.Measures, LineFingering.Apply(line, lesson.Instrument, step.Neck, lesson.Level, []).Line).Measures.Length.ShouldBe(4);
            }
        }
    }

    [Fact]
    public void Choruses_differ()
    {
        var choruses = Ladder.Expand(LessonMaker.Request("walking-line", ("choruses", 3)), LessonMaker.Lesson("Cm7 | Fm7 | G7 | Cm7", level: 4));
        choruses.Select(c => c.Title).ShouldBe(["Walking line, chorus 1", "Walking line, chorus 2", "Walking line, chorus 3"]);
        var lesson = LessonMaker.Lesson("Cm7 | Fm7 | Bb7 | Ebmaj7 | Abmaj7 | Dm7b5 | G7 | Cm7", level: 4);
        choruses.Select(c => LessonMaker.Pitches(lesson, LessonMaker.Generate(lesson, c).Line)).Distinct().Count().ShouldBe(3);
    }

    private static ImmutableArray<ExerciseRequest> Steps(string style, LadderKind kind) => Ladder.Expand(LessonMaker.Request(style) with { Ladder = kind }, Lesson);

    private static ScoreHeader Header(Lesson lesson, ExerciseRequest step) => new() { Id = "step", Title = step.Title!, Instrument = lesson.Instrument, Tempo = lesson.Tempo };
}
