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
