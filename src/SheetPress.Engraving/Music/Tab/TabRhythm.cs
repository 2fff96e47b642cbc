using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>Rhythm of a tab that stands alone, below it and for the upper of two voices above: stems, flags, dots and rests, with y from the top line of the tab.</summary>
internal static class TabRhythm
{
    // Stems start clear of the outer fret number and are long enough for three beams.
    private const double StemGap = 1.15;
    private const double StemLength = 3.5;

    // A half note has the outer half of a stem, so that it differs from a quarter.
    private const double HalfShare = 0.5;

    // An arc over the outer string lies where the flag of its note would end: its stem is this much longer.
    private const double ArcRoom = 0.6;

    private const double DotGap = 0.35;
    private const double DotShare = 0.25;

    // The dot of a whole note, which has no stem, stands beside its number, off the line of the string.
    private const double NumberDotGap = 0.3;
    private const double NumberDotRise = 0.45;

    // White between the outer line and a rest.
    private const double RestGap = 0.3;

    /// <summary>How far a rest moves away from a number on the outer line: to where the stems begin.</summary>
    /// <param name="value">Its value. Whole and half rests stand there already: their own line is not to be taken for a string.</param>
    public static double RestDrop(NoteValue value) => HasOwnLine(value) ? 0 : StemGap - RestGap;

    /// <summary>y of the bottom line.</summary>
    public static double BottomLine(int strings) => (strings - 1) * FretNumbers.LineDistance;

    /// <summary>y where the stems of a side begin.</summary>
    public static double StemStart(int strings, bool above) => above ? -StemGap : BottomLine(strings) + StemGap;

    /// <summary>y where the stems of a side end.</summary>
    public static double StemEnd(int strings, bool above) => above ? -StemGap - StemLength : BottomLine(strings) + StemGap + StemLength;

    /// <summary>y where the stem of an event ends, on the side of its stem.</summary>
    public static double StemEnd(EventPlan e, int strings)
    {
        var above = e.Stem == StemDirection.Up;
        var isFlagged = e.HasStem && !e.IsBeamed && e.Event.Value.Flags > 0;
        // The arcs of a single voice lie over the tab, away from its stems.
        var meetsArc = isFlagged && above == (e.Voice == 0) && e.Event.Connection is Connection.HammerOn or Connection.PullOff
            && e.Event.Tones.Any(t => t.Position?.String == (above ? 1 : strings));
        return StemEnd(strings, above) + (meetsArc ? above ? -ArcRoom : ArcRoom : 0);
    }

    /// <summary>Stem (unless beamed or whole), flag, dots or rest of an event, on the side of its stem; beams are drawn apart.</summary>
    public static ImmutableArray<Mark> MarksOf(EventPlan e, int strings, TextSizes sizes)
    {
        var marks = ImmutableArray.CreateBuilder<Mark>();
        var value = e.Event.Value;
        var above = e.Stem == StemDirection.Up;
        if (e.Event.IsRest)
        {
            if (!e.IsHidden && !e.IsCentred) AddRest(marks, e, above, RestEdge(value, strings, above));
            return marks.ToImmutable();
        }
        var (start, end) = (StemStart(strings, above), StemEnd(e, strings));
        var half = Ink.Defaults.StemThickness / 2;
        var from = value.Base == NoteBase.Half ? start + ((end - start) * HalfShare) : start;
        if (e.HasStem)
        {
            marks.Add(Ink.Upright(e.Centre, Math.Min(from, end), Math.Max(from, end), half * 2, MarkRole.Stem, e.Origin));
            if (!e.IsBeamed && value.Flags > 0) marks.Add(Ink.At(FlagGlyphs.Name(value.Flags, e.Stem), e.Centre - half, end, MarkRole.Flag, e.Origin));
        }
        else
        {
            foreach (var number in FretNumbers.Of(e, sizes, showTied: false)) AddDots(marks, e, number.Bounds.Right + NumberDotGap, ((number.Bounds.Top + number.Bounds.Bottom) / 2) - NumberDotRise);
            return marks.ToImmutable();
        }
        // The dots stand beside the stem, a quarter of the way along it; those of a flagged note behind its flag.
        AddDots(marks, e, marks.Max(m => m.Bounds.Right) + DotGap, from + ((end - from) * DotShare));
        return marks.ToImmutable();
    }

    /// <summary>The rest of a whole measure, which stands below like the other rests.</summary>
    /// <param name="e">The rest.</param>
    /// <param name="middle">x of the middle of the measure.</param>
    /// <param name="strings">Strings of the tab.</param>
    public static GlyphMark CentredRest(EventPlan e, double middle, int strings) => Rest("restWholeLegerLine", middle, above: false, RestEdge(e.Event.Value, strings, above: false), e.Origin);

    private static double RestEdge(NoteValue value, int strings, bool above)
    {
        var gap = HasOwnLine(value) ? StemGap : RestGap;
        return above ? -gap : BottomLine(strings) + gap;
    }

    private static bool HasOwnLine(NoteValue value) => value.Base is NoteBase.Whole or NoteBase.Half;

    private static GlyphMark Rest(string name, double centre, bool above, double edge, MarkOrigin origin)
    {
        var bounds = Ink.Glyph(name).Bounds;
        return Ink.Centred(name, centre, edge - (above ? bounds.Bottom : bounds.Top), MarkRole.Rest, origin);
    }

    // Rests stand so near to the tab that beams pass beyond them.
    private static void AddRest(ImmutableArray<Mark>.Builder marks, EventPlan e, bool above, double edge)
    {
        // Whole and half rests bring the line they hang from or sit on.
        var name = e.Event.Value.Base switch
        {
            NoteBase.Whole => "restWholeLegerLine",
            NoteBase.Half => "restHalfLegerLine",
            _ => RestGlyphs.Name(e.Event.Value.Base, 0),
        };
        var rest = Rest(name, e.Centre, above, edge, e.Origin);
        marks.Add(rest);
        AddDots(marks, e, rest.Bounds.Right + DotGap, rest.Position.Y - 0.5);
    }

    private static void AddDots(ImmutableArray<Mark>.Builder marks, EventPlan e, double x, double y)
    {
        for (var i = 0; i < e.Event.Value.Dots; i++) marks.Add(Ink.At("augmentationDot", x + (i * DotColumn.Pitch), y, MarkRole.Dot, e.Origin));
    }
}
