using System.Collections.Concurrent;
using System.Globalization;
using SheetPress.Engraving;
using SheetPress.Lessons;
using SheetPress.PageCorpus;
using SheetPress.Publishing;
using SheetPress.Scores;

// Typesets lessons and looks over their pages: dotnet run --project tools/SheetPress.PageCorpus -- [repertoire] [LESSONS] [FIRST] [FOLDER]
// The lessons are random ones; with "repertoire", every style over the forms that songs are made of, with the scores checked as well.
// With a folder the pages of lessons with findings (of all when LESSONS is below 20) are written there as PNG, and the lessons.
const double margin = 15;
const int fewLessons = 20;
var repertoire = args is ["repertoire", ..];
if (repertoire) args = args[1..];
var lessons = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : repertoire ? RepertoireLesson.Count : 800;
var first = args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 1;
var folder = args.Length > 2 ? Directory.CreateDirectory(args[2]).FullName : null;
var (systems, pages, exercises, faults) = (0, 0, 0, 0);
var findings = new ConcurrentBag<(int Lesson, LintFinding Finding)>();
var problems = new ConcurrentDictionary<string, int>();
Parallel.For(first, first + lessons, number =>
{
    try
    {
        LookOver(number);
    }
    catch (Exception e) when (e is ArgumentException or InvalidOperationException or IndexOutOfRangeException or NullReferenceException or KeyNotFoundException)
    {
        problems.AddOrUpdate(string.Create(CultureInfo.InvariantCulture, $"lesson {number}: {e}"), 1, (_, n) => n + 1);
        Interlocked.Increment(ref faults);
    }
});

foreach (var (problem, count) in problems.OrderByDescending(p => p.Value)) Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{count} x {problem}"));
foreach (var (lesson, finding) in findings.OrderBy(f => f.Lesson)) Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"lesson {lesson}: {finding} @{finding.Place.Left:0.0},{finding.Place.Top:0.0}"));
Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{lessons} lessons, {exercises} exercises, {systems} systems, {pages} pages, {faults} faults of the program"));
foreach (var rule in Enum.GetValues<LintRule>()) Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{rule}: {findings.Count(f => f.Finding.Rule == rule)}"));
return findings.IsEmpty && faults == 0 ? 0 : 1;

void LookOver(int number)
{
    var random = new LessonWriter(number);
    var source = new SourceText(string.Create(CultureInfo.InvariantCulture, $"lesson-{number}.yaml"), repertoire ? RepertoireLesson.Write(number) : random.Text);
    if (folder is not null) File.WriteAllText(Path.Combine(folder, source.Path), source.Text);
    var bag = new DiagnosticBag(source);
    var lesson = LessonReader.Read(source, bag);
    var built = lesson is null ? null : LessonBuilder.Build(lesson, bag);
    foreach (var item in bag.Items) problems.AddOrUpdate(repertoire && item.Severity == Severity.Error ? $"{item.Code}: {item.Message}" : item.Code, 1, (_, n) => n + 1);
    if (lesson is null || built is null) return;
    // An exercise that its style refuses for good reason (slap on a mandolin) is reported among the problems, not looked at.
    foreach (var exercise in built.Exercises)
    {
        foreach (var finding in ScoreChecks.Run(exercise.Score)) problems.AddOrUpdate($"lesson {number}, {exercise.Request.Style.Name}: {finding}", 1, (_, n) => n + 1);
    }
    Interlocked.Add(ref exercises, built.Exercises.Length);
    var content = HandoutAssembler.Assemble(built, HandoutWording.English);
    var document = SheetComposer.Compose(content, random.Style);
    var found = SheetLint.Check(content, random.Style, margin);
    foreach (var finding in found) findings.Add((number, finding));
    Interlocked.Add(ref pages, document.Pages.Length);
    foreach (var exercise in content.Exercises) Interlocked.Add(ref systems, ScoreEngraver.Engrave(exercise.Score, random.Style.TextWidth / random.Style.StaffSpace, new EngravingOptions { StaffSpace = random.Style.StaffSpace }).Systems.Length);
    if (folder is null || (found.IsEmpty && lessons >= fewLessons)) return;
    for (var i = 0; i < document.Pages.Length; i++)
    {
        using var file = File.Create(Path.Combine(folder, string.Create(CultureInfo.InvariantCulture, $"lesson-{number}-page-{i + 1}.png")));
        PngWriter.Write(document.Pages[i], file, 220);
    }
}
