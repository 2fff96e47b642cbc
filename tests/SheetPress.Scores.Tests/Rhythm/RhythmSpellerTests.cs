namespace SheetPress.Scores.Tests;

/// <summary>Each row is a bar as an engraver would write it; the rule it shows is one of the engraving handbooks (Read, Gould), from memory.</summary>
public class RhythmSpellerTests
{
    [Theory]
    // Plain values.
    [InlineData("4", "1")]
    [InlineData("2 2", "2 2")]
    [InlineData("1 1 1 1", "4 4 4 4")]
    [InlineData("3 1", "2. 4")]
    [InlineData("3/2 1/2 3/2 1/2", "4. 8 4. 8")]
    [InlineData("3/4 1/4 1/2 1/4 1/4 2", "8. 16 8 16 16 2")]
    // The middle of the bar is seen.
    [InlineData("1 2 1", "4 4~4 4")]
    [InlineData("1 3", "4 4~2")]
    [InlineData("1 3/2 3/2", "4 4~8 4.")]
    [InlineData("3/2 1 3/2", "4. 8~8 4.")]
    [InlineData("7/2 1/2", "2~4. 8")]
    [InlineData("5/2 3/2", "2~8 4.")]
    [InlineData("1/2 7/2", "8 4.~2")]
    // Syncopations inside half a bar are kept.
    [InlineData("1/2 1 1/2 1/2 1 1/2", "8 4 8 8 4 8")]
    [InlineData("1/2 1 1 1 1/2", "8 4 8~8 4 8")]
    [InlineData("1/2 3/2 1/2 3/2", "8 4. 8 4.")]
    [InlineData("1/4 1/2 1/4 1 2", "16 8 16 4 2")]
    [InlineData("1/4 1/2 1/2 1/2 1/4 2", "16 8 16~16 8 16 2")]
    // Finer syncopations show the beat.
    [InlineData("1/2 3/4 3/4 2", "8 8~16 8. 2")]
    [InlineData("3/4 3/4 1/2 2", "8. 16~8 8 2")]
    [InlineData("1/4 1 3/4 2", "16 8.~16 8. 2")]
    [InlineData("3/4 1 1/4 2", "8. 16~8. 16 2")]
    [InlineData("5/4 3/4 2", "4~16 8. 2")]
    // Double dots where they fill a half bar or a beat.
    [InlineData("7/4 1/4 2", "4.. 16 2")]
    [InlineData("7/8 1/8 1 2", "8.. 32 4 2")]
    public void Spells_four_four(string lengths, string expected) => RhythmText.Spell("4/4", lengths).ShouldBe(expected);

    [Theory]
    [InlineData("2/4", "1/2 1 1/2", "8 4 8")]
    [InlineData("2/4", "3/2 1/2", "4. 8")]
    [InlineData("2/2", "1 2 1", "4 2 4")]
    [InlineData("2/2", "7/2 1/2", "2.. 8")]
    [InlineData("3/4", "3", "2.")]
    [InlineData("3/4", "1 2", "4 2")]
    [InlineData("3/4", "3/2 3/2", "4. 8~4")]
    [InlineData("3/4", "1/2 1 3/2", "8 4 8~4")]
    [InlineData("3/4", "1/2 2 1/2", "8 8~4. 8")]
    [InlineData("3/4", "5/2 1/2", "2~8 8")]
    [InlineData("3/4", "1/2 3/2 1", "8 4. 4")]
    [InlineData("3/2", "2 4", "2 1")]
    [InlineData("4/2", "8", "1~1")]
    [InlineData("4/2", "6 2", "1. 2")]
    public void Spells_simple_meters(string meter, string lengths, string expected) => RhythmText.Spell(meter, lengths).ShouldBe(expected);

    [Theory]
    [InlineData("6/8", "3", "2.")]
    [InlineData("6/8", "3/2 3/2", "4. 4.")]
    [InlineData("6/8", "1 1/2 1/2 1", "4 8 8 4")]
    [InlineData("6/8", "2 1", "4.~8 4")]
    [InlineData("6/8", "1 1 1", "4 8~8 4")]
    [InlineData("6/8", "1/2 5/2", "8 4~4.")]
    [InlineData("6/8", "3/4 3/4 3/2", "8. 8. 4.")]
    [InlineData("6/8", "1/4 1/2 1/4 1/2 3/2", "16 8 16 8 4.")]
    [InlineData("6/8", "3/8 3/8 3/8 3/8 3/2", "16. 16. 16. 16. 4.")]
    [InlineData("6/8", "3/8 3/4 3/8 3/2", "16. 8. 16. 4.")]
    [InlineData("9/8", "9/2", "2.~4.")]
    [InlineData("9/8", "3/2 3", "4. 2.")]
    [InlineData("9/8", "4 1/2", "2.~4 8")]
    [InlineData("12/8", "6", "1.")]
    [InlineData("12/8", "3/2 3 3/2", "4. 4.~4. 4.")]
    [InlineData("12/8", "9/2 3/2", "2.~4. 4.")]
    [InlineData("6/4", "3 3", "2. 2.")]
    [InlineData("6/4", "2 2 2", "2 4~4 2")]
    [InlineData("3/8", "3/2", "4.")]
    public void Spells_compound_meters(string meter, string lengths, string expected) => RhythmText.Spell(meter, lengths).ShouldBe(expected);

    [Theory]
    [InlineData("5/4", "5", "2.~2")]
    [InlineData("5/4 2+3", "5", "2~2.")]
    [InlineData("5/4", "2 2 1", "2 4~4 4")]
    [InlineData("7/8", "7/2", "2~4.")]
    [InlineData("7/8 3+2+2", "7/2", "4.~2")]
    [InlineData("7/8", "3/2 2", "4~8 8~4.")]
    [InlineData("5/8", "1 1 1/2", "4 8~8 8")]
    [InlineData("8/8 3+3+2", "3/2 3/2 1", "4. 4. 4")]
    [InlineData("8/8 3+3+2", "1 1 1 1", "4 8~8 4 4")]
    [InlineData("7/4", "1 2 1 3", "4 4~4 4 2.")]
    public void Spells_mixed_meters(string meter, string lengths, string expected) => RhythmText.Spell(meter, lengths).ShouldBe(expected);

    [Theory]
    // Rests keep to the beats, take no syncopation, and no dots in simple time.
    [InlineData("4/4", "1 r3", "4 r4 r2")]
    [InlineData("4/4", "1 r2 1", "4 r4 r4 4")]
    [InlineData("4/4", "r3 1", "r2 r4 4")]
    [InlineData("4/4", "1/2 r1 1/2 2", "8 r8 r8 8 2")]
    [InlineData("4/4", "1/4 r3/4 3", "16 r16 r8 4~2")]
    [InlineData("4/4", "r3/4 1/4 3", "r8 r16 16 4~2")]
    [InlineData("4/4", "r1/2 3/2 2", "r8 4. 2")]
    [InlineData("3/4", "1 r2", "4 r4 r4")]
    [InlineData("3/4", "r2 1", "r4 r4 4")]
    [InlineData("6/8", "3/2 r3/2", "4. r4.")]
    [InlineData("6/8", "r1 1/2 3/2", "r4 8 4.")]
    [InlineData("6/8", "1/2 r1 3/2", "8 r8 r8 4.")]
    [InlineData("9/8", "3/2 r3", "4. r4. r4.")]
    [InlineData("12/8", "3 r3", "2. r2.")]
    [InlineData("5/4", "r3 2", "r4 r4 r4 2")]
    [InlineData("7/8", "r2 3/2", "r4 r4 4.")]
    public void Spells_rests(string meter, string lengths, string expected) => RhythmText.Spell(meter, lengths).ShouldBe(expected);

    [Theory]
    [InlineData("4/4", "1/3 1/3 1/3 3", "[3:2 8 8 8] 4~2")]
    [InlineData("4/4", "2/3 1/3 2/3 1/3 2", "[3:2 4 8] [3:2 4 8] 2")]
    [InlineData("4/4", "2/3 2/3 2/3 2", "[3:2 4 4 4] 2")]
    [InlineData("4/4", "4/3 4/3 4/3", "[3:2 2 2 2]")]
    [InlineData("4/4", "1 2/3 2/3 2/3 1", "4 [3:2 4 8]~[3:2 8 4] 4")]
    [InlineData("3/4", "1 2/3 2/3 2/3", "4 [3:2 4 4 4]")]
    // A note held out of a triplet is tied to the beat.
    [InlineData("4/4", "1/3 1/3 4/3 2", "[3:2 8 8 8]~4 2")]
    [InlineData("4/4", "1/3 1/3 r4/3 2", "[3:2 8 8 r8] r4 2")]
    [InlineData("4/4", "r1/3 1/3 1/3 3", "[3:2 r8 8 8] 4~2")]
    [InlineData("4/4", "1/3 r1/3 1/3 3", "[3:2 8 r8 8] 4~2")]
    [InlineData("4/4", "1/3 r2/3 3", "[3:2 8 r4] 4~2")]
    [InlineData("4/4", "1/3 1/3 2/3 1/3 1/3 2", "[3:2 8 8 8]~[3:2 8 8 8] 2")]
    [InlineData("4/4", "5/3 1/3 2", "4~[3:2 4 8] 2")]
    [InlineData("4/4", "1/3 1/3 1/2 1/3 1/6 1/6 1/6 2", "[3:2 8 8 8]~[6:4 16 8 16 16 16] 2")]
    [InlineData("4/4", "1 2/3 2/3 r1/3 1/6 7/6", "4 [3:2 4 8]~[3:2 8 r8 16 16]~4")]
    [InlineData("7/8", "r4/3 7/6 1", "r4 [3:2 r8 4]~8 4")]
    // Over the middle of the bar a triplet of quarters reads better than a sextuplet that begins between beats.
    [InlineData("6/8", "2/3 2/3 2/3 1/2 1/2", "[3:2 4 4 4] 8 8")]
    [InlineData("6/8", "2/3 2/3 5/3", "[3:2 4 4 4]~4")]
    [InlineData("4/4", "1 2/7 r2/7 2/7 r8/7 1", "4 [7:4 8 r8 8 r16] r4 4")]
    // Sixteenth triplets, sextuplets, divided triplets.
    [InlineData("4/4", "1/2 1/6 1/6 1/6 3", "8 [3:2 16 16 16] 4~2")]
    [InlineData("4/4", "1/6 1/6 1/6 1/6 1/6 1/6 3", "[6:4 16 16 16 16 16 16] 4~2")]
    [InlineData("4/4", "1/3 1/6 1/6 1/3 3", "[3:2 8 16 16 8] 4~2")]
    [InlineData("4/4", "1/6 1/6 1/3 1/3 3", "[3:2 16 16 8 8] 4~2")]
    [InlineData("4/4", "2/3 1/6 1/6 3", "[3:2 4 16 16] 4~2")]
    [InlineData("4/4", "1/6 1/3 1/6 1/3 3", "[6:4 16 8 16 8] 4~2")]
    [InlineData("4/4", "1/2 1/3 1/3 1/3 1/2 2", "8 [3:2 8 8 8] 8 2")]
    // Five, seven.
    [InlineData("4/4", "1/5 1/5 1/5 1/5 1/5 3", "[5:4 16 16 16 16 16] 4~2")]
    [InlineData("4/4", "2/5 2/5 2/5 2/5 2/5 2", "[5:4 8 8 8 8 8] 2")]
    [InlineData("4/4", "1/7 1/7 1/7 1/7 1/7 1/7 1/7 3", "[7:4 16 16 16 16 16 16 16] 4~2")]
    [InlineData("6/8", "3/10 3/10 3/10 3/10 3/10 3/2", "[5:3 8 8 8 8 8] 4.")]
    [InlineData("6/8", "1/6 1/6 1/6 1 3/2", "[3:2 16 16 16] 4 4.")]
    // Nested once: a triplet of eighths inside a triplet of quarters.
    [InlineData("4/4", "2/3 2/9 2/9 2/9 2/3 2", "[3:2 4 [3:2 8 8 8] 4] 2")]
    public void Finds_tuplets(string meter, string lengths, string expected) => RhythmText.Spell(meter, lengths).ShouldBe(expected);

    [Theory]
    // A pickup fills the end of a bar, so its beats are those of the bar's end.
    [InlineData("4/4", "1/2 1 1/2", "2", "8 4 8")]
    [InlineData("4/4", "2", "2", "2")]
    [InlineData("4/4", "5/2", "3/2", "8~2")]
    [InlineData("6/8", "1", "2", "4")]
    [InlineData("3/4", "1/2 1", "3/2", "8 4")]
    public void Spells_parts_of_a_measure(string meter, string lengths, string offset, string expected) => RhythmText.Spell(meter, lengths, offset).ShouldBe(expected);

    [Theory]
    [InlineData("1/11 43/11")]
    [InlineData("1/32 127/32")]
    [InlineData("1/27 107/27")]
    public void Refuses_what_cannot_be_written(string lengths) => Should.Throw<UnwritableRhythmException>(() => RhythmText.Spell("4/4", lengths));
}
