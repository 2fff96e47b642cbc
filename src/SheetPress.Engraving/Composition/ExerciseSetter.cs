using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>Sets an exercise: heading, instruction, diagrams, systems.</summary>
internal static class ExerciseSetter
{
    private const double NumberGap = 2.6;
    private const double TitleGap = 1.8;
    private const double LegendGap = 1;
    private const double StaffGap = 8.5;

    // Share of the gap between systems that stays between the lowest ink of one and the highest of the next, wherever they stand.
    private const double LeastWhite = 0.6;
    private const double SystemStretch = 6;
    private const double SystemShrink = 1;

    // One system alone on a page, of an exercise that could have two there, costs about as much as the white that taking two over leaves.
    private const double LonelySystem = 300;

    /// <summary>Sets an exercise.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="systems">Its music.</param>
    /// <param name="style">How pages look.</param>
    /// <param name="room">Height of a page, less what has to stand on it with the exercise: when it fits, it is not split.</param>
    /// <param name="legend">What the shapes in its diagrams mean; null where nothing is said.</param>
    internal static ImmutableArray<FlowBox> Make(ExerciseContent exercise, ImmutableArray<EngravedSystem> systems, PageStyle style, double room, FlowBox? legend = null)
    {
        var flow = new FlowBuilder();
        flow.Add(default, Heading(exercise, style));
        if (exercise.Score.Instruction.Length > 0)
        {
            var instruction = MarkdownReader.ReadInline(exercise.Score.Instruction).Select(i => i with { Emphasis = i.Emphasis ^ Emphasis.Italic }).ToImmutableArray();
            foreach (var line in ProseSetter.Paragraph(instruction, style.Body, style.TextWidth, ParagraphEdge.Ragged)) flow.AddKept(default, line);
        }
        if (legend is not null) flow.AddKept(new FlowSpace(LegendGap), legend);
        var after = new FlowSpace(TitleGap, 1.2, 0.4);
        foreach (var row in DiagramRows.Make(exercise.Diagrams, style))
        {
            flow.AddKept(after, row);
            after = row.After;
        }
        AddSystems(flow, systems, style, after);
        var height = 0.0;
        foreach (var box in flow.Boxes) height += box.Height + box.After.Natural;
        return [.. flow.Boxes.Select((b, i) => height <= room && i + 1 < flow.Boxes.Count ? b with { BreakPenalty = FlowBox.Never } : b)];
    }

    /// <summary>The shapes of dots in the diagrams of an exercise, large ones and maps of tones over its chord symbols.</summary>
    internal static IEnumerable<DotShape> Shapes(ExerciseContent exercise)
    {
        var hasMaps = exercise.Score.Measures.Any(m => m.Harmonies.Any(h => h.FrameIsMap && !h.Frame.IsEmpty));
        return DiagramRows.Shapes(exercise.Diagrams).Concat(hasMaps ? [DotShape.Root, DotShape.Tone] : []);
    }

    private static FlowBox Heading(ExerciseContent exercise, PageStyle style)
    {
        var look = style.ItemTitle;
        var inlines = ImmutableArray.CreateBuilder<Inline>();
        var indent = 0.0;
        var marks = ImmutableArray.CreateBuilder<Mark>();
        if (exercise.Number.Length > 0)
        {
            var number = TextSetter.Set(exercise.Number + " ", look.Strong, look.Size, MarkRole.Title);
            indent = TextSetter.Measure(exercise.Number, look.Strong, look.Size) + NumberGap;
            number.PlaceAt(marks, 0, LineBox.Baseline(new SetLine([], 0, 0, 0), look));
        }
        inlines.Add(new TextInline(exercise.Score.Title));
        var y = 0.0;
        foreach (var line in ParagraphSetter.Set(inlines.DrainToImmutable(), look, style.TextWidth - indent))
        {
            foreach (var mark in line.As(MarkRole.Title).Marks) marks.Add(mark.Transform(1, indent, y + LineBox.Baseline(line, look)));
            y += LineBox.Height(line, look);
        }
        var name = exercise.Number.Length > 0 ? $"{exercise.Number}  {exercise.Score.Title}" : exercise.Score.Title;
        return FlowBox.Of(new Drawing(marks.DrainToImmutable()), y) with { Bookmarks = [new FlowBookmark(name, 1)], Head = new HeadMark(name, exercise.Number, IsExercise: true) };
    }

    private static void AddSystems(FlowBuilder flow, ImmutableArray<EngravedSystem> systems, PageStyle style, FlowSpace before)
    {
        var scale = style.StaffSpace;
        for (var i = 0; i < systems.Length; i++)
        {
            var system = systems[i];
            var box = new FlowBox((system.Bottom - system.Top) * scale, [new PlacedDrawing(system.Drawing, scale, 0, -system.Top * scale)]) { BreakPenalty = FlowBox.Unwanted };
            if (systems.Length > 3 && (i == 0 || i == systems.Length - 2)) box = box with { BreakPenalty = FlowBox.Unwanted + LonelySystem };
            if (i == systems.Length - 1) box = box with { BreakPenalty = 0 };
            if (i == 0)
            {
                flow.AddKept(before, box);
                continue;
            }
            // From axis to axis: by outline, but never with the staves nearer than a hand's breadth of white, nor with a rehearsal
            // mark of one system so near under the rows of the other that it seems to belong there.
            var above = systems[i - 1];
            var apart = above.Bottom - system.Top + (LeastWhite * style.SystemGap / scale);
            var distance = Math.Max(Math.Max(above.DistanceTo(system, style.SystemGap / scale), above.StaffBottom + (StaffGap / scale)), apart);
            flow.Add(new FlowSpace((distance - above.Bottom + system.Top) * scale, SystemStretch, SystemShrink), box);
        }
    }
}
