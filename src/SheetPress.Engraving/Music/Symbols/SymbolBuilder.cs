using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>Sets text and music glyphs one after the other on a baseline.</summary>
internal sealed class SymbolBuilder(MarkRole role)
{
    // The font's accidentals for chord symbols are three spaces tall; at this share of the em they rise a little above capitals.
    private const double AccidentalScale = 0.26;

    // White on either side of an accidental, in em.
    private const double AccidentalGap = 0.03;

    private readonly ImmutableArray<Mark>.Builder _marks = ImmutableArray.CreateBuilder<Mark>();

    /// <summary>Where the next thing goes.</summary>
    public double X { get; set; }

    /// <summary>Adds plain text, with ♭ ♯ ♮ taken from the music font.</summary>
    /// <param name="text">The text.</param>
    /// <param name="font">Its face.</param>
    /// <param name="size">Em.</param>
    /// <param name="rise">How far above the baseline.</param>
    public SymbolBuilder Text(string text, TextFont font, double size, double rise = 0)
    {
        var start = 0;
        for (var i = 0; i <= text.Length; i++)
        {
            var alteration = i == text.Length ? null : text[i] switch { '♭' => -1, '♯' => 1, '♮' => (int?)0, _ => null };
            if (i < text.Length && alteration is null) continue;
            if (i > start) Plain(text[start..i], font, size, rise);
            var isDouble = i < text.Length && TextSign.IsDouble(text, i);
            if (alteration is { } sign) Accidental(isDouble ? 2 * sign : sign, size, rise);
            if (isDouble) i++;
            start = i + 1;
        }
        return this;
    }

    /// <summary>Adds the sign of an alteration in half steps.</summary>
    public SymbolBuilder Accidental(int alteration, double size, double rise = 0)
    {
        var name = alteration switch
        {
            <= -2 => "csymAccidentalDoubleFlat",
            -1 => "csymAccidentalFlat",
            0 => "csymAccidentalNatural",
            1 => "csymAccidentalSharp",
            _ => "csymAccidentalDoubleSharp",
        };
        X += AccidentalGap * size;
        Glyph(name, AccidentalScale * size, rise + (TextSign.Rise(name) * AccidentalScale * size));
        X += AccidentalGap * size;
        return this;
    }

    /// <summary>Adds a music glyph.</summary>
    /// <param name="name">SMuFL name.</param>
    /// <param name="staffSpace">Length of its staff space.</param>
    /// <param name="rise">How far above the baseline its origin lies.</param>
    public SymbolBuilder Glyph(string name, double staffSpace, double rise = 0)
    {
        var glyph = Ink.Glyph(name);
        _marks.Add(new GlyphMark(glyph, new Point(X, -rise), staffSpace) { Role = role });
        X += glyph.Advance * staffSpace;
        return this;
    }

    /// <summary>Adds any mark, given about the pen position.</summary>
    public SymbolBuilder Mark(Mark mark, double advance)
    {
        _marks.Add(mark.Transform(1, X, 0) with { Role = role });
        X += advance;
        return this;
    }

    /// <summary>The symbol.</summary>
    public SymbolLayout Build() => new(new Drawing(_marks.ToImmutable()), X);

    private void Plain(string text, TextFont font, double size, double rise)
    {
        foreach (var run in TextShaper.Shape(text, font))
        {
            if (!run.Bounds.IsEmpty) _marks.Add(new TextMark(run, new Point(X, -rise), size) { Role = role });
            X += run.Advance * size;
        }
    }
}
