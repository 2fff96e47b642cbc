using System.Collections.Immutable;
using System.Globalization;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>Shares a bar out among its chords.</summary>
internal static class BarShares
{
    /// <summary>
    /// The length of each chord of a bar in quarter notes; they add up to the bar. Chords with beats take these, the others share the rest
    /// equally. Without any beats: one a felt group when there are as many chords as groups, else equal shares of whole beat units,
    /// else of half units when there are twice as many chords as units. Where shares cannot be equal the earlier chords take the longer ones
    /// (two chords in 3/4 are 2+1), and changes fall on the felt groups; with more than two chords that is said, since others may be meant.
    /// </summary>
    public static ImmutableArray<Fraction> Of(WrittenBar bar, Fraction length, Meter meter, DiagnosticBag bag)
    {
        var count = bar.Chords.Count;
        var given = Fraction.Zero;
        var free = 0;
        foreach (var chord in bar.Chords)
        {
            if (chord.Beats is { } beats) given += meter.UnitLength * beats;
            else free++;
        }
        var rest = length - given;
        var units = length / meter.UnitLength;
        if (rest < Fraction.Zero || (rest == Fraction.Zero && free > 0))
        {
            bag.Add(bar.Span, ProgressionProblems.TooManyBeats((given / meter.UnitLength).ToString(), units.ToString(), free > 0));
            return Equal(count, length);
        }
        if (free == 0 && rest > Fraction.Zero)
        {
            bag.Add(bar.Span, ProgressionProblems.TooFewBeats((given / meter.UnitLength).ToString(), units.ToString()));
            return Equal(count, length);
        }
        if (free == 0) return [.. bar.Chords.Select(c => meter.UnitLength * c.Beats!.Value)];
        var inGroups = free == count && length == meter.MeasureLength;
        if (inGroups && count == meter.Groups.Length) return [.. meter.Groups.Select(g => meter.UnitLength * g)];
        var share = rest / free;
        var halfUnits = share / meter.UnitLength * 2;
        var isEqual = free == 1 || (halfUnits.Denominator == 1 && (halfUnits.Numerator % 2 == 0 || halfUnits.Numerator == 1 || free < count));
        // Three chords in 12/8 change with the dotted quarters, not across them.
        if (inGroups && count < meter.Groups.Length && meter.Groups.Length % count != 0 && meter.Groups.Any(g => g > 1)) isEqual = false;
        if (isEqual) return [.. bar.Chords.Select(c => c.Beats is { } beats ? meter.UnitLength * beats : share)];
        if ((inGroups ? UnevenShares.OverGroups(count, meter.Groups) : UnevenShares.OverBeats(free, rest / meter.UnitLength)) is not { } shares)
        {
            bag.Add(bar.Span, ProgressionProblems.TooManyChords(free, (rest / meter.UnitLength).ToString()));
            return Equal(count, length);
        }
        var next = 0;
        ImmutableArray<Fraction> beatsOfAll = [.. bar.Chords.Select(c => c.Beats ?? shares[next++])];
        if (count > 2)
        {
            var example = string.Join(' ', bar.Chords.Select((c, i) => $"{c.Text}:{beatsOfAll[i].ToDouble().ToString(CultureInfo.InvariantCulture)}"));
            bag.Add(bar.Span, ProgressionProblems.SharesUneven(free, (rest / meter.UnitLength).ToString(), example));
        }
        return [.. beatsOfAll.Select(b => meter.UnitLength * b)];
    }

    /// <summary>Equal shares of any size.</summary>
    public static ImmutableArray<Fraction> Equal(int count, Fraction length) => [.. Enumerable.Repeat(length / count, count)];
}
