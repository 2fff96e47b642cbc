using System.Collections.Immutable;

namespace SheetPress.Theory;

/// <summary>Says what each chord of a progression does in a key and which scale to use over it.</summary>
public static class HarmonicAnalysis
{
    /// <summary>Analyses a progression chord by chord; each looks at its neighbours.</summary>
    /// <param name="progression">The chords in order; null stands for "no chord" and gives null.</param>
    /// <param name="key">The key of the whole progression.</param>
    /// <param name="wording">The language of the phrases; English when null.</param>
    /// <returns>One entry for each chord, in order.</returns>
    public static ImmutableArray<ChordAnalysis?> Analyze(IReadOnlyList<Chord?> progression, Key key, HarmonyWording? wording = null)
    {
        ArgumentNullException.ThrowIfNull(progression);
        ArgumentNullException.ThrowIfNull(key);
        var keys = new Key[progression.Count];
        Array.Fill(keys, key);
        return Analyze(progression, keys, wording);
    }

    /// <summary>
    /// Analyses a progression whose key changes. A chord is heard in its own key with all neighbours in view, in whatever key they are; only
    /// the dominant of the new key right before the change, and the ii before it, are heard in the new key.
    /// </summary>
    /// <param name="progression">The chords in order; null stands for "no chord" and gives null.</param>
    /// <param name="keys">The key at each chord, as many as there are chords.</param>
    /// <param name="wording">The language of the phrases; English when null.</param>
    /// <returns>One entry for each chord, in order.</returns>
    public static ImmutableArray<ChordAnalysis?> Analyze(IReadOnlyList<Chord?> progression, IReadOnlyList<Key> keys, HarmonyWording? wording = null)
    {
        ArgumentNullException.ThrowIfNull(progression);
        ArgumentNullException.ThrowIfNull(keys);
        ArgumentOutOfRangeException.ThrowIfNotEqual(keys.Count, progression.Count);
        wording ??= HarmonyWording.English;
        var leading = NewKeys.Find(progression, keys);
        var views = new Dictionary<Key, ProgressionInKey>();
        var result = ImmutableArray.CreateBuilder<ChordAnalysis?>(progression.Count);
        for (var i = 0; i < progression.Count; i++)
        {
            if (progression[i] is null)
            {
                result.Add(null);
                continue;
            }
            var key = leading[i] is null ? keys[i] : KeyAfter(keys, i);
            if (!views.TryGetValue(key, out var view)) views.Add(key, view = new ProgressionInKey(progression, key, wording));
            result.Add(view.Analyze(i, leading[i]));
        }
        return result.MoveToImmutable();
    }

    private static Key KeyAfter(IReadOnlyList<Key> keys, int index)
    {
        var next = index;
        while (keys[next] == keys[index]) next++;
        return keys[next];
    }

    /// <summary>A twelve-bar blues, described, or null where the twelve bars are none.</summary>
    /// <param name="bars">The chords that sound in each bar, in order; a bar without a chord is empty.</param>
    /// <param name="start">Index of the bar in which the form is to begin.</param>
    /// <param name="key">The key there.</param>
    /// <param name="wording">The language of the sentences; English when null.</param>
    public static BluesForm? FindBlues(IReadOnlyList<IReadOnlyList<Chord>> bars, int start, Key key, HarmonyWording? wording = null)
    {
        ArgumentNullException.ThrowIfNull(bars);
        ArgumentNullException.ThrowIfNull(key);
        return new BluesFinder(bars, start, key, wording ?? HarmonyWording.English).Find();
    }

    /// <summary>The patterns between the chords of a progression, in order of their first chord, longer ones first.</summary>
    /// <param name="progression">The chords in order; null stands for "no chord".</param>
    /// <param name="key">The key of the whole progression.</param>
    /// <param name="wording">The language of the sentences; English when null.</param>
    public static ImmutableArray<ProgressionPattern> FindPatterns(IReadOnlyList<Chord?> progression, Key key, HarmonyWording? wording = null)
    {
        ArgumentNullException.ThrowIfNull(progression);
        ArgumentNullException.ThrowIfNull(key);
        return new PatternFinder(progression, key, wording ?? HarmonyWording.English).Find();
    }
}
