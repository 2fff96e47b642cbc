using SheetPress.Scores;

namespace SheetPress.Engraving.Tests.Music.Marks;

/// <summary>Dynamics and hairpins on their line: never on top of each other, never beyond the staff.</summary>
public class DynamicsRowTests
{
    // Louder and softer on neighbouring sixteenths, hairpins between and at the very end.
    private static FrameMeasure With(int measure, FrameMeasure frame) => frame with
    {
        Directions =
        [
            new Direction(Fraction.Zero, DirectionKind.Dynamic, "fff"),
            new Direction(new Fraction(1, 4), DirectionKind.Dynamic, "pp"),
            new Direction(new Fraction(1, 2), DirectionKind.CrescendoStart),
            new Direction(new Fraction(3, 4), DirectionKind.HairpinStop),
            new Direction(new Fraction(3, 4), DirectionKind.Dynamic, "ff"),
            new Direction(new Fraction(15, 4), measure % 2 == 0 ? DirectionKind.DiminuendoStart : DirectionKind.CrescendoStart),
            new Direction(new Fraction(4), DirectionKind.HairpinStop),
        ],
    };

    [Theory]
    [InlineData(StaffLayout.Staff)]
    [InlineData(StaffLayout.StaffAndTab)]
    [InlineData(StaffLayout.Tab)]
    [InlineData(StaffLayout.ChordChart)]
    public void They_keep_clear_of_each_other_and_inside_the_line(StaffLayout layout)
    {
        var score = ScoreText.Parse(string.Concat(Enumerable.Repeat("E2:1/4 G2:1/4 A2:1/4 E2:1/4 E2:2 G2:1/4 A2:1/4 B2:1/4 E2:1/4 ", 4)), layout: layout, frame: With);
        for (var width = 60; width <= 110; width += 10)
        {
            var findings = ScoreEngraver.Engrave(score, width, new EngravingOptions()).Systems.SelectMany(s => SystemLint.Check(s, 1.75));
            findings.Where(f => f.Rule is LintRule.Ink or LintRule.Margin).ShouldBeEmpty($"at {width}");
        }
    }

    // A hairpin that starts between the last slash of a bar and its barline stands there alone: the slash keeps its distance all the same.
    [Fact]
    public void A_note_keeps_its_distance_from_the_barline_past_a_dynamic()
    {
        var score = ScoreText.Parse(string.Concat(Enumerable.Repeat("E2:5/2 ", 8)), meter: "5/8", layout: StaffLayout.ChordChart,
            frame: (i, m) => m with { Directions = [new Direction(new Fraction(3, 2), DirectionKind.Dynamic, "ppp"), new Direction(new Fraction(21, 10), DirectionKind.CrescendoStart), new Direction(new Fraction(5, 2), DirectionKind.HairpinStop)] });
        for (var width = 50; width <= 100; width += 2)
        {
            ScoreEngraver.Engrave(score, width, new EngravingOptions()).Systems.SelectMany(s => SystemLint.Check(s, 1.75)).Where(f => f.Rule == LintRule.Ink).ShouldBeEmpty($"at {width}");
        }
    }

    // Common practice, from memory: the dynamics of an upper voice stand above the staff, those of a lower voice below it.
    [Theory]
    [InlineData(StaffLayout.Staff)]
    [InlineData(StaffLayout.StaffAndTab)]
    [InlineData(StaffLayout.Tab)]
    public void Voices_with_their_own_dynamics_have_them_on_their_side(StaffLayout layout)
    {
        var system = Drawn.System(ScoreText.Parse("E4:2!*mf!< G4:1 E4:1!*f", "guitar-6", layout: layout, lower: "C3:1!*p G3:1 C3:2!>"));
        Sides(system).ShouldBe((4, 3));
        SystemLint.Check(system, 1.75).ShouldBeEmpty();
    }

    [Theory]
    [InlineData("E4:2!*mf!< G4:2", "C3:2 C3:2", 3)]
    [InlineData("E4:2!*mf!< G4:2", "C3:2!*mf!< C3:2", 3)]
    [InlineData("E4:2 G4:2", "C3:1 C3:1!*ff C3:2!>", 3)]
    public void What_one_voice_has_alone_or_both_have_stands_once_below(string upper, string lower, int count) =>
        Sides(Drawn.System(ScoreText.Parse(upper, "guitar-6", layout: StaffLayout.Staff, lower: lower))).ShouldBe((0, count));

    // A hairpin that goes on in the next system stays on the side of its voice.
    [Fact]
    public void Hairpins_of_both_voices_go_on_over_a_line_break()
    {
        var bars = string.Concat(Enumerable.Repeat("E4:1/2 F4:1/2 G4:1/2 F4:1/2 E4:1/2 F4:1/2 G4:1/2 F4:1/2 ", 3));
        var systems = ScoreEngraver.Engrave(ScoreText.Parse($"E4:4!< {bars}", "guitar-6", layout: StaffLayout.Staff, lower: "C3:4!> C3:4 C3:4 C3:4"), 40, new EngravingOptions()).Systems;
        systems.Length.ShouldBeGreaterThan(1);
        foreach (var system in systems) Sides(system).ShouldBe((2, 2));
    }

    private static (int Above, int Below) Sides(EngravedSystem system)
    {
        var marks = system.Of(MarkRole.Dynamic);
        var staffBottom = system.Of(MarkRole.StaffLine).Select(m => m.Bounds.Bottom).DefaultIfEmpty(system.StaffBottom).Max();
        marks.ShouldAllBe(m => m.Bounds.Bottom < system.StaffTop || m.Bounds.Top > staffBottom);
        return (marks.Count(m => m.Bounds.Bottom < system.StaffTop), marks.Count(m => m.Bounds.Top > staffBottom));
    }

    [Fact]
    public void A_hairpin_can_be_seen()
    {
        var score = ScoreText.Parse(string.Concat(Enumerable.Repeat("E2:1/4 ", 32)), layout: StaffLayout.Staff, frame: With);
        foreach (var system in ScoreEngraver.Engrave(score, 80, new EngravingOptions()).Systems)
        {
            foreach (var line in system.Drawing.Marks.OfType<LineMark>().Where(m => m.Role == MarkRole.Dynamic)) line.Bounds.Width.ShouldBeGreaterThan(1.5);
        }
    }
}
