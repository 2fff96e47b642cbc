namespace SheetPress.Engraving.Tests.Lint;

/// <summary>What belongs together may touch; what only stands beside it may not.</summary>
public class InkRelationsTests
{
    private static GlyphMark Head(int index, double x, int voice = 0) =>
        Ink.At("noteheadBlack", x, 2, MarkRole.Notehead, new MarkOrigin(0, 0, 0, index) { Voice = voice });

    private static LineMark Ledger(int index, double x) => Ink.Level(x - 0.4, x + 1.6, 5, 0.16, MarkRole.LedgerLine, new MarkOrigin(0, 0, 0, index));

    private static LineMark Stem(int index, double x, int voice = 0) =>
        Ink.Upright(x, -1.5, 2, 0.12, MarkRole.Stem, new MarkOrigin(0, 0, 0, index) { Voice = voice });

    private static PolygonMark Beam(int index) =>
        new([new(0, -1.5), new(8, -1.5), new(8, -1), new(0, -1)]) { Role = MarkRole.Beam, Origin = new MarkOrigin(0, 0, 0, index) };

    [Fact]
    public void Heads_of_a_chord_touch_heads_of_neighbours_do_not()
    {
        InkRelations.MayTouch(Head(1, 0), Head(1, 1.1), 1).ShouldBeTrue();
        InkRelations.MayTouch(Head(1, 0), Head(2, 1.1), 1).ShouldBeFalse();
        InkRelations.MayTouch(Head(1, 0), Head(4, 1.1, voice: 1), 1).ShouldBeTrue();
        InkRelations.MayTouch(Head(1, 0), Head(4, 2.5, voice: 1), 1).ShouldBeFalse();
    }

    [Fact]
    public void Ledger_lines_of_neighbours_do_not_join()
    {
        InkRelations.MayTouch(Ledger(1, 0), Ledger(2, 1.9), 1).ShouldBeFalse();
        InkRelations.MayTouch(Ledger(1, 0), Head(2, 1.5), 1).ShouldBeFalse();
        InkRelations.MayTouch(Ledger(1, 0), Head(1, 0), 1).ShouldBeTrue();
    }

    [Fact]
    public void A_beam_carries_the_stems_of_its_voice_only()
    {
        InkRelations.MayTouch(Beam(1), Stem(2, 4), 1).ShouldBeTrue();
        InkRelations.MayTouch(Beam(1), Stem(0, 0), 1).ShouldBeFalse();
        InkRelations.MayTouch(Beam(1), Stem(2, 4, voice: 1), 1).ShouldBeFalse();
    }

    [Fact]
    public void Words_do_not_touch_the_staff()
    {
        var line = Ink.Level(0, 10, 0, 0.13, MarkRole.StaffLine, MarkOrigin.None);
        InkRelations.MayTouch(line, Head(0, 0), 1).ShouldBeTrue();
        InkRelations.MayTouch(line, LintSamples.Text("C7", 0, 0, 2, MarkRole.ChordSymbol), 1).ShouldBeFalse();
        InkRelations.MayTouch(line, LintSamples.Text("3", 0, 0, 2, MarkRole.Finger), 1).ShouldBeFalse();
    }

    [Fact]
    public void An_arc_starts_at_a_head_and_not_at_a_flag()
    {
        var origin = new MarkOrigin(0, 0, 0, 1);
        var flag = Ink.At("flag8thUp", 1.1, -1.5, MarkRole.Flag, origin);
        foreach (var role in (MarkRole[])[MarkRole.Tie, MarkRole.Slur])
        {
            var arc = Arc.Of(new(0.8, 1.2), new(4, 1.2), 0.6, above: true, role, origin);
            InkRelations.MayTouch(arc, Head(1, 0), 1).ShouldBeTrue();
            InkRelations.MayTouch(arc, flag, 1).ShouldBeFalse();
            InkRelations.MayTouch(flag, arc, 1).ShouldBeFalse();
        }
    }

    [Fact]
    public void A_tie_ends_beside_a_stem_and_not_behind_it()
    {
        var stem = Stem(1, 4);
        CurveMark To(double x, MarkRole role) => Arc.Of(new(1, 1.6), new(x, 1.6), 0.6, above: false, role, new MarkOrigin(0, 0, 0, 0));
        InkRelations.MayTouch(To(3.85, MarkRole.Tie), stem, 1).ShouldBeTrue();
        InkRelations.MayTouch(To(4.1, MarkRole.Tie), stem, 1).ShouldBeTrue();
        InkRelations.MayTouch(To(4.35, MarkRole.Tie), stem, 1).ShouldBeFalse();
        InkRelations.MayTouch(stem, To(4.35, MarkRole.Tie), 1).ShouldBeFalse();
    }

    [Fact]
    public void Two_diagrams_do_not_touch()
    {
        static Mark Fret(int figure) => Ink.Upright(3, 0, 20, 0.1, MarkRole.Diagram, MarkOrigin.None with { Event = figure });
        InkRelations.MayTouch(Fret(0), Fret(0), 1).ShouldBeTrue();
        InkRelations.MayTouch(Fret(0), Fret(1), 1).ShouldBeFalse();
    }
}
