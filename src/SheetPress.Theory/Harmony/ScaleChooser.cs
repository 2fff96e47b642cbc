using System.Collections.Immutable;

namespace SheetPress.Theory;

/// <summary>
/// Chooses the scale over a chord in its key. A chord of the key takes the key's own notes; any other the scale that holds its tones and
/// keeps most notes of the key, except where common practice has a fixed choice: lydian dominant over a dominant that does not fall a fifth,
/// mixolydian over the blues chords, the seventh mode of harmonic minor over a leading-tone chord, whole-half diminished over a passing
/// diminished chord.
/// </summary>
internal sealed class ScaleChooser(Key key)
{
    internal (Scale Scale, ScaleReason Reason) Choose(ChordPlace place)
    {
        var chord = place.Chord;
        if (place.IsDiatonic) return (new Scale(chord.Root, ModeOnRoot(place.Numeral)), ScaleReason.KeyMode);
        var fitting = ChordScales.For(AsDominant(place) ?? chord.Quality);
        if (place.Function is HarmonicFunction.BluesTonic or HarmonicFunction.BluesSubdominant && Find(fitting, "mixolydian") is { } mixolydian)
        {
            return (new Scale(chord.Root, mixolydian), ScaleReason.Blues);
        }
        if (place.Function is HarmonicFunction.SubstituteDominant or HarmonicFunction.BackdoorDominant or HarmonicFunction.Chromatic
            && Find(fitting, "lydian dominant") is { } lydianDominant)
        {
            return (new Scale(chord.Root, lydianDominant), ScaleReason.UnresolvedDominant);
        }
        if (place.Function is HarmonicFunction.PassingDiminished or HarmonicFunction.CommonToneDiminished && Find(fitting, "whole-half diminished") is { } diminished)
        {
            return (new Scale(chord.Root, diminished), ScaleReason.DiminishedChord);
        }
        if (place.Function is HarmonicFunction.LeadingTone or HarmonicFunction.LeadingToneOf && Find(fitting, "ultralocrian") is { } ultralocrian)
        {
            return (new Scale(chord.Root, ultralocrian), ScaleReason.HarmonicMinorSeventhMode);
        }
        var type = chord.Quality.IsHalfDiminished() ? fitting[0] : fitting.MinBy(t => Changed(new Scale(chord.Root, t)).Length)!;
        var scale = new Scale(chord.Root, type);
        return (scale, ReasonOf(scale, place));
    }

    /// <summary>The notes of a scale that sound outside the key.</summary>
    internal ImmutableArray<NoteName> Changed(Scale scale)
    {
        var own = key.Scale;
        return [.. scale.Notes.Where(n => !own.ContainsSound(n))];
    }

    // A triad that works as a dominant takes the scale of the seventh chord that it stands for.
    private static ChordQuality? AsDominant(ChordPlace place)
    {
        var quality = place.Chord.Quality;
        var isTriad = place.Function is HarmonicFunction.Dominant or HarmonicFunction.SecondaryDominant && quality.Shape is { Third.Alteration: 0, Seventh: null };
        return isTriad ? ChordQuality.FromDegrees(quality.Degrees.Add(new Degree(7, -1))) : null;
    }

    private ScaleReason ReasonOf(Scale scale, ChordPlace place)
    {
        if (place.BorrowedFrom is { } mode && Holds(new Scale(key.Tonic, mode.Scale()), scale)) return ScaleReason.ParallelMode;
        return scale.Type.Name switch
        {
            "phrygian dominant" => ScaleReason.HarmonicMinorFifthMode,
            "ultralocrian" => ScaleReason.HarmonicMinorSeventhMode,
            "altered" => ScaleReason.AlteredTensions,
            "half-whole diminished" => ScaleReason.AlteredNinth,
            "whole tone" => ScaleReason.AlteredFifth,
            "whole-half diminished" => ScaleReason.DiminishedChord,
            "melodic minor" or "harmonic minor" => ScaleReason.MinorVariant,
            _ => Changed(scale).Length <= 3 ? ScaleReason.KeepsKey : ScaleReason.HoldsTones,
        };
    }

    private static bool Holds(Scale outer, Scale inner) => inner.Notes.All(outer.ContainsSound);

    private static ScaleType? Find(ImmutableArray<ScaleType> types, string name) => types.FirstOrDefault(t => t.Name == name);

    // The church mode that the signature makes on a degree.
    private ScaleType ModeOnRoot(RomanNumeral numeral) => ScaleTypes.Get((key.NoteOf(numeral.Number).Fifths - key.Fifths) switch
    {
        0 => "major",
        1 => "mixolydian",
        2 => "dorian",
        3 => "natural minor",
        4 => "phrygian",
        5 => "locrian",
        _ => "lydian",
    });
}
