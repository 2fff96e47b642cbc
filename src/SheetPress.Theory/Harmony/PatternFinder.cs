using System.Collections.Immutable;

namespace SheetPress.Theory;

/// <summary>
/// Looks for patterns between the chords of a progression. Repetitions of a chord, and a suspended dominant before its plain form, count as
/// one chord; "no chord" is passed over. The definitions are common practice.
/// </summary>
internal sealed class PatternFinder
{
    private sealed record Span(Chord Chord, int First, int Last);

    private readonly List<Span> spans = [];
    private readonly Key key;
    private readonly HarmonyWording wording;
    private readonly ChordPlacer placer;
    private readonly List<ProgressionPattern> found = [];

    internal PatternFinder(IReadOnlyList<Chord?> progression, Key key, HarmonyWording wording)
    {
        this.key = key;
        this.wording = wording;
        placer = new ChordPlacer(key, BluesHome.Is(progression, key));
        for (var i = 0; i < progression.Count; i++)
        {
            if (progression[i] is not { } chord) continue;
            if (spans.Count > 0 && IsSame(spans[^1].Chord, chord)) spans[^1] = new Span(chord, spans[^1].First, i);
            else spans.Add(new Span(chord, i, i));
        }
    }

    internal ImmutableArray<ProgressionPattern> Find()
    {
        for (var i = 0; i < spans.Count; i++)
        {
            FindTwoFive(i);
            FindTurnaround(i);
            FindBackdoor(i);
            FindDescendingMinor(i);
            FindClimbingDiminished(i);
            FindResolution(i);
            FindDeceptive(i);
        }
        FindCycles();
        FindClose();
        // Inside a longer cycle the turnaround is no news.
        found.RemoveAll(t => t.Kind == ProgressionPatternKind.Turnaround && found.Exists(c => IsLongCycle(c) && c.First <= t.First && c.Last >= t.Last));
        found.Sort(InOrder);
        return [.. PatternNews.Of(found)];
    }

    private static int InOrder(ProgressionPattern a, ProgressionPattern b)
    {
        if (a.First != b.First) return a.First - b.First;
        return a.Last != b.Last ? b.Last - a.Last : a.Kind - b.Kind;
    }

    private static bool IsSame(Chord left, Chord right) =>
        left.Root == right.Root && (left.Quality.Equals(right.Quality) || (left.Quality.IsDominantSeventh() && right.Quality.IsDominantSeventh()));

    private Chord At(int index) => spans[index].Chord;

    private int Above(int index) => Steps.Up(key.Tonic, At(index).Root);

    private bool Fourth(int from) => from + 1 < spans.Count && Steps.UpFourth(At(from), At(from + 1));

    private bool HalfStepDown(int from) => from + 1 < spans.Count && Steps.DownHalfStep(At(from), At(from + 1));

    private bool IsDominant(int index) => At(index).Quality.IsDominantSeventh() || At(index).Quality.Shape is { Third: { Alteration: 0 }, Seventh: null, HasSixth: false };

    private bool IsSupertonic(int index) => At(index).Quality.IsPlainMinor() || At(index).Quality.IsHalfDiminished();

    // A chord to rest on: major or minor; a dominant seventh rests only on the tonic of a blues.
    private bool IsHome(int index) => At(index).Quality.IsPlainMajor() || At(index).Quality.IsPlainMinor() || (At(index).Quality.IsDominantSeventh() && Above(index) == 0);

    private void FindTwoFive(int i)
    {
        if (i + 1 >= spans.Count || !IsSupertonic(i)) return;
        if (Fourth(i) && IsDominant(i + 1))
        {
            if (Fourth(i + 1) && GoesOn(i + 2))
            {
                Add(ProgressionPatternKind.TwoFiveOnward, i, i + 2);
            }
            else if (Fourth(i + 1) && IsHome(i + 2))
            {
                var minor = At(i + 2).Quality.IsPlainMinor();
                Add(minor ? ProgressionPatternKind.MinorTwoFiveOne : ProgressionPatternKind.MajorTwoFiveOne, i, i + 2, "key", wording.KeyName(At(i + 2).Root, minor ? Mode.Minor : Mode.Major), "moment", Above(i + 2) == 0 ? "" : " " + wording.ForAMoment);
            }
            else if (i + 3 < spans.Count && At(i + 1).Quality.IsDominantSeventh() && Steps.DownHalfStep(At(i), At(i + 2)) && IsSupertonic(i + 2) && Fourth(i + 2) && IsDominant(i + 3))
            {
                Add(ProgressionPatternKind.SlidingTwoFive, i, i + 1);
            }
            else if (At(i + 1).Quality.IsDominantSeventh() && Above(i) != 0 && !IsBackdoor(i + 1))
            {
                Add(ProgressionPatternKind.TwoFive, i, i + 1, "goal", (At(i + 1).Root + Interval.PerfectFourth).ToDisplayString());
            }
        }
        else if (HalfStepDown(i) && At(i + 1).Quality.IsDominantSeventh() && HalfStepDown(i + 1) && IsHome(i + 2) && !GoesOn(i + 2))
        {
            Add(ProgressionPatternKind.SubstituteTwoFiveOne, i, i + 2);
        }
    }

    // A minor chord that is not the tonic and leads to a dominant at once, a fourth up or a half step down, is a ii and no place to rest.
    private bool GoesOn(int i) =>
        Above(i) != 0 && At(i).Quality.IsPlainMinor() && i + 1 < spans.Count && At(i + 1).Quality.IsDominantSeventh() && (Fourth(i) || HalfStepDown(i));

    private void FindTurnaround(int i)
    {
        if (i + 3 >= spans.Count) return;
        // I or III; VI, or the chord a tritone away from it, or a diminished chord between; II or its tritone substitute; V or its.
        var leavesHome = Above(i) == 0 || (Above(i) == (key.HasMinorThird ? 3 : 4) && !At(i).Quality.IsDominantSeventh());
        var sixth = Above(i + 1) is 8 or 9 || (Above(i + 1) is 1 or 3 && Above(i) != Above(i + 1) && (At(i + 1).Quality.IsDiminished() || At(i + 1).Quality.IsDominantSeventh()));
        var second = Above(i + 2) is 2 || (Above(i + 2) == 8 && (At(i + 2).Quality.IsDominantSeventh() || Above(i + 1) == 3));
        var fifth = Above(i + 3) is 7 or 1;
        // Only where it leads to the top, home, or to the third degree in its place.
        var returns = i + 4 == spans.Count || Above(i + 4) is 0 or 3 or 4;
        if (!leavesHome || !sixth || !second || !fifth || !returns || !IsDominant(i + 3)) return;
        var kind = Above(i) == 0 ? ProgressionPatternKind.Turnaround : ProgressionPatternKind.TurnaroundFromThird;
        Add(kind, i, i + 3, "back", i + 4 == spans.Count ? wording.ToTheTop : wording.Home);
    }

    private void FindBackdoor(int i)
    {
        if (!IsBackdoor(i)) return;
        var from = i > 0 && Above(i - 1) == 5 && At(i - 1).Quality.IsPlainMinor() ? i - 1 : i;
        Add(ProgressionPatternKind.Backdoor, from, i + 1);
    }

    private bool IsBackdoor(int i) =>
        !key.HasMinorThird && i + 1 < spans.Count && Above(i) == 10 && At(i).Quality.IsDominantSeventh() && Above(i + 1) == 0;

    private void FindDescendingMinor(int i)
    {
        if (i + 3 >= spans.Count || !key.HasMinorThird) return;
        if (Above(i) == 0 && Above(i + 1) == 10 && Above(i + 2) == 8 && Above(i + 3) == 7 && IsDominant(i + 3))
        {
            Add(ProgressionPatternKind.DescendingMinor, i, i + 3, "key", wording.KeyName(key.Tonic, key.Mode));
        }
    }

    private void FindClimbingDiminished(int i)
    {
        if (i + 2 >= spans.Count || !At(i + 1).Quality.IsDiminished()) return;
        if (Steps.Up(At(i).Lowest, At(i + 1).Lowest) == 1 && Steps.Up(At(i + 1).Lowest, At(i + 2).Lowest) == 1) Add(ProgressionPatternKind.ClimbingDiminished, i, i + 2);
    }

    // Dominants that are not the key's own, and where they go.
    private void FindResolution(int i)
    {
        if (i + 1 >= spans.Count || At(i).Quality.Find(3) is not { Alteration: 0 } third) return;
        var (chord, goal) = (placer.ReadInKey(At(i)), placer.ReadInKey(At(i + 1)));
        // The spelling on the page, where it tells the same.
        if (At(i).Root + Interval.PerfectFourth == At(i + 1).Root) (chord, goal) = (At(i), At(i + 1));
        if (HalfStepDown(i) && chord.Quality.IsDominantSeventh())
        {
            // The key's own dominant that steps down is no substitute, nor is IV7 on its way to iii, nor does anything resolve into a diminished chord.
            if (Above(i) == 7 || (Above(i) == 5 && !key.HasMinorThird && IsSupertonic(i + 1)) || goal.Quality.IsHalfDiminished() || goal.Quality.IsDiminished()) return;
            var other = new Chord(goal.Root + Interval.PerfectFifth, ChordQualities.Row("7")).Readable;
            Add(ProgressionPatternKind.TritoneSubstitute, i, i + 1, "other", MarkedText.Mark(other));
            return;
        }
        if (!Fourth(i) || placer.Place(chord, i > 0 ? At(i - 1) : null, goal).Function is not (HarmonicFunction.SecondaryDominant or HarmonicFunction.DominantWithinKey)) return;
        if (chord.Quality.Find(7) is { } seventh && goal.Quality.Find(3) is { } goalThird)
        {
            Add(
                ProgressionPatternKind.SecondaryDominant,
                i,
                i + 1,
                "third", chord.NoteOf(third).ToDisplayString(),
                "seventh", chord.NoteOf(seventh).ToDisplayString(),
                "root", goal.Root.ToDisplayString(),
                "goalthird", goal.NoteOf(goalThird).ToDisplayString());
        }
        else
        {
            Add(ProgressionPatternKind.SecondaryDominantTriad, i, i + 1, "third", chord.NoteOf(third).ToDisplayString(), "root", goal.Root.ToDisplayString());
        }
    }

    private void FindDeceptive(int i)
    {
        // In root position: V over its third that walks down to vi deceives nobody.
        if (i + 1 >= spans.Count || Above(i) != 7 || !IsDominant(i) || At(i).Bass is not null || At(i + 1).Bass is not null) return;
        // In major also to the sixth degree of the minor key.
        var arrival = (At(i + 1).Quality.IsPlainMajor() && Above(i + 1) == 8) || (!key.HasMinorThird && At(i + 1).Quality.IsPlainMinor() && Above(i + 1) == 9);
        if (arrival) Add(ProgressionPatternKind.DeceptiveCadence, i, i + 1, "goal", MarkedText.Mark(new Chord(key.Tonic, ChordQualities.Row(key.HasMinorThird ? "m" : ""))));
    }

    // Runs of at least four chords, up to where the dominant has come home. A tritone between two degrees of the key counts as a step of the
    // cycle, once in seven steps.
    private void FindCycles()
    {
        for (var i = 0; i + 3 < spans.Count; i++)
        {
            var last = i;
            var tritone = -1;
            while (last + 1 < spans.Count)
            {
                if (IsKeyTritone(last) && (tritone < 0 || last - tritone >= 7)) tritone = last;
                else if (!Fourth(last)) break;
                last++;
                if (Above(last) == 0 && Above(last - 1) == 7 && !At(last).Quality.IsDominantSeventh()) break;
            }
            if (last - i < 3) continue;
            if (tritone < 0)
            {
                Add(ProgressionPatternKind.CycleOfFourths, i, last);
            }
            else
            {
                Add(ProgressionPatternKind.CycleOfFourthsWithTritone, i, last, "from", At(tritone).Root.ToDisplayString(), "to", At(tritone + 1).Root.ToDisplayString());
            }
            i = last - 1;
        }
    }

    private bool IsLongCycle(ProgressionPattern pattern) =>
        pattern.Kind is ProgressionPatternKind.CycleOfFourths or ProgressionPatternKind.CycleOfFourthsWithTritone
        && pattern.Last - pattern.First > 4 && spans.FindLastIndex(s => s.First <= pattern.Last) - spans.FindIndex(s => s.First >= pattern.First) > 4;

    private bool IsKeyTritone(int from) =>
        from + 1 < spans.Count && Steps.Up(At(from).Root, At(from + 1).Root) == 6 && key.Contains(At(from).Root) && key.Contains(At(from + 1).Root);

    private void FindClose()
    {
        if (spans.Count < 2) return;
        var last = spans.Count - 1;
        if (Above(last) == 7 && IsDominant(last) && At(last).Bass is null) Add(ProgressionPatternKind.HalfClose, last, last);
        if (Above(last) != 0 || !IsHome(last)) return;
        // Both in root position: over another bass, as a pedal, the close is a weaker one.
        if (Above(last - 1) == 7 && IsDominant(last - 1) && At(last - 1).Bass is null && At(last).Bass is null) Add(ProgressionPatternKind.FullClose, last - 1, last);
        if (Above(last - 1) == 5 && Steps.Up(key.Tonic, At(last - 1).Lowest) != 7) Add(ProgressionPatternKind.PlagalClose, last - 1, last);
    }

    private void Add(ProgressionPatternKind kind, int first, int last, params string[] values)
    {
        var symbols = new List<string>();
        for (var i = first; i <= last; i++) symbols.Add(MarkedText.Mark(At(i)));
        // A chord that is arrived at belongs to the pattern where it comes, and not for as long as it stays.
        var end = EndsOnTheWay(kind) ? spans[last].Last : spans[last].First;
        // A turnaround begins where it leaves the first chord.
        var start = kind is ProgressionPatternKind.Turnaround or ProgressionPatternKind.TurnaroundFromThird ? spans[first].Last : spans[first].First;
        found.Add(new ProgressionPattern(kind, start, end, Sentence(wording[kind])) { Again = wording.Again(kind) is { } again ? Sentence(again) : null });

        string Sentence(string template)
        {
            template = HarmonyWording.Fill(template, "course", wording.Course(isRound: symbols[0] == symbols[^1]));
            var sentence = HarmonyWording.Fill(template, "chords", string.Join(" – ", symbols), "first", symbols[0], "last", symbols[^1]);
            return HarmonyWording.Fill(sentence, values);
        }
    }

    private static bool EndsOnTheWay(ProgressionPatternKind kind) => kind
        is ProgressionPatternKind.TwoFive or ProgressionPatternKind.SlidingTwoFive or ProgressionPatternKind.HalfClose
        or ProgressionPatternKind.Turnaround or ProgressionPatternKind.TurnaroundFromThird or ProgressionPatternKind.DescendingMinor;
}
