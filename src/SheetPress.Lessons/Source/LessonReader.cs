using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Reads a lesson from its YAML source.</summary>
public static class LessonReader
{
    /// <summary>Entries that a lesson can have.</summary>
    internal static readonly string[] Names =
    [
        "title", "subtitle", "author", "key", "meter", "tempo", "feel", "instrument", "level", "progression", "notes", "exercises", "diagrams", "practice", "pages",
    ];

    private static readonly (string, Feel)[] Feels =
    [
        ("straight", Feel.Straight), ("swing", Feel.SwingEighths), ("swing-eighths", Feel.SwingEighths), ("shuffle", Feel.SwingEighths), ("swing-sixteenths", Feel.SwingSixteenths),
    ];

    /// <summary>Reads a lesson. All problems of the file are reported in one go.</summary>
    /// <param name="source">The text of the file.</param>
    /// <param name="bag">Where problems go.</param>
    /// <param name="overrides">What the run asks for in place of what the lesson says.</param>
    /// <param name="styles">The styles to choose from; null for the whole catalogue.</param>
    /// <returns>The lesson; null when there is any error.</returns>
    public static Lesson? Read(SourceText source, DiagnosticBag bag, LessonOverrides? overrides = null, IReadOnlyList<ExerciseStyle>? styles = null)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(bag);
        if (!SourceGuard.IsReadable(source, bag)) return null;
        if (YamlTreeReader.Read(source, bag) is not { } root) return null;
        var lesson = new Pass(source, bag, overrides ?? LessonOverrides.None, styles ?? ExerciseStyles.All).Read(root);
        return bag.HasErrors ? null : lesson;
    }

    /// <summary>One reading of one lesson.</summary>
    private sealed class Pass(SourceText source, DiagnosticBag bag, LessonOverrides overrides, IReadOnlyList<ExerciseStyle> styles)
    {
        // What stands in for a missing or faulty entry while the rest is checked.
        private static readonly Key AnyKey = new(new NoteName(Letter.C), Mode.Major);
        private static readonly Meter AnyMeter = new(4, 4);

        public Lesson? Read(MappingNode root)
        {
            var fields = new FieldReader(root, Names, "a lesson", bag);
            var top = new SourceSpan(0, 0);
            fields.Require("title", FieldProblems.MissingEntry("title", "title: Round the cycle"), top);
            fields.Require("key", FieldProblems.MissingEntry("key", "key: C minor"), top);
            fields.Require("progression", FieldProblems.MissingEntry("progression", "progression: Cm7 | Fm7 | G7 | Cm7"), top);
            fields.Require("exercises", ExerciseProblems.NoExercises(), top);

            var written = fields.Text("key") is { } keyText ? KeyReader.Read(keyText, bag) ?? AnyKey : AnyKey;
            var key = overrides.Key is { } wanted ? Key.Nearest(wanted.Tonic, written.Mode) : written;
            var rekeying = new KeyTransposition(written, key);
            var meter = fields.Text("meter") is { } meterText ? MeterReader.Read(meterText, bag) ?? AnyMeter : AnyMeter;
            var tempo = fields.Text("tempo") is { } tempoText ? TempoReader.Read(tempoText, meter, bag) : null;
            var own = fields.Node("instrument") is { } node ? new InstrumentReader(bag).Read(node) : null;
            own ??= InstrumentCatalogue.All[0];
            var instrument = Override(own);
            var isOther = instrument != own;

            var progressionText = fields.Progression("progression");
            if (progressionText is null && root.IsComplete && fields.Node("progression") is ScalarNode empty) bag.Add(empty.Span, ProgressionProblems.NoBars());
            var progression = progressionText is null ? null : ProgressionReader.Read(progressionText, key, meter, rekeying, bag);
            if (tempo is not null && progression?.Tempo is not null) bag.Add(fields.Text("tempo")!.Span, ProgressionProblems.TempoTwice());
            var exercisesStart = fields.Node("exercises")?.Span.Start ?? int.MaxValue;
            var isFrameSound = !bag.Items.Any(d => d.Severity == Severity.Error && d.Span.Start < exercisesStart);
            var reader = new ExerciseReader(styles, meter, (other, problems) => progressionText is null ? null : ProgressionReader.Read(progressionText, key, other, rekeying, problems), own, bag);
            var exercises = fields.Node("exercises") is { } list ? reader.Read(list) : [];
            var exerciseCount = fields.Node("exercises") is SequenceNode items ? items.Items.Length : 0;
            var around = new DiagramSurroundings(key, rekeying, own, exerciseCount, progression?.Measures.Length ?? 0);
            var diagrams = fields.Node("diagrams") is { } diagramNode ? new DiagramReader(around, bag).Read(diagramNode) : [];
            var practice = fields.Node("practice") is { } practiceNode ? new PracticeReader(exerciseCount, bag).Read(practiceNode) : [];

            var title = fields.Line("title", 120);
            var subtitle = fields.Line("subtitle", 160);
            var author = fields.Line("author", 120);
            var feel = fields.Choice("feel", Feels) ?? Feel.Straight;
            var level = fields.Number("level", 1, 5) ?? 2;
            var pages = fields.Choice("pages", PageKinds.Words) ?? PageKind.Handout;
            var notes = fields.JoinedText("notes", '\n')?.Value.TrimEnd() ?? "";
            if (progression is null || title is null) return null;
            var lesson = new Lesson
            {
                Id = LessonFiles.IdOf(source.Path),
                Title = title,
                Subtitle = subtitle ?? "",
                Author = author ?? "",
                Key = key,
                Meter = meter,
                Tempo = tempo ?? progression.Tempo ?? new Tempo(80, TempoReader.BeatOf(meter)),
                Feel = feel,
                Instrument = instrument,
                WrittenFor = own,
                Level = level,
                Progression = progression,
                Transposition = rekeying.Interval,
                Notes = MarkupRekeyer.Move(notes, rekeying),
                Exercises = isOther ? [.. exercises.Select(e => e.Instrument is null ? e with { Neck = e.Neck.FitTo(instrument) } : e)] : exercises,
                Diagrams = isOther ? DiagramFitting.To(instrument, diagrams) : diagrams,
                HasOwnDiagrams = fields.IsGiven("diagrams"),
                PracticePlan = practice,
                HasOwnPracticePlan = fields.IsGiven("practice"),
                Pages = overrides.Pages ?? pages,
                Source = source,
            };
            if (isFrameSound && bag.HasErrors) TryOut(lesson, reader.Sound);
            return lesson;
        }

        // Where something else keeps the lesson from being built, its sound exercises are tried all the same, so that one run shows what is wrong in their lines too.
        private void TryOut(Lesson lesson, IReadOnlyList<ExerciseRequest> exercises)
        {
            foreach (var request in exercises)
            {
                var context = new ExerciseContext(ExerciseFrame.Of(lesson, request), request, bag);
                request.Style.Generate(context);
                request.Style.GenerateLower(context);
            }
        }

        private Instrument Override(Instrument own)
        {
            if (overrides.InstrumentId is not { } id || id == own.Id) return own;
            if (InstrumentCatalogue.Find(id) is { } other) return other;
            bag.Add(new SourceSpan(0, 0), InstrumentReader.Unknown(id));
            return own;
        }
    }
}
