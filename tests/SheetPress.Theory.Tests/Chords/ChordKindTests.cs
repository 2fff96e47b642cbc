namespace SheetPress.Theory.Tests;

public class ChordKindTests
{
    // W3C MusicXML 4.0, type kind-value and element degree: an added degree counts against a dominant chord, the others against the kind.
    [Theory]
    [InlineData("C", ChordKind.Major, "")]
    [InlineData("Cm", ChordKind.Minor, "")]
    [InlineData("Caug", ChordKind.Augmented, "")]
    [InlineData("Cdim", ChordKind.Diminished, "")]
    [InlineData("C7", ChordKind.Dominant, "")]
    [InlineData("Cmaj7", ChordKind.MajorSeventh, "")]
    [InlineData("Cm7", ChordKind.MinorSeventh, "")]
    [InlineData("Cdim7", ChordKind.DiminishedSeventh, "")]
    [InlineData("C7#5", ChordKind.AugmentedSeventh, "")]
    [InlineData("Cm7b5", ChordKind.HalfDiminished, "")]
    [InlineData("CmMaj7", ChordKind.MajorMinor, "")]
    [InlineData("C6", ChordKind.MajorSixth, "")]
    [InlineData("Cm6", ChordKind.MinorSixth, "")]
    [InlineData("C9", ChordKind.DominantNinth, "")]
    [InlineData("Cmaj9", ChordKind.MajorNinth, "")]
    [InlineData("Cm9", ChordKind.MinorNinth, "")]
    [InlineData("C11", ChordKind.DominantEleventh, "")]
    [InlineData("Cmaj11", ChordKind.MajorEleventh, "")]
    [InlineData("Cm11", ChordKind.MinorEleventh, "")]
    [InlineData("C13", ChordKind.DominantThirteenth, "")]
    [InlineData("Cmaj13", ChordKind.MajorThirteenth, "")]
    [InlineData("Cm13", ChordKind.MinorThirteenth, "")]
    [InlineData("Csus2", ChordKind.SuspendedSecond, "")]
    [InlineData("Csus4", ChordKind.SuspendedFourth, "")]
    [InlineData("C5", ChordKind.Power, "")]
    [InlineData("C7b9", ChordKind.Dominant, "Add 9 -1")]
    [InlineData("C7b9#9", ChordKind.Dominant, "Add 9 -1, Add 9 1")]
    [InlineData("C7#11", ChordKind.Dominant, "Add 11 1")]
    [InlineData("C7b5", ChordKind.Dominant, "Alter 5 -1")]
    [InlineData("C7#5b9", ChordKind.AugmentedSeventh, "Add 9 -1")]
    [InlineData("C7alt", ChordKind.AugmentedSeventh, "Add 9 -1, Add 9 1")]
    [InlineData("C9#11", ChordKind.DominantNinth, "Add 11 1")]
    [InlineData("C9#5", ChordKind.DominantNinth, "Alter 5 1")]
    [InlineData("C13b9", ChordKind.DominantThirteenth, "Alter 9 -1")]
    [InlineData("C13#11", ChordKind.DominantThirteenth, "Add 11 1")]
    [InlineData("Cmaj7#11", ChordKind.MajorSeventh, "Add 11 1")]
    [InlineData("Cmaj7#5", ChordKind.MajorSeventh, "Alter 5 1")]
    [InlineData("Cadd9", ChordKind.Major, "Add 9 0")]
    [InlineData("C6/9", ChordKind.MajorSixth, "Add 9 0")]
    [InlineData("C7sus4", ChordKind.SuspendedFourth, "Add 7 0")]
    [InlineData("C9sus4", ChordKind.SuspendedFourth, "Add 7 0, Add 9 0")]
    [InlineData("Cmaj7sus4", ChordKind.SuspendedFourth, "Add 7 1")]
    [InlineData("Csus24", ChordKind.SuspendedSecond, "Add 4 0")]
    [InlineData("CdimMaj7", ChordKind.Diminished, "Add 7 1")]
    [InlineData("CmMaj9", ChordKind.MajorMinor, "Add 9 0")]
    [InlineData("Cm9b5", ChordKind.HalfDiminished, "Add 9 0")]
    [InlineData("Cdim9", ChordKind.DiminishedSeventh, "Add 9 0")]
    [InlineData("C7no5", ChordKind.Dominant, "Subtract 5 0")]
    [InlineData("C7no3", ChordKind.Dominant, "Subtract 3 0")]
    [InlineData("C5add9", ChordKind.Power, "Add 9 0")]
    [InlineData("Cm11b5", ChordKind.HalfDiminished, "Add 9 0, Add 11 0")]
    [InlineData("C(b5)", ChordKind.Major, "Alter 5 -1")]
    public void Kinds_and_changes(string chord, ChordKind kind, string changes)
    {
        var quality = Chord.Parse(chord).Quality;
        quality.Kind.ShouldBe(kind);
        string.Join(", ", quality.KindChanges.Select(c => $"{c.Type} {c.Number} {c.Alteration}")).ShouldBe(changes);
    }

    [Fact]
    public void Kind_and_changes_make_the_degrees_of_every_quality_again()
    {
        // Degrees of the kinds as the schema's documentation of kind-value lists them.
        var kinds = new Dictionary<ChordKind, string>
        {
            [ChordKind.Major] = "1 3 5",
            [ChordKind.Minor] = "1 b3 5",
            [ChordKind.Augmented] = "1 3 #5",
            [ChordKind.Diminished] = "1 b3 b5",
            [ChordKind.Dominant] = "1 3 5 b7",
            [ChordKind.MajorSeventh] = "1 3 5 7",
            [ChordKind.MinorSeventh] = "1 b3 5 b7",
            [ChordKind.DiminishedSeventh] = "1 b3 b5 bb7",
            [ChordKind.AugmentedSeventh] = "1 3 #5 b7",
            [ChordKind.HalfDiminished] = "1 b3 b5 b7",
            [ChordKind.MajorMinor] = "1 b3 5 7",
            [ChordKind.MajorSixth] = "1 3 5 6",
            [ChordKind.MinorSixth] = "1 b3 5 6",
            [ChordKind.DominantNinth] = "1 3 5 b7 9",
            [ChordKind.MajorNinth] = "1 3 5 7 9",
            [ChordKind.MinorNinth] = "1 b3 5 b7 9",
            [ChordKind.DominantEleventh] = "1 3 5 b7 9 11",
            [ChordKind.MajorEleventh] = "1 3 5 7 9 11",
            [ChordKind.MinorEleventh] = "1 b3 5 b7 9 11",
            // The schema counts an 11th in; players leave it out, and so does the symbol that every reader prints for the kind.
            [ChordKind.DominantThirteenth] = "1 3 5 b7 9 13",
            [ChordKind.MajorThirteenth] = "1 3 5 7 9 13",
            [ChordKind.MinorThirteenth] = "1 b3 5 b7 9 11 13",
            [ChordKind.SuspendedSecond] = "1 2 5",
            [ChordKind.SuspendedFourth] = "1 4 5",
            [ChordKind.Power] = "1 5",
        };
        foreach (var quality in ChordQualities.All)
        {
            var degrees = kinds[quality.Kind].Split(' ').Select(Degree.Parse).ToList();
            foreach (var change in quality.KindChanges)
            {
                if (change.Type == KindChangeType.Add)
                {
                    degrees.Add(new Degree(change.Number, change.Alteration - (change.Number == 7 ? 1 : 0)));
                    continue;
                }
                var at = degrees.FindIndex(d => d.Number == change.Number);
                at.ShouldBeGreaterThanOrEqualTo(0, quality.Suffix);
                var old = degrees[at];
                degrees.RemoveAt(at);
                if (change.Type == KindChangeType.Alter) degrees.Insert(at, new Degree(old.Number, old.Alteration + change.Alteration));
            }
            degrees.OrderBy(d => d.Number).ThenBy(d => d.Alteration).ToArray().ShouldBe(quality.Degrees.AsEnumerable(), quality.Suffix);
        }
    }
}
