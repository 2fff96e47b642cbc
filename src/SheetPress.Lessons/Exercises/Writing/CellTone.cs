using System.Collections.Immutable;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>A note of a figure, counted from the root of its chord.</summary>
/// <param name="FromRoot">Interval from the planned root; negative below it.</param>
/// <param name="Degree">Degree to name it by; null for none.</param>
internal readonly record struct CellTone(Interval FromRoot, Degree? Degree)
{
    /// <summary>A degree above the root, named as it is.</summary>
    public static CellTone Of(Degree degree) => new(degree.ToInterval(), degree);

    /// <summary>Several degrees.</summary>
    public static ImmutableArray<CellTone> Of(ImmutableArray<Degree> degrees) => degrees.Select(Of).ToImmutableArray();

    /// <summary>The same tone some octaves up, its name counted on (3 becomes 10).</summary>
    public CellTone Up(int octaves) => new(
        FromRoot + (Interval.Octave * octaves),
        Degree is { } degree ? new Degree(degree.Number + (7 * octaves), degree.Alteration) : null);
}
