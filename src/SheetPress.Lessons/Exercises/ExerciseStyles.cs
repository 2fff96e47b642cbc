using System.Collections.Immutable;

namespace SheetPress.Lessons;

/// <summary>The catalogue of exercise styles.</summary>
public static class ExerciseStyles
{
    /// <summary>Every style, grouped as the catalogue shows them.</summary>
    public static ImmutableArray<ExerciseStyle> All { get; } =
    [
        new Roots(),
        new RootOctave(),
        new ToneCell(),
        new Arpeggio(),
        new ConnectedArpeggio(),
        new Permutations(),
        new BrokenArpeggio(),
        new TriadPairs(),
        new UpperTones(),
        new GuideTones(),
        new Shells(),
        new Tenths(),
        new FullChords(),
        new ScaleRun(),
        new ConnectedScales(),
        new ScalePattern(),
        new Pentatonic(),
        new NotesPerString(),
        new ChromaticWarmUp(),
        new OctaveRun(),
        new ScaleLink(),
        new ApproachStyle(),
        new TargetTone(),
        new WalkingLine(),
        new TwoFeel(),
        new OneNote(),
        new Subdivisions(),
        .. PatternLibrary.BuiltIn(),
        new FindNote(),
        new IntervalShapes(),
        new EveryPosition(),
        new TwoPositions(),
        new StringSkipping(),
        new OwnLine(),
    ];

    /// <summary>The style of a name, or null.</summary>
    public static ExerciseStyle? Find(string name)
    {
        foreach (var style in All) if (style.Name == name) return style;
        return null;
    }
}
