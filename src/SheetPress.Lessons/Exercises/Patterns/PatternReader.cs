using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>
/// Reads a pattern file:
/// <code>
/// title: Bossa
/// summary: Root and fifth in the rhythm of the bossa.
/// instruction: Light and even, the same length for every note.
/// in-own-meter: Lean on the one. # printed behind it where the lines fit the meter of the lesson
/// meter: 4/4
/// lines:                        # one for each length of chord: the longest that fits is taken
///   - q. R e 5 q. 5 e R
///   - q. R e 5
///   - { line: q. R e 5 q 5 e 8 5, level: 3 }
///   - { line: q. R e 5 q 7 5, level: 3, over: minor }
/// fills:                        # for the bar that leads into a new phrase, or the rest of it
///   - q. R e 5 q. 5 e next
/// </code>
/// Lines are written as <see cref="LineNotation"/> says. Instead of lines a file may give tones (R 5 8 7) that take any rhythm.
/// Further entries: group, feel (straight, swing-eighths, swing-sixteenths), families (bass guitar ukulele mandolin banjo).
/// </summary>
internal sealed class PatternReader(DiagnosticBag bag)
{
    private static readonly string[] Names = ["title", "summary", "instruction", "in-own-meter", "group", "meter", "feel", "families", "tones", "lines", "fills"];
    private static readonly string[] LineNames = ["line", "meter", "level", "over"];
    private static readonly (string, ThirdKind)[] Thirds = [("major", ThirdKind.Major), ("minor", ThirdKind.Minor)];
    private static readonly (string, Feel)[] Feels = [("straight", Feel.Straight), ("swing-eighths", Feel.SwingEighths), ("swing-sixteenths", Feel.SwingSixteenths)];
    private static readonly (string, InstrumentFamily)[] Families =
    [
        ("bass", InstrumentFamily.Bass), ("guitar", InstrumentFamily.Guitar), ("ukulele", InstrumentFamily.Ukulele), ("mandolin", InstrumentFamily.Mandolin), ("banjo", InstrumentFamily.Banjo),
    ];

    /// <summary>The groups of the catalogue, in its order.</summary>
    public static readonly string[] Groups = ["chord tones", "scales", "links", "lines", "grooves", "neck", "own"];

    /// <summary>The pattern; null with the reasons reported.</summary>
    public Pattern? Read(SourceText source)
    {
        if (!SourceGuard.IsReadable(source, bag) || YamlTreeReader.Read(source, bag) is not { } root) return null;
        var fields = new FieldReader(root, Names, "a pattern", bag);
        var top = new SourceSpan(0, 0);
        fields.Require("title", PatternProblems.Missing("title", "title: Bossa"), top);
        var meter = fields.Text("meter") is { } text ? MeterReader.Read(text, bag) ?? new Meter(4, 4) : new Meter(4, 4);
        var families = fields.Words("families").Select(w => fields.ChoiceOf(w, "families", Families)).OfType<InstrumentFamily>();
        var pattern = new Pattern
        {
            Title = fields.Line("title", 120) ?? "",
            Summary = fields.Line("summary", 200) ?? "",
            Instruction = fields.Line("instruction", 300) ?? "",
            InOwnMeter = fields.Line("in-own-meter", 300) ?? "",
            Group = fields.Choice("group", Groups.Select((g, i) => (g.Replace(' ', '-'), i)).ToArray()) is { } group ? Groups[group] : "grooves",
            Feel = fields.Choice("feel", Feels),
            Families = [.. families],
            Tones = ReadTones(fields),
            Lines = ReadLines(fields, "lines", meter),
            Fills = ReadLines(fields, "fills", meter),
        };
        if (!fields.IsGiven("tones") && !fields.IsGiven("lines")) bag.Add(top, PatternProblems.Nothing());
        else if (fields.IsGiven("tones") && fields.IsGiven("lines")) bag.Add(fields.SpanOf("tones"), PatternProblems.TonesAndLines());
        return bag.HasErrors ? null : pattern;
    }

    private ImmutableArray<DegreeRequest> ReadTones(FieldReader fields)
    {
        var tones = ImmutableArray.CreateBuilder<DegreeRequest>();
        foreach (var word in fields.Words("tones"))
        {
            if (DegreeWords.TryParse(word.Value, out var degree)) tones.Add(degree);
            else bag.Add(word.Span, ExerciseProblems.UnknownDegree(word.Value));
        }
        return tones.ToImmutable();
    }

    private ImmutableArray<PatternLine> ReadLines(FieldReader fields, string name, Meter meter)
    {
        var node = fields.Node(name);
        var lines = ImmutableArray.CreateBuilder<PatternLine>();
        foreach (var item in node is SequenceNode list ? list.Items : node is null ? [] : [node])
        {
            if (ReadLine(item, name, meter) is { } line) lines.Add(line);
        }
        return lines.ToImmutable();
    }

    private PatternLine? ReadLine(SourceNode item, string name, Meter meter)
    {
        switch (item)
        {
            case ScalarNode { IsEmpty: false } scalar:
                return Time(scalar.Text, meter, 1, null);
            case MappingNode mapping:
                var fields = new FieldReader(mapping, LineNames, "a line of a pattern", bag);
                fields.Require("line", PatternProblems.Missing("line", "line: q R 5 8 5"), mapping.Span);
                var own = fields.Text("meter") is { } text ? MeterReader.Read(text, bag) ?? meter : meter;
                var level = fields.Number("level", 1, 5) ?? 1;
                var over = fields.Choice("over", Thirds);
                return fields.Text("line") is { } line ? Time(line, own, level, over) : null;
            case BrokenNode:
                return null;
            default:
                bag.Add(item.Span, FieldProblems.WrongType(name, "lines of notes"));
                return null;
        }
    }

    private PatternLine? Time(LocatedText text, Meter meter, int level, ThirdKind? over)
    {
        var errors = bag.Items.Count;
        var bars = new LineTokenReader(bag).Read(text);
        if (bars.TrueForAll(b => b.Count == 0)) bag.Add(text.Span, LineProblems.EmptyLine());
        foreach (var token in bars.SelectMany(b => b)) if (token is ClefToken or TempoToken) bag.Add(token.Word.Span, LineProblems.ChangeInPattern());
        if (bag.Items.Count > errors) return null;
        var line = new LineTimer(bag).TimeByValues(bars, meter);
        return line is null ? null : new PatternLine(line, meter, level, over);
    }
}
