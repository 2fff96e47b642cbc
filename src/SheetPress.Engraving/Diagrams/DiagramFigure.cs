using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>
/// A diagram with its chord symbol and caption. Over a lying neck both stand in one line at the left end of the neck; an upright
/// diagram has the symbol over it and the caption under it, in the middle.
/// </summary>
public static class DiagramFigure
{
    private const double SymbolGap = 1.8;
    private const double SignClearance = 2.5;
    private const double CaptionGap = 1.2;
    private const double FingerClearance = 0.66;
    private const double WidestUprightCaption = 34;

    /// <summary>Draws a diagram with its words.</summary>
    /// <param name="diagram">What it shows.</param>
    /// <param name="style">Measures of the drawing.</param>
    /// <param name="caption">How the caption looks.</param>
    /// <param name="symbolSize">Em of the chord symbol in millimetres.</param>
    /// <param name="available">Width it may take in millimetres.</param>
    public static DiagramLayout Draw(NeckDiagram diagram, DiagramStyle style, TextStyle caption, double symbolSize, double available)
    {
        var neck = NeckDrawer.Draw(diagram, style, available);
        var words = ImmutableArray.CreateBuilder<Mark>();
        var baseline = neck.NeckTop - WordsRise(diagram.Upright, style, caption, symbolSize);
        if (diagram.Upright) AddUprightWords(words, diagram, neck, style, caption, symbolSize, baseline);
        else AddLyingWords(words, diagram, neck, caption, symbolSize, available, baseline);
        words.AddRange(neck.Drawing.Marks);
        var drawing = new Drawing(words.DrainToImmutable());
        var box = NeckDrawer.Bounds(drawing.Marks);
        return new DiagramLayout(drawing.Transform(1, -box.Left, -box.Top), box.Width, box.Height, neck.NeckTop - box.Top, neck.NeckLeft - box.Left, neck.NeckRight - box.Left) { NeckBottom = neck.NeckBottom - box.Top };
    }

    /// <summary>From the baseline of the words over a diagram to its neck: over the room for dots and open strings, whether there are any or not, so that words side by side are level.</summary>
    /// <param name="upright">Whether the diagram is upright.</param>
    /// <param name="style">Measures of the drawing.</param>
    /// <param name="caption">How the caption looks.</param>
    /// <param name="symbolSize">Em of the chord symbol in millimetres.</param>
    internal static double WordsRise(bool upright, DiagramStyle style, TextStyle caption, double symbolSize) => upright
        ? (2 * style.DotRadius) + SignClearance + (TextStyle.Descent * symbolSize)
        : style.DotRadius + SymbolGap + (TextStyle.Descent * caption.Size);

    private static void AddLyingWords(ImmutableArray<Mark>.Builder marks, NeckDiagram diagram, DiagramLayout neck, TextStyle caption, double symbolSize, double available, double baseline)
    {
        var x = neck.NeckLeft;
        if (diagram.Symbol is { } symbol)
        {
            var piece = SymbolPiece.Of(symbol, symbolSize);
            piece.PlaceAt(marks, x, baseline);
            x += piece.Width + caption.Size;
        }
        // Without a symbol the caption is the title of its neck, and as strong as the symbols of others.
        var lines = ParagraphSetter.Set(Plain(diagram.Caption, diagram.Symbol is null ? Emphasis.Strong : Emphasis.None), caption, Math.Max(available - x, 20));
        for (var i = 0; i < lines.Length; i++) Place(marks, lines[i], x, baseline - ((lines.Length - 1 - i) * caption.Leading));
    }

    private static void AddUprightWords(ImmutableArray<Mark>.Builder marks, NeckDiagram diagram, DiagramLayout neck, DiagramStyle style, TextStyle caption, double symbolSize, double baseline)
    {
        var middle = (neck.NeckLeft + neck.NeckRight) / 2;
        if (diagram.Symbol is { } symbol)
        {
            var piece = SymbolPiece.Of(symbol, symbolSize);
            piece.PlaceAt(marks, middle - (piece.Width / 2), baseline);
        }
        var y = neck.NeckBottom + NeckDrawer.ContinuationLength + CaptionGap + (diagram.Dots.Any(d => d.Finger is not null) ? style.LabelSize + FingerClearance : 0);
        foreach (var line in ParagraphSetter.Set(Plain(diagram.Caption, Emphasis.None), caption, WidestUprightCaption))
        {
            Place(marks, line, middle - (line.Width / 2), y + LineBox.Baseline(line, caption));
            y += LineBox.Height(line, caption);
        }
    }

    private static void Place(ImmutableArray<Mark>.Builder marks, SetLine line, double x, double y)
    {
        foreach (var mark in line.Marks) marks.Add(mark.Transform(1, x, y));
    }

    private static ImmutableArray<Inline> Plain(string text, Emphasis emphasis) => text.Length == 0 ? [] : [new TextInline(text) { Emphasis = emphasis }];
}
