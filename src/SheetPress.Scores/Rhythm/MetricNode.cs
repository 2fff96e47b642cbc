namespace SheetPress.Scores;

/// <summary>How a stretch of a measure divides.</summary>
internal enum MetricShape
{
    /// <summary>Two equal parts; notes may be syncopated over the middle in the usual ways.</summary>
    Pair,
    /// <summary>Two equal parts of two or more beats each, as in 4/4: the middle has to be seen.</summary>
    Halves,
    /// <summary>Three or more equal parts.</summary>
    Equal,
    /// <summary>Parts of different lengths, as in 5/4 or 7/8.</summary>
    Unequal,
}

/// <summary>
/// One stretch of a measure in the tree of its meter: measure, halves or groups, beats, divisions of a beat. Times are in quarter
/// notes from the start of a full measure (or, inside a tuplet, in written time from the start of the tuplet).
/// </summary>
internal sealed class MetricNode
{
    private MetricNode[]? _children;

    private MetricNode(Fraction start, Fraction length, MetricShape shape, MetricNode[]? children)
    {
        Start = start;
        Length = length;
        End = start + length;
        Shape = shape;
        _children = children;
        HasTernaryParts = shape != MetricShape.Unequal && children?[0] is { _children: not null } part && (part.Shape == MetricShape.Equal || part.HasTernaryParts);
    }

    public Fraction Start { get; }

    public Fraction Length { get; }

    public Fraction End { get; }

    public MetricShape Shape { get; }

    /// <summary>Whether a rest may fill the node when its length needs a dot: a compound beat, but no three quarters of 3/4.</summary>
    public bool TakesDottedRest { get; private init; }

    /// <summary>Whether the node stands for a tuplet, where rests may join two units.</summary>
    public bool IsTuplet { get; private init; }

    /// <summary>Whether the node is a measure or group of three simple beats, which must not look like two dotted ones.</summary>
    public bool IsSimpleTriple { get; private init; }

    /// <summary>The parts in order; single beats divide in two without end.</summary>
    public MetricNode[] Children => _children ??= [Divided(Start, Length / 2), Divided(Start + (Length / 2), Length / 2)];

    /// <summary>Whether the parts are compound beats or larger stretches of them, so that only whole parts may be joined.</summary>
    public bool HasTernaryParts { get; }

    /// <summary>The tree of a full measure.</summary>
    public static MetricNode OfMeter(Meter meter)
    {
        var unit = meter.UnitLength;
        var groups = new MetricNode[meter.Groups.Length];
        var at = Fraction.Zero;
        for (var i = 0; i < groups.Length; i++)
        {
            groups[i] = OfGroup(at, unit, meter.Groups[i], meter.IsCompound);
            at = groups[i].End;
        }
        return Join(groups, unit >= Fraction.One && !meter.IsCompound);
    }

    /// <summary>The tree of a tuplet in written time: so many equal units from zero.</summary>
    public static MetricNode OfTuplet(int units, Fraction unit)
    {
        var parts = new MetricNode[units];
        for (var i = 0; i < units; i++) parts[i] = Divided(unit * i, unit);
        return new MetricNode(Fraction.Zero, unit * units, MetricShape.Equal, parts) { IsTuplet = true };
    }

    /// <summary>Whether a stretch is this node, one below it, or a run of whole parts that hides no middle.</summary>
    public bool IsNatural(Fraction start, Fraction end)
    {
        var node = Innermost(start, end);
        if (node.Start == start && node.End == end) return true;
        return node.Shape is MetricShape.Equal or MetricShape.Unequal && node.IsPartStart(start) && (end == node.End || node.IsPartStart(end));
    }

    /// <summary>The smallest node that holds a stretch.</summary>
    public MetricNode Innermost(Fraction start, Fraction end)
    {
        var node = this;
        while (true)
        {
            MetricNode? inner = null;
            foreach (var child in node.Children)
            {
                if (child.Start <= start && end <= child.End) { inner = child; break; }
            }
            if (inner is null) return node;
            node = inner;
        }
    }

    /// <summary>Whether a beat starts or ends at a time: a quarter or longer, a compound beat, or a unit of a tuplet.</summary>
    public bool IsBeat(Fraction time)
    {
        var node = this;
        while (time != node.Start && time != node.End)
        {
            if (node.Length <= Fraction.One || (node.Shape == MetricShape.Equal && !node.IsTuplet && node.Children[0].Length < Fraction.One)) return false;
            var inner = node;
            foreach (var child in node.Children) if (child.Start <= time && time <= child.End) inner = child;
            node = inner;
        }
        return true;
    }

    /// <summary>Whether a part of this node starts at a time.</summary>
    public bool IsPartStart(Fraction time)
    {
        foreach (var child in Children) if (child.Start == time) return true;
        return false;
    }

    private static MetricNode Divided(Fraction start, Fraction length) => new(start, length, MetricShape.Pair, null);

    private static MetricNode OfGroup(Fraction start, Fraction unit, int size, bool compound)
    {
        if (size == 1) return Divided(start, unit);
        var units = new MetricNode[size];
        for (var i = 0; i < size; i++) units[i] = Divided(start + (unit * i), unit);
        var simpleBeats = unit >= Fraction.One && !compound;
        if (size == 3)
        {
            return new MetricNode(start, unit * 3, MetricShape.Equal, units) { TakesDottedRest = !simpleBeats, IsSimpleTriple = unit >= Fraction.One };
        }
        return Join(units, simpleBeats);
    }

    private static MetricNode Join(MetricNode[] parts, bool simpleBeats)
    {
        if (parts.Length == 1) return parts[0];
        var start = parts[0].Start;
        var length = parts[^1].End - start;
        var equal = true;
        foreach (var part in parts) equal &= part.Length == parts[0].Length;
        if (!equal) return new MetricNode(start, length, MetricShape.Unequal, parts);
        if (parts.Length == 2)
        {
            var severalBeats = parts[0]._children is not null && parts[0].Length >= 2 && parts[0].Shape != MetricShape.Equal;
            return new MetricNode(start, length, severalBeats ? MetricShape.Halves : MetricShape.Pair, parts);
        }
        if (parts.Length % 2 == 0)
        {
            var half = parts.Length / 2;
            return Join([Join(parts[..half], simpleBeats), Join(parts[half..], simpleBeats)], simpleBeats);
        }
        return new MetricNode(start, length, MetricShape.Equal, parts) { IsSimpleTriple = simpleBeats && parts.Length == 3 };
    }
}
