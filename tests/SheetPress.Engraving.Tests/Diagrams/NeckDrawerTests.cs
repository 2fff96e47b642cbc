using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Engraving.Tests;

public class NeckDrawerTests
{
    private static readonly DiagramStyle Style = new();
    private static readonly Instrument Guitar = InstrumentCatalogue.Find("guitar-6")!;

    public static TheoryData<string, bool> Instruments
    {
        get
        {
            var data = new TheoryData<string, bool>();
            foreach (var instrument in InstrumentCatalogue.All)
            {
                data.Add(instrument.Id, false);
                data.Add(instrument.Id, true);
            }
            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Instruments))]
    public void All_ink_lies_within_the_box(string id, bool upright)
    {
        var layout = NeckDrawer.Draw(Map(id, 0, 12) with { Upright = upright }, Style, 174);
        var ink = new Drawing([.. layout.Drawing.Marks.Where(m => m.Ink > 0)]).Bounds;
        ink.Left.ShouldBe(0, 1e-9);
        ink.Top.ShouldBe(0, 1e-9);
        ink.Right.ShouldBe(layout.Width, 1e-9);
        ink.Bottom.ShouldBe(layout.Height, 1e-9);
        if (!upright) layout.Width.ShouldBeLessThanOrEqualTo(174 + 1e-9);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Left_handed_is_the_mirror_image(bool upright)
    {
        var right = Map("guitar-6", 3, 7) with { Upright = upright };
        var left = right with { Instrument = Guitar with { LeftHanded = true } };
        var (a, b) = (NeckDrawer.Draw(right, Style, 174), NeckDrawer.Draw(left, Style, 174));
        // Mirrored about the middle of the neck; labels stay readable, so only the dots are compared.
        var (middleA, middleB) = ((a.NeckLeft + a.NeckRight) / 2, (b.NeckLeft + b.NeckRight) / 2);
        var dotsA = Dots(a).Select(p => (X: Math.Round(p.X - middleA, 6), Y: Math.Round(p.Y - a.NeckTop, 6))).Order();
        var dotsB = Dots(b).Select(p => (X: Math.Round(middleB - p.X, 6) + 0.0, Y: Math.Round(p.Y - b.NeckTop, 6))).Order();
        dotsB.ShouldBe(dotsA);
    }

    [Fact]
    public void The_lowest_string_is_at_the_bottom_of_a_lying_neck_and_left_on_an_upright_one()
    {
        var lying = Strings(NeckDrawer.Draw(Map("bass-4", 1, 5), Style, 174), upright: false);
        lying.MaxBy(l => l.Thickness)!.From.Y.ShouldBe(lying.Max(l => l.From.Y));
        var upright = Strings(NeckDrawer.Draw(Map("bass-4", 1, 5) with { Upright = true }, Style, 174), upright: true);
        upright.MaxBy(l => l.Thickness)!.From.X.ShouldBe(upright.Min(l => l.From.X));
    }

    [Fact]
    public void The_nut_is_drawn_at_the_nut_alone()
    {
        Thickest(NeckDrawer.Draw(Map("guitar-6", 1, 4), Style, 174)).ShouldBe(Style.NutThickness);
        Thickest(NeckDrawer.Draw(Map("guitar-6", 5, 9), Style, 174)).ShouldBeLessThan(Style.NutThickness);
    }

    [Fact]
    public void Roots_are_square_and_other_tones_round()
    {
        var diagram = new NeckDiagram { Instrument = Guitar, FirstFret = 1, LastFret = 4, Dots = [new(new(6, 3), DotShape.Root, "R"), new(new(5, 2), DotShape.Tone, "3"), new(new(4, 2), DotShape.Other, "6")] };
        var marks = NeckDrawer.Draw(diagram, Style, 174).Drawing.Marks;
        marks.OfType<RectangleMark>().Count(m => m.Ink == 1).ShouldBe(1);
        marks.OfType<EllipseMark>().Count(m => m.Ink == 1 && m.OutlineThickness == 0).ShouldBe(1);
        marks.OfType<EllipseMark>().Count(m => m.Ink == 1 && m.OutlineThickness > 0).ShouldBe(1);
    }

    [Fact]
    public void Dots_of_neighbouring_frets_never_touch()
    {
        foreach (var last in (int[])[5, 9, 12, 15, 17, 20, 22])
        {
            var dots = NeckDrawer.Draw(Map("guitar-6", 1, last), Style, 174).Drawing.Marks.Where(m => m.Ink == 1 && m is EllipseMark or RectangleMark).Select(m => m.Bounds).ToList();
            for (var i = 0; i < dots.Count; i++)
            {
                for (var j = i + 1; j < dots.Count; j++) if (dots[i] != dots[j] && !Encloses(dots[i], dots[j])) dots[i].Overlaps(dots[j]).ShouldBeFalse();
            }
        }
    }

    [Fact]
    public void Frets_stay_in_true_proportion_while_dots_have_room()
    {
        var wires = Wires(NeckDrawer.Draw(Map("bass-4", 1, 12), Style, 174));
        ((wires[1] - wires[0]) / (wires[2] - wires[1])).ShouldBe(Math.Pow(2, 1 / 12.0), 1e-6);
    }

    [Fact]
    public void Text_is_never_below_seven_points()
    {
        foreach (var mark in NeckDrawer.Draw(Map("guitar-6", 0, 12), Style, 174).Drawing.Marks.OfType<TextMark>())
        {
            mark.Size.ShouldBeGreaterThanOrEqualTo(TextStyle.SmallestSize);
        }
    }

    [Fact]
    public void A_muted_string_has_a_cross_before_the_nut()
    {
        var diagram = new NeckDiagram { Instrument = Guitar, FirstFret = 1, LastFret = 4, Upright = true, MutedStrings = [6] };
        var layout = NeckDrawer.Draw(diagram, Style, 174);
        var cross = layout.Drawing.Marks.OfType<LineMark>().Where(l => l.From.X != l.To.X && l.From.Y != l.To.Y).ToList();
        cross.Count.ShouldBe(2);
        foreach (var line in cross) line.Bounds.Bottom.ShouldBeLessThan(layout.NeckTop);
    }

    [Fact]
    public void Snapshot_of_an_upright_barre_chord()
    {
        var diagram = NeckDiagrams.Shape(Guitar, [new(6, 1), new(5, 3), new(4, 3), new(3, 2), new(2, 1), new(1, 1)], Chord.Parse("F"), upright: true) with { Barres = [new Barre(1, 1, 6)] };
        Snapshot.Match(DrawingText.Of(NeckDrawer.Draw(diagram, Style, 174).Drawing));
    }

    private static NeckDiagram Map(string id, int from, int to) => NeckDiagrams.ChordTones(InstrumentCatalogue.Find(id)!, Chord.Parse("F#m7"), from, to);

    private static bool Encloses(Box a, Box b) => (a.Left <= b.Left && a.Right >= b.Right) || (b.Left <= a.Left && b.Right >= a.Right);

    private static double Thickest(DiagramLayout layout) => layout.Drawing.Marks.OfType<LineMark>().Max(l => l.Thickness);

    private static List<LineMark> Strings(DiagramLayout layout, bool upright) =>
        [.. layout.Drawing.Marks.OfType<LineMark>().Where(l => (upright ? l.From.X == l.To.X : l.From.Y == l.To.Y) && l.Thickness != Style.FretThickness && l.Thickness < 0.7)];

    private static List<double> Wires(DiagramLayout layout) =>
        [.. layout.Drawing.Marks.OfType<LineMark>().Where(l => l.From.X == l.To.X && l.Thickness == Style.FretThickness).Select(l => l.From.X).Order()];

    private static IEnumerable<Point> Dots(DiagramLayout layout) => layout.Drawing.Marks.Where(m => m.Ink == 1)
        .Select(m => m switch { EllipseMark e => e.Centre, RectangleMark r => new Point((r.Area.Left + r.Area.Right) / 2, (r.Area.Top + r.Area.Bottom) / 2), _ => (Point?)null })
        .OfType<Point>();
}
