using SheetPress.Scores;

namespace SheetPress.Engraving.Tests;

/// <summary>Position dots as instruments have them: common practice, no source.</summary>
public class InlaysTests
{
    [Fact]
    public void Bass_and_guitar_have_dots_at_3_5_7_9_and_two_at_12()
    {
        var singles = Enumerable.Range(0, 25).Where(f => Inlays.Count(InstrumentFamily.Bass, f) == 1);
        singles.ShouldBe([3, 5, 7, 9, 15, 17, 19, 21]);
        Enumerable.Range(0, 25).Where(f => Inlays.Count(InstrumentFamily.Guitar, f) == 2).ShouldBe([12, 24]);
    }

    [Fact]
    public void Small_instruments_have_the_tenth_instead_of_the_ninth()
    {
        foreach (var family in (InstrumentFamily[])[InstrumentFamily.Ukulele, InstrumentFamily.Mandolin, InstrumentFamily.Banjo])
        {
            Inlays.Count(family, 9).ShouldBe(0);
            Inlays.Count(family, 10).ShouldBe(1);
        }
    }
}
