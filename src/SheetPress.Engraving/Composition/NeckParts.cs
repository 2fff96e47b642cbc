using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>Divides a lying neck that is too long for the page into stretches under each other, as a line of music is divided into systems.</summary>
internal static class NeckParts
{
    /// <summary>White that dots of neighbouring frets keep between them, in millimetres.</summary>
    internal const double DotClearance = 0.6;

    private const int Octave = 12;

    /// <summary>The parts from the nut upward; the diagram itself where its dots have room. Words stand over the first.</summary>
    internal static ImmutableArray<NeckDiagram> Of(NeckDiagram diagram, PageStyle style)
    {
        var frets = diagram.LastFret - diagram.FirstFret + 1;
        var (room, leastFret) = (style.TextWidth - NeckFrame.Sides(diagram, style.Diagram), LeastFret(diagram, style));
        if (diagram.Upright || frets * leastFret <= room) return [diagram];
        var most = Math.Max(1, (int)(room / leastFret));
        var count = (frets + most - 1) / most;
        var parts = ImmutableArray.CreateBuilder<NeckDiagram>(count);
        var first = diagram.FirstFret;
        for (var i = 0; i < count; i++)
        {
            var last = i == count - 1 ? diagram.LastFret : diagram.FirstFret - 1 + ((i + 1) * frets / count);
            // Of two parts the first ends with the octave, where it may.
            if (count == 2 && i == 0 && Octave - first < most && diagram.LastFret > Octave && diagram.LastFret - Octave <= most) last = Octave;
            parts.Add(Part(diagram, first, last));
            first = last + 1;
        }
        return parts.MoveToImmutable();
    }

    /// <summary>The width of a fret on which dots side by side keep apart.</summary>
    internal static double LeastFret(NeckDiagram diagram, PageStyle style)
    {
        var width = 0.0;
        foreach (var dot in diagram.Dots) width = Math.Max(width, (2 * DotPainter.HalfWidth(dot, style.Diagram)) + DotClearance);
        return width;
    }

    private static NeckDiagram Part(NeckDiagram whole, int first, int last)
    {
        var isFirst = first == whole.FirstFret;
        return whole with
        {
            FirstFret = first,
            LastFret = last,
            Dots = [.. whole.Dots.Where(d => d.Position.Fret >= (isFirst ? 0 : first) && d.Position.Fret <= last)],
            Barres = [.. whole.Barres.Where(b => b.Fret >= first && b.Fret <= last)],
            MutedStrings = isFirst ? whole.MutedStrings : [],
            Symbol = isFirst ? whole.Symbol : null,
            Caption = isFirst ? whole.Caption : "",
        };
    }
}
