using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>
/// Turns a score into systems of marks, pass by pass: what holds in each measure, how its notes stand on the staff, columns and
/// their ink, springs, breaks over the whole exercise, the x of every column, and the drawing of each system.
/// </summary>
public static class ScoreEngraver
{
    private const double LeastLineWidth = 20;

    // A last system that is left ragged keeps the stretch of the one before it up to this, so that both look alike.
    private const double MostRaggedStretch = 1.25;

    /// <summary>Engraves a score.</summary>
    /// <param name="score">The score.</param>
    /// <param name="lineWidth">Width of a full system in staff spaces, from the left end of the staff to its right end.</param>
    /// <param name="options">Choices of the page.</param>
    /// <exception cref="ArgumentOutOfRangeException">The width cannot hold a measure: below 20 staff spaces.</exception>
    public static EngravedScore Engrave(Score score, double lineWidth, EngravingOptions options)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(lineWidth, LeastLineWidth);
        var sizes = new TextSizes(options.StaffSpace);
        var contexts = MeasureContexts.Of(score, options.MergeEmptyMeasures);
        var columns = new ColumnBuilder(score, sizes);
        var measures = MeasurePlanner.PlanAll(score, contexts).Select(p => new MeasureSprings(columns.Build(p))).ToImmutableArray();
        var boundaries = new BoundaryCache(new BoundaryBuilder(score), contexts);
        var breaker = new SystemBreaker(score, contexts, measures, boundaries, lineWidth, options.FirstIndent);
        var engraver = new SystemEngraver(score, options);
        var systems = ImmutableArray.CreateBuilder<EngravedSystem>();
        foreach (var springs in breaker.Break())
        {
            var width = breaker.WidthAt(springs.First);
            if (breaker.IsRagged(springs, width)) width = RaggedWidth(springs, width, systems.Count == 0 ? 1 : systems[^1].StretchRatio);
            if (systems.Count == 0 && options.ShowTempo) width = Math.Max(width, Math.Min(lineWidth, DirectionDrawer.TempoEnd(springs, score, options, sizes)));
            systems.Add(engraver.Engrave(new SystemFrame(systems.Count, springs, measures, width)));
        }
        return new EngravedScore(systems.ToImmutable());
    }

    private static double RaggedWidth(SystemSprings springs, double full, double stretchBefore)
    {
        var stretch = Math.Clamp(stretchBefore, 1, MostRaggedStretch);
        return Math.Min(full, springs.FixedWidth + ((springs.NaturalWidth - springs.FixedWidth) * stretch));
    }
}
