using BenchmarkDotNet.Attributes;
using SheetPress.Publishing;
using SheetPress.Theory;

namespace SheetPress.Benchmarks;

/// <summary>All demo lessons in all twelve keys, to PDF and MusicXML in memory, on all cores. The result is pages, for pages a second.</summary>
[MemoryDiagnoser]
public class AllKeysBenchmarks
{
    [Benchmark]
    public int Pages()
    {
        var work = DemoLessons.Paths.SelectMany(p => Key.Twelve(DemoLessons.Build(p).Lesson.Key.Mode).Select(k => (p, k))).ToArray();
        var pages = 0;
        Parallel.ForEach(work, item =>
        {
            var built = DemoLessons.Build(item.p, item.k);
            var document = DemoLessons.Compose(built);
            using var stream = new MemoryStream();
            PdfWriter.Write(document, stream);
            MusicXmlWriter.WriteLesson([.. built.Exercises.Select(e => e.Score)], MusicXmlHeader.Of(built.Lesson), stream);
            Interlocked.Add(ref pages, document.Pages.Length);
        });
        return pages;
    }
}
