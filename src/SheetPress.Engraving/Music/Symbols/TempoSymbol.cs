using System.Globalization;
using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>The tempo mark: a note, "= 92" or "=" and another note, and the sign for swung pairs.</summary>
internal static class TempoSymbol
{
    // The note sign is nearly three spaces tall; at this share of the em it is a little taller than the figures beside it.
    private const double NoteScale = 0.36;
    private const double Space = 0.3;
    private const TextFont Font = TextFont.SerifSemiBold;

    /// <summary>Lays out the mark.</summary>
    /// <param name="tempo">The tempo.</param>
    /// <param name="feel">How pairs are played.</param>
    /// <param name="size">Em of the figures.</param>
    /// <param name="straight">The word for no swing; empty to say nothing.</param>
    public static SymbolLayout Layout(Tempo tempo, Feel feel, double size, string straight)
    {
        var builder = new SymbolBuilder(MarkRole.Tempo);
        AppendNote(builder, tempo.Beat, size);
        builder.X += Space * size;
        builder.Text("= " + tempo.BeatsPerMinute.ToString("0.##", CultureInfo.InvariantCulture), Font, size);
        if (feel != Feel.Straight)
        {
            builder.X += 2 * Space * size;
            SwingSign.Append(builder, feel, size);
        }
        else if (straight.Length > 0)
        {
            builder.X += 2 * Space * size;
            builder.Text(straight, TextFont.SerifItalic, size);
        }
        return builder.Build();
    }

    /// <summary>Lays out an equation of note values.</summary>
    /// <param name="equation">The equation.</param>
    /// <param name="size">Em of the equals sign.</param>
    public static SymbolLayout Layout(TempoEquation equation, double size)
    {
        var builder = new SymbolBuilder(MarkRole.Tempo);
        AppendNote(builder, equation.Before, size);
        builder.X += Space * size;
        builder.Text("=", Font, size);
        builder.X += Space * size;
        AppendNote(builder, equation.After, size);
        return builder.Build();
    }

    private static void AppendNote(SymbolBuilder builder, NoteValue value, double size)
    {
        var name = value.Base switch
        {
            NoteBase.Whole => "metNoteWhole",
            NoteBase.Half => "metNoteHalfUp",
            NoteBase.Quarter => "metNoteQuarterUp",
            NoteBase.Eighth => "metNote8thUp",
            NoteBase.Sixteenth => "metNote16thUp",
            NoteBase.ThirtySecond => "metNote32ndUp",
            _ => "metNote64thUp",
        };
        // The sign has the middle of its head on the baseline; it is raised to stand on it.
        var rise = Ink.Glyph(name).Bounds.Bottom * NoteScale * size;
        builder.Glyph(name, NoteScale * size, rise);
        for (var i = 0; i < value.Dots; i++)
        {
            builder.X += 0.08 * size;
            builder.Glyph("metAugmentationDot", NoteScale * size, rise);
        }
    }
}
