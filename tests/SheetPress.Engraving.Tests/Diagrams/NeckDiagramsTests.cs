using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Engraving.Tests;

public class NeckDiagramsTests
{
    private static readonly Instrument Bass = InstrumentCatalogue.Find("bass-4")!;

    [Fact]
    public void Every_place_of_every_chord_tone_in_the_range_has_a_dot()
    {
        var chord = Chord.Parse("Cm7");
        foreach (var instrument in InstrumentCatalogue.All)
        {
            var diagram = NeckDiagrams.ChordTones(instrument, chord, 0, 12);
            var wanted = new HashSet<FretPosition>();
            for (var s = 1; s <= instrument.StringCount; s++)
            {
                for (var f = 0; f <= 12; f++) if (chord.Tones.Any(t => t.Note.PitchClass == instrument.MidiNumberAt(s, f) % 12)) wanted.Add(new FretPosition(s, f));
            }
            diagram.Dots.Select(d => d.Position).ToHashSet().SetEquals(wanted).ShouldBeTrue();
        }
    }

    [Fact]
    public void The_octave_and_the_fifth_have_their_shapes_on_strings_in_fourths()
    {
        // Common practice: the octave is two strings and two frets up, the fifth one string and two frets up.
        var diagram = NeckDiagrams.ChordTones(Bass, Chord.Parse("C7"), 3, 6);
        Label(diagram, 3, 3).ShouldBe(("R", DotShape.Root));
        Label(diagram, 2, 5).ShouldBe(("5", DotShape.Tone));
        Label(diagram, 1, 5).ShouldBe(("R", DotShape.Root));
        Label(diagram, 1, 3).ShouldBe(("♭7", DotShape.Tone));
    }

    [Fact]
    public void In_a_scale_the_tones_of_the_chord_stand_out_by_shape()
    {
        var scale = new Scale(NoteName.Parse("A"), ScaleTypes.All.First(t => t.Name == "natural minor"));
        var diagram = NeckDiagrams.Scale(Bass, scale, 0, 5, DotLabels.Notes, Chord.Parse("Am7"));
        Label(diagram, 3, 0).ShouldBe(("A", DotShape.Root));
        Label(diagram, 3, 3).ShouldBe(("C", DotShape.Tone));
        Label(diagram, 3, 2).ShouldBe(("B", DotShape.Other));
    }

    [Fact]
    public void A_shape_shows_the_range_it_needs_and_the_strings_it_leaves_out()
    {
        var guitar = InstrumentCatalogue.Find("guitar-6")!;
        var diagram = NeckDiagrams.Shape(guitar, [new(5, 7), new(4, 9), new(3, 7), new(2, 8)], Chord.Parse("Em7"), upright: true);
        (diagram.FirstFret, diagram.LastFret).ShouldBe((7, 10));
        diagram.MutedStrings.ShouldBe([1, 6]);
        diagram.Dots.Select(d => d.Label).ShouldBe(["R", "5", "♭7", "♭3"], ignoreOrder: false);
    }

    [Theory]
    [InlineData(1, 3, 1, 4)]
    [InlineData(2, 5, 1, 5)]
    [InlineData(5, 6, 5, 8)]
    [InlineData(0, 4, 1, 4)]
    [InlineData(22, 24, 21, 24)]
    public void The_range_fits_what_is_shown(int lowest, int highest, int first, int last) =>
        NeckDiagrams.FitRange([new(4, lowest), new(1, highest)], 24).ShouldBe((first, last));

    [Fact]
    public void A_path_numbers_every_visit()
    {
        var diagram = NeckDiagrams.Path(Bass, [new(new(3, 3), 1, true), new(new(2, 5), 2, false), new(new(1, 5), 3, false), new(new(2, 5), 4, false)]);
        diagram.Dots.Select(d => d.Label).ShouldBe(["1", "2 4", "3"]);
        diagram.Dots[0].Shape.ShouldBe(DotShape.Root);
        diagram.Path.Length.ShouldBe(4);
    }

    [Fact]
    public void Fingers_stand_in_the_dots_or_at_the_ends_of_the_strings_and_one_on_several_strings_is_a_barre()
    {
        var guitar = InstrumentCatalogue.Find("guitar-6")!;
        FretPosition[] places = [new(5, 2), new(4, 4), new(3, 4), new(2, 3), new(1, 2)];
        var inside = NeckDiagrams.Shape(guitar, places, Chord.Parse("Bm"), DotLabels.Fingers, upright: true, [1, 3, 4, 2, 1]);
        inside.Dots.Select(d => d.Label).ShouldBe(["1", "3", "4", "2", "1"]);
        inside.Dots.ShouldAllBe(d => d.Finger == null);
        inside.Barres.ShouldBe([new Barre(2, 1, 5)]);
        inside.MutedStrings.ShouldBe([6]);
        var outside = NeckDiagrams.Shape(guitar, places, Chord.Parse("Bm"), DotLabels.Degrees, upright: true, [1, 3, 4, 2, 1]);
        outside.Dots.Select(d => (d.Label, d.Finger)).ShouldBe([("R", 1), ("5", 3), ("R", 4), ("♭3", 2), ("5", 1)]);
    }

    [Fact]
    public void Two_places_on_a_string_are_no_chord_so_that_no_string_is_silent_and_no_finger_lies_flat()
    {
        var guitar = InstrumentCatalogue.Find("guitar-6")!;
        var scale = NeckDiagrams.Shape(guitar, [new(6, 5), new(6, 8), new(5, 5), new(5, 7)], Chord.Parse("Am"), DotLabels.Fingers, upright: true, [1, 4, 1, 3]);
        (scale.MutedStrings.Length, scale.Barres.Length).ShouldBe((0, 0));
    }

    [Fact]
    public void A_note_outside_the_chord_is_an_open_circle_with_its_usual_name()
    {
        var diagram = NeckDiagrams.Shape(Bass, [new(4, 5), new(3, 5)], Chord.Parse("Am"));
        diagram.Dots.Select(d => (d.Label, d.Shape)).ShouldBe([("R", DotShape.Root), ("4", DotShape.Other)]);
    }

    [Fact]
    public void A_range_off_the_neck_is_refused()
    {
        Should.Throw<ArgumentOutOfRangeException>(() => NeckDiagrams.ChordTones(Bass, Chord.Parse("C"), -1, 4));
        Should.Throw<ArgumentOutOfRangeException>(() => NeckDiagrams.ChordTones(Bass, Chord.Parse("C"), 30, 34));
    }

    private static (string, DotShape) Label(NeckDiagram diagram, int s, int fret)
    {
        var dot = diagram.Dots.First(d => d.Position == new FretPosition(s, fret));
        return (dot.Label, dot.Shape);
    }
}
