namespace SheetPress.Engraving;

/// <summary>Roman numerals (ii7, ♭VII, V7/ii) as text and glyphs.</summary>
public static class RomanText
{
    private const TextFont Font = TextFont.Serif;

    // Chord figures after the numeral, raised.
    private const double SmallShare = 0.74;
    private const double Rise = 0.24;

    // White on both sides of a sign between a slash and a figure.
    private const double SignGap = 0.05;

    // White between a slash, which leans over what follows, and the sign of a numeral.
    private const double SlashGap = 0.09;

    // White before an alteration among the figures, behind another alteration more: 7♯5♭9 is three figures.
    private const double AlterationGap = 0.05;
    private const double AlterationsApart = 0.1;

    /// <summary>Lays out a roman numeral given in plain text, with b and # (or ♭ and ♯) for accidentals.</summary>
    /// <param name="roman">The numeral, as in "ii7", "bVIImaj7", "V7/3 of ii".</param>
    /// <param name="size">Em of the numeral, in the unit of the drawing.</param>
    public static SymbolLayout Layout(string roman, double size)
    {
        var builder = new SymbolBuilder(MarkRole.Roman);
        for (var at = 0; at < roman.Length;)
        {
            var start = at;
            if (IsNumeral(roman[at]))
            {
                while (at < roman.Length && IsNumeral(roman[at])) at++;
                builder.Text(roman[start..at], Font, size);
            }
            else if (Alteration(roman, at) is { } alteration)
            {
                builder.Accidental(alteration, size);
                builder.X += SignGap * size;
                at++;
            }
            else if (BassEnd(roman, at) is var end and > 0)
            {
                // The bass stands on the line, where it is no figure of the chord: V7/3 of ii, V13/n2.
                builder.Text("/", Font, size);
                for (at++; Sign(roman[at]) is { } sign; at++)
                {
                    builder.X += SignGap * size;
                    builder.Accidental(sign, size);
                    builder.X += SignGap * size;
                }
                builder.Text(roman[at..end], Font, size);
                at = end;
            }
            else if (roman[at] == ' ' && roman.IndexOf(' ', at + 1) is > 0 and var after)
            {
                // The word that leads to the degree, with its blanks.
                builder.Text(roman[at..(after + 1)], Font, size);
                at = after + 1;
            }
            else if (roman[at] is '/' or ' ')
            {
                builder.Text(roman[at].ToString(), Font, size);
                if (roman[at] == '/' && at + 1 < roman.Length && Alteration(roman, at + 1) is not null) builder.X += SlashGap * size;
                at++;
            }
            else
            {
                // Everything up to the next slash belongs to the chord, and the slash within 6/9 too: on the line it would say "of".
                while (at < roman.Length && roman[at] != ' ' && (roman[at] != '/' || IsWithinFigures(roman, at))) at++;
                Figures(builder, roman[start..at], size);
            }
        }
        return builder.Build();
    }

    private static bool IsNumeral(char c) => c is 'I' or 'V' or 'i' or 'v' or 'X' or 'x';

    private static int? Alteration(string text, int at)
    {
        var next = at + 1 < text.Length ? text[at + 1] : ' ';
        return text[at] switch
        {
            '♭' => -1,
            '♯' => 1,
            'b' when IsNumeral(next) || next == 'b' => -1,
            '#' when IsNumeral(next) || next == '#' => 1,
            _ => null,
        };
    }

    // Where the bass behind a slash ends: signs, if any, and a degree up to 7 (the 9 of I6/9 is a figure); 0 where no bass begins.
    private static int BassEnd(string text, int at)
    {
        if (text[at++] != '/') return 0;
        while (at < text.Length && Sign(text[at]) is not null) at++;
        return at < text.Length && text[at] is >= '1' and <= '7' && (at + 1 == text.Length || text[at + 1] is '/' or ' ') ? at + 1 : 0;
    }

    private static bool IsWithinFigures(string text, int slash) => slash + 1 < text.Length && char.IsAsciiDigit(text[slash + 1]) && BassEnd(text, slash) == 0;

    private static int? Sign(char c) => c switch
    {
        'b' or '♭' => -1,
        '#' or '♯' => 1,
        'n' or '♮' => 0,
        _ => null,
    };

    private static void Figures(SymbolBuilder builder, string figures, double size)
    {
        builder.X += 0.03 * size;
        var small = size * SmallShare;
        var before = ChordSuffixKind.Quality;
        foreach (var part in ChordSuffixPart.Split(figures))
        {
            switch (part.Kind)
            {
                case ChordSuffixKind.Alteration:
                    builder.X += (before == ChordSuffixKind.Alteration ? AlterationsApart : AlterationGap) * size;
                    builder.Accidental(part.Alteration, small, Rise * size).Text(part.Text, Font, small, Rise * size);
                    break;
                case ChordSuffixKind.Diminished:
                    builder.Glyph("csymDiminished", 0.2 * size, Rise * size);
                    break;
                case ChordSuffixKind.HalfDiminished:
                    builder.Glyph("csymHalfDiminished", 0.2 * size, Rise * size);
                    break;
                case ChordSuffixKind.MajorSeventh:
                    builder.Glyph("csymMajorSeventh", 0.2 * size, Rise * size);
                    break;
                default:
                    builder.Text(part.Text, Font, small, Rise * size);
                    break;
            }
            before = part.Kind;
        }
    }
}
