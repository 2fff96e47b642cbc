namespace SheetPress.Theory;

/// <summary>
/// The chords of a progression as patterns see them, one after the other. Repetitions of a chord, and a suspended dominant before its plain
/// form, count as one chord; "no chord" is passed over.
/// </summary>
internal sealed class PatternChords
{
    private sealed record Span(Chord Chord, int First, int Last);

    private readonly List<Span> spans = [];
    private readonly Key key;

    /// <param name="progression">The chords as written; null is "no chord".</param>
    /// <param name="key">The key that they are heard in.</param>
    internal PatternChords(IReadOnlyList<Chord?> progression, Key key)
    {
        this.key = key;
        for (var i = 0; i < progression.Count; i++)
        {
            if (progression[i] is not { } chord) continue;
            if (spans.Count > 0 && IsSame(spans[^1].Chord, chord)) spans[^1] = new Span(chord, spans[^1].First, i);
            else spans.Add(new Span(chord, i, i));
        }
    }

    /// <summary>How many there are.</summary>
    internal int Count => spans.Count;

    /// <summary>A chord, counted from 0.</summary>
    internal Chord At(int index) => spans[index].Chord;

    /// <summary>Where in the progression a chord begins.</summary>
    internal int FirstOf(int index) => spans[index].First;

    /// <summary>Where in the progression a chord stands for the last time before the next one.</summary>
    internal int LastOf(int index) => spans[index].Last;

    /// <summary>How many steps lead from one place in the progression to another.</summary>
    internal int StepsBetween(int first, int last) => spans.FindLastIndex(s => s.First <= last) - spans.FindIndex(s => s.First >= first);

    /// <summary>Half steps of the root above the tonic, 0 to 11.</summary>
    internal int Above(int index) => Steps.Up(key.Tonic, At(index).Root);

    /// <summary>Whether the root climbs a fourth to the next chord.</summary>
    internal bool Fourth(int from) => from + 1 < Count && Steps.UpFourth(At(from), At(from + 1));

    /// <summary>Whether the root falls a half step to the next chord.</summary>
    internal bool HalfStepDown(int from) => from + 1 < Count && Steps.DownHalfStep(At(from), At(from + 1));

    /// <summary>Whether the root goes to the next chord by the tritone between two degrees of the key.</summary>
    internal bool IsKeyTritone(int from) =>
        from + 1 < Count && Steps.Up(At(from).Root, At(from + 1).Root) == 6 && key.Contains(At(from).Root) && key.Contains(At(from + 1).Root);

    /// <summary>Whether a chord can be a dominant: a dominant seventh or a major triad.</summary>
    internal bool IsDominant(int index) => At(index).Quality.IsDominantSeventh() || At(index).Quality.Shape is { Third: { Alteration: 0 }, Seventh: null, HasSixth: false };

    /// <summary>Whether a chord can be a ii.</summary>
    internal bool IsSupertonic(int index) => At(index).Quality.IsPlainMinor() || At(index).Quality.IsHalfDiminished();

    /// <summary>Whether a chord is one to rest on: major or minor; a dominant seventh rests only on the tonic of a blues.</summary>
    internal bool IsHome(int index) => At(index).Quality.IsPlainMajor() || At(index).Quality.IsPlainMinor() || (At(index).Quality.IsDominantSeventh() && Above(index) == 0);

    /// <summary>Whether a minor chord that is not the tonic leads to a dominant at once, a fourth up or a half step down: it is a ii then and no place to rest.</summary>
    internal bool GoesOn(int i) =>
        Above(i) != 0 && At(i).Quality.IsPlainMinor() && i + 1 < Count && At(i + 1).Quality.IsDominantSeventh() && (Fourth(i) || HalfStepDown(i));

    private static bool IsSame(Chord left, Chord right) =>
        left.Root == right.Root && (left.Quality.Equals(right.Quality) || (left.Quality.IsDominantSeventh() && right.Quality.IsDominantSeventh()));
}
