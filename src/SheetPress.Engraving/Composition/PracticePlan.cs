using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>The practice plan: what, at which tempos (a box to tick for each), how often, how long.</summary>
internal static class PracticePlan
{
    internal static TableSpec Make(HandoutContent content, PageStyle style)
    {
        var (labels, small) = (content.Labels, style.Small);
        var plan = content.PracticePlan;
        var hasTimes = plan.Any(r => r.Repetitions.Length > 0);
        var hasMinutes = plan.Any(r => r.Minutes.Length > 0);
        var columns = ImmutableArray.CreateBuilder<TableColumn>();
        columns.Add(Header(labels.Task, ColumnAlignment.Left));
        columns.Add(Header(labels.Tempos, ColumnAlignment.Left));
        if (hasTimes) columns.Add(Header(labels.Repetitions, ColumnAlignment.Right));
        if (hasMinutes) columns.Add(Header(labels.Minutes, ColumnAlignment.Right));
        var rows = ImmutableArray.CreateBuilder<ImmutableArray<TableCell>>();
        foreach (var row in plan)
        {
            AddRow(TableCell.Of(MusicMarkup.Read(row.Task), small), TableCell.Of(Tempos(row.Tempos, small), small), row.Repetitions, row.Minutes, Emphasis.None);
        }
        var hasTotal = content.PracticeTotal.Length > 0 && hasMinutes;
        if (hasTotal) AddRow(TableCell.Of(labels.Total, small, Emphasis.Strong), TableCell.Empty, "", content.PracticeTotal, Emphasis.Strong);
        return new TableSpec(columns.DrainToImmutable(), rows.DrainToImmutable()) { LastRowIsTotal = hasTotal };

        TableColumn Header(string text, ColumnAlignment alignment) => new(TableCell.Of(text, small, Emphasis.Strong), alignment);

        void AddRow(TableCell task, TableCell tempos, string times, string minutes, Emphasis emphasis)
        {
            var cells = ImmutableArray.CreateBuilder<TableCell>();
            cells.Add(task);
            cells.Add(tempos);
            if (hasTimes) cells.Add(TableCell.Of(times, small, emphasis));
            if (hasMinutes) cells.Add(TableCell.Of(minutes, small, emphasis));
            rows.Add(cells.DrainToImmutable());
        }
    }

    private static ImmutableArray<Inline> Tempos(ImmutableArray<string> tempos, TextStyle small)
    {
        var inlines = ImmutableArray.CreateBuilder<Inline>();
        var side = 0.72 * small.Size;
        foreach (var tempo in tempos)
        {
            var number = TextSetter.Set(tempo + " ", small.Upright, small.Size);
            var left = side + (0.35 * small.Size);
            var box = new RectangleMark(new Box(0, -side, side, 0), 0.22) { Role = MarkRole.TableRule };
            var marks = ImmutableArray.CreateBuilder<Mark>();
            marks.Add(box);
            number.PlaceAt(marks, left, 0);
            if (inlines.Count > 0) inlines.Add(new TextInline(" "));
            inlines.Add(new PieceInline(number with { Marks = marks.DrainToImmutable(), Width = left + TextSetter.Measure(tempo, small.Upright, small.Size) + (0.7 * small.Size) }));
        }
        return inlines.DrainToImmutable();
    }
}
