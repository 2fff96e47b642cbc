using BenchmarkDotNet.Attributes;
using SheetPress.Lessons;

namespace SheetPress.Benchmarks;

/// <summary>Generating and fingering sixteenths over 8, 32 and 128 bars: the time has to grow in line with the notes.</summary>
public class FingeringBenchmarks
{
    private Lesson _lesson = null!;

    [Params(8, 32, 128)]
    public int Bars { get; set; }

    [GlobalSetup]
    public void Setup()
    {
        string[] chords = ["Cm7", "Fm7", "Bb7", "Ebmaj7", "Abmaj7", "Dm7b5", "G7", "Cm7"];
        var progression = string.Join(" | ", Enumerable.Range(0, Bars).Select(i => chords[i % chords.Length]));
        var source = new SourceText("sixteenths.yaml", $"title: Sixteenths\nkey: C minor\nprogression: {progression}\nexercises:\n  - style: arpeggio\n    rhythm: sixteenths\n    direction: both\n");
        var bag = new DiagnosticBag(source);
        _lesson = LessonReader.Read(source, bag) ?? throw new InvalidOperationException(bag.Items[0].Message);
    }

    [Benchmark]
    public int GenerateAndFinger()
    {
        var request = _lesson.Exercises[0];
        var line = request.Style.Generate(new ExerciseContext(_lesson, request, new DiagnosticBag(_lesson.Source)));
        return LineFingering.Apply(line, _lesson.Instrument, request.Neck, _lesson.Level, [.. _lesson.Progression.Chords.Select(c => c.Start)]).Line.Notes.Length;
    }
}
