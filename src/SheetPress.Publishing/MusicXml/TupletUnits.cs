using SheetPress.Scores;

namespace SheetPress.Publishing;

/// <summary>The written value a tuplet counts in: the eighth of an eighth-note triplet, whatever values stand in it.</summary>
internal static class TupletUnits
{
    /// <summary>The unit of a tuplet, or null when no plain or dotted value fits.</summary>
    public static NoteValue? Of(TupletSpan span, Voice voice)
    {
        var length = Fraction.Zero;
        for (var i = span.First; i <= span.Last; i++) length += voice.Events[i].Value.Duration;
        foreach (var outer in voice.Tuplets)
            if (outer.Level < span.Level && outer.First <= span.First && outer.Last >= span.Last) length *= new Fraction(outer.Actual, outer.Normal);
        var unit = length / span.Normal;
        for (var dots = 0; dots <= 1; dots++)
            for (var b = NoteBase.Whole; b <= NoteBase.SixtyFourth; b++)
                if (new NoteValue(b, dots) is var value && value.Duration == unit) return value;
        return null;
    }

    /// <summary>The innermost tuplet over an event, or null.</summary>
    public static TupletSpan? Innermost(Voice voice, int index)
    {
        TupletSpan? found = null;
        foreach (var span in voice.Tuplets)
            if (span.First <= index && index <= span.Last && (found is null || span.Level > found.Value.Level)) found = span;
        return found;
    }
}
