namespace SheetPress.Lessons;

/// <summary>Splits a written line into its words: notes and values, bar lines, and what stands in square brackets.</summary>
internal static class LineWords
{
    /// <summary>The words in order. A bracket is one word with all that is in it; one that is not closed is reported and left out.</summary>
    public static List<LocatedText> Of(LocatedText text, DiagnosticBag bag)
    {
        var words = new List<LocatedText>();
        for (var at = 0; at < text.Length;)
        {
            var open = text.Value.IndexOf('[', at);
            AddPlain(text.Slice(at, (open < 0 ? text.Length : open) - at), words);
            if (open < 0) break;
            var end = text.Value.AsSpan(open).IndexOfAny("]|\n");
            at = end < 0 ? text.Length : open + end;
            if (end >= 0 && text.Value[at] == ']') words.Add(text.Slice(open, ++at - open));
            else bag.Add(text.Slice(open, at - open).Trim().Span, ProgressionProblems.UnclosedMark());
        }
        return words;
    }

    private static void AddPlain(LocatedText text, List<LocatedText> words)
    {
        foreach (var word in text.Words())
        {
            var start = 0;
            for (var at = 0; at <= word.Length; at++)
            {
                if (at < word.Length && word.Value[at] != '|') continue;
                if (at > start) words.Add(word.Slice(start, at - start));
                if (at < word.Length) words.Add(word.Slice(at, 1));
                start = at + 1;
            }
        }
    }
}
