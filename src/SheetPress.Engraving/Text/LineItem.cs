using System.Globalization;
using SheetPress.Theory;

namespace SheetPress.Engraving;

/// <summary>A piece of a line of text and what follows it.</summary>
/// <param name="Piece">The piece.</param>
/// <param name="Space">Width of the word space after it; 0 when the next piece joins on.</param>
/// <param name="CanBreak">Whether a line may end after it.</param>
/// <param name="Underline">The stretch of text it is underlined with; null for no underline.</param>
/// <param name="Level">Its embedding level: odd for what is written to the left.</param>
/// <param name="SpaceLevel">That of the space after it.</param>
internal readonly record struct LineItem(TextPiece Piece, double Space, bool CanBreak, Inline? Underline = null, byte Level = 0, byte SpaceLevel = 0);

/// <summary>Cuts inlines into pieces that are never broken.</summary>
internal static class LineItems
{
    // A slash is a place to break only in something as long as an address.
    private const int AddressLength = 20;
    private const int FewestCarried = 3;

    // White between two degrees in a row, in word spaces.
    private const double DegreeSpace = 2;

    // A word longer than this share of the line keeps nothing beside it.
    private const double MostKept = 0.5;
    private const int MostDigits = 2;

    /// <summary>Makes the pieces of one line or paragraph; nothing in it forces a line end.</summary>
    /// <param name="inlines">The text; a <see cref="BreakInline"/> counts as a space.</param>
    /// <param name="style">How it looks.</param>
    /// <param name="widest">Pieces wider than this are cut between characters.</param>
    internal static List<LineItem> Make(IReadOnlyList<Inline> inlines, TextStyle style, double widest)
    {
        var items = new List<LineItem>();
        var space = TextSetter.Measure(" ", style.Upright, style.Size);
        var levels = InlineLevels.Of(inlines);
        for (var i = 0; i < inlines.Count; i++)
        {
            var inline = inlines[i];
            // Degrees in a row stand farther apart than words: a sign belongs to the figure after it, not to the one before.
            if (inline is DegreeInline && i > 1 && inlines[i - 1] is TextInline { Text: " " } && inlines[i - 2] is DegreeInline) items[^1] = items[^1] with { Space = DegreeSpace * space };
            switch (inline)
            {
                case TextInline text: AddText(items, text, style, widest, space, levels); break;
                case ChordInline chord: AddPiece(SymbolPiece.Of(chord.Chord, style.Size)); break;
                case DegreeInline degree: AddPiece(SymbolPiece.Of(degree.Degree, style.Size)); break;
                case RomanInline roman: AddPiece(SymbolPiece.OfRoman(roman.Roman, style.Size)); break;
                case PieceInline drawn: AddPiece(drawn.Piece); break;
                default: EndWord(items, space, levels.At(0)); break;
            }
            levels.Pass(inline);
        }
        if (items.Count > 0) items[^1] = items[^1] with { Space = 0, CanBreak = true };
        return items;

        void AddPiece(TextPiece piece) => items.Add(new(FollowsSpace(items) ? WithBearing(piece, style.Size) : piece, 0, false, Level: levels.At(0)));
    }

    // A space that no line ends at is the last of its word.
    private static bool FollowsSpace(List<LineItem> items) =>
        items.Count > 0 && (items[^1].Space > 0 || items[^1].Piece.Marks is [.., TextMark { Run.Text: [.., '\u00A0'] }]);

    // A sign has no white of its own on its left, as letters have.
    private static TextPiece WithBearing(TextPiece piece, double size)
    {
        var left = Box.Around(piece.Marks.Select(m => m.Bounds)).Left;
        var missing = (TextSetter.BearingBySpace * size) - left;
        return missing <= 0 || piece.Marks.IsEmpty ? piece : piece with { Marks = [.. piece.Marks.Select(m => m.Transform(1, missing, 0))], Width = piece.Width + missing };
    }

    private static void AddText(List<LineItem> items, TextInline inline, TextStyle style, double widest, double space, InlineLevels levels)
    {
        var text = inline.Text;
        var font = style.FontOf(inline.Emphasis);
        for (var at = 0; at < text.Length;)
        {
            if (IsSpace(text[at]))
            {
                var next = NextWord(text, at);
                EndWord(items, space, levels.At(at), !StaysBehind(next) && !((BelongsToWord(text, at, next) || NamesKey(text, at, next)) && items.Count > 0 && items[^1].Piece.Width < widest * MostKept));
                at++;
                continue;
            }
            var end = at;
            while (end < text.Length && !IsSpace(text[end])) end++;
            AddWord(items, inline, at, end, font, style.Size, widest, levels);
            if (end < text.Length && KeepsNext(text.AsSpan()[at..end]))
            {
                items[^1] = items[^1] with { Space = space, SpaceLevel = levels.At(end) };
                end++;
            }
            at = end;
        }
    }

    // The space after a word is shaped with it, so that the text of the document has it too; it takes no part in the width.
    private static void AddWord(List<LineItem> items, TextInline inline, int start, int end, TextFont font, double size, double widest, InlineLevels levels)
    {
        var (text, link) = (inline.Text, inline.Link);
        var underline = link is not null || inline.Emphasis.HasFlag(Emphasis.Underlined) ? inline : null;
        for (var at = start; at < end;)
        {
            var level = levels.At(at);
            var cut = NextBreak(text, start, at, end);
            var turn = at + 1;
            while (turn < cut && levels.At(turn) == level) turn++;
            var turns = turn < cut;
            cut = turn;
            // Shaped with a word that runs to the left, the space would come to stand before it.
            var spaced = cut == end && end < text.Length && level % 2 == 0;
            var part = text[at..cut];
            var piece = Set(spaced ? part + " " : part);
            if (spaced) piece = piece with { Width = TextSetter.Measure(part, font, size) };
            if (at == start && piece.Marks is [GlyphMark, ..] && FollowsSpace(items)) piece = WithBearing(piece, size);
            if (piece.Width > widest && part.Length > 1)
            {
                var hyphen = IsHyphenated(text.AsSpan()[start..end]) ? "-" : "";
                cut = at + FittingLength(part, hyphen, font, size, widest);
                turns = false;
                piece = Set(text[at..cut] + hyphen);
            }
            items.Add(new(piece, 0, cut < end && !turns, underline, level));
            at = cut;

            TextPiece Set(string words) => TextSetter.Set(level % 2 == 1 ? TextShaper.RightToLeftMark + words : words, font, size, link: link);
        }
    }

    private static void EndWord(List<LineItem> items, double space, byte level, bool canBreak = true)
    {
        if (items.Count > 0) items[^1] = items[^1] with { Space = space, SpaceLevel = level, CanBreak = canBreak };
    }

    private static ReadOnlySpan<char> NextWord(string text, int at)
    {
        while (at < text.Length && IsSpace(text[at])) at++;
        var end = at;
        while (end < text.Length && !IsSpace(text[end])) end++;
        return text.AsSpan()[at..end];
    }

    // The white space of a line of text; a no-break space is none.
    private static bool IsSpace(char c) => c is ' ' or '\t' or '\n' or '\r' or '\u200B' or '\u3000';

    // The next place within a word where a line may end: after a hyphen or dash between longer parts, after a slash of an
    // address, beside a sign of a script without spaces.
    private static int NextBreak(string text, int start, int at, int end)
    {
        for (var i = at + 1; i < end; i++)
        {
            var before = text[i - 1];
            if (before is '-' or '‐' or '–' or '—' && i - start > 3 && end - i > 2 && char.IsLetter(text[i]) && char.IsLetter(text[i - 2])) return i;
            if (before == '/' && text[i] != '/' && end - start > AddressLength) return i;
            if (WideScripts.CanBreak(before, text[i])) return i;
        }
        return end;
    }

    // How much of a word that is too long for any line stands on this one; a few letters at least go on to the next.
    private static int FittingLength(string text, string hyphen, TextFont font, double size, double widest)
    {
        var fitting = StringInfo.GetNextTextElementLength(text);
        for (var next = fitting; next < text.Length; fitting = next)
        {
            next += StringInfo.GetNextTextElementLength(text, next);
            if (TextSetter.Measure(text[..next] + hyphen, font, size) > widest || (hyphen.Length > 0 && text.Length - next < FewestCarried && next > FewestCarried)) break;
        }
        return fitting;
    }

    // A word of letters gets a hyphen where it is cut; an address, a number or a script without hyphens does not.
    private static bool IsHyphenated(ReadOnlySpan<char> word)
    {
        foreach (var c in word) if (!char.IsUpper(c) && !char.IsLower(c) && !char.IsPunctuation(c) || c is '/' or '@' or '_') return false;
        return true;
    }

    // "Beat 3" and "fret 12" are not parted: a line that begins with "3." reads like the item of a list.
    private static bool BelongsToWord(string text, int at, ReadOnlySpan<char> next)
    {
        if (at == 0 || !char.IsLetter(text[at - 1])) return false;
        var digits = 0;
        while (digits < next.Length && char.IsAsciiDigit(next[digits])) digits++;
        if (digits is 0 or > MostDigits) return false;
        foreach (var c in next[digits..]) if (!char.IsPunctuation(c)) return false;
        return true;
    }

    // "A minor" is not parted: at the end of a line "A" reads like the article.
    private static bool NamesKey(string text, int at, ReadOnlySpan<char> next)
    {
        var start = at;
        while (start > 0 && !IsSpace(text[start - 1])) start--;
        if (start == at || text[start] is not (>= 'A' and <= 'G')) return false;
        foreach (var c in text.AsSpan()[(start + 1)..at]) if (c is not ('♭' or '♯')) return false;
        var word = next.TrimEnd(".,;:!?)").ToString();
        return word is "natural" or "harmonic" or "melodic" || Enum.GetValues<Mode>().Any(mode => word == mode.Name() || word == mode.ToDisplayString());
    }

    // "♩ = 92" is never parted, nor a quotation mark with a space (as in French) from what it opens.
    private static bool KeepsNext(ReadOnlySpan<char> word) => word is "=" or "♩" or "♪" or "♩." or "♪." or "«" or "‹";

    // Signs that close something begin no line, even after a space: those of French, the per cent sign, a dash between two things.
    private static bool StaysBehind(ReadOnlySpan<char> word)
    {
        if (word.IsEmpty || word[0] is not (':' or ';' or '!' or '?' or '»' or '›' or '%' or '‰' or '–' or '—')) return false;
        foreach (var c in word) if (char.IsLetterOrDigit(c)) return false;
        return true;
    }
}
