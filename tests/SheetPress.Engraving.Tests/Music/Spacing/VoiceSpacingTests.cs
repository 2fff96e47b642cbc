using SheetPress.Scores;

namespace SheetPress.Engraving.Tests.Music.Spacing;

/// <summary>Notes of one voice in a row, on lines so narrow that they stand as near to each other as they may.</summary>
public class VoiceSpacingTests
{
    /// <summary>Handbook rule, from memory: notes that follow each other stand side by side, however far they leap.</summary>
    [Theory]
    [InlineData("C3:1/8 E1:1/8 C#3:1/4 F#1:1/8 D3:1/8 Eb1:1/4 ")]
    [InlineData("E1:1/4 C#3:1/8 E1:1/8 C3:1/8 F#1:1/8 D#3:1/4 ")]
    public void A_note_does_not_stand_under_the_one_before(string figure)
    {
        var score = ScoreText.Parse(string.Concat(Enumerable.Repeat(figure, 4)), layout: StaffLayout.Staff);
        var narrow = 0;
        for (var width = 34; width <= 60; width += 2)
        {
            foreach (var system in ScoreEngraver.Engrave(score, width, new EngravingOptions()).Systems)
            {
                if (system.StretchRatio is < SystemLint.LeastStretch or > SystemLint.MostStretch) continue;
                if (system.StretchRatio < 1) narrow++;
                var heads = system.Of(MarkRole.Notehead);
                for (var i = 1; i < heads.Count; i++) heads[i].Bounds.Left.ShouldBeGreaterThan(heads[i - 1].Bounds.Right, $"note {i} at width {width}");
            }
        }
        narrow.ShouldBeGreaterThan(0);
    }

    /// <summary>Own rule: with less white a sign would be read with the figure before it, "5 ♭7" as "5♭ 7".</summary>
    [Fact]
    public void Degrees_under_short_notes_stand_apart()
    {
        var score = ScoreText.Parse(string.Concat(Enumerable.Repeat("Gb2%b5:1/4 Bb2%b7:1/4 Eb2%b3:1/4 G2%5:1/4 ", 8)), header: h => h with { ShowDegrees = true });
        var met = 0;
        for (var width = 50; width <= 80; width += 10)
        {
            foreach (var system in ScoreEngraver.Engrave(score, width, new EngravingOptions()).Systems)
            {
                if (system.IsOverfull) continue;
                var degrees = system.Of(MarkRole.DegreeName).GroupBy(m => (m.Origin.Measure, m.Origin.Event)).Select(g => Box.Around(g.Select(m => m.Bounds))).OrderBy(b => b.Left).ToList();
                for (var i = 1; i < degrees.Count; i++) (degrees[i].Left - degrees[i - 1].Right).ShouldBeGreaterThan(0.69, $"degree {i} at width {width}");
                met += degrees.Count;
            }
        }
        met.ShouldBeGreaterThan(30);
    }
}
