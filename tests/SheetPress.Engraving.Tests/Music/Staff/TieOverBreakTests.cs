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

    // What sounds on is said again, in brackets, where a line begins with it.
    [Fact]
    public void The_number_of_the_tied_note_stands_in_brackets_on_the_new_line() =>
        ((TextMark)Second(StaffLayout.StaffAndTab).Of(MarkRole.FretNumber)[0]).Run.Text.ShouldStartWith("(");
}
