using System.Globalization;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>
/// Reads a tempo: a number counts the beat of the meter (the quarter, the half in 2/2, the dotted quarter in 6/8, the dotted half in 6/4); "half = 60" or
/// "dotted quarter = 72" names the value that is counted.
/// </summary>
internal static class TempoReader
{
    /// <summary>The slowest tempo, beats a minute.</summary>
    public const int Slowest = 20;
    /// <summary>The fastest tempo, beats a minute.</summary>
    public const int Fastest = 400;

    /// <summary>The tempo, or null with the reason reported.</summary>
    public static Tempo? Read(LocatedText text, Meter meter, DiagnosticBag bag)
    {
        var beat = BeatOf(meter);
        var sign = text.Value.IndexOf('=', StringComparison.Ordinal);
        if (sign >= 0)
        {
            var words = RhythmWords.Of(text.Slice(0, sign));
            var at = 0;
            var phrase = words.IsEmpty ? null : NotePhrase.Read(words, ref at, bag);
            if (phrase is null && !words.IsEmpty) return null;
            if (phrase is not { IsRest: false, Count: 1, Tuplet: 0, IsFill: false } || at < words.Length)
            {
                bag.Add(words.IsEmpty ? text.Span : text.Slice(0, sign).Trim().Span, FieldProblems.UnknownTempoBeat());
                return null;
            }
            beat = phrase.Value;
            text = text.Slice(sign + 1, text.Length - sign - 1).Trim();
        }
        return Number(text, bag) is { } number ? new Tempo(number, beat) : null;
    }

    /// <summary>Beats a minute, also with "bpm" behind; null with the reason reported.</summary>
    public static double? Number(LocatedText text, DiagnosticBag bag)
    {
        const string unit = "bpm";
        if (text.Value.EndsWith(unit, StringComparison.OrdinalIgnoreCase) && text.Length > unit.Length) text = text.Slice(0, text.Length - unit.Length).Trim();
        if (text.Length == 0 || !double.TryParse(text.Value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)) bag.Add(text.Span, FieldProblems.UnknownTempo(text.Value));
        else if (number is < Slowest or > Fastest) bag.Add(text.Span, FieldProblems.OutOfRange("tempo", Slowest, Fastest));
        else return number;
        return null;
    }

    /// <summary>The value that a bare number counts.</summary>
    public static NoteValue BeatOf(Meter meter)
    {
        // The felt groups of three make one beat, those of a bar of three eighths or sixteenths too.
        if (meter.IsCompound || (meter.BeatUnit > 4 && meter.Groups is [3]))
        {
            return new NoteValue(meter.BeatUnit switch { 4 => NoteBase.Half, 8 => NoteBase.Quarter, _ => NoteBase.Eighth }, 1);
        }
        return new NoteValue(meter.BeatUnit switch { 1 => NoteBase.Whole, 2 => NoteBase.Half, _ => NoteBase.Quarter });
    }
}
