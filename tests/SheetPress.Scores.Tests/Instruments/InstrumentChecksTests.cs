using System.Collections.Immutable;
using SheetPress.Theory;

namespace SheetPress.Scores.Tests;

public class InstrumentChecksTests
{
    private static readonly Instrument Bass = InstrumentCatalogue.Find("bass-4")!;

    // Tunings as players say them, from the string nearest the ceiling; the last is re-entrant.
    [Theory]
    [InlineData("D1 A1 D2 G2")]
    [InlineData("E1 A1 D2")]
    [InlineData("F#0 B0 E1 A1 D2 G2 C3")]
    [InlineData("E2 E3 A2 A3 D3 D4 G3 G4 B3 B3 E4 E4")]
    [InlineData("G4 D3 G3 B3 D4")]
    public void Tunings_in_use_are_accepted(string tuning) => InstrumentChecks.Run(Bass with { OpenStrings = Tuning(tuning) }).ShouldBeEmpty();

    public static TheoryData<Instrument, InstrumentPart, string> Wrong => new()
    {
        { Bass with { OpenStrings = Tuning("E1 A1") }, InstrumentPart.Tuning, "this one has 2" },
        { Bass with { OpenStrings = [] }, InstrumentPart.Tuning, "this one has 0" },
        { Bass with { OpenStrings = default }, InstrumentPart.Tuning, "this one has 0" },
        { Bass with { OpenStrings = Tuning("G2 D2 A1 E1") }, InstrumentPart.Tuning, "write E1 A1 D2 G2" },
        { Bass with { OpenStrings = Tuning("E1 A1 D2 G8") }, InstrumentPart.Tuning, "G8" },
        { Bass with { OpenStrings = Tuning("E6 A6 C7"), FretCount = 36 }, InstrumentPart.Tuning, "range of MIDI" },
        { Bass with { FretCount = 4 }, InstrumentPart.Frets, "4 frets" },
        { Bass with { FretCount = 40 }, InstrumentPart.Frets, "12 to 36" },
        { Bass with { Capo = -1 }, InstrumentPart.Capo, "0 for none" },
        { Bass with { Capo = 10, FretCount = 14 }, InstrumentPart.Capo, "fewer than five" },
        { Bass with { ScaleLength = 34 }, InstrumentPart.ScaleLength, "34 is outside" },
        { Bass with { ScaleLength = double.NaN }, InstrumentPart.ScaleLength, "millimetres" },
    };

    [Theory]
    [MemberData(nameof(Wrong))]
    public void A_wrong_part_is_named_with_what_to_write_instead(Instrument instrument, InstrumentPart part, string words)
    {
        var problem = InstrumentChecks.Run(instrument).ShouldHaveSingleItem();
        problem.Part.ShouldBe(part);
        problem.Message.ShouldContain(words);
    }

    [Fact]
    public void All_problems_are_listed_at_once() =>
        InstrumentChecks.Run(Bass with { OpenStrings = Tuning("E1"), FretCount = 3, Capo = 99, ScaleLength = 1 }).Select(p => p.Part)
            .ShouldBe([InstrumentPart.Tuning, InstrumentPart.Frets, InstrumentPart.Capo, InstrumentPart.ScaleLength]);

    private static ImmutableArray<Pitch> Tuning(string text) => [.. text.Split(' ').Select(Pitch.Parse).Reverse()];
}
