using System.Xml.Linq;
using SheetPress.Scores;

namespace SheetPress.Publishing.Tests.MusicXml;

/// <summary>Writes scores for a test and gives the document.</summary>
internal static class Written
{
    public static readonly MusicXmlHeader Header = new() { Title = "Studies", Subtitle = "for two hands", Author = "A. Teacher", Rights = "May be copied." };

    public static byte[] Bytes(Score score, MusicXmlHeader? header = null, int? number = null)
    {
        using var stream = new MemoryStream();
        MusicXmlWriter.WriteExercise(score, number, header ?? Header, stream);
        return stream.ToArray();
    }

    public static byte[] LessonBytes(IReadOnlyList<Score> scores, MusicXmlHeader? header = null)
    {
        using var stream = new MemoryStream();
        MusicXmlWriter.WriteLesson(scores, header ?? Header, stream);
        return stream.ToArray();
    }

    public static XDocument Exercise(Score score) => Read(Bytes(score));

    public static XDocument Exercise(string sample) => Exercise(SampleScores.Named(sample));

    public static XDocument Lesson(params Score[] scores) => Read(LessonBytes(scores));

    public static XDocument Read(byte[] bytes) => XDocument.Load(new MemoryStream(bytes));

    /// <summary>The measures of the only part.</summary>
    public static List<XElement> Measures(XDocument document) => [.. document.Root!.Elements("part").Single().Elements("measure")];

    /// <summary>The notes of a staff (all notes when the part has one staff).</summary>
    public static List<XElement> Notes(XContainer within, int staff = 1) =>
        [.. within.Descendants("note").Where(n => (int?)n.Element("staff") is null || (int)n.Element("staff")! == staff)];
}
