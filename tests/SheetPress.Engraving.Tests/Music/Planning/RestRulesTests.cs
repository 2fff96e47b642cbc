using SheetPress.Scores;

namespace SheetPress.Engraving.Tests.Music.Planning;

/// <summary>Rests and dots, after the engraving handbooks (Read 1979, Gould 2011), from memory.</summary>
public class RestRulesTests
{
    /// <summary>Handbook rule, from memory: an empty bar has a whole rest in its middle in every meter, hanging from the fourth line.</summary>
    [Theory]
    [InlineData("4/4", "4")]
    [InlineData("3/4", "3")]
    [InlineData("6/8", "3")]
    [InlineData("2/4", "2")]
    public void An_empty_bar_has_a_whole_rest_in_its_middle(string meter, string length)
    {
        var system = Drawn.Staff($"r:{length} | E2:{length}", meter: meter);
        var rest = system.Glyphs(MarkRole.Rest).Single();
        rest.Glyph.Name.ShouldBe("restWhole");
        rest.Position.Y.ShouldBe(1, 0.001);
        var signs = system.Of(MarkRole.Meter).Max(m => m.Bounds.Right);
        var barline = system.Of(MarkRole.Barline).First(b => b.Bounds.Left > signs).Bounds.Left;
        ((rest.Bounds.Left + rest.Bounds.Right) / 2).ShouldBe((signs + barline) / 2, 0.3);
    }

    /// <summary>Handbook rule, from memory: the half rest sits on the middle line, shorter rests stand about the middle of the staff.</summary>
    [Fact]
    public void Rests_stand_about_the_middle_of_the_staff()
    {
        var system = Drawn.Staff("r:2 r:1 E2:1 | r:1/2 E2:1/4 r:1/4 E2:3");
        system.Names(MarkRole.Rest).ShouldBe("restHalf restQuarter rest8th rest16th");
        system.Glyphs(MarkRole.Rest).ShouldAllBe(r => Math.Abs(r.Position.Y - StaffSteps.Middle) < 0.001);
    }

    /// <summary>Handbook rule, from memory: rests of two voices move apart, up and down by whole spaces, and never touch the other voice.</summary>
    [Fact]
    public void Rests_of_two_voices_move_apart()
    {
        var system = Drawn.Staff("r:1 E4:1 r:1 D4:1", "guitar-6", lower: "G3:1 r:1 A3:1 r:1");
        var rests = system.Glyphs(MarkRole.Rest);
        rests.Count.ShouldBe(4);
        foreach (var rest in rests)
        {
            if (rest.Origin.Voice == 0) rest.Position.Y.ShouldBeLessThan(StaffSteps.Middle);
            else rest.Position.Y.ShouldBeGreaterThan(StaffSteps.Middle);
            (rest.Position.Y % 1).ShouldBe(0, 0.001);
            foreach (var head in system.Of(MarkRole.Notehead)) rest.Bounds.Overlaps(head.Bounds).ShouldBeFalse();
        }
    }

    /// <summary>
    /// Handbook rule, from memory: a rest stays on the side of its voice, past the notes that the other voice has while it lasts, and goes
    /// no further than it has to. The edge is that of the outermost of those notes.
    /// </summary>
    [Theory]
    [InlineData("E4:1/2 A3:1/2 E4:3", "r:1 E2:3", 1, 3)]
    [InlineData("E4:2/3 A3:2/3 E4:2/3 E4:2", "E2:1 r:1 E2:2", 1, 3)]
    [InlineData("G3:2 E4:2", "E2:1 r:1 E2:2", 1, 3.5)]
    [InlineData("G4:1/2 G4:1/2 G3:3", "r:1 E2:3", 1, 0)]
    [InlineData("r:1 G4:3", "E2:1/2 C4:1/2 E2:3", 0, 1)]
    [InlineData("G4:1 r:1 G4:2", "C4:2 E2:2", 0, 1)]
    public void A_rest_stays_on_the_side_of_its_voice(string upper, string lower, int voice, double edge)
    {
        var rest = Drawn.Staff(upper, "guitar-6", lower: lower).Glyphs(MarkRole.Rest).ShouldHaveSingleItem();
        rest.Origin.Voice.ShouldBe(voice);
        var past = voice == 1 ? rest.Bounds.Top - edge : edge - rest.Bounds.Bottom;
        past.ShouldBeGreaterThanOrEqualTo(-0.001);
        var moved = Math.Abs(rest.Position.Y - StaffSteps.Middle);
        (moved % 1).ShouldBe(0, 0.001);
        if (moved > 1) past.ShouldBeLessThan(1);
    }

    /// <summary>Handbook rule, from memory: rests of a voice stand level within a bar where the notes of the other let them.</summary>
    [Fact]
    public void Rests_of_a_voice_stand_level_within_a_bar()
    {
        var rests = Drawn.Staff("E4:1/2 A3:1/2 E4:1 C4:1 E4:1", "guitar-6", lower: "r:1 E2:1 r:1 E2:1").Glyphs(MarkRole.Rest);
        rests.Count.ShouldBe(2);
        rests[1].Position.Y.ShouldBe(rests[0].Position.Y);
    }

    /// <summary>Handbook rule, from memory: a rest that both voices share is written once, in its usual place.</summary>
    [Fact]
    public void A_rest_of_both_voices_is_written_once() =>
        Drawn.Staff("E4:2 r:2", "guitar-6", lower: "A3:2 r:2").Names(MarkRole.Rest).ShouldBe("restHalf");

    /// <summary>Handbook rule, from memory: empty bars in a row are one rest with their number.</summary>
    [Fact]
    public void Empty_bars_are_one_rest_with_a_number()
    {
        var score = ScoreText.Parse("E2:4 | r:4 | r:4 | r:4 | E2:4", layout: StaffLayout.Staff);
        Drawn.System(score).Names(MarkRole.Rest).ShouldBe("timeSig3");
        ScoreEngraver.Engrave(score, Drawn.Wide, new EngravingOptions { MergeEmptyMeasures = false }).Systems[0].Names(MarkRole.Rest).ShouldBe("restWhole restWhole restWhole");
    }

    /// <summary>Handbook rule, from memory: a dot stands in a space, that of a note on a line in the space above.</summary>
    [Theory]
    [InlineData("C2:3/2", 2.5)]
    [InlineData("D2:3/2", 1.5)]
    [InlineData("E2:3/2", 1.5)]
    [InlineData("F2:3/2", 0.5)]
    public void Dots_stand_in_spaces(string note, double y) =>
        Drawn.Staff(note + " r:1/2 r:2").Glyphs(MarkRole.Dot).First().Position.Y.ShouldBe(y, 0.001);

    /// <summary>Handbook rule, from memory: dots of a chord stand under each other, one in each space.</summary>
    [Fact]
    public void Dots_of_a_chord_align()
    {
        var dots = Drawn.Staff("E3+F#3+B3:3 r:1", "guitar-6").Glyphs(MarkRole.Dot);
        dots.Count.ShouldBe(3);
        dots.Select(d => d.Position.X).Distinct().Count().ShouldBe(1);
        dots.Select(d => d.Position.Y).Order().ShouldBeUnique();
        dots.ShouldAllBe(d => Math.Abs((d.Position.Y % 1) - 0.5) < 0.001);
    }

    /// <summary>Handbook rule, from memory: a second dot adds half of the first: seven sixteenths are one value.</summary>
    [Fact]
    public void Two_dots_stand_side_by_side()
    {
        var dots = Drawn.Staff("E2:7/4 E2:1/4 r:2").Glyphs(MarkRole.Dot);
        dots.Count.ShouldBe(2);
        dots[0].Position.Y.ShouldBe(dots[1].Position.Y);
        dots[1].Bounds.Left.ShouldBeGreaterThan(dots[0].Bounds.Right);
    }
}
