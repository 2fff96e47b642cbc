using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>Clefs of staff and tab.</summary>
internal static class ClefSigns
{
    /// <summary>A clef that changes within a system is this much smaller (common practice: two thirds to three quarters).</summary>
    private const double ChangeScale = 0.75;

    // Share of the height of a tab that its clef fills, and the tab height from which the wider drawing is taken.
    private const double TabShare = 0.86;
    private const double WideFrom = 5.5;

    /// <summary>The clef of a staff with its left edge at x = 0.</summary>
    public static GlyphMark Of(Clef clef, bool isChange, MarkOrigin origin)
    {
        var (name, y) = clef switch
        {
            Clef.Bass => ("fClef", 1.0),
            Clef.Treble => ("gClef", 3.0),
            _ => ("gClef8vb", 3.0),
        };
        return Ink.At(name, 0, y, MarkRole.Clef, origin, isChange ? ChangeScale : 1);
    }

    /// <summary>The clef of a tab, fitted to its lines, with its left edge at x = 0.</summary>
    /// <param name="strings">Number of lines.</param>
    /// <param name="origin">Origin of the mark.</param>
    public static GlyphMark Tab(int strings, MarkOrigin origin)
    {
        var height = (strings - 1) * FretNumbers.LineDistance;
        var name = height < WideFrom ? "4stringTabClef" : "6stringTabClef";
        var bounds = Ink.Glyph(name).Bounds;
        var scale = height * TabShare / bounds.Height;
        var y = (height / 2) - ((bounds.Top + bounds.Bottom) / 2 * scale);
        return Ink.At(name, -bounds.Left * scale, y, MarkRole.Clef, origin, scale);
    }
}
