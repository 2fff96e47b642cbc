using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>Signs of the plucking hand: T and P for slap and pop, bows for pick strokes, i m a for fingers.</summary>
internal static class StrokeSigns
{
    // Pick strokes borrow the bow signs; at this scale they are as tall as the letters beside them.
    private const double PickScale = 0.75;

    /// <summary>The sign of a stroke, or null when none is said.</summary>
    public static SymbolLayout? Of(Stroke stroke, TextSizes sizes) => stroke switch
    {
        Stroke.Thumb => Letter("T", TextFont.SansSemiBold, sizes),
        Stroke.Pop => Letter("P", TextFont.SansSemiBold, sizes),
        Stroke.Index => Letter("i", TextFont.SerifItalic, sizes),
        Stroke.Middle => Letter("m", TextFont.SerifItalic, sizes),
        Stroke.Ring => Letter("a", TextFont.SerifItalic, sizes),
        Stroke.Down => Pick("stringsDownBow"),
        Stroke.Up => Pick("stringsUpBow"),
        _ => null,
    };

    private static SymbolLayout Letter(string letter, TextFont font, TextSizes sizes) =>
        new SymbolBuilder(MarkRole.Technique).Text(letter, font, sizes.Small).Build();

    private static SymbolLayout Pick(string glyph) => new SymbolBuilder(MarkRole.Technique).Glyph(glyph, PickScale).Build();
}
