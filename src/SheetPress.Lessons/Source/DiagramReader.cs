using System.Collections.Immutable;
using System.Globalization;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>What diagrams may refer to.</summary>
/// <param name="Key">The key as it is played, for numerals and "key" as a scale.</param>
/// <param name="Rekeying">The way from the written key.</param>
/// <param name="Instrument">The instrument the lesson is written for.</param>
/// <param name="Exercises">How many exercises the lesson lists.</param>
/// <param name="Measures">How many measures its progression has; 0 when it cannot be read.</param>
internal readonly record struct DiagramSurroundings(Key Key, KeyTransposition Rekeying, Instrument Instrument, int Exercises, int Measures);

/// <summary>Reads the list of neck diagrams.</summary>
/// <param name="around">What diagrams may refer to.</param>
/// <param name="bag">Where problems go.</param>
internal sealed class DiagramReader(DiagramSurroundings around, DiagnosticBag bag)
{
    private const int MaximumDiagrams = 60;
    private const int MostOfFamily = 12;
    private static readonly string[] Names = ["chord", "scale", "shape", "grip", "exercise", "measures", "positions", "frets", "view", "labels", "fret-spacing", "caption"];
    private static readonly (string, bool)[] Views = [("neck", false), ("upright", true)];
    private static readonly (string, bool)[] Spacings = [("even", true), ("proportional", false)];

    private static readonly (string, DiagramText)[] Labels =
        [("degrees", DiagramText.Degrees), ("notes", DiagramText.Notes), ("fingers", DiagramText.Fingers), ("nothing", DiagramText.Nothing)];

    private readonly NeckReader _neck = new(around.Instrument, bag);
    private readonly ShapeReader _shapes = new(around.Instrument, around.Rekeying, bag);

    /// <summary>The diagrams in order; none for the word "none".</summary>
    public ImmutableArray<DiagramRequest> Read(SourceNode node)
    {
        if (node is ScalarNode word && word.Text.Trim().Value.Equals("none", StringComparison.OrdinalIgnoreCase)) return [];
        if (node is not SequenceNode list)
        {
            bag.Add(node.Span, ExerciseProblems.DiagramsNotList());
            return [];
        }
        if (list.Items.Length > MaximumDiagrams)
        {
            bag.Add(list.Items[MaximumDiagrams].Span, ExerciseProblems.TooManyDiagrams(MaximumDiagrams));
            return [];
        }
        var diagrams = ImmutableArray.CreateBuilder<DiagramRequest>();
        foreach (var item in list.Items)
        {
            var diagram = item switch
            {
                ScalarNode { IsEmpty: false } scalar => ReadSubject(scalar.Text.Trim()),
                MappingNode mapping => ReadMapping(mapping),
                BrokenNode => null,
                _ => Nothing(item.Span),
            };
            if (diagram is not null) diagrams.Add(diagram);
        }
        return diagrams.ToImmutable();
    }

    private DiagramRequest? Nothing(SourceSpan span)
    {
        bag.Add(span, ExerciseProblems.DiagramOfNothing());
        return null;
    }

    // A bare text: a scale when it has a blank ("D dorian"), else a chord.
    private DiagramRequest? ReadSubject(LocatedText text)
    {
        if (text.Value.Contains(' ', StringComparison.Ordinal) || text.Value.Equals("key", StringComparison.OrdinalIgnoreCase))
        {
            return ReadScale(text) is { } scale ? new DiagramRequest(DiagramKind.Scale, text.Span) { Scale = scale } : null;
        }
        return ReadChord(text) is { } chord ? new DiagramRequest(DiagramKind.Chord, text.Span) { Chord = chord } : null;
    }

    private DiagramRequest? ReadMapping(MappingNode mapping)
    {
        // "G7: open": the chord stands where the entry's name should.
        if (mapping.Entries is [{ Name: var name }, ..] && !Names.Contains(name.Value) && (ChordParser.Parse(name.Value) is { Success: true, IsNoChord: false } || RomanNumeral.TryParse(name.Value, out _)))
        {
            bag.Add(name.Span, DiagramProblems.ChordForEntry(name.Value));
            return null;
        }
        var fields = new FieldReader(mapping, Names, "a diagram", bag);
        var frets = fields.JoinedText("frets", ' ') is { } range ? _neck.Range(range, "frets") : null;
        var common = new DiagramRequest(KindOf(fields), mapping.Span)
        {
            FromFret = frets?.From,
            ToFret = frets?.To,
            Upright = fields.Choice("view", Views) ?? fields.IsGiven("grip"),
            Labels = fields.Choice("labels", Labels),
            EvenFrets = fields.Choice("fret-spacing", Spacings),
            Family = ReadFamily(fields),
            Caption = MarkupRekeyer.Move(fields.Line("caption", 120) ?? "", around.Rekeying),
        };
        var diagram = common.Kind switch
        {
            DiagramKind.Path => ReadPath(fields, common),
            DiagramKind.Shape => ReadShape(fields, common),
            DiagramKind.Grip => ReadGrip(fields, common),
            DiagramKind.Scale => fields.Text("scale") is { } scaleText && ReadScale(scaleText) is { } scale ? common with { Scale = scale } : null,
            _ => fields.Text("chord") is { } chordText && ReadChord(chordText) is { } chord ? common with { Chord = chord } : null,
        };
        CheckEntries(mapping, fields, common);
        return diagram;
    }

    private static DiagramKind KindOf(FieldReader fields) =>
        fields.IsGiven("exercise") ? DiagramKind.Path : fields.IsGiven("grip") ? DiagramKind.Grip
        : fields.IsGiven("shape") ? DiagramKind.Shape : fields.IsGiven("scale") ? DiagramKind.Scale : DiagramKind.Chord;

    // What does not go together.
    private void CheckEntries(MappingNode mapping, FieldReader fields, DiagramRequest request)
    {
        string[] given = [.. ((string[])["exercise", "grip", "shape", "scale"]).Where(fields.IsGiven)];
        // An entry that is unknown may be what it shows, misspelt: that is one fault and not two.
        var isUnknown = mapping.Entries.Any(e => !Names.Contains(e.Name.Value));
        if (given.Length == 0 && !fields.IsGiven("chord") && !isUnknown && mapping.IsComplete) bag.Add(mapping.Entries.IsEmpty ? mapping.Span : mapping.Entries[0].Name.Span, ExerciseProblems.DiagramOfNothing());
        if (given.Length > 1) bag.Add(fields.SpanOf(given[1]), ExerciseProblems.TwoSubjects());
        else if (fields.IsGiven("chord") && given is ["exercise" or "scale"]) bag.Add(fields.SpanOf(given[0] == "scale" ? "scale" : "chord"), ExerciseProblems.TwoSubjects());
        if (fields.IsGiven("measures") && request.Kind != DiagramKind.Path) bag.Add(fields.SpanOf("measures"), DiagramProblems.MeasuresOfNothing());
        if (request.Labels is not null && request.Kind == DiagramKind.Path) bag.Add(fields.SpanOf("labels"), DiagramProblems.PathLabels());
        if (request.Labels == DiagramText.Fingers && request.Kind is DiagramKind.Chord or DiagramKind.Scale && request.Family is null) bag.Add(fields.SpanOf("labels"), DiagramProblems.NoFingers());
    }

    private DiagramRequest? ReadPath(FieldReader fields, DiagramRequest common)
    {
        var text = fields.Text("exercise");
        var number = text is null ? null : fields.NumberOf(text, "exercise", 1, 999);
        if (number > around.Exercises)
        {
            bag.Add(text!.Span, ExerciseProblems.NoSuchExercise(number.Value, around.Exercises));
            number = null;
        }
        if (common.Family is not null) bag.Add(fields.SpanOf("positions"), DiagramProblems.OneOnly("the path of an exercise"));
        var measures = fields.JoinedText("measures", ' ') is { } range ? ReadMeasures(range) : null;
        return number is { } exercise ? common with { Exercise = exercise - 1, FromMeasure = measures?.From - 1, ToMeasure = measures?.To - 1 } : null;
    }

    private (int From, int To)? ReadMeasures(LocatedText text)
    {
        var ends = text.Value.Replace(" to ", "-", StringComparison.OrdinalIgnoreCase).Replace('–', '-').Split(['-', ' '], StringSplitOptions.RemoveEmptyEntries);
        if (ends.Length is 1 or 2 && Number(ends[0], out var from) && Number(ends[^1], out var to) && from >= 1 && from <= to && (around.Measures == 0 || to <= around.Measures)) return (from, to);
        bag.Add(text.Span, DiagramProblems.BadMeasures(around.Measures));
        return null;
    }

    private static bool Number(string text, out int number) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out number);

    private DiagramRequest? ReadShape(FieldReader fields, DiagramRequest common)
    {
        var chord = fields.Text("chord") is { } chordText ? ReadChord(chordText) : null;
        var shape = fields.JoinedText("shape", ' ') is { } text ? _shapes.Shape(text) : WrittenShape.None;
        if (common.Family is not null) bag.Add(fields.SpanOf("positions"), DiagramProblems.OneOnly("a shape"));
        return shape.Places.IsEmpty ? null : common with { Chord = chord, Positions = shape.Places, Fingers = shape.Fingers };
    }

    private DiagramRequest? ReadGrip(FieldReader fields, DiagramRequest common)
    {
        var chord = fields.Text("chord") is { } chordText ? ReadChord(chordText) : null;
        if (fields.JoinedText("grip", ' ') is not { } text) return null;
        if (ShapeReader.IsSpelledOut(text.Value))
        {
            if (common.Family is not null) bag.Add(fields.SpanOf("positions"), DiagramProblems.OneOnly("a grip that is spelled out"));
            if (_shapes.Grip(text) is not { } shape) return null;
            if (NeckShapes.Held(around.Instrument, chord ?? new Chord(around.Key.Tonic, ChordQualities.All[0]), shape.Places) is null) bag.Add(text.Span, DiagramProblems.CannotHold(text.Value));
            return common with { Chord = chord, Positions = shape.Places, Fingers = shape.Fingers };
        }
        if (chord is not null) bag.Add(fields.SpanOf("chord"), ExerciseProblems.TwoSubjects());
        if (around.Instrument.Family == InstrumentFamily.Bass)
        {
            bag.Add(text.Span, DiagramProblems.GripOnBass(around.Instrument.Name));
            return null;
        }
        return ReadChord(text) is { } named ? common with { Chord = named } : null;
    }

    private int? ReadFamily(FieldReader fields)
    {
        if (fields.Text("positions") is not { } text) return null;
        if (text.Value.Equals("all", StringComparison.OrdinalIgnoreCase)) return MostOfFamily;
        if (Number(text.Value, out var number) && number is >= 2 and <= MostOfFamily) return number;
        bag.Add(text.Span, DiagramProblems.BadPositions(text.Value));
        return null;
    }

    private Chord? ReadChord(LocatedText text)
    {
        if (!HarmonyReader.IsNoChord(text.Value)) return new HarmonyReader(around.Rekeying, bag).Read(text, around.Key);
        bag.Add(text.Span, ExerciseProblems.DiagramOfNothing());
        return null;
    }

    private Scale? ReadScale(LocatedText text)
    {
        if (text.Value.Equals("key", StringComparison.OrdinalIgnoreCase)) return around.Key.Scale;
        var space = text.Value.IndexOf(' ', StringComparison.Ordinal);
        if (space < 0 || !NoteName.TryParse(text.Value[..space], out var root))
        {
            bag.Add(text.Span, ExerciseProblems.IncompleteScale(text.Value));
            return null;
        }
        var name = text.Slice(space, text.Length - space).Trim();
        if (ScaleTypes.Find(name.Value) is { } type) return new Scale(around.Rekeying.Move(root), type);
        var near = NearestWord.Find(name.Value, ScaleTypes.All.SelectMany(t => (IEnumerable<string>)[t.Name, .. t.Aliases]));
        bag.Add(name.Span, ExerciseProblems.UnknownScale(name.Value, near));
        return null;
    }
}
