using SheetPress.Scores;

namespace SheetPress.Engraving.Tests.Music.Marks;

/// <summary>Fingers, fret numbers, numbers of tuplets, tenuto and bends that stand so far apart that none is read with the other: handbook practice, from memory.</summary>
public class ReadApartTests
{
    private const double Clear = 0.75;

    private static EngravedSystem Fingered(string upper, StaffLayout layout, string? lower = null) =>
        Drawn.System(ScoreText.Parse(upper, "guitar-6", layout: layout, lower: lower, header: h => h with { ShowFingers = true }));

    private static double Apart(Mark a, Mark b) => Math.Max(a.Bounds.Top - b.Bounds.Bottom, b.Bounds.Top - a.Bounds.Bottom);

    private static bool IsOver(Mark a, Mark b) => a.Bounds.Left < b.Bounds.Right && b.Bounds.Left < a.Bounds.Right;

    // Articulations stand nearest to the note, fingers outside them: a tenuto close to a finger would underline it.
    [Theory]
    [InlineData(StaffLayout.Staff)]
    [InlineData(StaffLayout.StaffAndTab)]
    [InlineData(StaffLayout.Tab)]
    public void A_tenuto_does_not_underline_a_finger(StaffLayout layout)
    {
        const string upper = "C4:1!te!f2 D4:1!te!f1 E4:1/2!te!f0 F4:1/2!te!st!f1 G4:1!te!f3";
        foreach (var system in (EngravedSystem[])[Fingered(upper, layout), Fingered(upper, layout, "C3:1!te!f2 D3:1!te!f1 E3:1/2!te!f0 F3:1/2!te!st!f1 E3:1!te!f3")])
        {
            var fingers = system.Of(MarkRole.Finger);
            fingers.Count.ShouldBeGreaterThanOrEqualTo(5);
            foreach (var finger in fingers)
            {
                var tenuto = system.Glyphs(MarkRole.Articulation).Single(m => m.Glyph.Name.StartsWith("articTenuto", StringComparison.Ordinal) && m.Origin == finger.Origin);
                Apart(finger, tenuto).ShouldBeGreaterThan(Clear);
                (finger.Bounds.Top < tenuto.Bounds.Top).ShouldBe(finger.Origin.Voice == 0);
            }
        }
    }

    [Fact]
    public void A_tenuto_over_a_tab_is_no_piece_of_its_line()
    {
        var system = Fingered("C4:2!te G4:2!te", StaffLayout.Tab);
        var signs = system.Of(MarkRole.Articulation);
        signs[0].Bounds.Bottom.ShouldBeLessThan(-0.5);
        Apart(signs[1], system.Of(MarkRole.FretNumber)[1]).ShouldBeGreaterThan(0.55);
    }

    [Fact]
    public void A_finger_keeps_off_the_number_of_the_top_string()
    {
        var system = Fingered("C4:1!f1 G4:1!f4 F4:1!f1 A3:1!f2", StaffLayout.Tab);
        var numbers = system.Of(MarkRole.FretNumber);
        foreach (var (finger, number) in system.Of(MarkRole.Finger).Zip(numbers)) Apart(finger, number).ShouldBeGreaterThan(Clear);
    }

    [Theory]
    [InlineData("G3:1/3!f1 A3:1/3!f2 B3:1/3!f4 D3:1/3!f1 F3:1/3!f2 A3:1/3!f4 G3:1/3!f1 F3:1/3!f2 E3:1/3!f0 F3:1", StaffLayout.Staff, null)]
    [InlineData("C4:1/3!f1 E4:1/3!f2 G4:1/3!f4 C4:1/3!f1 D4:2/3!f2 F4:2", StaffLayout.Staff, "C3:1/3!f1 E3:1/3!f2 G3:1/3!f4 C3:1/3!f1 D3:2/3!f2 F3:2")]
    [InlineData("E3:2/3!f1 G3:2/3!f2 A3:2/3!f4 C3:2/3!f1 E3:2/3!f2 F3:2/3!f4", StaffLayout.Staff, null)]
    [InlineData("C4:1/3!f1 E4:1/3!f2 G4:1/3!f4 C4:1/3!f1 D4:2/3!f2 F4:2", StaffLayout.Tab, "C3:1/3!f1 E3:1/3!f2 A2:1/3!f4 C3:1/3!f1 D3:2/3!f2 F3:2")]
    public void The_number_of_a_tuplet_keeps_off_fingers(string upper, StaffLayout layout, string? lower)
    {
        var system = Fingered(upper, layout, lower);
        var pairs = system.Glyphs(MarkRole.Tuplet).SelectMany(n => system.Of(MarkRole.Finger).Where(f => IsOver(n, f) && n.Origin.Voice == f.Origin.Voice).Select(f => Apart(n, f))).ToList();
        pairs.ShouldNotBeEmpty();
        pairs.ShouldAllBe(p => p > 0.6);
    }

    // Two notes make no line that a bracket could follow.
    [Theory]
    [InlineData("E3:1/3 G3:2/3 G3:2/3 F3:1/3 A4:1/3 F4:2/3 C4:1/3 D5:2/3")]
    [InlineData("C4:1/3 D4:2/3 E4:2/3 F4:1/3 C3:1/3 A3:2/3 B3:2/3 D3:1/3")]
    public void A_bracket_of_two_notes_is_level(string notes)
    {
        var lines = Drawn.Staff(notes, "guitar-6").Of(MarkRole.Tuplet).OfType<LineMark>().Where(l => Math.Abs(l.To.X - l.From.X) > 0.3).ToList();
        lines.Count.ShouldBe(8);
        lines.ShouldAllBe(l => l.From.Y == l.To.Y);
    }

    [Fact]
    public void A_bracket_of_three_notes_slants_with_their_line() =>
        Drawn.Staff("D3:2/3 F3:2/3 A3:2/3 C4:2", "guitar-6").Of(MarkRole.Tuplet).OfType<LineMark>().Where(l => Math.Abs(l.To.X - l.From.X) > 0.3).ShouldAllBe(l => l.To.Y < l.From.Y);

    [Fact]
    public void A_bend_begins_at_its_number_with_no_finger_beside_it()
    {
        var system = Fingered("A4:1!f2!b2 D4:1!f1 G4:1/2!f0!b1 F4:1/2!f1 B3:1!b2!f3", StaffLayout.Tab);
        foreach (var bent in (int[])[0, 2, 4])
        {
            var arrow = system.Of(MarkRole.Technique, bent);
            var number = system.Of(MarkRole.FretNumber, bent).Single().Bounds;
            arrow.OfType<CurveMark>().Min(c => c.Bounds.Left).ShouldBeInRange(number.Right, number.Right + 0.4);
            // The finger stands over the arrow and its amount.
            system.Of(MarkRole.Finger, bent).Single().Bounds.Bottom.ShouldBeLessThan(arrow.OfType<TextMark>().Single().Bounds.Top);
        }
    }
}
