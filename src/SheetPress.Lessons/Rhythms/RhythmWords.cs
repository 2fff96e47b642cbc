using System.Collections.Immutable;

namespace SheetPress.Lessons;

/// <summary>Splits a written rhythm into words; "|" and "+" are words of their own even without blanks around them.</summary>
internal static class RhythmWords
{
    /// <summary>The words in order.</summary>
    public static ImmutableArray<LocatedText> Of(LocatedText text)
    {
        var words = ImmutableArray.CreateBuilder<LocatedText>();
        var start = -1;
        for (var i = 0; i <= text.Length; i++)
        {
            var isSign = i < text.Length && text.Value[i] is '|' or '+';
            var isGap = i == text.Length || isSign || text.Value[i] == ',' || char.IsWhiteSpace(text.Value[i]);
            if (isGap && start >= 0)
            {
                words.Add(text.Slice(start, i - start));
                start = -1;
            }
            if (isSign) words.Add(text.Slice(i, 1));
            else if (!isGap && start < 0) start = i;
        }
        return words.DrainToImmutable();
    }
}
