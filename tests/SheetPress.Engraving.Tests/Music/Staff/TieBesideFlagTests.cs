using SheetPress.Scores;

namespace SheetPress.Engraving.Tests.Music.Staff;

/// <summary>Ties and arcs on the side of a flag keep clear of it: handbook practice, from memory.</summary>
public class TieBesideFlagTests
{
    private static void ShouldBeClear(Score score)
    {
        for (var width = 40; width <= 100; width += 5)
        {
            ScoreEngraver.Engrave(score, width, new EngravingOptions()).Systems.SelectMany(s => SystemLint.Check(s, 1.75)).Where(f => f.Rule == LintRule.Ink).ShouldBeEmpty($"at {width}");
        }
    }

    [Theory]
    [InlineData("E4:3/2 E4:1 G4:3/2", "r:3/2 C3:1 E3:3/2")]
    [InlineData("C5:3/2 G4:2 A4:1/2", "A2:3/2 A2:2 E3:1/2")]
    [InlineData("E4:3/2 E4+G4:1 G4:3/2", "r:3/2 C3+G3:1 E3:3/2")]
    [InlineData("A4:1/3 A4:2/3 C5:2 r:1/2 A4:1/2", "E2:1/2 E2:3 E2:1/2")]
    [InlineData("C5:7/2 C5:4 G4:1/2", "A2:7/2 A2:4 E2:1/2")]
    public void A_tie_keeps_clear_of_the_flag_of_its_note(string upper, string lower) =>
        ShouldBeClear(ScoreText.Parse(upper, "guitar-6", layout: StaffLayout.Staff, lower: lower));

    /// <summary>Handbook rule (Gould 2011, from memory): between stems that point opposite ways a tie lies above, and runs through neither.</summary>
    [Fact]
    public void A_tie_between_opposite_stems_lies_above()
    {
        var system = Drawn.Staff("r:1 C2:3/2 A2:1/2 G2:1");
        var stems = system.Of(MarkRole.Stem);
        var heads = system.Of(MarkRole.Notehead);
        stems[0].Bounds.Top.ShouldBeLessThan(heads[0].Bounds.Top - 2);
        stems[1].Bounds.Bottom.ShouldBeGreaterThan(heads[1].Bounds.Bottom + 1);
        var tie = system.Of(MarkRole.Tie).ShouldHaveSingleItem().Bounds;
        tie.Bottom.ShouldBeLessThan((heads[0].Bounds.Top + heads[0].Bounds.Bottom) / 2);
        tie.Left.ShouldBeGreaterThan(stems[0].Bounds.Right);
    }

    /// <summary>Handbook rule (Gould 2011, from memory): a tie runs through no stem. From under a flag it ends left of the stem that points down, over a stem that points up it begins right of it.</summary>
    [Theory]
    [InlineData("r:3/2 C2:1 A2:1/2 G2:1", null)]
    [InlineData("r:7/2 C2:1 A2:1/2 G2:1 r:2", null)]
    [InlineData("r:1/2 E2:1/2 r:1/2 E2:1 A2:1/2 G2:1", "C2:1/2 r:3/2 C2:2")]
    [InlineData("E2:3 A2:3/2 E2:7/2", "C2:5/2 C2:3/2 G1:5/2 C2:3/2")]
    public void A_tie_runs_through_no_stem(string upper, string? lower)
    {
        var system = Drawn.Staff(upper, lower: lower);
        var ties = system.Of(MarkRole.Tie).Cast<CurveMark>().ToList();
        ties.ShouldNotBeEmpty();
        foreach (var tie in ties)
        {
            (tie.End.X - tie.Start.X).ShouldBeGreaterThan(0.6);
            var notes = system.Of(MarkRole.Stem).Where(s => s.Origin.Voice == tie.Origin.Voice);
            notes.Where(s => s.Bounds.Left > tie.Start.X && s.Bounds.Right < tie.End.X && s.Bounds.Top < tie.Bounds.Bottom && s.Bounds.Bottom > tie.Bounds.Top).ShouldBeEmpty();
        }
        SystemLint.Check(system, 1.75).ShouldBeEmpty();
    }

    /// <summary>Common practice: a tie touches no dot of its note; between a stem and a dot in the space above there is no room for its end.</summary>
    [Theory]
    [InlineData("C2:1/2 B1:2 A2:1/2 G2:1/2 G2:1/2")]
    [InlineData("C2:1/2 C2:2 A2:1/2 G2:1/2 G2:1/2")]
    [InlineData("E3:1/2 F3:2 C3:1/2 G2:1/2 G2:1/2")]
    public void A_tie_keeps_clear_of_the_dot_of_its_note(string text)
    {
        var system = Drawn.Staff(text);
        var (tie, dot) = ((CurveMark)system.Of(MarkRole.Tie).Single(), system.Of(MarkRole.Dot)[0].Bounds);
        for (var t = 0.0; t <= 1; t += 0.02)
        {
            var point = tie.At(t);
            var (dx, dy) = (Math.Max(0, Math.Max(dot.Left - point.X, point.X - dot.Right)), Math.Max(0, Math.Max(dot.Top - point.Y, point.Y - dot.Bottom)));
            Math.Sqrt((dx * dx) + (dy * dy)).ShouldBeGreaterThan(0.15);
        }
    }

    [Fact]
    public void It_begins_to_the_right_of_the_flag()
    {
        var system = Drawn.Staff("C5:3/2 G4:2 A4:1/2", "guitar-6", lower: "A2:3/2 A2:2 E3:1/2");
        foreach (var voice in (int[])[0, 1])
        {
            var (tie, flag) = ((CurveMark)system.Of(MarkRole.Tie, 1, voice).Single(), system.Of(MarkRole.Flag, 1, voice).Single().Bounds);
            tie.Start.X.ShouldBeGreaterThan(flag.Left + 0.5);
            (tie.End.X - tie.Start.X).ShouldBeGreaterThan(0.6);
        }
    }

    [Theory]
    [InlineData("E4:3/2 G4:1/2!po E4:2", "C3:3/2 G2:1/2!po E2:2")]
    [InlineData("C5:3/2 F4:1/2!po E4:2", "A2:3/2 F2:1/2!ho G2:2")]
    [InlineData("C5:7/4 F4:1/4!po E4:2", "A2:3/2 F2:1/2!ho G2:2")]
    public void Arcs_beside_a_tab_alone_keep_clear_of_flags(string upper, string lower)
    {
        var score = ScoreText.Parse(upper, "guitar-6", layout: StaffLayout.Tab, lower: lower);
        ShouldBeClear(score);
        var system = Drawn.System(score);
        system.Of(MarkRole.Slur).Count.ShouldBe(2);
        system.Of(MarkRole.Flag).Count.ShouldBe(2);
    }
}
