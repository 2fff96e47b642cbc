using SheetPress.Scores;

namespace SheetPress.Engraving.Tests;

public class ExerciseEngraverTests
{
    [Fact]
    public void A_bar_too_full_for_narrow_paper_gets_a_smaller_staff()
    {
        var style = PageStyle.Handout(PaperSize.A5);
        var (systems, look) = ExerciseEngraver.Engrave(Bar(beats: 6), style, new EngravingOptions());
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

    [Fact]
    public void A_bar_longer_than_any_line_is_divided_over_two_systems()
    {
        var style = PageStyle.Handout(PaperSize.A5);
        var (systems, look) = ExerciseEngraver.Engrave(Bar(beats: 12), style, new EngravingOptions());
        look.StaffSpace.ShouldBeGreaterThanOrEqualTo(1.2);
        systems.Length.ShouldBeGreaterThan(1);
        systems.ShouldAllBe(s => !s.IsOverfull && s.StretchRatio >= 0.85 && s.StretchRatio <= 1.6);
        systems.ShouldAllBe(s => s.FirstMeasure == 0 && s.LastMeasure == 0, "all belong to the first bar");
        systems.Sum(s => s.Drawing.Marks.Count(m => m.Role == MarkRole.Notehead)).ShouldBe(96);
    }

    [Fact]
    public void A_system_wider_than_its_line_is_found()
    {
        var system = ScoreEngraver.Engrave(Bar(beats: 12), 60, new EngravingOptions()).Systems[0];
        system.IsOverfull.ShouldBeTrue();
        SystemLint.Check(system, 1.75).ShouldContain(f => f.Rule == LintRule.Stretch && f.Message.Contains("needs", StringComparison.Ordinal));
    }

    private static Score Bar(int beats) => ScoreText.Parse(string.Join(' ', Enumerable.Repeat("E2:1/8 F2:1/8 G2:1/8 A2:1/8", 2 * beats)), meter: $"{beats}/4");
}
