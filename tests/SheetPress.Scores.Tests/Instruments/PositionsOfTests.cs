using CsCheck;

namespace SheetPress.Scores.Tests;

public class PositionsOfTests
{
    // On strings tuned in fourths a pitch lies five frets higher on the next lower string (common practice).
    [Fact]
    public void A_pitch_lies_five_frets_higher_on_each_lower_string() =>
        InstrumentCatalogue.Find("bass-4")!.PositionsOf(43).ShouldBe([new(1, 0), new(2, 5), new(3, 10), new(4, 15)]);

    [Fact]
    public void A_capo_raises_every_string_and_shortens_the_neck()
    {
        var guitar = InstrumentCatalogue.Find("guitar-6")! with { Capo = 3 };
        guitar.PositionsOf(40).ShouldBeEmpty();
        guitar.PositionsOf(43).ShouldBe([new(6, 0)]);
        guitar.PositionsOf(guitar.HighestMidiNumber).ShouldBe([new(1, 19)]);
    }

    [Fact]
    public void A_re_entrant_string_is_found_among_the_others() =>
        InstrumentCatalogue.Find("ukulele")!.PositionsOf(67).ShouldBe([new(2, 3), new(3, 7), new(4, 0)]);

    [Fact]
    public void All_places_of_the_neck_and_no_others_are_listed() => (
        from instrument in Gen.Int[0, InstrumentCatalogue.All.Length - 1]
        from capo in Gen.Int[0, 5]
        select InstrumentCatalogue.All[instrument] with { Capo = capo }).Sample(instrument =>
    {
        var listed = 0;
        for (var midi = instrument.LowestMidiNumber - 2; midi <= instrument.HighestMidiNumber + 2; midi++)
        {
            foreach (var place in instrument.PositionsOf(midi))
            {
                listed++;
                instrument.MidiNumberAt(place.String, place.Fret).ShouldBe(midi);
                place.Fret.ShouldBeInRange(0, instrument.PlayableFrets);
            }
        }
        listed.ShouldBe(instrument.StringCount * (instrument.PlayableFrets + 1));
    });
}
