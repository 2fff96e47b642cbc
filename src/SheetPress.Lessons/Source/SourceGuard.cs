namespace SheetPress.Lessons;

/// <summary>Turns away texts that no lesson is: too large, or with characters that no text has.</summary>
internal static class SourceGuard
{
    /// <summary>The longest lesson, in characters: about eighty pages.</summary>
    public const int MaximumLength = 250_000;

    /// <summary>The longest line, in characters.</summary>
    public const int MaximumLine = 10_000;

    /// <summary>Whether the text can be read; the reason is reported when not.</summary>
    public static bool IsReadable(SourceText source, DiagnosticBag bag)
    {
        var text = source.Text;
        if (text.Length > MaximumLength)
        {
            bag.Add(new SourceSpan(0, 0), FileProblems.FileTooLarge(MaximumLength));
            return false;
        }
        var lineStart = 0;
        for (var i = 0; i < text.Length; i++)
        {
            var sign = text[i];
            if (sign == '\n') lineStart = i + 1;
            if (i - lineStart > MaximumLine)
            {
                bag.Add(new SourceSpan(lineStart, lineStart + 1), FileProblems.LineTooLong(MaximumLine));
                return false;
            }
            if (IsText(text, i)) continue;
            bag.Add(new SourceSpan(i, i + 1), FileProblems.ControlCharacter((int)sign));
            return false;
        }
        return true;
    }

    private static bool IsText(string text, int index)
    {
        var sign = text[index];
        if (sign is '\t' or '\n') return true;
        if (sign == '\r') return index + 1 < text.Length && text[index + 1] == '\n';
        if (char.IsHighSurrogate(sign)) return index + 1 < text.Length && char.IsLowSurrogate(text[index + 1]);
        if (char.IsLowSurrogate(sign)) return index > 0 && char.IsHighSurrogate(text[index - 1]);
        return !char.IsControl(sign) && sign is not ('\uFEFF' or '\uFFFE' or '\uFFFF' or '\u2028' or '\u2029');
    }
}
