using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

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

    // Of two slashes with a dot the head says whether they are dotted quarters or dotted halves.
    [Theory]
    [InlineData("6/8", "noteheadSlashHorizontalEnds")]
    [InlineData("6/4", "noteheadSlashWhiteHalf")]
    [InlineData("2/2", "noteheadSlashHorizontalEnds")]
    public void A_dotted_slash_has_the_head_of_its_value(string meter, string head)
    {
        var system = Drawn.System(ScoreText.Parse("E2:6", meter: meter, layout: StaffLayout.ChordChart));
        system.Of(MarkRole.Notehead).OfType<GlyphMark>().Select(m => m.Glyph.Name).Distinct().ShouldBe([head]);
    }

    // A pickup with a chord is to be filled like the other bars, not silent; without one its rest has the length of the pickup.
    [Theory]
    [InlineData("F7", "noteheadSlashHorizontalEnds", "")]
    [InlineData(null, "", "restQuarter")]
    public void A_silent_pickup_shows_what_is_expected(string? chord, string head, string rest)
    {
        var harmonies = chord is null ? ImmutableArray<HarmonyMark>.Empty : [new HarmonyMark(0, Chord.Parse(chord))];
        var score = ScoreText.Parse("r:1 E2:4", layout: StaffLayout.ChordChart, frame: (i, m) => i == 0 ? m with { Length = 1, Harmonies = harmonies } : m);
        var system = Drawn.System(score);
        string.Join(' ', system.Of(MarkRole.Notehead).OfType<GlyphMark>().Where(m => m.Origin.Measure == 0).Select(m => m.Glyph.Name)).ShouldBe(head);
        string.Join(' ', system.Of(MarkRole.Rest).OfType<GlyphMark>().Select(m => m.Glyph.Name)).ShouldBe(rest);
    }
}
