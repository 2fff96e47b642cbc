using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons.Tests;

public class NeckShapesTests
{
    private static readonly Instrument Guitar = InstrumentCatalogue.Find("guitar-6")!;

    // Common practice: the five forms of a major chord along the neck, after the open chords C, A, G, E and D.
    [Fact]
    public void A_major_chord_has_its_five_forms_along_the_neck() =>
        NeckShapes.GripFamily(Guitar, Chord.Parse("C"), level: 3, most: 12).Select(g => g.LowestFret).ShouldBe([1, 3, 5, 8, 10]);

    // Common practice: the five positions of the pentatonic scale, A minor from the fifth fret being the best known.
    [Fact]
    public void The_pentatonic_scale_has_five_positions_with_two_tones_on_every_string()
    {
        var scale = new Scale(NoteName.Parse("A"), ScaleTypes.Find("minor pentatonic")!);
        var positions = NeckShapes.Positions(Guitar, scale.Root, scale.Type.Degrees, most: 12);
        positions.Length.ShouldBe(5);
        positions.ShouldAllBe(p => p.GroupBy(t => t.Place.String).Count() == 6 && p.GroupBy(t => t.Place.String).All(g => g.Count() == 2));
        positions[2].Select(t => $"{t.Place.String}:{t.Place.Fret}").ShouldBe(["6:5", "6:8", "5:5", "5:7", "4:5", "4:7", "3:5", "3:7", "2:5", "2:8", "1:5", "1:8"]);
    }

    [Fact]
    public void No_position_holds_only_what_the_one_before_it_holds()
    {
        foreach (var chord in (string[])["Cmaj7", "F#m7b5", "Bb9"])
        {
            var positions = NeckShapes.Positions(Guitar, Chord.Parse(chord).Root, Chord.Parse(chord).Quality.Degrees, most: 12);
            positions.Length.ShouldBeGreaterThan(2);
            for (var i = 1; i < positions.Length; i++) positions[i].ShouldContain(t => !positions[i - 1].Contains(t));
        }
    }

    [Fact]
    public void Places_that_no_hand_spans_have_no_fingers() =>
        NeckShapes.Held(Guitar, Chord.Parse("C"), [new(6, 1), new(5, 12), new(4, 1)]).ShouldBeNull();

    // Shapes on strings in fourths, common practice: seventh chords from root to octave under one hand of a bass.
    [Theory]
    [InlineData("Cm7", "3:3 3:6 2:5 1:3 1:5")]
    [InlineData("C7", "3:3 2:2 2:5 1:3 1:5")]
    [InlineData("G", "4:3 3:2 3:5 2:5")]
    [InlineData("E7", "4:0 4:4 3:2 2:0 2:2")]
    public void A_bass_sees_a_chord_from_root_to_octave(string symbol, string places) => string.Join(' ', OneOctave.Of(InstrumentCatalogue.Find("bass-4")!, Chord.Parse(symbol), new NeckRequest()).Select(p => $"{p.String}:{p.Fret}")).ShouldBe(places);

    // The shape is shown where the line plays it, unless fewer tones lie under the hand there.
    [Theory]
    [InlineData("Am7", 4, 5, "4:5 4:8 3:7 2:5 2:7")]
    [InlineData("Am7", 3, 0, "3:0 3:3 2:2 1:0 1:2")]
    [InlineData("Am7", 1, 2, "3:0 3:3 2:2 1:0 1:2")]
    public void A_bass_sees_a_chord_where_it_is_played(string symbol, int root, int fret, string places) =>
        string.Join(' ', OneOctave.Of(InstrumentCatalogue.Find("bass-4")!, Chord.Parse(symbol), new NeckRequest(), new FretPosition(root, fret)).Select(p => $"{p.String}:{p.Fret}")).ShouldBe(places);
}
