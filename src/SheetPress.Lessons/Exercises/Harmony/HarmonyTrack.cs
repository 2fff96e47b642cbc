using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>The chords of a progression in order, each knowing what follows it.</summary>
internal sealed class HarmonyTrack
{
    private HarmonyTrack(ImmutableArray<HarmonyStep?> all, ImmutableArray<HarmonyStep> sounding)
    {
        All = all;
        Sounding = sounding;
    }

    /// <summary>One entry for each chord of the progression; null where nothing sounds (N.C.).</summary>
    public ImmutableArray<HarmonyStep?> All { get; }

    /// <summary>The sounding ones in order.</summary>
    public ImmutableArray<HarmonyStep> Sounding { get; }

    /// <summary>Reads the progression of a lesson.</summary>
    public static HarmonyTrack Of(ExerciseContext context)
    {
        var chords = context.Progression.Chords;
        var all = new HarmonyStep?[chords.Length];
        var sounding = ImmutableArray.CreateBuilder<HarmonyStep>(chords.Length);
        for (var i = 0; i < chords.Length; i++)
        {
            if (chords[i].Chord is not { } chord) continue;
            all[i] = new HarmonyStep(i, chords[i], chord, context.Progression.Measures[chords[i].Measure].Key);
            sounding.Add(all[i]!);
        }
        var after = FollowRepeats(context.Progression);
        for (var i = 0; i < all.Length; i++)
        {
            if (all[i] is { } step) step.Next = after[i] >= 0 ? all[after[i]] : null;
        }
        if (sounding.Count > 0 && after[^1] < 0) sounding[^1].IsFinal = true;
        return new HarmonyTrack([.. all], sounding.ToImmutable());
    }

    /// <summary>The chord in force at a time, or null.</summary>
    public HarmonyStep? At(Fraction time)
    {
        foreach (var step in Sounding) if (step.Start <= time && time < step.End) return step;
        return null;
    }

    // Index of the chord heard after each: the written next one, or the start of the repeat that ends with it; -1 after the last.
    private static int[] FollowRepeats(Progression progression)
    {
        var chords = progression.Chords;
        var after = new int[chords.Length];
        for (var i = 0; i < chords.Length; i++) after[i] = i + 1 < chords.Length ? i + 1 : -1;
        var measureStart = Fraction.Zero;
        var repeatStart = Fraction.Zero;
        foreach (var measure in progression.Measures)
        {
            if (measure.RepeatStart) repeatStart = measureStart;
            measureStart += measure.Length;
            if (measure.RepeatEndTimes == 0) continue;
            var back = IndexAt(chords, repeatStart);
            for (var i = 0; i < chords.Length; i++) if (chords[i].End == measureStart) after[i] = back;
            repeatStart = measureStart;
        }
        return after;
    }

    private static int IndexAt(ImmutableArray<ChordSpan> chords, Fraction time)
    {
        for (var i = 0; i < chords.Length; i++) if (chords[i].End > time) return i;
        return -1;
    }
}
