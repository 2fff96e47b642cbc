namespace SheetPress.Engraving.Tests.Music.Planning;

/// <summary>Heads of chords and of two voices, after the engraving handbooks (Read 1979, Gould 2011), from memory.</summary>
public class ChordRulesTests
{
    /// <summary>Handbook rule, from memory: of a second the upper note stands right of the stem, whichever way it points.</summary>
    [Theory]
    [InlineData("E3+F#3:1")]
    [InlineData("B3+C#4:1")]
    public void Of_a_second_the_upper_note_stands_right(string chord)
    {
        var system = Drawn.Staff(chord + " r:3", "guitar-6", "E major");
        var heads = system.Glyphs(MarkRole.Notehead);
        heads[1].Position.Y.ShouldBeLessThan(heads[0].Position.Y);
        var stem = system.Of(MarkRole.Stem, 0).Single().Bounds;
        heads[0].Bounds.Right.ShouldBe(stem.Right, 0.02);
        heads[1].Bounds.Left.ShouldBe(stem.Left, 0.02);
    }

    /// <summary>Handbook rule, from memory: in a cluster every other head is displaced, from the bottom up when the stem is up, from the top down when it is down.</summary>
    [Fact]
    public void In_a_cluster_every_other_head_is_displaced()
    {
        ChordShape.Displaced([-4, -3, -2], StemDirection.Up).ShouldBe([false, true, false]);
        ChordShape.Displaced([2, 3, 4], StemDirection.Down).ShouldBe([false, true, false]);
        ChordShape.Displaced([0, 1, 4], StemDirection.Down).ShouldBe([true, false, false]);
        ChordShape.Displaced([0, 1, 4], StemDirection.Up).ShouldBe([false, true, false]);
        ChordShape.Displaced([-4, 0, 2], StemDirection.Up).ShouldBe([false, false, false]);
    }

    /// <summary>Handbook rule, from memory: two voices a second apart stand side by side, the lower one right; in unison they share a head.</summary>
    [Fact]
    public void Voices_a_second_apart_stand_side_by_side()
    {
        var second = Drawn.Staff("G3:1 r:3", "guitar-6", lower: "F3:1 r:3");
        var (upper, lower) = (second.Of(MarkRole.Notehead, 0).Single().Bounds, second.Of(MarkRole.Notehead, 0, voice: 1).Single().Bounds);
        lower.Left.ShouldBeGreaterThanOrEqualTo(upper.Right - MusicFont.Shipped.Defaults.StemThickness - 0.001);
        var unison = Drawn.Staff("G3:1 r:3", "guitar-6", lower: "G3:1 r:3");
        unison.Of(MarkRole.Notehead, 0).Single().Bounds.ShouldBe(unison.Of(MarkRole.Notehead, 0, voice: 1).Single().Bounds);
    }

    /// <summary>Handbook rule, from memory: of a unison that cannot share a head the dotted note stands right, so that its dot follows it.</summary>
    [Theory]
    [InlineData("G3:3/2 r:5/2", "G3:2 r:2", 0)]
    [InlineData("G3:2 r:2", "G3:3/2 r:5/2", 1)]
    public void Of_a_unison_the_dotted_note_stands_beside_its_dot(string upper, string lower, int dotted)
    {
        var system = Drawn.Staff(upper, "guitar-6", lower: lower);
        var dot = system.Of(MarkRole.Dot).First().Bounds;
        var own = system.Of(MarkRole.Notehead, 0, voice: dotted).Single().Bounds;
        var other = system.Of(MarkRole.Notehead, 0, voice: 1 - dotted).Single().Bounds;
        other.Right.ShouldBeLessThan(own.Left + MusicFont.Shipped.Defaults.StemThickness + 0.001);
        own.Right.ShouldBeLessThan(dot.Left);
        SystemLint.Check(system, 1.75).ShouldBeEmpty();
    }

    /// <summary>Handbook rule, from memory: dots of both voices stand under each other, behind the heads and the brackets of ghost notes.</summary>
    [Fact]
    public void A_dot_stands_behind_the_bracket_of_the_other_voice()
    {
        var system = Drawn.Staff("A3:3/2 r:5/2", "guitar-6", lower: "G3:2!gh r:2");
        var bracket = system.Glyphs(MarkRole.Notehead).Single(g => g.Glyph.Name == "noteheadParenthesisRight").Bounds;
        system.Of(MarkRole.Dot).First().Bounds.Left.ShouldBeGreaterThan(bracket.Right + 0.2);
        SystemLint.Check(system, 1.75).ShouldBeEmpty();
    }

    /// <summary>Common practice: a head is shared by two voices only if it says the same for both; brackets stand between heads side by side.</summary>
    [Theory]
    [InlineData("G3", "G3!gh")]
    [InlineData("G3!gh", "G3")]
    [InlineData("A3", "G3!gh")]
    [InlineData("F3!gh", "G3")]
    public void Brackets_of_one_voice_stand_off_the_heads_of_the_other(string upper, string lower)
    {
        string Note(string text) => text.Replace("3", "3:1", StringComparison.Ordinal);
        var system = Drawn.Staff(Note(upper) + " r:3", "guitar-6", lower: Note(lower) + " r:3");
        system.Glyphs(MarkRole.Notehead).Count(g => !g.Glyph.Name.Contains("Parenthesis", StringComparison.Ordinal)).ShouldBe(2);
        SystemLint.Check(system, 1.75).ShouldBeEmpty();
    }

    /// <summary>Handbook rule, from memory: in unison two dotted heads side by side have a dot each, one below the other; a head that is shared has one.</summary>
    [Theory]
    [InlineData("F3", "3", 2)]
    [InlineData("E3", "3", 2)]
    [InlineData("F3", "3/2", 1)]
    [InlineData("E3", "3/2", 1)]
    public void Dots_of_a_unison_are_as_many_as_its_heads(string pitch, string lower, int count)
    {
        var system = Drawn.Staff($"{pitch}:3/2 r:3/2", "guitar-6", meter: "6/8", lower: $"{pitch}:{lower}" + (lower == "3" ? "" : " r:3/2"));
        var dots = system.Of(MarkRole.Dot).Where(d => system.Of(MarkRole.Notehead).Any(h => h.Origin == d.Origin)).ToList();
        dots.Count.ShouldBe(count);
        SystemLint.Check(system, 1.75).ShouldBeEmpty();
    }

    /// <summary>Handbook rule, from memory: ledger lines are as far apart as staff lines and reach a little beyond the head on both sides.</summary>
    [Fact]
    public void Ledger_lines_reach_beyond_the_head()
    {
        var system = Drawn.Staff("C3:4");
        var head = system.Glyphs(MarkRole.Notehead).Single().Bounds;
        var ledgers = system.Of(MarkRole.LedgerLine);
        ledgers.Select(l => Math.Round((l.Bounds.Top + l.Bounds.Bottom) / 2, 3)).ShouldBe([-1.0]);
        ledgers[0].Bounds.Left.ShouldBe(head.Left - MusicFont.Shipped.Defaults.LegerLineExtension, 0.01);
        ledgers[0].Bounds.Right.ShouldBe(head.Right + MusicFont.Shipped.Defaults.LegerLineExtension, 0.01);
    }
}
