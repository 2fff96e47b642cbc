using SheetPress.Scores;

namespace SheetPress.Lessons.Tests;

/// <summary>What the guide for authors says, tried out; and the demo lessons beside it.</summary>
public class GuideTests
{
    private static readonly string[] Lines = File.ReadAllLines(RepositoryRoot.Combine("lesson-sources", "README.md"));

    private static IEnumerable<string[]> Rows(string heading) => Lines
        .SkipWhile(l => l != heading).Skip(1).SkipWhile(l => !l.StartsWith("| ---", StringComparison.Ordinal)).Skip(1).TakeWhile(l => l.StartsWith('|'))
        .Select(l => l.Replace("\\|", "¦", StringComparison.Ordinal).Trim('|').Split('|').Select(c => c.Replace('¦', '|').Trim()).ToArray());

    private static string Code(string cell) => cell.Split('`')[1];

    public static IEnumerable<TheoryDataRow<string>> Progressions() => Rows("## Progression").Select(r => new TheoryDataRow<string>(Code(r[0])));

    [Theory]
    [MemberData(nameof(Progressions))]
    public void Progressions_read_without_a_finding(string written) =>
        MarkedLesson.Read(MarkedLesson.With("progression: |\n  " + written)).Findings.Select(DiagnosticPrinter.Print).ShouldBeEmpty();

    public static IEnumerable<TheoryDataRow<string>> Rhythms() => Rows("### Rhythm as note values").Select(r => new TheoryDataRow<string>(Code(r[0])));

    [Theory]
    [MemberData(nameof(Rhythms))]
    public void Rhythms_read_without_a_finding(string written) => MarkedLesson.Good(MarkedLesson.With("exercises:\n  - style: roots\n    rhythm: " + written)).Exercises[0].Rhythm.ShouldNotBeNull();

    public static IEnumerable<TheoryDataRow<string, string>> Counts() => Rows("### Rhythm as it is counted").Select(r => new TheoryDataRow<string, string>(Code(r[0]), r[1]));

    [Theory]
    [MemberData(nameof(Counts))]
    public void Counts_read_without_a_finding(string written, string meter)
    {
        var text = MarkedLesson.With("meter: " + meter).Replace("- style: roots", "- style: roots\n    count: " + written, StringComparison.Ordinal);
        MarkedLesson.Good(text).Exercises[0].Rhythm.ShouldNotBeNull();
    }

    [Fact]
    public void Blocks_read_without_a_finding()
    {
        var blocks = string.Join('\n', Lines).Split("```yaml\n").Skip(1).Select(b => b[..b.IndexOf("```", StringComparison.Ordinal)].TrimEnd()).ToArray();
        blocks.Length.ShouldBe(8);
        foreach (var block in blocks)
        {
            if (block.Contains("\nlines:", StringComparison.Ordinal))
            {
                var source = new SourceText("bounce.yaml", block);
                var bag = new DiagnosticBag(source);
                new PatternReader(bag).Read(source).ShouldNotBeNull();
                bag.Items.ShouldBeEmpty();
                continue;
            }
            var text = MarkedLesson.With(block);
            // A shape on string 4 is meant for a bass, a tuning of six strings brings its own.
            MarkedLesson.Read(text).Findings.Select(DiagnosticPrinter.Print).ShouldBeEmpty(block);
        }
    }

    [Fact]
    public void Names_every_entry_and_every_mark()
    {
        string[] Named(string heading) => [.. Rows(heading).SelectMany(r => r[0].Split('`').Where((_, i) => i % 2 == 1))];
        Named("## The entries").ShouldBe(LessonReader.Names, ignoreOrder: true);
        Named("## Exercises").Append("style").ShouldBe(ExerciseReader.CommonNames, ignoreOrder: true);
        var all = string.Join(' ', Lines);
        foreach (var (word, _) in MarkWords.All) all.ShouldContain(word);
        foreach (var instrument in InstrumentCatalogue.All) all.ShouldContain($"`{instrument.Id}`");
    }

    public static IEnumerable<TheoryDataRow<string>> Demos() =>
        LessonFiles.Find([RepositoryRoot.Combine("lesson-sources")]).Paths.Select(p => new TheoryDataRow<string>(Path.GetFileName(p)));

    [Theory]
    [MemberData(nameof(Demos))]
    public void Demo_lessons_build_without_a_finding_in_all_keys(string name)
    {
        var (source, _) = LessonFiles.Load(RepositoryRoot.Combine("lesson-sources", name));
        foreach (var key in SheetPress.Theory.Key.Twelve(SheetPress.Theory.Mode.Major).Select(k => (SheetPress.Theory.Key?)k).Prepend(null))
        {
            var bag = new DiagnosticBag(source);
            var lesson = LessonReader.Read(source, bag, new LessonOverrides { Key = key }).ShouldNotBeNull();
            var built = LessonBuilder.Build(lesson, bag);
            bag.Items.Select(DiagnosticPrinter.Print).ShouldBeEmpty();
            built.Exercises.Length.ShouldBe(lesson.Exercises.Length);
        }
    }

    [Fact]
    public void Demo_lessons_cover_what_they_are_for()
    {
        var lessons = LessonFiles.Find([RepositoryRoot.Combine("lesson-sources")]).Paths.Select(p => MarkedLesson.Good(LessonFiles.Load(p).Source.Text)).ToArray();
        string[] first = ["roots", "root-octave", "tone-cell", "arpeggio", "scale-run", "octave-run", "walking-line", "own-line"];
        first.Except(lessons.SelectMany(l => l.Exercises).Select(e => e.Style.Name)).ShouldBeEmpty();
        lessons.Select(l => l.Instrument.Family).Distinct().ShouldBe([InstrumentFamily.Bass, InstrumentFamily.Guitar], ignoreOrder: true);
        lessons.Select(l => l.Meter.ToString()).Distinct().ShouldBe(["4/4", "3/4", "6/8", "5/4", "7/8"], ignoreOrder: true);
        lessons.Select(l => l.Key.Mode).ShouldContain(SheetPress.Theory.Mode.Major);
        lessons.Select(l => l.Key.Mode).ShouldContain(SheetPress.Theory.Mode.Minor);
        lessons.Select(l => l.Key.Mode).ShouldContain(SheetPress.Theory.Mode.Dorian);
        lessons.ShouldContain(l => l.Feel == Feel.SwingEighths);
        lessons.ShouldContain(l => l.Progression.Measures.Any(m => !m.EndingStart.IsEmpty));
    }
}
