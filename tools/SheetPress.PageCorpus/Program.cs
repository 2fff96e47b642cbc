using System.Collections.Concurrent;
using System.Globalization;
using SheetPress.Engraving;
using SheetPress.Lessons;
using SheetPress.PageCorpus;
using SheetPress.Publishing;

// Typesets random lessons and looks over their systems and pages: dotnet run --project tools/SheetPress.PageCorpus -- [LESSONS] [FIRST]
const double margin = 15;
var lessons = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : 800;
var first = args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 1;
var (systems, pages, exercises, refused) = (0, 0, 0, 0);
var findings = new ConcurrentBag<(int Lesson, LintFinding Finding)>();
var problems = new ConcurrentDictionary<string, int>();
Parallel.For(first, first + lessons, number =>
{
    var source = new SourceText(string.Create(CultureInfo.InvariantCulture, $"lesson-{number}.yaml"), LessonWriter.Write(number));
    var bag = new DiagnosticBag(source);
    var lesson = LessonReader.Read(source, bag);
    foreach (var item in bag.Items) problems.AddOrUpdate(item.Code + ": " + item.Message, 1, (_, n) => n + 1);
    if (lesson is null) return;
    // An exercise that its style refuses for good reason (slap on a mandolin) is counted, not looked at.
    var built = LessonBuilder.Build(lesson, bag);
    Interlocked.Add(ref refused, lesson.Exercises.Length - built.Exercises.Length);
    Interlocked.Add(ref exercises, built.Exercises.Length);
    var style = PageStyle.Handout(number % 2 == 0 ? PaperSize.A4 : PaperSize.Letter);
    foreach (var exercise in built.Exercises)
    {
        var engraved = ScoreEngraver.Engrave(exercise.Score, style.TextWidth / style.StaffSpace, new EngravingOptions { StaffSpace = style.StaffSpace });
        Interlocked.Add(ref systems, engraved.Systems.Length);
        foreach (var system in engraved.Systems)
        {
            foreach (var finding in SystemLint.Check(system, style.StaffSpace)) findings.Add((number, finding));
        }
    }
    var document = SheetComposer.Compose(HandoutAssembler.Assemble(built, HandoutWording.English), style);
    Interlocked.Add(ref pages, document.Pages.Length);
    foreach (var finding in PageLint.Check(document, margin))
    {
        if (finding.Where.System < 0) findings.Add((number, finding));
    }
});

foreach (var (problem, count) in problems.OrderByDescending(p => p.Value)) Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{count} x {problem}"));
foreach (var (lesson, finding) in findings.OrderBy(f => f.Lesson).Take(60)) Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"lesson {lesson}: {finding}"));
Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{lessons} lessons, {exercises} exercises ({refused} refused), {systems} systems, {pages} pages"));
foreach (var rule in Enum.GetValues<LintRule>()) Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{rule}: {findings.Count(f => f.Finding.Rule == rule)}"));
return findings.IsEmpty && problems.IsEmpty ? 0 : 1;
