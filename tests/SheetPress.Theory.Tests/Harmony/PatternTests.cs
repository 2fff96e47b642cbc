namespace SheetPress.Theory.Tests;

public class PatternTests
{
    // Common practice. A star stands for "no chord".
    [Theory]
    [InlineData("C major", "Dm7 G7 Cmaj7", "MajorTwoFiveOne 0-2, FullClose 1-2")]
    [InlineData("C minor", "Dm7b5 G7b9 Cm7", "MinorTwoFiveOne 0-2, FullClose 1-2")]
    [InlineData("C major", "Dm7 Db7 Cmaj7", "SubstituteTwoFiveOne 0-2, TritoneSubstitute 1-2")]
    [InlineData("C major", "Dm7 G7sus4 G7 Cmaj7", "MajorTwoFiveOne 0-3, FullClose 1-3")]
    [InlineData("C major", "Dm7 Dm7 * G7 Cmaj7 Cmaj7", "MajorTwoFiveOne 0-4, FullClose 3-4")]
    [InlineData("C major", "A7 A7 Dm7 Dm7 F C C", "SecondaryDominant 0-2, PlagalClose 4-5")]
    [InlineData("C major", "Dm7 G7 G7", "TwoFive 0-2, HalfClose 1-2")]
    [InlineData("C major", "Gm7 C7 Fmaj7", "MajorTwoFiveOne 0-2")]
    [InlineData("C major", "Em7 A7 Abmaj7", "TwoFive 0-1, TritoneSubstitute 1-2")]
    [InlineData("C major", "Cmaj7 Am7 Dm7 G7", "Turnaround 0-3")]
    [InlineData("C major", "Cmaj7 C#dim7 Dm7 G7 Em7", "Turnaround 0-3, ClimbingDiminished 0-2")]
    [InlineData("C major", "Cmaj7 Eb7 Abmaj7 Db7 Cmaj7", "Turnaround 0-3, SecondaryDominant 1-2, TritoneSubstitute 3-4")]
    [InlineData("C major", "Fm7 Bb7 Cmaj7", "Backdoor 0-2")]
    [InlineData("C major", "F C", "PlagalClose 0-1")]
    [InlineData("C major", "F/G C", "")]
    [InlineData("C major", "G/B Am", "")]
    [InlineData("C major", "Em7 A7 Dm7 G7 C6", "CycleOfFourths 0-4, SecondaryDominant 1-2, MajorTwoFiveOne 2-4, FullClose 3-4")]
    [InlineData("Bb major", "Dm7 Db7 Cm7 B7 Bbmaj7", "TurnaroundFromThird 0-3, TritoneSubstitute 1-2, SubstituteTwoFiveOne 2-4, TritoneSubstitute 3-4")]
    [InlineData("F major", "Abm7 Db7 Gm7 C7 Fmaj7", "SlidingTwoFive 0-1, MajorTwoFiveOne 2-4, FullClose 3-4")]
    [InlineData("G major", "Bb7 Ebmaj7 Am7b5 D7b9 Gm7", "SecondaryDominant 0-1, MinorTwoFiveOne 2-4, FullClose 3-4")]
    [InlineData("D minor", "Dm/C Bm7b5 Bbmaj7 A7", "HalfClose 3-3")]
    [InlineData("F# major", "C#7 B#m7b5", "")]
    [InlineData("C major", "G7 Am7 F", "DeceptiveCadence 0-1")]
    [InlineData("C minor", "G7 Abmaj7 Fm7", "DeceptiveCadence 0-1")]
    [InlineData("A minor", "Am G F E", "DescendingMinor 0-3, HalfClose 3-3")]
    [InlineData("C major", "D7 G7 C", "SecondaryDominant 0-1, FullClose 1-2")]
    [InlineData("C major", "Cmaj7 A7 Dm7 G7 Cmaj7 F", "Turnaround 0-3, SecondaryDominant 1-2, MajorTwoFiveOne 2-4")]
    [InlineData("C major", "Em7 A7 Dm7 G7 Cmaj7 Fmaj7", "CycleOfFourths 0-4, SecondaryDominant 1-2, MajorTwoFiveOne 2-4")]
    [InlineData("C major", "C C Am Dm7 G G C", "Turnaround 1-5, MajorTwoFiveOne 3-6, FullClose 4-6")]
    [InlineData("C major", "C G7/C C/C", "")]
    [InlineData("C major", "C C#dim7 G/D", "ClimbingDiminished 0-2")]
    [InlineData("C major", "F F#dim7 G7 Abmaj7", "ClimbingDiminished 0-2, DeceptiveCadence 2-3")]
    [InlineData("C major", "E Am F", "SecondaryDominantTriad 0-1")]
    [InlineData("D dorian", "Dm7 G7 Dm7 G7", "")]
    [InlineData("C major", "C", "")]
    public void Patterns(string key, string progression, string expected)
    {
        Chord?[] chords = [.. progression.Split(' ').Select(c => c == "*" ? null : Chord.Parse(c))];
        var found = HarmonicAnalysis.FindPatterns(chords, Key.Parse(key));
        string.Join(", ", found.Select(p => $"{p.Kind} {p.First}-{p.Last}")).ShouldBe(expected);
    }

    // Roots that move up a fourth each time through a key meet one tritone: in minor between VI and ii, in major between IV and vii. Common practice.
    [Theory]
    [InlineData("C minor", "Cm7 Fm7 Bb7 Ebmaj7 Abmaj7 Dm7b5 G7 Cm7", "A♭ to D")]
    [InlineData("C major", "Cmaj7 Fmaj7 Bm7b5 Em7 Am7 Dm7 G7 Cmaj7", "F to B")]
    public void The_cycle_through_a_key_has_one_tritone(string key, string progression, string tritone)
    {
        var found = HarmonicAnalysis.FindPatterns([.. progression.Split(' ').Select(Chord.Parse)], Key.Parse(key));
        var cycle = found.Where(p => p.Kind is ProgressionPatternKind.CycleOfFourths or ProgressionPatternKind.CycleOfFourthsWithTritone).ShouldHaveSingleItem();
        cycle.Kind.ShouldBe(ProgressionPatternKind.CycleOfFourthsWithTritone);
        (cycle.First, cycle.Last).ShouldBe((0, 7));
        cycle.Sentence.ShouldContain(tritone);
        found.ShouldNotContain(p => p.Kind == ProgressionPatternKind.Turnaround);
    }

    [Fact]
    public void The_cycle_through_all_keys_has_none()
    {
        var found = HarmonicAnalysis.FindPatterns([.. "C7 F7 Bb7 Eb7 Ab7 Db7 Gb7 B7 E7 A7 D7 G7 C7".Split(' ').Select(Chord.Parse)], Key.Parse("C major"));
        var cycle = found.Where(p => p.Kind is ProgressionPatternKind.CycleOfFourths or ProgressionPatternKind.CycleOfFourthsWithTritone).ShouldHaveSingleItem();
        (cycle.Kind, cycle.First, cycle.Last).ShouldBe((ProgressionPatternKind.CycleOfFourths, 0, 12));
    }

    [Theory]
    [InlineData("C major", "A7 Dm7", "A7 is the dominant of Dm7: its third C♯ climbs a half step to D, its seventh G falls to F.")]
    [InlineData("E major", "Ab7 C#m7", "A♭7 is the dominant of C♯m7: its third B♯ climbs a half step to C♯, its seventh F♯ falls to E.")]
    [InlineData("B major", "Bb7 Ebmaj7", "B♭7 is the dominant of E♭maj7: its third D climbs a half step to E♭, its seventh A♭ falls to G.")]
    [InlineData("C major", "Db7 Cmaj7", "D♭7 slides down a half step into Cmaj7. It stands for G7, with which it shares its third and seventh.")]
    [InlineData("C minor", "Fm7 Bb7 Ebmaj7", "Fm7 – B♭7 – E♭maj7 is a ii–V–I into E♭ major: the roots climb a fourth twice, and home is on E♭maj7 for a moment.")]
    [InlineData("C minor", "Dm7b5 G7 Cm7", "Dm7♭5 – G7 – Cm7 is a minor ii–V–i into C minor: the roots climb a fourth twice, and home is on Cm7.")]
    [InlineData("C major", "Cmaj7 A7 Dm7 G7", "Cmaj7 – A7 – Dm7 – G7 is a turnaround: from the tonic it goes round and leads back to the top.")]
    [InlineData("C major", "Cmaj7 A7 Dm7 G7 Cmaj7", "Cmaj7 – A7 – Dm7 – G7 is a turnaround: from the tonic it goes round and leads back home.")]
    [InlineData("C major", "Em7 Eb7 Dm7 G7", "Em7 – E♭7 – Dm7 – G7 is a turnaround: from the third degree, in place of the tonic, it goes round and leads back to the top.")]
    public void Sentences(string key, string progression, string sentence) =>
        HarmonicAnalysis.FindPatterns([.. progression.Split(' ').Select(Chord.Parse)], Key.Parse(key))[0].Sentence.ShouldBe(sentence);
}
