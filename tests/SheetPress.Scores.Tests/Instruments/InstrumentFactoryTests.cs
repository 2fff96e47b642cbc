using System.Collections.Immutable;
using SheetPress.Theory;

namespace SheetPress.Scores.Tests;

public class InstrumentFactoryTests
{
    private static readonly Instrument Bass = InstrumentCatalogue.Find("bass-4")!;

    [Fact]
    public void A_dropped_string_is_written_as_players_say_it()
    {
        var (made, problems) = InstrumentFactory.Create(Bass, new InstrumentChanges { Tuning = Tuning("D1 A1 D2 G2") });
        problems.ShouldBeEmpty();
        made!.OpenStrings.ShouldBe(Tuning("G2 D2 A1 D1"));
        (made.Name, made.MidiNumberAt(4, 0)).ShouldBe(("4-string bass", 26));
    }

    [Theory]
    [InlineData("E1 A1 D2", "3-string bass")]
    [InlineData("F#0 B0 E1 A1 D2 G2 C3", "7-string bass")]
    [InlineData("E1 A1 D2 G2", "4-string bass")]
    public void The_name_follows_the_number_of_strings(string tuning, string name) =>
        InstrumentFactory.Create(Bass, new InstrumentChanges { Tuning = Tuning(tuning) }).Instrument!.Name.ShouldBe(name);

    [Fact]
    public void Everything_else_can_be_changed_too()
    {
        var made = InstrumentFactory.Create(Bass, new InstrumentChanges { Name = "short bass", Frets = 20, Capo = 2, ScaleLength = 762, LeftHanded = true }).Instrument!;
        (made.Name, made.FretCount, made.Capo, made.ScaleLength, made.LeftHanded).ShouldBe(("short bass", 20, 2, 762, true));
        made.OpenStrings.ShouldBe(Bass.OpenStrings);
    }

    [Fact]
    public void A_re_entrant_tuning_is_allowed() =>
        InstrumentFactory.Create(InstrumentCatalogue.Find("tenor-banjo")!, new InstrumentChanges { Tuning = Tuning("G4 D3 G3 B3 D4") }).Problems.ShouldBeEmpty();

    public static TheoryData<InstrumentChanges, InstrumentPart, string> Wrong => new()
    {
        { new InstrumentChanges { Tuning = Tuning("E1 A1") }, InstrumentPart.Tuning, "this one has 2" },
        { new InstrumentChanges { Tuning = [] }, InstrumentPart.Tuning, "this one has 0" },
        { new InstrumentChanges { Tuning = Tuning("G2 D2 A1 E1") }, InstrumentPart.Tuning, "write E1 A1 D2 G2" },
        { new InstrumentChanges { Tuning = Tuning("E1 A1 D2 G8") }, InstrumentPart.Tuning, "G8" },
        { new InstrumentChanges { Frets = 4 }, InstrumentPart.Frets, "4 frets" },
        { new InstrumentChanges { Frets = 40 }, InstrumentPart.Frets, "12 to 36" },
        { new InstrumentChanges { Capo = -1 }, InstrumentPart.Capo, "0 for none" },
        { new InstrumentChanges { Capo = 10, Frets = 14 }, InstrumentPart.Capo, "fewer than five" },
        { new InstrumentChanges { ScaleLength = 34 }, InstrumentPart.ScaleLength, "34 inches are 863.6 mm" },
        { new InstrumentChanges { ScaleLength = double.NaN }, InstrumentPart.ScaleLength, "millimetres" },
        { new InstrumentChanges { Name = " " }, InstrumentPart.Name, "needs a name" },
    };

    [Theory]
    [MemberData(nameof(Wrong))]
    public void A_wrong_part_is_named_with_what_to_write_instead(InstrumentChanges changes, InstrumentPart part, string words)
    {
        var (made, problems) = InstrumentFactory.Create(Bass, changes);
        made.ShouldBeNull();
        var problem = problems.ShouldHaveSingleItem();
        problem.Part.ShouldBe(part);
        problem.Message.ShouldContain(words);
    }

    [Fact]
    public void All_problems_are_listed_at_once() =>
        InstrumentFactory.Create(Bass, new InstrumentChanges { Tuning = Tuning("E1"), Frets = 3, Capo = 99, ScaleLength = 1 }).Problems.Select(p => p.Part)
            .ShouldBe([InstrumentPart.Tuning, InstrumentPart.Frets, InstrumentPart.Capo, InstrumentPart.ScaleLength]);

    private static ImmutableArray<Pitch> Tuning(string text) => [.. text.Split(' ').Select(Pitch.Parse)];
}
