using BenchmarkDotNet.Attributes;
using SheetPress.Engraving;
using SheetPress.Lessons;
using SheetPress.Publishing;

namespace SheetPress.Benchmarks;

/// <summary>One lesson, stage by stage: what reading, engraving and each writer cost once warm.</summary>
[MemoryDiagnoser]
public class StageBenchmarks
{
    private string _path = "";
    private BuiltLesson _built = null!;
    private SheetDocument _document = null!;

    [GlobalSetup]
    public void Setup()
    {
        _path = DemoLessons.Paths.First(p => p.Contains("eight-bars", StringComparison.Ordinal));
        _built = DemoLessons.Build(_path);
        _document = DemoLessons.Compose(_built);
    }

    [Benchmark]
    public BuiltLesson ReadAndBuild() => DemoLessons.Build(_path);

    [Benchmark]
    public SheetDocument EngraveAndCompose() => DemoLessons.Compose(_built);

    [Benchmark(Baseline = true)]
    public long WritePdf()
    {
        using var stream = new MemoryStream();
        PdfWriter.Write(_document, stream);
        return stream.Length;
    }

    [Benchmark]
    public long WriteMusicXml()
    {
        using var stream = new MemoryStream();
        MusicXmlWriter.WriteLesson([.. _built.Exercises.Select(e => e.Score)], MusicXmlHeader.Of(_built.Lesson), stream);
        return stream.Length;
    }
}
