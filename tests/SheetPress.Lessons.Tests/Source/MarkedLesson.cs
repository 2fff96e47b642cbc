using System.Text;

namespace SheetPress.Lessons.Tests;

/// <summary>A lesson text in which « and » mark the places where findings are expected, in order.</summary>
internal sealed record MarkedLesson(string Text, IReadOnlyList<SourceSpan> Places)
{
    /// <summary>The smallest lesson without any finding; the tests change one thing in it.</summary>
    public const string Tiny = """
        title: Tiny
        key: C minor
        meter: 4/4
        progression: |
          Cm7 | Fm7 | G7 | Cm7 |
        exercises:
          - style: roots

        """;

    /// <summary>Takes the marks out.</summary>
    public static MarkedLesson Of(string marked)
    {
        var text = new StringBuilder();
        var places = new List<SourceSpan>();
        var start = -1;
        foreach (var sign in marked.ReplaceLineEndings("\n"))
        {
            if (sign == '«') start = text.Length;
            else if (sign == '»') places.Add(new SourceSpan(start, text.Length));
            else text.Append(sign);
        }
        return new MarkedLesson(text.ToString(), places);
    }

    /// <summary>The tiny lesson with one line replaced: the one that begins like the given text up to its colon, with all that is indented below it.</summary>
    public static string With(string entry)
    {
        var name = entry.Replace("«", "", StringComparison.Ordinal).Replace("»", "", StringComparison.Ordinal);
        name = name[..(name.IndexOf(':', StringComparison.Ordinal) + 1)];
        var lines = Tiny.ReplaceLineEndings("\n").Split('\n').ToList();
        var at = lines.FindIndex(l => l.StartsWith(name, StringComparison.Ordinal));
        if (at < 0) return Tiny.ReplaceLineEndings("\n") + entry + "\n";
        lines.RemoveAt(at);
        while (at < lines.Count && lines[at].StartsWith(' ')) lines.RemoveAt(at);
        lines.Insert(at, entry);
        return string.Join('\n', lines);
    }

    /// <summary>Reads a text as a lesson.</summary>
    public static (Lesson? Lesson, IReadOnlyList<Diagnostic> Findings) Read(string text, LessonOverrides? overrides = null)
    {
        var source = new SourceText("tiny.yaml", text);
        var bag = new DiagnosticBag(source);
        var lesson = LessonReader.Read(source, bag, overrides);
        return (lesson, bag.Sorted());
    }

    /// <summary>Reads a lesson that must be without errors.</summary>
    public static Lesson Good(string text, LessonOverrides? overrides = null)
    {
        var (lesson, findings) = Read(text, overrides);
        findings.Where(f => f.Severity == Severity.Error).Select(DiagnosticPrinter.Print).ShouldBeEmpty();
        return lesson.ShouldNotBeNull();
    }
}
