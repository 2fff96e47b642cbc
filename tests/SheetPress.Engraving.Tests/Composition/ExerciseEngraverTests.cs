using SheetPress.Scores;

namespace SheetPress.Engraving.Tests;

public class ExerciseEngraverTests
{
    [Fact]
    public void A_bar_too_full_for_narrow_paper_gets_a_smaller_staff()
    {
        var style = PageStyle.Handout(PaperSize.A5);
        var (systems, look) = ExerciseEngraver.Engrave(Bar(beats: 8), style, new EngravingOptions());
        look.StaffSpace.ShouldBeLessThan(style.StaffSpace);
        look.StaffSpace.ShouldBeGreaterThanOrEqualTo(1.2);
        systems.ShouldAllBe(s => s.StretchRatio >= 0.85);
        (systems[0].Width * look.StaffSpace).ShouldBeLessThanOrEqualTo(style.TextWidth + 1e-6);
    }

    [Fact]
    public void A_bar_that_fits_keeps_the_staff_of_the_style()
    {
        var style = PageStyle.Handout(PaperSize.A5);
        ExerciseEngraver.Engrave(Bar(beats: 4), style, new EngravingOptions()).Style.ShouldBe(style);
    }

    private static Score Bar(int beats) => ScoreText.Parse(string.Join(' ', Enumerable.Repeat("E2:1/8 F2:1/8 G2:1/8 A2:1/8", 2 * beats)), meter: $"{beats}/4");
}
