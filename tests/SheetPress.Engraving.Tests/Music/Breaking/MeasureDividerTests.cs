using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Engraving.Tests;

public class MeasureDividerTests
{
    [Fact]
    public void A_measure_is_divided_at_beats_where_no_voice_holds_a_note_beam_or_tuplet()
    {
        Points("E2:1 F2:1 G2:1 A2:1").ShouldBe([1, 2, 3]);
        Points("E2:2 F2:1 A2:1").ShouldBe([2, 3]);
        Points("E2:1/2 F2:1/2 G2:1/2 A2:1/2 E2:2").ShouldBe([2], "the eighths of half a measure share a beam");
        Points("E2:1/3 F2:1/3 G2:1/3 A2:1 E2:2").ShouldBe([1, 2]);
        Points("E3:1 F3:1 G3:1 A3:1", lower: "E2:2 F2:2").ShouldBe([2]);
        Points("E2:4").ShouldBeEmpty();
    }

    [Fact]
    public void The_parts_together_hold_what_the_measure_held()
    {
        var score = ScoreText.Parse("E2:1 F2:1 G2:1 A2:1 | C3:4");
        var measure = score.Measures[0];
        var divided = MeasureDivider.Divide(score, [new Division(0, 3), new Division(0, 1)], breaks: true).Measures;
        divided.Length.ShouldBe(4);
        divided.Take(3).Select(m => m.Length).ShouldBe([1, 2, 1]);
        divided.Take(3).SelectMany(m => m.Voices[0].Events).Select(e => e.Tones[0].Pitch).ShouldBe(measure.Voices[0].Events.Select(e => e.Tones[0].Pitch));
        divided.Take(3).Select(m => m.Voices[0].Events[0].Onset).ShouldAllBe(o => o == Fraction.Zero);
        divided.Take(3).Select(m => m.Number).Distinct().ShouldBe([measure.Number]);
        divided.Take(3).Select(m => m.Barline).ShouldBe([Barline.None, Barline.None, measure.Barline]);
        divided.Take(3).Select(m => m.BreakBefore).ShouldBe([false, true, true]);
        MeasureDivider.Sources(score, [new Division(0, 3), new Division(0, 1)]).ShouldBe([0, 0, 0, 1]);
    }

    // Gould 2011, from memory: a divided measure has no barline where the system ends, and the next system no measure number.
    [Fact]
    public void A_divided_measure_has_no_barline_and_no_number_where_it_is_divided()
    {
        var score = ScoreText.Parse("E2:1 F2:1 G2:1 A2:1", layout: StaffLayout.Staff);
        var systems = ScoreEngraver.Engrave(MeasureDivider.Divide(score, [new Division(0, 2)], breaks: true), 60, new EngravingOptions()).Systems;
        systems.Length.ShouldBe(2);
        systems[0].Of(MarkRole.Barline).ShouldBeEmpty();
        systems[1].Of(MarkRole.MeasureNumber).ShouldBeEmpty();
        systems[1].Of(MarkRole.Barline).ShouldNotBeEmpty();
    }

    private static ImmutableArray<Fraction> Points(string text, string? lower = null) => MeasureDivider.Points(ScoreText.Parse(text, lower: lower).Measures[0]);
}
