using SheetPress.Scores;

namespace SheetPress.Engraving.Tests.Music.Marks;

/// <summary>Brackets of endings.</summary>
public class EndingDrawerTests
{
    /// <summary>Handbook rule, from memory: a bracket reaches the barline that ends it, and those of neighbouring endings do not touch.</summary>
    [Theory]
    [InlineData(StaffLayout.ChordChart)]
    [InlineData(StaffLayout.Staff)]
    [InlineData(StaffLayout.StaffAndTab)]
    [InlineData(StaffLayout.Tab)]
    public void A_bracket_reaches_its_barline(StaffLayout layout)
    {
        var system = Drawn.System(ScoreText.Parse("E2:4 A2:4 E2:4", layout: layout, frame: (i, m) => i switch
        {
            0 => m with { RepeatStart = true },
            1 => m with { EndingStart = [1], EndingStop = true, EndingClosed = true, RepeatEndTimes = 2 },
            _ => m with { EndingStart = [2], EndingStop = true, EndingClosed = true },
        }));
        var lines = system.Of(MarkRole.Ending).Where(m => m is not TextMark).ToList();
        var first = Box.Around(lines.Where(m => m.Origin.Measure == 1).Select(m => m.Bounds));
        var second = Box.Around(lines.Where(m => m.Origin.Measure == 2).Select(m => m.Bounds));
        var barlines = system.Of(MarkRole.Barline).Where(m => m is not GlyphMark).Select(m => m.Bounds).Where(b => b.Left > first.Left + 2).ToList();
        var repeat = barlines.Where(b => b.Right < second.Left + 1).ToList();
        repeat.Min(b => b.Right).ShouldBe(first.Right, 0.1);
        (second.Left - first.Right).ShouldBeInRange(0.3, 1.5);
        barlines.Max(b => b.Right).ShouldBe(second.Right, 0.1);
    }

    /// <summary>The number of an ending is not read with the sign of an open string beside it: it stands over it.</summary>
    [Fact]
    public void The_number_stands_clear_of_the_diagram_below()
    {
        var mark = new HarmonyMark(0, Theory.Chord.Parse("E")) { Frame = [new FretPosition(3, 0), new FretPosition(1, 2)], FrameIsMap = true };
        var system = Drawn.System(ScoreText.Parse("E1:4 E1:4", frame: (i, m) => i == 0 ? m with { EndingStart = [1], EndingStop = true, EndingClosed = true, Harmonies = [mark] } : m));
        var number = system.Of(MarkRole.Ending).OfType<TextMark>().Single().Bounds;
        number.Bottom.ShouldBeLessThan(system.Of(MarkRole.Diagram).Min(m => m.Bounds.Top) - 0.3);
    }

    /// <summary>Handbook rule, from memory: a bracket that goes on in the next system stays open and runs to the end of its line.</summary>
    [Fact]
    public void An_open_bracket_runs_to_the_end_of_its_line()
    {
        var score = ScoreText.Parse(string.Concat(Enumerable.Repeat("E2:4 ", 3)), layout: StaffLayout.ChordChart, frame: (i, m) => i switch
        {
            0 => m with { EndingStart = [1] },
            1 => m with { BreakBefore = true },
            _ => m with { EndingStop = true, EndingClosed = true },
        });
        var system = ScoreEngraver.Engrave(score, 40, new EngravingOptions()).Systems[0];
        var bracket = system.Of(MarkRole.Ending).Where(m => m is not TextMark).ToList();
        bracket.Max(m => m.Bounds.Right).ShouldBe(system.Of(MarkRole.Barline).Max(m => m.Bounds.Right), 0.1);
        bracket.Count.ShouldBe(2);
    }
}
