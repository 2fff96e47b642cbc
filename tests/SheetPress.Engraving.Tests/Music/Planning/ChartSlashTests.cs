using SheetPress.Scores;

namespace SheetPress.Engraving.Tests;

public class ChartSlashTests
{
    // Handbook rule, from memory: a slash a beat, in compound meters with the dot of the beat.
    [Theory]
    [InlineData("4/4", 4, 0)]
    [InlineData("3/4", 3, 0)]
    [InlineData("5/8", 5, 0)]
    [InlineData("6/8", 2, 2)]
    [InlineData("12/8", 4, 4)]
    [InlineData("6/4", 2, 2)]
    public void A_bar_to_be_filled_shows_its_beats(string meter, int slashes, int dots)
    {
        var length = meter.EndsWith('8') ? $"{meter[..^2]}/2" : meter[..^2];
        var system = Drawn.System(ScoreText.Parse($"E2:{length}", meter: meter, layout: StaffLayout.ChordChart));
        system.Of(MarkRole.Notehead).Count.ShouldBe(slashes);
        system.Of(MarkRole.Dot).Count.ShouldBe(dots);
        system.Of(MarkRole.Stem).ShouldBeEmpty();
    }
}
