using System.Collections.Immutable;
using System.Globalization;
using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>Words and signs of directions.</summary>
internal static class DirectionSymbols
{
    // Segno and coda at this scale are as tall as two lines of text.
    private const double SignScale = 0.85;
    private const double RehearsalPadding = 0.28;
    private const double DynamicScale = 1;

    /// <summary>The sign of a direction; null for kinds that are drawn otherwise (hairpins).</summary>
    public static SymbolLayout? Of(Direction direction, TextSizes sizes) => direction.Kind switch
    {
        DirectionKind.Words => Words(direction.Text, TextFont.SerifItalic, sizes),
        DirectionKind.Rehearsal => Rehearsal(direction.Text, sizes),
        DirectionKind.Dynamic => Dynamic(direction.Text, sizes),
        DirectionKind.Segno => Sign("segno"),
        DirectionKind.Coda => Sign("coda"),
        DirectionKind.DaCapo => Words(Jump("D.C.", direction.Text), TextFont.SerifSemiBold, sizes),
        DirectionKind.DalSegno => Words(Jump("D.S.", direction.Text), TextFont.SerifSemiBold, sizes),
        DirectionKind.ToCoda => ToCoda(direction.Text, sizes),
        DirectionKind.Tempo when direction.Equation is { } equation => TempoSymbol.Layout(equation, sizes.Direction),
        DirectionKind.Tempo => TempoSymbol.Layout(direction.Tempo!, Feel.Straight, sizes.Direction, ""),
        DirectionKind.Fine => Words(direction.Text.Length > 0 ? direction.Text : "Fine", TextFont.SerifSemiBold, sizes),
        _ => null,
    };

    /// <summary>How often a repeated section is played, when more than twice.</summary>
    public static SymbolLayout Times(int times, TextSizes sizes) => Words(string.Create(CultureInfo.InvariantCulture, $"{times}×"), TextFont.SerifSemiBold, sizes);

    private static string Jump(string word, string text) =>
        text.Length == 0 ? word : text.StartsWith(word, StringComparison.Ordinal) ? text : $"{word} {text}";

    private static SymbolLayout Words(string text, TextFont font, TextSizes sizes) =>
        new SymbolBuilder(MarkRole.Direction).Text(text, font, font == TextFont.SerifItalic ? sizes.Words : sizes.Direction).Build();

    private static SymbolLayout Sign(string glyph) => new SymbolBuilder(MarkRole.Direction).Glyph(glyph, SignScale).Build();

    private static SymbolLayout ToCoda(string text, TextSizes sizes)
    {
        var builder = new SymbolBuilder(MarkRole.Direction).Text(text.Length > 0 ? text : "To Coda", TextFont.SerifSemiBold, sizes.Direction);
        builder.X += 0.3 * sizes.Direction;
        return builder.Glyph("coda", SignScale * 0.7, -0.25).Build();
    }

    private static SymbolLayout Rehearsal(string text, TextSizes sizes)
    {
        var size = sizes.Direction * 1.15;
        var letters = new SymbolBuilder(MarkRole.Direction).Text(text, TextFont.SansBold, size).Build();
        var capHeight = TextMetrics.Of(TextFont.SansBold).CapHeight * size;
        var padding = RehearsalPadding * size;
        var width = Math.Max(letters.Advance, capHeight);
        var frame = new Box(0, -capHeight - padding, width + (2 * padding), padding);
        var inset = ((width - letters.Advance) / 2) + padding;
        ImmutableArray<Mark> marks =
        [
            .. letters.At(inset, 0).Marks,
            new RectangleMark(frame, Ink.Defaults.TextEnclosureThickness) { Role = MarkRole.Direction },
        ];
        return new SymbolLayout(new Drawing(marks), frame.Width);
    }

    /// <summary>A dynamic in the letters of the music font; other words in italics.</summary>
    private static SymbolLayout Dynamic(string text, TextSizes sizes)
    {
        var builder = new SymbolBuilder(MarkRole.Dynamic);
        if (WholeOf(text) is { } whole) return builder.Glyph(whole, DynamicScale).Build();
        var glyphs = text.Select(GlyphOf).ToList();
        if (glyphs.Contains(null)) return builder.Text(text, TextFont.SerifItalic, sizes.Words).Build();
        foreach (var glyph in glyphs) builder.Glyph(glyph!, DynamicScale);
        return builder.Build();
    }

    // Signs that the font has as a whole, with their letters as close as they are engraved.
    private static string? WholeOf(string text) => text switch
    {
        "ppp" => "dynamicPPP",
        "pp" => "dynamicPP",
        "mp" => "dynamicMP",
        "mf" => "dynamicMF",
        "ff" => "dynamicFF",
        "fff" => "dynamicFFF",
        "fp" => "dynamicFortePiano",
        "sfz" => "dynamicSforzato",
        _ => null,
    };

    private static string? GlyphOf(char letter) => letter switch
    {
        'p' => "dynamicPiano",
        'm' => "dynamicMezzo",
        'f' => "dynamicForte",
        's' => "dynamicSforzando",
        'z' => "dynamicZ",
        'r' => "dynamicRinforzando",
        _ => null,
    };
}
