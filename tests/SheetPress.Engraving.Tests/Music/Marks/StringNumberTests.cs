using SheetPress.Scores;

namespace SheetPress.Engraving.Tests.Music.Marks;

/// <summary>Numbers of strings in circles: common practice in fretted music on a staff, from memory.</summary>
public class StringNumberTests
{
    private static EngravedSystem System(string text, string? lower = null, StaffLayout layout = StaffLayout.Staff, bool fingers = false) =>
        Drawn.System(ScoreText.Parse(text, layout: layout, lower: lower, header: h => h with { ShowStrings = true, ShowFingers = fingers }));

    private static string Strings(EngravedSystem system, int voice) =>
        string.Join(' ', system.Glyphs(MarkRole.Finger).Where(g => g.Origin.Voice == voice).Select(g => g.Glyph.Name).Where(n => n.StartsWith("guitarString", StringComparison.Ordinal)).Select(n => n["guitarString".Length..]));

    // E1 to G1 lie on the fourth string of the bass, A1 on the third, D2 on the second.
    [Fact]
    public void The_number_stands_at_the_first_note_and_where_the_string_changes()
    {
        Strings(System("E1:1 F1:1 A1:1 r:1 A1:1 G1:1 D2:1 D2:1"), 0).ShouldBe("4 3 4 2");
        Strings(System("E1+D2:2 E1+D2:2 F1+D2:2 E1:2"), 0).ShouldBe("4 2 4");
        Strings(System("D3:4", lower: "E1:1 A1:1 A1:1 E1:1"), 1).ShouldBe("4 3 4");
        Strings(System("E1:1 A1:1 D2:1 G2:1", layout: StaffLayout.StaffAndTab), 0).ShouldBeEmpty();
    }

    [Fact]
    public void It_stands_outside_the_finger_on_the_side_of_its_voice()
    {
        var system = System("G2:1!f1 A2:1!f3 D2:1!f0 G2:1!f1 ", lower: "E1:1!f0 A1:1!f0 E1:2!f0", fingers: true);
        foreach (var circle in system.Glyphs(MarkRole.Finger).Where(g => g.Glyph.Name.StartsWith("guitarString", StringComparison.Ordinal)))
        {
            var finger = system.Glyphs(MarkRole.Finger).Single(g => g.Origin == circle.Origin && g != circle).Bounds;
            if (circle.Origin.Voice == 0) circle.Bounds.Bottom.ShouldBeLessThan(finger.Top);
            else circle.Bounds.Top.ShouldBeGreaterThan(finger.Bottom);
        }
        SystemLint.Check(system, 1.75).ShouldBeEmpty();
    }

    // On every sixteenth another string: the notes make room for the circles, which stay at one height over notes of one height.
    [Fact]
    public void Circles_side_by_side_have_room()
    {
        var systems = ScoreEngraver.Engrave(ScoreText.Parse(string.Concat(Enumerable.Repeat("A1:1/4 D2:1/4 A1:1/4 D2:1/4 ", 16)), layout: StaffLayout.Staff, header: h => h with { ShowStrings = true }), 60, new EngravingOptions()).Systems;
        systems.SelectMany(s => SystemLint.Check(s, 1.75)).ShouldBeEmpty();
        var circles = systems.SelectMany(s => s.Glyphs(MarkRole.Finger)).ToList();
        circles.Count.ShouldBe(64);
        circles.Select(c => Math.Round(c.Position.Y, 3)).Distinct().Count().ShouldBe(1);
    }
}
