using System.Collections.Immutable;
using System.Globalization;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Places on the neck that a lesson spells out, with fingers where it gives them.</summary>
/// <param name="Places">The places.</param>
/// <param name="Fingers">A finger for each place, 0 where none is given.</param>
internal readonly record struct WrittenShape(ImmutableArray<FretPosition> Places, ImmutableArray<int> Fingers)
{
    public static WrittenShape None => new([], []);
}

/// <summary>Reads shapes ("4:3 3:5:4") and grips ("x32010").</summary>
/// <param name="instrument">The instrument the lesson is written for.</param>
/// <param name="rekeying">The way from the written key.</param>
/// <param name="bag">Where problems go.</param>
internal sealed class ShapeReader(Instrument instrument, KeyTransposition rekeying, DiagnosticBag bag)
{
    private readonly NeckReader _neck = new(instrument, bag);

    /// <summary>Places "string:fret", or "string:fret:finger".</summary>
    public WrittenShape Shape(LocatedText text)
    {
        var places = ImmutableArray.CreateBuilder<FretPosition>();
        var fingers = ImmutableArray.CreateBuilder<int>();
        foreach (var word in text.Words())
        {
            var finger = 0;
            var place = word;
            var second = word.Value.IndexOf(':', word.Value.IndexOf(':', StringComparison.Ordinal) + 1);
            if (second > 0)
            {
                place = word.Slice(0, second);
                if (ReadFinger(word.Slice(second + 1, word.Length - second - 1), word) is not { } read) continue;
                finger = read;
            }
            if (_neck.Place(place) is not { } at) continue;
            if (places.Contains(at))
            {
                bag.Add(word.Span, ExerciseProblems.PlaceTwice(word.Value));
                continue;
            }
            places.Add(at);
            fingers.Add(finger);
        }
        return new WrittenShape(Moved(places.ToImmutable()), fingers.ToImmutable());
    }

    /// <summary>Whether a text spells a grip out instead of naming a chord: it begins with a fret or an x.</summary>
    public static bool IsSpelledOut(string text) => text is [(>= '0' and <= '9') or 'x' or 'X', ..];

    /// <summary>A grip from the lowest string to string 1, "x32010", or with blanks or hyphens between frets; null with the reason reported.</summary>
    public WrittenShape? Grip(LocatedText text)
    {
        var parts = text.Value.IndexOfAny([' ', '-']) < 0
            ? [.. text.Value.Select(c => c.ToString())]
            : text.Value.Split([' ', '-'], StringSplitOptions.RemoveEmptyEntries);
        var strings = instrument.StringCount;
        if (parts.Length != strings)
        {
            bag.Add(text.Span, DiagramProblems.WrongStringCount(text.Value, parts.Length, strings, instrument.Name));
            return null;
        }
        var places = ImmutableArray.CreateBuilder<FretPosition>();
        for (var i = 0; i < strings; i++)
        {
            if (parts[i] is "x" or "X") continue;
            if (!int.TryParse(parts[i], NumberStyles.None, CultureInfo.InvariantCulture, out var fret))
            {
                bag.Add(text.Span, DiagramProblems.BadGripPart(parts[i]));
                return null;
            }
            if (fret > instrument.PlayableFrets)
            {
                bag.Add(text.Span, ExerciseProblems.FretOffNeck(fret, instrument.PlayableFrets));
                return null;
            }
            places.Add(new FretPosition(strings - i, fret));
        }
        if (places.Count > 0) return new WrittenShape(Moved(places.ToImmutable()), [.. new int[places.Count]]);
        bag.Add(text.Span, DiagramProblems.SilentGrip());
        return null;
    }

    private int? ReadFinger(LocatedText text, LocatedText word)
    {
        if (text.Value is ['1' or '2' or '3' or '4'] digit) return digit[0] - '0';
        bag.Add(text.Length > 0 ? text.Span : word.Span, DiagramProblems.BadFinger(text.Value));
        return null;
    }

    // A shape keeps its form in another key: it moves along the neck, the other way round where it would leave it.
    private ImmutableArray<FretPosition> Moved(ImmutableArray<FretPosition> positions)
    {
        if (rekeying.IsNone() || positions.IsEmpty) return positions;
        var lowest = positions.Min(p => p.Fret);
        var highest = positions.Max(p => p.Fret);
        var by = rekeying.Interval.HalfSteps;
        if (lowest + by < 0) by += 12;
        if (highest + by > instrument.PlayableFrets) by -= 12;
        return lowest + by < 0 ? positions : [.. positions.Select(p => p with { Fret = p.Fret + by })];
    }
}
