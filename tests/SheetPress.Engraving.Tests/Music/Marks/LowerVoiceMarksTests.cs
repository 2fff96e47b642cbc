using SheetPress.Scores;

namespace SheetPress.Engraving.Tests.Music.Marks;

/// <summary>What is written for one of two voices stands on its side: common practice, from memory.</summary>
public class LowerVoiceMarksTests
{
    private const string Upper = "E4:2!ac!i G4:2!te!m";
    private const string Lower = "C3:1!ac!T G3:1!te!dn C3:1!st!P E3:1!ma!up";

    private static EngravedSystem System(StaffLayout layout, string upper = Upper, string lower = Lower) =>
        Drawn.System(ScoreText.Parse(upper, "guitar-6", layout: layout, lower: lower, header: h => h with { ShowFingers = true }));

    [Fact]
    public void Articulations_of_a_tab_alone_stand_outside_the_stems_of_their_voice()
    {
        var system = System(StaffLayout.Tab);
        var signs = system.Of(MarkRole.Articulation);
        signs.Count.ShouldBe(6);
        foreach (var sign in signs)
        {
            var stem = system.Of(MarkRole.Stem, sign.Origin.Event, sign.Origin.Voice).Single().Bounds;
            if (sign.Origin.Voice == 0) sign.Bounds.Bottom.ShouldBeLessThan(stem.Top);
            else sign.Bounds.Top.ShouldBeGreaterThan(stem.Bottom);
        }
        system.Names(MarkRole.Articulation).ShouldContain("articMarcatoBelow");
        SystemLint.Check(system, 1.75).ShouldBeEmpty();
    }

    [Theory]
    [InlineData(StaffLayout.Staff)]
    [InlineData(StaffLayout.Tab)]
    [InlineData(StaffLayout.StaffAndTab)]
    public void Signs_of_the_plucking_hand_stand_on_the_side_of_their_voice(StaffLayout layout)
    {
        var system = System(layout);
        var signs = system.Of(MarkRole.Technique).ToLookup(m => m.Origin.Voice);
        signs[0].Count().ShouldBe(2);
        signs[1].Count().ShouldBe(4);
        // Under a staff with a tab they stand beside the tab.
        var top = layout == StaffLayout.StaffAndTab ? system.Of(MarkRole.TabLine).Min(l => l.Bounds.Top) : system.StaffTop;
        signs[0].ShouldAllBe(m => m.Bounds.Bottom < top);
        signs[1].ShouldAllBe(m => m.Bounds.Top > system.StaffBottom);
        SystemLint.Check(system, 1.75).ShouldBeEmpty();
    }

    [Fact]
    public void A_slur_of_the_lower_voice_lies_under_a_tab_alone()
    {
        var system = System(StaffLayout.Tab, "E4:2!ss G4:2!se", "C3:1!ss G3:1 C3:1 E3:1!se");
        var slurs = system.Of(MarkRole.Slur).ToLookup(m => m.Origin.Voice);
        Only(0).Bounds.Bottom.ShouldBeLessThan(system.StaffTop);
        Only(1).Bounds.Top.ShouldBeGreaterThan(system.StaffBottom);
        Mark Only(int voice) => slurs[voice].ShouldHaveSingleItem();
    }

    // A finger beside the dot would be read as a number with a point.
    [Fact]
    public void A_finger_stands_over_the_staccato_dot_at_the_end_of_a_stem()
    {
        var system = System(StaffLayout.Staff, "E4:1!st!f3 G4:1/2!st!f1 E4:1/2!st!f2 G4:2", "C3:1!st!f3 G3:1!st!f1 C3:2");
        var dots = system.Of(MarkRole.Articulation);
        dots.Count.ShouldBe(5);
        foreach (var dot in dots)
        {
            var finger = system.Of(MarkRole.Finger).Single(m => m.Origin == dot.Origin).Bounds;
            ((finger.Left + finger.Right) / 2).ShouldBe((dot.Bounds.Left + dot.Bounds.Right) / 2, 0.05);
        }
        SystemLint.Check(system, 1.75).ShouldBeEmpty();
    }

    // Notes of both voices that are bent at once have an arrow each, with its amount over it.
    [Theory]
    [InlineData("A3:1!b3 C4:1 E4:2", "C3:1!b2 G3:1 C3:2")]
    [InlineData("A3:1!b1 C4:1 A3:1/2!b2 r:3/2", "C3:1!b1 G3:1 C3:1/2!b4 r:3/2")]
    public void Arrows_of_two_bends_at_once_stand_side_by_side(string upper, string lower)
    {
        var system = System(StaffLayout.StaffAndTab, upper, lower);
        var tips = system.Of(MarkRole.Technique).OfType<PolygonMark>().ToLookup(m => m.Origin.Voice, m => m.Bounds.Left);
        tips[0].ShouldNotBeEmpty();
        tips[0].Zip(tips[1], (a, b) => b - a).ShouldAllBe(d => d > 2);
        SystemLint.Check(system, 1.75).ShouldBeEmpty();
    }

    // Handbook practice, from memory: at the end of a stem a staccato dot alone stands over the stem, other signs over the head.
    [Fact]
    public void At_the_end_of_a_stem_only_a_staccato_dot_stands_over_the_stem()
    {
        var system = System(StaffLayout.Staff);
        foreach (var sign in system.Of(MarkRole.Articulation))
        {
            var at = (sign.Bounds.Left + sign.Bounds.Right) / 2;
            var over = ((GlyphMark)sign).Glyph.Name.StartsWith("articStaccato", StringComparison.Ordinal) ? MarkRole.Stem : MarkRole.Notehead;
            var bounds = system.Of(over, sign.Origin.Event, sign.Origin.Voice).Single().Bounds;
            at.ShouldBe((bounds.Left + bounds.Right) / 2, 0.05);
        }
    }
}
