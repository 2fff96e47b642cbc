namespace SheetPress.Engraving;

/// <summary>Brackets that come in pairs (Unicode character database, BidiBrackets.txt, those of the basic plane that text uses).</summary>
internal static class BidiBrackets
{
    private const string Pairs = "()[]{}⁅⁆⁽⁾₍₎⌈⌉⌊⌋\u2329\u232A❨❩❪❫❬❭❮❯❰❱❲❳❴❵⟦⟧⟨⟩⟪⟫⟬⟭⟮⟯⦃⦄⦅⦆⸢⸣⸤⸥⸦⸧⸨⸩〈〉《》「」『』【】〔〕〖〗〘〙〚〛﹙﹚﹛﹜﹝﹞（）［］｛｝｟｠｢｣";

    /// <summary>The bracket that closes an opening one; the null character for anything else.</summary>
    internal static char Closing(char c) => Pairs.IndexOf(c, StringComparison.Ordinal) is var at and >= 0 && at % 2 == 0 ? Plain(Pairs[at + 1]) : '\0';

    /// <summary>A closing bracket as <see cref="Closing"/> gives it; the null character for anything else.</summary>
    internal static char AsClosing(char c) => Pairs.IndexOf(c, StringComparison.Ordinal) is var at and >= 0 && at % 2 == 1 ? Plain(c) : '\0';

    // Two code points for one bracket: U+2329 and U+232A are the same as U+3008 and U+3009.
    private static char Plain(char c) => c == '\u232A' ? '\u3009' : c;
}
