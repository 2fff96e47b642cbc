using SheetPress.Scores;

namespace SheetPress.Engraving.Tests;

/// <summary>Accidentals beside the long stems of beamed notes.</summary>
public class BeamedStemTests
{
    [Fact]
    public void An_accidental_keeps_off_the_stem_of_the_low_note_before_it()
    {
        // The stem of the low note runs up to the beam, past the natural of the high one; a narrow line squeezes them together.
        const string bar = "E1:1/4 A2:1/4 E1:1/4 A2:1/4 ";
        var score = ScoreText.Parse(string.Concat(Enumerable.Repeat(bar, 4)), key: "Ab major", layout: StaffLayout.Staff);
        var narrow = 0;
        for (var width = 38; width < 62; width++)
        {
            var system = ScoreEngraver.Engrave(score, width, new EngravingOptions()).Systems[0];
            if (system.StretchRatio < 1) narrow++;
            SystemLint.Check(system, 1.75).Where(f => f.Rule == LintRule.Ink).ShouldBeEmpty();
        }
        narrow.ShouldBeGreaterThan(0);
    }
}
