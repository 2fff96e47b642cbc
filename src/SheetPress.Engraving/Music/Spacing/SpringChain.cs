using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>Springs in a row under one tension (springs and rods, after Gourlay 1987).</summary>
internal sealed class SpringChain
{
    private const double Tolerance = 1e-9;

    private readonly Spring[] _springs;

    /// <summary>Makes a chain.</summary>
    /// <param name="springs">The springs in order.</param>
    /// <param name="rods">Least distances over several springs; they are shared out in proportion to the natural lengths.</param>
    public SpringChain(ImmutableArray<Spring> springs, IEnumerable<Rod> rods)
    {
        _springs = [.. springs];
        foreach (var rod in rods.OrderBy(r => r.To - r.From)) Apply(rod);
        (NaturalLength, LeastLength) = (Length(1), Length(0));
    }

    /// <summary>Length at tension 1.</summary>
    public double NaturalLength { get; }

    /// <summary>Length when everything is as near as it may be.</summary>
    public double LeastLength { get; }

    /// <summary>Length at a tension.</summary>
    public double Length(double tension)
    {
        var sum = 0.0;
        foreach (var spring in _springs) sum += spring.At(tension);
        return sum;
    }

    /// <summary>
    /// Lengths of the springs so that they add up to a length. Below the least length all shrink alike, since something has to give.
    /// </summary>
    public double[] Solve(double length)
    {
        var least = LeastLength;
        if (length <= least) return [.. _springs.Select(s => s.At(0) * length / least)];
        var tension = TensionFor(length);
        return [.. _springs.Select(s => s.At(tension))];
    }

    /// <summary>The tension at which the chain has a length, which must be above the least.</summary>
    public double TensionFor(double length)
    {
        var isLoose = length > NaturalLength;
        var springs = new Spring[_springs.Length];
        for (var i = 0; i < springs.Length; i++) springs[i] = isLoose ? _springs[i].Loose : _springs[i].Tight;
        // A spring held at its least length is set aside; that only lowers the tension, so springs are only ever set aside.
        var held = new bool[springs.Length];
        while (true)
        {
            var (rest, elastic) = (length, 0.0);
            for (var i = 0; i < springs.Length; i++)
            {
                rest -= held[i] ? springs[i].Least : springs[i].Fixed;
                if (!held[i]) elastic += springs[i].Elastic;
            }
            if (elastic <= Tolerance) return 0;
            var tension = rest / elastic;
            var changed = false;
            for (var i = 0; i < springs.Length; i++)
            {
                if (held[i] || springs[i].Fixed + (springs[i].Elastic * tension) >= springs[i].Least - Tolerance) continue;
                held[i] = changed = true;
            }
            if (!changed) return tension;
        }
    }

    private void Apply(Rod rod)
    {
        var (natural, least) = (0.0, 0.0);
        for (var i = rod.From; i < rod.To; i++)
        {
            natural += _springs[i].At(1);
            least += _springs[i].At(0);
        }
        if (least >= rod.Distance) return;
        for (var i = rod.From; i < rod.To; i++)
        {
            var share = _springs[i].At(1) * rod.Distance / natural;
            _springs[i] = _springs[i] with { Least = Math.Max(_springs[i].Least, share) };
        }
    }
}

/// <summary>A least distance between two columns.</summary>
/// <param name="From">Index of the left column.</param>
/// <param name="To">Index of the right column.</param>
/// <param name="Distance">The distance.</param>
internal readonly record struct Rod(int From, int To, double Distance);
