namespace SheetPress.Lessons.Tests;

public class NearestWordTests
{
    private static readonly string[] Known = ["roots", "root-octave", "arpeggio", "scale-run", "key", "title"];

    [Theory]
    [InlineData("arpegio", "arpeggio")]
    [InlineData("apreggio", "arpeggio")]
    [InlineData("Roots", "roots")]
    [InlineData("root", "roots")]
    [InlineData("rootoctave", "root-octave")]
    [InlineData("kye", "key")]
    [InlineData("ttile", "title")]
    [InlineData("tempo", null)]
    [InlineData("zzz", null)]
    [InlineData("", null)]
    public void Finds_the_word_meant(string word, string? expected) => NearestWord.Find(word, Known).ShouldBe(expected);

    // Textbook values of the edit distance with swaps of neighbours (from memory).
    [Theory]
    [InlineData("", "abc", 3)]
    [InlineData("kitten", "sitting", 3)]
    [InlineData("ab", "ba", 1)]
    [InlineData("ca", "abc", 3)]
    [InlineData("same", "same", 0)]
    public void Counts_slips(string a, string b, int distance)
    {
        NearestWord.Distance(a, b).ShouldBe(distance);
        NearestWord.Distance(b, a).ShouldBe(distance);
    }
}
