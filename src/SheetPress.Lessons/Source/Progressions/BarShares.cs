using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>Shares a bar out among its chords.</summary>
internal static class BarShares
{
    /// <summary>
    /// The length of each chord of a bar in quarter notes; they add up to the bar. Chords with beats take these, the others share the rest
    /// equally. Without any beats: one a felt group when there are as many chords as groups, else equal shares of whole beat units,
    /// else of half units when there are twice as many chords as units.
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
        if (free == count && length == meter.MeasureLength && count == meter.Groups.Length) return [.. meter.Groups.Select(g => meter.UnitLength * g)];
        if (free > 0)
        {
            var share = rest / free;
            var halfUnits = share / meter.UnitLength * 2;
            var fits = free == 1 || (halfUnits.Denominator == 1 && (halfUnits.Numerator % 2 == 0 || halfUnits.Numerator == 1 || free < count));
            if (!fits)
            {
                bag.Add(bar.Span, ProgressionProblems.SharesUnclear(free, (rest / meter.UnitLength).ToString(), Example(bar, rest / meter.UnitLength)));
                return Equal(count, length);
            }
            return [.. bar.Chords.Select(c => c.Beats is { } beats ? meter.UnitLength * beats : share)];
        }
        return [.. bar.Chords.Select(c => meter.UnitLength * c.Beats!.Value)];
    }

    /// <summary>Equal shares of any size.</summary>
    public static ImmutableArray<Fraction> Equal(int count, Fraction length) => [.. Enumerable.Repeat(length / count, count)];

    // The bar as it could be written: whole beats, the longer ones first.
    private static string Example(WrittenBar bar, Fraction units)
    {
        var free = bar.Chords.Count(c => c.Beats is null);
        var whole = (int)units.Floor;
        if (whole < free) return "";
        var longer = whole % free;
        var words = new List<string>();
        foreach (var chord in bar.Chords)
        {
            if (chord.Beats is { } beats) words.Add($"{chord.Text}:{Decimal(beats)}");
            else words.Add($"{chord.Text}:{(whole / free) + (longer-- > 0 ? 1 : 0)}");
        }
        return string.Join(' ', words);
    }

    private static string Decimal(Fraction beats) => beats.ToDouble().ToString(System.Globalization.CultureInfo.InvariantCulture);
}
