using System.Collections.Immutable;
using System.Globalization;
using SheetPress.Engraving;
using SheetPress.Lessons;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Publishing;

/// <summary>Gathers what stands on the handout of a lesson.</summary>
public static class HandoutAssembler
{
    /// <summary>The content of the handout.</summary>
    public static HandoutContent Assemble(BuiltLesson built, HandoutWording wording)
    {
        var lesson = built.Lesson;
        var plan = PracticePlanner.Plan(built);
        return new HandoutContent
        {
            Title = lesson.Title,
            Subtitle = lesson.Subtitle,
            Author = lesson.Author,
            NameAndDate = lesson.Pages != PageKind.Book,
            Facts = Facts(lesson, wording),
            Harmony = HarmonyRows.For(lesson.Progression),
            TheoryNotes = TheoryNotes.For(lesson.Progression),
            TeacherNotes = lesson.Notes,
            Diagrams = DiagramAssembler.Assemble(built, wording),
            Exercises =
            [
                .. built.Exercises.Select((exercise, index) => new ExerciseContent
                {
                    Number = (index + 1).ToString(CultureInfo.InvariantCulture),
                    Score = exercise.Score,
                }),
            ],
            PracticePlan = plan,
            PracticeTotal = PracticePlanner.Total(plan),
            Caution = wording.Caution,
            Labels = lesson.Pages == PageKind.Book ? new SheetLabels { PageOf = "{0}" } : new SheetLabels(),
        };
    }

    private static ImmutableArray<FactItem> Facts(Lesson lesson, HandoutWording wording)
    {
        var facts = ImmutableArray.CreateBuilder<FactItem>();
        facts.Add(new(wording.Key, lesson.Key.ToDisplayString()));
        facts.Add(new(wording.Meter, lesson.Meter.ToString()));
        facts.Add(new(wording.Tempo, $"{BeatSign(lesson.Tempo.Beat)} = {lesson.Tempo.BeatsPerMinute.ToString("0.##", CultureInfo.InvariantCulture)}"));
        if (lesson.Feel != Feel.Straight) facts.Add(new(wording.Feel, wording.FeelName(lesson.Feel)));
        var tuning = HasOwnTuning(lesson.Instrument) ? string.Join(" ", lesson.Instrument.OpenStrings.Reverse().Select(p => p.Name.ToDisplayString())) : "";
        facts.Add(new(wording.Instrument, WithoutTuning(lesson.Instrument.Name, tuning)));
        if (tuning.Length > 0) facts.Add(new(wording.Tuning, tuning));
        if (lesson.Instrument.Capo > 0) facts.Add(new(wording.Capo, string.Format(CultureInfo.InvariantCulture, wording.CapoAt, lesson.Instrument.Capo)));
        facts.Add(new(wording.Level, string.Format(CultureInfo.InvariantCulture, wording.LevelOf, lesson.Level)));
        return facts.ToImmutable();
    }

    // Elsewhere an instrument is named with its tuning ("6-string guitar in D A D G B E"); here that stands beside it.
    private static string WithoutTuning(string name, string tuning) =>
        tuning.Length > 0 && name.EndsWith($" in {tuning}", StringComparison.Ordinal) ? name[..^(tuning.Length + " in ".Length)] : name;

    private static bool HasOwnTuning(Instrument instrument) =>
        InstrumentCatalogue.Find(instrument.Id) is not { } usual || !usual.OpenStrings.SequenceEqual(instrument.OpenStrings);

    // Signs the page takes from the music font: quarter and eighth note, a dot behind when dotted.
    private static string BeatSign(NoteValue beat)
    {
        var sign = beat.Base switch { NoteBase.Half => "\U0001D15E", NoteBase.Eighth => "♪", _ => "♩" };
        return beat.Dots > 0 ? sign + "." : sign;
    }
}
