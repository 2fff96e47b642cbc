using SheetPress.Theory;

namespace SheetPress.Publishing;

/// <summary>One degree element of a harmony.</summary>
/// <param name="Number">The number of the degree.</param>
/// <param name="Alteration">Half steps, against what the standard says for the type.</param>
/// <param name="Type">"add", "alter" or "subtract".</param>
/// <param name="Text">What to print for the type; null leaves it to the reader.</param>
internal sealed record KindDegree(int Number, int Alteration, string Type, string? Text);

/// <summary>A chord quality as MusicXML says it: a kind, and degrees for whatever the kind does not hold.</summary>
/// <param name="Value">The kind-value of the standard.</param>
/// <param name="Text">What to print for the kind alone; alterations are in the degrees and nowhere else.</param>
/// <param name="Degrees">What departs from the kind.</param>
/// <param name="AreInBrackets">Whether the degrees are printed in brackets: m(add9), but 7b9.</param>
internal sealed record HarmonyKind(string Value, string Text, IReadOnlyList<KindDegree> Degrees, bool AreInBrackets)
{
    public static HarmonyKind Of(ChordQuality quality)
    {
        var (value, text) = Names(quality.Kind);
        var degrees = new List<KindDegree>();
        foreach (var change in quality.KindChanges) degrees.Add(ToDegree(quality, change));
        return new HarmonyKind(value, text, degrees, quality.Suffix.Contains('(', StringComparison.Ordinal));
    }

    private static KindDegree ToDegree(ChordQuality quality, KindChange change)
    {
        var kind = quality.Kind;
        // The standard's 13th chords hold an 11th, which players leave out over a major third: a raised one takes its place.
        if (change is { Number: 11, Type: KindChangeType.Add } && kind is ChordKind.DominantThirteenth or ChordKind.MajorThirteenth)
            return new KindDegree(11, change.Alteration, "alter", "");
        return change.Type switch
        {
            // A reader may print "add" before a plain degree (add9), but not in 7b9 or sus2(4), nor for the seventh and what is above it in 9sus4.
            KindChangeType.Add => new KindDegree(change.Number, change.Alteration, "add", change.Alteration == 0 && change.Number != 4 && !AddsSeventh(quality) ? null : ""),
            KindChangeType.Alter => new KindDegree(change.Number, change.Alteration, "alter", ""),
            _ => new KindDegree(change.Number, change.Alteration, "subtract", null),
        };
    }

    private static bool AddsSeventh(ChordQuality quality)
    {
        foreach (var change in quality.KindChanges) if (change.Number == 7) return true;
        return false;
    }

    private static (string Value, string Text) Names(ChordKind kind) => kind switch
    {
        ChordKind.Major => ("major", ""),
        ChordKind.Minor => ("minor", "m"),
        ChordKind.Augmented => ("augmented", "aug"),
        ChordKind.Diminished => ("diminished", "dim"),
        ChordKind.Dominant => ("dominant", "7"),
        ChordKind.MajorSeventh => ("major-seventh", "maj7"),
        ChordKind.MinorSeventh => ("minor-seventh", "m7"),
        ChordKind.DiminishedSeventh => ("diminished-seventh", "dim7"),
        ChordKind.AugmentedSeventh => ("augmented-seventh", "aug7"),
        ChordKind.HalfDiminished => ("half-diminished", "m7♭5"),
        ChordKind.MajorMinor => ("major-minor", "m(maj7)"),
        ChordKind.MajorSixth => ("major-sixth", "6"),
        ChordKind.MinorSixth => ("minor-sixth", "m6"),
        ChordKind.DominantNinth => ("dominant-ninth", "9"),
        ChordKind.MajorNinth => ("major-ninth", "maj9"),
        ChordKind.MinorNinth => ("minor-ninth", "m9"),
        ChordKind.DominantEleventh => ("dominant-11th", "11"),
        ChordKind.MajorEleventh => ("major-11th", "maj11"),
        ChordKind.MinorEleventh => ("minor-11th", "m11"),
        ChordKind.DominantThirteenth => ("dominant-13th", "13"),
        ChordKind.MajorThirteenth => ("major-13th", "maj13"),
        ChordKind.MinorThirteenth => ("minor-13th", "m13"),
        ChordKind.SuspendedSecond => ("suspended-second", "sus2"),
        ChordKind.SuspendedFourth => ("suspended-fourth", "sus4"),
        ChordKind.Power => ("power", "5"),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "A chord kind without a name in MusicXML."),
    };
}
