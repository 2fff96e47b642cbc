using System.Globalization;
using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>Draws the brackets of first and second endings on one height over everything else.</summary>
internal static class EndingDrawer
{
    private const double Rise = 2;
    private const double Gap = 0.9;
    private const double Hook = 2;
    private const double TextInset = 0.5;
    private const double TextDrop = 0.35;

    // White beside numbers and hooks; the sign of an open string would be read with the number.
    private const double BesideMarks = 0.2;
    private const double BesideDiagram = 1.5;

    // Brackets of neighbouring endings do not touch, also where only a thin barline is between them.
    private const double Apart = 0.35;

    /// <summary>Draws the brackets of a system.</summary>
    /// <param name="frame">The system.</param>
    /// <param name="canvas">The upper staff.</param>
    /// <param name="opened">For a measure whether an ending that began earlier is still open at its start.</param>
    /// <param name="sizes">Sizes of text.</param>
    public static void Draw(SystemFrame frame, StaffCanvas canvas, Func<int, bool> opened, TextSizes sizes)
    {
        var marks = new List<Mark>();
        for (var i = 0; i < frame.Measures.Length; i++)
        {
            var starts = !frame.Measures[i].Plan.Context.Measure.EndingStart.IsEmpty;
            if (!starts && !(i == 0 && opened(frame.Measures[i].Plan.Context.Index))) continue;
            var last = i;
            while (last + 1 < frame.Measures.Length && !frame.Measures[last].Plan.Context.LastMeasure.EndingStop && frame.Measures[last + 1].Plan.Context.Measure.EndingStart.IsEmpty) last++;
            marks.AddRange(Bracket(frame, frame.Measures[i], frame.Measures[last], i, Right(frame, last), starts, sizes));
            i = last;
        }
        if (marks.Count > 0) canvas.Place(marks, above: true, Gap, BesideMarks, m => m.Role == MarkRole.Diagram, Gap, BesideDiagram);
    }

    // A bracket reaches the barline that ends it: its far side, or where another bracket begins there the thin line of a repeat.
    private static double Right(SystemFrame frame, int last)
    {
        var (x, boundary) = frame.Boundaries[last + 1];
        var isFollowed = last + 1 < frame.Measures.Length && !frame.Measures[last + 1].Plan.Context.Measure.EndingStart.IsEmpty;
        if (boundary.Strokes.IsEmpty || (isFollowed && boundary.Strokes.Length == 1)) return x - Apart;
        var stroke = isFollowed ? boundary.Strokes[0] : boundary.Strokes[^1];
        return x + stroke.Left + stroke.Width;
    }

    private static IEnumerable<Mark> Bracket(SystemFrame frame, PlacedMeasure first, PlacedMeasure last, int firstIndex, double right, bool starts, TextSizes sizes)
    {
        var context = first.Plan.Context;
        var origin = new MarkOrigin(frame.Index, context.Index, -1, -1);
        var thickness = Ink.Defaults.RepeatEndingLineThickness;
        // At the start of a system the bracket begins over its first note.
        var left = firstIndex == 0 ? frame.Boundaries[0].Boundary.Right : first.Start + frame.Boundaries[firstIndex].Boundary.BarRight - (thickness / 2);
        var stop = last.Plan.Context.LastMeasure;
        var y = -Rise;
        yield return Ink.Level(left, right, y, thickness, MarkRole.Ending, origin);
        if (stop.EndingStop && stop.EndingClosed) yield return Ink.Upright(right - (thickness / 2), y, y + Hook, thickness, MarkRole.Ending, origin);
        if (!starts) yield break;
        yield return Ink.Upright(left + (thickness / 2), y, y + Hook, thickness, MarkRole.Ending, origin);
        var numbers = string.Join(", ", context.Measure.EndingStart.Select(n => n.ToString(CultureInfo.InvariantCulture) + "."));
        var text = new SymbolBuilder(MarkRole.Ending).Text(numbers, TextFont.SerifSemiBold, sizes.Words).Build();
        foreach (var mark in new RowItem(text, left + TextInset, origin).MarksAt(y + TextDrop - text.Bounds.Top)) yield return mark;
    }

    /// <summary>Whether an ending is open at the start of a measure.</summary>
    public static bool IsOpenAt(Score score, int measure)
    {
        for (var i = measure - 1; i >= 0; i--)
        {
            if (score.Measures[i].EndingStop) return false;
            if (!score.Measures[i].EndingStart.IsEmpty) return true;
        }
        return false;
    }
}
