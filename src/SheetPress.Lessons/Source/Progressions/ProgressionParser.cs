using System.Collections.Immutable;
using System.Globalization;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Puts the tokens of a written progression together to bars.</summary>
/// <param name="bag">Where problems go.</param>
internal sealed class ProgressionParser(DiagnosticBag bag)
{
    private readonly List<WrittenBar> _bars = [];
    private readonly BracketMark _marks = new(bag);
    private WrittenBar _bar = new();
    // Whether a bar sign here opens a bar (at the start, and behind a line end) rather than closing an empty one.
    private bool _atMargin = true;
    private ProgressionToken? _lastBarline;
    private ProgressionToken? _lastMark;

    // Whether chords are written as annotations, a root and a colon: C:maj7 G:7.
    private bool _isAnnotated;

    /// <summary>The bars in order.</summary>
    public ImmutableArray<WrittenBar> Parse(ImmutableArray<ProgressionToken> tokens)
    {
        _isAnnotated = tokens.Any(t => t.Kind == ProgressionTokenKind.Word && AnnotationColon(t.Text.Value) is > 0 and var colon && t.Text.Value[colon + 1] is '(' or (>= 'a' and <= 'z'));
        for (var i = 0; i < tokens.Length; i++)
        {
            var token = tokens[i];
            switch (token.Kind)
            {
                case ProgressionTokenKind.Word when IsTimes(token.Text.Value, out var times) && i > 0 && EndsRepeat(tokens[i - 1]):
                    SetTimes(token, times);
                    break;
                case ProgressionTokenKind.Word when IsTimes(token.Text.Value, out _):
                    bag.Add(token.Span, ProgressionProblems.TimesWithoutRepeat(token.Text.Value));
                    break;
                case ProgressionTokenKind.Word when IsEnding(token.Text.Value, out var numbers):
                    StartEnding(token, numbers);
                    break;
                // "|1 F7": the number right behind the bar line needs no point.
                case ProgressionTokenKind.Word when token.Text.Value is [>= '1' and <= '9'] && i > 0 && IsTouching(tokens[i - 1], token) && i + 1 < tokens.Length && tokens[i + 1].Kind == ProgressionTokenKind.Word:
                    StartEnding(token, [token.Text.Value[0] - '0']);
                    break;
                case ProgressionTokenKind.Word:
                    AddChord(token);
                    break;
                case ProgressionTokenKind.Mark:
                    _marks.Apply(token, _bar, _bars.Count == 0);
                    _lastMark = token;
                    break;
                case ProgressionTokenKind.Barline:
                    ReadBarline(token);
                    break;
                case ProgressionTokenKind.LineEnd:
                    if (_bar.Chords.Count > 0) CloseBar();
                    _atMargin = true;
                    break;
            }
        }
        if (_bar.Chords.Count > 0) CloseBar();
        FinishDangling();
        return [.. _bars];
    }

    private bool EndsRepeat(ProgressionToken token) => token.Kind == ProgressionTokenKind.Barline && token.Text.Value[0] == ':' && _bars.Count > 0;

    private static bool IsTouching(ProgressionToken barline, ProgressionToken word) => barline.Kind == ProgressionTokenKind.Barline && barline.Span.End == word.Span.Start;

    // Where the colon stands behind a bare root; -1 when none does, or nothing follows it.
    private static int AnnotationColon(string text) =>
        text.Length > 0 && text[0] is >= 'A' and <= 'G' && NoteName.TryRead(text, 0, out _, out var end) && end + 1 < text.Length && text[end] == ':' ? end : -1;

    private bool IsAnnotation(string text) => _isAnnotated && AnnotationColon(text) is > 0 and var colon && (text[colon + 1] is '(' or (>= 'a' and <= 'z') || (text[(colon + 1)..] != "1" && ChordParser.Parse(text).Success));

    private void AddChord(ProgressionToken token)
    {
        var text = token.Text;
        var colon = text.Value.LastIndexOf(':');
        SheetPress.Scores.Fraction? beats = null;
        if (colon >= 0 && !(IsAnnotation(text.Value) && AnnotationColon(text.Value) == colon))
        {
            if (BeatCount.TryParse(text.Value[(colon + 1)..], out var count)) beats = count;
            else bag.Add(text.SpanOf(colon + 1, text.Length - colon - 1), ProgressionProblems.BadBeats());
            text = text.Slice(0, colon);
        }
        _bar.Span = _bar.Chords.Count == 0 ? token.Span : new SourceSpan(_bar.Span.Start, token.Span.End);
        _bar.Chords.Add(new WrittenChord(text, beats, token.Span));
        _atMargin = false;
    }

    private void ReadBarline(ProgressionToken token)
    {
        var signs = token.Text.Value;
        var bars = signs.Count(c => c == '|');
        var ends = signs[0] == ':';
        var starts = signs[^1] == ':';
        if (bars > 2 || signs.Trim(':').Contains(':', StringComparison.Ordinal)) bag.Add(token.Span, ProgressionProblems.UnknownBarline());

        if (_bar.Chords.Count > 0) CloseBar();
        else if (!_atMargin && !ends && !starts && _lastBarline is { } last && !last.Text.Value.Contains(':', StringComparison.Ordinal))
        {
            // "| |:" and ":| |" are one bar line written in two pieces, "| |" is a bar that was forgotten.
            bag.Add(new SourceSpan(last.Span.Start, token.Span.End), ProgressionProblems.EmptyBar());
        }

        if (ends)
        {
            if (_bars.Count == 0) bag.Add(token.Span, ProgressionProblems.RepeatOfNothing());
            else (_bars[^1].RepeatEnd, _bars[^1].RepeatEndSpan) = (true, token.Span);
        }
        else if (bars == 2 && _bars.Count > 0)
        {
            _bars[^1].DoubleBarline = true;
        }
        if (starts) (_bar.RepeatStart, _bar.RepeatStartSpan) = (true, token.Span);
        _atMargin = false;
        _lastBarline = token;
    }

    private void StartEnding(ProgressionToken token, ImmutableArray<int> numbers)
    {
        if (_bar.Chords.Count > 0) bag.Add(token.Span, ProgressionProblems.EndingInsideBar());
        else (_bar.Ending, _bar.EndingSpan) = (numbers, token.Span);
        _atMargin = false;
    }

    private void SetTimes(ProgressionToken token, int times)
    {
        if (times is < 2 or > 20) bag.Add(token.Span, ProgressionProblems.BadTimes());
        else _bars[^1].Times = times;
    }

    private void CloseBar()
    {
        _bars.Add(_bar);
        _bar = new WrittenBar();
    }

    // Marks behind the last bar line: a jump belongs to the last bar, anything else has no bar to stand in.
    private void FinishDangling()
    {
        if (_bars.Count > 0) _bars[^1].EndMarks.AddRange(_bar.EndMarks);
        if (_bar.RepeatStart) bag.Add(_bar.RepeatStartSpan, ProgressionProblems.RepeatNotClosed());
        else if (!_bar.Ending.IsEmpty) bag.Add(_bar.EndingSpan, ProgressionProblems.NoBarForMark());
        else if (_bar.HasMarks && _lastMark is not null) bag.Add(_lastMark.Span, ProgressionProblems.NoBarForMark());
    }

    private static bool IsTimes(string text, out int times)
    {
        times = 0;
        if (text.Length is not (2 or 3)) return false;
        var number = text[0] is 'x' or 'X' or '×' ? text.AsSpan(1) : text[^1] is 'x' or 'X' or '×' ? text.AsSpan(0, text.Length - 1) : [];
        return int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out times);
    }

    // "1." "2." "1.2." "1-3." "1,3." : numbers of an ending, closed by a point.
    private static bool IsEnding(string text, out ImmutableArray<int> numbers)
    {
        numbers = [];
        if (text.Length < 2 || text[^1] != '.' || !char.IsAsciiDigit(text[0])) return false;
        var found = ImmutableArray.CreateBuilder<int>();
        var from = 0;
        foreach (var sign in text)
        {
            if (char.IsAsciiDigit(sign))
            {
                var number = sign - '0';
                if (number == 0) return false;
                for (var n = from == 0 ? number : from + 1; n <= number; n++) found.Add(n);
                from = 0;
            }
            else if (sign == '-' && found.Count > 0)
            {
                from = found[^1];
            }
            else if (sign is not '.')
            {
                return false;
            }
        }
        numbers = [.. found.Distinct().Order()];
        return true;
    }
}
