using System.Globalization;
using SheetPress.Theory;

namespace SheetPress.Engraving;

/// <summary>Degree names (R, ♭3, ♯11) as text and glyphs.</summary>
public static class DegreeText
{
    private const TextFont Font = TextFont.Sans;

    /// <summary>Lays out a degree name.</summary>
    /// <param name="degree">The degree.</param>
    /// <param name="size">Em of the numeral, in the unit of the drawing.</param>
    public static SymbolLayout Layout(Degree degree, double size)
    {
        var builder = new SymbolBuilder(MarkRole.DegreeName);
        if (degree == Degree.Root) return builder.Text("R", Font, size).Build();
        for (var rest = degree.Alteration; rest != 0; rest -= Math.Sign(rest)) builder.Accidental(Math.Sign(rest), size);
        return builder.Text(degree.Number.ToString(CultureInfo.InvariantCulture), Font, size).Build();
    }
}
