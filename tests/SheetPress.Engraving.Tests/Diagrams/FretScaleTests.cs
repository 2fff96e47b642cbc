using SheetPress.Scores;

namespace SheetPress.Engraving.Tests;

/// <summary>Fret places against the equal-temperament formula: nut to fret n is L (1 - 2^(-n/12)).</summary>
public class FretScaleTests
{
    [Fact]
    public void From_the_nut_each_fret_lies_where_the_formula_says()
    {
        // Shown from the nut to fret 24 at the scale of a string of 863.6 mm: the 24th fret is at three quarters of it.
        var scale = FretScale.True(1, 24, 863.6 * 0.75);
        for (var n = 0; n <= 24; n++) scale.Wire(n).ShouldBe(863.6 * (1 - Math.Pow(2, -n / 12.0)), 1e-9);
        scale.Wire(12).ShouldBe(431.8, 1e-9);
    }

    [Fact]
    public void In_any_range_neighbouring_spaces_stand_as_the_twelfth_root_of_two()
    {
        var scale = FretScale.True(5, 12, 100);
        scale.Wire(4).ShouldBe(0);
        scale.Wire(12).ShouldBe(100, 1e-9);
        for (var n = 5; n < 12; n++)
        {
            ((scale.Wire(n) - scale.Wire(n - 1)) / (scale.Wire(n + 1) - scale.Wire(n))).ShouldBe(Math.Pow(2, 1 / 12.0), 1e-9);
        }
    }

    [Fact]
    public void It_agrees_with_the_neck_in_millimetres()
    {
        var bass = InstrumentCatalogue.Find("bass-4")!;
        var length = bass.FretDistance(9) - bass.FretDistance(3);
        var scale = FretScale.True(4, 9, length);
        for (var n = 4; n <= 9; n++) scale.Wire(n).ShouldBe(bass.FretDistance(n) - bass.FretDistance(3), 1e-9);
    }

    [Fact]
    public void Even_frets_are_even()
    {
        var scale = FretScale.Even(3, 6, 40);
        scale.Wire(3).ShouldBe(10);
        scale.Wire(6).ShouldBe(40);
        scale.Middle(4).ShouldBe(15);
        scale.Narrowest.ShouldBe(10, 1e-9);
    }
}
