using SheetPress.Scores;

namespace SheetPress.Publishing.Tests.MusicXml;

/// <summary>Every file is valid against the schema of MusicXML 4.0 (W3C Music Notation Community Group).</summary>
public class SchemaTests
{
    public static TheoryData<string> Samples => [.. SampleScores.All.Select(s => s.Id)];

    [Theory]
    [MemberData(nameof(Samples))]
    public void An_exercise_is_valid(string sample) => MusicXmlSchema.Validate(Written.Exercise(sample), sample);

    [Theory]
    [MemberData(nameof(Samples))]
    public void The_sample_is_a_sound_score(string sample) => ScoreChecks.Run(SampleScores.Named(sample)).ShouldBeEmpty();

    [Fact]
    public void A_lesson_of_every_kind_of_exercise_is_valid() => MusicXmlSchema.Validate(Written.Lesson([.. SampleScores.All]), "lesson");

    [Fact]
    public void The_check_itself_finds_an_error()
    {
        var document = Written.Exercise("plain");
        document.Descendants("octave").First().Value = "high";
        MusicXmlSchema.ErrorsOf(document).ShouldNotBeEmpty();
    }
}
