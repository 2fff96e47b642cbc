using System.Collections.Immutable;
using System.Globalization;

namespace SheetPress.Lessons;

/// <summary>Reads the entries of one mapping by name and type, and reports what is unknown, double, missing or of the wrong type.</summary>
internal sealed class FieldReader
{
    // What people call some entries elsewhere.
    private static readonly (string Word, string Name)[] OtherWords =
    [
        ("chords", "progression"), ("changes", "progression"), ("harmony", "progression"), ("name", "title"), ("heading", "title"), ("time", "meter"), ("time-signature", "meter"),
        ("metre", "meter"), ("signature", "meter"), ("bpm", "tempo"), ("speed", "tempo"), ("groove", "feel"), ("difficulty", "level"), ("text", "notes"), ("comments", "notes"),
        ("composer", "author"), ("teacher", "author"), ("by", "author"), ("plan", "practice"), ("type", "style"), ("kind", "style"), ("counts", "count"), ("frets", "range"), ("fret", "position"),
        ("reps", "times"), ("repeat", "times"), ("duration", "minutes"), ("task", "do"), ("lefty", "left-handed"), ("scale", "scale-length"),
    ];

    private readonly Dictionary<string, SourceEntry> _entries = [];
    private readonly List<string> _meant = [];
    private readonly MappingNode _mapping;
    private readonly DiagnosticBag _bag;

    /// <summary>Takes the entries of a mapping.</summary>
    /// <param name="mapping">The mapping.</param>
    /// <param name="known">Names that may stand here; null to let any stand (when it is unknown what may).</param>
    /// <param name="place">What the mapping is, for messages: "a lesson", "an exercise".</param>
    /// <param name="bag">Where problems go.</param>
    /// <param name="elsewhere">The styles in which a name that may not stand here may stand; null where there are no styles.</param>
    public FieldReader(MappingNode mapping, IReadOnlyList<string>? known, string place, DiagnosticBag bag, Func<string, IReadOnlyList<string>>? elsewhere = null)
    {
        _mapping = mapping;
        _bag = bag;
        foreach (var entry in mapping.Entries)
        {
            var name = entry.Name.Value;
            if (_entries.TryGetValue(name, out var first)) bag.Add(entry.Name.Span, FieldProblems.DuplicateEntry(name, bag.Source.PositionOf(first.Name.Span.Start).Line));
            else if (known is null || known.Contains(name)) _entries.Add(name, entry);
            else ReportUnknown(entry.Name, place, known, elsewhere?.Invoke(name) ?? []);
        }
    }

    private void ReportUnknown(LocatedText name, string place, IReadOnlyList<string> known, IReadOnlyList<string> elsewhere)
    {
        if (name.Length > 0 && char.IsWhiteSpace(name.Value[0]))
        {
            // A blank that YAML does not know for one, such as word processors write.
            _bag.Add(name.SpanOf(0, 1), YamlProblems.Tab());
            return;
        }
        if (name.Length > 1 && name.Value[0] == '-' && name.Value[1] != ' ')
        {
            _bag.Add(name.SpanOf(0, 2), YamlProblems.NoSpaceAfterDash());
            return;
        }
        if (elsewhere.Count > 0)
        {
            _bag.Add(name.Span, FieldProblems.OptionOfOthers(name.Value, place, elsewhere));
            return;
        }
        var near = NearestWord.Find(name.Value, known);
        foreach (var (word, other) in OtherWords) if (near is null && word.Equals(name.Value, StringComparison.OrdinalIgnoreCase) && known.Contains(other)) near = other;
        if (near is not null) _meant.Add(near);
        _bag.Add(name.Span, FieldProblems.UnknownEntry(name.Value, place, near, known));
    }

    /// <summary>Whether anything is written for a name, be it readable or not.</summary>
    public bool IsGiven(string name) => _entries.TryGetValue(name, out var entry) && entry.Value is not ScalarNode { IsEmpty: true };

    /// <summary>The place of a name, for problems about the entry as a whole; of the mapping when there is no such entry.</summary>
    public SourceSpan SpanOf(string name) => _entries.TryGetValue(name, out var entry) ? entry.Name.Span : _mapping.Span;

    /// <summary>The value of a name; null when nothing (readable) is written.</summary>
    public SourceNode? Node(string name) =>
        _entries.TryGetValue(name, out var entry) && entry.Value is not (BrokenNode or ScalarNode { IsEmpty: true }) ? entry.Value : null;

    /// <summary>Reports a name that must be given and is not, unless it is there misspelt or in what could not be read.</summary>
    /// <param name="name">The name.</param>
    /// <param name="problem">What to report.</param>
    /// <param name="at">Where.</param>
    public void Require(string name, Problem problem, SourceSpan at)
    {
        if (!IsGiven(name) && _mapping.IsComplete && !_meant.Contains(name)) _bag.Add(_entries.TryGetValue(name, out var entry) ? entry.Name.Span : at, problem);
    }

    /// <summary>A text, its ends trimmed; null when there is none.</summary>
    public LocatedText? Text(string name) => Node(name) switch
    {
        null => null,
        ScalarNode scalar => scalar.Text.Trim() is { Length: > 0 } text ? text : null,
        var other => WrongType<LocatedText>(other, name, "one value, not a list"),
    };

    /// <summary>A text on one line: line ends become spaces.</summary>
    public string? Line(string name, int maximumLength)
    {
        if (Text(name) is not { } text) return null;
        if (text.Length > maximumLength) _bag.Add(text.Span, FieldProblems.TooLong(name, maximumLength));
        return string.Join(' ', text.Value.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
    }

    /// <summary>A text that may be given as a list of its parts, joined with a character between them.</summary>
    public LocatedText? JoinedText(string name, char between) => Node(name) switch
    {
        null => null,
        ScalarNode scalar => scalar.Text.Value.Trim().Length > 0 ? scalar.Text : null,
        SequenceNode sequence => Join(sequence, name, between),
        var other => WrongType<LocatedText>(other, name, "text"),
    };

    /// <summary>A progression: a text, a list of bars (each a text or a list of chords), or parts by their names, which become rehearsal marks.</summary>
    public LocatedText? Progression(string name) => Node(name) switch
    {
        null => null,
        ScalarNode scalar => scalar.Text.Value.Trim().Length > 0 ? scalar.Text : null,
        var node => JoinBars(node) is { Count: > 0 } parts ? LocatedText.Join(parts, '\n') : null,
    };

    private static List<LocatedText> JoinBars(SourceNode node)
    {
        var parts = new List<LocatedText>();
        switch (node)
        {
            case ScalarNode scalar when scalar.Text.Trim() is { Length: > 0 } text:
                parts.Add(text);
                break;
            case SequenceNode sequence:
                foreach (var item in sequence.Items)
                {
                    var inner = JoinBars(item);
                    var isBar = item is SequenceNode && inner.Count > 1 && !inner.Exists(t => t.Value.AsSpan().IndexOfAny('|', '\n') >= 0);
                    if (isBar) parts.Add(LocatedText.Join(inner, ' '));
                    else parts.AddRange(inner);
                }
                break;
            case MappingNode mapping:
                foreach (var entry in mapping.Entries)
                {
                    // "{C, F, G}" is a list that someone put into the wrong brackets.
                    var isBar = entry.Value is ScalarNode { IsEmpty: true };
                    parts.Add(isBar ? entry.Name : entry.Name.As($"[{entry.Name.Value}]"));
                    parts.AddRange(JoinBars(entry.Value));
                }
                break;
        }
        return parts;
    }

    /// <summary>Words, given in one text or as a list; empty when there are none.</summary>
    public ImmutableArray<LocatedText> Words(string name) => JoinedText(name, ' ')?.Words() ?? [];

    /// <summary>A whole number in a range; null with a report when it is none.</summary>
    public int? Number(string name, int minimum, int maximum) => Text(name) is { } text ? NumberOf(text, name, minimum, maximum) : null;

    /// <summary>A text as a whole number in a range; null with a report when it is none.</summary>
    public int? NumberOf(LocatedText text, string name, int minimum, int maximum)
    {
        var isNumber = int.TryParse(text.Value, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number);
        if (isNumber && number >= minimum && number <= maximum) return number;
        var isLarge = !isNumber && text.Value.TrimStart('-').All(char.IsAsciiDigit);
        _bag.Add(text.Span, isNumber || isLarge ? FieldProblems.OutOfRange(name, minimum, maximum) : FieldProblems.NotNumber(name, text.Value, minimum, maximum));
        return null;
    }

    /// <summary>Yes or no.</summary>
    public bool? Flag(string name)
    {
        if (Text(name) is not { } text) return null;
        switch (text.Value.ToLowerInvariant())
        {
            case "yes" or "true" or "on": return true;
            case "no" or "false" or "off": return false;
            default:
                _bag.Add(text.Span, FieldProblems.NotFlag(name, text.Value));
                return null;
        }
    }

    /// <summary>One of several words; blanks within count as hyphens, letter case does not count.</summary>
    public T? Choice<T>(string name, IReadOnlyList<(string Word, T Value)> choices) where T : struct => Text(name) is { } text ? ChoiceOf(text, name, choices) : null;

    /// <summary>A text as one of several words.</summary>
    public T? ChoiceOf<T>(LocatedText text, string name, IReadOnlyList<(string Word, T Value)> choices) where T : struct
    {
        var wanted = text.Value.Replace(' ', '-');
        foreach (var (word, value) in choices) if (word.Equals(wanted, StringComparison.OrdinalIgnoreCase)) return value;
        var words = choices.Select(c => c.Word).ToArray();
        _bag.Add(text.Span, FieldProblems.UnknownWord(text.Value, name, NearestWord.Find(wanted, words), words));
        return null;
    }

    private LocatedText? Join(SequenceNode sequence, string name, char between)
    {
        var parts = new List<LocatedText>();
        foreach (var item in sequence.Items)
        {
            if (item is ScalarNode scalar)
            {
                if (scalar.Text.Trim() is { Length: > 0 } text) parts.Add(text);
            }
            else if (item is SequenceNode inner)
            {
                if (Join(inner, name, between) is { } text) parts.Add(text);
            }
            else if (item is MappingNode)
            {
                WrongType<LocatedText>(item, name, "text");
            }
        }
        return parts.Count == 0 ? null : LocatedText.Join(parts, between);
    }

    private T? WrongType<T>(SourceNode node, string name, string wanted) where T : class
    {
        _bag.Add(node.Span, FieldProblems.WrongType(name, wanted));
        return null;
    }
}
