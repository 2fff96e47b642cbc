using SheetPress.Scores;

namespace SheetPress.Engraving.Tests.Music.Marks;

/// <summary>Degree names of two voices, each voice in a row of its own.</summary>
public class DegreeRowTests
{
    private static List<Mark> Row(EngravedSystem system, int voice) => [.. system.Of(MarkRole.DegreeName).Where(m => m.Origin.Voice == voice)];

    private static double Middle(Mark mark) => (mark.Bounds.Top + mark.Bounds.Bottom) / 2;

    [Theory]
    [InlineData(StaffLayout.Staff)]
    [InlineData(StaffLayout.StaffAndTab)]
    [InlineData(StaffLayout.Tab)]
    public void A_lone_degree_stands_in_the_row_of_its_voice(StaffLayout layout)
    {
        var system = Drawn.System(ScoreText.Parse("C4%R:1 D4%2:1/2 E4%3:1/2 r:1/2 D4%2:1/2 C4%R:1", "guitar-6", layout: layout, lower: "r:1/2 C3%R:3/2 G2%5:1 E3%3:1", header: h => h with { ShowDegrees = true }));
        var (upper, lower) = (Row(system, 0), Row(system, 1));
        upper.Select(m => ((TextMark)m).Run.Text).ShouldBe(["R", "2", "3", "2", "R"]);
        lower.Select(m => ((TextMark)m).Run.Text).ShouldBe(["R", "5", "3"]);
        upper.ShouldAllBe(m => Math.Abs(Middle(m) - Middle(upper[0])) < 0.1);
        lower.ShouldAllBe(m => Math.Abs(Middle(m) - Middle(lower[0])) < 0.1);
        upper.Max(m => m.Bounds.Bottom).ShouldBeLessThan(lower.Min(m => m.Bounds.Top));
        SystemLint.Check(system, 1.75).ShouldBeEmpty();
    }

    [Fact]
    public void Chords_of_both_voices_keep_their_rows_apart()
    {
        var system = Drawn.System(ScoreText.Parse("E4%3+G4%5:2 C4%R:2", "guitar-6", layout: StaffLayout.Staff, lower: "C3%R:1 C3%R+E3%3:1 G2%5:2", header: h => h with { ShowDegrees = true }));
        var (upper, lower) = (Row(system, 0), Row(system, 1));
        upper.Max(m => m.Bounds.Bottom).ShouldBeLessThan(lower.Min(m => m.Bounds.Top));
        // The lowest tone of each chord stands on the row that lone degrees have.
        Middle(upper[^1]).ShouldBe(upper.Max(Middle), 0.1);
        Middle(lower[0]).ShouldBe(lower.Max(Middle), 0.1);
    }

    // Two numbers close over each other would be read together.
    [Fact]
    public void Degrees_stand_well_below_the_fingers_of_a_lower_voice()
    {
        var system = Drawn.System(ScoreText.Parse("E4:4", "guitar-6", layout: StaffLayout.Staff, lower: "C3%R:1!f3 E3%3:1!f2 F2%4:1!f1 C3%R:1!f3", header: h => h with { ShowDegrees = true, ShowFingers = true }));
        var fingers = system.Of(MarkRole.Finger).ToList();
        fingers.Count.ShouldBe(4);
        foreach (var degree in Row(system, 1)) (degree.Bounds.Top - fingers.Single(f => f.Bounds.Left < degree.Bounds.Right && degree.Bounds.Left < f.Bounds.Right).Bounds.Bottom).ShouldBeGreaterThan(0.99);
    }
}
