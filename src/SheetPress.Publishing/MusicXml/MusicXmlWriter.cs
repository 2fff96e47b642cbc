using SheetPress.Scores;

namespace SheetPress.Publishing;

/// <summary>
/// Writes scores as MusicXML 4.0 (W3C Music Notation Community Group): UTF-8 without a byte-order mark, lines ended by LF,
/// the same bytes for the same input. Decisions and what readers make of them are in README.md of this folder.
/// </summary>
public static class MusicXmlWriter
{
    /// <summary>Writes all exercises of a lesson one after another in one part; each starts a new system under its title.</summary>
    /// <param name="scores">The exercises in order; at least one.</param>
    /// <param name="header">What the file says about itself.</param>
    /// <param name="output">Where to write; it stays open.</param>
    /// <exception cref="ArgumentException">There is no exercise.</exception>
    public static void WriteLesson(IReadOnlyList<Score> scores, MusicXmlHeader header, Stream output)
    {
        if (scores.Count == 0) throw new ArgumentException("A lesson file needs at least one exercise.", nameof(scores));
        var words = new TitleWords(header.Title, header.Subtitle, MovementTitle: null, MovementNumber: null);
        Write(scores, header, words, titled: true, output);
    }

    /// <summary>Writes one exercise as a file of its own: its title on top, the lesson's title beneath.</summary>
    /// <param name="score">The exercise.</param>
    /// <param name="number">Its number in the lesson, from 1; null when it stands alone.</param>
    /// <param name="header">What the file says about itself; the title is the lesson's.</param>
    /// <param name="output">Where to write; it stays open.</param>
    public static void WriteExercise(Score score, int? number, MusicXmlHeader header, Stream output)
    {
        var words = new TitleWords(header.Title, header.Title, score.Title, number);
        Write([score], header, words, titled: false, output);
    }

    private static void Write(IReadOnlyList<Score> scores, MusicXmlHeader header, TitleWords words, bool titled, Stream output)
    {
        var instruments = PartInstruments.Of(scores);
        using var xml = new XmlOutput(output);
        xml.Open("score-partwise", ("version", "4.0"));
        DocumentHead.Write(xml, header, words, instruments);
        new PartWriter(xml, scores, instruments, titled).Write();
        xml.Close();
    }
}
