namespace SheetPress.Engraving;

/// <summary>Finds text too small to read.</summary>
internal static class TextSizeLint
{
    /// <summary>No text is smaller, in points.</summary>
    public const double Smallest = 7;

    private const double MillimetresPerPoint = 25.4 / 72;
    private const double Tolerance = 1e-6;

    /// <summary>Checks marks.</summary>
    /// <param name="marks">The marks.</param>
    /// <param name="millimetres">Length of the unit of the drawing in millimetres.</param>
    public static IEnumerable<LintFinding> Check(IReadOnlyList<Mark> marks, double millimetres)
    {
        foreach (var text in marks.OfType<TextMark>())
        {
            var points = text.Size * millimetres / MillimetresPerPoint;
            if (points < Smallest - Tolerance) yield return new LintFinding(LintRule.TextSize, text.Origin, text.Bounds, FormattableString.Invariant($"\"{text.Run.Text}\" is set in {points:0.0} points"));
        }
    }
}
