using System.Globalization;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Reads what stands in square brackets in a progression and applies it to its bar.</summary>
/// <param name="bag">Where problems go.</param>
internal sealed class BracketMark(DiagnosticBag bag)
{
    private static readonly string[] Words = ["pickup", "key", "tempo", "segno", "coda", "to coda", "fine", "new line", "D.C.", "D.S.", "D.C. al Fine", "D.C. al Coda", "D.S. al Fine", "D.S. al Coda"];

    /// <summary>Applies a mark to a bar.</summary>
    /// <param name="token">The mark.</param>
    /// <param name="bar">The bar it stands in.</param>
    /// <param name="isFirstBar">Whether no bar stands before it.</param>
    public void Apply(ProgressionToken token, WrittenBar bar, bool isFirstBar)
    {
        var text = token.Text.Value;
        var lower = text.ToLowerInvariant();
        if (text.Length == 0)
        {
            bag.Add(token.Span, ProgressionProblems.EmptyMark());
        }
        else if (text[0] is '"' or '\u201C')
        {
            ReadWords(token, bar);
        }
        else if (char.IsAsciiDigit(text[0]) && text.Contains('/', StringComparison.Ordinal))
        {
            if (MeterReader.Read(token.Text, bag) is { } meter && BeforeChords(token, bar) && IsFirst(token, bar.Meter is null, "meter")) bar.Meter = meter;
        }
        else if (lower.StartsWith("key ", StringComparison.Ordinal))
        {
            var name = token.Text.Slice(4, text.Length - 4).Trim();
            if (KeyReader.Read(name, bag) is { } key && BeforeChords(token, bar) && IsFirst(token, bar.Key is null, "key")) bar.Key = key;
        }
        else if (lower == "tempo" || lower.StartsWith("tempo ", StringComparison.Ordinal))
        {
            ReadTempo(token, bar);
        }
        else if (lower == "pickup" || lower.StartsWith("pickup ", StringComparison.Ordinal))
        {
            ReadPickup(token, bar, isFirstBar);
        }
        else if (lower == "new line")
        {
            bar.BreakBefore = true;
        }
        else if (Jump(lower) is var (kind, name))
        {
            bar.EndMarks.Add(new(kind, name, token.Span));
        }
        else if (lower is "segno" or "coda")
        {
            bar.StartMarks.Add(new(lower == "segno" ? DirectionKind.Segno : DirectionKind.Coda, "", token.Span));
        }
        else
        {
            ReadRehearsal(token, bar);
        }
    }

    private static (DirectionKind Kind, string Text)? Jump(string lower)
    {
        if (lower == "fine") return (DirectionKind.Fine, "Fine");
        if (lower == "to coda") return (DirectionKind.ToCoda, "To Coda");
        var kind = lower.StartsWith("d.c.", StringComparison.Ordinal) ? DirectionKind.DaCapo
            : lower.StartsWith("d.s.", StringComparison.Ordinal) ? DirectionKind.DalSegno
            : (DirectionKind?)null;
        if (kind is null) return null;
        var name = kind == DirectionKind.DaCapo ? "D.C." : "D.S.";
        return lower[4..].Trim() switch
        {
            "" => (kind.Value, name),
            "al fine" => (kind.Value, name + " al Fine"),
            "al coda" => (kind.Value, name + " al Coda"),
            _ => null,
        };
    }

    // A bare number counts the beat of the bar's meter, which may still follow: it is read with the bar.
    private void ReadTempo(ProgressionToken token, WrittenBar bar)
    {
        var text = token.Text.Slice(5, token.Text.Length - 5).Trim();
        if (text.Length == 0) bag.Add(token.Span, FieldProblems.UnknownTempo(token.Text.Value));
        else if (BeforeChords(token, bar) && IsFirst(token, bar.Tempo is null, "tempo")) bar.Tempo = text;
    }

    private void ReadPickup(ProgressionToken token, WrittenBar bar, bool isFirstBar)
    {
        var number = token.Text.Value.Length > 6 ? token.Text.Value[6..].Trim() : "";
        if (number.EndsWith("beats", StringComparison.OrdinalIgnoreCase)) number = number[..^5].Trim();
        else if (number.EndsWith("beat", StringComparison.OrdinalIgnoreCase)) number = number[..^4].Trim();
        if (!BeatCount.TryParse(number, out var beats)) bag.Add(token.Span, ProgressionProblems.PickupLength());
        else if (!isFirstBar || bar.Chords.Count > 0) bag.Add(token.Span, ProgressionProblems.PickupNotFirst());
        else bar.Pickup = beats;
    }

    // Words in quotes stand over the music as they are.
    private void ReadWords(ProgressionToken token, WrittenBar bar)
    {
        var words = token.Text.Value.Trim('"', '\u201C', '\u201D').Trim();
        if (words.Length == 0) bag.Add(token.Span, ProgressionProblems.EmptyMark());
        else if (words.Length > 60) bag.Add(token.Span, ProgressionProblems.LongWords());
        else if (bar.Chords.Count > 0) bag.Add(token.Span, ProgressionProblems.MarkBehindChord(token.Text.Value));
        else bar.StartMarks.Add(new(DirectionKind.Words, words, token.Span));
    }

    private void ReadRehearsal(ProgressionToken token, WrittenBar bar)
    {
        var text = token.Text.Value;
        var instruction = LikelyInstruction.In(text);
        if (instruction is not null) bag.Add(token.Span, instruction);
        if (instruction is { Severity: Severity.Error }) return;
        if (text.Length >= 4 && NearestWord.Find(text, Words) is { } near)
        {
            bag.Add(token.Span, ProgressionProblems.UnknownMark(text, near));
        }
        else if (text.Length > 24)
        {
            bag.Add(token.Span, ProgressionProblems.LongLabel());
        }
        else if (bar.Chords.Count > 0)
        {
            bag.Add(token.Span, ProgressionProblems.MarkBehindChord(text));
        }
        else
        {
            bar.StartMarks.Add(new(DirectionKind.Rehearsal, text, token.Span));
        }
    }

    private bool IsFirst(ProgressionToken token, bool isFirst, string what)
    {
        if (!isFirst) bag.Add(token.Span, ProgressionProblems.ChangeTwice(what));
        return isFirst;
    }

    private bool BeforeChords(ProgressionToken token, WrittenBar bar)
    {
        if (bar.Chords.Count == 0) return true;
        bag.Add(token.Span, ProgressionProblems.MarkBehindChord(token.Text.Value));
        return false;
    }
}

/// <summary>Beats as they are written: whole, or with quarters of a beat as decimals.</summary>
internal static class BeatCount
{
    /// <summary>Reads "3", "1.5", "0.25": above zero, at most 64, in quarters of a beat.</summary>
    public static bool TryParse(string text, out Fraction beats)
    {
        beats = default;
        if (text.Length is 0 or > 6 || !decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)) return false;
        var quarters = number * 4;
        if (number <= 0 || number > 64 || quarters != decimal.Truncate(quarters)) return false;
        beats = new Fraction((long)quarters, 4);
        return true;
    }
}
