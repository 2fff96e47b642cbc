namespace SheetPress.Theory;

/// <summary>
/// Reads what follows the root of a chord symbol, up to a slash bass or the end: a basic name, then alterations, additions, suspensions and
/// omissions in any order, with brackets, commas and spaces between them.
/// </summary>
/// <param name="text">The whole symbol.</param>
/// <param name="start">Where the suffix begins.</param>
/// <param name="slashAdds">Whether a number behind a slash is a tone to add, as in C7/9; in a numeral it is the bass.</param>
internal sealed class ChordSuffixReader(string text, int start, bool slashAdds = false) : SymbolCursor(text, start)
{
    private enum Family { None, Major, Minor, Diminished, HalfDiminished, Augmented, Power }

    private readonly List<Degree> altered = [];
    private readonly List<Degree> added = [];
    private readonly List<int> omitted = [];
    private readonly List<int> omittedAt = [];
    private Family family;
    private bool majorWord;
    private bool majorSeventh;
    private bool alt;
    private bool suspendedSecond;
    private bool suspendedFourth;
    private bool sixNine;
    private int top;

    /// <summary>Whether the suffix was a bare 2 or 4, which people use in two ways.</summary>
    internal bool IsBareNumber { get; private set; }

    /// <summary>Reads the suffix; null on an error.</summary>
    internal ChordShape? Read()
    {
        SkipSeparators();
        ReadBasicName();
        while (Error is null)
        {
            SkipSeparators();
            if (Error is not null || AtEnd) break;
            if (Peek() == '/' && Depth == 0)
            {
                if (slashAdds && ReadSlashTone()) continue;
                break;
            }
            var before = At;
            if (!ReadChange() && Error is null) Fail(before, $"'{Text[before..]}' is no part of a chord name");
        }
        if (Error is null && Depth > 0) Fail(OpenedAt, "The bracket is not closed");
        if (Error is not null) return null;
        var degrees = Degrees();
        return Error is null ? new ChordShape([.. degrees]) : null;
    }

    private void ReadBasicName()
    {
        if (Accept("ø") || Accept("Ø") || Accept("∅") || AcceptWord("hdim") || AcceptWord("half-dim") || AcceptWord("halfdim") || AcceptWord("half dim") || AcceptShort('h'))
        {
            _ = AcceptWord("inished");
            SkipAbbreviation();
            family = Family.HalfDiminished;
            top = Math.Max(7, ReadTop());
            return;
        }
        if (AcceptWord("dom"))
        {
            _ = AcceptWord("inant");
            SkipAbbreviation();
            top = Math.Max(7, ReadTop());
            return;
        }
        if (AcceptMajor(out var triangle))
        {
            SkipAbbreviation();
            majorWord = true;
            family = Family.Major;
            top = ReadTop();
            if (triangle && top == 0) top = 7;
            majorSeventh = top >= 7;
            if (top == 0) ReadBareNumber();
            return;
        }
        if (AcceptWord("minor") || AcceptWord("min") || AcceptWord("mi") || Accept("m") || Accept("-") || Accept("−") || Accept("–")) family = Family.Minor;
        else if (AcceptWord("diminished") || AcceptWord("dim") || Accept("°") || Accept("º") || Accept("˚") || (!Follows("omit") && Accept("o")) || AcceptShort('O')) family = Family.Diminished;
        else if (AcceptWord("augmented") || AcceptWord("aug") || AcceptPlus()) family = Family.Augmented;
        if (family != Family.None) SkipAbbreviation();
        if (family != Family.None && AcceptMajorSeventh()) return;
        if (IsSignedBehind()) return;
        top = ReadTop();
        if (top >= 7) majorSeventh = AcceptMajorBehind();
        else if (top == 0 && family == Family.None && Peek() == '5') { At++; family = Family.Power; }
        else if (top == 0) ReadBareNumber();
    }

    // C2 is a triad with its second in pop charts; C4 has the fourth in place of the third, Cm4 beside it.
    private void ReadBareNumber()
    {
        if (Peek() is not ('2' or '4') || char.IsAsciiDigit(Peek(1))) return;
        IsBareNumber = true;
        if (Peek() == '2') added.Add(new(9));
        else if (family == Family.Minor) added.Add(new(11));
        else suspendedFourth = true;
        At++;
    }

    // "7M" is written for maj7 in some countries; not the M of "7Maj" or "7Mi".
    private bool AcceptMajorBehind()
    {
        if (Peek() != 'M' || char.IsAsciiLetterOrDigit(Peek(1))) return false;
        At++;
        return true;
    }

    // One letter that is a whole basic name: Bh7, BO7.
    private bool AcceptShort(char letter)
    {
        if (Peek() != letter || Peek(1) is not ('\0' or '7' or '/')) return false;
        At++;
        return true;
    }

    // The point and the blank of "min. 7".
    private void SkipAbbreviation()
    {
        if (At > 0 && char.IsAsciiLetter(Text[At - 1])) _ = Accept(".");
        var at = At;
        while (Peek() == ' ') At++;
        if (!char.IsAsciiDigit(Peek()) && !Follows("maj")) At = at;
    }

    // A number with its sign behind it: 5-, 5+, 9-, 11+.
    private bool IsSignedBehind()
    {
        var at = At;
        var signed = TryNumber(out var number) && number is 5 or 9 or 11 or 13 && Peek() is '+' or '-' or '−' or '–' && !char.IsAsciiDigit(Peek(1));
        // C9+ is an augmented ninth, C9- nothing at all; a fifth has no other reading.
        if (signed && (number == 5 || Depth > 0 || (at > 0 && Text[at - 1] == '/'))) altered.Add(new(number, Text[At++] == '+' ? 1 : -1));
        else (signed, At) = (false, at);
        return signed;
    }

    // C7/9, C7/b13, Cm7/11, C7/4 (the suspension); anything else behind a slash is a bass note.
    private bool ReadSlashTone()
    {
        var at = At++;
        if (IsSignedBehind()) return true;
        var alteration = ReadAccidental();
        if (TryNumber(out var number) && (AtEnd || Peek() is '/' or '(' or ')' or ' ' or ','))
        {
            if (alteration != 0 && number is 5 or 9 or 11 or 13) { altered.Add(new(number, alteration)); return true; }
            if (alteration == 0 && number is 2 or 6 or 9 or 11 or 13) { added.Add(Tension(number, 0)); return true; }
            if (alteration == 0 && number == 4 && top >= 7) { suspendedFourth = true; return true; }
            if (alteration == 0 && number == 7 && top == 0 && altered.Count > 0) { top = 7; return true; }
        }
        At = at;
        return false;
    }

    private bool ReadChange()
    {
        if (AcceptWord("sus")) return ReadSuspension();
        if (AcceptWord("add")) return ReadAddition();
        if (AcceptWord("no") || AcceptWord("omit")) return ReadOmission();
        if (AcceptWord("alt")) return ReadAltered();
        // m9(maj7), 6(maj7); but a 7 on its own or under ° has said which seventh it is.
        var open = family == Family.Minor || (top != 7 && family is not (Family.Diminished or Family.HalfDiminished));
        if (!majorSeventh && open && AcceptMajorSeventh()) return true;
        if (top >= 7 && AcceptWord("aug")) { altered.Add(new(5, 1)); return true; }
        if (IsSignedBehind()) return true;
        if (Depth > 0 || (At > 0 && Text[At - 1] is ',' or ' '))
        {
            var at = At;
            if (TryNumber(out var natural))
            {
                if (natural is 6 or 9 or 11 or 13) { added.Add(new(natural)); return true; }
                At = at;
            }
        }
        return ReadAlteration();
    }

    private bool ReadSuspension()
    {
        _ = AcceptWord("pended");
        var at = At;
        if (Accept("24") || Accept("42") || Accept("2/4") || Accept("2(4)") || (slashAdds && Accept("4/2"))) { suspendedSecond = suspendedFourth = true; return true; }
        if (Accept("2")) { suspendedSecond = true; return true; }
        suspendedFourth = true;
        if (Accept("4")) return true;
        var number = ReadTop();
        if (number >= 7 && top == 0) { top = number; return true; }
        return number == 0 || Fail(at, "The number goes before sus, as in 7sus4");
    }

    private bool ReadAddition()
    {
        SkipSeparators();
        var at = At;
        var alteration = ReadAccidental();
        if (TryNumber(out var number) && (number is 2 or 3 or 4 or 6 or 9 or 11 or 13 || (number == 5 && alteration != 0)))
        {
            added.Add(Tension(number, alteration));
            return true;
        }
        return Fail(at, "After add comes 2, 4, 6, 9, 11 or 13, with b or # before it if needed, as in add9");
    }

    private bool ReadOmission()
    {
        SkipSeparators();
        var at = At;
        if (!TryNumber(out var number) || number is not (3 or 5 or 7 or 9 or 11)) return Fail(at, "After no comes the tone to leave out, as in no3 or no5");
        _ = AcceptWord("rd") || AcceptWord("th");
        omitted.Add(number);
        omittedAt.Add(at);
        return true;
    }

    private bool ReadAltered()
    {
        if (family != Family.None || top > 7) return Fail(At - 3, "alt stands for a dominant seventh with altered fifth and ninths: write 7alt");
        if (top == 0) _ = Accept("7");
        top = 7;
        alt = true;
        return true;
    }

    private bool ReadAlteration()
    {
        var at = At;
        if (Peek() == '+' && (top >= 7 || family == Family.Minor) && !char.IsAsciiDigit(Peek(1))) { At++; altered.Add(new(5, 1)); return true; }
        var alteration = ReadAccidental();
        if (alteration == 0 || !TryNumber(out var number)) { At = at; return false; }
        if (number == 7 && alteration == 1 && top == 0 && family is Family.Minor or Family.Diminished) { MakeMajorSeventh(7); return true; }
        if (number is not (2 or 4 or 5 or 6 or 9 or 11 or 13)) return Fail(at, $"A chord has no altered {number}: 5, 9, 11 and 13 can be altered");
        altered.Add(Tension(number, alteration));
        return true;
    }

    // "maj7" after the family, as in m(maj7), m/maj9, +M7, or after a number, as in m9(maj7).
    private bool AcceptMajorSeventh()
    {
        var (at, depth) = (At, Depth);
        var slash = family == Family.Minor && Peek() == '/';
        if (slash) At++;
        else SkipSeparators();
        if (Follows("7M") && Peek(1) == 'M' && !char.IsAsciiLetterOrDigit(Peek(2))) { At += 2; MakeMajorSeventh(7); return true; }
        if (AcceptMajor(out var triangle))
        {
            SkipAbbreviation();
            var number = ReadTop();
            if (number >= 7 || (triangle && number == 0)) { MakeMajorSeventh(number); return true; }
        }
        else if (!slash && family == Family.Minor && top == 0 && Peek() is '+' or '#' or '♯' && Peek(1) == '7')
        {
            At += 2;
            MakeMajorSeventh(7);
            return true;
        }
        ReturnTo(at, depth);
        return false;
    }

    private void MakeMajorSeventh(int number)
    {
        majorSeventh = true;
        if (top == 6) added.Add(new(6));
        top = Math.Max(top, Math.Max(7, number));
    }

    private List<Degree> Degrees()
    {
        // A tension after maj or sus speaks of the seventh chord: maj#11, susb9.
        if (top == 0 && (majorWord || suspendedFourth) && IsAnyTensionAltered()) { top = 7; majorSeventh = majorWord; }
        var degrees = new List<Degree>();
        var minor = family is Family.Minor or Family.Diminished or Family.HalfDiminished;
        var suspended = suspendedSecond || suspendedFourth;
        if (suspendedSecond) degrees.Add(new(2));
        if (suspendedFourth) degrees.Add(new(4));
        if (!suspended && family != Family.Power) degrees.Add(new(3, minor ? -1 : 0));
        if (!IsAltered(5) && !alt) degrees.Add(new(5, family switch { Family.Diminished or Family.HalfDiminished => -1, Family.Augmented => 1, _ => 0 }));
        if (top == 6) degrees.Add(new(6));
        if (sixNine) degrees.Add(new(9));
        if (top >= 7) degrees.Add(new(7, majorSeventh ? 0 : family == Family.Diminished ? -2 : -1));
        if (alt)
        {
            degrees.Add(new(5, 1));
            degrees.Add(new(9, -1));
            degrees.Add(new(9, 1));
        }
        if (top >= 9 && !IsAltered(9)) degrees.Add(new(9));
        // Over a major third players leave the 11th out of a 13th chord.
        if ((top == 11 || (top == 13 && minor && !suspended)) && !IsAltered(11) && !suspendedFourth) degrees.Add(new(11));
        if (top == 13 && !IsAltered(13)) degrees.Add(new(13));
        degrees.AddRange(altered);
        degrees.AddRange(added);
        for (var i = 0; i < omitted.Count; i++) Omit(degrees, omitted[i], omittedAt[i]);
        return degrees;
    }

    private void Omit(List<Degree> degrees, int number, int at)
    {
        var count = degrees.Count;
        for (var i = count - 1; i >= 0; i--) if (degrees[i].Number == number) degrees.RemoveAt(i);
        if (degrees.Count == count) Fail(at, $"The chord has no {number} to leave out");
    }

    private bool IsAnyTensionAltered()
    {
        foreach (var degree in altered) if (degree.Number != 5) return true;
        return false;
    }

    private bool IsAltered(int number)
    {
        foreach (var degree in altered) if (degree.Number == number || (degree.Number == 6 && number == 13)) return true;
        return false;
    }

    // 2 and 4 are spoken of as 9 and 11, except by sus.
    private static Degree Tension(int number, int alteration) => new(number switch { 2 => 9, 4 => 11, _ => number }, alteration);

    private int ReadTop()
    {
        if (Accept("6/9") || Accept("69") || (slashAdds && Accept("9/6"))) { sixNine = true; return 6; }
        if (Accept("13")) return 13;
        if (Accept("11")) return 11;
        if (Accept("9")) return 9;
        if (Accept("7")) return 7;
        return Accept("6") ? 6 : 0;
    }

    private bool AcceptMajor(out bool triangle)
    {
        triangle = Accept("Δ") || Accept("∆") || Accept("△") || Accept("^");
        if (triangle) return true;
        if (AcceptWord("major") || AcceptWord("maj")) return true;
        // Not the "ma" of madd9.
        if (Follows("ma") && !char.IsAsciiLetter(Peek(2))) { At += 2; return true; }
        if (Peek() == 'j' && char.IsAsciiDigit(Peek(1))) { At++; return true; }
        // Not the capital M of Min.
        return !Follows("mi") && Accept("M");
    }

    // "+5" is the same triad, but "+" before another number is an augmented seventh, ninth, ...
    private bool AcceptPlus()
    {
        if (Peek() != '+') return false;
        At++;
        if (Peek() == '5') At++;
        return true;
    }
}
