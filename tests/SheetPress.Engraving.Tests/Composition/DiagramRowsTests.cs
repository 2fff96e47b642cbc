using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Engraving.Tests;

public class DiagramRowsTests
{
    private static readonly PageStyle Style = new();
    private static readonly Instrument Guitar = InstrumentCatalogue.Find("guitar-6")!;

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(5)]
    [InlineData(7)]
    [InlineData(12)]
    public void Rows_stay_within_the_text_area(int count)
    {
        foreach (var instrument in InstrumentCatalogue.All)
        {
            foreach (var upright in (bool[])[false, true])
            {
                // Each over another stretch, some with open strings.
                var diagrams = Enumerable.Range(0, count).Select(i => NeckDiagrams.ChordTones(instrument, Chord.Parse("Bb7"), i % 4, (i % 4) + 4) with { Upright = upright, Caption = "a caption" });
                foreach (var row in DiagramRows.Make([.. diagrams], Style))
                {
                    var ink = Ink(row);
                    ink.Left.ShouldBeGreaterThanOrEqualTo(-1e-6);
                    ink.Right.ShouldBeLessThanOrEqualTo(Style.TextWidth + 1e-6);
                    ink.Bottom.ShouldBeLessThanOrEqualTo(row.Height + 1e-6);
                }
            }
        }
    }

    // Two upright grips and a lying scale: one row, the scale in the right half, tops of the necks level.
    [Fact]
    public void Upright_and_lying_diagrams_share_a_row_that_has_room_for_them()
    {
        var upright = NeckDiagrams.ChordTones(Guitar, Chord.Parse("Em7"), 0, 4) with { Upright = true };
        var lying = NeckDiagrams.Scale(Guitar, Scale.Parse("G major"), 0, 4) with { Caption = "G major" };
        var row = DiagramRows.Make([upright, upright, lying], Style).ShouldHaveSingleItem();
        var boxes = row.Drawings.Select(d => Box.Around(d.Drawing.Marks.Where(m => m is LineMark && m.Role == MarkRole.Diagram).Select(m => m.Bounds)).Transform(1, d.X, d.Y)).ToList();
        boxes[1].Right.ShouldBeLessThan(boxes[2].Left);
        boxes[2].Left.ShouldBeGreaterThan(Style.TextWidth / 2);
        // Their words are level, whichever come first, and each stand over their neck as they do alone.
        foreach (var diagrams in (NeckDiagram[][])[[Named(upright), lying], [lying, Named(upright)]])
        {
            var words = DiagramRows.Make([.. diagrams], Style).ShouldHaveSingleItem().Drawings.Select(d => d.Y + d.Drawing.Marks.OfType<TextMark>().MaxBy(m => m.Size)!.Position.Y).ToList();
            words[0].ShouldBe(words[1], 0.01);
        }
        Gap(row.Drawings[2].Drawing).ShouldBe(Gap(DiagramRows.Make([lying], Style).ShouldHaveSingleItem().Drawings[0].Drawing), 0.01);
        static double Gap(Drawing drawing) => drawing.Marks.OfType<LineMark>().Min(m => m.Bounds.Top) - drawing.Marks.OfType<TextMark>().First(m => m.Run.Text.StartsWith("G major", StringComparison.Ordinal)).Position.Y;
        static NeckDiagram Named(NeckDiagram diagram) => diagram with { Symbol = Chord.Parse("Em7") };
        Ink(row).Right.ShouldBeLessThanOrEqualTo(Style.TextWidth);
        DiagramRows.Make([.. Enumerable.Repeat(upright, 5), lying], Style).Length.ShouldBe(3);
    }

    // Moved one over the other they are found; each alone has no fault.
    [Fact]
    public void Diagrams_that_overlap_are_found()
    {
        var diagrams = Enumerable.Range(0, 5).Select(i => NeckDiagrams.ChordTones(SampleHandout.Bass, Chord.Parse("Cm7"), 2 + i, 5 + i) with { Upright = i > 3 }).ToImmutableArray();
        var drawings = DiagramRows.Make(diagrams, Style).SelectMany(r => r.Drawings).Select(d => d.Drawing).ToList();
        drawings.Count.ShouldBe(diagrams.Length);
        for (var i = 1; i < drawings.Count; i++)
        {
            InkLint.Check(drawings[i].Marks, Style.StaffSpace).ShouldBeEmpty();
            InkLint.Check([.. drawings[0].Marks, .. drawings[i].Marks], Style.StaffSpace).ShouldNotBeEmpty();
        }
    }

    // Dots pressed together on a narrow neck are found, and only those: barres, strings and paths run into dots on purpose.
    [Theory]
    [InlineData(60, true)]
    [InlineData(120, false)]
    public void Dots_that_touch_are_found(double width, bool isFound)
    {
        var neck = NeckDiagrams.Scale(Guitar, Scale.Parse("C major"), 0, 12);
        neck = neck with { Path = [.. neck.Dots.Take(6).Select(d => d.Position)], Barres = [new Barre(5, 1, 5)] };
        InkLint.Check(NeckDrawer.Draw(neck, new DiagramStyle(), width).Drawing.Marks, Style.StaffSpace).Any().ShouldBe(isFound);
    }

    // On narrow paper in large print the dots of a whole neck would overlap: it goes on under itself, on the same page.
    [Fact]
    public void A_neck_too_long_for_the_page_is_divided()
    {
        var style = PageStyle.LargePrint(PaperSize.A5);
        foreach (var instrument in InstrumentCatalogue.All)
        {
            var whole = NeckDiagrams.Scale(instrument, Scale.Parse("C major"), 0, instrument.PlayableFrets) with { Caption = "C major" };
            whole = whole with { Path = [.. whole.Dots.Select(d => d.Position)] };
            var rows = DiagramRows.Make([whole, NeckDiagrams.ChordTones(instrument, Chord.Parse("Cm7"), 2, 5)], style);
            InkLint.Check([.. rows[0].Drawings[0].Drawing.Marks], style.StaffSpace).ShouldBeEmpty();
            rows.Select(r => Ink(r).Right).Max().ShouldBeLessThanOrEqualTo(style.TextWidth + 1e-6);
            rows.Select(r => r.BreakPenalty).ShouldBe([.. Enumerable.Repeat(FlowBox.Never, rows.Length - 2), 0, 0]);
            var parts = NeckParts.Of(whole, style);
            parts.Length.ShouldBe(rows.Length - 1);
            parts.SelectMany(p => p.Dots).OrderBy(d => (d.Position.Fret, d.Position.String)).ShouldBe(whole.Dots.OrderBy(d => (d.Position.Fret, d.Position.String)));
            parts.Select(p => p.FirstFret).ShouldBe([1, .. parts.Select(p => p.LastFret + 1).SkipLast(1)]);
            parts[^1].LastFret.ShouldBe(whole.LastFret);
            parts.Select(p => p.Caption).ShouldBe(["C major", .. Enumerable.Repeat("", parts.Length - 1)]);
        }
        NeckParts.Of(NeckDiagrams.Scale(Guitar, Scale.Parse("C major"), 0, 22), style).Select(p => p.LastFret).ShouldBe([12, 22]);
        NeckParts.Of(NeckDiagrams.Scale(Guitar, Scale.Parse("C major"), 0, 22), Style).ShouldHaveSingleItem();
    }

    [Fact]
    public void Necks_stand_under_each_other_in_rows_that_are_alike()
    {
        var diagrams = Enumerable.Range(0, 7).Select(i => NeckDiagrams.ChordTones(SampleHandout.Bass, Chord.Parse("Cm7"), 2 + i, 5 + i)).ToImmutableArray();
        var rows = DiagramRows.Make(diagrams, Style);
        rows.Select(r => r.Drawings.Length).ShouldBe([3, 2, 2]);
        rows[1].Drawings[1].X.ShouldBe(rows[0].Drawings[1].X, 1e-9);
        DiagramRows.Make(diagrams[..4], Style).Select(r => r.Drawings.Length).ShouldBe([2, 2]);
    }

    // The second column has dots before the nut, the first has none.
    [Fact]
    public void Necks_begin_at_the_margin_where_nothing_stands_before_those_of_the_first_column()
    {
        var diagrams = Enumerable.Range(0, 4).Select(i => NeckDiagrams.ChordTones(SampleHandout.Bass, Chord.Parse("Cm7"), i % 2 == 0 ? 1 : 0, 4)).ToImmutableArray();
        diagrams[1].Dots.ShouldContain(d => d.Position.Fret == 0);
        var rows = DiagramRows.Make(diagrams, Style);
        rows.Select(r => r.Drawings.Length).ShouldBe([2, 2]);
        foreach (var row in rows)
        {
            Ink(row).Left.ShouldBe(0, 1e-6);
            row.Drawings[1].X.ShouldBe(rows[0].Drawings[1].X, 1e-9);
            row.Drawings[0].X.ShouldBe(0, 1e-9);
        }
    }

    [Fact]
    public void Figures_in_a_row_do_not_touch()
    {
        var guitar = InstrumentCatalogue.Find("guitar-6")!;
        var diagrams = Enumerable.Range(0, 9).Select(i => NeckDiagrams.Shape(guitar, [new(5, 3 + i), new(4, 5 + i), new(3, 3 + i)], Chord.Parse("C7"), upright: true) with { Caption = "a caption of several words" }).ToImmutableArray();
        foreach (var row in DiagramRows.Make(diagrams, Style))
        {
            var boxes = row.Drawings.Select(d => d.Drawing.Bounds.Transform(1, d.X, d.Y)).ToList();
            for (var i = 1; i < boxes.Count; i++) boxes[i].Left.ShouldBeGreaterThan(boxes[i - 1].Right + 2);
        }
    }

    [Fact]
    public void The_legend_explains_the_shapes_in_use_and_no_others()
    {
        var diagrams = ImmutableArray.Create(NeckDiagrams.ChordTones(SampleHandout.Bass, Chord.Parse("Cm7"), 3, 6));
        var words = DiagramRows.Legend(DiagramRows.Shapes(diagrams), new SheetLabels(), Style)!.Drawings.SelectMany(d => d.Drawing.Marks).OfType<TextMark>().Select(t => t.Run.Text);
        words.ShouldBe(["root", "chord tone"]);
        DiagramRows.Legend([], new SheetLabels(), Style).ShouldBeNull();
    }

    private static Box Ink(FlowBox box)
    {
        var ink = Box.Empty;
        foreach (var d in box.Drawings) foreach (var mark in d.Drawing.Marks) if (mark.Ink > 0) ink = ink.Union(mark.Bounds.Transform(d.Scale, d.X, d.Y));
        return ink;
    }

    // A stretch of the neck where a scale has no note at all.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_neck_without_dots_is_drawn(bool upright)
    {
        var empty = new NeckDiagram { Instrument = Guitar, FirstFret = 4, LastFret = 4, Upright = upright, Caption = "nothing here" };
        DiagramRows.Make([empty], Style).ShouldHaveSingleItem().Drawings.ShouldHaveSingleItem();
    }

    // Common practice: grips side by side show the same number of frets, and what stands under them is level.
    [Fact]
    public void Upright_diagrams_side_by_side_end_level()
    {
        static NeckDiagram Grip(int first, int last) => NeckDiagrams.ChordTones(Guitar, Chord.Parse("Em7"), first, last) with { Upright = true, EvenFrets = true, Caption = "grip" };
        double[] Bottoms(params NeckDiagram[] diagrams) => [.. DiagramRows.Make([.. diagrams], Style).ShouldHaveSingleItem().Drawings.Select(d => d.Y + d.Drawing.Marks.OfType<TextMark>().Max(m => m.Bounds.Bottom))];
        var bottoms = Bottoms(Grip(1, 4), Grip(5, 9), Grip(7, 10));
        bottoms.Max().ShouldBe(bottoms.Min(), 0.01);
        // None is drawn out to twice what it shows, or beyond the neck.
        bottoms = Bottoms(Grip(1, 4), Grip(1, 12));
        bottoms[0].ShouldBeLessThan(bottoms[1] - 10);
        bottoms = Bottoms(Grip(1, 5), Grip(Guitar.PlayableFrets - 3, Guitar.PlayableFrets));
        bottoms[1].ShouldBeLessThan(bottoms[0] - 2);
    }
}
