using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>The machine's eye for a finished page: reads nothing but the display list.</summary>
public static class PageLint
{
    // Page number and footer take this much above the bottom margin.
    private const double FooterHeight = 10;

    // Staff space in millimetres where a page has no notes.
    private const double UsualStaffSpace = 1.75;

    /// <summary>Checks every page of a document.</summary>
    /// <param name="document">The document.</param>
    /// <param name="margin">Margin in millimetres that no ink may enter.</param>
    public static ImmutableArray<LintFinding> Check(SheetDocument document, double margin)
    {
        var findings = ImmutableArray.CreateBuilder<LintFinding>();
        for (var i = 0; i < document.Pages.Length; i++)
        {
            foreach (var finding in Check(document.Pages[i], margin)) findings.Add(finding with { Page = i });
        }
        return findings.ToImmutable();
    }

    /// <summary>Checks one page.</summary>
    /// <param name="page">The page, in millimetres.</param>
    /// <param name="margin">Margin in millimetres that no ink may enter.</param>
    public static IEnumerable<LintFinding> Check(Page page, double margin)
    {
        var marks = page.Drawing.Marks;
        var unit = StaffSpaceOf(marks, UsualStaffSpace);
        return InkLint.Check(marks, unit)
            .Concat(Systems(marks).SelectMany(s => Notes(s, StaffSpaceOf(s, unit))))
            .Concat(TextSizeLint.Check(marks, 1))
            .Concat(TextLint.Check(marks))
            .Concat(Margins(page, margin))
            .Concat(Titles(page, margin));
    }

    // Exercises of one page may differ in staff size: what is said of notes is measured in their own.
    private static IEnumerable<LintFinding> Notes(List<Mark> system, double unit) => NoteLint.Check(system, unit).Concat(BarlineLint.Check(system, unit));

    // Length of a staff space: that of the noteheads, since a tab clef is fitted to its lines.
    private static double StaffSpaceOf(IEnumerable<Mark> marks, double without) =>
        marks.OfType<GlyphMark>().Where(m => m.Role is MarkRole.Notehead).Select(m => m.StaffSpace).DefaultIfEmpty(without).Max();

    // The marks of a system follow each other on the display list; between two exercises stands something else.
    private static IEnumerable<List<Mark>> Systems(ImmutableArray<Mark> marks)
    {
        var run = new List<Mark>();
        foreach (var mark in marks)
        {
            if (run.Count > 0 && mark.Origin.System != run[0].Origin.System)
            {
                yield return run;
                run = [];
            }
            if (mark.Origin.System >= 0) run.Add(mark);
        }
        if (run.Count > 0) yield return run;
    }

    private static IEnumerable<LintFinding> Margins(Page page, double margin)
    {
        foreach (var mark in page.Drawing.Marks)
        {
            var bounds = mark.Bounds;
            if (bounds.IsEmpty || mark.Ink <= 0) continue;
            if (bounds.Left < margin || bounds.Top < margin || bounds.Right > page.Width - margin || bounds.Bottom > page.Height - margin)
            {
                yield return new LintFinding(LintRule.Margin, mark.Origin, bounds, $"{mark.Role} lies outside the margins");
            }
        }
    }

    // Below the last title of a page stands what it heads: music, a figure, a table or text that is not the footer.
    private static IEnumerable<LintFinding> Titles(Page page, double margin)
    {
        var marks = page.Drawing.Marks;
        Mark? last = null;
        foreach (var mark in marks.Where(m => m.Role == MarkRole.Title))
        {
            if (last is null || mark.Bounds.Bottom > last.Bounds.Bottom) last = mark;
        }
        if (last is null) yield break;
        var bottom = last.Bounds.Bottom;
        var heads = marks.Any(m => m.Bounds.Top > bottom && m.Role switch
        {
            MarkRole.StaffLine or MarkRole.TabLine or MarkRole.Diagram => true,
            MarkRole.BodyText or MarkRole.TableRule => m.Bounds.Top < page.Height - margin - FooterHeight,
            _ => false,
        });
        if (!heads) yield return new LintFinding(LintRule.Title, last.Origin, last.Bounds, "title stands at the foot of the page without what it heads");
    }
}
