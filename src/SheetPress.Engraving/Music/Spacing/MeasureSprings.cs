using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>The springs within a measure, worked out once however often the measure is tried in a system.</summary>
internal sealed class MeasureSprings
{
    // Staff and tab columns are compared with this many columns before them: ink that passes over or under a neighbour.
    private const int LookBack = 3;

    // Where there is room a measure is widened for its texts at most this much, so that there is this much more white between them
    // than they need; a crowded one is held even up to the lesser share, and what they need beyond it stands under them alone.
    private const double MostWanted = 2.5;
    private const double MostHeld = 1.6;
    private const double MoreWhite = 0.5;

    // The last text of a measure may hang over the barline if it stands over less than this share of it.
    private const double HangingShare = 0.4;

    // A measure of rest needs no more room than a half note, whatever its meter (handbook rule, from memory).
    private static readonly double MostForRest = SpacingCurve.Space(new Fraction(2));

    // White between a note and the next of its voice, however far above or below it stands.
    private const double NextNoteGap = 0.15;

    /// <summary>Springs and rods of a measure.</summary>
    public MeasureSprings(MeasureColumns measure)
    {
        Measure = measure;
        var columns = measure.Columns;
        var springs = ImmutableArray.CreateBuilder<Spring>(columns.Length - 1);
        var rods = ImmutableArray.CreateBuilder<Rod>();
        for (var i = 1; i < columns.Length; i++)
        {
            var natural = SpacingCurve.Space(columns[i].Onset - columns[i - 1].Onset, columns[i - 1].Shortest);
            springs.Add(new Spring(0, natural, InkDistance.Between(columns[i - 1], columns[i])));
            for (var back = 2; back <= LookBack && i - back >= 0; back++)
            {
                if (InkDistance.Between(columns[i - back], columns[i]) is var distance and > 0) rods.Add(new Rod(i - back, i, distance));
            }
        }
        var events = measure.Plan.Voices.SelectMany(v => v.Events).ToList();
        foreach (var voice in measure.Plan.Voices) AddVoiceRods(voice, events, columns, rods);
        AddRowRods(columns, rods);
        Inner = springs.MoveToImmutable();
        Rods = rods.ToImmutable();
        var last = columns[^1];
        Tail = SpacingCurve.Space(measure.Plan.Length - last.Onset, last.Shortest);
        if (events.Count > 0 && events.TrueForAll(e => e.IsCentred)) Tail = Math.Min(Tail, MostForRest);
        Wanted = Math.Min(ForTexts(columns, Inner, Tail, MoreWhite), MostWanted);
        Held = Math.Min(ForTexts(columns, Inner, Tail, 0), MostHeld);
        ReachLeft = InkDistance.StaffReachLeft(columns[0]);
        ReachRight = InkDistance.StaffReachRight(last);
        EndReaches = [.. Enumerable.Range(0, columns.Length - 1).TakeLast(LookBack).Select(i => (i, InkDistance.StaffReachRight(columns[i]))).Where(r => r.Item2 > 0)];
    }

    /// <summary>The measure.</summary>
    public MeasureColumns Measure { get; }

    /// <summary>Springs between neighbouring columns.</summary>
    public ImmutableArray<Spring> Inner { get; }

    /// <summary>Rods by index of column.</summary>
    public ImmutableArray<Rod> Rods { get; }

    /// <summary>Natural space from the last column to the end of the measure.</summary>
    public double Tail { get; }

    /// <summary>
    /// Share of its natural width that the whole measure wants for its longest chord symbol, numeral or hairpin: widened for all its notes alike,
    /// or the beats under that text would look slower than the others. 0 without such texts.
    /// </summary>
    public double Wanted { get; }

    /// <summary>Share of its natural width down to which the measure is held for the same texts, by all its notes alike; 0 without such texts.</summary>
    public double Held { get; }

    /// <summary>How far staff and tab ink of the first column reach to the left.</summary>
    public double ReachLeft { get; }

    /// <summary>How far staff and tab ink of the last column reach to the right.</summary>
    public double ReachRight { get; }

    /// <summary>How far staff and tab ink of the columns shortly before the last reach to the right: a dynamic alone may stand between them and the barline.</summary>
    public ImmutableArray<(int Column, double Reach)> EndReaches { get; }

    // Notes that follow each other stand side by side: a head under the one before would read as a chord.
    private static void AddVoiceRods(VoicePlan voice, List<EventPlan> events, ImmutableArray<Column> columns, ImmutableArray<Rod>.Builder rods)
    {
        EventPlan? before = null;
        var (from, to) = (-1, -1);
        foreach (var e in voice.Events)
        {
            if (e.IsHidden || e.IsCentred) continue;
            do to++;
            while (columns[to].Onset != e.Event.Onset);
            if (before is not null) rods.Add(new Rod(from, to, before.Right - e.Left + NextNoteGap));
            if (before is { Event.Connection: Connection.Slide, Heads.IsEmpty: false } && !e.Heads.IsEmpty && InkDistance.Has(columns[from], Lane.Staff)) rods.Add(new Rod(from, to, SlideDrawer.Distance(before, e, events)));
            (before, from) = (e, to);
        }
    }

    private static double ForTexts(ImmutableArray<Column> columns, ImmutableArray<Spring> springs, double tail, double white)
    {
        var (share, all) = (0.0, tail + springs.Sum(s => s.At(1)));
        foreach (var lane in InkDistance.LongTexts)
        {
            var (before, natural) = (-1, 0.0);
            for (var i = 0; i < columns.Length; i++)
            {
                if (i > 0) natural += springs[i - 1].At(1);
                if (!InkDistance.Has(columns[i], lane)) continue;
                if (before >= 0) share = Math.Max(share, (InkDistance.InRow(columns[before], columns[i], lane) + white) / natural);
                (before, natural) = (i, 0);
            }
            if (before >= 0 && natural + tail >= HangingShare * all) share = Math.Max(share, (InkDistance.ReachRight(columns[before], lane) + white) / (natural + tail));
        }
        return share;
    }

    private static void AddRowRods(ImmutableArray<Column> columns, ImmutableArray<Rod>.Builder rods)
    {
        foreach (var lane in InkDistance.Rows)
        {
            var before = -1;
            for (var i = 0; i < columns.Length; i++)
            {
                if (!InkDistance.Has(columns[i], lane)) continue;
                if (before >= 0 && InkDistance.InRow(columns[before], columns[i], lane) is var distance and > 0) rods.Add(new Rod(before, i, distance));
                before = i;
            }
        }
    }
}
