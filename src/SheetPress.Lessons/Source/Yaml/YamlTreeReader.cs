using System.Collections.Immutable;
using SheetPress.Theory;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace SheetPress.Lessons;

/// <summary>
/// Reads YAML into nodes that know their places. Where the YAML is broken it reports why and goes on at the next entry of the top
/// level, so that one run shows the faults of the whole file.
/// </summary>
internal sealed class YamlTreeReader
{
    private const int MaximumDepth = 16;
    private const int MaximumRestarts = 20;

    private readonly SourceText _source;
    private readonly DiagnosticBag _bag;
    private readonly ImmutableArray<SourceEntry>.Builder _entries = ImmutableArray.CreateBuilder<SourceEntry>();
    private Parser _parser = null!;
    private int _base;
    private int _lastOffset;
    private int _resumeAfter;
    private bool _stopped;

    private YamlTreeReader(SourceText source, DiagnosticBag bag)
    {
        _source = source;
        _bag = bag;
    }

    /// <summary>Reads the whole source; null when there is no mapping at its top.</summary>
    public static MappingNode? Read(SourceText source, DiagnosticBag bag) => new YamlTreeReader(source, bag).ReadFile();

    private MappingNode? ReadFile()
    {
        var isComplete = true;
        var found = false;
        int? start = 0;
        for (var round = 0; round <= MaximumRestarts && start is { } from; round++)
        {
            var root = ReadFrom(from, round > 0);
            if (root is MappingNode mapping)
            {
                found = true;
                _entries.AddRange(mapping.Entries);
            }
            else if (root is not null and not BrokenNode)
            {
                _bag.Add(root.Span, YamlProblems.NotEntries());
                return null;
            }
            if (!_stopped) break;
            isComplete = false;
            start = NextTopLevelEntry(_resumeAfter);
        }
        if (found) return new MappingNode(_entries.ToImmutable(), isComplete, new SourceSpan(0, _source.Text.Length));
        if (isComplete) _bag.Add(new SourceSpan(0, 0), YamlProblems.EmptyFile());
        return null;
    }

    private SourceNode? ReadFrom(int start, bool isRestart)
    {
        _base = start;
        _lastOffset = start;
        _stopped = false;
        _parser = new Parser(new Scanner(new StringReader(start == 0 ? _source.Text : _source.Text[start..]), skipComments: true));
        SourceNode? root = null;
        while (Next() is { } parsed)
        {
            switch (parsed)
            {
                case DocumentStart when root is not null:
                    _bag.Add(SpanOf(parsed), YamlProblems.SecondDocument());
                    return root;
                case StreamStart or DocumentStart or DocumentEnd or StreamEnd:
                    break;
                default:
                    root = ReadNode(parsed, 0);
                    if (isRestart && root is ScalarNode) return null;
                    break;
            }
        }
        return root;
    }

    private SourceNode ReadNode(ParsingEvent parsed, int depth)
    {
        var span = SpanOf(parsed);
        if (parsed is NodeEvent node && parsed is not AnchorAlias)
        {
            if (!node.Anchor.IsEmpty) _bag.Add(SignSpan(span, '&'), YamlProblems.SignAtStart('&'));
            else if (!node.Tag.IsEmpty) _bag.Add(SignSpan(span, '!'), YamlProblems.SignAtStart('!'));
            if (parsed is Scalar && (!node.Anchor.IsEmpty || !node.Tag.IsEmpty)) return new BrokenNode(span);
        }
        if (depth > MaximumDepth)
        {
            _bag.Add(new SourceSpan(span.Start, Math.Max(span.End, Math.Min(span.Start + 1, _source.Text.Length))), YamlProblems.TooDeep());
            _stopped = true;
            _resumeAfter = _source.LineOf(span.Start);
            return new BrokenNode(span);
        }
        switch (parsed)
        {
            case Scalar scalar:
                return ReadScalar(scalar, span);
            case SequenceStart sequence:
                return ReadSequence(span, sequence.Style == SequenceStyle.Flow, depth);
            case MappingStart mapping:
                return ReadMapping(span, mapping.Style == MappingStyle.Flow, depth);
            case AnchorAlias:
                _bag.Add(SignSpan(span, '*'), YamlProblems.SignAtStart('*'));
                return new BrokenNode(span);
            default:
                return new BrokenNode(span);
        }
    }

    private ScalarNode ReadScalar(Scalar scalar, SourceSpan span)
    {
        var form = scalar.Style switch
        {
            ScalarStyle.SingleQuoted => ScalarForm.SingleQuoted,
            ScalarStyle.DoubleQuoted => ScalarForm.DoubleQuoted,
            ScalarStyle.Literal or ScalarStyle.Folded => ScalarForm.Block,
            _ => ScalarForm.Plain,
        };
        if (form == ScalarForm.Plain) WarnOfHiddenText(span.End);
        return new ScalarNode(ScalarPlaces.Locate(_source.Text, span.Start, span.End, scalar.Value, form), form == ScalarForm.Plain);
    }

    // "tones: R #4" means R with a comment: YAML drops the rest without a word.
    private void WarnOfHiddenText(int end)
    {
        var text = _source.Text;
        var at = end;
        while (at < text.Length && text[at] is ' ' or '\t') at++;
        if (at + 1 >= text.Length || text[at] != '#' || at == 0 || text[at - 1] is not (' ' or '\t')) return;
        if (text[at + 1] is ' ' or '\t' or '#' or '\r' or '\n') return;
        var lineEnd = text.IndexOf('\n', at);
        if (lineEnd < 0) lineEnd = text.Length;
        var hidden = text[at..lineEnd].TrimEnd();
        _bag.Add(new SourceSpan(at, at + hidden.Length), IsMusic(hidden) ? YamlProblems.CommentHidesMusic() : YamlProblems.CommentHidesText());
    }

    // "#iv°7 | V7", "#4 5": a lesson without it would be another lesson.
    private static bool IsMusic(string hidden)
    {
        var blank = hidden.IndexOf(' ', StringComparison.Ordinal);
        var word = blank < 0 ? hidden : hidden[..blank];
        return hidden.Contains('|', StringComparison.Ordinal) || RomanNumeral.TryParse(word, out _) || (Degree.TryParse(word, out var degree) && degree.Number > 1);
    }

    private SequenceNode ReadSequence(SourceSpan span, bool isFlow, int depth)
    {
        var items = ImmutableArray.CreateBuilder<SourceNode>();
        while (Next() is { } parsed)
        {
            if (parsed is SequenceEnd) return new SequenceNode(items.ToImmutable(), true, Whole(span, isFlow ? parsed : null, items.Count > 0 ? items[^1] : null));
            items.Add(ReadNode(parsed, depth + 1));
        }
        return new SequenceNode(items.ToImmutable(), false, span);
    }

    private MappingNode ReadMapping(SourceSpan span, bool isFlow, int depth)
    {
        var entries = ImmutableArray.CreateBuilder<SourceEntry>();
        while (Next() is { } parsed)
        {
            if (parsed is MappingEnd) return new MappingNode(entries.ToImmutable(), true, Whole(span, isFlow ? parsed : null, entries.Count > 0 ? entries[^1].Value : null));
            var name = ReadNode(parsed, depth + 1);
            if (Next() is not { } valueEvent)
            {
                if (name is ScalarNode lost) entries.Add(new SourceEntry(lost.Text, new BrokenNode(lost.Span)));
                break;
            }
            var value = ReadNode(valueEvent, depth + 1);
            if (name is ScalarNode scalar) entries.Add(new SourceEntry(scalar.Text, value));
            else if (name is not BrokenNode) _bag.Add(name.Span, YamlProblems.NameNotText());
        }
        // A fault in the lines of the last value spoils it, even when YAML took part of it for the whole.
        if (entries.Count > 0 && _stopped && _source.LineOf(entries[^1].Value.Span.Start) == _resumeAfter) entries[^1] = entries[^1] with { Value = new BrokenNode(entries[^1].Value.Span) };
        return new MappingNode(entries.ToImmutable(), false, span);
    }

    // In brackets a list ends with its bracket, else with its last item: the end that YAML gives is the start of what follows.
    private SourceSpan Whole(SourceSpan start, ParsingEvent? bracket, SourceNode? last)
    {
        var end = last?.Span.End ?? start.End;
        if (bracket is not null)
        {
            // The event's own end is the place of the bracket.
            end = SpanOf(bracket).Start;
            if (end < _source.Text.Length && _source.Text[end] is ']' or '}') end++;
        }
        return new SourceSpan(start.Start, Math.Max(end, start.Start));
    }

    private ParsingEvent? Next()
    {
        if (_stopped) return null;
        try
        {
            if (!_parser.MoveNext()) return null;
            var parsed = _parser.Current!;
            _lastOffset = Math.Min(_source.Text.Length, _base + (int)parsed.Start.Index);
            return parsed;
        }
        catch (YamlException exception)
        {
            Stop(_base + (int)exception.Start.Index, exception.Message);
            return null;
        }
        catch (Exception exception) when (exception is InvalidOperationException or ArgumentException or IndexOutOfRangeException or OverflowException or FormatException)
        {
            // The YAML reader gives up on some unclosed brackets this way, without a place.
            Stop(_lastOffset, "");
            return null;
        }
    }

    private void Stop(int offset, string message)
    {
        _stopped = true;
        var (span, problem) = new YamlTrouble(_source, _base).Explain(Math.Clamp(offset, _base, _source.Text.Length), _lastOffset, message);
        _bag.Add(span, problem);
        _resumeAfter = _source.LineOf(span.Start);
    }

    // Offset of the next line that starts an entry at the left margin.
    private int? NextTopLevelEntry(int afterLine)
    {
        for (var line = afterLine + 1; line <= _source.LineCount; line++)
        {
            var text = _source.LineText(line);
            var at = 0;
            while (at < text.Length && (char.IsAsciiLetterLower(text[at]) || text[at] == '-')) at++;
            if (at > 0 && text[0] != '-' && at < text.Length && text[at] == ':' && (at + 1 == text.Length || text[at + 1] == ' ')) return _source.LineStart(line);
        }
        return null;
    }

    private SourceSpan SpanOf(ParsingEvent parsed)
    {
        var start = Math.Min(_source.Text.Length, _base + (int)parsed.Start.Index);
        var end = Math.Clamp(_base + (int)parsed.End.Index, start, _source.Text.Length);
        return new SourceSpan(start, end);
    }

    private SourceSpan SignSpan(SourceSpan span, char sign)
    {
        var at = span.Start;
        return at < _source.Text.Length && _source.Text[at] == sign ? new SourceSpan(at, at + 1) : span;
    }
}
