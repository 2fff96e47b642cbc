using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Engraving.Tests.Lint;

/// <summary>For each rule a system or a page that breaks it, and nothing else that does: the same one unspoilt has no findings.</summary>
public class LintRuleTests
{
    private static readonly Dictionary<LintRule, Func<ImmutableArray<LintFinding>>> Broken = new()
    {
        [LintRule.Ink] = () => LintSamples.System().WithFirst<GlyphMark>(MarkRole.Accidental, m => m.Transform(1, 0.6, 0)).Check(),
        [LintRule.Margin] = () => LintSamples.Page(LintSamples.Text("x", 12, 100, 3.5)).Check(),
        [LintRule.Stem] = () => WithStem(2).Check(),
        [LintRule.Beam] = () => Steepened(1.5).Check(),
        [LintRule.Alignment] = () => LintSamples.System().WithFirst<TextMark>(MarkRole.FretNumber, n => n.Transform(1, 0.15, 0)).Check(),
        [LintRule.Barline] = () => LintSamples.System().WithFirst<LineMark>(MarkRole.Barline, b => b with { To = b.To with { Y = b.To.Y - 1 } }).Check(),
        [LintRule.Stretch] = () => (LintSamples.System() with { StretchRatio = 1.61 }).Check(),
        [LintRule.TextSize] = () => LintSamples.Page(LintSamples.Text("small", 20, 140, 6.9 * 25.4 / 72)).Check(),
        [LintRule.Text] = () => LintSamples.Page(LintSamples.Text("one cell of a table", 20, 140, 3.5), LintSamples.Text("next cell", 40, 140, 3.5)).Check(),
        [LintRule.Title] = () => LintSamples.Page(LintSamples.Text("Alone", 20, 260, 5, MarkRole.Title)).Check(),
    };

    public static TheoryData<LintRule> Rules => [.. Enum.GetValues<LintRule>()];

    [Theory]
    [MemberData(nameof(Rules))]
    public void Every_rule_finds_what_breaks_it(LintRule rule) => Broken[rule]().ShouldContain(f => f.Rule == rule);

    [Fact]
    public void A_good_system_has_no_findings() => LintSamples.System().Check().ShouldBeEmpty();

    [Fact]
    public void A_good_page_has_no_findings() => LintSamples.Page().Check().ShouldBeEmpty();

    [Fact]
    public void A_finding_says_where_and_what()
    {
        var system = LintSamples.System().WithFirst<GlyphMark>(MarkRole.Accidental, m => m.Transform(1, 0.6, 0));
        system.Check()[0].ToString().ShouldBe("Ink: system 1, measure 1, Accidental accidentalSharp touches Notehead noteheadBlack");
        LintSamples.Page(LintSamples.Text("x", 12, 100, 3.5)).Check()[0].ToString().ShouldBe("Margin: page 1, BodyText lies outside the margins");
    }

    // Issue figures: no closer than 0.15 sp.
    [Theory]
    [InlineData(0.14, false)]
    [InlineData(0.16, true)]
    public void Ink_keeps_its_distance(double distance, bool isFine)
    {
        // The tab clef is the system's leftmost sign, with nothing under it.
        var system = LintSamples.System();
        var clef = system.Drawing.Marks.Last(m => m.Role == MarkRole.Clef).Bounds;
        var sign = new RectangleMark(new Box(clef.Left, clef.Bottom + distance, clef.Right, clef.Bottom + distance + 0.3)) { Role = MarkRole.Finger };
        var spoilt = system with { Drawing = new Drawing([.. system.Drawing.Marks.Where(m => m.Role != MarkRole.TabLine), sign]) };
        spoilt.Check().Any(f => f.Rule == LintRule.Ink).ShouldBe(!isFine);
    }

    [Theory]
    [InlineData(1.6, 0)]
    [InlineData(1.61, 1)]
    [InlineData(0.85, 0)]
    [InlineData(0.84, 1)]
    public void Systems_are_neither_stretched_nor_squeezed_too_far(double ratio, int findings) =>
        (LintSamples.System() with { StretchRatio = ratio }).Check().Count(f => f.Rule == LintRule.Stretch).ShouldBe(findings);

    // Common practice, from memory: no stem is shorter than two and a half spaces, none without a beam much longer than an octave.
    [Theory]
    [InlineData(2.4, false)]
    [InlineData(2.6, true)]
    [InlineData(5, true)]
    [InlineData(5.5, false)]
    public void Stems_have_their_length(double length, bool isFine) => WithStem(length).Check().Any(f => f.Rule == LintRule.Stem).ShouldBe(!isFine);

    // A short stem is no fault for being small, under an exercise on a larger staff; nor is a much too short one hidden by it.
    [Theory]
    [InlineData(2.6, true)]
    [InlineData(2.3, false)]
    public void Stems_are_measured_in_the_staff_size_of_their_exercise(double length, bool isFine)
    {
        var small = WithStem(length).Drawing.Marks.Select(m => m.Transform(0.8, 20, 160));
        LintSamples.Page([LintSamples.Text("Smaller", 20, 150, 3.5), .. small]).Check().Any(f => f.Rule == LintRule.Stem).ShouldBe(!isFine);
    }

    // Common practice, from memory: a beam rises a space and a quarter at the most.
    [Theory]
    [InlineData(1.2, 0)]
    [InlineData(1.4, 1)]
    public void Beams_stay_flat(double rise, int findings) => Steepened(rise).Check().Count(f => f.Rule == LintRule.Beam).ShouldBe(findings);

    // Common practice, from memory: an accent stands by its note, beyond its stem or outside the staff.
    [Theory]
    [InlineData(2, true)]
    [InlineData(4, false)]
    public void Accents_stay_by_their_notes(double down, bool isFine)
    {
        var system = Drawn.System(ScoreText.Parse("E2:1 A1:1!ac r:2", layout: StaffLayout.Staff));
        SystemLint.Check(system, 1.75).ShouldBeEmpty();
        var spoilt = system.WithFirst<GlyphMark>(MarkRole.Articulation, m => m.Transform(1, 0, down));
        spoilt.Check().Any(f => f.Rule == LintRule.Alignment).ShouldBe(!isFine);
    }

    [Fact]
    public void A_mark_beyond_the_end_of_its_system_is_clipped() =>
        LintSamples.System().WithFirst<TextMark>(MarkRole.ChordSymbol, m => m.Transform(1, 75, 0)).Check().ShouldContain(f => f.Rule == LintRule.Margin);

    [Fact]
    public void Repeat_dots_stand_under_each_other() =>
        LintSamples.System().WithFirst<GlyphMark>(MarkRole.Barline, m => m.Transform(1, 0.2, 0)).Check().ShouldContain(f => f.Rule == LintRule.Barline);

    [Fact]
    public void Text_keeps_within_the_rules_of_its_table()
    {
        var rule = new LineMark(new Point(40, 130), new Point(40, 145), 0.2) { Role = MarkRole.TableRule };
        LintSamples.Page(rule, LintSamples.Text("a cell far too long", 20, 140, 3.5)).Check().ShouldContain(f => f.Rule == LintRule.Text);
        LintSamples.Page(rule, LintSamples.Text("short", 20, 140, 3.5)).Check().ShouldBeEmpty();
    }

    // A page does not say how far its systems were stretched: the sheet has to be asked. A bar full of accidentals over one long note can neither be divided nor squeezed into a narrow line.
    [Fact]
    public void A_sheet_tells_how_far_its_systems_are_stretched()
    {
        var run = string.Join(' ', Enumerable.Repeat("E3:1/8 Eb3:1/8 Fb3:1/8 F#3:1/8", 12));
        var score = ScoreText.Parse(run, lower: "E1:6", meter: "6/4", header: h => h with { Title = "One bar" });
        var content = new HandoutContent { Title = "Sheet", Exercises = [new ExerciseContent { Score = score }] };
        var style = PageStyle.Handout(PaperSize.A5);
        PageLint.Check(SheetComposer.Compose(content, style), LintSamples.Margin).ShouldNotContain(f => f.Rule == LintRule.Stretch);
        SheetLint.Check(content, style, LintSamples.Margin).ShouldContain(f => f.Rule == LintRule.Stretch && f.Message.StartsWith("One bar: "));
    }

    [Fact]
    public void A_title_over_its_text_is_at_home() =>
        LintSamples.Page(LintSamples.Text("Heading", 20, 240, 5, MarkRole.Title), LintSamples.Text("What it heads.", 20, 250, 3.5)).Check().ShouldBeEmpty();

    // The last stem, which is no beam's, made that long from the middle of its head.
    private static EngravedSystem WithStem(double length)
    {
        var system = LintSamples.System();
        var stem = system.Drawing.Marks.OfType<LineMark>().Last(m => m.Role == MarkRole.Stem);
        var head = system.Drawing.Marks.OfType<GlyphMark>().Single(m => m.Role == MarkRole.Notehead && m.Origin == stem.Origin).Position.Y;
        var up = head - stem.From.Y > stem.To.Y - head;
        return system.With(m => !ReferenceEquals(m, stem) ? m : up ? stem with { From = stem.From with { Y = head - length } } : stem with { To = stem.To with { Y = head + length } });
    }

    private static EngravedSystem Steepened(double rise)
    {
        var system = LintSamples.System();
        return system.WithFirst<PolygonMark>(MarkRole.Beam, beam =>
        {
            var run = Math.Max(6, beam.Corners[1].X - beam.Corners[0].X);
            var (x, y) = (beam.Corners[0].X, beam.Corners[0].Y);
            return beam with { Corners = [new(x, y), new(x + run, y - rise), new(x + run, y - rise + 0.5), new(x, y + 0.5)] };
        });
    }
}
