namespace SheetPress.Engraving.Tests.Music.Planning;

/// <summary>Stems, after the engraving handbooks (Ross 1970, Read 1979, Gould 2011), from memory.</summary>
public class StemRulesTests
{
    private const double Rounding = 1e-6;

    /// <summary>Handbook rule, from memory: notes above the middle line stem down, below it up, on it down. The middle line of the bass clef is the written D3 (here sounding an octave lower).</summary>
    [Theory]
    [InlineData("C2:1", true)]
    [InlineData("D2:1", false)]
    [InlineData("E2:1", false)]
    [InlineData("E1:1", true)]
    [InlineData("G3:1", false)]
    public void A_single_note_stems_towards_the_middle_of_the_staff(string note, bool up) => IsUp(Drawn.Staff(note + " r:3"), 0).ShouldBe(up);

    /// <summary>Handbook rule, from memory: the note furthest from the middle line decides for a chord; when both are as far, down.</summary>
    [Theory]
    [InlineData("A1+E2:1", true)]
    [InlineData("C2+B2:1", false)]
    [InlineData("C2+E2:1", false)]
    public void The_furthest_tone_decides_for_a_chord(string chord, bool up) => IsUp(Drawn.Staff(chord + " r:3"), 0).ShouldBe(up);

    /// <summary>Handbook rule, from memory: the note furthest from the middle line decides for a beam; when two are as far, most notes decide.</summary>
    [Theory]
    [InlineData("E1:1/2 E2:1/2", true)]
    [InlineData("B2:1/2 C2:1/2", false)]
    [InlineData("C2:1/2 E2:1/2 C2:1/2 C2:1/2", true)]
    [InlineData("C2:1/2 E2:1/2", false)]
    public void The_furthest_note_decides_for_a_beam(string notes, bool up)
    {
        var system = Drawn.Staff(notes + " r:2");
        IsUp(system, 0).ShouldBe(up);
        IsUp(system, 1).ShouldBe(up);
    }

    /// <summary>Handbook rule, from memory: a note on the middle line follows its neighbours when both stem up.</summary>
    [Fact]
    public void A_note_on_the_middle_line_goes_with_its_neighbours()
    {
        IsUp(Drawn.Staff("C2:1 D2:1 C2:1 C2:1"), 1).ShouldBeTrue();
        IsUp(Drawn.Staff("C2:1 D2:1 E2:1 C2:1"), 1).ShouldBeFalse();
    }

    /// <summary>Common practice, from memory: a note that is repeated (or tied over) keeps the direction of its stem.</summary>
    [Fact]
    public void A_repeated_note_on_the_middle_line_keeps_its_stem()
    {
        var system = Drawn.Staff("C2:1 D2:1 D2:1 G2:1");
        IsUp(system, 1).ShouldBe(IsUp(system, 2));
    }

    /// <summary>Common practice, from memory: the same over a barline, where the bars by themselves would have it point either way.</summary>
    [Theory]
    [InlineData("E2:2 D2:3 C2:3")]
    [InlineData("C2:2 D2:3 E2:3")]
    public void A_note_on_the_middle_line_that_is_tied_over_a_barline_keeps_its_stem(string notes)
    {
        var system = Drawn.Staff(notes);
        bool PointsUp(int measure, int note) => system.Of(MarkRole.Stem).Single(m => m.Origin.Measure == measure && m.Origin.Event == note).Bounds.Top < system.Of(MarkRole.Notehead).Single(m => m.Origin.Measure == measure && m.Origin.Event == note).Bounds.Top - 1;
        PointsUp(0, 1).ShouldBe(PointsUp(1, 0));
    }

    /// <summary>Handbook rule, from memory: a stem is an octave long, three and a half spaces.</summary>
    [Theory]
    [InlineData("C2:1")]
    [InlineData("E2:1")]
    [InlineData("D2:1/2")]
    public void A_stem_is_an_octave_long(string note) => Length(Drawn.Staff(note + " r:3"), 0).ShouldBe(3.5, 0.1);

    /// <summary>Handbook rule, from memory: so does the stem of a short note, flags and all; beyond it goes only what its flags need to end short of the ledger lines.</summary>
    [Theory]
    [InlineData("E2:1/8", "guitar-6")]
    [InlineData("F2:1/8", "guitar-6")]
    [InlineData("A3:1/8", "bass-6")]
    [InlineData("B3:1/8", "bass-6")]
    public void A_stem_with_three_flags_ends_near_the_middle_line(string note, string instrument)
    {
        var system = Drawn.Staff(note + " r:1/8 r:1/4 r:1/2 r:3", instrument);
        var stem = system.Of(MarkRole.Stem, 0).Single().Bounds;
        var (flag, up) = (system.Of(MarkRole.Flag).Single().Bounds, IsUp(system, 0));
        var ledger = up ? system.Of(MarkRole.LedgerLine).Min(m => m.Bounds.Top) : system.Of(MarkRole.LedgerLine).Max(m => m.Bounds.Bottom);
        (up ? StaffSteps.Middle - stem.Top : stem.Bottom - StaffSteps.Middle).ShouldBeInRange(0, 1);
        (up ? ledger - flag.Bottom : flag.Top - ledger).ShouldBe(0.2, 0.01);
    }

    /// <summary>Handbook rule, from memory: the stem of a note on ledger lines reaches the middle line.</summary>
    [Theory]
    [InlineData("B0:1")]
    [InlineData("C1:2")]
    [InlineData("G3:1")]
    [InlineData("E3:2")]
    public void A_stem_of_a_note_far_out_reaches_the_middle_line(string note)
    {
        var system = Drawn.Staff(note + " r:1 r:1", "bass-5");
        var stem = system.Of(MarkRole.Stem, 0).Single().Bounds;
        (IsUp(system, 0) ? stem.Top : stem.Bottom).ShouldBe(StaffSteps.Middle, 0.01);
    }

    /// <summary>Handbook rule, from memory: a flag does not touch the ledger lines of its note; its stem grows for it.</summary>
    [Theory]
    [InlineData("E3:1/2 r:7/2")]
    [InlineData("F3:1/2 r:7/2")]
    [InlineData("G3:1/2 r:7/2")]
    [InlineData("C4:1/4 r:15/4")]
    [InlineData("G3:1/8 r:31/8")]
    [InlineData("B0:1/2 r:7/2")]
    [InlineData("C1:1/4 r:15/4")]
    public void A_flag_ends_short_of_the_ledger_lines(string notes)
    {
        var system = Drawn.Staff(notes, "bass-5");
        var flag = system.Of(MarkRole.Flag).Single().Bounds;
        foreach (var line in system.Of(MarkRole.LedgerLine)) (flag.Top > line.Bounds.Bottom + 0.14 || flag.Bottom < line.Bounds.Top - 0.14).ShouldBeTrue();
        var beyond = system.Of(MarkRole.Stem).Single().Bounds is var stem && IsUp(system, 0) ? StaffSteps.Middle - stem.Top : stem.Bottom - StaffSteps.Middle;
        beyond.ShouldBeInRange(0, 1);
        SystemLint.Check(system, 1.75).ShouldNotContain(f => f.Rule == LintRule.Ink || f.Rule == LintRule.Stem);
    }

    /// <summary>Handbook rule, from memory: in two voices the upper stems up and the lower down, wherever the notes lie.</summary>
    [Fact]
    public void Two_voices_stem_apart()
    {
        var system = Drawn.Staff("B4:1 G4:1 A4:2", "guitar-6", lower: "E3:1 G3:1 C4:2");
        for (var i = 0; i < 3; i++)
        {
            IsUp(system, i).ShouldBeTrue();
            IsUp(system, i, voice: 1).ShouldBeFalse();
        }
    }

    /// <summary>Handbook rule, from memory: three flags or more need a longer stem.</summary>
    [Fact]
    public void More_flags_need_a_longer_stem()
    {
        StemRules.Tip(StemDirection.Up, 0, 0, 3).ShouldBeLessThan(StemRules.Tip(StemDirection.Up, 0, 0, 2));
        StemRules.Tip(StemDirection.Down, 0, 0, 4).ShouldBeGreaterThan(StemRules.Tip(StemDirection.Down, 0, 0, 3));
    }

    /// <summary>Handbook rule, from memory: no stem is shorter than two and a half spaces, even where a voice points away from the staff.</summary>
    [Fact]
    public void A_stem_that_points_out_of_the_staff_is_shortened_but_never_below_two_and_a_half_spaces()
    {
        for (var step = -12; step <= 12; step++)
        {
            (StaffSteps.Y(step) - StemRules.Tip(StemDirection.Up, step, step, 0)).ShouldBeInRange(StemRules.Shortest - Rounding, 6.01);
            (StemRules.Tip(StemDirection.Down, step, step, 0) - StaffSteps.Y(step)).ShouldBeInRange(StemRules.Shortest - Rounding, 6.01);
        }
        (StaffSteps.Y(4) - StemRules.Tip(StemDirection.Up, 4, 4, 0)).ShouldBeLessThan(StemRules.Usual);
    }

    /// <summary>SMuFL: a stem joins its head at the anchors stemUpSE (right side, stem up) and stemDownNW (left side, stem down).</summary>
    [Fact]
    public void Stems_stand_at_the_anchors_of_the_heads()
    {
        var system = Drawn.Staff("C2:1 F2:1 C2:2");
        foreach (var (e, up) in new[] { (0, true), (1, false), (2, true) })
        {
            var head = (GlyphMark)system.Of(MarkRole.Notehead, e).Single();
            var stem = system.Of(MarkRole.Stem, e).Single().Bounds;
            var anchor = head.Glyph.Anchors[up ? "stemUpSE" : "stemDownNW"];
            (up ? stem.Right : stem.Left).ShouldBe(head.Position.X + anchor.X, 0.001);
            (up ? stem.Bottom : stem.Top).ShouldBe(head.Position.Y + anchor.Y, 0.001);
            (stem.Right - stem.Left).ShouldBe(MusicFont.Shipped.Defaults.StemThickness, 0.001);
        }
    }

    private static bool IsUp(EngravedSystem system, int e, int voice = 0)
    {
        var heads = system.Of(MarkRole.Notehead, e, voice);
        var stem = system.Of(MarkRole.Stem, e, voice).Single().Bounds;
        return heads.Min(h => h.Bounds.Top) - stem.Top > stem.Bottom - heads.Max(h => h.Bounds.Bottom);
    }

    private static double Length(EngravedSystem system, int e)
    {
        var head = (GlyphMark)system.Of(MarkRole.Notehead, e).Single();
        var ink = system.Of(MarkRole.Stem, e).Concat(system.Of(MarkRole.Flag, e)).ToList();
        return IsUp(system, e) ? head.Position.Y - ink.Min(m => m.Bounds.Top) : ink.Max(m => m.Bounds.Bottom) - head.Position.Y;
    }

    /// <summary>Common practice: the flag of a dead note that points down ends clear of its cross.</summary>
    [Theory]
    [InlineData("D2:1/2!de r:7/2")]
    [InlineData("F2:1/2!de r:7/2")]
    [InlineData("E2:1/4!de r:15/4")]
    public void A_flag_ends_clear_of_the_cross_of_its_note(string text)
    {
        var system = Drawn.Staff(text);
        var head = system.Of(MarkRole.Notehead).Single().Bounds;
        system.Of(MarkRole.Stem).Single().Bounds.Bottom.ShouldBeGreaterThan(head.Bottom);
        system.Of(MarkRole.Flag).Single().Bounds.Top.ShouldBeGreaterThan(head.Bottom + 0.15);
    }
}
