using System.Collections.Immutable;
using SheetPress.Engraving;
using SheetPress.Lessons;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Publishing;

/// <summary>Makes the neck diagrams of a handout: those the lesson asks for, or the tones of each chord round one position.</summary>
public static class DiagramAssembler
{
    /// <summary>Most chord diagrams made when the lesson does not ask for any.</summary>
    private const int MostByDefault = 8;

    /// <summary>Frets a diagram spans when the lesson does not give its range.</summary>
    private const int UsualSpan = 4;

    /// <summary>The diagrams of a lesson, in order.</summary>
    public static ImmutableArray<NeckDiagram> Assemble(Lesson lesson) => lesson.HasOwnDiagrams
        ? [.. lesson.Diagrams.Select(request => Make(lesson.Instrument, request))]
        : [.. lesson.Progression.Chords.Select(c => c.Chord).OfType<Chord>().Distinct().Take(MostByDefault).Select(chord => OfChord(lesson.Instrument, chord, null, null, DotLabels.Degrees))];

    private static NeckDiagram Make(Instrument instrument, DiagramRequest request)
    {
        var labels = request.ShowNotes ? DotLabels.Notes : DotLabels.Degrees;
        var diagram = request.Kind switch
        {
            DiagramKind.Chord when request.Chord is { } chord => OfChord(instrument, chord, request.FromFret, request.ToFret, labels),
            DiagramKind.Scale when request.Scale is { } scale => OfScale(instrument, scale, request.FromFret, request.ToFret, labels),
            _ => NeckDiagrams.Shape(instrument, request.Positions, request.Chord ?? RootChord(instrument, request.Positions), labels, request.Upright),
        };
        diagram = diagram with { Upright = request.Upright, EvenFrets = request.Upright };
        return request.Caption.Length > 0 ? diagram with { Caption = request.Caption } : diagram;
    }

    private static NeckDiagram OfChord(Instrument instrument, Chord chord, int? from, int? to, DotLabels labels)
    {
        var (first, last) = Range(instrument, chord.Lowest, from, to);
        return NeckDiagrams.ChordTones(instrument, chord, first, last, labels);
    }

    private static NeckDiagram OfScale(Instrument instrument, Scale scale, int? from, int? to, DotLabels labels)
    {
        var (first, last) = Range(instrument, scale.Root, from, to);
        return NeckDiagrams.Scale(instrument, scale, first, last, labels) with { Caption = $"{scale.Root.ToDisplayString()} {scale.Type.Name}" };
    }

    // Round the lowest place of the root on the two lowest strings: from a fret below it, so that tones under the index finger show.
    private static (int First, int Last) Range(Instrument instrument, NoteName root, int? from, int? to)
    {
        if (from is { } a && to is { } b) return (a, b);
        var lowest = int.MaxValue;
        for (var s = instrument.StringCount; s >= Math.Max(1, instrument.StringCount - 1); s--)
        {
            var fret = NoteFret(instrument, s, root);
            lowest = Math.Min(lowest, fret);
        }
        var first = from ?? Math.Max(0, Math.Min(lowest - 1, (to ?? int.MaxValue) - UsualSpan));
        var last = to ?? Math.Min(instrument.PlayableFrets, first + UsualSpan);
        return (Math.Min(first, last), last);
    }

    private static int NoteFret(Instrument instrument, int stringNumber, NoteName note) =>
        (((note.PitchClass - instrument.MidiNumberAt(stringNumber, 0)) % 12) + 12) % 12;

    // A shape without a chord is named after its lowest note.
    private static Chord RootChord(Instrument instrument, ImmutableArray<FretPosition> places)
    {
        var lowest = places.MinBy(p => instrument.MidiNumberAt(p.String, p.Fret));
        var midi = instrument.MidiNumberAt(lowest.String, lowest.Fret);
        return Chord.Parse(SharpNames[midi % 12]);
    }

    private static readonly string[] SharpNames = ["C", "C#", "D", "D#", "E", "F", "F#", "G", "G#", "A", "A#", "B"];
}
