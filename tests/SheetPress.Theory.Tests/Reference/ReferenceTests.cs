namespace SheetPress.Theory.Tests;

/// <summary>
/// Spelled tones against the dictionaries of the npm package tonal (MIT), version pinned in package.json. Names that only one side knows are
/// passed over; where both know a name and differ on purpose, the name is listed here with the reason, and must indeed differ.
/// </summary>
public class ReferenceTests
{
    private static readonly Dictionary<string, string> OtherChords = new(StringComparer.Ordinal)
    {
        ["M7b6 7b13 9b13 mb6M7 mb6b9"] = "the flat sixth or thirteenth does not drive out the fifth here",
        ["M6b5 6b5 7b5b13 9b5b13 7b5#9 7#9b5 7b5b9 7b9b5 7b5b9b13"] = "b5 is a flat fifth here, not a sharp eleventh beside a natural fifth",
        ["m7#5 m9#5"] = "#5 is a sharp fifth here, not a flat sixth",
        ["11 11b9"] = "the eleventh chord keeps its third, as the dominant-11th of MusicXML 4.0 does",
        ["m13 -13"] = "over a minor third the eleventh belongs, as in the minor-13th of MusicXML 4.0",
        ["7alt alt7"] = "alt holds the raised fifth and both altered ninths here",
        ["M7add13"] = "add13 adds the thirteenth alone here",
        ["4"] = "a bare 4 is a suspended fourth here, there a stack of fourths",
        ["^ ^#5 ^7b6"] = "a triangle is a major seventh here, also without its 7, there a major triad",
    };

    private static readonly Dictionary<string, string> OtherScales = new(StringComparer.Ordinal)
    {
        ["minor hexatonic"] = "with a minor seventh here: the minor pentatonic and its second",
        ["whole tone"] = "with a flat seventh here, as the dominant chord under it has",
        ["enigmatic"] = "spelled as its inventor did, 1 b2 3 #4 #5 #6 7 (from memory)",
    };

    [Fact]
    public void Chord_tones_agree()
    {
        var shared = new HashSet<string>(StringComparer.Ordinal);
        var different = new HashSet<string>(StringComparer.Ordinal);
        foreach (var row in ReferenceTables.Chords)
        {
            foreach (var suffix in row.Suffixes)
            {
                // A sign straight after the root would belong to the root.
                if (suffix.StartsWith('b') || suffix.StartsWith('#')) continue;
                foreach (var (root, notes) in row.Notes)
                {
                    if (!Chord.TryParse(root + suffix, out var chord)) continue;
                    shared.Add(suffix);
                    var ours = chord.Tones.Select(t => t.Note.ToString()).Order(StringComparer.Ordinal);
                    if (!ours.SequenceEqual(notes.Split(' ').Order(StringComparer.Ordinal))) different.Add(suffix);
                }
            }
        }
        different.Order().ShouldBe(OtherChords.Keys.SelectMany(k => k.Split(' ')).Order());
        shared.Count.ShouldBeGreaterThanOrEqualTo(190);
    }

    [Fact]
    public void Scale_tones_agree()
    {
        var shared = new HashSet<string>(StringComparer.Ordinal);
        var different = new HashSet<string>(StringComparer.Ordinal);
        foreach (var row in ReferenceTables.Scales)
        {
            foreach (var name in row.Names)
            {
                if (ScaleTypes.Find(name) is not { } type) continue;
                shared.Add(name);
                foreach (var (root, notes) in row.Notes)
                {
                    if (string.Join(' ', new Scale(NoteName.Parse(root), type).Notes) != notes) different.Add(name);
                }
            }
        }
        different.Order().ShouldBe(OtherScales.Keys.Order());
        shared.Count.ShouldBeGreaterThanOrEqualTo(75);
    }

    [Fact]
    public void Key_signatures_scales_triads_and_sevenths_agree()
    {
        ReferenceTables.Keys.Length.ShouldBe(30);
        foreach (var row in ReferenceTables.Keys)
        {
            var key = Key.Parse(row.Key);
            key.Fifths.ShouldBe(row.Signature, row.Key);
            string.Join(' ', key.Scale.Notes).ShouldBe(row.Scale, row.Key);
            string.Join(' ', Enumerable.Range(1, 7).Select(key.NoteOf)).ShouldBe(row.Scale, row.Key);
            StackedThirds(key, 3).ShouldBe(row.Triads, row.Key);
            StackedThirds(key, 4).ShouldBe(row.Sevenths, row.Key);
        }
    }

    [Fact]
    public void Suggested_scales_agree_over_the_chords_of_a_key()
    {
        foreach (var row in ReferenceTables.Keys)
        {
            Chord?[] chords = [.. row.Sevenths.Split(' ').Select(Chord.Parse)];
            var analysis = HarmonicAnalysis.Analyze(chords, Key.Parse(row.Key));
            for (var i = 0; i < chords.Length; i++)
            {
                analysis[i]!.Scale.ShouldBe(Scale.Parse(row.Scales[i]), $"{chords[i]} in {row.Key}");
                analysis[i]!.ChangedNotes.ShouldBeEmpty();
            }
        }
    }

    [Fact]
    public void Suggested_scales_agree_over_the_dominant_and_leading_tone_of_harmonic_minor()
    {
        foreach (var row in ReferenceTables.Keys.Where(k => k.HarmonicSevenths is not null))
        {
            var chords = row.HarmonicSevenths!.Split(' ');
            foreach (var degree in (int[])[4, 6])
            {
                var analysis = HarmonicAnalysis.Analyze([Chord.Parse(chords[degree])], Key.Parse(row.Key))[0]!;
                analysis.Scale.ShouldBe(Scale.Parse(row.HarmonicScales![degree]), $"{chords[degree]} in {row.Key}");
            }
        }
    }

    [Fact]
    public void Secondary_dominants_agree()
    {
        foreach (var row in ReferenceTables.Keys.Where(k => k.SecondaryDominants is not null))
        {
            var key = Key.Parse(row.Key);
            string[] numerals = ["V7/ii", "V7/iii", "V7/IV", "V7/V", "V7/vi"];
            string.Join(' ', numerals.Select(n => RomanNumeral.Parse(n).ToChord(key))).ShouldBe(row.SecondaryDominants, row.Key);
        }
    }

    private static string StackedThirds(Key key, int tones) => string.Join(' ', Enumerable.Range(1, 7).Select(degree =>
    {
        var root = key.NoteOf(degree);
        var degrees = Enumerable.Range(0, tones).Select(i => Degree.FromInterval(root.IntervalTo(key.NoteOf(degree + (2 * i)))));
        return new Chord(root, ChordQuality.FromDegrees(degrees)).ToString();
    }));
}
