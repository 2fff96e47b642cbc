using System.Collections.Immutable;
using System.Globalization;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>Reads a meter: "4/4", "7/8 (2+2+3)".</summary>
public static class MeterReader
{
    /// <summary>The meter, or null with the reason reported.</summary>
    public static Meter? Read(LocatedText text, DiagnosticBag bag)
    {
        text = text.Trim();
        var value = text.Value;
        var bracket = value.IndexOf('(', StringComparison.Ordinal);
        var numbers = (bracket < 0 ? value : value[..bracket]).Trim();
        var slash = numbers.IndexOf('/', StringComparison.Ordinal);
        if (slash < 0 || !Number(numbers[..slash], out var beats) || !Number(numbers[(slash + 1)..], out var unit))
        {
            bag.Add(text.Span, FieldProblems.UnknownMeter(value));
            return null;
        }
        if (beats is < 1 or > 32 || unit is not (1 or 2 or 4 or 8 or 16))
        {
            bag.Add(text.SpanOf(0, numbers.Length), FieldProblems.MeterOutOfRange());
            return null;
        }
        if (bracket < 0) return new Meter(beats, unit);
        var inner = value[(bracket + 1)..].Trim();
        if (!inner.EndsWith(')'))
        {
            bag.Add(text.SpanOf(bracket, value.Length - bracket), FieldProblems.BadGroups(beats));
            return null;
        }
        var groups = ImmutableArray.CreateBuilder<int>();
        foreach (var part in inner[..^1].Split('+'))
        {
            if (!Number(part, out var group) || group < 1) groups.Add(1000);
            else groups.Add(group);
        }
        if (groups.Sum() != beats)
        {
            bag.Add(text.SpanOf(bracket, value.Length - bracket), FieldProblems.BadGroups(beats));
            return null;
        }
        return new Meter(beats, unit, groups.ToArray());
    }

    private static bool Number(string text, out int number) =>
        int.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out number) && number <= 999;
}
