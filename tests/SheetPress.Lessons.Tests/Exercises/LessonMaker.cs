using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons.Tests;

/// <summary>Makes small lessons for style tests without going through a file: "Cm7 | Fm7 Bb7 | N.C. | Ebmaj7".</summary>
internal static class LessonMaker
{
    private static readonly SourceText Source = new("test.yaml", "");

    public static Lesson Lesson(string progression, string key = "C minor", string instrument = "bass-4", int level = 2, Meter? meter = null)
    {
        var bars = progression.Split('|', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        return Lesson([.. bars.Select(b => (meter ?? new Meter(4, 4), b.Split(' ', StringSplitOptions.RemoveEmptyEntries)))], Key.Parse(key), InstrumentCatalogue.Find(instrument)!, level);
    }

    public static Lesson Lesson(ImmutableArray<(Meter Meter, string[] Chords)> bars, Key key, Instrument instrument, int level)
    {
        var measures = ImmutableArray.CreateBuilder<FrameMeasure>();
        var spans = ImmutableArray.CreateBuilder<ChordSpan>();
        var at = Fraction.Zero;
        foreach (var (meter, chords) in bars)
        {
            measures.Add(new FrameMeasure { Meter = meter, Key = key, Length = meter.MeasureLength });
            for (var i = 0; i < chords.Length; i++)
            {
                // In whole beats where there are enough of them, the earlier chords the longer ones.
                var each = meter.Beats >= chords.Length ? meter.UnitLength * ((meter.Beats / chords.Length) + (i < meter.Beats % chords.Length ? 1 : 0)) : meter.MeasureLength / chords.Length;
                var symbol = chords[i];
                var held = symbol == "%";
                var chord = symbol == "N.C." ? null : held ? spans[^1].Chord : Chord.Parse(symbol);
                spans.Add(new ChordSpan(at, each, chord, null, default) { Measure = measures.Count - 1, IsHeld = held });
                at += each;
            }
        }
        var analyses = HarmonicAnalysis.Analyze([.. spans.Select(s => s.Chord)], key);
        for (var i = 0; i < spans.Count; i++) spans[i] = spans[i] with { Analysis = analyses[i] };
        return new Lesson
        {
            Id = "test",
            Title = "Test",
            Key = key,
            Meter = bars[0].Meter,
            Tempo = new Tempo(90, new NoteValue(NoteBase.Quarter)),
            Instrument = instrument,
            Level = level,
            Progression = new Progression(measures.ToImmutable(), spans.ToImmutable()),
            Exercises = [],
            Source = Source,
        };
    }

    public static ExerciseRequest Request(string style, params (string Name, object Value)[] options)
    {
        var found = ExerciseStyles.Find(style) ?? throw new ArgumentException($"no style {style}");
        var values = ImmutableDictionary<string, OptionValue>.Empty;
        foreach (var (name, value) in options)
        {
            var declared = found.Options.Single(o => o.Name == name);
            var text = LocatedText.At(Convert.ToString(value, System.Globalization.CultureInfo.InvariantCulture)!, 0);
            values = values.Add(name, new OptionValue(text)
            {
                Number = value is int number ? number : 0,
                Flag = value is true,
                Degrees = declared.Type == OptionType.Degrees ? DegreesOf(text.Value) : [],
            });
        }
        return new ExerciseRequest { Style = found, Options = values, Span = default };
    }

    public static (Line Line, DiagnosticBag Diagnostics) Generate(Lesson lesson, ExerciseRequest request)
    {
        var diagnostics = new DiagnosticBag(Source);
        return (request.Style.Generate(new ExerciseContext(lesson, request, diagnostics)), diagnostics);
    }

    public static Line Generate(Lesson lesson, string style, params (string Name, object Value)[] options)
    {
        var (line, diagnostics) = Generate(lesson, Request(style, options));
        diagnostics.Items.ShouldBeEmpty();
        return line;
    }

    /// <summary>Pitches of the notes, bar by bar: "C2 Eb2 | F2".</summary>
    public static string Pitches(Lesson lesson, Line line) => Bars(lesson, line, n => string.Join('+', n.Tones.Select(t => t.Pitch)));

    /// <summary>Degrees of the notes, bar by bar: "R b3 | R".</summary>
    public static string Degrees(Lesson lesson, Line line) => Bars(lesson, line, n => string.Join('+', n.Tones.Select(t => t.Degree?.ToString() ?? "?")));

    /// <summary>Lengths of the notes in quarter notes, bar by bar: "1 1/2 | 4".</summary>
    public static string Lengths(Lesson lesson, Line line) => Bars(lesson, line, n => n.Duration.ToString());

    private static string Bars(Lesson lesson, Line line, Func<LineNote, string> text)
    {
        var bars = new List<string>();
        var start = Fraction.Zero;
        foreach (var measure in lesson.Progression.Measures)
        {
            var end = start + measure.Length;
            bars.Add(string.Join(' ', line.Notes.Where(n => n.Start >= start && n.Start < end).Select(text)));
            start = end;
        }
        return string.Join(" | ", bars);
    }

    private static ImmutableArray<DegreeRequest> DegreesOf(string text) =>
    [
        .. text.Split(' ').Select(w => w[0] == 'n' ? new DegreeRequest(Degree.Parse(w[1..]), true) : new DegreeRequest(Degree.Parse(w), Degree.Parse(w).Alteration != 0)),
    ];
}
