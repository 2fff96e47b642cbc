using System.Collections.Immutable;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>
/// A cell of degrees over a chord. What the chord lacks is played by another of its tones (see <see cref="DegreeResolver"/>); where that
/// would only strike a neighbour of the cell again, it is the fifth, the octave or the root that is not there already: over a chord
/// of root and fifth "R 5 8 7" is R 5 8 5 and "R 3 5 8" is R 8 5 8 (common practice: a line keeps moving).
/// </summary>
internal static class ChordCell
{
    private static readonly DegreeRequest Fifth = new(new Degree(5), false);

    /// <summary>The tones of the cell.</summary>
    /// <param name="tones">The degrees as the teacher writes them.</param>
    /// <param name="step">The chord.</param>
    /// <param name="bassAt">Whether the root at an index is the bass of a slash chord.</param>
    public static ImmutableArray<CellTone> Of(ImmutableArray<DegreeRequest> tones, HarmonyStep step, Func<int, bool> bassAt)
    {
        var cell = tones.Select((t, i) => Tone(t, step, t.Degree.Simple == Degree.Root && bassAt(i))).ToArray();
        for (var i = 0; i < cell.Length && cell.Length > 1; i++)
        {
            if (tones[i].IsExact || cell[i].Degree is not { } degree || degree.Simple.Number == tones[i].Degree.Simple.Number) continue;
            var (before, after) = (cell[(i + cell.Length - 1) % cell.Length], cell[(i + 1) % cell.Length]);
            if (IsSame(cell[i], before) || IsSame(cell[i], after)) cell[i] = Other(step, before, after) ?? cell[i];
        }
        return [.. cell];
    }

    private static CellTone Tone(DegreeRequest request, HarmonyStep step, bool isBass) =>
        isBass ? CellTone.Of(step.BassDegree).Up((request.Degree.Number - 1) / 7) : CellTone.Of(DegreeResolver.Resolve(request, step));

    private static CellTone? Other(HarmonyStep step, CellTone before, CellTone after)
    {
        foreach (var tone in (ReadOnlySpan<CellTone>)[CellTone.Of(DegreeResolver.Resolve(Fifth, step)), CellTone.Of(new Degree(8)), CellTone.Of(Degree.Root)])
            if (!IsSame(tone, before) && !IsSame(tone, after)) return tone;
        return null;
    }

    private static bool IsSame(CellTone a, CellTone b) => a.FromRoot.HalfSteps == b.FromRoot.HalfSteps;
}
