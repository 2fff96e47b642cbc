using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>The harmony at a glance: one row a chord.</summary>
internal static class HarmonyTable
{
    // Between two chord tones where both are as wide as any in the table, in shares of the em.
    private const double ToneGap = 0.5;

    // Between two notes of a line of text.
    private const string NoteGap = "\u00A0\u00A0";

    /// <summary>The table: six columns, or two where the paper is too narrow for them.</summary>
    internal static TableSpec Make(HandoutContent content, PageStyle style)
    {
        var wide = Wide(content, style);
        return TableSetter.LeastWidth(wide) <= style.TextWidth ? wide : Narrow(content, style);
    }

    // Bars and function under the chord, in no more width than they need; guide tones and scale under the chord tones.
    private static TableSpec Narrow(HandoutContent content, PageStyle style)
    {
        var (labels, small) = (content.Labels, style.Small);
        ImmutableArray<TableColumn> columns =
        [
            new(TableCell.Of(labels.Chord, small, Emphasis.Strong)) { IsTight = true },
            new(TableCell.Of(labels.Tones, small, Emphasis.Strong)),
        ];
        var rows = ImmutableArray.CreateBuilder<ImmutableArray<TableCell>>(content.Harmony.Length);
        var tones = Tones(content.Harmony.Select(r => r.Tones), small);
        for (var i = 0; i < content.Harmony.Length; i++)
        {
            var row = content.Harmony[i];
            var chord = ImmutableArray.Create<CellPart>(DrawnPart.Of(SymbolPiece.Of(row.Chord, style.ItemTitle.Size)));
            if (row.Measures.Length > 0) chord = chord.Add(new TextPart([new TextInline($"{(row.Measures.All(char.IsAsciiDigit) ? labels.Measure : labels.Measures)} {row.Measures}")], small));
            var chordTones = tones[i].Parts;
            if (!row.GuideTones.IsEmpty)
            {
                var guides = ImmutableArray.CreateBuilder<Inline>();
                guides.Add(new TextInline(labels.GuideTones + " "));
                AddNotes(guides, row.GuideTones.Select(t => (t.Note, Emphasis.Strong | (t.IsChanged ? Emphasis.Underlined : Emphasis.None))));
                chordTones = chordTones.Add(new TextPart(guides.DrainToImmutable(), small));
            }
            rows.Add([new TableCell([.. chord, .. FunctionCell(row, style).Parts]), new TableCell([.. chordTones, .. ScaleCell(row, small).Parts])]);
        }
        return new TableSpec(columns, rows.MoveToImmutable());
    }

    private static TableSpec Wide(HandoutContent content, PageStyle style)
    {
        var labels = content.Labels;
        var hasMeasures = content.Harmony.Any(r => r.Measures.Length > 0);
        var columns = ImmutableArray.CreateBuilder<TableColumn>();
        columns.Add(Header(labels.Chord));
        if (hasMeasures) columns.Add(Header(labels.Measures));
        columns.Add(Header(labels.Function));
        columns.Add(Header(labels.Tones));
        columns.Add(Header(labels.GuideTones));
        columns.Add(Header(labels.Scale));
        var rows = ImmutableArray.CreateBuilder<ImmutableArray<TableCell>>(content.Harmony.Length);
        var tones = Tones(content.Harmony.Select(r => r.Tones), style.Small);
        var guideTones = Tones(content.Harmony.Select(r => r.GuideTones), style.Small);
        for (var i = 0; i < content.Harmony.Length; i++)
        {
            var row = content.Harmony[i];
            var cells = ImmutableArray.CreateBuilder<TableCell>(columns.Count);
            cells.Add(new TableCell([DrawnPart.Of(SymbolPiece.Of(row.Chord, style.ItemTitle.Size))]));
            if (hasMeasures) cells.Add(TableCell.Of(row.Measures, style.Small));
            cells.Add(FunctionCell(row, style));
            cells.Add(tones[i]);
            cells.Add(guideTones[i]);
            cells.Add(ScaleCell(row, style.Small));
            rows.Add(cells.MoveToImmutable());
        }
        return new TableSpec(columns.DrainToImmutable(), rows.MoveToImmutable());

        TableColumn Header(string text) => new(TableCell.Of(text, style.Small, Emphasis.Strong));
    }

    private static TableCell FunctionCell(HarmonyRow row, PageStyle style)
    {
        var parts = ImmutableArray.CreateBuilder<CellPart>(2);
        if (row.Roman.Length > 0)
        {
            var roman = SymbolPiece.OfRoman(row.Roman, style.Body.Size);
            parts.Add(DrawnPart.Among(style.Small, roman.Marks, roman.Width));
        }
        // The numeral stays with the word before it: "dominant of ii".
        if (row.Function.Length > 0) parts.Add(new TextPart(MusicMarkup.Read(row.Function.Replace(" [", "\u00A0[", StringComparison.Ordinal)), style.Small));
        return new TableCell(parts.DrainToImmutable());
    }

    // Note names in one line, the degree of each beneath it, all at one distance, so that those of all rows stand under each other.
    private static ImmutableArray<TableCell> Tones(IEnumerable<ImmutableArray<LabelledTone>> rows, TextStyle small)
    {
        var set = rows.Select(r => r.Select(t => (Note: TextSetter.Set(t.Note, small.Strong, small.Size), Degree: SymbolPiece.Of(t.Degree, small.Size), t.IsChanged)).ToList()).ToList();
        var step = set.SelectMany(r => r).Select(t => Math.Max(t.Note.Width, t.Degree.Width)).DefaultIfEmpty(0).Max() + (ToneGap * small.Size);
        return
        [
            .. set.Select(row =>
            {
                if (row.Count == 0) return TableCell.Empty;
                var (notes, degrees) = (ImmutableArray.CreateBuilder<Mark>(), ImmutableArray.CreateBuilder<Mark>());
                for (var i = 0; i < row.Count; i++)
                {
                    row[i].Note.PlaceAt(notes, i * step, 0);
                    if (row[i].IsChanged) notes.Add(Underline.Of(i * step, (i * step) + row[i].Note.Width, small.Size));
                    row[i].Degree.PlaceAt(degrees, i * step, 0);
                }
                var width = ((row.Count - 1) * step) + Math.Max(row[^1].Note.Width, row[^1].Degree.Width);
                return new TableCell([DrawnPart.Among(small, notes.DrainToImmutable(), width), DrawnPart.Among(small, degrees.DrainToImmutable(), width)]);
            }),
        ];
    }

    // Name and notes in one line where there is room for both; the notes are never parted from each other.
    private static TableCell ScaleCell(HarmonyRow row, TextStyle small)
    {
        // Twice as wide, or a first note that is bold as the name is would seem to belong to it.
        const string NameGap = NoteGap + "\u00A0 ";
        var parts = ImmutableArray.CreateBuilder<CellPart>(2);
        var scale = ImmutableArray.CreateBuilder<Inline>();
        if (row.ScaleName.Length > 0) scale.Add(new TextInline(row.ScaleName) { Emphasis = Emphasis.Strong });
        if (scale.Count > 0 && !row.ScaleNotes.IsEmpty) scale.Add(new TextInline(NameGap));
        AddNotes(scale, row.ScaleNotes.Select(n => (n.Note, n.IsChanged ? Emphasis.Strong | Emphasis.Underlined : Emphasis.None)));
        if (scale.Count > 0) parts.Add(new TextPart(scale.DrainToImmutable(), small));
        if (row.Reason.Length > 0) parts.Add(new TextPart(MusicMarkup.Read(row.Reason, Emphasis.Italic), small));
        return new TableCell(parts.DrainToImmutable());
    }

    private static void AddNotes(ImmutableArray<Inline>.Builder line, IEnumerable<(string Name, Emphasis Emphasis)> notes)
    {
        var isFirst = true;
        foreach (var (name, emphasis) in notes)
        {
            if (!isFirst) line.Add(new TextInline(NoteGap));
            line.Add(new TextInline(name) { Emphasis = emphasis });
            isFirst = false;
        }
    }
}
