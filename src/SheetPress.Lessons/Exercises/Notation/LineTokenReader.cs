using System.Collections.Immutable;
using System.Globalization;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Reads the words of a written line, bar by bar, by the rules of <see cref="LineNotation"/>.</summary>
internal sealed class LineTokenReader(DiagnosticBag bag)
{
    private static readonly (string Word, NextNote Note)[] NextWords =
    [
        ("next", NextNote.Root), ("under-next", NextNote.Under), ("over-next", NextNote.Over),
        ("step-under-next", NextNote.StepUnder), ("step-over-next", NextNote.StepOver), ("fifth-of-next", NextNote.Fifth),
    ];

    private static readonly string[] Changes = ["bass clef", "treble clef"];

    /// <summary>The bars with their words. Words that cannot be read are reported and left out.</summary>
    public List<List<LineToken>> Read(LocatedText text)
    {
        var bars = new List<List<LineToken>> { new() };
        var words = LineWords.Of(text, bag);
        for (var i = 0; i < words.Count; i++)
        {
            if (words[i].Value == "|")
            {
                var isFirst = bars.Count == 1 && bars[0].Count == 0;
                if (isFirst || i == words.Count - 1) continue;
                if (bars[^1].Count == 0) bag.Add(words[i].Span, LineProblems.EmptyBar(bars.Count));
                bars.Add([]);
                continue;
            }
            foreach (var token in ReadWord(words, ref i)) bars[^1].Add(token);
        }
        return bars;
    }

    private IEnumerable<LineToken> ReadWord(List<LocatedText> words, ref int at)
    {
        var word = words[at];
        switch (word.Value)
        {
            case "rest": return [new RestToken(word)];
            case "-": return [new HoldToken(word)];
            case "same" or "simile": return [new RepeatBarToken(word, word.Value == "simile")];
        }
        if (word.Value[0] == '[') return ReadChange(word) is { } change ? [change] : [];
        if (ReadValue(words, ref at) is { } value)
        {
            var token = new ValueToken(word, value);
            return value.IsRest ? [token, new RestToken(word)] : [token];
        }
        return ReadNote(word) is { } note ? [note] : [];
    }

    // "[bass clef]", "[treble clef]", "[tempo 60]".
    private LineToken? ReadChange(LocatedText word)
    {
        var inner = word.Slice(1, word.Length - 2).Trim();
        var lower = inner.Value.ToLowerInvariant();
        switch (lower)
        {
            case "bass clef" or "treble clef":
                return new ClefToken(word, lower == "bass clef");
            case "bass" or "treble" or "clef bass" or "clef treble":
                bag.Add(word.Span, LineProblems.UnknownChange(inner.Value, lower.Contains("bass", StringComparison.Ordinal) ? Changes[0] : Changes[1]));
                return null;
        }
        if (lower.StartsWith("tempo ", StringComparison.Ordinal)) return new TempoToken(word, inner.Slice(6, inner.Length - 6).Trim());
        if (lower == "tempo") bag.Add(word.Span, FieldProblems.UnknownTempo(inner.Value));
        else bag.Add(word.Span, LineProblems.UnknownChange(inner.Value, NearestWord.Find(lower, Changes)));
        return null;
    }

    // A value is one letter form, or words up to a rest, which stands for itself in a line. A number in front would be a degree.
    private static NotePhrase? ReadValue(List<LocatedText> words, ref int at)
    {
        if (!char.IsAsciiLetterLower(words[at].Value[0])) return null;
        var phrase = ImmutableArray.CreateBuilder<LocatedText>();
        for (var i = at; i < words.Count && words[i].Value is not ("rest" or "|") && !words[i].Value.Contains(':', StringComparison.Ordinal); i++) phrase.Add(words[i]);
        var used = 0;
        if (phrase.Count == 0 || NotePhrase.Read(phrase.ToImmutable(), ref used, null) is not { } found) return null;
        at += used - 1;
        return found;
    }

    private NoteToken? ReadNote(LocatedText word)
    {
        var colon = word.Value.IndexOf(':', StringComparison.Ordinal);
        var head = colon < 0 ? word : word.Slice(0, colon);
        var marks = default(StrokeMarks);
        var pin = default(NeckPin);
        if (colon >= 0 && !ReadMarks(word, colon + 1, ref marks, ref pin)) return null;
        if (head.Length > 2 && head.Value[0] == '(' && head.Value[^1] == ')')
        {
            head = head.Slice(1, head.Length - 2);
            marks = marks with { Head = Notehead.Ghost };
        }
        if (head.Value == "x") return new NoteToken(word, [new SameWord()], marks with { Head = Notehead.Dead }, pin);
        var tones = new List<ToneWord>();
        var start = 0;
        while (start <= head.Length)
        {
            var end = head.Value.IndexOf('&', start);
            if (end < 0) end = head.Length;
            if (ReadTone(head.Slice(start, end - start)) is not { } tone) return null;
            tones.Add(tone);
            start = end + 1;
        }
        if (pin.Finger is not null && tones.Count > 1)
        {
            bag.Add(word.Span, LineProblems.FingerOfMany());
            return null;
        }
        return new NoteToken(word, tones, marks, pin);
    }

    private ToneWord? ReadTone(LocatedText word)
    {
        var text = word.Value;
        foreach (var (name, note) in NextWords) if (text == name) return new NextWord(note);
        var octaves = 0;
        while (text.StartsWith("low-", StringComparison.Ordinal))
        {
            octaves--;
            text = text[4..];
        }
        if (DegreeWords.TryParse(text, out var degree)) return new DegreeWord(degree, octaves);
        if (octaves == 0 && text.Length > 0 && text[0] is >= 'A' and <= 'G' && NoteName.TryRead(text, 0, out var name2, out var end))
        {
            if (end == text.Length) return new PitchWord(name2, null);
            if (int.TryParse(text.AsSpan(end), NumberStyles.None, CultureInfo.InvariantCulture, out var octave) && octave <= 9) return new PitchWord(name2, octave);
        }
        var isLowerCasePitch = octaves == 0 && text.Length > 0 && text[0] is >= 'a' and <= 'g' && (Pitch.TryParse(text, out _) || NoteName.TryParse(char.ToUpperInvariant(text[0]) + text[1..], out _));
        if (text.StartsWith("low", StringComparison.Ordinal) && DegreeWords.TryParse(text[3..], out _)) bag.Add(word.Span, LineProblems.UnknownNote(word.Value, "low-" + text[3..]));
        else bag.Add(word.Span, isLowerCasePitch ? LineProblems.LowerCasePitch(text) : LineProblems.UnknownNote(word.Value, NearestWord.Find(word.Value, [.. NextWords.Select(n => n.Word), "rest", "same", "simile", .. NotePhrase.Words])));
        return null;
    }

    private bool ReadMarks(LocatedText word, int start, ref StrokeMarks marks, ref NeckPin pin)
    {
        while (start <= word.Length)
        {
            var end = word.Value.IndexOf(':', start);
            if (end < 0) end = word.Length;
            var text = word.Value[start..end];
            if (ReadNumber(text, "string") is { } number) pin = pin with { String = number };
            else if (ReadNumber(text, "fret") is { } fret) pin = pin with { Fret = fret };
            else if (ReadNumber(text, "finger") is { } finger)
            {
                if (finger is < 1 or > 4)
                {
                    bag.Add(word.SpanOf(start, end - start), LineProblems.NoSuchFinger(finger));
                    return false;
                }
                pin = pin with { Finger = finger };
            }
            else if (MarkWords.Read(word.Slice(start, end - start), bag) is { } found) marks = marks.With(found);
            else return false;
            start = end + 1;
        }
        return true;
    }

    private static int? ReadNumber(string text, string word) =>
        text.StartsWith(word, StringComparison.Ordinal) && int.TryParse(text.AsSpan(word.Length), NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number <= 99 ? number : null;
}
