using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>Chooses where systems break: evenly filled, at phrases, at repeats; over the whole exercise at once.</summary>
internal sealed class SystemBreaker
{
    // A last system filled less than this is left ragged.
    private const double RaggedBelow = 2.0 / 3;

    // A system stretched to 1.45 times or squeezed to 0.88 times its natural width costs one unit; beyond the limits of good
    // spacing (1.6 and 0.85) it costs more than any other set of breaks, or a wider spacing throughout.
    private const double StretchUnit = 0.45;
    private const double SqueezeUnit = 0.12;
    private const double MostStretch = 1.6;
    private const double MostSqueeze = 0.85;
    private const double Beyond = 20;

    // Measures held apart by their texts and accidentals alone look cramped although they are hardly squeezed: what counts then is
    // how little is left of the free space between them. Half of it gone costs one unit.
    private const double CrampedUnit = 0.35;

    // Neighbouring systems that are set very differently spoil a page: what counts are the measures that no text holds apart.
    private const double Unlike = 1.5;
    private const double TightBelow = 0.93;
    private const double LooseAbove = 1.2;
    private const double VeryLooseAbove = 1.45;

    // Cost of a break by its place in the section: after four measures, after two, elsewhere; a section start is welcome.
    private const double AtSection = -0.8;
    private const double AfterTwo = 0.8;
    private const double Elsewhere = 1.4;

    // Who plays from a chart follows its form: lines that keep to the phrases matter more there than even spacing.
    private const double ChartPhrases = 3;

    // A part with a mark of its own is found at once where it begins a line: always in a chart, elsewhere after a phrase or more.
    private const double PartWithin = 4;
    private const int Phrase = 4;

    // The bracket of an ending is seen at once where it stands on one line.
    private const double WithinEnding = 2.5;

    // A measure divided over two systems is the last resort, but better than a system beyond the limits.
    private const double WithinMeasure = 8;

    // A short last system looks lost, most of all one of a single measure.
    private const double ShortLast = 2;
    private const double LonelyMeasure = 2;
    private const double LonelyBelow = 0.45;

    // A last system that is just full enough to be stretched to the whole width looks better than one that falls short of it.
    private const double LastStretched = 0.5;

    // A single measure that is wider than the line has to be taken all the same.
    private const double Overfull = 1e6;

    // Wider spacing of the whole exercise that is tried, and in the end tighter spacing for measures that are too long for the line;
    // and the cost for each unit of change.
    private static readonly ImmutableArray<double> Densities = [1, 1.15, 1.3, 1.5, 1.75, 2, 2.4, 2.8, 3.4, 4, 5, 6.5, 8, 10, 12, 0.92, 0.85];

    // Without a fixed count of measures the exercise is not spaced wider than this, unless some systems come out too wide or too
    // narrow otherwise (two measures that do not fit one line because of long texts).
    private const double MostFreeDensity = 1.5;

    // Or up to this one where a part with a mark would begin within a system otherwise.
    private const double MostDensityForParts = 2.4;

    // Exercises whose systems are stretched less than this need no wider spacing, unless a part with a mark begins within one.
    private const double TightEnough = 1.1;
    private const double DensityCost = 0.5;

    private readonly ImmutableArray<MeasureContext> _contexts;
    private readonly ImmutableArray<MeasureSprings> _measures;
    private readonly BoundaryCache _boundaries;
    private readonly ImmutableArray<int> _positions;
    private readonly ImmutableArray<bool> _withinEndings;
    private readonly double _width;
    private readonly double _firstIndent;
    private readonly bool _isChart;
    private int? _count;

    public SystemBreaker(Score score, ImmutableArray<MeasureContext> contexts, ImmutableArray<MeasureSprings> measures, BoundaryCache boundaries, double width, double firstIndent)
    {
        (_contexts, _measures, _boundaries, _width, _firstIndent) = (contexts, measures, boundaries, width, firstIndent);
        _count = score.MeasuresPerSystem;
        _isChart = score.Layout == StaffLayout.ChordChart;
        _positions = PhraseSections.Positions(contexts);
        _withinEndings = PhraseSections.WithinEndings(contexts);
    }

    /// <summary>
    /// The systems of the best set of breaks. Where the asked-for count of measures cannot be kept within the limits at any spacing,
    /// the whole exercise takes half as many, or one less of an odd number, and in the end as many as suit each line.
    /// </summary>
    public ImmutableArray<SystemSprings> Break()
    {
        while (true)
        {
            var (systems, cost) = Best();
            if (_count is not { } count || (cost < Overfull && IsWithinLimits(systems))) return systems;
            _count = count == 1 ? null : count % 2 == 0 ? count / 2 : count - 1;
        }
    }

    private (ImmutableArray<SystemSprings> Systems, double Cost) Best()
    {
        ImmutableArray<SystemSprings> best = [];
        var least = double.PositiveInfinity;
        foreach (var density in Densities)
        {
            if (density > MostFreeDensity && _count is null && IsWithinLimits(best) && (density > MostDensityForParts || !HasPartsWithin(best))) break;
            if (density < 1 && IsWithinLimits(best)) break;
            if (density > 1 && best.All(s => s.Ratio(WidthAt(s.First)) < TightEnough) && !HasPartsWithin(best)) continue;
            var tried = new Dictionary<(int, int), SystemSprings>();
            SystemSprings Assemble(int first, int end)
            {
                if (!tried.TryGetValue((first, end), out var springs)) tried[(first, end)] = springs = new SystemSprings(_measures, _boundaries, first, end, density);
                return springs;
            }
            var (starts, sum) = OptimalBreaks.Find(_contexts.Length, (first, end) => Cost(first, end, Assemble), Unlike);
            sum += Math.Abs(density - 1) * DensityCost * starts.Length;
            if (sum >= least) continue;
            least = sum;
            best = [.. starts.Select((s, i) => Assemble(s, i + 1 < starts.Length ? starts[i + 1] : _contexts.Length))];
        }
        return (best, least);
    }

    private bool HasPartsWithin(ImmutableArray<SystemSprings> systems) => systems.Any(s => PartsWithin(s.First, s.End) > 0);

    private bool IsWithinLimits(ImmutableArray<SystemSprings> systems)
    {
        foreach (var system in systems)
        {
            var width = WidthAt(system.First);
            if (system.Ratio(width) < MostSqueeze || (system.Ratio(width) > MostStretch && !IsRagged(system, width))) return false;
        }
        return true;
    }

    /// <summary>Whether a system is the last one, of the whole or before the coda, and filled so little that it is not stretched to the full width.</summary>
    public bool IsRagged(SystemSprings system, double width) =>
        (system.End == _contexts.Length || PhraseSections.IsCoda(_contexts[system.End])) && system.NaturalWidth / width < RaggedBelow;

    /// <summary>Width of the system that starts at a measure.</summary>
    public double WidthAt(int first) => first == 0 ? _width - _firstIndent : _width;

    private LineCost? Cost(int first, int end, Func<int, int, SystemSprings> assemble)
    {
        for (var i = first + 1; i < end; i++) if (_contexts[i].Measure.BreakBefore) return null;
        if (_count is { } fixedCount && end - first > 1 && !FitsFixedCount(first, end, fixedCount)) return null;
        var springs = assemble(first, end);
        var width = WidthAt(first);
        if (springs.LeastWidth > width) return end - first == 1 ? new LineCost(Overfull, null) : null;
        var ratio = springs.Ratio(width);
        var isLast = end == _contexts.Length;
        if (IsRagged(springs, width)) return new LineCost(first > 0 ? RaggedCost(end - first, springs.NaturalWidth / width) : 0, null);
        var tension = springs.Tension(width);
        var badness = Badness(ratio) * (isLast && ratio is > 1 and <= MostStretch ? LastStretched : 1);
        return new LineCost(badness + Crampedness(tension) + PartsWithin(first, end) + (isLast ? 0 : BreakCost(end)), Fitness(tension));
    }

    private double PartsWithin(int first, int end)
    {
        var cost = 0.0;
        for (var i = first + 1; i < end; i++)
        {
            if (PhraseSections.HasMark(_contexts[i]) && (_isChart || _positions[i - 1] >= Phrase - 1)) cost += PartWithin;
        }
        return cost;
    }

    private static double RaggedCost(int measures, double filled)
    {
        var missing = 1 - (filled / RaggedBelow);
        return (ShortLast * missing * missing) + (measures == 1 && filled < LonelyBelow ? LonelyMeasure : 0);
    }

    // With a fixed count every system holds that many, counted anew from each asked-for break; a pickup comes on top.
    private bool FitsFixedCount(int first, int end, int count)
    {
        var held = 0;
        for (var i = first; i < end; i++) held += _contexts[i].IsPickup || (i > first && _contexts[i].IsContinued) ? 0 : 1;
        return held <= count;
    }

    private double BreakCost(int at)
    {
        if (_contexts[at].Measure.BreakBefore) return 0;
        if (_contexts[at].IsContinued) return WithinMeasure;
        if (_count is { } fixedCount) return FixedCountCost(at, fixedCount);
        var ending = _withinEndings[at] ? WithinEnding : 0;
        var position = _positions[at];
        if (position == 0) return AtSection + ending;
        return ending + (position % Phrase == 0 ? 0 : (_isChart ? ChartPhrases : 1) * (position % 2 == 0 ? AfterTwo : Elsewhere));
    }

    private double FixedCountCost(int at, int count)
    {
        var since = 0;
        for (var i = at - 1; i >= 0; i--)
        {
            since += _contexts[i].IsPickup || _contexts[i].IsContinued ? 0 : 1;
            if (_contexts[i].Measure.BreakBefore) break;
        }
        return since % count == 0 ? 0 : Overfull;
    }

    private static double Badness(double ratio)
    {
        var unit = ratio >= 1 ? (ratio - 1) / StretchUnit : (1 - ratio) / SqueezeUnit;
        return (unit * unit) + (ratio is > MostStretch or < MostSqueeze ? Beyond : 0);
    }

    private static double Crampedness(double tension) => tension >= 1 ? 0 : (1 - tension) * (1 - tension) / (CrampedUnit * CrampedUnit);

    private static LineFitness Fitness(double tension) => tension switch
    {
        < TightBelow => LineFitness.Tight,
        < LooseAbove => LineFitness.Decent,
        < VeryLooseAbove => LineFitness.Loose,
        _ => LineFitness.VeryLoose,
    };
}
