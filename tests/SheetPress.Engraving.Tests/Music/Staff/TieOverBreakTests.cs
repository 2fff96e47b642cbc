using SheetPress.Scores;

namespace SheetPress.Engraving.Tests.Music.Staff;

/// <summary>Ties over the end of a line, after the engraving handbooks (Gould 2011, Read 1979), from memory.</summary>
public class TieOverBreakTests
{
    private const double Width = 60;

    private static EngravedSystem Second(StaffLayout layout)
    {
        var score = ScoreText.Parse("E2:4 F2:4 G2:4 A2:5 r:3 C3:4 D3:4", layout: layout, frame: (i, m) => i == 4 ? m with { BreakBefore = true } : m);
        return ScoreEngraver.Engrave(score, Width, new EngravingOptions()).Systems.First(s => s.FirstMeasure == 4);
    }

    /// <summary>Handbook rule, from memory: a tie over a line end is drawn in two halves, the second into the first note of the new line.</summary>
    [Theory]
    [InlineData(StaffLayout.Staff)]
    [InlineData(StaffLayout.StaffAndTab)]
    public void The_second_half_leads_into_the_first_note(StaffLayout layout)
    {
        var system = Second(layout);
        var tie = system.Of(MarkRole.Tie).ShouldHaveSingleItem();
        var head = system.Of(MarkRole.Notehead)[0].Bounds;
        tie.Bounds.Right.ShouldBeInRange(head.Left, head.Right);
        tie.Bounds.Width.ShouldBeGreaterThan(1);
        tie.Bounds.Left.ShouldBeGreaterThan(system.Of(MarkRole.Clef)[0].Bounds.Right);
        SystemLint.Check(system, 1.75).ShouldBeEmpty();
    }

    // Both ties of a chord, which lead to its heads from the left, keep clear of the key signature on narrow lines.
    [Fact]
    public void The_second_half_keeps_off_the_key_signature()
    {
        var score = ScoreText.Parse("D2+A2:1 E2:1 F#2:1 D2+A2:3/2 D2:1/4 E2:1/4 A2:1/2 B2:1/2 A2:1/4 B2:1/4 A2:1/2 D2+F#2:1/2 E2:1/4", key: "D major", layout: StaffLayout.Staff, frame: (i, m) => i == 1 ? m with { BreakBefore = true } : m);
        for (var width = 32; width <= 60; width++)
        {
            var system = ScoreEngraver.Engrave(score, width, new EngravingOptions()).Systems.First(s => s.FirstMeasure == 1);
            var key = system.Of(MarkRole.KeySignature).Max(m => m.Bounds.Right);
            system.Of(MarkRole.Tie).Take(2).Min(t => t.Bounds.Left - key).ShouldBeGreaterThan(0, $"at {width}");
        }
    }

    // What sounds on is said again, in brackets, where a line begins with it.
    [Fact]
    public void The_number_of_the_tied_note_stands_in_brackets_on_the_new_line() =>
        ((TextMark)Second(StaffLayout.StaffAndTab).Of(MarkRole.FretNumber)[0]).Run.Text.ShouldStartWith("(");
}
