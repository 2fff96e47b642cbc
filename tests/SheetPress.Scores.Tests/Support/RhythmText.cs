using System.Globalization;
using System.Text;

namespace SheetPress.Scores.Tests;

/// <summary>
/// Short text for rhythms. In: lengths in quarter notes, "r" before a rest ("1/2 1 r1/2"). Out: the bottom number of each value,
/// dots, "r" before rests, "~" between tied values, tuplets in brackets with their ratio ("8 4 8~8", "[3:2 8 8 8]").
/// </summary>
internal static class RhythmText
{
    public static Meter MeterOf(string text)
    {
        var parts = text.Split(' ');
        var numbers = parts[0].Split('/');
        int[] groups = parts.Length > 1 ? [.. parts[1].Split('+').Select(Number)] : [];
        return new Meter(Number(numbers[0]), Number(numbers[1]), groups);
    }

    public static Fraction FractionOf(string text)
    {
        var slash = text.IndexOf('/');
        return slash < 0 ? new Fraction(Number(text)) : new Fraction(Number(text[..slash]), Number(text[(slash + 1)..]));
    }

    public static List<SoundingSpan> SpansOf(string lengths, out Fraction total)
    {
        var spans = new List<SoundingSpan>();
        var at = Fraction.Zero;
        foreach (var word in lengths.Split(' '))
        {
            var length = FractionOf(word.TrimStart('r'));
            if (!word.StartsWith('r')) spans.Add(new SoundingSpan(at, at + length));
            at += length;
        }
        total = at;
        return spans;
    }

    public static string Spell(string meter, string lengths, string offset = "0")
    {
        var spans = SpansOf(lengths, out var total);
        return Text(RhythmSpeller.Spell(MeterOf(meter), FractionOf(offset), total, spans));
    }

    public static string Text(SpelledRhythm rhythm)
    {
        var text = new StringBuilder();
        for (var i = 0; i < rhythm.Values.Length; i++)
        {
            var value = rhythm.Values[i];
            if (i > 0) text.Append(!value.IsRest && value.Span == rhythm.Values[i - 1].Span ? '~' : ' ');
            foreach (var tuplet in rhythm.Tuplets)
            {
                if (tuplet.First == i) text.Append(CultureInfo.InvariantCulture, $"[{tuplet.Actual}:{tuplet.Normal} ");
            }
            if (value.IsRest) text.Append('r');
            text.Append(Text(value.Value));
            foreach (var tuplet in rhythm.Tuplets) if (tuplet.Last == i) text.Append(']');
        }
        return text.ToString();
    }

    public static string Text(NoteValue value) => (1 << (int)value.Base).ToString(CultureInfo.InvariantCulture) + new string('.', value.Dots);

    private static int Number(string text) => int.Parse(text, CultureInfo.InvariantCulture);
}
