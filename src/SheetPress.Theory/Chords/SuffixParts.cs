using System.Collections.Immutable;

namespace SheetPress.Theory;

/// <summary>The two parts of a suffix.</summary>
/// <param name="Main">The basic name: "m7", "13sus4".</param>
/// <param name="Changes">What follows it, in order: "b5", "#11", "alt", then "add9", then "no5".</param>
internal sealed record SuffixParts(string Main, ImmutableArray<string> Changes)
{
    /// <summary>
    /// What follows the basic name, as it is written: alterations one by one, then additions and omissions in one pair of brackets, which would
    /// run together with the name otherwise: "m(add9)", "7b9(add13)". One addition to a major triad stands without ("add9"), and an alteration
    /// right after the root, as part of which it would read, is in brackets too: "(b5)". Common practice, from memory.
    /// </summary>
    internal ImmutableArray<string> Written
    {
        get
        {
            if (Changes.IsEmpty || (Main.Length == 0 && Changes is [['a', 'd', 'd', ..]])) return Changes;
            var plain = 0;
            if (Main.Length > 0) while (plain < Changes.Length && !IsWord(Changes[plain])) plain++;
            if (plain == Changes.Length) return Changes;
            return [.. Changes.AsSpan()[..plain], $"({string.Join(',', Changes.AsSpan()[plain..])})"];
        }
    }

    /// <summary>The suffix made of its parts.</summary>
    public override string ToString() => Changes.IsEmpty ? Main : Main + string.Concat(Written.AsSpan());

    private static bool IsWord(string change) => change.StartsWith("add", StringComparison.Ordinal) || change.StartsWith("no", StringComparison.Ordinal);
}
