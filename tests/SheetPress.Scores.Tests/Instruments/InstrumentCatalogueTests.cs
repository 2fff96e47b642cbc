namespace SheetPress.Scores.Tests;

public class InstrumentCatalogueTests
{
    // Usual tunings as MIDI numbers from string 1 on; bass and guitar from the check values of the project (common practice), the others from memory.
    [Theory]
    [InlineData("bass-4", "43 38 33 28")]
    [InlineData("bass-5", "43 38 33 28 23")]
    [InlineData("bass-6", "48 43 38 33 28 23")]
    [InlineData("guitar-6", "64 59 55 50 45 40")]
    [InlineData("guitar-7", "64 59 55 50 45 40 35")]
    [InlineData("ukulele", "69 64 60 67")]
    [InlineData("mandolin", "76 69 62 55")]
    [InlineData("tenor-banjo", "69 62 55 48")]
    public void Tunings_are_the_usual_ones(string id, string expected) =>
        string.Join(' ', InstrumentCatalogue.Find(id)!.OpenStrings.Select(p => p.MidiNumber)).ShouldBe(expected);

    [Fact]
    public void Every_instrument_is_valid_and_found_by_its_name()
    {
        InstrumentCatalogue.All.Select(i => i.Id).ShouldBeUnique();
        foreach (var instrument in InstrumentCatalogue.All)
        {
            InstrumentChecks.Run(instrument).ShouldBeEmpty();
            InstrumentCatalogue.Find(instrument.Id).ShouldBeSameAs(instrument);
        }
        InstrumentCatalogue.Find("spoons").ShouldBeNull();
    }

    // Bass and guitar are written an octave higher than they sound (check values, common practice); the tenor banjo too (from memory).
    [Theory]
    [InlineData("bass-4", "E1", "E2")]
    [InlineData("guitar-6", "E2", "E3")]
    [InlineData("tenor-banjo", "C3", "C4")]
    [InlineData("mandolin", "G3", "G3")]
    [InlineData("ukulele", "C4", "C4")]
    public void Written_pitch_of_the_low_string(string id, string sounding, string written) =>
        InstrumentCatalogue.Find(id)!.ToWritten(Theory.Pitch.Parse(sounding)).ToString().ShouldBe(written);

    // General MIDI level 1, programs counted from 1.
    [Theory]
    [InlineData("bass-4", 34)]
    [InlineData("guitar-6", 26)]
    [InlineData("ukulele", 25)]
    [InlineData("tenor-banjo", 106)]
    public void Programs_of_general_midi(string id, int program) => InstrumentCatalogue.Find(id)!.MidiProgram.ShouldBe(program);

    // Equal temperament: the 12th fret is at half the scale, the 5th at L * (1 - 2^(-5/12)); 34 inches are 863.6 mm (check values).
    [Fact]
    public void Frets_lie_in_equal_temperament()
    {
        var bass = InstrumentCatalogue.Find("bass-4")!;
        bass.ScaleLength.ShouldBe(34 * 25.4, 1e-9);
        bass.FretDistance(0).ShouldBe(0);
        bass.FretDistance(12).ShouldBe(431.8, 1e-9);
        bass.FretDistance(5).ShouldBe(863.6 * (1 - 0.7491535384383408), 1e-9);
    }
}
