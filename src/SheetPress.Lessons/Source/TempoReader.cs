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

    private const string Unit = "bpm";

    /// <summary>The tempo, or null with the reason reported.</summary>
    public static Tempo? Read(LocatedText text, Meter meter, DiagnosticBag bag)
    {
        var beat = BeatOf(meter);
        var sign = text.Value.IndexOf('=', StringComparison.Ordinal);
        if (sign >= 0)
        {
            if (Value(text.Slice(0, sign), text.Span, FieldProblems.UnknownTempoBeat(), bag) is not { } value) return null;
            beat = value;
            text = text.Slice(sign + 1, text.Length - sign - 1).Trim();
        }
        return Number(text, bag) is { } number ? new Tempo(number, beat) : null;
    }

    /// <summary>
    /// A new tempo within the music: a tempo, or an equation of two note values, "quarter = dotted quarter". Both null with the reason reported.
    /// </summary>
    public static (Tempo? Tempo, TempoEquation? Equation) ReadChange(LocatedText text, Meter meter, DiagnosticBag bag)
    {
        if (!IsEquation(text.Value)) return (Read(text, meter, bag), null);
        var sign = text.Value.IndexOf('=', StringComparison.Ordinal);
        var before = Value(text.Slice(0, sign), text.Span, FieldProblems.UnknownEquationValue(), bag);
        var after = Value(text.Slice(sign + 1, text.Length - sign - 1), text.Span, FieldProblems.UnknownEquationValue(), bag);
        return (null, before is { } left && after is { } right ? new TempoEquation(left, right) : null);
    }

    /// <summary>Whether a text is an equation of two note values and nothing else, well written.</summary>
    public static bool IsSoundEquation(string text)
    {
        var problems = new DiagnosticBag(new SourceText("", ""));
        return ReadChange(LocatedText.At(text, 0), new Meter(4, 4), problems).Equation is not null;
    }

    // A value, or what was meant for one, stands behind the sign, and no number.
    private static bool IsEquation(string text)
    {
        var sign = text.IndexOf('=', StringComparison.Ordinal);
        if (sign < 0) return false;
        var right = text[(sign + 1)..].Trim();
        if (right.EndsWith(Unit, StringComparison.OrdinalIgnoreCase)) right = right[..^Unit.Length];
        return right.Any(char.IsLetter);
    }

    // One note value; null with the reason reported.
    private static NoteValue? Value(LocatedText text, SourceSpan spanOfNone, Problem problem, DiagnosticBag bag)
    {
        var words = RhythmWords.Of(text);
        var at = 0;
        var phrase = words.IsEmpty ? null : NotePhrase.Read(words, ref at, bag);
        if (phrase is null && !words.IsEmpty) return null;
        if (phrase is { IsRest: false, Count: 1, Tuplet: 0, IsFill: false } && at == words.Length) return phrase.Value;
        bag.Add(words.IsEmpty ? spanOfNone : text.Trim().Span, problem);
        return null;
    }

    /// <summary>Beats a minute, also with "bpm" behind; null with the reason reported.</summary>
    public static double? Number(LocatedText text, DiagnosticBag bag)
    {
        if (text.Value.EndsWith(Unit, StringComparison.OrdinalIgnoreCase) && text.Length > Unit.Length) text = text.Slice(0, text.Length - Unit.Length).Trim();
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
