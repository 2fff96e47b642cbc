namespace SheetPress.Theory.Tests;

public class ChordScalesTests
{
    public static TheoryData<string> Suffixes => [.. ChordQualities.All.Select(q => q.Suffix)];

    [Theory]
    [MemberData(nameof(Suffixes))]
    public void A_scale_holds_every_tone_of_the_chord(string suffix)
    {
        var quality = ChordQualities.All.Single(q => q.Suffix == suffix);
        foreach (var type in ChordScales.For(quality))
        {
            var sounds = type.Degrees.Select(d => d.HalfSteps).ToHashSet();
            quality.Degrees.ShouldAllBe(d => sounds.Contains(d.HalfSteps % 12), type.Name);
        }
    }

    // In a major and a minor key, alone and before the chord a fourth up: the scale of the moment is one of several.
    [Theory]
    [MemberData(nameof(Suffixes))]
    public void Tones_of_a_chord_are_spelled_in_its_scale_as_in_the_chord(string suffix)
    {
        var quality = ChordQualities.All.Single(q => q.Suffix == suffix);
        foreach (var root in (string[])["C", "F#", "Ab", "B"])
        {
            var chord = new Chord(NoteName.Parse(root), quality);
            foreach (var tonic in (string[])["C major", "E minor"])
            {
                var key = Key.Parse(tonic);
                foreach (var next in (Chord?[])[null, new Chord(chord.Root + Interval.PerfectFourth, ChordQualities.All[0])])
                {
                    var analysis = HarmonicAnalysis.Analyze([chord, next], key)[0]!;
                    var missing = chord.Tones.Where(t => !analysis.ScaleNotes.Contains(t.Note) && !IsSixth(t, chord, analysis)).Select(t => t.Note).ToList();
                    if (missing.Count > 0) Assert.Fail($"{chord} in {tonic}, {analysis.Scale.Type.Name}: {string.Join(' ', analysis.ScaleNotes)}");
                    analysis.ScaleNotes.Distinct().Count().ShouldBe(analysis.ScaleNotes.Length);
                    analysis.ChangedNotes.ShouldAllBe(n => analysis.ScaleNotes.Contains(n));
                }
            }
        }
    }

    // The raised fifth where the scale has the natural one.
    private static bool IsSixth(ChordTone tone, Chord chord, ChordAnalysis analysis) => tone.Degree == new Degree(5, 1) && analysis.ScaleNotes.Contains(chord.NoteOf(new Degree(5)));

    // A mode of harmonic minor names the minor key in the letters of its own notes.
    [Fact]
    public void The_parent_of_a_mode_is_spelled_as_in_the_mode()
    {
        var seen = 0;
        foreach (var tonic in (string[])["F# major", "C# minor", "D# minor", "C major", "Eb minor", "Ab major"])
        {
            foreach (var root in (string[])["C", "Db", "C#", "F", "E#", "Gb", "F#", "B"])
            {
                foreach (var (suffix, parent) in ((string, Interval)[])[("7b9", Interval.PerfectFourth), ("dim7", Interval.MinorSecond)])
                {
                    var chord = Chord.Parse(root + suffix);
                    var analysis = HarmonicAnalysis.Analyze([chord, new Chord(chord.Root + parent, Chord.Parse("Cm").Quality)], Key.Parse(tonic))[0]!;
                    if (!analysis.ScaleReason.Contains("mode of", StringComparison.Ordinal)) continue;
                    analysis.ScaleReason.ShouldContain(" " + (analysis.Scale.Root + parent).Simplest.ToDisplayString() + " harmonic minor");
                    seen++;
                }
            }
        }
        seen.ShouldBeGreaterThan(20);
    }

    // Letters from memory of how players write these chords: the flat fifth of a 13b5 stays flat in lydian dominant.
    [Theory]
    [InlineData("G13b5", "G A B Db D E F")]
    [InlineData("G13#11", "G A B C# D E F")]
    [InlineData("G9#5", "G A B C# D# F")]
    [InlineData("G7#5", "G Ab A# B C# D# F")]
    [InlineData("G7b5", "G Ab A# B Db Eb F")]
    [InlineData("Cdim7", "C D Eb F Gb Ab Bbb B")]
    [InlineData("G7#9", "G Ab A# B C# D E F")]
    [InlineData("G7b9", "G Ab B C D Eb F")]
    [InlineData("D9b5", "D E F# Ab Bb C")]
    [InlineData("D9#5", "D E F# G# A# C")]
    [InlineData("Bm#5", "B C# D E F# G A")]
    public void Scale_notes_take_the_spelling_of_the_chord(string chord, string notes)
    {
        var of = Chord.Parse(chord);
        string.Join(' ', ChordScales.For(of.Quality)[0].DegreesOver(of.Quality).Select(of.NoteOf)).ShouldBe(notes);
    }

    // Common practice.
    [Theory]
    [InlineData("maj7", "major")]
    [InlineData("maj7#11", "lydian")]
    [InlineData("maj7#5", "lydian augmented")]
    [InlineData("m7", "dorian")]
    [InlineData("m", "natural minor")]
    [InlineData("mMaj7", "melodic minor")]
    [InlineData("m7b5", "locrian")]
    [InlineData("m9b5", "locrian natural 2")]
    [InlineData("dim7", "whole-half diminished")]
    [InlineData("7", "mixolydian")]
    [InlineData("13", "mixolydian")]
    [InlineData("7#11", "lydian dominant")]
    [InlineData("7alt", "altered")]
    [InlineData("7#5#9", "altered")]
    [InlineData("7b9b13", "phrygian dominant")]
    [InlineData("13b9", "half-whole diminished")]
    [InlineData("7#9", "half-whole diminished")]
    [InlineData("9#5", "whole tone")]
    [InlineData("7sus4", "mixolydian")]
    [InlineData("7sus4b9", "phrygian")]
    [InlineData("5", "major")]
    public void The_usual_scale_without_a_key(string suffix, string scale) =>
        ChordScales.For(Chord.Parse("C" + (suffix.Length > 0 && suffix[0] == '#' ? "(" + suffix + ")" : suffix)).Quality)[0].Name.ShouldBe(scale);

    // "7" alone means the seventh that the chord has; common practice.
    [Theory]
    [InlineData("Cm7", 1, "R")]
    [InlineData("Cm7", 3, "b3")]
    [InlineData("Cm7", 5, "5")]
    [InlineData("Cm7", 7, "b7")]
    [InlineData("Cm7", 8, "8")]
    [InlineData("Cm7", 10, "b10")]
    [InlineData("Cm7", 15, "15")]
    [InlineData("Cm7", 9, "9")]
    [InlineData("Cm7", 6, "6")]
    [InlineData("Cm7b5", 5, "b5")]
    [InlineData("Cm7b5", 12, "b12")]
    [InlineData("Cdim7", 7, "bb7")]
    [InlineData("Cmaj7", 7, "7")]
    [InlineData("Cmaj7", 14, "14")]
    [InlineData("C7", 7, "b7")]
    [InlineData("C7b9", 9, "b9")]
    [InlineData("C7b9", 2, "b2")]
    [InlineData("C7#11", 4, "#4")]
    [InlineData("C13", 6, "6")]
    [InlineData("Csus4", 3, "4")]
    [InlineData("C7sus4", 10, "11")]
    [InlineData("Csus2", 3, "2")]
    [InlineData("C6", 7, "6")]
    [InlineData("C5", 3, "3")]
    public void A_bare_number_means_the_chords_own_tone(string chord, int number, string degree) =>
        Chord.Parse(chord).Resolve(number).ToString().ShouldBe(degree);

    [Theory]
    [InlineData("G", 7, "mixolydian", "b7")]
    [InlineData("Dm7b5", 9, "locrian", "b9")]
    [InlineData("G7", 9, "phrygian dominant", "b9")]
    [InlineData("G7", 6, "phrygian dominant", "b6")]
    [InlineData("E5", 3, "natural minor", "b3")]
    [InlineData("C", 6, "minor pentatonic", "6")]
    public void What_the_chord_lacks_comes_from_the_scale(string chord, int number, string scale, string degree) =>
        Chord.Parse(chord).Resolve(number, ScaleTypes.Find(scale)).ToString().ShouldBe(degree);
}
