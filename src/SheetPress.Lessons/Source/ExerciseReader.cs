using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>Reads the list of exercises.</summary>
/// <param name="styles">The styles to choose from.</param>
/// <param name="meter">The lesson's meter.</param>
/// <param name="inMeter">Reads the lesson's progression in another meter; null when it has none.</param>
/// <param name="instrument">The instrument the lesson is written for.</param>
/// <param name="bag">Where problems go.</param>
internal sealed class ExerciseReader(IReadOnlyList<ExerciseStyle> styles, Meter meter, Func<Meter, DiagnosticBag, Progression?> inMeter, Instrument instrument, DiagnosticBag bag)
{
    private const int MaximumExercises = 200;
    private const int MaximumMarks = 64;

    /// <summary>Entries that every exercise can have.</summary>
    internal static readonly string[] CommonNames =
    [
        "style", "title", "instruction", "meter", "instrument", "rhythm", "count", "tempo", "level", "position", "range", "strings", "open-strings", "show", "layout",
        "measures-per-system", "seed", "marks", "ladder",
    ];

    private static readonly (string, StaffLayout)[] Layouts =
    [
        ("staff-and-tab", StaffLayout.StaffAndTab), ("staff", StaffLayout.Staff), ("tab", StaffLayout.Tab), ("chord-chart", StaffLayout.ChordChart),
    ];

    private static readonly (string, LadderKind)[] Ladders =
    [
        ("tones", LadderKind.Tones), ("tempo", LadderKind.Tempo), ("rhythm", LadderKind.Rhythm), ("syncopation", LadderKind.Syncopation), ("positions", LadderKind.Positions),
    ];

    private enum Row
    {
        Fingers,
        Strings,
        Degrees,
        Counts,
        Romans,
        Shapes,
        Nothing,
    }

    private static readonly (string, Row)[] Rows = [("fingers", Row.Fingers), ("strings", Row.Strings), ("degrees", Row.Degrees), ("counts", Row.Counts), ("romans", Row.Romans), ("shapes", Row.Shapes), ("nothing", Row.Nothing)];

    private readonly List<ExerciseRequest> _sound = [];

    /// <summary>The exercises read without an error.</summary>
    public IReadOnlyList<ExerciseRequest> Sound => _sound;

    /// <summary>The exercises in order, those without a style left out.</summary>
    public ImmutableArray<ExerciseRequest> Read(SourceNode node)
    {
        if (node is not SequenceNode list)
        {
            if (node is MappingNode { Entries: [{ Name: { Length: > 1, Value: ['-', not ' ', ..] } name }, ..] })
            {
                bag.Add(name.SpanOf(0, 2), YamlProblems.NoSpaceAfterDash());
                return [];
            }
            if (node is MappingNode { Entries: [{ Name: { Value: ['–' or '—', ..] } dashed }, ..] })
            {
                bag.Add(dashed.SpanOf(0, 1), ExerciseProblems.LongDash());
                return [];
            }
            bag.Add(node.Span, node is MappingNode { Entries: [{ Name.Value: var first }, ..] } && CommonNames.Contains(first) ? ExerciseProblems.ExerciseWithoutDash(first) : ExerciseProblems.ExercisesNotList());
            return [];
        }
        if (list.Items.Length > MaximumExercises)
        {
            bag.Add(list.Items[MaximumExercises].Span, ExerciseProblems.TooManyExercises(MaximumExercises));
            return [];
        }
        var requests = ImmutableArray.CreateBuilder<ExerciseRequest>();
        foreach (var item in list.Items)
        {
            var problems = bag.Items.Count;
            if (ReadItem(item) is not { } request) continue;
            requests.Add(request);
            if (!bag.Items.Skip(problems).Any(d => d.Severity == Severity.Error)) _sound.Add(request);
        }
        return requests.ToImmutable();
    }

    private ExerciseRequest? ReadItem(SourceNode item)
    {
        switch (item)
        {
            case ScalarNode { IsEmpty: false } scalar:
                var name = scalar.Text.Trim();
                return FindStyle(name) is ({ } style, true) ? CheckRequired(new ExerciseRequest { Style = style, Span = name.Span }, name.Span) : null;
            case MappingNode mapping:
                return ReadMapping(mapping);
            case BrokenNode:
                return null;
            default:
                bag.Add(item.Span, ExerciseProblems.ExerciseNotEntries());
                return null;
        }
    }

    private ExerciseRequest? ReadMapping(MappingNode mapping)
    {
        var (style, isWritten) = StyleOf(mapping);
        string[]? known = style is null ? null : [.. CommonNames, .. style.Options.Select(o => o.Name)];
        var fields = new FieldReader(mapping, known, style is null ? "an exercise" : $"the exercise '{style.Name}'", bag, StylesWith);
        fields.Require("style", ExerciseProblems.NoStyle(), mapping.Entries.IsEmpty ? mapping.Span : mapping.Entries[0].Name.Span);
        // Everything is read even when the style is unknown, so that one run shows all faults.
        var ownMeter = fields.Text("meter") is { } meterText ? MeterReader.Read(meterText, bag) : null;
        var progression = ownMeter is null ? null : ExerciseFrame.InMeter(fields.Text("meter")!, ownMeter, inMeter, bag);
        var own = fields.Node("instrument") is { } instrumentNode ? new InstrumentReader(bag).Read(instrumentNode) : null;
        var marks = ReadMarks(fields);
        var rhythm = ReadRhythm(fields, ownMeter ?? meter);
        var show = ReadShow(fields);
        var title = fields.Line("title", 120);
        var instruction = fields.Line("instruction", 300);
        var tempo = fields.Text("tempo") is { } text ? TempoReader.Read(text, ownMeter ?? meter, bag) : null;
        var level = fields.Number("level", 1, 5);
        var neck = new NeckReader(own ?? instrument, bag).Read(fields);
        var layout = fields.Choice("layout", Layouts);
        var measures = fields.Number("measures-per-system", 1, 16);
        var seed = fields.Number("seed", 0, 1_000_000);
        var ladder = fields.Choice("ladder", Ladders);
        if (style is null) return null;
        var request = new ExerciseRequest
        {
            Style = style,
            Title = title,
            Instruction = instruction,
            Meter = progression is null ? null : ownMeter,
            Progression = progression,
            Instrument = own,
            Rhythm = rhythm?.WithMarks(marks),
            Marks = marks,
            Tempo = tempo,
            Level = level,
            Neck = neck,
            Layout = layout ?? StaffLayout.StaffAndTab,
            ShowFingers = Shown(Row.Fingers),
            ShowStrings = Shown(Row.Strings),
            ShowDegrees = Shown(Row.Degrees),
            ShowCounts = Shown(Row.Counts),
            ShowRomans = Shown(Row.Romans),
            ShowShapes = Shown(Row.Shapes),
            Ladder = ladder,
            MeasuresPerSystem = measures,
            Seed = seed ?? 1,
            Options = new OptionReader(bag).Read(style, fields),
            Span = mapping.Span,
        };
        if (ladder is LadderKind.Rhythm or LadderKind.Syncopation && rhythm is not null) bag.Add(ValueSpan("ladder"), OptionProblems.RhythmInLadder(fields.Text("ladder")!.Value));
        if (style.ClashIn(request) is { } clash) bag.Add(ValueSpan(clash.Option), clash.Problem);
        return isWritten ? CheckRequired(request, fields.SpanOf("style"), fields) : null;

        SourceSpan ValueSpan(string name) => fields.Text(name)?.Span ?? fields.SpanOf(name);

        bool? Shown(Row row) => show is null ? null : show.Contains(row);
    }

    // The names of the styles that have an option.
    private IReadOnlyList<string> StylesWith(string option) => [.. styles.Where(s => s.Options.Any(o => o.Name == option)).Select(s => s.Name)];

    // The style, and whether it is the one that was written: of a misspelt one, the likely one serves to check the rest.
    private (ExerciseStyle? Style, bool IsWritten) StyleOf(MappingNode mapping)
    {
        foreach (var entry in mapping.Entries)
        {
            if (entry.Name.Value != "style") continue;
            if (entry.Value is ScalarNode { IsEmpty: false } scalar) return FindStyle(scalar.Text.Trim());
            if (entry.Value is not (ScalarNode or BrokenNode)) bag.Add(entry.Value.Span, FieldProblems.WrongType("style", "the name of a style"));
            break;
        }
        return (null, false);
    }

    private (ExerciseStyle? Style, bool IsWritten) FindStyle(LocatedText name)
    {
        if (name.Value.StartsWith("style:", StringComparison.Ordinal))
        {
            bag.Add(name.SpanOf(0, 7), YamlProblems.NoSpaceAfterColon());
            return (null, false);
        }
        var wanted = name.Value.Replace(' ', '-').ToLowerInvariant();
        foreach (var style in styles) if (style.Name == wanted) return (style, true);
        var names = styles.Select(s => s.Name).ToArray();
        var near = NearestWord.Find(wanted, names);
        bag.Add(name.Span, ExerciseProblems.UnknownStyle(name.Value, near, names));
        return (styles.FirstOrDefault(s => s.Name == near), false);
    }

    private ExerciseRequest? CheckRequired(ExerciseRequest request, SourceSpan span, FieldReader? fields = null)
    {
        var complete = true;
        foreach (var option in request.Style.Options)
        {
            if (!option.Required || request.Options.ContainsKey(option.Name)) continue;
            complete = false;
            if (fields?.IsGiven(option.Name) != true) bag.Add(span, ExerciseProblems.MissingOption(request.Style.Name, option.Name, option.Summary));
        }
        return complete ? request : null;
    }

    private RhythmPattern? ReadRhythm(FieldReader fields, Meter meterOf)
    {
        var values = fields.JoinedText("rhythm", ' ');
        var counts = fields.JoinedText("count", ' ');
        if (values is not null && counts is not null) bag.Add(fields.SpanOf("count"), ExerciseProblems.RhythmAndCount());
        var fromValues = values is null ? null : RhythmReader.ReadValues(values, meterOf, bag);
        var fromCounts = counts is null ? null : RhythmReader.ReadCounts(counts, meterOf, bag);
        return fromValues ?? fromCounts;
    }

    private ImmutableArray<StrokeMarks> ReadMarks(FieldReader fields)
    {
        var words = fields.Words("marks");
        if (words.Length > MaximumMarks)
        {
            bag.Add(words[MaximumMarks].Span, ExerciseProblems.TooManyMarks(MaximumMarks));
            return [];
        }
        var marks = ImmutableArray.CreateBuilder<StrokeMarks>(words.Length);
        foreach (var word in words) if (MarkWords.Read(word, bag) is { } mark) marks.Add(mark);
        return marks.ToImmutable();
    }

    private HashSet<Row>? ReadShow(FieldReader fields)
    {
        var words = fields.Words("show");
        if (words.IsEmpty) return null;
        var rows = new HashSet<Row>();
        foreach (var word in words) if (fields.ChoiceOf(word, "show", Rows) is { } row) rows.Add(row);
        if (rows.Contains(Row.Nothing) && rows.Count > 1) bag.Add(fields.SpanOf("show"), ExerciseProblems.NothingAndSomething());
        return rows;
    }
}
