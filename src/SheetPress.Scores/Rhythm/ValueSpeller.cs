using System.Numerics;

namespace SheetPress.Scores;

/// <summary>
/// Cuts one sounding stretch at the places of the meter that have to be seen, into values that can be written. The rules are those
/// of the engraving handbooks (Read, Gould), from memory: a value may hide a beat only in the usual dotted and syncopated figures,
/// never the middle of a bar of four beats, never a compound beat; rests stay within the beats.
/// </summary>
internal static class ValueSpeller
{
    /// <summary>The value of exactly that length with at most two dots, whole to sixty-fourth, or null.</summary>
    public static NoteValue? ValueOf(Fraction length)
    {
        var whole = length / 4;
        if (whole.Numerator is not (1 or 3 or 7) || !BitOperations.IsPow2(whole.Denominator)) return null;
        var dots = BitOperations.Log2((ulong)whole.Numerator + 1) - 1;
        var power = BitOperations.Log2((ulong)whole.Denominator) - dots;
        return power is < 0 or > (int)NoteBase.SixtyFourth ? null : new NoteValue((NoteBase)power, dots);
    }

    /// <summary>Adds the lengths that a stretch is written as, in order.</summary>
    /// <param name="tree">The meter, or the tuplet in written time.</param>
    /// <param name="start">Start in the times of the tree.</param>
    /// <param name="end">End in the times of the tree.</param>
    /// <param name="isRest">Whether it is a rest.</param>
    /// <param name="into">Where start and value are added.</param>
    /// <exception cref="UnwritableRhythmException">The stretch is finer than sixty-fourth notes.</exception>
    public static void Spell(MetricNode tree, Fraction start, Fraction end, bool isRest, List<(Fraction Start, NoteValue Value)> into)
    {
        if (MayStand(tree, start, end, isRest) is { } value)
        {
            into.Add((start, value));
            return;
        }
        var cut = CutOf(tree, start, end, isRest);
        Spell(tree, start, cut, isRest, into);
        Spell(tree, cut, end, isRest, into);
    }

    // The value of a stretch that hides nothing, or null.
    private static NoteValue? MayStand(MetricNode tree, Fraction start, Fraction end, bool isRest)
    {
        if (ValueOf(end - start) is not { } value) return null;
        var node = tree.Innermost(start, end);
        return (isRest ? RestMayStand(node, start, end) : NoteMayStand(node, start, end, value)) ? value : null;
    }

    // A cut at a boundary between parts, if possible one that leaves two values. Else, and among several, the last one when the
    // stretch starts on a part, so that long values come first; the first one when it starts off the parts, so that the beat is
    // met as soon as can be.
    private static Fraction CutOf(MetricNode tree, Fraction start, Fraction end, bool isRest)
    {
        if (end - start <= new Fraction(1, 16)) throw new UnwritableRhythmException($"A length of {end - start} quarter notes cannot be written in values down to sixty-fourth notes.");
        var node = tree.Innermost(start, end);
        var parts = node.Children;
        var onPart = node.IsPartStart(start);
        Fraction? first = null;
        for (var i = 0; i < parts.Length; i++)
        {
            var cut = parts[onPart ? parts.Length - 1 - i : i].Start;
            if (cut <= start || cut >= end) continue;
            if (MayStand(tree, start, cut, isRest) is not null && MayStand(tree, cut, end, isRest) is not null) return cut;
            first ??= cut;
        }
        return first ?? throw new InvalidOperationException("A stretch in the innermost node crosses one of its parts.");
    }

    private static bool NoteMayStand(MetricNode node, Fraction start, Fraction end, NoteValue value)
    {
        var whole = start == node.Start && end == node.End;
        switch (node.Shape)
        {
            case MetricShape.Pair when node.HasTernaryParts:
                return whole;
            case MetricShape.Pair:
                return whole || IsPairFigure(node, start, end);
            case MetricShape.Halves:
                return whole || (start == node.Start && end == node.Start + (node.Length * new Fraction(3, 4)) && !node.HasTernaryParts);
            case MetricShape.Equal:
                return IsRunOfParts(node, start, end) || (!node.HasTernaryParts && (IsFigureOverParts(node, start, end, value) || IsDupleOfBeat(node, start, end, value)));
            default:
                return !whole && IsRunOfParts(node, start, end) && PartsAreEqual(node, start, end);
        }
    }

    // In quarters of the pair: dotted from the start, dotted to the end, syncopated in the middle, doubly dotted from the start.
    private static bool IsPairFigure(MetricNode node, Fraction start, Fraction end)
    {
        var from = (start - node.Start) / node.Length;
        var to = (end - node.Start) / node.Length;
        var quarter = new Fraction(1, 4);
        if (from == 0) return to == quarter * 3 || to == new Fraction(7, 8);
        return from == quarter && (to == 1 || to == quarter * 3);
    }

    // Over one boundary between equal parts: from a part dotted (once or twice) into the next, or from the half of a part.
    private static bool IsFigureOverParts(MetricNode node, Fraction start, Fraction end, NoteValue value)
    {
        var unit = node.Children[0].Length;
        var from = (start - node.Start) / unit;
        var to = (end - node.Start) / unit;
        if (BoundariesInside(node, start, end) != 1) return false;
        if (from.Denominator == 1) return to.Denominator == 2 || (value.Dots == 2 && to.Denominator == 4);
        if (from.Denominator != 2 || to.Denominator > 2) return false;
        var looksLikeTwoDotted = node.IsSimpleTriple && from == new Fraction(3, 2) && end == node.End;
        return !looksLikeTwoDotted;
    }

    // Two or four equal dotted notes in a compound beat, or a dotted one in their middle.
    private static bool IsDupleOfBeat(MetricNode node, Fraction start, Fraction end, NoteValue value) =>
        node.TakesDottedRest && !node.IsSimpleTriple && value.Dots == 1 && (start - node.Start).IsMultipleOf(node.Length / 4) && (end - node.Start).IsMultipleOf(node.Length / 4);

    private static bool RestMayStand(MetricNode node, Fraction start, Fraction end)
    {
        var whole = start == node.Start && end == node.End;
        if (node.Shape is MetricShape.Pair or MetricShape.Halves) return whole;
        if (node.Shape == MetricShape.Unequal || node.HasTernaryParts) return false;
        if (whole) return node.TakesDottedRest;
        // The first two thirds of a compound beat, or two units of a tuplet.
        var unit = node.Children[0].Length;
        if (end - start != unit * 2 || !node.IsPartStart(start)) return false;
        if (node.IsTuplet) return node.Children.Length == 3 || (start / (unit * 2)).Denominator == 1;
        return node.TakesDottedRest && start == node.Start;
    }

    private static bool IsRunOfParts(MetricNode node, Fraction start, Fraction end) =>
        node.IsPartStart(start) && (end == node.End || node.IsPartStart(end));

    private static bool PartsAreEqual(MetricNode node, Fraction start, Fraction end)
    {
        Fraction? length = null;
        foreach (var part in node.Children)
        {
            if (part.Start < start || part.End > end) continue;
            length ??= part.Length;
            if (part.Length != length) return false;
        }
        return true;
    }

    private static int BoundariesInside(MetricNode node, Fraction start, Fraction end)
    {
        var count = 0;
        foreach (var part in node.Children) if (part.Start > start && part.Start < end) count++;
        return count;
    }
}
