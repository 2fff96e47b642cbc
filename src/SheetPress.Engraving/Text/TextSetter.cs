using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>Sets a text without line breaks: shaped runs for the words, glyphs of the music font for ♭ ♯ ♮ and note signs.</summary>
public static class TextSetter
{
    // White on each side of a sign, in em: the signs have no side bearings of their own.
    private const double SignBearing = 0.035;
    private const double NoteBearing = 0.1;

    // Least white between the ink of a letter and a sign behind it, in em: the foot of an A stands nearer to its edge than other letters.
    private const double LetterGap = 0.075;

    // As much as letters have: with less, a space beside a sign looks narrower than others.
    internal const double BearingBySpace = 0.07;

    /// <summary>Sets a text.</summary>
    /// <param name="text">The text; line breaks are not allowed.</param>
    /// <param name="font">Its face.</param>
    /// <param name="size">Length of the em in millimetres.</param>
    /// <param name="role">What the marks are.</param>
    /// <param name="ink">1 black, 0 white.</param>
    /// <param name="link">Target of a link, or null.</param>
    public static TextPiece Set(string text, TextFont font, double size, MarkRole role = MarkRole.BodyText, double ink = 1, string? link = null)
    {
        var marks = ImmutableArray.CreateBuilder<Mark>();
        var x = 0.0;
        // White within the advance of the last letter, at its right, in em.
        var edge = 0.0;
        var start = 0;
        for (var i = 0; i < text.Length;)
        {
            var sign = TextSign.At(text, i, out var length);
            if (sign is null)
            {
                i += length;
                continue;
            }
            SetRuns(text[start..i]);
            var rise = TextSign.Rise(sign); // of a note, that of its dot too
            SetSign(sign, rise, i > 0 && IsSpace(text[i - 1]) ? BearingBySpace : start < i ? Math.Max(SignBearing, LetterGap - edge) : SignBearing);
            i += length;
            // The end of a text is the end of a word.
            if (!TextSign.IsNote(sign) && (i == text.Length || IsSpace(text[i]))) x += (BearingBySpace - SignBearing) * size;
            if (TextSign.IsNote(sign) && i < text.Length && text[i] == '.')
            {
                SetSign("metAugmentationDot", rise, SignBearing);
                i++;
            }
            start = i;
        }
        SetRuns(start == 0 ? text : text[start..]);
        return new TextPiece(marks.DrainToImmutable(), x, TextStyle.Ascent * size, TextStyle.Descent * size);

        static bool IsSpace(char c) => c is ' ' or '\u00A0';

        void SetRuns(string part)
        {
            foreach (var run in TextShaper.Shape(part, font))
            {
                marks.Add(new TextMark(run, new Point(x, 0), size) { Role = role, Ink = ink, Link = link });
                x += run.Advance * size;
                edge = run.Advance - run.Bounds.Right;
            }
        }

        void SetSign(string name, double rise, double bearing)
        {
            var glyph = MusicFont.Shipped[name];
            var staffSpace = size / TextSign.StaffSpacesPerEm;
            x += bearing * size;
            marks.Add(new GlyphMark(glyph, new Point(x, -rise * staffSpace), staffSpace) { Role = role, Ink = ink });
            x += (glyph.Advance * staffSpace) + ((TextSign.IsNote(name) ? NoteBearing : SignBearing) * size);
        }
    }

    /// <summary>Width of a text in millimetres.</summary>
    /// <param name="text">The text.</param>
    /// <param name="font">Its face.</param>
    /// <param name="size">Length of the em in millimetres.</param>
    public static double Measure(string text, TextFont font, double size)
    {
        foreach (var c in text)
        {
            if (c is '♭' or '♯' or '♮' or '♩' or '♪' || char.IsHighSurrogate(c)) return Set(text, font, size).Width;
        }
        return TextShaper.Measure(text, font) * size;
    }
}
