namespace SheetPress.Lessons.Tests;

public class LikelyInstructionTests
{
    [Theory]
    [InlineData("modulate D", "key D")]
    [InlineData("Modulate to Eb major", "key Eb major")]
    [InlineData("transpose to the key of G", "key G")]
    [InlineData("key: D", "key D")]
    [InlineData("key=G minor", "key G minor")]
    [InlineData("new key F#m", "key F#m")]
    [InlineData("D major", "key D major")]
    [InlineData("tempo: 90", "tempo 90")]
    [InlineData("Tempo = 90", "tempo 90")]
    [InlineData("90 bpm", "tempo 90")]
    [InlineData("dotted quarter = 60", "tempo dotted quarter = 60")]
    [InlineData("quarter = dotted quarter", "tempo quarter = dotted quarter")]
    [InlineData("tempo: e = e", "tempo e = e")]
    [InlineData("meter 3/4", "3/4")]
    [InlineData("time signature: 6/8", "6/8")]
    [InlineData("3/4 time", "3/4")]
    [InlineData("common time", "4/4")]
    [InlineData("cut time", "2/2")]
    public void An_instruction_gets_its_proper_form(string text, string suggestion) => LikelyInstruction.In(text).ShouldNotBeNull().Suggestion.ShouldBe(suggestion);

    [Theory]
    [InlineData("x3", ":| x3")]
    [InlineData("3x", ":| x3")]
    [InlineData("4 times", ":| x4")]
    [InlineData("repeat 2", ":| x2")]
    [InlineData("repeat", ":|")]
    [InlineData("modulate", "[key D]")]
    [InlineData("bass clef", "line of your own")]
    public void What_is_written_otherwise_is_explained(string text, string advice)
    {
        var problem = LikelyInstruction.In(text).ShouldNotBeNull();
        problem.Severity.ShouldBe(Severity.Error);
        problem.Advice.ShouldContain(advice);
    }

    [Theory]
    [InlineData("rit.")]
    [InlineData("a tempo")]
    [InlineData("poco rit.")]
    [InlineData("Swing")]
    [InlineData("Half-time feel")]
    [InlineData("mf")]
    public void Words_of_manner_are_warned_of(string text) => LikelyInstruction.In(text).ShouldNotBeNull().Severity.ShouldBe(Severity.Warning);

    [Theory]
    [InlineData("A")]
    [InlineData("D")]
    [InlineData("A2")]
    [InlineData("Bb")]
    [InlineData("12")]
    [InlineData("Verse 2")]
    [InlineData("Bridge in D")]
    [InlineData("Time to rest")]
    [InlineData("Keys only")]
    [InlineData("Swingers")]
    [InlineData("Repeat of A")]
    [InlineData("Last time")]
    [InlineData("Dimmed")]
    public void Names_stay_rehearsal_marks(string text) => LikelyInstruction.In(text).ShouldBeNull();
}
