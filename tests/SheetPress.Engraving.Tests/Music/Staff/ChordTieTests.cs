namespace SheetPress.Engraving.Tests.Music.Staff;

/// <summary>Ties of chords, after the engraving handbooks (Read 1979, Gould 2011), from memory.</summary>
public class ChordTieTests
{
    private static List<CurveMark> Ties(EngravedSystem system) => [.. system.Of(MarkRole.Tie).OfType<CurveMark>().OrderByDescending(t => t.Start.Y)];

    private static bool IsAbove(CurveMark tie) => tie.Control1.Y < tie.Start.Y;

    private static bool IsIn(Point point, Box head)
    {
        var (dx, dy) = ((point.X - ((head.Left + head.Right) / 2)) / (head.Width / 2), (point.Y - ((head.Top + head.Bottom) / 2)) / (head.Height / 2));
        return (dx * dx) + (dy * dy) < 1;
    }

    /// <summary>Handbook rule, from memory: the ties of a second part, the upper one up and the lower one down.</summary>
    [Theory]
    [InlineData("D3+F3+A3+B3:5 r:3", "down down down up")]
    [InlineData("D3+E3+A3+C4:5 r:3", "down up up up")]
    [InlineData("C3+E3+G3+B3:5 r:3", "down down up up")]
    [InlineData("G3+A3:5 r:3", "down up")]
    [InlineData("E4+F4:5 r:3", "down up")]
    public void The_ties_of_a_second_part(string notes, string directions) =>
        string.Join(' ', Ties(Drawn.Staff(notes, "guitar-6")).Select(t => IsAbove(t) ? "up" : "down")).ShouldBe(directions);

    /// <summary>Handbook rule, from memory: a tie between the heads of a chord starts right of all heads beside it and ends left of them.</summary>
    [Theory]
    [InlineData("D3+F3+A3+B3")]
    [InlineData("D#3+E3+A3+B3")]
    [InlineData("D3+E3+G3+A3")]
    [InlineData("A3+B3+D4+E4")]
    [InlineData("E4+F4+A4+B4")]
    [InlineData("C3+D3+E3+B3")]
    public void No_tie_runs_through_a_head(string chord)
    {
        var system = Drawn.Staff($"r:7/2 {chord}:1 r:7/2", "guitar-6");
        var heads = system.Of(MarkRole.Notehead).Select(h => h.Bounds).ToList();
        var ties = Ties(system);
        ties.Count.ShouldBe(chord.Split('+').Length);
        foreach (var tie in ties)
        {
            for (var t = 0.0; t <= 1; t += 0.05) heads.ShouldNotContain(h => IsIn(tie.At(t), h), $"{chord} at {t:0.00}");
        }
    }
}
