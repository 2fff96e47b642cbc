using SheetPress.Scores;

namespace SheetPress.Engraving.Tests;

public class StringGaugeTests
{
    [Fact]
    public void Strings_of_a_bass_stand_as_a_usual_set_does()
    {
        // Common practice, from memory: a medium set for four-string bass is 45 65 85 105 thousandths of an inch.
        var bass = InstrumentCatalogue.Find("bass-4")!;
        double[] set = [45, 65, 85, 105];
        for (var s = 1; s <= 4; s++)
        {
            (StringGauge.Thickness(bass, s) / StringGauge.Thickness(bass, 4)).ShouldBe(set[s - 1] / set[3], 0.1);
        }
    }

    [Fact]
    public void Every_string_of_every_instrument_can_be_seen()
    {
        foreach (var instrument in InstrumentCatalogue.All)
        {
            for (var s = 1; s <= instrument.StringCount; s++) StringGauge.Thickness(instrument, s).ShouldBeInRange(0.15, 0.7);
        }
    }
}
