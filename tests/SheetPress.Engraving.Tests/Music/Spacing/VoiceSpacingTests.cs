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
}
