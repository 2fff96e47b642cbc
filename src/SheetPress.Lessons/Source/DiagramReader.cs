using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Reads the list of neck diagrams.</summary>
/// <param name="key">The key as it is played, for numerals and "key" as a scale.</param>
/// <param name="rekeying">The way from the written key.</param>
/// <param name="instrument">The instrument the lesson is written for.</param>
/// <param name="bag">Where problems go.</param>
internal sealed class DiagramReader(Key key, KeyTransposition rekeying, Instrument instrument, DiagnosticBag bag)
{
    private const int MaximumDiagrams = 60;
    private static readonly string[] Names = ["chord", "scale", "shape", "frets", "view", "labels", "caption"];
    private static readonly (string, bool)[] Views = [("neck", false), ("upright", true)];
    private static readonly (string, bool)[] Labels = [("degrees", false), ("notes", true)];
    private readonly NeckReader _neck = new(instrument, bag);

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
                _ => Nothing(item),
            };
            if (diagram is not null) diagrams.Add(diagram);
        }
        return diagrams.ToImmutable();
    }

    private DiagramRequest? Nothing(SourceNode item)
    {
        bag.Add(item.Span, ExerciseProblems.DiagramOfNothing());
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
        var fields = new FieldReader(mapping, Names, "a diagram", bag);
        var chord = fields.Text("chord") is { } chordText ? ReadChord(chordText) : null;
        var scale = fields.Text("scale") is { } scaleText ? ReadScale(scaleText) : null;
        var positions = fields.JoinedText("shape", ' ') is { } shape ? ReadShape(shape) : [];
        if (fields.IsGiven("scale") && (fields.IsGiven("chord") || fields.IsGiven("shape"))) bag.Add(fields.SpanOf("scale"), ExerciseProblems.TwoSubjects());
        var isGiven = fields.IsGiven("chord") || fields.IsGiven("scale") || fields.IsGiven("shape");
        if (!isGiven && mapping.IsComplete) bag.Add(mapping.Entries.IsEmpty ? mapping.Span : mapping.Entries[0].Name.Span, ExerciseProblems.DiagramOfNothing());
        var kind = fields.IsGiven("shape") ? DiagramKind.Shape : fields.IsGiven("scale") ? DiagramKind.Scale : DiagramKind.Chord;
        var frets = fields.JoinedText("frets", ' ') is { } range ? _neck.Range(range, "frets") : null;
        var diagram = new DiagramRequest(kind, mapping.Span)
        {
            Chord = chord,
            Scale = scale,
            Positions = positions,
            FromFret = frets?.From,
            ToFret = frets?.To,
            Upright = fields.Choice("view", Views) ?? false,
            ShowNotes = fields.Choice("labels", Labels) ?? false,
            Caption = MarkupRekeyer.Move(fields.Line("caption", 120) ?? "", rekeying),
        };
        var hasSubject = kind switch { DiagramKind.Chord => chord is not null, DiagramKind.Scale => scale is not null, _ => !positions.IsEmpty };
        return hasSubject ? diagram : null;
    }

    private Chord? ReadChord(LocatedText text)
    {
        if (!HarmonyReader.IsNoChord(text.Value)) return new HarmonyReader(rekeying, bag).Read(text, key);
        bag.Add(text.Span, ExerciseProblems.DiagramOfNothing());
        return null;
    }

    private Scale? ReadScale(LocatedText text)
    {
        if (text.Value.Equals("key", StringComparison.OrdinalIgnoreCase)) return key.Scale;
        var space = text.Value.IndexOf(' ', StringComparison.Ordinal);
        if (space < 0 || !NoteName.TryParse(text.Value[..space], out var root))
        {
            bag.Add(text.Span, ExerciseProblems.IncompleteScale(text.Value));
            return null;
        }
        var name = text.Slice(space, text.Length - space).Trim();
        if (ScaleTypes.Find(name.Value) is { } type) return new Scale(rekeying.Move(root), type);
        var near = NearestWord.Find(name.Value, ScaleTypes.All.SelectMany(t => (IEnumerable<string>)[t.Name, .. t.Aliases]));
        bag.Add(name.Span, ExerciseProblems.UnknownScale(name.Value, near));
        return null;
    }

    private ImmutableArray<FretPosition> ReadShape(LocatedText text)
    {
        var positions = ImmutableArray.CreateBuilder<FretPosition>();
        foreach (var word in text.Words())
        {
            if (_neck.Place(word) is not { } place) continue;
            if (positions.Contains(place)) bag.Add(word.Span, ExerciseProblems.PlaceTwice(word.Value));
            else positions.Add(place);
        }
        return Moved(positions.ToImmutable());
    }

    // A shape keeps its form in another key: it moves along the neck, the other way round where it would leave it.
    private ImmutableArray<FretPosition> Moved(ImmutableArray<FretPosition> positions)
    {
        if (rekeying.IsNone() || positions.IsEmpty) return positions;
        var lowest = positions.Min(p => p.Fret);
        var highest = positions.Max(p => p.Fret);
        var by = rekeying.Interval.HalfSteps;
        if (lowest + by < 0) by += 12;
        if (highest + by > instrument.PlayableFrets) by -= 12;
        return lowest + by < 0 ? positions : [.. positions.Select(p => p with { Fret = p.Fret + by })];
    }
}
