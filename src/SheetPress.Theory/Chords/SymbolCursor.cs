namespace SheetPress.Theory;

/// <summary>A place in the text of a chord symbol, with the small readings that its grammar is made of.</summary>
internal abstract class SymbolCursor(string text, int start)
{
    /// <summary>The whole text.</summary>
    protected string Text { get; } = text;

    /// <summary>How many brackets are open.</summary>
    protected int Depth { get; private set; }

    /// <summary>Where the outermost open bracket stands.</summary>
    protected int OpenedAt { get; private set; }

    /// <summary>Whether all is read.</summary>
    protected bool AtEnd => At >= Text.Length;

    /// <summary>Where reading stands: at the end of the text, at the slash of a bass note, or at what could not be read.</summary>
    internal int At { get; private protected set; } = start;

    /// <summary>What is wrong at <see cref="At"/>; null when nothing is.</summary>
    internal string? Error { get; private set; }

    /// <summary>Takes a reading back, with the error that it met.</summary>
    protected void ReturnTo(int at, int depth) => (At, Depth, Error) = (at, depth, null);

    /// <summary>A run of one kind of sign as half steps; + and - count as signs when a number follows.</summary>
    protected int ReadAccidental()
    {
        var alteration = 0;
        while (At < Text.Length && Math.Abs(alteration) < 2)
        {
            var step = Text[At] switch
            {
                'b' or '♭' => -1,
                '#' or '♯' => 1,
                '-' or '−' or '–' when char.IsAsciiDigit(Peek(1)) => -1,
                '+' when char.IsAsciiDigit(Peek(1)) => 1,
                _ => 0,
            };
            if (step == 0 || step * alteration < 0) break;
            alteration += step;
            At++;
        }
        return alteration;
    }

    /// <summary>A number of one digit, or 11 or 13.</summary>
    protected bool TryNumber(out int number)
    {
        number = 0;
        var end = At;
        while (end < Text.Length && end - At < 2 && char.IsAsciiDigit(Text[end])) number = (number * 10) + (Text[end++] - '0');
        if (number is not (11 or 13) && end - At == 2) { end--; number /= 10; }
        if (end == At) return false;
        At = end;
        return true;
    }

    /// <summary>Passes over blanks, commas, brackets, slashes inside brackets, and the point of an abbreviation.</summary>
    protected void SkipSeparators()
    {
        for (; At < Text.Length; At++)
        {
            switch (Text[At])
            {
                case '(': if (Depth++ == 0) OpenedAt = At; break;
                case ')' when Depth == 0: Fail(At, "The bracket was not opened"); return;
                case ')': Depth--; break;
                case ' ' or ',': break;
                case '/' when Depth > 0: break;
                case '.' when At > 0 && char.IsAsciiLetterOrDigit(Text[At - 1]) && !char.IsAsciiDigit(Peek(1)): break;
                default: return;
            }
        }
    }

    /// <summary>The letter at the place, or so many behind it; zero beyond the end.</summary>
    protected char Peek(int ahead = 0) => At + ahead < Text.Length ? Text[At + ahead] : '\0';

    /// <summary>Whether a word stands here, in either case.</summary>
    protected bool Follows(string word) => string.Compare(Text, At, word, 0, word.Length, StringComparison.OrdinalIgnoreCase) == 0;

    /// <summary>Passes over a word in either case.</summary>
    protected bool AcceptWord(string word)
    {
        if (!Follows(word)) return false;
        At += word.Length;
        return true;
    }

    /// <summary>Passes over letters exactly as given.</summary>
    protected bool Accept(string letters)
    {
        if (string.CompareOrdinal(Text, At, letters, 0, letters.Length) != 0) return false;
        At += letters.Length;
        return true;
    }

    /// <summary>Stops with an error; the first one stays. Always false.</summary>
    protected bool Fail(int at, string message)
    {
        Error ??= message;
        At = at;
        return false;
    }
}
