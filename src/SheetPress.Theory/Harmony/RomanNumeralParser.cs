namespace SheetPress.Theory;

/// <summary>
/// Reads roman numerals by the conventions of <see cref="RomanNumeral"/>: "ii7 V7 Imaj7", "iiø7", "iim7b5", "viio7", "V7/ii", "bVII7",
/// "#IVø7", "V7sus4", "I/3", "V7/3 of ii". Capitals with a minor suffix ("IIm7") are the same as small letters. ♭ and b, ♯ and # are alike. The
/// degree that a chord is applied to may stand behind a slash or behind "of" ("V7 of ii", "V7/3/ii"). A bass behind it ("V7/ii/3") is read as
/// the chord's own, since a degree that is no chord has none.
/// </summary>
public static class RomanNumeralParser
{
    // Longest first.
    private static readonly (string Letters, int Number)[] Numerals = [("VII", 7), ("III", 3), ("VI", 6), ("IV", 4), ("II", 2), ("V", 5), ("I", 1)];

    /// <summary>Reads a text that is one numeral or "no chord"; blanks around it do not matter.</summary>
    public static RomanNumeralParseResult Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var start = 0;
        while (start < text.Length && char.IsWhiteSpace(text[start])) start++;
        var symbol = text.TrimEnd();
        if (start >= symbol.Length) return Error(start, "A roman numeral is missing");
        if (ChordParser.IsNoChord(symbol.AsSpan(start))) return new() { IsNoChord = true };
        var at = start;
        var (numeral, error) = ReadNumeral(symbol, ref at);
        if (numeral is null) return error!;
        if (at == symbol.Length) return new() { Numeral = numeral };
        if (IsOf(symbol, at)) return Error(at + RomanNumeral.Of.Length, NoDegree);
        // Numerals are read up to a slash or "of", so one stands here, and a bass behind it.
        if (numeral.Target is null || numeral.Bass is not null || symbol.IndexOf('/', at + 1) >= 0)
        {
            return Error(at + 1, "The bass is written once, behind the chord and before the degree that it is applied to, as in V7/3 of ii");
        }
        var bassAt = at + 1;
        return ReadBass(symbol, ref at, numeral.Quality, out var bass) && at == symbol.Length
            ? new() { Numeral = new(numeral.Number, numeral.Alteration, numeral.Quality, numeral.Target, bass) }
            : Error(bassAt, NoBass);
    }

    private const string NoDegree = "After of comes the degree that the chord is applied to, as in V7/3 of ii";

    private const string NoBass = "After the slash comes the degree that the chord is applied to, as in V7/ii, or the bass as a degree of the chord, as in I/3";

    // A target has no bass of its own: what could be one is left unread.
    private static (RomanNumeral? Numeral, RomanNumeralParseResult? Error) ReadNumeral(string text, ref int at, bool isTarget = false)
    {
        var start = at;
        var alteration = ReadSigns(text, ref at);
        if (!ReadLetters(text, ref at, out var number, out var small))
        {
            return (null, Error(at, "A numeral is one of I II III IV V VI VII, small for a minor third, with b or # before it"));
        }
        if (at < text.Length && "IViv".Contains(text[at], StringComparison.Ordinal)) return (null, Error(start, "A numeral is I to VII, written in capitals or in small letters throughout"));
        var (quality, error) = ReadQuality(text, ref at, small, text[start..at]);
        if (quality is null) return (null, error);
        Degree? bass = null;
        if (!isTarget && at < text.Length && !IsOf(text, at) && NumeralBehind(text, at) == 0)
        {
            var bassAt = at + 1;
            if (!ReadBass(text, ref at, quality, out var read)) return (null, Error(bassAt, NoBass));
            bass = read;
        }
        RomanNumeral? target = null;
        if (NumeralBehind(text, at) is > 0 and var behind)
        {
            at = behind;
            (target, error) = ReadNumeral(text, ref at, isTarget: true);
            if (target is null) return (null, error);
        }
        return (new RomanNumeral(number, alteration, quality, target, bass), null);
    }

    private static bool IsOf(string text, int at) => string.CompareOrdinal(text, at, RomanNumeral.Of, 0, RomanNumeral.Of.Length) == 0;

    // Where the numeral begins that a slash or "of" leads to; 0 where neither leads to one.
    private static int NumeralBehind(string text, int at)
    {
        if (at >= text.Length) return 0;
        var isOf = IsOf(text, at);
        if (!isOf && text[at] != '/') return 0;
        var start = at += isOf ? RomanNumeral.Of.Length : 1;
        ReadSigns(text, ref at);
        return at < text.Length && "IViv".Contains(text[at], StringComparison.Ordinal) ? start : 0;
    }

    private static (ChordQuality? Quality, RomanNumeralParseResult? Error) ReadQuality(string text, ref int at, bool small, string letters)
    {
        if (text.IndexOf(RomanNumeral.Of, at, StringComparison.Ordinal) is >= 0 and var end) text = text[..end];
        var minor = small && RomanSuffix.NeedsMinor(text.AsSpan(at));
        // Small letters say "minor": the suffix is read as if an m stood before it.
        var source = minor ? string.Concat(text.AsSpan(0, at), "m", text.AsSpan(at)) : text;
        var reader = new ChordSuffixReader(source, at);
        var shape = reader.Read();
        var shift = minor ? 1 : 0;
        if (shape is null && minor)
        {
            // A chord without a third can have a small numeral too: "i5".
            var plain = new ChordSuffixReader(text, at);
            if (plain.Read() is { Third: null } open) (shape, reader, shift) = (open, plain, 0);
        }
        if (shape is null)
        {
            var near = NearestSymbol.FindQuality(text[at..], onlyMinor: small) ?? NearestSymbol.FindQuality(source[at..], onlyMinor: small);
            var suggestion = near is null ? null : letters + (small == near.Shape.IsMinor ? RomanSuffix.Write(near) : near.Suffix);
            return (null, Error(Math.Max(at, reader.At - shift), reader.Error!, suggestion));
        }
        at = reader.At - shift;
        return (ChordQualities.Of(shape), null);
    }

    // The bass behind a slash, up to the next one or to "of".
    private static bool ReadBass(string text, ref int at, ChordQuality quality, out Degree bass)
    {
        bass = default;
        var start = at + 1;
        var length = text.AsSpan(start).IndexOfAny('/', ' ');
        var end = length < 0 ? text.Length : start + length;
        if (start >= end || text[start] is 'R' or 'r') return false;
        var natural = text[start] is 'n' or '♮';
        if (!Degree.TryParse(text[(natural ? start + 1 : start)..end], out bass) || bass.Number > 7) return false;
        if (!natural && bass.Alteration == 0 && RomanNumeral.OwnTone(quality, bass.Number) is { } own) bass = own;
        at = end;
        return true;
    }

    private static bool ReadLetters(string text, ref int at, out int number, out bool small)
    {
        foreach (var (letters, value) in Numerals)
        {
            if (string.Compare(text, at, letters, 0, letters.Length, StringComparison.OrdinalIgnoreCase) != 0) continue;
            var written = text.AsSpan(at, letters.Length);
            small = char.IsAsciiLetterLower(written[0]);
            foreach (var letter in written) if (char.IsAsciiLetterLower(letter) != small) { number = 0; return false; }
            number = value;
            at += letters.Length;
            return true;
        }
        (number, small) = (0, false);
        return false;
    }

    private static int ReadSigns(string text, ref int at)
    {
        var alteration = 0;
        while (at < text.Length && Math.Abs(alteration) < 3)
        {
            var step = text[at] switch { 'b' or '♭' => -1, '#' or '♯' => 1, _ => 0 };
            if (step == 0 || step * alteration < 0) break;
            alteration += step;
            at++;
        }
        return alteration;
    }

    private static RomanNumeralParseResult Error(int index, string message, string? suggestion = null) =>
        new() { ErrorIndex = index, Message = message, Suggestion = suggestion };
}
