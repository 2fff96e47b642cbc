using System.Collections.Immutable;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Splits a written progression into tokens.</summary>
/// <param name="source">The source it comes from: a folded line end is a line end all the same.</param>
/// <param name="bag">Where problems go.</param>
internal sealed class ProgressionScanner(SourceText source, DiagnosticBag bag)
{
    /// <summary>The tokens in order.</summary>
    public ImmutableArray<ProgressionToken> Scan(LocatedText text)
    {
        var tokens = ImmutableArray.CreateBuilder<ProgressionToken>();
        var value = text.Value;
        var at = 0;
        var atLineStart = true;
        while (at < value.Length)
        {
            var start = at;
            if (IsLineEnd(text, at))
            {
                at++;
                Add(ProgressionTokenKind.LineEnd, start, 1);
                atLineStart = true;
            }
            else if (char.IsWhiteSpace(value[at]) || value[at] is ',' or '(' or ')')
            {
                // Chords in brackets, such as a turnaround for the last time round, are chords.
                at++;
            }
            else if (atLineStart && PartName.LengthAt(text, at, LineEndFrom(text, at)) is > 0 and var length)
            {
                tokens.Add(new(ProgressionTokenKind.Mark, text.Slice(at, length).Trim(), text.SpanOf(at, length)));
                at += length;
                if (at < value.Length && value[at] == ':') at++;
                atLineStart = false;
            }
            else if (IsBarSign(value, at))
            {
                while (at < value.Length && value[at] is '|' or ':') at++;
                Add(ProgressionTokenKind.Barline, start, at - start);
            }
            else if (value[at] == '[')
            {
                at = MarkEnd(text, at);
                var closed = at > start + 1 && value[at - 1] == ']';
                if (!closed) bag.Add(text.SpanOf(start, at - start), ProgressionProblems.UnclosedMark());
                tokens.Add(new(ProgressionTokenKind.Mark, text.Slice(start + 1, at - start - (closed ? 2 : 1)).Trim(), text.SpanOf(start, at - start)));
            }
            else if (value[at] == '#' && (at + 1 == value.Length || value[at + 1] == ' '))
            {
                while (at < value.Length && !IsLineEnd(text, at)) at++;
            }
            else
            {
                at = WordEnd(text, at);
                Add(ProgressionTokenKind.Word, start, at - start);
                atLineStart = false;
            }
        }
        return tokens.DrainToImmutable();

        void Add(ProgressionTokenKind kind, int start, int length) => tokens.Add(new(kind, text.Slice(start, length), text.SpanOf(start, length)));
    }

    private bool IsLineEnd(LocatedText text, int index)
    {
        if (text.Value[index] == '\n') return true;
        if (text.Value[index] != ' ') return false;
        var span = text.SpanOf(index, 1);
        return span.Start < span.End && source.Text.AsSpan(span.Start, span.Length).Contains('\n');
    }

    private int LineEndFrom(LocatedText text, int at)
    {
        while (at < text.Length && !IsLineEnd(text, at)) at++;
        return at;
    }

    // A colon is a bar sign only beside a bar: "F7:2" gives beats, "F7:|" ends a repeat.
    private static bool IsBarSign(string value, int at)
    {
        while (at < value.Length && value[at] == ':') at++;
        return at < value.Length && value[at] == '|';
    }

    private bool IsOf(LocatedText text, int at) =>
        string.CompareOrdinal(text.Value, at, RomanNumeral.Of, 0, RomanNumeral.Of.Length) == 0 && at + RomanNumeral.Of.Length < text.Length && !char.IsWhiteSpace(text.Value[at + RomanNumeral.Of.Length]) && !IsLineEnd(text, at + RomanNumeral.Of.Length - 1);

    private int MarkEnd(LocatedText text, int at)
    {
        while (at < text.Length)
        {
            if (text.Value[at] == ']') return at + 1;
            if (IsLineEnd(text, at)) return at;
            at++;
        }
        return at;
    }

    // A comma inside brackets belongs to the chord: C7(b9,#11). So does a space there: C7 is over, C7(b9 b13) is not; nor is V7/3 of ii.
    private int WordEnd(LocatedText text, int at)
    {
        var depth = 0;
        var value = text.Value;
        while (at < value.Length)
        {
            var sign = value[at];
            if (sign is '|' or '[' || IsLineEnd(text, at) || (sign == ':' && IsBarSign(value, at))) break;
            if (depth == 0 && IsOf(text, at)) at += RomanNumeral.Of.Length;
            else if (depth == 0 && (char.IsWhiteSpace(sign) || sign == ',')) break;
            if (sign == '(' && value.AsSpan(at).IndexOf(')') >= 0) depth++;
            else if (sign == ')' && depth-- == 0) break;
            at++;
        }
        return at;
    }
}
