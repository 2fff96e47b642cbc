using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>The harmony at a glance: one row a chord.</summary>
internal static class HarmonyTable
{
    // Between two chord tones, in shares of the em.
    private const double ToneGap = 0.62;

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
        foreach (var row in content.Harmony)
        {
            var chord = ImmutableArray.Create<CellPart>(DrawnPart.Of(SymbolPiece.Of(row.Chord, style.ItemTitle.Size)));
            if (row.Measures.Length > 0) chord = chord.Add(new TextPart([new TextInline($"{(row.Measures.All(char.IsAsciiDigit) ? labels.Measure : labels.Measures)} {row.Measures}")], small));
            var tones = Tones(row.Tones, small).Parts;
            if (!row.GuideTones.IsEmpty)
            {
                var guides = ImmutableArray.CreateBuilder<Inline>();
                guides.Add(new TextInline(labels.GuideTones + " "));
                for (var i = 0; i < row.GuideTones.Length; i++)
                {
                    if (i > 0) guides.Add(new TextInline("\u00A0\u00A0"));
                    guides.Add(new TextInline(row.GuideTones[i].Note) { Emphasis = Emphasis.Strong | (row.GuideTones[i].IsChanged ? Emphasis.Underlined : Emphasis.None) });
                }
                tones = tones.Add(new TextPart(guides.DrainToImmutable(), small));
            }
            rows.Add([new TableCell([.. chord, .. FunctionCell(row, style).Parts]), new TableCell([.. tones, .. ScaleCell(row, small).Parts])]);
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
        foreach (var row in content.Harmony)
        {
            var cells = ImmutableArray.CreateBuilder<TableCell>(columns.Count);
            cells.Add(new TableCell([DrawnPart.Of(SymbolPiece.Of(row.Chord, style.ItemTitle.Size))]));
            if (hasMeasures) cells.Add(TableCell.Of(row.Measures, style.Small));
            cells.Add(FunctionCell(row, style));
            cells.Add(Tones(row.Tones, style.Small));
            cells.Add(Tones(row.GuideTones, style.Small));
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

    // Note names in one line, the degree of each beneath it.
    private static TableCell Tones(ImmutableArray<LabelledTone> tones, TextStyle small)
    {
        if (tones.IsEmpty) return TableCell.Empty;
        var (notes, degrees) = (ImmutableArray.CreateBuilder<Mark>(), ImmutableArray.CreateBuilder<Mark>());
        var (x, gap) = (0.0, ToneGap * small.Size);
        foreach (var tone in tones)
        {
            var note = TextSetter.Set(tone.Note, small.Strong, small.Size);
            var degree = SymbolPiece.Of(tone.Degree, small.Size);
            var width = Math.Max(note.Width, degree.Width);
            var left = x + ((width - note.Width) / 2);
            note.PlaceAt(notes, left, 0);
            if (tone.IsChanged) notes.Add(Underline.Of(left, left + note.Width, small.Size));
            degree.PlaceAt(degrees, x + ((width - degree.Width) / 2), 0);
            x += width + gap;
        }
        return new TableCell([DrawnPart.Among(small, notes.DrainToImmutable(), x - gap), DrawnPart.Among(small, degrees.DrainToImmutable(), x - gap)]);
    }

    // Name and notes in one line where there is room for both; the notes are never parted from each other.
    private static TableCell ScaleCell(HarmonyRow row, TextStyle small)
    {
        const string NoteGap = "\u00A0\u00A0";
        // Twice as wide, or a first note that is bold as the name is would seem to belong to it.
        const string NameGap = NoteGap + "\u00A0 ";
        var parts = ImmutableArray.CreateBuilder<CellPart>(2);
        var scale = ImmutableArray.CreateBuilder<Inline>();
        if (row.ScaleName.Length > 0) scale.Add(new TextInline(row.ScaleName) { Emphasis = Emphasis.Strong });
        if (scale.Count > 0 && !row.ScaleNotes.IsEmpty) scale.Add(new TextInline(NameGap));
        for (var i = 0; i < row.ScaleNotes.Length; i++)
        {
            if (i > 0) scale.Add(new TextInline(NoteGap));
            var note = row.ScaleNotes[i];
            scale.Add(new TextInline(note.Note) { Emphasis = note.IsChanged ? Emphasis.Strong | Emphasis.Underlined : Emphasis.None });
        }
        if (scale.Count > 0) parts.Add(new TextPart(scale.DrainToImmutable(), small));
        if (row.Reason.Length > 0) parts.Add(new TextPart(MusicMarkup.Read(row.Reason, Emphasis.Italic), small));
        return new TableCell(parts.DrainToImmutable());
    }
}
