namespace SheetPress.Engraving.Tests.Music.Staff;

/// <summary>Beams, after the engraving handbooks (Ross 1970, Read 1979, Gould 2011), from memory.</summary>
public class BeamRulesTests
{
    /// <summary>Handbook rule, from memory: a beam goes with its outer notes, but stays flat: up to half a space for a second, one for an octave, one and a quarter at the most.</summary>
    [Theory]
    [InlineData("C2:1/2 D2:1/2", 0, 0.5)]
    [InlineData("C2:1/2 E2:1/2", 0.25, 0.75)]
    [InlineData("A1:1/2 E2:1/2", 0.5, 1)]
    [InlineData("E1:1/2 E2:1/2", 0.5, 1.25)]
    [InlineData("E1:1/2 C3:1/2", 0.5, 1.25)]
    public void A_beam_goes_with_its_outer_notes_but_stays_flat(string notes, double least, double most)
    {
        var rising = Rise(notes);
        rising.ShouldBeInRange(-most - 0.01, -least);
        var falling = Rise(string.Join(' ', notes.Split(' ').Reverse()));
        falling.ShouldBeInRange(least, most + 0.01);
    }

    /// <summary>Handbook rule, from memory: no slant for equal outer notes, for a figure that comes again, or where an inner note is nearest to the beam.</summary>
    [Theory]
    [InlineData("C2:1/2 C2:1/2")]
    [InlineData("C2:1/2 D2:1/2 E2:1/2 C2:1/2")]
    [InlineData("A1:1/2 C2:1/2 A1:1/2 C2:1/2")]
    [InlineData("A1:1/2 E2:1/2 C2:1/2 B1:1/2")]
    public void A_beam_is_level_where_a_slant_would_say_nothing(string notes) => Rise(notes).ShouldBe(0, 0.001);

    /// <summary>Common practice: a beam over two octaves is set level rather than drawing its longest stem out.</summary>
    [Fact]
    public void A_beam_over_two_octaves_does_not_draw_out_its_stems()
    {
        var system = Drawn.Staff("Gb2:1/4 Gb4:1/4 Gb3:1/2 Gb2:1/4 Gb4:1/4 r:3/2", "guitar-7", meter: "6/8");
        var heads = system.Of(MarkRole.Notehead).Select(h => (h.Bounds.Top + h.Bounds.Bottom) / 2).ToList();
        var stems = system.Of(MarkRole.Stem).Select(s => s.Bounds).ToList();
        heads.Zip(stems, (head, stem) => head - stem.Top).Max().ShouldBeLessThan(11);
        SystemLint.Check(system, 1.75).ShouldBeEmpty();
    }

    /// <summary>SMuFL engraving defaults: a beam is half a space thick, and a quarter of a space of white parts two beams.</summary>
    [Fact]
    public void Beams_are_as_thick_and_as_far_apart_as_the_font_says()
    {
        var beams = Drawn.Staff("C2:1/4 C2:1/4 C2:1/4 C2:1/4 r:3").Of(MarkRole.Beam).Select(b => b.Bounds).OrderBy(b => b.Top).ToList();
        beams.Count.ShouldBe(2);
        beams.ShouldAllBe(b => Math.Abs(b.Height - MusicFont.Shipped.Defaults.BeamThickness) < 0.001);
        (beams[1].Top - beams[0].Bottom).ShouldBe(MusicFont.Shipped.Defaults.BeamSpacing, 0.001);
    }

    /// <summary>Handbook rule, from memory: a level beam inside the staff sits on a line, hangs from one or straddles one, so that no thin wedge of white is left.</summary>
    [Theory]
    [InlineData("F1")]
    [InlineData("G1")]
    [InlineData("A1")]
    [InlineData("B1")]
    [InlineData("C2")]
    [InlineData("E2")]
    [InlineData("G2")]
    [InlineData("A2")]
    [InlineData("B2")]
    [InlineData("D3")]
    public void A_level_beam_sits_hangs_or_straddles(string note)
    {
        var beam = Drawn.Staff($"{note}:1/2 {note}:1/2 r:3").Of(MarkRole.Beam).Single().Bounds;
        if (beam.Bottom < 0 || beam.Top > StaffSteps.BottomLine) return;
        var half = MusicFont.Shipped.Defaults.StaffLineThickness / 2;
        double FromLine(double y) => Math.Abs(y - Math.Round(y));
        var sits = FromLine(beam.Bottom) <= half + 0.01;
        var hangs = FromLine(beam.Top) <= half + 0.01;
        var straddles = FromLine((beam.Top + beam.Bottom) / 2) < 0.01;
        (sits || hangs || straddles).ShouldBeTrue($"{beam.Top} to {beam.Bottom}");
    }

    /// <summary>Handbook rule, from memory: a partial beam points into its group: of a dotted figure back to the long note, of the reversed one forward.</summary>
    [Fact]
    public void A_partial_beam_points_into_its_group()
    {
        var system = Drawn.Staff("C2:3/4 C2:1/4 C2:1/4 C2:3/4 r:2");
        var beams = system.Of(MarkRole.Beam).Select(b => b.Bounds).ToList();
        var groups = beams.Where(b => b.Width > 1.5).OrderBy(b => b.Left).ToList();
        var stubs = beams.Where(b => b.Width <= 1.5).OrderBy(b => b.Left).ToList();
        (groups.Count, stubs.Count).ShouldBe((2, 2));
        stubs[0].Right.ShouldBe(groups[0].Right, 0.01);
        stubs[1].Left.ShouldBe(groups[1].Left, 0.01);
    }

    /// <summary>Handbook rule, from memory: no stem under a beam is shorter than two and a half spaces.</summary>
    [Theory]
    [InlineData("E1:1/2 C3:1/2 E1:1/2 C3:1/2 r:2")]
    [InlineData("A1:1/4 E2:1/4 C2:1/4 B1:1/4 r:3")]
    [InlineData("C2:1/8 D2:1/8 E2:1/8 F2:1/8 G2:1/8 F2:1/8 E2:1/8 D2:1/8 r:3")]
    public void No_stem_under_a_beam_is_short(string notes)
    {
        var system = Drawn.Staff(notes);
        foreach (var stem in system.Of(MarkRole.Stem))
        {
            var head = system.Glyphs(MarkRole.Notehead).Single(h => h.Origin.Event == stem.Origin.Event);
            Math.Max(head.Position.Y - stem.Bounds.Top, stem.Bounds.Bottom - head.Position.Y).ShouldBeGreaterThanOrEqualTo(StemRules.Shortest - 0.01);
        }
    }

    /// <summary>Handbook rule, from memory: the ends of a sloping beam sit on a line, hang from one or straddle one, or stand well clear of the outer ones: no thin wedge of white, neither at the edge of the staff nor between two beams.</summary>
    [Theory]
    [InlineData("E2:1/2 D3:1/2 C3:1/2 B2:1/2")]
    [InlineData("E2:1/2 C3:1/2 B2:1/2 A2:1/2")]
    [InlineData("E2:1/2 F2:1/2 F#2:1/2 G2:1/2")]
    [InlineData("A2:1/2 G2:1/2 F2:1/2 E2:1/2")]
    [InlineData("G1:1/2 C2:1/2 B1:1/2 A1:1/2")]
    [InlineData("B1:1/4 A1:1/4 G1:1/4 C2:1/4")]
    [InlineData("E2:1/4 F2:1/4 G2:1/4 A2:1/4")]
    [InlineData("G2:1/4 F2:1/4 E2:1/4 F2:1/4")]
    public void A_sloping_beam_leaves_no_thin_wedge_at_the_edge_of_the_staff(string notes)
    {
        foreach (var beam in Drawn.Staff(notes + " r:2").Of(MarkRole.Beam).Cast<PolygonMark>())
        {
            WhiteBeside(beam.Corners[0].Y, beam.Corners[3].Y).ShouldNotBeInRange(0.03, 0.4, $"left end of {notes}");
            WhiteBeside(beam.Corners[1].Y, beam.Corners[2].Y).ShouldNotBeInRange(0.03, 0.4, $"right end of {notes}");
        }
    }

    /// <summary>The same rule for every two notes under one to three beams, which cost no stem its least length and make no beam steep.</summary>
    [Theory]
    [InlineData(1, true)]
    [InlineData(1, false)]
    [InlineData(2, true)]
    [InlineData(2, false)]
    [InlineData(3, true)]
    [InlineData(3, false)]
    public void No_two_notes_leave_a_thin_wedge(int beams, bool up)
    {
        var half = MusicFont.Shipped.Defaults.BeamThickness / 2;
        var pitch = (up ? 1 : -1) * ((2 * half) + MusicFont.Shipped.Defaults.BeamSpacing);
        for (var first = -2.0; first <= 6; first += 0.5)
        {
            for (var last = -2.0; last <= 6; last += 0.5)
            {
                foreach (var width in new[] { 2.0, 3.5, 9 })
                {
                    var line = BeamPlacement.Place([new BeamNote(0, first, beams), new BeamNote(width, last, beams)], up);
                    var what = $"{first} to {last} over {width}: {line.LeftY} to {line.RightY}";
                    for (var level = 0; level < beams; level++)
                    {
                        foreach (var y in new[] { line.LeftY, line.RightY }) WhiteBeside(y + (level * pitch) - half, y + (level * pitch) + half).ShouldNotBeInRange(0.03, 0.4, what);
                    }
                    // A single beam does not come down to the outer line from well outside either.
                    var outside = new[] { line.LeftY, line.RightY }.Select(y => up ? -y : y - StaffSteps.BottomLine).ToList();
                    (beams == 1 && outside.Max() > half && outside.Min() <= half).ShouldBeFalse(what);
                    var stem = half + (up ? Math.Min(first - line.LeftY, last - line.RightY) : Math.Min(line.LeftY - first, line.RightY - last));
                    stem.ShouldBeGreaterThanOrEqualTo(StemRules.Shortest, what);
                    Math.Abs(line.RightY - line.LeftY).ShouldBeLessThanOrEqualTo(Math.Min(BeamSlope.Most, (BeamSlope.Steepest * width) + 0.01), what);
                }
            }
        }
    }

    // The least white between a beam and a staff line that it does not touch.
    private static double WhiteBeside(double top, double bottom)
    {
        var half = MusicFont.Shipped.Defaults.StaffLineThickness / 2;
        var least = double.PositiveInfinity;
        for (var line = 0; line <= StaffSteps.BottomLine; line++)
        {
            var white = Math.Max(top - (line + half), line - half - bottom);
            if (white > 0) least = Math.Min(least, white);
        }
        return least;
    }

    private static double Rise(string notes)
    {
        var beam = (PolygonMark)Drawn.Staff(notes + " r:2").Of(MarkRole.Beam).First();
        return beam.Corners[1].Y - beam.Corners[0].Y;
    }
}
