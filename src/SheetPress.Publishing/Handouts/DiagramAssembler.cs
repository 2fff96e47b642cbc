using System.Collections.Immutable;
using System.Globalization;
using SheetPress.Engraving;
using SheetPress.Lessons;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Publishing;

/// <summary>Makes the neck diagrams of a handout: those the lesson asks for, or the tones of each chord round one position.</summary>
/// <param name="built">The lesson.</param>
/// <param name="wording">Words for captions.</param>
internal sealed class DiagramAssembler(BuiltLesson built, HandoutWording wording)
{
    /// <summary>Most chord diagrams made when the lesson does not ask for any.</summary>
    private const int MostByDefault = 8;

    /// <summary>Frets a diagram spans when the lesson does not give its range.</summary>
    private const int UsualSpan = 4;

    private readonly Instrument _instrument = built.Lesson.Instrument;

    /// <summary>The diagrams of a lesson, in order.</summary>
    public static ImmutableArray<NeckDiagram> Assemble(BuiltLesson built, HandoutWording wording)
    {
        var lesson = built.Lesson;
        var assembler = new DiagramAssembler(built, wording);
        if (lesson.HasOwnDiagrams) return [.. lesson.Diagrams.SelectMany(assembler.Make)];
        return [.. lesson.Progression.Chords.Select(c => c.Chord).OfType<Chord>().Distinct().Take(MostByDefault).Select(chord => assembler.OfChord(chord, null, null, DotLabels.Degrees))];
    }

    private IEnumerable<NeckDiagram> Make(DiagramRequest request)
    {
        var family = request.Family is { } most ? Family(request, most).ToArray() : [];
        NeckDiagram?[] diagrams = family.Length > 0 ? [.. family] : [One(request)];
        for (var i = 0; i < diagrams.Length; i++)
        {
            if (diagrams[i] is not { } diagram) continue;
            if (request.Caption.Length > 0) diagram = diagram with { Caption = request.Caption };
            if (diagrams.Length > 1) diagram = diagram with { Caption = Numbered(diagram, i + 1) };
            yield return diagram with { Upright = request.Upright, EvenFrets = request.EvenFrets ?? request.Upright };
        }
    }

    private string Numbered(NeckDiagram diagram, int number) => diagram.Caption.Length == 0
        ? string.Format(CultureInfo.InvariantCulture, wording.DiagramPosition, number)
        : string.Create(CultureInfo.InvariantCulture, $"{diagram.Caption}, {number}");

    private NeckDiagram? One(DiagramRequest request) => request.Kind switch
    {
        DiagramKind.Path => PathDiagram.Make(built, request, wording),
        DiagramKind.Grip when request.Positions.IsEmpty && request.Chord is { } chord =>
            NeckShapes.Grip(_instrument, chord, built.Lesson.Level, request.FromFret, request.ToFret) is { } grip ? OfGrip(grip, chord, request) : OfChord(chord, request.FromFret, request.ToFret, DotLabels.Degrees),
        DiagramKind.Chord when request.Chord is { } chord => OfChord(chord, request.FromFret, request.ToFret, Labels(request)),
        DiagramKind.Scale when request.Scale is { } scale => OfScale(scale, request.FromFret, request.ToFret, Labels(request)),
        _ => OfPlaces(request),
    };

    private IEnumerable<NeckDiagram> Family(DiagramRequest request, int most)
    {
        if (request is { Kind: DiagramKind.Grip, Chord: { } chord })
        {
            foreach (var grip in NeckShapes.GripFamily(_instrument, chord, built.Lesson.Level, most, request.FromFret, request.ToFret)) yield return OfGrip(grip, chord, request);
            yield break;
        }
        var (root, degrees, named) = request.Scale is { } scale
            ? (scale.Root, scale.Type.Degrees, new Chord(scale.Root, ChordQuality.FromDegrees(scale.Type.Degrees)))
            : (request.Chord!.Root, request.Chord.Quality.Degrees, request.Chord);
        foreach (var shape in NeckShapes.Positions(_instrument, root, degrees, most, request.FromFret, request.ToFret))
        {
            yield return OfShape(shape, root, request) with { Symbol = request.Scale is null ? named : null, Caption = request.Scale is { } s ? NameOf(s) : "" };
        }
    }

    // The tones of a scale are open circles but for the root, as in the map of the whole scale.
    private NeckDiagram OfShape(ImmutableArray<ShapeTone> shape, NoteName root, DiagramRequest request)
    {
        FretPosition[] places = [.. shape.Select(t => t.Place)];
        var (first, last) = NeckDiagrams.FitRange(places, _instrument.PlayableFrets);
        return new NeckDiagram
        {
            Instrument = _instrument,
            FirstFret = first,
            LastFret = last,
            Dots =
            [
                .. shape.Select(t => new NeckDot(
                    t.Place,
                    t.Degree.Simple == Degree.Root ? DotShape.Root : request.Scale is null ? DotShape.Tone : DotShape.Other,
                    Labels(request) switch
                    {
                        DotLabels.Notes => (root + t.Degree.ToInterval()).ToDisplayString(),
                        DotLabels.Fingers => Finger(t.Place, places),
                        DotLabels.None => "",
                        _ => t.Degree.ToDisplayString(),
                    })),
            ],
        };
    }

    // One finger to a fret from the lowest fret of the shape; the outer fingers stretch.
    private static string Finger(FretPosition place, FretPosition[] places)
    {
        if (place.Fret == 0) return "";
        var lowest = places.Where(p => p.Fret > 0).Min(p => p.Fret);
        var highest = places.Max(p => p.Fret);
        var index = highest - lowest > 3 ? lowest + 1 : lowest;
        return Math.Clamp(place.Fret - index + 1, 1, 4).ToString(CultureInfo.InvariantCulture);
    }

    private NeckDiagram OfGrip(ChordGrip grip, Chord chord, DiagramRequest request) =>
        NeckDiagrams.Shape(_instrument, grip.Places, chord, Labels(request), request.Upright, grip.Fingers) with { Symbol = chord, MutedStrings = Silent(grip.Places) };

    private NeckDiagram OfPlaces(DiagramRequest request)
    {
        var chord = request.Chord ?? RootChord(request.Positions);
        var isGrip = request.Kind == DiagramKind.Grip;
        var fingers = request.Fingers.Any(f => f > 0) ? request.Fingers : isGrip ? FingersOf(chord, request.Positions) : [];
        var diagram = NeckDiagrams.Shape(_instrument, request.Positions, chord, Labels(request), request.Upright, fingers) with { Symbol = request.Chord };
        if (isGrip) diagram = diagram with { MutedStrings = Silent(request.Positions) };
        return diagram with { FirstFret = Math.Max(1, Math.Min(request.FromFret ?? diagram.FirstFret, diagram.FirstFret)), LastFret = Math.Max(request.ToFret ?? diagram.LastFret, diagram.LastFret) };
    }

    private ImmutableArray<int> FingersOf(Chord chord, ImmutableArray<FretPosition> places)
    {
        if (NeckShapes.Held(_instrument, chord, places) is not { } held) return [];
        return [.. places.Select(p => held.Fingers[held.Places.IndexOf(p)])];
    }

    private ImmutableArray<int> Silent(ImmutableArray<FretPosition> places) => [.. Enumerable.Range(1, _instrument.StringCount).Where(s => !places.Any(p => p.String == s))];

    private static DotLabels Labels(DiagramRequest request) => request.Labels switch
    {
        DiagramText.Degrees => DotLabels.Degrees,
        DiagramText.Notes => DotLabels.Notes,
        DiagramText.Fingers => DotLabels.Fingers,
        DiagramText.Nothing => DotLabels.None,
        // A grip says where the fingers go.
        _ => request.Kind == DiagramKind.Grip || request.Fingers.Any(f => f > 0) ? DotLabels.Fingers : DotLabels.Degrees,
    };

    private NeckDiagram OfChord(Chord chord, int? from, int? to, DotLabels labels)
    {
        var (first, last) = Range(chord.Lowest, from, to);
        return NeckDiagrams.ChordTones(_instrument, chord, first, last, labels);
    }

    private NeckDiagram OfScale(Scale scale, int? from, int? to, DotLabels labels)
    {
        var (first, last) = Range(scale.Root, from, to);
        return NeckDiagrams.Scale(_instrument, scale, first, last, labels) with { Caption = NameOf(scale) };
    }

    private static string NameOf(Scale scale) => $"{scale.Root.ToDisplayString()} {scale.Type.ToDisplayString()}";

    // Round the lowest place of the root on the two lowest strings: from a fret below it, so that tones under the index finger show.
    private (int First, int Last) Range(NoteName root, int? from, int? to)
    {
        if (from is { } a && to is { } b) return (a, b);
        var lowest = int.MaxValue;
        for (var s = _instrument.StringCount; s >= Math.Max(1, _instrument.StringCount - 1); s--) lowest = Math.Min(lowest, NoteFret(s, root));
        var first = from ?? Math.Max(0, Math.Min(lowest - 1, (to ?? int.MaxValue) - UsualSpan));
        var last = to ?? Math.Min(_instrument.PlayableFrets, first + UsualSpan);
        // The first fret brings the nut, and an open string without a dot at the nut would not seem to be a tone.
        if (from is null && first == 1) first = 0;
        return (Math.Min(first, last), last);
    }

    private int NoteFret(int stringNumber, NoteName note) => (((note.PitchClass - _instrument.MidiNumberAt(stringNumber, 0)) % 12) + 12) % 12;

    // Degrees of a shape without a chord are counted from its lowest note.
    private Chord RootChord(ImmutableArray<FretPosition> places)
    {
        var lowest = places.MinBy(p => _instrument.MidiNumberAt(p.String, p.Fret));
        return Chord.Parse(SharpNames[_instrument.MidiNumberAt(lowest.String, lowest.Fret) % 12]);
    }

    private static readonly string[] SharpNames = ["C", "C#", "D", "D#", "E", "F", "F#", "G", "G#", "A", "A#", "B"];
}
