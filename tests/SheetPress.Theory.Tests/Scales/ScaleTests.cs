using CsCheck;

namespace SheetPress.Theory.Tests;

public class ScaleTests
{
    [Fact]
    public void The_table_holds_at_least_thirty_scales_each_once()
    {
        ScaleTypes.All.Length.ShouldBeGreaterThanOrEqualTo(30);
        ScaleTypes.All.SelectMany(s => s.Aliases.Append(s.Name)).ShouldBeUnique();
        ScaleTypes.All.Select(s => string.Join(' ', s.Degrees)).ShouldBeUnique();
        foreach (var type in ScaleTypes.All)
        {
            type.Degrees[0].ShouldBe(Degree.Root);
            type.Degrees.Select(d => d.HalfSteps).ShouldBeInOrder(SortDirection.Ascending);
            type.Degrees.Select(d => d.HalfSteps).ShouldBeUnique();
            type.Degrees[^1].HalfSteps.ShouldBeLessThan(12);
            foreach (var name in type.Aliases.Append(type.Name)) ScaleTypes.Find(name).ShouldBeSameAs(type, name);
        }
    }

    // Common practice.
    [Theory]
    [InlineData("G phrygian dominant", "G Ab B C D Eb F")]
    [InlineData("F# harmonic minor", "F# G# A B C# D E#")]
    [InlineData("Bb lydian dominant", "Bb C D E F G Ab")]
    [InlineData("C minor blues", "C Eb F Gb G Bb")]
    [InlineData("E minor pentatonic", "E G A B D")]
    [InlineData("G half-whole diminished", "G Ab Bb B C# D E F")]
    [InlineData("D whole-half diminished", "D E F G Ab Bb B C#")]
    [InlineData("C bebop dominant", "C D E F G A Bb B")]
    [InlineData("Db ionian", "Db Eb F Gb Ab Bb C")]
    public void Notes(string scale, string notes) => string.Join(' ', Scale.Parse(scale).Notes).ShouldBe(notes);

    // Modes of a scale are its rotations; which rotation is common practice.
    [Theory]
    [InlineData("major", "dorian phrygian lydian mixolydian aeolian locrian")]
    [InlineData("melodic minor", "dorian b2|lydian augmented|lydian dominant|mixolydian b6|locrian #2|altered")]
    [InlineData("harmonic minor", "locrian natural 6|ionian #5|dorian #4|phrygian dominant|lydian #2|ultralocrian")]
    public void Modes_are_rotations(string parent, string modes)
    {
        var halfSteps = ScaleTypes.Find(parent)!.Degrees.Select(d => d.HalfSteps).ToArray();
        var names = modes.Split(modes.Contains('|') ? '|' : ' ');
        for (var i = 1; i < 7; i++)
        {
            var rotated = Enumerable.Range(0, 7).Select(j => (halfSteps[(i + j) % 7] - halfSteps[i] + 12) % 12);
            ScaleTypes.Find(names[i - 1])!.Degrees.Select(d => d.HalfSteps).ShouldBe(rotated, names[i - 1]);
        }
    }

    [Fact]
    public void No_scale_needs_a_triple_sign() =>
        Gen.Select(Samples.NoteNames, Gen.Int[0, ScaleTypes.All.Length - 1]).Sample((root, index) =>
        {
            var scale = new Scale(root, ScaleTypes.All[index]);
            scale.Notes.ShouldAllBe(n => Math.Abs(n.Alteration) <= 2);
            scale.Notes.Select(n => n.PitchClass).ShouldBe(scale.Type.Degrees.Select(d => (root.PitchClass + d.HalfSteps) % 12));
            scale.Notes.ShouldAllBe(n => scale.ContainsSound(n));
            Scale.Parse(scale.ToString()).ShouldBe(scale);
            Scale.Parse(scale.ToDisplayString()).ShouldBe(scale);
        });

    // English dictionaries, from memory: words from the names of peoples, places and persons have a capital, church modes among them.
    [Theory]
    [InlineData("mixolydian b6", "Mixolydian ♭6")]
    [InlineData("bebop dominant", "bebop dominant")]
    [InlineData("bebop dorian", "bebop Dorian")]
    [InlineData("lydian #2", "Lydian ♯2")]
    [InlineData("ultralocrian", "Ultralocrian")]
    [InlineData("spanish eight-note", "Spanish eight-note")]
    [InlineData("Hungarian minor", "Hungarian minor")]
    [InlineData("NEAPOLITAN MAJOR", "Neapolitan major")]
    [InlineData("natural minor", "natural minor")]
    public void Names_are_printed_with_signs_and_capitals(string name, string display) => ScaleTypes.Find(name)!.ToDisplayString().ShouldBe(display);

    [Theory]
    [InlineData("C")]
    [InlineData("C happy")]
    [InlineData("major")]
    [InlineData("")]
    public void What_is_no_scale_is_not_read(string text) => Scale.TryParse(text, out _).ShouldBeFalse();
}
