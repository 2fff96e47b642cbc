using System.Globalization;
using System.Text;

namespace SheetPress.Publishing;

/// <summary>Numbers of an SVG file: plain decimals, rounded, without an exponent, a needless zero or a minus before nothing.</summary>
internal static class SvgNumber
{
    /// <summary>Appends a length in millimetres with at most 3 decimals: a micrometre, a tenth of what a fine printer resolves.</summary>
    internal static StringBuilder AppendLength(this StringBuilder text, double value) => Append(text, value, "0.###");

    /// <summary>Appends a factor with at most 7 decimals, since it is multiplied with some thousand font units.</summary>
    internal static StringBuilder AppendFactor(this StringBuilder text, double value) => Append(text, value, "0.#######");

    private static StringBuilder Append(StringBuilder text, double value, string format)
    {
        var number = value.ToString(format, CultureInfo.InvariantCulture);
        return text.Append(number == "-0" ? "0" : number);
    }
}
