using System.Collections.Immutable;

namespace SheetPress.Lessons;

/// <summary>How a YAML scalar is written.</summary>
internal enum ScalarForm
{
    /// <summary>Without quotes.</summary>
    Plain,
    /// <summary>In single quotes.</summary>
    SingleQuoted,
    /// <summary>In double quotes, with escapes.</summary>
    DoubleQuoted,
    /// <summary>A block after | or >.</summary>
    Block,
}

/// <summary>
/// Finds where each character of a YAML scalar's value stands in the source. Whatever the form, the characters that are not white
/// space follow each other in the source as in the value; indentation, folded line ends, quotes and escapes are stepped over.
/// </summary>
internal static class ScalarPlaces
{
    /// <summary>Locates a value.</summary>
    /// <param name="source">The whole source.</param>
    /// <param name="start">Offset of its first character (quote and block sign included).</param>
    /// <param name="end">Offset behind it.</param>
    /// <param name="value">The value as YAML understands it.</param>
    /// <param name="form">How it is written.</param>
    public static LocatedText Locate(string source, int start, int end, string value, ScalarForm form)
    {
        end = Math.Min(end, source.Length);
        var at = Math.Min(start, end);
        if (form is ScalarForm.SingleQuoted or ScalarForm.DoubleQuoted) at++;
        if (form == ScalarForm.Block)
        {
            var lineEnd = source.IndexOf('\n', at, end - at);
            at = lineEnd < 0 ? end : lineEnd + 1;
        }
        var places = ImmutableArray.CreateBuilder<SourceSpan>(value.Length);
        for (var i = 0; i < value.Length; i++)
        {
            var place = form == ScalarForm.DoubleQuoted ? NextEscaped(source, ref at, end, value, ref i, places) : Next(source, ref at, end, value[i], form);
            places.Add(place);
        }
        return new LocatedText(value, places.MoveToImmutable(), places.Count > 0 ? places[^1].End : Math.Min(at, end));
    }

    private static SourceSpan Next(string source, ref int at, int end, char wanted, ScalarForm form)
    {
        if (!char.IsWhiteSpace(wanted)) return Solid(source, ref at, end, wanted, form);
        return Gap(source, ref at, end, wanted);
    }

    private static SourceSpan Solid(string source, ref int at, int end, char wanted, ScalarForm form)
    {
        while (at < end && source[at] != wanted && char.IsWhiteSpace(source[at])) at++;
        if (at >= end) return new SourceSpan(end, end);
        var start = at;
        at += wanted == '\'' && form == ScalarForm.SingleQuoted ? 2 : 1;
        return new SourceSpan(start, at);
    }

    // A line feed of the value stands at the next line feed of the source; any other gap at the next white space. A space that a line
    // ending was folded into takes the place of that line ending.
    private static SourceSpan Gap(string source, ref int at, int end, char wanted)
    {
        var start = at;
        if (wanted == '\n')
        {
            var feed = source.IndexOf('\n', at, end - at);
            if (feed < 0) return new SourceSpan(end, end);
            at = feed + 1;
            return new SourceSpan(feed, at);
        }
        if (at < end && source[at] == wanted)
        {
            // Spaces at a line's end before a folded break belong to the break.
            var probe = at;
            while (probe < end && source[probe] is ' ' or '\t' or '\r') probe++;
            if (probe >= end || source[probe] != '\n' || wanted != ' ')
            {
                at++;
                return new SourceSpan(start, at);
            }
            at = probe + 1;
            return new SourceSpan(probe, at);
        }
        while (at < end && source[at] is not '\n') at++;
        if (at >= end) return new SourceSpan(end, end);
        at++;
        return new SourceSpan(at - 1, at);
    }

    private static SourceSpan NextEscaped(string source, ref int at, int end, string value, ref int index, ImmutableArray<SourceSpan>.Builder places)
    {
        // A backslash at a line's end joins the lines.
        while (at + 1 < end && source[at] == '\\' && source[at + 1] is '\n' or '\r')
        {
            at++;
            while (at < end && char.IsWhiteSpace(source[at])) at++;
        }
        var wanted = value[index];
        if (!char.IsWhiteSpace(wanted))
        {
            while (at < end && char.IsWhiteSpace(source[at]) && source[at] != wanted) at++;
        }
        if (at >= end || source[at] != '\\') return Next(source, ref at, end, wanted, ScalarForm.DoubleQuoted);
        var start = at;
        var digits = at + 1 < end ? source[at + 1] switch { 'x' => 2, 'u' => 4, 'U' => 8, _ => 0 } : 0;
        at = Math.Min(end, at + 2 + digits);
        var span = new SourceSpan(start, at);
        if (digits == 8 && char.IsHighSurrogate(wanted) && index + 1 < value.Length)
        {
            places.Add(span);
            index++;
        }
        return span;
    }
}
