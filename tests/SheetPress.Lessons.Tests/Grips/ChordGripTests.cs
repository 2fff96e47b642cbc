using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons.Tests;

public class ChordGripTests
{
    // Common practice: the first chords of every guitar method, the movable forms with a barre, and usual fingers for them.
    [Theory]
    [InlineData("C", "x32010", "32010")]
    [InlineData("A", "x02220", "01230")]
    [InlineData("G", "320003", "210003")]
    [InlineData("E", "022100", "023100")]
    [InlineData("D", "xx0232", "0132")]
    [InlineData("Am", "x02210", "02310")]
    [InlineData("Em", "022000", "023000")]
    [InlineData("Dm", "xx0231", "0231")]
    [InlineData("F", "133211", "134211")]
    [InlineData("F#m", "244222", "134111")]
    [InlineData("Gm", "355333", "134111")]
    [InlineData("Ab", "466544", "134211")]
    [InlineData("Fm7", "131111", "131111")]
    [InlineData("F7", "131211", "131211")]
    [InlineData("Bm", "x24432", "13421")]
    [InlineData("Bb", "x13331", "12341")]
    [InlineData("Cm", "x35543", "13421")]
    [InlineData("Cm7", "x35343", "13121")]
    [InlineData("Bb7", "x13131", "13141")]
    [InlineData("A7", "x02020", "02030")]
    [InlineData("E7", "020100", "020100")]
    [InlineData("D7", "xx0212", "0213")]
    [InlineData("G7", "320001", "320001")]
    [InlineData("C7", "x32310", "32410")]
    [InlineData("Am7", "x02010", "02010")]
    [InlineData("Dm7", "xx0211", "0211")]
    [InlineData("Cmaj7", "x32000", "32000")]
    [InlineData("Fmaj7", "xx3210", "3210")]
    [InlineData("Esus4", "022200", "012300")]
    [InlineData("Bm7b5", "x2323x", "1213")]
    [InlineData("Cdim7", "x3424x", "2314")]
    [InlineData("C/G", "332010", "342010")]
    [InlineData("A5", "x022xx", "023")]
    public void The_usual_guitar_grips_come_first(string symbol, string shape, string fingers)
    {
        var grip = First("guitar-6", symbol);
        grip.Shorthand(6).ShouldBe(shape);
        string.Concat(grip.Fingers).ShouldBe(fingers);
    }

    // Common practice: first chords on a ukulele tuned G4 C4 E4 A4.
    [Theory]
    [InlineData("C", "0003")]
    [InlineData("F", "2010")]
    [InlineData("G", "0232")]
    [InlineData("Am", "2000")]
    [InlineData("Dm", "2210")]
    [InlineData("D", "2220")]
    [InlineData("A", "2100")]
    [InlineData("G7", "0212")]
    [InlineData("C7", "0001")]
    [InlineData("A7", "0100")]
    [InlineData("E7", "1202")]
    [InlineData("Bb", "3211")]
    [InlineData("Gm", "0231")]
    [InlineData("Am7", "0000")]
    public void The_usual_ukulele_grips_come_first(string symbol, string shape) => First("ukulele", symbol).Shorthand(4).ShouldBe(shape);

    // Common practice: first chords on a mandolin tuned in fifths from G3.
    [Theory]
    [InlineData("G", "0023")]
    [InlineData("C", "0230")]
    [InlineData("D", "2002")]
    public void The_usual_mandolin_grips_come_first(string symbol, string shape) => First("mandolin", symbol).Shorthand(4).ShouldBe(shape);

    // Common practice: the first year avoids long barres where a smaller grip says the same.
    [Fact]
    public void Barres_are_dearer_in_the_first_months() => First("guitar-6", "F", level: 1).Shorthand(6).ShouldBe("xx3211");

    [Fact]
    public void Every_quality_on_every_root_has_a_grip_that_one_hand_holds()
    {
        foreach (var instrument in InstrumentCatalogue.All.Where(i => i.Family != InstrumentFamily.Bass))
        {
            var hand = new HandModel(instrument);
            var finder = new ChordGripFinder(instrument, new NeckRequest(), level: 3);
            foreach (var quality in ChordQualities.All)
            {
                foreach (var root in (string[])["C", "F#", "Bb"])
                {
                    var chord = new Chord(NoteName.Parse(root), quality);
                    var grips = finder.Find(chord, 9);
                    grips.ShouldNotBeEmpty($"{chord} on {instrument.Id}");
                    foreach (var grip in grips.Take(5)) ShouldBeHeld(grip, chord, instrument, hand);
                }
            }
        }
    }

    private static ChordGrip First(string instrument, string symbol, int level = 3) =>
        new ChordGripFinder(InstrumentCatalogue.Find(instrument)!, new NeckRequest(), level).Find(Chord.Parse(symbol), 9)[0];

    private static void ShouldBeHeld(ChordGrip grip, Chord chord, Instrument instrument, HandModel hand)
    {
        var what = $"{chord} as {grip.Shorthand(instrument.StringCount)} on {instrument.Id}";
        grip.Places.Select(p => p.String).ShouldBeUnique(what);
        for (var i = 0; i < grip.Places.Length; i++)
        {
            var place = grip.Places[i];
            var sound = instrument.MidiNumberAt(place.String, place.Fret) % 12;
            chord.Tones.Select(t => t.Note.PitchClass).ShouldContain(sound, what);
            sound.ShouldBe(chord.NoteOf(grip.Degrees[i]!.Value).PitchClass, what);
            (grip.Fingers[i] == 0).ShouldBe(place.Fret == 0, what);
            for (var j = 0; j < i; j++)
            {
                // A finger is on one fret, and a higher finger never behind a lower one.
                if (place.Fret == 0 || grip.Places[j].Fret == 0) continue;
                if (grip.Fingers[i] == grip.Fingers[j]) grip.Places[j].Fret.ShouldBe(place.Fret, what);
                if (grip.Fingers[i] < grip.Fingers[j]) grip.Places[j].Fret.ShouldBeGreaterThanOrEqualTo(place.Fret, what);
            }
        }
        if (grip.HighestFret > 0) hand.Distance(grip.LowestFret, grip.HighestFret).ShouldBeLessThanOrEqualTo(HandModel.WidestSpan(3), what);
        foreach (var barre in grip.Barres)
        {
            foreach (var place in grip.Places)
            {
                // No open string and no lower fret sounds under a flat finger.
                if (place.String >= barre.FirstString && place.String <= barre.LastString) place.Fret.ShouldBeGreaterThanOrEqualTo(barre.Fret, what);
            }
        }
    }
}
