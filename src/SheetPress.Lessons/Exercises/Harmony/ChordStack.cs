using System.Collections.Immutable;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>The tones of a chord stacked upward without end: index 0 the root, then the tones in order, the octave after the last of them.</summary>
internal static class ChordStack
{
    private const int MostTones = 4;

    /// <summary>The tone at an index, zero or more, of degrees that fill one octave.</summary>
    public static CellTone At(ImmutableArray<Degree> degrees, int index) => CellTone.Of(degrees[index % degrees.Length]).Up(index / degrees.Length);

    /// <summary>The tones at several indexes.</summary>
    public static ImmutableArray<CellTone> At(ImmutableArray<Degree> degrees, ReadOnlySpan<int> indexes)
    {
        var tones = ImmutableArray.CreateBuilder<CellTone>(indexes.Length);
        foreach (var index in indexes) tones.Add(At(degrees, index));
        return tones.MoveToImmutable();
    }

    /// <summary>At most four tones of a chord within the octave: a second fifth or sixth beside root, third, fifth and seventh is left out.</summary>
    public static ImmutableArray<Degree> FourTones(HarmonyStep step)
    {
        var tones = step.BasicTones;
        if (tones.Length <= MostTones) return tones;
        var chosen = new List<Degree>(MostTones);
        foreach (var number in (ReadOnlySpan<int>)[1, 3, 5, 7, 4, 6, 2])
        {
            foreach (var tone in tones)
            {
                if (tone.Number != number || chosen.Count == MostTones) continue;
                chosen.Add(tone);
                break;
            }
        }
        chosen.Sort(static (a, b) => a.HalfSteps.CompareTo(b.HalfSteps));
        return [.. chosen];
    }

    /// <summary>Four tones: those of <see cref="FourTones"/>, a triad with its octave.</summary>
    public static ImmutableArray<CellTone> Four(HarmonyStep step)
    {
        var tones = FourTones(step);
        return At(tones, [0, 1, 2, 3]);
    }
}
