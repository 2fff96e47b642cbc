using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Engraving.Tests.Music.Staff;

/// <summary>Ties over a barline with a new meter or key behind it, after handbook practice (from memory).</summary>
public class TieAtSignsTests
{
    private static EngravedSystem Over(string note, Func<int, FrameMeasure, FrameMeasure> change) =>
        Drawn.System(ScoreText.Parse($"r:3 {note}:3 r:1", "guitar-6", layout: StaffLayout.Staff, frame: change));

    private static FrameMeasure ThreeQuarters(int index, FrameMeasure measure) =>
        index == 0 ? measure : measure with { Meter = new Meter(3, 4), Length = new Meter(3, 4).MeasureLength };

    private static FrameMeasure FiveFlats(int index, FrameMeasure measure) => index == 0 ? measure : measure with { Key = Key.Parse("Db major") };

    [Theory]
    [InlineData("E3")]
    [InlineData("A3")]
    [InlineData("C4")]
    [InlineData("E4")]
    [InlineData("G4")]
    [InlineData("B4")]
    [InlineData("F3+A3+C4")]
    public void A_tie_keeps_clear_of_a_meter_or_key(string note)
    {
        foreach (var system in (EngravedSystem[])[Over(note, ThreeQuarters), Over(note, FiveFlats)])
        {
            SystemLint.Check(system, 1.75).Where(f => f.Rule == LintRule.Ink).ShouldBeEmpty(note);
            system.Of(MarkRole.Tie).Count.ShouldBeGreaterThanOrEqualTo(note.Split('+').Length);
        }
    }

    [Fact]
    public void A_tie_that_cannot_pass_over_the_key_stops_before_it_and_goes_on_behind()
    {
        var system = Over("C4", FiveFlats);
        var ties = system.Of(MarkRole.Tie);
        var key = system.Of(MarkRole.KeySignature).Aggregate(Box.Empty, (a, m) => a.Union(m.Bounds));
        ties.Count.ShouldBe(2);
        ties[0].Bounds.Right.ShouldBeLessThan(key.Left);
        ties[1].Bounds.Left.ShouldBeGreaterThan(key.Right);
    }

    [Fact]
    public void A_tie_near_the_edge_of_the_meter_passes_over_it_in_one_piece()
    {
        var system = Over("C4", ThreeQuarters);
        system.Of(MarkRole.Tie).Single().Bounds.Top.ShouldBeLessThan(system.Of(MarkRole.Meter).Min(m => m.Bounds.Top));
    }
}
