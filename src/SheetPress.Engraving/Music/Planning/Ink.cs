namespace SheetPress.Engraving;

/// <summary>Short ways to make marks in staff spaces.</summary>
internal static class Ink
{
    /// <summary>Engraving defaults of the music font.</summary>
    public static EngravingDefaults Defaults => MusicFont.Shipped.Defaults;

    /// <summary>A glyph by SMuFL name.</summary>
    public static MusicGlyph Glyph(string name) => MusicFont.Shipped[name];

    /// <summary>A glyph placed by its origin.</summary>
    public static GlyphMark At(string name, double x, double y, MarkRole role, MarkOrigin origin, double scale = 1) =>
        new(Glyph(name), new Point(x, y), scale) { Role = role, Origin = origin };

    /// <summary>A glyph centred on an x.</summary>
    public static GlyphMark Centred(string name, double x, double y, MarkRole role, MarkOrigin origin, double scale = 1)
    {
        var bounds = Glyph(name).Bounds;
        return At(name, x - ((bounds.Left + bounds.Right) / 2 * scale), y, role, origin, scale);
    }

    /// <summary>An upright line.</summary>
    public static LineMark Upright(double x, double top, double bottom, double thickness, MarkRole role, MarkOrigin origin) =>
        new(new Point(x, top), new Point(x, bottom), thickness) { Role = role, Origin = origin };

    /// <summary>A level line.</summary>
    public static LineMark Level(double left, double right, double y, double thickness, MarkRole role, MarkOrigin origin) =>
        new(new Point(left, y), new Point(right, y), thickness) { Role = role, Origin = origin };
}
