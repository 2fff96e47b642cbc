namespace SheetPress.Engraving;

/// <summary>Finds lines of text that are too long for their place: they run into other text or over a rule of their table.</summary>
internal static class TextLint
{
    // Slanted letters, raised figures and slashes reach a little into their neighbours (mm).
    private const double Tolerance = 0.5;

    /// <summary>Checks marks of a page.</summary>
    /// <param name="marks">The marks, in millimetres.</param>
    public static IEnumerable<LintFinding> Check(IReadOnlyList<Mark> marks)
    {
        var texts = marks.Where(m => IsText(m) && m.Ink > 0 && !m.Bounds.IsEmpty).OrderBy(m => m.Bounds.Left).ToList();
        var rules = marks.Where(m => m.Role == MarkRole.TableRule && m.Ink > 0 && m.Bounds.Width < Tolerance).ToList();
        for (var i = 0; i < texts.Count; i++)
        {
            var bounds = texts[i].Bounds;
            for (var k = i + 1; k < texts.Count && texts[k].Bounds.Left < bounds.Right - Tolerance; k++)
            {
                if (SharesInk(bounds, texts[k].Bounds)) yield return Finding(texts[i], $"runs into {Words(texts[k])}");
            }
            foreach (var rule in rules)
            {
                var middle = (rule.Bounds.Left + rule.Bounds.Right) / 2;
                if (middle > bounds.Left + Tolerance && middle < bounds.Right - Tolerance && rule.Bounds.Top < bounds.Bottom && bounds.Top < rule.Bounds.Bottom)
                {
                    yield return Finding(texts[i], "runs over a rule of its table");
                }
            }
        }
    }

    private static LintFinding Finding(Mark text, string what) => new(LintRule.Text, text.Origin, text.Bounds, $"{Words(text)} {what}");

    private static string Words(Mark mark) => mark is TextMark text ? $"\"{text.Run.Text}\"" : mark.Role.ToString();

    // Text of the page and the symbols set in it; the texts of the music are in the care of the ink rule.
    private static bool IsText(Mark mark) => mark.Origin.System < 0 && mark.Origin.Measure < 0
        && mark.Role is MarkRole.BodyText or MarkRole.Title or MarkRole.ChordSymbol or MarkRole.DegreeName or MarkRole.Roman
        && mark is TextMark or GlyphMark;

    private static bool SharesInk(Box a, Box b) =>
        Math.Min(a.Right, b.Right) - Math.Max(a.Left, b.Left) > Tolerance && Math.Min(a.Bottom, b.Bottom) - Math.Max(a.Top, b.Top) > Tolerance;
}
