using System.Collections.Immutable;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Reads degrees as teachers write them.</summary>
internal static class DegreeWords
{
    /// <summary>The highest number taken: three octaves above the root.</summary>
    public const int HighestNumber = 22;

    /// <summary>Reads "R", "5", "b7", "#11"; "n7" or "♮7" is the major or perfect size whatever the chord has.</summary>
    public static bool TryParse(string text, out DegreeRequest request)
    {
        request = default;
        if (text.Length == 0) return false;
        var natural = text.Length > 1 && text[0] is 'n' or '♮';
        if (natural && !char.IsAsciiDigit(text[1])) return false;
        if (!Degree.TryParse(natural ? text[1..] : text, out var degree) || degree.Number > HighestNumber) return false;
        request = new DegreeRequest(degree, natural || degree.Alteration != 0);
        return true;
    }

    /// <summary>Reads a list that this program itself wrote.</summary>
    /// <exception cref="FormatException">A word is no degree.</exception>
    public static ImmutableArray<DegreeRequest> ParseList(string text)
    {
        var degrees = ImmutableArray.CreateBuilder<DegreeRequest>();
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            degrees.Add(TryParse(word, out var degree) ? degree : throw new FormatException($"'{word}' is no degree."));
        }
        return degrees.ToImmutable();
    }
}
