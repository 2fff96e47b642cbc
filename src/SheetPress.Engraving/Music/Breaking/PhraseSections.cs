using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>Where the phrases of an exercise lie: how far each measure is from the start of its section.</summary>
internal static class PhraseSections
{
    /// <summary>
    /// For each measure how many measures of its section come before it; 0 where a section starts: at repeats, double barlines,
    /// rehearsal marks, asked-for breaks. A pickup does not count.
    /// </summary>
    public static ImmutableArray<int> Positions(ImmutableArray<MeasureContext> contexts)
    {
        var positions = ImmutableArray.CreateBuilder<int>(contexts.Length);
        var position = 0;
        for (var i = 0; i < contexts.Length; i++)
        {
            if (i > 0)
            {
                position += contexts[i - 1].IsPickup || contexts[i].IsContinued ? 0 : contexts[i - 1].Count;
                if (!contexts[i].IsContinued && StartsSection(contexts[i - 1], contexts[i])) position = 0;
            }
            positions.Add(position);
        }
        return positions.MoveToImmutable();
    }

    /// <summary>For each measure whether it stands within an ending behind its first measure: a break before it would part the bracket.</summary>
    public static ImmutableArray<bool> WithinEndings(ImmutableArray<MeasureContext> contexts)
    {
        var within = ImmutableArray.CreateBuilder<bool>(contexts.Length);
        var isOpen = false;
        foreach (var context in contexts)
        {
            var starts = !context.Measure.EndingStart.IsEmpty;
            within.Add(isOpen && !starts);
            isOpen = (isOpen || starts) && !context.LastMeasure.EndingStop;
        }
        return within.MoveToImmutable();
    }

    private static bool StartsSection(MeasureContext before, MeasureContext context) =>
        context.Measure.RepeatStart || context.Measure.BreakBefore
        || before.LastMeasure.RepeatEndTimes > 0 || before.LastMeasure.Barline is Barline.Double or Barline.Final
        || HasMark(context);

    /// <summary>Whether a rehearsal mark stands at the start of a measure.</summary>
    public static bool HasMark(MeasureContext context) => context.Measure.Directions.BeginWith(DirectionKind.Rehearsal);

    /// <summary>Whether the coda starts with a measure.</summary>
    public static bool IsCoda(MeasureContext context) => context.Measure.Directions.BeginWith(DirectionKind.Coda);
}
