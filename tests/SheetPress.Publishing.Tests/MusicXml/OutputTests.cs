using System.Globalization;
using System.Text;
using SheetPress.Scores;

namespace SheetPress.Publishing.Tests.MusicXml;

/// <summary>The bytes: what any reader can take, and the same each time.</summary>
public class OutputTests
{
    [Fact]
    public void It_is_utf_8_without_a_mark_and_ends_lines_with_lf()
    {
        var bytes = Written.LessonBytes(SampleScores.All);
        Encoding.ASCII.GetString(bytes, 0, 38).ShouldBe("<?xml version=\"1.0\" encoding=\"utf-8\"?>");
        bytes.ShouldNotContain((byte)'\r');
        bytes[^1].ShouldBe((byte)'\n');
        new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes).ShouldContain("♭3");
    }

    [Fact]
    public void Lines_end_with_lf_whatever_the_texts_hold()
    {
        var score = SampleScores.Named("plain") with { Title = "One\r\ntwo\rthree", Instruction = "four\r\nfive" };
        Written.Bytes(score).ShouldNotContain((byte)'\r');
        Written.Exercise(score).Descendants().Select(e => e.Value).ShouldContain("One\ntwo\nthree");
    }

    [Fact]
    public void The_markup_of_an_instruction_becomes_plain_words()
    {
        var score = SampleScores.Named("plain") with { Instruction = "Hear the {b3} of [Bbm7b5]\nin **every** bar of [the page](https://example.org)." };
        Written.Exercise(score).Descendants("words").First().Value.ShouldBe("Hear the ♭3 of B♭m7♭5 in every bar of the page.");
    }

    [Fact]
    public void It_is_the_same_each_time_and_in_every_culture()
    {
        var expected = Written.LessonBytes(SampleScores.All);
        Written.LessonBytes(SampleScores.All).ShouldBe(expected);
        var culture = CultureInfo.CurrentCulture;
        try
        {
            // A culture with its own signs for minus and decimals, as some have.
            var other = (CultureInfo)CultureInfo.InvariantCulture.Clone();
            other.NumberFormat.NegativeSign = "\u2212";
            other.NumberFormat.NumberDecimalSeparator = ",";
            CultureInfo.CurrentCulture = other;
            Written.LessonBytes(SampleScores.All).ShouldBe(expected);
        }
        finally
        {
            CultureInfo.CurrentCulture = culture;
        }
    }

    [Fact]
    public void Characters_that_xml_cannot_hold_are_left_out()
    {
        var score = SampleScores.Named("plain") with { Title = "A\u0001B\uD83C\uDFB8C\uDC00D & <E> \"F\"" };
        Written.Exercise(score).Descendants("movement-title").Single().Value.ShouldBe("AB\uD83C\uDFB8CD & <E> \"F\"");
    }

    [Fact]
    public void The_stream_stays_open()
    {
        using var stream = new MemoryStream();
        MusicXmlWriter.WriteExercise(SampleScores.Named("plain"), 2, Written.Header, stream);
        stream.CanWrite.ShouldBeTrue();
    }

    [Fact]
    public void A_lesson_without_exercises_is_refused() =>
        Should.Throw<ArgumentException>(() => Written.LessonBytes([]));
}
