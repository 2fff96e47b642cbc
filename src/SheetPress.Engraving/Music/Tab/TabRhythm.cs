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

    // White between a rest and the beams over it.
    private const double BeamGap = 0.3;

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

    /// <summary>How far the stems of a side have to reach further out, so that a rest under their beams has room between beams and tab.</summary>
    /// <param name="rest">The rest.</param>
    /// <param name="beams">Beams that pass over it.</param>
    public static double MoreStem(EventPlan rest, int beams) => Math.Max(0, Ink.Glyph(RestName(rest.Event.Value)).Bounds.Height + BeamGap + Depth(beams) - StemLength);

    /// <summary>How far a rest under beams moves from the middle of the stems towards the tab, to clear them.</summary>
    /// <param name="rest">The rest.</param>
    /// <param name="beams">Beams that pass over it.</param>
    /// <param name="moreStem">How much further out the beams lie than stems usually end.</param>
    public static double MoveFromBeams(EventPlan rest, int beams, double moreStem)
    {
        var height = Ink.Glyph(RestName(rest.Event.Value)).Bounds.Height;
        return Math.Max(0, RestStart(height) + height + BeamGap + Depth(beams) - StemLength - moreStem);
    }

    /// <summary>Stem (unless beamed or whole), flag, dots or rest of an event, on the side of its stem; beams are drawn apart.</summary>
    /// <param name="e">The event.</param>
    /// <param name="strings">Strings of the tab.</param>
    /// <param name="sizes">Sizes of text.</param>
    /// <param name="moreStem">How much longer the stems are than usual.</param>
    public static ImmutableArray<Mark> MarksOf(EventPlan e, int strings, TextSizes sizes, double moreStem = 0)
    {
        var marks = ImmutableArray.CreateBuilder<Mark>();
        var value = e.Event.Value;
        var above = e.Stem == StemDirection.Up;
        if (e.Event.IsRest)
        {
            if (!e.IsHidden && !e.IsCentred) AddRest(marks, e, above, strings);
            return marks.ToImmutable();
        }
        var (start, end) = (StemStart(strings, above), StemEnd(e, strings) + (above ? -moreStem : moreStem));
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
    public static GlyphMark CentredRest(EventPlan e, double middle, int strings) => Rest("restWholeLegerLine", middle, above: false, strings, e.Origin);

    // Whole and half rests bring the line they hang from or sit on.
    private static string RestName(NoteValue value) => value.Base switch
    {
        NoteBase.Whole => "restWholeLegerLine",
        NoteBase.Half => "restHalfLegerLine",
        _ => RestGlyphs.Name(value.Base, 0),
    };

    // Thickness of beams over each other.
    private static double Depth(int beams) => (beams * Ink.Defaults.BeamThickness) + ((beams - 1) * Ink.Defaults.BeamSpacing);

    // Where the near end of a rest stands, from where the stems begin: rests stand at the middle of the stems, long ones begin with them.
    private static double RestStart(double height) => Math.Max(0, (StemLength - height) / 2);

    private static GlyphMark Rest(string name, double centre, bool above, int strings, MarkOrigin origin)
    {
        var bounds = Ink.Glyph(name).Bounds;
        var (near, start) = (StemStart(strings, above), RestStart(bounds.Height));
        return Ink.Centred(name, centre, above ? near - start - bounds.Bottom : near + start - bounds.Top, MarkRole.Rest, origin);
    }

    private static void AddRest(ImmutableArray<Mark>.Builder marks, EventPlan e, bool above, int strings)
    {
        var rest = Rest(RestName(e.Event.Value), e.Centre, above, strings, e.Origin);
        marks.Add(rest);
        AddDots(marks, e, rest.Bounds.Right + DotGap, rest.Position.Y - 0.5);
    }

    private static void AddDots(ImmutableArray<Mark>.Builder marks, EventPlan e, double x, double y)
    {
        for (var i = 0; i < e.Event.Value.Dots; i++) marks.Add(Ink.At("augmentationDot", x + (i * DotColumn.Pitch), y, MarkRole.Dot, e.Origin));
    }
}
