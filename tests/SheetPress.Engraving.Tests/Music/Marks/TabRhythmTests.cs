using SheetPress.Scores;

namespace SheetPress.Engraving.Tests;

/// <summary>The rhythm of a tab that stands alone: common practice.</summary>
public class TabRhythmTests
{
    [Fact]
    public void One_voice_has_its_stems_below()
    {
        var system = Drawn.System(ScoreText.Parse("E2:1 F2:1 G2:2", layout: StaffLayout.Tab));
        system.Of(MarkRole.Stem).Count.ShouldBe(3);
        system.Of(MarkRole.Stem).ShouldAllBe(s => s.Bounds.Top > system.StaffBottom);
    }

    [Fact]
    public void Of_two_voices_each_has_its_rhythm_on_its_side()
    {
        var system = Drawn.System(ScoreText.Parse("D3:1/2 E3:1/2 D3:1/3 E3:1/3 F3:1/3 r:1 E3:1", layout: StaffLayout.Tab, lower: "E1:3/2 F1:1/2 r:1 G1:1", header: h => h with { ShowFingers = true }));
        Above(0, MarkRole.Stem).ShouldBe(6);
        Above(0, MarkRole.Beam).ShouldBe(2);
        Above(0, MarkRole.Rest).ShouldBe(1);
        Above(0, MarkRole.Tuplet).ShouldBeGreaterThan(0);
        Below(1, MarkRole.Stem).ShouldBe(3);
        Below(1, MarkRole.Flag).ShouldBe(1);
        Below(1, MarkRole.Rest).ShouldBe(1);
        Above(1, MarkRole.Stem).ShouldBe(0);
        Below(0, MarkRole.Stem).ShouldBe(0);

        int Above(int voice, MarkRole role) => system.Of(role).Count(m => m.Origin.Voice == voice && m.Bounds.Bottom < system.StaffTop);
        int Below(int voice, MarkRole role) => system.Of(role).Count(m => m.Origin.Voice == voice && m.Bounds.Top > system.StaffBottom);
    }

    // Between two degrees a number would be read as one of them.
    [Fact]
    public void The_number_of_a_tuplet_stands_clear_above_the_row_of_degrees()
    {
        var system = Drawn.System(ScoreText.Parse("E2%R:1/2 F2%b2:1/2 G2%b3:2/3 A2%4:1/3 G2%b3:1/2 F2%b2:1/2 E2%R:1", layout: StaffLayout.Tab, header: h => h with { ShowDegrees = true }));
        var number = system.Of(MarkRole.Tuplet).Where(m => m is not LineMark).ShouldHaveSingleItem();
        var row = system.Of(MarkRole.DegreeName);
        row.Count.ShouldBeGreaterThan(6);
        row.ShouldAllBe(m => m.Bounds.Top > number.Bounds.Bottom + 0.3);
    }

    // A whole note has no stem for its dot to stand beside.
    [Fact]
    public void The_dot_of_a_whole_note_stands_beside_its_number()
    {
        var system = Drawn.System(ScoreText.Parse("A2:6", meter: "6/4", layout: StaffLayout.Tab));
        var number = system.Of(MarkRole.FretNumber).ShouldHaveSingleItem().Bounds;
        var dot = system.Of(MarkRole.Dot).ShouldHaveSingleItem().Bounds;
        (dot.Left - number.Right).ShouldBeInRange(0.15, 0.6);
        dot.Top.ShouldBeGreaterThan(number.Top - 0.3);
        dot.Bottom.ShouldBeLessThan((number.Top + number.Bottom) / 2);
    }

    // A half note has a short stem: its dot stands beside it.
    [Theory]
    [InlineData("D2:3 E2:1")]
    [InlineData("D2:3/2 E2:5/2")]
    public void Dots_stand_beside_their_stems(string text)
    {
        var system = Drawn.System(ScoreText.Parse(text, layout: StaffLayout.Tab, lower: "E1:3 F1:1"));
        var dots = system.Of(MarkRole.Dot);
        dots.Count.ShouldBe(2);
        foreach (var dot in dots)
        {
            var stem = system.Of(MarkRole.Stem, dot.Origin.Event, dot.Origin.Voice).Single().Bounds;
            dot.Bounds.Top.ShouldBeGreaterThanOrEqualTo(stem.Top);
            dot.Bounds.Bottom.ShouldBeLessThanOrEqualTo(stem.Bottom);
        }
    }

    // Fingers stand on the side of their voice, outside its stems.
    [Fact]
    public void Fingers_of_two_voices_stand_outside_their_stems()
    {
        var system = Drawn.System(ScoreText.Parse("D3:1!f1 E3:1!f3 D3:2!f1", layout: StaffLayout.Tab, lower: "F1:2!f1 G1:2!f3", header: h => h with { ShowFingers = true }));
        system.Of(MarkRole.Finger).ShouldAllBe(f => f.Origin.Voice == 0 ? f.Bounds.Bottom < system.StaffTop - 3 : f.Bounds.Top > system.StaffBottom + 3);
        system.Of(MarkRole.Finger).Count.ShouldBe(5);
    }

    // The arrow of a bend goes up through the other voice: what crosses it interrupts it.
    [Theory]
    [InlineData("G#3:1!sl A3:1 G#3:2")]
    [InlineData("G#3:1/2 A3:5/2 G#3:1")]
    public void The_arrow_of_a_bend_is_broken_where_the_other_voice_crosses(string upper)
    {
        var score = ScoreText.Parse(upper, "guitar-6", layout: StaffLayout.Tab, lower: "F2:1!b1 G2:1!b2 F2:2!b1");
        SystemLint.Check(Drawn.System(score), 1.75).ShouldBeEmpty();
        Drawn.System(score).Of(MarkRole.Technique).Count(m => m is CurveMark).ShouldBeGreaterThan(3, "three arrows, one of them in two parts");
    }

    // Between numbers of the other voice on the strings on both sides of its own.
    [Fact]
    public void A_tie_passes_between_the_numbers_of_neighbouring_strings()
    {
        const string upper = "E3:1/2 F3:1/4 G#2:1/4 F3:1/4 G2:1/4 F#3:1/2 G#2:1/2 F3:1/2 G2:1/2 E3:1/2 ";
        var score = ScoreText.Parse(upper + upper, "guitar-6", layout: StaffLayout.Tab, lower: "C3:5/2 r:3/2 r:1/2 C3:7/2");
        for (var width = 36; width <= 76; width += 4)
        {
            var systems = ScoreEngraver.Engrave(score, width, new EngravingOptions()).Systems;
            systems.SelectMany(s => s.Of(MarkRole.Tie)).ShouldNotBeEmpty();
            systems.SelectMany(s => SystemLint.Check(s, 1.75)).Where(f => f.Rule == LintRule.Ink).ShouldBeEmpty($"at {width}");
        }
    }

    // A tied note has a stem but no number: the arc says that the number before it sounds on.
    [Fact]
    public void A_tie_leads_from_the_number_to_the_stem_of_the_tied_note()
    {
        var system = Drawn.System(ScoreText.Parse("E2:1 F2:3/2 G2:3/2 r:1 D3:5 r:2", layout: StaffLayout.Tab));
        var ties = system.Of(MarkRole.Tie).Cast<CurveMark>().ToList();
        var stems = system.Of(MarkRole.Stem);
        var numbers = system.Of(MarkRole.FretNumber);
        numbers.Count.ShouldBe(4);
        ties.Count.ShouldBeGreaterThanOrEqualTo(2);
        foreach (var tie in ties)
        {
            numbers.ShouldContain(n => n.Bounds.Right < tie.Start.X && tie.Start.X < n.Bounds.Right + 0.5 || stems.Any(s => Math.Abs(s.Bounds.Left - tie.Start.X) < 0.2));
            stems.ShouldContain(s => s.Bounds.Left < tie.End.X && tie.End.X < s.Bounds.Right);
        }
        SystemLint.Check(system, 1.75).ShouldBeEmpty();
    }

    // A half and a whole note of one pitch have heads side by side, but the string is stopped once: "3" and not "33".
    [Theory]
    [InlineData(StaffLayout.Tab)]
    [InlineData(StaffLayout.StaffAndTab)]
    public void Both_voices_on_one_string_show_one_number(StaffLayout layout)
    {
        var system = Drawn.System(ScoreText.Parse("C2:2 E2:2", layout: layout, lower: "C2:4"));
        system.Of(MarkRole.FretNumber).Count.ShouldBe(2);
    }

    // A slide needs a number to start at: that of a tied note is shown in brackets.
    [Theory]
    [InlineData(StaffLayout.Tab)]
    [InlineData(StaffLayout.StaffAndTab)]
    public void A_slide_out_of_a_tied_note_starts_at_its_number(StaffLayout layout)
    {
        var system = Drawn.System(ScoreText.Parse("r:2 F1:3!sl A1:3", layout: layout));
        var numbers = system.Of(MarkRole.FretNumber).Cast<TextMark>().Select(n => n.Run.Text).ToList();
        numbers.ShouldContain(n => n.StartsWith('('));
        numbers.Count(n => n.StartsWith('(')).ShouldBe(1);
        SystemLint.Check(system, 1.75).ShouldBeEmpty();
    }

    // Whole notes have no stems below: nothing keeps the rows from the tab.
    [Fact]
    public void Rows_under_whole_notes_stand_close_to_the_tab()
    {
        var system = Drawn.System(ScoreText.Parse("E2%3:4 F2%b7:4", layout: StaffLayout.Tab, header: h => h with { ShowDegrees = true }));
        system.Of(MarkRole.DegreeName).ShouldAllBe(d => d.Bounds.Top < system.StaffBottom + 1.5);
        system.Of(MarkRole.DegreeName).Count.ShouldBeGreaterThan(1);
    }

    // The rest of a whole measure stands with the other rests, so far below that its own line is not taken for a string.
    [Fact]
    public void Whole_bar_rests_stand_where_the_other_rests_stand()
    {
        var system = Drawn.System(ScoreText.Parse("E2:1 r:1 F2:2 r:4", layout: StaffLayout.Tab));
        var rests = system.Of(MarkRole.Rest);
        rests.Count.ShouldBe(2);
        rests[0].Bounds.Top.ShouldBeGreaterThan(system.StaffBottom);
        rests[1].Bounds.Top.ShouldBeInRange(system.StaffBottom + 1, rests[0].Bounds.Bottom);
    }

    // A letter between two syllables would be read with them.
    [Fact]
    public void What_belongs_to_the_tab_keeps_out_of_the_rows_over_it()
    {
        var system = Drawn.System(ScoreText.Parse("D2:1!=1!ho E2:1!=2 A2:1!b1!=3 D2:1!=4", header: h => h with { ShowCounts = true }));
        var row = system.Of(MarkRole.Count).Max(m => m.Bounds.Bottom);
        var letters = system.Of(MarkRole.Technique).Where(m => m.Origin.Staff == 1 && m.Bounds.Bottom > row - 2).ToList();
        letters.ShouldNotBeEmpty();
        letters.ShouldAllBe(m => m.Bounds.Top > row);
    }

    // Beside the lines a rest would be read as something of the strings: rests stand where the stems stand.
    [Theory]
    [InlineData("E2:1/2 r:1/2 F2:1/4 r:1/4 F2:1/2 r:1 r:1", 1)]
    [InlineData("r:2 E2:1 r:1", 0)]
    [InlineData("r:1/8 E2:7/8 r:3", 0)]
    [InlineData("E2:1/4 r:1/4 F2:1/4 F2:1/4 E2:3", 1)]
    [InlineData("E2:1/8 r:1/8 F2:1/8 F2:1/8 E2:7/2", 1)]
    public void Rests_stand_where_the_stems_stand(string text, int underBeams)
    {
        var system = Drawn.System(ScoreText.Parse(text, layout: StaffLayout.Tab));
        var stems = Box.Around(system.Of(MarkRole.Stem).Select(m => m.Bounds));
        var rests = system.Of(MarkRole.Rest);
        rests.ShouldNotBeEmpty();
        rests.ShouldAllBe(r => r.Bounds.Top > system.StaffBottom + 1);
        rests.ShouldAllBe(r => r.Bounds.Bottom < stems.Bottom + 0.3);
        rests.ShouldAllBe(r => Math.Abs((stems.Top + stems.Bottom - r.Bounds.Top - r.Bounds.Bottom) / 2) < 1.2);
        var beams = system.Of(MarkRole.Beam);
        rests.Count(r => beams.Any(b => b.Bounds.Left < r.Bounds.Left && r.Bounds.Right < b.Bounds.Right)).ShouldBe(underBeams);
        beams.ShouldAllBe(b => rests.TrueForAll(r => r.Bounds.Left > b.Bounds.Right || r.Bounds.Right < b.Bounds.Left || b.Bounds.Top - r.Bounds.Bottom > 0.25));
        SystemLint.Check(system, 1.75).ShouldBeEmpty();
    }

    // One group with shorter stems than the next looks like a mistake.
    [Fact]
    public void Stems_of_a_side_end_level_where_a_rest_needs_longer_ones()
    {
        var system = Drawn.System(ScoreText.Parse("E2:1/4 r:1/4 F2:1/4 F2:1/4 E2:1/2 F2:1/2 G2:1 A2:1", layout: StaffLayout.Tab));
        system.Of(MarkRole.Stem).Select(m => m.Bounds.Bottom).Distinct().Count().ShouldBe(1);
        system.Of(MarkRole.Beam).Max(m => m.Bounds.Bottom).ShouldBe(system.Of(MarkRole.Stem)[0].Bounds.Bottom, 0.05);
    }

    // No line of a tab parts the numbers of a meter, which are as high as two spaces of a staff each: white does.
    [Theory]
    [InlineData("bass-4", "5/4", "E2:5")]
    [InlineData("bass-4", "12/8", "E2:6")]
    [InlineData("bass-5", "7/8", "E2:7/2")]
    [InlineData("guitar-6", "5/4", "E3:5")]
    public void Numbers_of_a_meter_on_a_tab_do_not_run_together(string instrument, string meter, string text)
    {
        var system = Drawn.System(ScoreText.Parse(text, instrument, meter: meter, layout: StaffLayout.Tab));
        var figures = system.Of(MarkRole.Meter);
        var middle = (system.StaffTop + system.StaffBottom) / 2;
        var (upper, lower) = (figures.Where(m => m.Bounds.Top < middle - 0.5).ToList(), figures.Where(m => m.Bounds.Bottom > middle + 0.5).ToList());
        (upper.Count + lower.Count).ShouldBe(figures.Count);
        (lower.Min(m => m.Bounds.Top) - upper.Max(m => m.Bounds.Bottom)).ShouldBeGreaterThan(0.2);
        upper.Min(m => m.Bounds.Top).ShouldBeGreaterThan(system.StaffTop + 0.1);
        lower.Max(m => m.Bounds.Bottom).ShouldBeLessThan(system.StaffBottom - 0.1);
    }

    // Narrow lines, so that the numbers are as near to each other as they may be.
    [Fact]
    public void A_tie_ends_clear_of_the_number_after_it()
    {
        var score = ScoreText.Parse(string.Concat(Enumerable.Repeat("C2:5/8 C#2:1/8!gh D2:1/4 ", 4)), layout: StaffLayout.Tab);
        for (var width = 37; width <= 50; width++)
        {
            foreach (var system in ScoreEngraver.Engrave(score, width, new EngravingOptions()).Systems)
            {
                var ghosts = system.Of(MarkRole.FretNumber).Where(m => m is TextMark { Run.Text: "(4)" }).Select(m => m.Bounds.Left).ToList();
                foreach (var tie in system.Of(MarkRole.Tie)) (ghosts.Where(g => g > tie.Bounds.Left).Min() - tie.Bounds.Right).ShouldBeGreaterThan(0.2, $"at {width}");
            }
        }
    }

    // The arrow of a lower note ends beyond the tie over it, not on it.
    [Fact]
    public void The_arrow_of_a_bend_ends_clear_of_a_tie_of_the_other_voice()
    {
        var score = ScoreText.Parse("G2:7/4 A2:1/4 G2:1", layout: StaffLayout.Tab, meter: "6/8", lower: "C2:1 F#1:1/2!b1 G1:1/2 A1:1/2 G1:1/2!b1");
        for (var width = 24; width <= 60; width++)
        {
            foreach (var system in ScoreEngraver.Engrave(score, width, new EngravingOptions()).Systems) SystemLint.Check(system, 1.75).Where(f => f.Rule == LintRule.Ink).ShouldBeEmpty($"{width}");
        }
    }
}
