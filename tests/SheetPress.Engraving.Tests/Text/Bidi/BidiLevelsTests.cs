using System.Globalization;
using System.Text;

namespace SheetPress.Engraving.Tests;

/// <summary>Levels and order as in the conformance data of the Unicode bidirectional algorithm.</summary>
public class BidiLevelsTests
{
    // Where Debian's package "unicode-data" puts it.
    private const string ConformanceFile = "/usr/share/unicode/BidiCharacterTest.txt";

    // Lines of BidiCharacterTest.txt of the Unicode character database 15.0: text, direction of the paragraph (2: by its first strong
    // character), levels, order from left to right.
    [Theory]
    [InlineData("0028 0031 0029 0061", 0, "0 0 0 0", "0 1 2 3")]
    [InlineData("0028 0031 0029 0061", 1, "1 2 1 2", "3 2 1 0")]
    [InlineData("0028 005B 05D0 0061 2680 0029 005D 2681", 1, "1 1 1 2 1 1 1 1", "7 6 5 4 3 2 1 0")]
    [InlineData("0028 0061 0028 2680 005B 2681 0029 2682 005D", 0, "0 0 0 0 0 0 0 0 0", "0 1 2 3 4 5 6 7 8")]
    [InlineData("0028 0061 0029 0661", 0, "0 0 0 2", "0 1 2 3")]
    [InlineData("0028 0061 0029 0661", 1, "1 2 1 2", "3 2 1 0")]
    [InlineData("0028 0061 05D0 0029 2680 005B 005D 0062", 1, "1 2 1 1 1 1 1 2", "7 6 5 4 3 2 1 0")]
    [InlineData("0028 05D0 0028 0061 005B 005D 0029 2680 05D1", 1, "1 1 1 2 1 1 1 1 1", "8 7 6 5 4 3 2 1 0")]
    [InlineData("0028 05D0 0029 0031", 0, "0 1 0 2", "0 1 2 3")]
    [InlineData("0028 05D0 0029 0661", 0, "0 1 0 2", "0 1 2 3")]
    [InlineData("0028 05D0 0627 0029 0020 0031 002D 0032", 1, "1 1 1 1 1 2 1 2", "7 6 5 4 3 2 1 0")]
    [InlineData("0028 0627 0029 0020 0031 002A 0032", 0, "0 1 0 0 2 1 2", "0 1 2 3 6 5 4")]
    [InlineData("0028 0627 0029 0661", 1, "1 1 1 2", "3 2 1 0")]
    [InlineData("0028 0627 0029 06F1", 1, "1 1 1 2", "3 2 1 0")]
    [InlineData("0028 0627 05D0 0029 0020 0031 002D 0032", 0, "0 1 1 0 0 2 2 2", "0 2 1 3 4 5 6 7")]
    [InlineData("0028 0661 0029 05D0", 0, "0 2 0 1", "0 1 2 3")]
    [InlineData("0028 0661 0029 05D0", 1, "1 2 1 1", "3 2 1 0")]
    [InlineData("0028 0661 0029 0627", 0, "0 2 0 1", "0 1 2 3")]
    [InlineData("0028 2680 0061 2681 0028 0029 0029 2682", 1, "1 1 2 1 1 1 1 1", "7 6 5 4 3 2 1 0")]
    [InlineData("0031 0028 0061 0029", 0, "0 0 0 0", "0 1 2 3")]
    [InlineData("0061 0020 0031 0020 0032 002D 0033", 1, "2 2 2 2 2 2 2", "0 1 2 3 4 5 6")]
    [InlineData("0061 0020 3008 0062 002E 0031 232A", 1, "2 2 2 2 2 2 2", "0 1 2 3 4 5 6")]
    [InlineData("0061 0028 0028 0029 0029 0062", 0, "0 0 0 0 0 0", "0 1 2 3 4 5")]
    [InlineData("0061 0028 0062 2680 0029 005D 2681", 0, "0 0 0 0 0 0 0", "0 1 2 3 4 5 6")]
    [InlineData("05D0 0028 0028 05D1 005B 2680 005D 2681 0029", 1, "1 1 1 1 1 1 1 1 1", "8 7 6 5 4 3 2 1 0")]
    [InlineData("05D0 0028 0028 05D1 0061 005B 2680 005D 0029", 1, "1 1 1 1 2 1 1 1 1", "8 7 6 5 4 3 2 1 0")]
    [InlineData("05D0 0028 0661 0029", 1, "1 1 2 1", "3 2 1 0")]
    [InlineData("05D0 0029 0028 0301 0031 0029", 0, "1 1 1 1 2 1", "5 4 3 2 1 0")]
    [InlineData("05D0 05D1 05D2 0020 0028 0064 0065 0066 0020 0627 0628 062C 0029 0020 0061 0062 0063", 1, "1 1 1 1 1 2 2 2 1 1 1 1 1 1 2 2 2", "14 15 16 13 12 11 10 9 8 5 6 7 4 3 2 1 0")]
    [InlineData("0627 0028 0661 0029", 1, "1 1 2 1", "3 2 1 0")]
    [InlineData("062A 0031 002F 0032", 1, "1 2 2 2", "1 2 3 0")]
    [InlineData("0661 0028 0061 0029", 0, "2 0 0 0", "0 1 2 3")]
    [InlineData("0661 002D 0031", 0, "2 0 0", "0 1 2")]
    [InlineData("06F1 0028 0627 0029", 0, "0 0 1 0", "0 1 2 3")]
    [InlineData("2680 0028 05D0 0028 0061 005B 0029 005D 05D1", 1, "1 1 1 1 2 1 1 1 1", "8 7 6 5 4 3 2 1 0")]
    public void Sample_of_the_conformance_test(string text, int direction, string levels, string order) => Check(text, direction, levels, order).ShouldBe("");

    // All lines of the same file but those with explicit formatting characters, which are not supported.
    [Fact]
    public void Whole_conformance_test()
    {
        Assert.SkipUnless(File.Exists(ConformanceFile), "The Unicode character database is not on this machine.");
        var (lines, wrong) = (0, new List<string>());
        foreach (var line in File.ReadLines(ConformanceFile))
        {
            var fields = line.Split(';');
            if (line.StartsWith('#') || fields.Length < 5 || Read(fields[0]).Any(c => c is (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069'))) continue;
            lines++;
            if (Check(fields[0], int.Parse(fields[1], CultureInfo.InvariantCulture), fields[3], fields[4]) is { Length: > 0 } problem) wrong.Add(problem);
        }
        wrong.ShouldBeEmpty(string.Join("\n", wrong.Take(10)));
        lines.ShouldBeGreaterThan(90_000);
    }

    // The class of every assigned character of Latin, Greek, Cyrillic, Armenian, Hebrew, Arabic, Syriac and Thaana, of the punctuation and
    // signs of all scripts, and of the forms for presentation, in the same database; accidentals and explicit formatting are another matter.
    [Fact]
    public void Classes_are_those_of_the_character_database()
    {
        const string file = "/usr/share/unicode/UnicodeData.txt";
        Assert.SkipUnless(File.Exists(file), "The Unicode character database is not on this machine.");
        var wrong = new List<string>();
        foreach (var fields in File.ReadLines(file).Select(l => l.Split(';')))
        {
            var code = int.Parse(fields[0], NumberStyles.HexNumber, CultureInfo.InvariantCulture);
            if (!IsCompared(code) || code is >= 0x266D and <= 0x266F || !Enum.TryParse<BidiClass>(fields[4], out var wanted)) continue;
            if (BidiClasses.Of(new Rune(code)) is var found && found != wanted) wrong.Add($"{code:X4} {fields[1]}: {found} instead of {wanted}");
        }
        wrong.ShouldBeEmpty(string.Join("\n", wrong.Take(200)));
    }

    private static bool IsCompared(int code) =>
        code is < 0x07C0 or (>= 0x0860 and < 0x0900) or (>= 0x2000 and < 0x2C00) or (>= 0x3000 and < 0x3040) or (>= 0xFB1D and < 0xFE00) or (>= 0xFE50 and < 0xFFF0);

    private static string Read(string codes) => string.Concat(codes.Split(' ').Select(c => char.ConvertFromUtf32(int.Parse(c, NumberStyles.HexNumber, CultureInfo.InvariantCulture))));

    private static string Check(string codes, int direction, string levels, string order)
    {
        var text = Read(codes);
        var found = BidiLevels.Of(text, direction == 2 ? BidiLevels.BaseLevel(text) : (byte)direction);
        // Surrogate pairs have one level; what the standard leaves out ("x") is not compared.
        var starts = Enumerable.Range(0, text.Length).Where(i => !char.IsLowSurrogate(text[i])).ToArray();
        var wanted = levels.Split(' ');
        var shown = string.Join(' ', starts.Select((at, i) => wanted[i] == "x" ? "x" : found[at].ToString(CultureInfo.InvariantCulture)));
        if (shown != levels) return $"{codes} in direction {direction}: levels {shown} instead of {levels}";
        var kept = Enumerable.Range(0, starts.Length).Where(i => wanted[i] != "x").ToArray();
        var visual = BidiLevels.VisualOrder(kept.Select(i => found[starts[i]]).ToArray()).Select(i => kept[i]);
        return string.Join(' ', visual) == order ? "" : $"{codes}: order {string.Join(' ', visual)} instead of {order}";
    }
}
