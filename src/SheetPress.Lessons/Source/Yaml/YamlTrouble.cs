namespace SheetPress.Lessons;

/// <summary>
/// Turns the YAML reader's complaint into what a teacher most likely did. The complaint often comes a line late; the lines around it
/// are looked at for the usual slips, the likeliest first.
/// </summary>
/// <param name="source">The source.</param>
/// <param name="start">Offset at which reading began.</param>
internal sealed class YamlTrouble(SourceText source, int start)
{
    private readonly string _text = source.Text;

    /// <summary>Explains a complaint.</summary>
    /// <param name="offset">Where the reader complained.</param>
    /// <param name="lastOffset">Where the last thing stood that it could read.</param>
    /// <param name="message">What it said; empty when it broke down.</param>
    public (SourceSpan Span, Problem Problem) Explain(int offset, int lastOffset, string message)
    {
        var line = source.LineOf(offset);
        if (message.Contains("tab", StringComparison.Ordinal) && FindTab(source.LineOf(start)) is { } tab) return (tab, YamlProblems.Tab());
        if (message.Contains("quoted scalar", StringComparison.Ordinal))
        {
            return message.Contains("escape", StringComparison.Ordinal) || message.Contains("hexdecimal", StringComparison.Ordinal)
                ? (FindBackslash(offset), YamlProblems.Escape())
                : (new SourceSpan(offset, Math.Min(offset + 1, _text.Length)), YamlProblems.UnclosedQuote());
        }
        if (TabInIndentation(line) is { } tabHere) return (tabHere, YamlProblems.Tab());
        if (BlockSignWithText(line) is { } sign) return (sign, YamlProblems.BlockSignWithText());
        if (TextBehindBracket(line) is { } bracketed) return (bracketed, YamlProblems.TextBehindBracket(_text[bracketed.Start]));
        if (TextBehindQuote(offset) is { } behind) return (behind, YamlProblems.TextBehindQuote());
        if ((NoSpaceAfterColon(line) ?? (line > source.LineOf(start) ? NoSpaceAfterColon(line - 1) : null)) is { } colon) return (colon, YamlProblems.NoSpaceAfterColon());
        if (offset < _text.Length && _text[offset] is '@' or '%' or '`' or '&' or '*' or '!') return (new SourceSpan(offset, offset + 1), YamlProblems.SignAtStart(_text[offset]));
        if (UnclosedBracket(offset, lastOffset) is { } bracket) return (bracket, YamlProblems.UnclosedBracket(_text[bracket.Start]));
        if (ListOnSameLine(line) is { } dash) return (dash, YamlProblems.ListOnSameLine());
        if (message.Contains("multiline", StringComparison.Ordinal) && line > source.LineOf(start) && NoColon(line - 1) is { } above) return (above, YamlProblems.NoColon());
        if (message.Contains("invalid mapping", StringComparison.Ordinal) && ColonInValue(line, offset) is { } inner) return (inner, YamlProblems.ColonInValue());
        if (RemarkAbove(line) is { } remark) return (remark, YamlProblems.RemarkInText());
        if (NoColon(line) is { } word) return (word, Line(line).Indentation == 0 ? YamlProblems.NoColon() : YamlProblems.TextIndentation());
        var (indentation, content) = Line(line);
        if (content.Length > 0 && indentation > 0) return (new SourceSpan(source.LineStart(line) + indentation, source.LineStart(line) + indentation + content.Length), YamlProblems.Indentation());
        return (new SourceSpan(offset, Math.Min(offset + 1, _text.Length)), YamlProblems.Syntax());
    }

    private (int Indentation, string Content) Line(int line)
    {
        var text = source.LineText(line);
        var content = text.TrimStart(' ', '\t', '\u00A0', '\u3000');
        return (text.Length - content.Length, content.TrimEnd());
    }

    // Where the value on a line begins, behind list dashes and "name: "; -1 when the line has no name with a value.
    private int ValueStart(int line)
    {
        var (indentation, content) = Line(line);
        var colon = content.IndexOf(": ", StringComparison.Ordinal);
        if (colon < 0) return -1;
        var at = colon + 1;
        while (at < content.Length && content[at] == ' ') at++;
        return at < content.Length ? source.LineStart(line) + indentation + at : -1;
    }

    private SourceSpan? FindTab(int fromLine)
    {
        for (var line = fromLine; line <= source.LineCount; line++) if (TabInIndentation(line) is { } span) return span;
        return null;
    }

    private SourceSpan? TabInIndentation(int line)
    {
        var text = source.LineText(line);
        for (var i = 0; i < text.Length && text[i] is ' ' or '\t' or '\u00A0' or '\u3000'; i++)
        {
            if (text[i] != ' ' && text.AsSpan(i).Trim().Length > 0) return new SourceSpan(source.LineStart(line) + i, source.LineStart(line) + i + 1);
        }
        return null;
    }

    private SourceSpan? BlockSignWithText(int line)
    {
        var at = ValueStart(line);
        if (at < 0 || _text[at] is not ('|' or '>')) return null;
        var (indentation, content) = Line(line);
        return new SourceSpan(at, source.LineStart(line) + indentation + content.Length);
    }

    // "[A] Cm7 | F7": YAML takes the bracket for a list and stumbles over what follows it.
    private SourceSpan? TextBehindBracket(int line)
    {
        var (indentation, content) = Line(line);
        var from = source.LineStart(line) + indentation;
        var at = ValueStart(line);
        if (at < 0) at = from + (content.StartsWith("- ", StringComparison.Ordinal) ? 2 : 0);
        if (at >= _text.Length || _text[at] is not ('[' or '{')) return null;
        var end = from + content.Length;
        var close = _text.IndexOf(_text[at] == '[' ? ']' : '}', at, Math.Max(0, end - at));
        if (close < 0 || close + 1 >= end) return null;
        var behind = _text.AsSpan(close + 1, end - close - 1).Trim();
        return behind.IsEmpty || behind[0] is '#' or ',' or ']' or '}' or ':' ? null : new SourceSpan(at, end);
    }

    private SourceSpan? TextBehindQuote(int offset)
    {
        var line = source.LineOf(offset);
        var at = ValueStart(line);
        if (at < 0 || at >= offset || _text[at] is not ('\'' or '"')) return null;
        var (indentation, content) = Line(line);
        return new SourceSpan(offset, Math.Max(offset, source.LineStart(line) + indentation + content.Length));
    }

    private SourceSpan? NoSpaceAfterColon(int line)
    {
        var (indentation, content) = Line(line);
        var at = 0;
        if (content.StartsWith("- ", StringComparison.Ordinal)) at = 2;
        var nameStart = at;
        while (at < content.Length && (char.IsAsciiLetter(content[at]) || content[at] == '-')) at++;
        if (at == nameStart || at + 1 >= content.Length || content[at] != ':' || content[at + 1] is ' ' or '/' or '|' or ':') return null;
        var from = source.LineStart(line) + indentation;
        return new SourceSpan(from + nameStart, from + at + 2);
    }

    private SourceSpan? UnclosedBracket(int offset, int lastOffset)
    {
        var open = new Stack<int>();
        var end = Math.Max(Math.Min(offset, _text.Length), lastOffset);
        for (var i = start; i < end; i++)
        {
            if (_text[i] is '[' or '{' && i > 0 && _text[i - 1] is ' ' or '[' or '{' or ',' or '\n') open.Push(i);
            else if (_text[i] is ']' or '}' && open.Count > 0) open.Pop();
        }
        // A bracket inside an ordinary text is none: the value has to begin with it.
        while (open.Count > 0)
        {
            var at = open.Pop();
            if (ValueStart(source.LineOf(at)) == at || source.LineStart(source.LineOf(at)) == at || (at > 1 && _text[at - 1] == ' ' && _text[at - 2] == '-')) return new SourceSpan(at, at + 1);
        }
        return null;
    }

    private SourceSpan? ListOnSameLine(int line)
    {
        var at = ValueStart(line);
        return at >= 0 && _text[at] == '-' && (at + 1 == _text.Length || _text[at + 1] is ' ' or '\r' or '\n') ? new SourceSpan(at, at + 1) : null;
    }

    // "title: Blues: the start": the second colon is one too many. A line with only its own colon is one that is indented wrongly.
    private SourceSpan? ColonInValue(int line, int offset)
    {
        var at = ValueStart(line);
        if (at < 0 || at > offset) return null;
        var colon = _text.IndexOf(':', at);
        return colon >= 0 && colon <= offset ? new SourceSpan(colon, colon + 1) : null;
    }

    private SourceSpan? NoColon(int line)
    {
        var (indentation, content) = Line(line);
        if (content.Length == 0 || content.Contains(": ", StringComparison.Ordinal) || content.EndsWith(':') || content[0] is '-' or '#' or '[' or '{') return null;
        var from = source.LineStart(line) + indentation;
        return new SourceSpan(from, from + content.Length);
    }

    // Without quotes a text of several lines ends at a remark, and the next line is one too many.
    private SourceSpan? RemarkAbove(int line)
    {
        if (line <= source.LineOf(start) || NoColon(line) is null || Line(line).Indentation == 0) return null;
        var (indentation, content) = Line(line - 1);
        var at = content.IndexOf(" #", StringComparison.Ordinal) + 1;
        if (at == 0 && !content.StartsWith('#')) return null;
        var from = source.LineStart(line - 1) + indentation;
        return new SourceSpan(from + at, from + content.Length);
    }

    private SourceSpan FindBackslash(int offset)
    {
        // The reader points at the quote or at the escape; the first escape that YAML does not know is meant.
        for (var i = offset; i + 1 < _text.Length; i++)
        {
            if (_text[i] != '\\') continue;
            if (!"0abt\tnvfre \"/\\N_LPxuU\r\n".Contains(_text[i + 1], StringComparison.Ordinal) || _text[i + 1] is 'x' or 'u' or 'U') return new SourceSpan(i, i + 2);
            i++;
        }
        return new SourceSpan(offset, Math.Min(offset + 1, _text.Length));
    }
}
