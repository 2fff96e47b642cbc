using System.Diagnostics;
using CsCheck;

namespace SheetPress.Lessons.Tests;

/// <summary>Lessons with slips in them: whatever is done to a lesson, reading ends, with a lesson or with errors that have a place.</summary>
public class MutationTests
{
    private static readonly string[] Lessons =
    [
        MarkedLesson.Tiny.ReplaceLineEndings("\n"),
        StarterLesson.Text("Mutations: 'one'"),
        .. Directory.GetFiles(RepositoryRoot.Combine("lesson-sources"), "*.yaml").Order(StringComparer.Ordinal).Select(File.ReadAllText),
    ];

    private static readonly string[] Pieces =
    [
        ":", ": ", "|", "||", "|:", ":|", "[", "]", "{", "}", "'", "\"", "\t", "\n", "\n\n", " ", "  ", "-", "- ", "#", " #", "&", "*", "!", "%", "@", "`", ">", ",", "?", "? ",
        "1.", "x3", "same", "hold", "N.C.", "V7/ii", "Cm7:3", ":0", ":99", "[pickup 1]", "[3/4]", "[key F minor]", "e3", "q.", "+", "rq", "(2)", "&", "\\", "\\u", "\r", "\0", "😀", "\uD800",
        "---", "...", "<<: ", "exercises:", "progression: |", "0", "9999999999", "-1", "é", "\u00a0", "null", "~", "|9", ">-", "!!int 1", "&a [*a]",
    ];

    private static readonly Gen<(int Kind, int At, int Length, int Piece)[]> Slips =
        Gen.Select(Gen.Int[0, 6], Gen.Int[0, 1_000_000], Gen.Int[1, 12], Gen.Int[0, Pieces.Length - 1]).Array[1, 6];

    [Fact]
    public void Reading_ends_well_after_any_slips()
    {
        Gen.Select(Gen.Int[0, Lessons.Length - 1], Slips).Sample((which, slips) =>
        {
            var text = slips.Aggregate(Lessons[which], (t, s) => Slip(t, s.Kind, s.At, s.Length, Pieces[s.Piece]));
            var watch = Stopwatch.StartNew();
            var (lesson, findings) = MarkedLesson.Read(text);
            watch.Elapsed.ShouldBeLessThan(TimeSpan.FromSeconds(10));
            if (lesson is null) findings.ShouldContain(f => f.Severity == Severity.Error);
            else CheckWhole(lesson);
            foreach (var finding in findings)
            {
                finding.Span.Start.ShouldBeInRange(0, text.Length);
                finding.Span.End.ShouldBeInRange(finding.Span.Start, text.Length);
                DiagnosticPrinter.Print(finding).ShouldStartWith("tiny.yaml:");
            }
        }, iter: 3000);
    }

    private static void CheckWhole(Lesson lesson)
    {
        ProgressionReaderTests.CheckWhole(lesson.Progression);
        lesson.Level.ShouldBeInRange(1, 5);
        foreach (var exercise in lesson.Exercises)
        {
            foreach (var n in exercise.Neck.Strings) n.ShouldBeInRange(1, lesson.Instrument.StringCount);
            if (exercise.Rhythm is { } rhythm) rhythm.Cells[^1].End.ShouldBe(rhythm.Length);
        }
    }

    private static string Slip(string text, int kind, int at, int length, string piece)
    {
        at = text.Length == 0 ? 0 : at % text.Length;
        length = Math.Min(length, text.Length - at);
        return kind switch
        {
            0 => text.Remove(at, Math.Min(1, length)),
            1 => text.Remove(at, length),
            2 => text.Insert(at, piece),
            3 => text.Insert(at, text.Substring(at, length)),
            4 => text.Remove(at, Math.Min(1, length)).Insert(at, piece),
            5 => OnLines(text, at, lines => lines.RemoveAt(at % lines.Count)),
            _ => OnLines(text, at, lines => lines.Insert(at % lines.Count, lines[at / 7 % lines.Count])),
        };
    }

    private static string OnLines(string text, int at, Action<List<string>> change)
    {
        var lines = text.Split('\n').ToList();
        change(lines);
        return string.Join('\n', lines);
    }
}
