namespace SheetPress.Theory.Tests;

public class ChordQualitiesTests
{
    public static TheoryData<string> Suffixes => [.. ChordQualities.All.Select(q => q.Suffix)];

    [Fact]
    public void The_table_holds_at_least_sixty_qualities_each_once()
    {
        ChordQualities.All.Length.ShouldBeGreaterThanOrEqualTo(60);
        ChordQualities.All.Select(q => q.Suffix).ShouldBeUnique();
        ChordQualities.All.Select(q => q.Name).ShouldBeUnique();
        ChordQualities.All.Select(q => string.Join(' ', q.Degrees)).ShouldBeUnique();
        ChordQualities.All.SelectMany(q => q.Aliases.Append(q.Suffix)).ShouldBeUnique();
    }

    [Theory]
    [MemberData(nameof(Suffixes))]
    public void Suffix_and_aliases_are_read_as_the_degrees_of_the_row(string suffix)
    {
        var row = ChordQualities.All.Single(q => q.Suffix == suffix);
        foreach (var spelling in row.Aliases.Prepend(suffix))
        {
            // An accidental straight after the root would belong to the root.
            var result = ChordParser.Parse("C" + spelling);
            result.Message.ShouldBeNull($"C{spelling}");
            result.Chord!.Quality.ShouldBeSameAs(row, $"C{spelling} was read as {result.Chord} ({string.Join(' ', result.Chord.Quality.Degrees)})");
        }
    }

    [Theory]
    [MemberData(nameof(Suffixes))]
    public void Printing_then_reading_gives_the_same_chord(string suffix)
    {
        var quality = ChordQualities.All.Single(q => q.Suffix == suffix);
        foreach (var root in (string[])["C", "Bb", "F#", "Ebb"])
        {
            var chord = new Chord(NoteName.Parse(root), quality, NoteName.Parse("D"));
            Chord.Parse(chord.ToString()).ShouldBe(chord);
            Chord.Parse(chord.ToDisplayString()).ShouldBe(chord, chord.ToDisplayString());
        }
    }
}
