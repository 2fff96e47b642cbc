using System.Collections.Immutable;

namespace SheetPress.Theory;

/// <summary>Looks for patterns between the chords of a progression. The definitions are common practice.</summary>
internal sealed class PatternFinder
{
    private readonly PatternChords chords;
    private readonly Key key;
    private readonly HarmonyWording wording;
    private readonly ChordPlacer placer;
    private readonly List<ProgressionPattern> found = [];

    internal PatternFinder(IReadOnlyList<Chord?> progression, Key key, HarmonyWording wording)
    {
        this.key = key;
        this.wording = wording;
        placer = new ChordPlacer(key, BluesHome.Is(progression, key));
        chords = new PatternChords(progression, key);
    }

    internal ImmutableArray<ProgressionPattern> Find()
    {
        for (var i = 0; i < chords.Count; i++)
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

    private void FindTwoFive(int i)
    {
        if (i + 1 >= chords.Count || !chords.IsSupertonic(i)) return;
        if (chords.Fourth(i) && chords.IsDominant(i + 1))
        {
            if (chords.Fourth(i + 1) && chords.GoesOn(i + 2))
            {
                Add(ProgressionPatternKind.TwoFiveOnward, i, i + 2);
            }
            else if (chords.Fourth(i + 1) && chords.IsHome(i + 2))
            {
                var minor = chords.At(i + 2).Quality.IsPlainMinor();
                Add(minor ? ProgressionPatternKind.MinorTwoFiveOne : ProgressionPatternKind.MajorTwoFiveOne, i, i + 2, "key", wording.KeyName(chords.At(i + 2).Root, minor ? Mode.Minor : Mode.Major), "moment", chords.Above(i + 2) == 0 ? "" : " " + wording.ForAMoment);
            }
            else if (i + 3 < chords.Count && chords.At(i + 1).Quality.IsDominantSeventh() && Steps.DownHalfStep(chords.At(i), chords.At(i + 2)) && chords.IsSupertonic(i + 2) && chords.Fourth(i + 2) && chords.IsDominant(i + 3))
            {
                Add(ProgressionPatternKind.SlidingTwoFive, i, i + 1);
            }
            else if (chords.At(i + 1).Quality.IsDominantSeventh() && chords.Above(i) != 0 && !IsBackdoor(i + 1))
            {
                Add(ProgressionPatternKind.TwoFive, i, i + 1, "goal", (chords.At(i + 1).Root + Interval.PerfectFourth).ToDisplayString());
            }
        }
        else if (chords.HalfStepDown(i) && chords.At(i + 1).Quality.IsDominantSeventh() && chords.HalfStepDown(i + 1) && chords.IsHome(i + 2) && !chords.GoesOn(i + 2))
        {
            Add(ProgressionPatternKind.SubstituteTwoFiveOne, i, i + 2);
        }
    }

    private void FindTurnaround(int i)
    {
        if (i + 3 >= chords.Count) return;
        // I or III; VI, or the chord a tritone away from it, or a diminished chord between; II or its tritone substitute; V or its.
        var leavesHome = chords.Above(i) == 0 || (chords.Above(i) == (key.HasMinorThird ? 3 : 4) && !chords.At(i).Quality.IsDominantSeventh());
        var sixth = chords.Above(i + 1) is 8 or 9 || (chords.Above(i + 1) is 1 or 3 && chords.Above(i) != chords.Above(i + 1) && (chords.At(i + 1).Quality.IsDiminished() || chords.At(i + 1).Quality.IsDominantSeventh()));
        var second = chords.Above(i + 2) is 2 || (chords.Above(i + 2) == 8 && (chords.At(i + 2).Quality.IsDominantSeventh() || chords.Above(i + 1) == 3));
        var fifth = chords.Above(i + 3) is 7 or 1;
        // Only where it leads to the top, home, or to the third degree in its place.
        var returns = i + 4 == chords.Count || chords.Above(i + 4) is 0 or 3 or 4;
        if (!leavesHome || !sixth || !second || !fifth || !returns || !chords.IsDominant(i + 3)) return;
        var kind = chords.Above(i) == 0 ? ProgressionPatternKind.Turnaround : ProgressionPatternKind.TurnaroundFromThird;
        Add(kind, i, i + 3, "back", i + 4 == chords.Count ? wording.ToTheTop : wording.Home);
    }

    private void FindBackdoor(int i)
    {
        if (!IsBackdoor(i)) return;
        var from = i > 0 && chords.Above(i - 1) == 5 && chords.At(i - 1).Quality.IsPlainMinor() ? i - 1 : i;
        Add(ProgressionPatternKind.Backdoor, from, i + 1);
    }

    private bool IsBackdoor(int i) =>
        !key.HasMinorThird && i + 1 < chords.Count && chords.Above(i) == 10 && chords.At(i).Quality.IsDominantSeventh() && chords.Above(i + 1) == 0;

    private void FindDescendingMinor(int i)
    {
        if (i + 3 >= chords.Count || !key.HasMinorThird) return;
        if (chords.Above(i) == 0 && chords.Above(i + 1) == 10 && chords.Above(i + 2) == 8 && chords.Above(i + 3) == 7 && chords.IsDominant(i + 3))
        {
            Add(ProgressionPatternKind.DescendingMinor, i, i + 3, "key", wording.KeyName(key.Tonic, key.Mode));
        }
    }

    private void FindClimbingDiminished(int i)
    {
        if (i + 2 >= chords.Count || !chords.At(i + 1).Quality.IsDiminished()) return;
        if (Steps.Up(chords.At(i).Lowest, chords.At(i + 1).Lowest) == 1 && Steps.Up(chords.At(i + 1).Lowest, chords.At(i + 2).Lowest) == 1) Add(ProgressionPatternKind.ClimbingDiminished, i, i + 2);
    }

    // Dominants that are not the key's own, and where they go.
    private void FindResolution(int i)
    {
        if (i + 1 >= chords.Count || chords.At(i).Quality.Find(3) is not { Alteration: 0 } third) return;
        var (chord, goal) = (placer.ReadInKey(chords.At(i)), placer.ReadInKey(chords.At(i + 1)));
        // The spelling on the page, where it tells the same.
        if (chords.At(i).Root + Interval.PerfectFourth == chords.At(i + 1).Root) (chord, goal) = (chords.At(i), chords.At(i + 1));
        if (chords.HalfStepDown(i) && chord.Quality.IsDominantSeventh())
        {
            // The key's own dominant that steps down is no substitute, nor is IV7 on its way to iii, nor does anything resolve into a diminished chord.
            if (chords.Above(i) == 7 || (chords.Above(i) == 5 && !key.HasMinorThird && chords.IsSupertonic(i + 1)) || goal.Quality.IsHalfDiminished() || goal.Quality.IsDiminished()) return;
            var other = new Chord(goal.Root + Interval.PerfectFifth, ChordQualities.Row("7")).Readable;
            Add(ProgressionPatternKind.TritoneSubstitute, i, i + 1, "other", MarkedText.Mark(other));
            return;
        }
        if (!chords.Fourth(i) || placer.Place(chord, i > 0 ? chords.At(i - 1) : null, goal).Function is not (HarmonicFunction.SecondaryDominant or HarmonicFunction.DominantWithinKey)) return;
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
        if (i + 1 >= chords.Count || chords.Above(i) != 7 || !chords.IsDominant(i) || chords.At(i).Bass is not null || chords.At(i + 1).Bass is not null) return;
        // In major also to the sixth degree of the minor key.
        var arrival = (chords.At(i + 1).Quality.IsPlainMajor() && chords.Above(i + 1) == 8) || (!key.HasMinorThird && chords.At(i + 1).Quality.IsPlainMinor() && chords.Above(i + 1) == 9);
        if (arrival) Add(ProgressionPatternKind.DeceptiveCadence, i, i + 1, "goal", MarkedText.Mark(new Chord(key.Tonic, ChordQualities.Row(key.HasMinorThird ? "m" : ""))));
    }

    // Runs of at least four chords, up to where the dominant has come home. A tritone between two degrees of the key counts as a step of the
    // cycle, once in seven steps.
    private void FindCycles()
    {
        for (var i = 0; i + 3 < chords.Count; i++)
        {
            var last = i;
            var tritone = -1;
            while (last + 1 < chords.Count)
            {
                if (chords.IsKeyTritone(last) && (tritone < 0 || last - tritone >= 7)) tritone = last;
                else if (!chords.Fourth(last)) break;
                last++;
                if (chords.Above(last) == 0 && chords.Above(last - 1) == 7 && !chords.At(last).Quality.IsDominantSeventh()) break;
            }
            if (last - i < 3) continue;
            if (tritone < 0)
            {
                Add(ProgressionPatternKind.CycleOfFourths, i, last);
            }
            else
            {
                Add(ProgressionPatternKind.CycleOfFourthsWithTritone, i, last, "from", chords.At(tritone).Root.ToDisplayString(), "to", chords.At(tritone + 1).Root.ToDisplayString());
            }
            i = last - 1;
        }
    }

    private bool IsLongCycle(ProgressionPattern pattern) =>
        pattern.Kind.IsCycle() && pattern.Last - pattern.First > 4 && chords.StepsBetween(pattern.First, pattern.Last) > 4;

    private void FindClose()
    {
        if (chords.Count < 2) return;
        var last = chords.Count - 1;
        if (chords.Above(last) == 7 && chords.IsDominant(last) && chords.At(last).Bass is null) Add(ProgressionPatternKind.HalfClose, last, last);
        if (chords.Above(last) != 0 || !chords.IsHome(last)) return;
        // Both in root position: over another bass, as a pedal, the close is a weaker one.
        if (chords.Above(last - 1) == 7 && chords.IsDominant(last - 1) && chords.At(last - 1).Bass is null && chords.At(last).Bass is null) Add(ProgressionPatternKind.FullClose, last - 1, last);
        if (chords.Above(last - 1) == 5 && Steps.Up(key.Tonic, chords.At(last - 1).Lowest) != 7) Add(ProgressionPatternKind.PlagalClose, last - 1, last);
    }

    private void Add(ProgressionPatternKind kind, int first, int last, params string[] values)
    {
        var symbols = new List<string>();
        for (var i = first; i <= last; i++) symbols.Add(MarkedText.Mark(chords.At(i)));
        // A chord that is arrived at belongs to the pattern where it comes, and not for as long as it stays.
        var end = EndsOnTheWay(kind) ? chords.LastOf(last) : chords.FirstOf(last);
        // A turnaround begins where it leaves the first chord.
        var start = kind.IsTurnaround() ? chords.LastOf(first) : chords.FirstOf(first);
        found.Add(new ProgressionPattern(kind, start, end, Sentence(wording[kind])) { Again = wording.Again(kind) is { } again ? Sentence(again) : null });

        string Sentence(string template)
        {
            template = HarmonyWording.Fill(template, "course", wording.Course(isRound: symbols[0] == symbols[^1]));
            var sentence = HarmonyWording.Fill(template, "chords", string.Join(" – ", symbols), "first", symbols[0], "last", symbols[^1]);
            return HarmonyWording.Fill(sentence, values);
        }
    }

    private static bool EndsOnTheWay(ProgressionPatternKind kind) => kind.IsTurnaround()
        || kind is ProgressionPatternKind.TwoFive or ProgressionPatternKind.SlidingTwoFive or ProgressionPatternKind.HalfClose or ProgressionPatternKind.DescendingMinor;
}
