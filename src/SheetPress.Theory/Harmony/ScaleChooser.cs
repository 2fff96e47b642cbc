using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace SheetPress.Theory;

/// <summary>
/// Chooses the scale over a chord in its key. A chord of the key takes the key's own notes; any other the scale that holds its tones and
/// keeps most notes of the key, except where common practice has a fixed choice: lydian dominant over a dominant that does not fall a fifth,
/// mixolydian over the blues chords, the seventh mode of harmonic minor over a leading-tone chord, whole-half diminished over a passing
/// diminished chord.
/// </summary>
internal sealed class ScaleChooser(Key key)
{
    private readonly Scale own = key.Scale;

    internal (Scale Scale, ScaleReason Reason) Choose(ChordPlace place)
    {
        var chord = place.Chord;
        if (place.IsDiatonic) return (new Scale(chord.Root, ModeOnRoot(place.Numeral)), ScaleReason.KeyMode);
        var fitting = ChordScales.For(AsDominant(place) ?? chord.Quality);
        if (FixedChoice(place) is { } name && (Find(fitting, name) ?? WithFlatFifth(name, chord.Quality)) is { } choice)
        {
            var fixedScale = new Scale(chord.Root, choice);
            return (fixedScale, name switch
            {
                "mixolydian" => ScaleReason.Blues,
                "lydian dominant" => ScaleReason.UnresolvedDominant,
                _ => ReasonOf(fixedScale, place),
            });
        }
        var scale = new Scale(chord.Root, chord.Quality.IsHalfDiminished() ? fitting[0] : Nearest(fitting, place));
        return (scale, ReasonOf(scale, place));
    }

    // The flat fifth of a 7b5 sounds as the raised fourth of lydian dominant.
    private static ScaleType? WithFlatFifth(string name, ChordQuality quality)
    {
        if (name != "lydian dominant" || !quality.Shape.FifthIs(-1)) return null;
        var type = ScaleTypes.Get(name);
        foreach (var degree in quality.Degrees) if (!type.Sounds(degree.HalfSteps)) return null;
        return type;
    }

    private string? FixedChoice(ChordPlace place) => place.Function switch
    {
        HarmonicFunction.Sliding when place.Chord.Quality.IsDominantSeventh() => "lydian dominant",
        // The triad is borrowed, but its minor seventh is in no mode from which it could be.
        HarmonicFunction.Borrowed when place.Chord.Quality.IsDominantSeventh() && !Holds(new Scale(key.Tonic, place.BorrowedFrom!.Value.Scale()), place.Chord.Tones.Select(t => t.Note)) => "lydian dominant",
        HarmonicFunction.BluesTonic or HarmonicFunction.BluesSubdominant => "mixolydian",
        HarmonicFunction.SubstituteDominant or HarmonicFunction.BackdoorDominant or HarmonicFunction.Chromatic => "lydian dominant",
        HarmonicFunction.PassingDiminished or HarmonicFunction.CommonToneDiminished => "whole-half diminished",
        HarmonicFunction.LeadingTone or HarmonicFunction.LeadingToneOf => "ultralocrian",
        _ => null,
    };

    /// <summary>The notes of a scale that sound outside the key.</summary>
    internal ImmutableArray<NoteName> Changed(Scale scale)
    {
        var changed = new NoteName[CountOutside(scale)];
        var count = 0;
        foreach (var note in scale.Notes) if (!own.ContainsSound(note)) changed[count++] = note;
        return ImmutableCollectionsMarshal.AsImmutableArray(changed);
    }

    private int CountOutside(Scale scale) => CountOutside(scale, own);

    private static int CountOutside(Scale scale, Scale of)
    {
        var count = 0;
        foreach (var note in scale.Notes) if (!of.ContainsSound(note)) count++;
        return count;
    }

    // The one with the fewest notes outside the key, of equals the first. A dominant that falls a fifth wants the root of its goal in the
    // scale, so a raised fourth is for the symbols that ask for it.
    private ScaleType Nearest(ImmutableArray<ScaleType> types, ChordPlace place)
    {
        var falls = place.Function is HarmonicFunction.Dominant or HarmonicFunction.SecondaryDominant;
        var best = types[0];
        var fewest = int.MaxValue;
        var ruling = place.KeyOfMoment?.Scale ?? own;
        foreach (var type in types)
        {
            if (falls && type.Name == "lydian dominant" && types.Length > 1) continue;
            var count = CountOutside(new Scale(place.Chord.Root, type), ruling);
            if (count < fewest) (best, fewest) = (type, count);
        }
        return best;
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
        if (place.KeyOfMoment is { } moment && CountOutside(scale, moment.Scale) == 0) return ScaleReason.KeyOfMoment;
        if (CountOutside(scale) == 0) return ScaleReason.KeyMode;
        if (place.BorrowedFrom is { } mode && Holds(new Scale(key.Tonic, mode.Scale()), scale.Notes)) return ScaleReason.ParallelMode;
        return scale.Type.Name switch
        {
            "phrygian dominant" => ScaleReason.HarmonicMinorFifthMode,
            "ultralocrian" => ScaleReason.HarmonicMinorSeventhMode,
            "altered" when place.Chord.Quality.Shape.HasAlteredNinth => ScaleReason.AlteredTensions,
            "half-whole diminished" when place.Chord.Quality.Shape.HasAlteredNinth => ScaleReason.AlteredNinth,
            "whole tone" when place.Chord.Quality.Shape.HasAlteredFifth => ScaleReason.AlteredFifth,
            "whole-half diminished" => ScaleReason.DiminishedChord,
            "melodic minor" or "harmonic minor" => ScaleReason.MinorVariant,
            _ => CountOutside(scale) <= 3 ? ScaleReason.KeepsKey : ScaleReason.HoldsTones,
        };
    }

    private static bool Holds(Scale scale, IEnumerable<NoteName> notes) => notes.All(scale.ContainsSound);

    private static ScaleType? Find(ImmutableArray<ScaleType> types, string name)
    {
        foreach (var type in types) if (type.Name == name) return type;
        return null;
    }

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
