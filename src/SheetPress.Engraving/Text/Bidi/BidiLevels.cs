using System.Text;

namespace SheetPress.Engraving;

/// <summary>
/// Directions within a paragraph that mixes scripts written to the left and to the right: the implicit part of the Unicode
/// bidirectional algorithm (Unicode Standard Annex #9, rules P2, P3, W1 to W7, N0 to N2, I1, I2, L1, L2). Explicit formatting
/// characters, which nobody types into a lesson, are passed over.
/// </summary>
internal static class BidiLevels
{
    private const int DeepestBrackets = 63;

    /// <summary>The direction of a paragraph by its first strong character: 0 left to right, 1 right to left (P2, P3).</summary>
    internal static byte BaseLevel(string text)
    {
        foreach (var rune in text.EnumerateRunes())
        {
            var kind = BidiClasses.Of(rune);
            if (kind == BidiClass.L) return 0;
            if (kind is BidiClass.R or BidiClass.AL) return 1;
        }
        return 0;
    }

    /// <summary>The embedding level of every char: even runs to the right, odd to the left.</summary>
    /// <param name="text">One paragraph.</param>
    /// <param name="baseLevel">Its direction, 0 or 1.</param>
    internal static byte[] Of(string text, byte baseLevel)
    {
        var original = new BidiClass[text.Length];
        for (var i = 0; i < text.Length;)
        {
            Rune.DecodeFromUtf16(text.AsSpan(i), out var rune, out var length);
            var kind = BidiClasses.Of(rune);
            for (var end = i + length; i < end; i++) original[i] = kind;
        }
        // X9: what has no place of its own takes no part.
        var places = new List<int>(text.Length);
        for (var i = 0; i < text.Length; i++) if (original[i] != BidiClass.BN) places.Add(i);
        var kinds = new BidiClass[places.Count];
        for (var i = 0; i < kinds.Length; i++) kinds[i] = original[places[i]];
        var side = baseLevel == 0 ? BidiClass.L : BidiClass.R;
        ResolveWeak(kinds, side);
        ResolveBrackets(kinds, text, places, original, side);
        ResolveNeutral(kinds, side);
        var levels = new byte[text.Length];
        for (var i = 0; i < kinds.Length; i++) levels[places[i]] = Level(kinds[i], baseLevel);
        Finish(levels, original, baseLevel);
        return levels;
    }

    /// <summary>The order in which things of a line stand from left to right (L2).</summary>
    /// <param name="levels">Their levels in the order in which they are read.</param>
    /// <returns>Indices in the order in which they stand.</returns>
    internal static int[] VisualOrder(ReadOnlySpan<byte> levels)
    {
        var order = new int[levels.Length];
        var (highest, lowestOdd) = (0, int.MaxValue);
        for (var i = 0; i < order.Length; i++)
        {
            order[i] = i;
            highest = Math.Max(highest, levels[i]);
            if (levels[i] % 2 == 1) lowestOdd = Math.Min(lowestOdd, levels[i]);
        }
        for (var level = highest; level >= lowestOdd; level--)
        {
            for (var start = 0; start < order.Length; start++)
            {
                if (levels[order[start]] < level) continue;
                var end = start;
                while (end < order.Length && levels[order[end]] >= level) end++;
                Array.Reverse(order, start, end - start);
                start = end;
            }
        }
        return order;
    }

    private static void ResolveWeak(BidiClass[] kinds, BidiClass side)
    {
        var (before, strong) = (side, side);
        // W1, W2, W3, and W7 as far as it needs no more than what stands before.
        for (var i = 0; i < kinds.Length; i++)
        {
            if (kinds[i] == BidiClass.NSM) kinds[i] = before;
            before = kinds[i];
            if (kinds[i] is BidiClass.L or BidiClass.R or BidiClass.AL) strong = kinds[i];
            else if (kinds[i] == BidiClass.EN && strong == BidiClass.AL) kinds[i] = BidiClass.AN;
        }
        for (var i = 0; i < kinds.Length; i++) if (kinds[i] == BidiClass.AL) kinds[i] = BidiClass.R;
        // W4.
        for (var i = 1; i + 1 < kinds.Length; i++)
        {
            var (left, right) = (kinds[i - 1], kinds[i + 1]);
            if (left != right) continue;
            if (left == BidiClass.EN && kinds[i] is BidiClass.ES or BidiClass.CS) kinds[i] = BidiClass.EN;
            else if (left == BidiClass.AN && kinds[i] == BidiClass.CS) kinds[i] = BidiClass.AN;
        }
        // W5, W6.
        for (var i = 0; i < kinds.Length; i++)
        {
            if (kinds[i] != BidiClass.ET) continue;
            var end = i;
            while (end < kinds.Length && kinds[end] == BidiClass.ET) end++;
            var atNumber = (i > 0 && kinds[i - 1] == BidiClass.EN) || (end < kinds.Length && kinds[end] == BidiClass.EN);
            for (; i < end; i++) kinds[i] = atNumber ? BidiClass.EN : BidiClass.ON;
            i--;
        }
        strong = side;
        for (var i = 0; i < kinds.Length; i++)
        {
            if (kinds[i] is BidiClass.ES or BidiClass.CS) kinds[i] = BidiClass.ON;
            else if (kinds[i] is BidiClass.L or BidiClass.R) strong = kinds[i];
            else if (kinds[i] == BidiClass.EN && strong == BidiClass.L) kinds[i] = BidiClass.L;
        }
    }

    // N0: a pair of brackets takes the direction of what is in it.
    private static void ResolveBrackets(BidiClass[] kinds, string text, List<int> places, BidiClass[] original, BidiClass side)
    {
        foreach (var (open, close) in BracketPairs(kinds, text, places))
        {
            var found = BidiClass.ON;
            for (var i = open + 1; i < close && found != side; i++)
            {
                var strong = StrongOf(kinds[i]);
                if (strong != BidiClass.ON) found = strong;
            }
            if (found == BidiClass.ON) continue;
            if (found != side)
            {
                var before = side;
                for (var i = open - 1; i >= 0; i--)
                {
                    if (StrongOf(kinds[i]) == BidiClass.ON) continue;
                    before = StrongOf(kinds[i]);
                    break;
                }
                if (before == side) found = side;
            }
            foreach (var bracket in (ReadOnlySpan<int>)[open, close])
            {
                kinds[bracket] = found;
                for (var i = bracket + 1; i < kinds.Length && original[places[i]] == BidiClass.NSM; i++) kinds[i] = found;
            }
        }
    }

    private static List<(int Open, int Close)> BracketPairs(BidiClass[] kinds, string text, List<int> places)
    {
        var pairs = new List<(int, int)>();
        var waiting = new List<(char Closing, int At)>();
        for (var i = 0; i < kinds.Length; i++)
        {
            if (kinds[i] != BidiClass.ON) continue;
            var c = text[places[i]];
            if (BidiBrackets.Closing(c) is not '\0' and var closing)
            {
                if (waiting.Count == DeepestBrackets) break;
                waiting.Add((closing, i));
            }
            else if (BidiBrackets.AsClosing(c) is not '\0' and var own && waiting.FindLastIndex(w => w.Closing == own) is var at and >= 0)
            {
                pairs.Add((waiting[at].At, i));
                waiting.RemoveRange(at, waiting.Count - at);
            }
        }
        pairs.Sort();
        return pairs;
    }

    // N1, N2.
    private static void ResolveNeutral(BidiClass[] kinds, BidiClass side)
    {
        var before = side;
        for (var i = 0; i < kinds.Length; i++)
        {
            if (StrongOf(kinds[i]) is not BidiClass.ON and var strong)
            {
                before = strong;
                continue;
            }
            var end = i;
            while (end < kinds.Length && StrongOf(kinds[end]) == BidiClass.ON) end++;
            var after = end < kinds.Length ? StrongOf(kinds[end]) : side;
            for (; i < end; i++) kinds[i] = before == after ? before : side;
            i--;
        }
    }

    // Numbers count as written to the left where neutral characters look for company.
    private static BidiClass StrongOf(BidiClass kind) => kind switch
    {
        BidiClass.L => BidiClass.L,
        BidiClass.R or BidiClass.EN or BidiClass.AN => BidiClass.R,
        _ => BidiClass.ON,
    };

    private static byte Level(BidiClass kind, byte baseLevel) => (byte)(baseLevel + (baseLevel % 2 == 0
        ? kind switch { BidiClass.R => 1, BidiClass.EN or BidiClass.AN => 2, _ => 0 }
        : kind is BidiClass.L or BidiClass.EN or BidiClass.AN ? 1 : 0));

    // L1, and what has no place of its own goes with the character before it.
    private static void Finish(byte[] levels, BidiClass[] original, byte baseLevel)
    {
        for (var i = 0; i < levels.Length; i++) if (original[i] == BidiClass.BN) levels[i] = i > 0 ? levels[i - 1] : baseLevel;
        var atEnd = true;
        for (var i = levels.Length - 1; i >= 0; i--)
        {
            if (original[i] is BidiClass.S or BidiClass.B) atEnd = true;
            else if (original[i] is not (BidiClass.WS or BidiClass.BN)) atEnd = false;
            if (atEnd) levels[i] = baseLevel;
        }
    }
}
