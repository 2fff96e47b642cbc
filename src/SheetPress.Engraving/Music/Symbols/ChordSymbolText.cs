using SheetPress.Theory;

namespace SheetPress.Engraving;

/// <summary>
/// Chord symbols as text and glyphs: the root large, the quality smaller, alterations smaller and raised, real flat and sharp
/// signs, the slash bass after the slash.
/// </summary>
public static class ChordSymbolText
{
    /// <summary>Size of quality and numbers as a share of the root; at a root of ten points they are still above seven.</summary>
    public const double SmallShare = 0.74;

    /// <summary>Font of the roots.</summary>
    public const TextFont RootFont = TextFont.SansSemiBold;
    private const TextFont SuffixFont = TextFont.SansSemiBold;

    // How far alterations rise, in em of the root: their tops stand a little above the root.
    private const double AlterationRise = 0.24;

    // White between root and suffix and around alterations, in em of the root.
    private const double PartGap = 0.03;
    private const double AlterationGap = 0.05;
    private const double AlterationsApart = 0.14;

    /// <summary>Lays out a chord symbol; null is "N.C.".</summary>
    /// <param name="chord">The chord.</param>
    /// <param name="size">Em of the root letter, in the unit of the drawing.</param>
    public static SymbolLayout Layout(Chord? chord, double size)
    {
        var builder = new SymbolBuilder(MarkRole.ChordSymbol);
        if (chord is null) return builder.Text("N.C.", RootFont, size * SmallShare).Build();
        Note(builder, chord.Root, size);
        Suffix(builder, chord.Quality.Suffix, size);
        if (chord.Bass is { } bass)
        {
            builder.X += PartGap * size;
            builder.Text("/", RootFont, size);
            Note(builder, bass, size);
        }
        return builder.Build();
    }

    private static void Note(SymbolBuilder builder, NoteName note, double size)
    {
        builder.Text(note.Letter.ToString(), RootFont, size);
        if (note.Alteration != 0) builder.Accidental(note.Alteration, size);
    }

    private static void Suffix(SymbolBuilder builder, string suffix, double size)
    {
        var small = size * SmallShare;
        builder.X += PartGap * size;
        var parts = ChordSuffixPart.Split(Bracketed(suffix));
        var before = ChordSuffixKind.Quality;
        var rise = 0.0;
        for (var i = 0; i < parts.Count; i++)
        {
            var part = parts[i];
            // What is in brackets is on one level, raised where it begins with an alteration.
            if (part.Text == "(" && i + 1 < parts.Count && parts[i + 1].Kind == ChordSuffixKind.Alteration) rise = AlterationRise * size;
            switch (part.Kind)
            {
                case ChordSuffixKind.Alteration when i > 0 && parts[i - 1].Text.EndsWith("add", StringComparison.Ordinal):
                    builder.X += AlterationGap * size;
                    builder.Accidental(part.Alteration, small, rise).Text(part.Text, SuffixFont, small, rise);
                    break;
                case ChordSuffixKind.Alteration:
                    builder.X += (before == ChordSuffixKind.Alteration ? AlterationsApart : AlterationGap) * size;
                    builder.Accidental(part.Alteration, small, AlterationRise * size).Text(part.Text, SuffixFont, small, AlterationRise * size);
                    break;
                case ChordSuffixKind.Diminished:
                    Sign(builder, "csymDiminished", size);
                    break;
                case ChordSuffixKind.HalfDiminished:
                    Sign(builder, "csymHalfDiminished", size);
                    break;
                case ChordSuffixKind.MajorSeventh:
                    Sign(builder, "csymMajorSeventh", size);
                    break;
                default:
                    builder.Text(part.Text, SuffixFont, small, rise);
                    break;
            }
            if (part.Text == ")") rise = 0;
            before = part.Kind;
        }
    }

    // Common practice: the major seventh over a minor or diminished triad stands in brackets.
    private static string Bracketed(string suffix)
    {
        var major = suffix.IndexOf("Maj", StringComparison.Ordinal);
        if (major <= 0) return suffix;
        var end = major + 3;
        while (end < suffix.Length && char.IsAsciiDigit(suffix[end])) end++;
        return $"{suffix[..major]}(maj{suffix[(major + 3)..end]}){suffix[end..]}";
    }

    // The signs are two spaces tall and sit on the baseline; raised to the height of the capital.
    private static void Sign(SymbolBuilder builder, string name, double size)
    {
        const double scale = 0.2;
        builder.X += AlterationGap * size;
        builder.Glyph(name, scale * size, AlterationRise * size);
        builder.X += AlterationGap * size;
    }
}
