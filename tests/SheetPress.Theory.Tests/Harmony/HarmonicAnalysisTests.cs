using CsCheck;

namespace SheetPress.Theory.Tests;

public class HarmonicAnalysisTests
{
    private const string CycleInCMinor = "Cm7 Fm7 Bb7 Ebmaj7 Abmaj7 Dm7b5 G7 Cm7";

    // Common practice: the degrees of natural minor, and the major dominant with its scale from harmonic minor.
    [Fact]
    public void The_cycle_in_minor()
    {
        var analysis = Analyze("C minor", CycleInCMinor);
        analysis.Select(a => a.Roman).ShouldBe(["i7", "iv7", "VII7", "IIImaj7", "VImaj7", "iiø7", "V7", "i7"]);
        analysis.Select(a => a.Scale.ToString()).ShouldBe(
            ["C natural minor", "F dorian", "Bb mixolydian", "Eb major", "Ab lydian", "D locrian", "G phrygian dominant", "C natural minor"]);
        analysis.Select(a => string.Join(' ', a.ChangedNotes)).ShouldBe(["", "", "", "", "", "", "B", ""]);
        analysis.Select(a => string.Join(' ', a.GuideTones.Select(t => t.Note))).ShouldBe(["Eb Bb", "Ab Eb", "D Ab", "G D", "C G", "F C", "B F", "Eb Bb"]);
        analysis[6].Function.ShouldBe("dominant");
        analysis[6].ScaleReason.ShouldBe("fifth mode of C harmonic minor");
        analysis[2].Function.ShouldBe("dominant of III within the key");
    }

    // Numeral, function and scale of one chord (the first) before the others. Common practice.
    [Theory]
    [InlineData("C major", "Cmaj7", "Imaj7", HarmonicFunction.Tonic, "C major")]
    [InlineData("C major", "Dm7 G7", "ii7", HarmonicFunction.Subdominant, "D dorian")]
    [InlineData("C major", "Em7", "iii7", HarmonicFunction.TonicSubstitute, "E phrygian")]
    [InlineData("C major", "Fmaj7", "IVmaj7", HarmonicFunction.Subdominant, "F lydian")]
    [InlineData("C major", "G13", "V13", HarmonicFunction.Dominant, "G mixolydian")]
    [InlineData("C major", "G7b9", "V7b9", HarmonicFunction.Dominant, "G phrygian dominant")]
    [InlineData("C major", "G13b9", "V13b9", HarmonicFunction.Dominant, "G half-whole diminished")]
    [InlineData("C major", "G7alt C", "V7alt", HarmonicFunction.Dominant, "G altered")]
    [InlineData("C major", "G9#5 C", "V9#5", HarmonicFunction.Dominant, "G whole tone")]
    [InlineData("C major", "G7sus4", "V7sus4", HarmonicFunction.Dominant, "G mixolydian")]
    [InlineData("C major", "Bm7b5 C", "viiø7", HarmonicFunction.LeadingTone, "B locrian")]
    [InlineData("C major", "A7 Dm7", "V7/ii", HarmonicFunction.SecondaryDominant, "A mixolydian b6")]
    [InlineData("C major", "B7 Em7", "V7/iii", HarmonicFunction.SecondaryDominant, "B phrygian dominant")]
    [InlineData("C major", "C7 Fmaj7", "V7/IV", HarmonicFunction.SecondaryDominant, "C mixolydian")]
    [InlineData("C major", "D7 G7", "V7/V", HarmonicFunction.SecondaryDominant, "D mixolydian")]
    [InlineData("C major", "E7 Am", "V7/vi", HarmonicFunction.SecondaryDominant, "E phrygian dominant")]
    [InlineData("C major", "E Am", "V/vi", HarmonicFunction.SecondaryDominant, "E phrygian dominant")]
    [InlineData("C major", "A7#11 Dm", "V7#11/ii", HarmonicFunction.SecondaryDominant, "A lydian dominant")]
    [InlineData("Bb major", "Bb7#11 Eb", "V7#11/IV", HarmonicFunction.SecondaryDominant, "Bb lydian dominant")]
    [InlineData("C major", "A7", "V7/ii", HarmonicFunction.SecondaryDominant, "A mixolydian b6")]
    [InlineData("C major", "Eb7 Abmaj7", "V7/bVI", HarmonicFunction.SecondaryDominant, "Eb mixolydian")]
    [InlineData("C major", "Gb7 Bmaj7", "V7/VII", HarmonicFunction.SecondaryDominant, "Gb mixolydian")]
    [InlineData("C major", "Db7 Cmaj7", "bII7", HarmonicFunction.SubstituteDominant, "Db lydian dominant")]
    [InlineData("C major", "Ab7 G7", "bVI7", HarmonicFunction.SubstituteDominant, "Ab lydian dominant")]
    [InlineData("C major", "Ab7 Dm7 G7", "bVI7", HarmonicFunction.SubstituteDominant, "Ab lydian dominant")]
    [InlineData("C major", "Ab7 C/G G7", "bVI7", HarmonicFunction.SubstituteDominant, "Ab lydian dominant")]
    [InlineData("C major", "Db7 G7 C", "bII7", HarmonicFunction.SubstituteDominant, "Db lydian dominant")]
    [InlineData("C major", "Ab7 Bb7 C", "bVI7", HarmonicFunction.Borrowed, "Ab lydian dominant")]
    [InlineData("C major", "Ab7 C", "bVI7", HarmonicFunction.Borrowed, "Ab lydian dominant")]
    [InlineData("C major", "Db7 D7 G7", "bII7", HarmonicFunction.Sliding, "Db lydian dominant")]
    [InlineData("C major", "Eb7 Dm7", "bIII7", HarmonicFunction.SubstituteDominant, "Eb lydian dominant")]
    [InlineData("C major", "Bb7 C", "bVII7", HarmonicFunction.BackdoorDominant, "Bb lydian dominant")]
    [InlineData("C major", "C#dim7 Dm7", "vii°7/ii", HarmonicFunction.LeadingToneOf, "C# ultralocrian")]
    [InlineData("C major", "F#dim7 C/G", "vii°7/V", HarmonicFunction.LeadingToneOf, "F# ultralocrian")]
    [InlineData("C major", "Ebdim7 Dm7", "biii°7", HarmonicFunction.PassingDiminished, "Eb whole-half diminished")]
    [InlineData("C major", "D#dim7 C/E", "#ii°7", HarmonicFunction.CommonToneDiminished, "D# whole-half diminished")]
    [InlineData("C major", "Em7b5 A7 Dm7", "iiø7/ii", HarmonicFunction.SupertonicOf, "E locrian")]
    [InlineData("C major", "Gm7 C7 F", "ii7/IV", HarmonicFunction.SupertonicOf, "G dorian")]
    [InlineData("C major", "Fm7 Bb7 C", "iv7", HarmonicFunction.Borrowed, "F dorian")]
    [InlineData("C major", "Fm7 Bb7 Ebmaj7", "ii7/bIII", HarmonicFunction.SupertonicOf, "F dorian")]
    [InlineData("C major", "Fm6 C", "iv6", HarmonicFunction.Borrowed, "F melodic minor")]
    [InlineData("C major", "Dm7b5 G7", "iiø7", HarmonicFunction.Borrowed, "D locrian")]
    [InlineData("C major", "Abmaj7", "bVImaj7", HarmonicFunction.Borrowed, "Ab lydian")]
    [InlineData("C major", "Bbmaj7", "bVIImaj7", HarmonicFunction.Borrowed, "Bb lydian")]
    [InlineData("C major", "Dbmaj7 C", "bIImaj7", HarmonicFunction.FlatSecond, "Db lydian")]
    [InlineData("C major", "F#m7b5 Fm6", "#ivø7", HarmonicFunction.RaisedFourth, "F# locrian")]
    [InlineData("C major", "C7 F7", "I7", HarmonicFunction.BluesTonic, "C mixolydian")]
    [InlineData("C major", "F7 C7", "IV7", HarmonicFunction.BluesSubdominant, "F mixolydian")]
    [InlineData("C major", "F7 Em7 A7 Dm7", "IV7", HarmonicFunction.BluesSubdominant, "F mixolydian")]
    [InlineData("C major", "C7 F C7 G7", "I7", HarmonicFunction.BluesTonic, "C mixolydian")]
    [InlineData("C major", "C7 Fmaj7 C G7 C7 F", "V7/IV", HarmonicFunction.SecondaryDominant, "C mixolydian")]
    [InlineData("C minor", "Cm6", "i6", HarmonicFunction.Tonic, "C dorian")]
    [InlineData("C minor", "CmMaj7", "imaj7", HarmonicFunction.Tonic, "C harmonic minor")]
    [InlineData("C minor", "Gm7 Cm7", "v7", HarmonicFunction.MinorDominant, "G phrygian")]
    [InlineData("C minor", "G Cm", "V", HarmonicFunction.Dominant, "G phrygian dominant")]
    [InlineData("C minor", "G7#5 Cm", "V7#5", HarmonicFunction.Dominant, "G altered")]
    [InlineData("C minor", "G7b9 Cm", "V7b9", HarmonicFunction.Dominant, "G phrygian dominant")]
    [InlineData("C minor", "Bdim7 Cm", "vii°7", HarmonicFunction.LeadingTone, "B ultralocrian")]
    [InlineData("C minor", "Bb Ab", "VII", HarmonicFunction.Subtonic, "Bb mixolydian")]
    [InlineData("C minor", "F7 Cm", "IV7", HarmonicFunction.Borrowed, "F mixolydian")]
    [InlineData("C minor", "D7 G7", "V7/V", HarmonicFunction.SecondaryDominant, "D phrygian dominant")]
    [InlineData("C minor", "C7 Fm7", "V7/iv", HarmonicFunction.SecondaryDominant, "C mixolydian b6")]
    [InlineData("C minor", "Ab7 Cm", "VI7", HarmonicFunction.Subdominant, "Ab lydian dominant")]
    [InlineData("C minor", "Ab7 G7", "VI7", HarmonicFunction.SubstituteDominant, "Ab lydian dominant")]
    [InlineData("C minor", "C", "I", HarmonicFunction.MajorTonicInMinor, "C mixolydian")]
    [InlineData("D dorian", "G7", "IV7", HarmonicFunction.ModalColor, "G mixolydian")]
    [InlineData("E phrygian", "Fmaj7", "IImaj7", HarmonicFunction.ModalColor, "F lydian")]
    [InlineData("F lydian", "G7", "II7", HarmonicFunction.ModalColor, "G mixolydian")]
    [InlineData("G mixolydian", "Fmaj7", "VIImaj7", HarmonicFunction.ModalColor, "F lydian")]
    [InlineData("E major", "Ab7 C#m7", "V7/vi", HarmonicFunction.SecondaryDominant, "Ab phrygian dominant")]
    [InlineData("E minor", "B5", "V5", HarmonicFunction.Dominant, "B phrygian")]
    public void A_chord_in_its_place(string key, string progression, string numeral, HarmonicFunction function, string scale)
    {
        var analysis = Analyze(key, progression)[0];
        analysis.Roman.ShouldBe(numeral);
        analysis.Kind.ShouldBe(function, analysis.Function);
        analysis.Scale.ToString().ShouldBe(scale, analysis.ScaleReason);
        analysis.Numeral.ToString().ShouldBe(numeral);
    }

    // Where the words name a degree, the numeral is on it, however the chord is spelled: the meaning of the words.
    [Theory]
    [InlineData("major", "")]
    [InlineData("minor", "m")]
    [InlineData("dorian", "m")]
    [InlineData("lydian", "")]
    [InlineData("mixolydian", "")]
    public void Numeral_and_words_agree_on_the_degree(string mode, string third)
    {
        var named = new Dictionary<HarmonicFunction, Interval>
        {
            [HarmonicFunction.FlatSecond] = Interval.MinorSecond,
            [HarmonicFunction.RaisedFourth] = Interval.FromNumber(4, 1),
            [HarmonicFunction.LeadingTone] = Interval.FromNumber(7),
            [HarmonicFunction.BackdoorDominant] = Interval.FromNumber(7, -1),
        };
        string[] kinds = ["", "maj7", "m", "m7", "7", "7sus4", "m7b5", "dim7", "dim", "aug", "6", "sus4", "sus2", "5", "m6", "7b9"];
        var met = new HashSet<HarmonicFunction>();
        for (var tonic = -6; tonic <= 6; tonic++)
        {
            if (!Key.TryParse($"{NoteName.FromFifths(tonic)} {mode}", out var key)) continue;
            for (var root = -9; root <= 11; root++)
            {
                foreach (var kind in kinds)
                {
                    var chord = Chord.Parse(NoteName.FromFifths(root) + kind);
                    var analysis = HarmonicAnalysis.Analyze([chord, Chord.Parse(key.Tonic + third)], key)[0]!;
                    if (!named.TryGetValue(analysis.Kind, out var above)) continue;
                    met.Add(analysis.Kind);
                    analysis.Numeral.ToChord(key).Root.ShouldBe(key.Tonic + above, $"{chord} in {key} is {analysis.Roman}: {analysis.Function}");
                }
            }
        }
        met.ShouldContain(HarmonicFunction.LeadingTone);
        if (mode is "major" or "minor") met.ShouldContain(HarmonicFunction.FlatSecond);
    }

    [Theory]
    [InlineData("C minor", "C#maj7 Cm", "bIImaj7", HarmonicFunction.FlatSecond)]
    [InlineData("C minor", "C#7 Cm", "bII7", HarmonicFunction.SubstituteDominant)]
    [InlineData("C minor", "C#dim7 Dm7b5", "vii°7/ii", HarmonicFunction.LeadingToneOf)]
    [InlineData("C minor", "Cbdim7 Cm", "vii°7", HarmonicFunction.LeadingTone)]
    [InlineData("C major", "Gbm7b5 Fm6", "#ivø7", HarmonicFunction.RaisedFourth)]
    [InlineData("C major", "C#sus2 C", "bIIsus2", HarmonicFunction.Borrowed)]
    [InlineData("C major", "A#7sus4 C", "bVII7sus4", HarmonicFunction.BackdoorDominant)]
    public void A_chord_in_the_other_spelling(string key, string progression, string numeral, HarmonicFunction function)
    {
        var analysis = Analyze(key, progression)[0];
        analysis.Roman.ShouldBe(numeral);
        analysis.Kind.ShouldBe(function, analysis.Function);
    }

    // Modulations without a new signature, suspended dominants over a bass, line clichés, chords that slide: common practice.
    [Theory]
    [InlineData("C major", "F#m7 B7 Emaj7 C#m7 F#m7 B7 Emaj7 Dm7", "ii7/III V7/III Imaj7/III vi7/III ii7/III V7/III Imaj7/III ii7")]
    [InlineData("Ab major", "Dm7 G7 Cmaj7 Cm7 Fm7", "ii7/III V7/III Imaj7/III iii7 vi7")]
    [InlineData("Ab major", "D7 Gmaj7 F#m7b5 B7b9 Emaj7 C7#5 Fm7", "V7/VII Imaj7/VII iiø7/bVI V7b9/bVI Imaj7/bVI V7#5/vi vi7")]
    [InlineData("G major", "Gm7 C7 Fmaj7 Fm7 Bb7 Ebmaj7", "ii7/bVII V7/bVII Imaj7/bVII ii7/bVI V7/bVI Imaj7/bVI")]
    [InlineData("B major", "D7 Gmaj7 Bb7 Ebmaj7 F#7 B6", "V7/bVI Imaj7/bVI V7/III Imaj7/III V7 I6")]
    [InlineData("Eb major", "B7 E7 Ebmaj7", "V7/bII bII7 Imaj7")]
    [InlineData("Bb major", "Dm7 G7 Cm7 F7 Bb6", "iii7 V7/ii ii7 V7 I6")]
    [InlineData("C major", "E7 Am D7 G", "V7/vi vi V7/V V")]
    [InlineData("F major", "F7 Bb7 F7 Cm7 F7 Bb7 F7", "I7 IV7 I7 ii7/IV V7/IV IV7 I7")]
    public void Numerals(string key, string progression, string numerals) =>
        string.Join(' ', Analyze(key, progression).Select(a => a.Roman)).ShouldBe(numerals);

    [Theory]
    [InlineData("C major", "B7 Emaj7", "secondary dominant of III", "the notes of E major, the key of the moment")]
    [InlineData("C major", "B7 Em7", "secondary dominant of iii", "fifth mode of E harmonic minor")]
    [InlineData("E major", "A/B E", "suspended dominant", "the notes of E major, from A")]
    [InlineData("E major", "F#m7/B E", "suspended dominant", "the notes of E major, from F♯")]
    [InlineData("Eb major", "Cm6 Abmaj7", "tonic substitute", "the notes of the key but for A")]
    [InlineData("F major", "Abm7 Gm7", "passing chord, slides into ii", "holds every tone of the chord")]
    [InlineData("F major", "Eb7 Am7", "backdoor dominant", "usual over a dominant that does not fall a fifth")]
    [InlineData("D major", "Ddim7 Em7", "common-tone diminished", "chord tones, each with a half step below")]
    [InlineData("G major", "G#dim7 D/A", "leading-tone chord of ii", "seventh mode of A harmonic minor")]
    [InlineData("C minor", "Dm11b5 G7", "subdominant", "the notes of the key but for E")]
    [InlineData("C minor", "Ebmaj7#5 Abmaj7", "tonic substitute", "the notes of the key but for B")]
    [InlineData("F minor", "Fm#5 Fm6", "tonic", "the notes of F minor, from F")]
    [InlineData("G minor", "D7#5 Gm", "dominant", "the notes of the key but for F♯ and G♯")]
    [InlineData("F major", "Gb7b5 F", "tritone substitute, leads to I", "usual over a dominant that does not fall a fifth")]
    public void Phrases_of_less_common_places(string key, string progression, string function, string reason)
    {
        var analysis = Analyze(key, progression)[0];
        analysis.Function.ShouldBe(function);
        analysis.ScaleReason.ShouldBe(reason);
    }

    [Theory]
    [InlineData("C major", "A7 Dm7", "secondary dominant of ii", "the notes of the key but for C♯")]
    [InlineData("C major", "Abmaj7", "borrowed from C minor", "the notes of C minor, where the chord comes from")]
    [InlineData("C major", "Dm7", "subdominant", "the notes of C major, from D")]
    [InlineData("C major", "Db7 C", "tritone substitute, leads to I", "usual over a dominant that does not fall a fifth")]
    [InlineData("C major", "C#dim7 Dm", "leading-tone chord of ii", "seventh mode of D harmonic minor")]
    [InlineData("D dorian", "G7", "color chord of the Dorian mode", "the notes of D Dorian, from G")]
    public void Phrases(string key, string progression, string function, string reason)
    {
        var analysis = Analyze(key, progression)[0];
        analysis.Function.ShouldBe(function);
        analysis.ScaleReason.ShouldBe(reason);
    }

    // A chord has one numeral on a sheet: where it stands and where another leads to it.
    [Theory]
    [InlineData("C major")]
    [InlineData("Ab major")]
    [InlineData("E major")]
    [InlineData("F minor")]
    [InlineData("C# minor")]
    public void A_goal_has_the_numeral_of_the_chord_that_stands_on_it(string key)
    {
        var (seen, tonic) = (0, Key.Parse(key));
        foreach (var root in "C C# Db D D# Eb E F F# Gb G G# Ab A A# Bb B".Split(' '))
        {
            foreach (var quality in (string[])["", "m", "m6", "m(maj7)", "sus4", "maj7#5"])
            {
                var goal = Chord.Parse(root + quality);
                var analyses = HarmonicAnalysis.Analyze([new Chord(goal.Root - Interval.PerfectFourth, Chord.Parse("C7").Quality), goal], tonic);
                if (analyses[0]!.Kind != HarmonicFunction.SecondaryDominant) continue;
                // As I/III it is on the third degree for a moment.
                var own = analyses[1]!.Numeral.Target ?? analyses[1]!.Numeral;
                analyses[0]!.Numeral.Target!.ToChord(tonic).Root.ShouldBe(own.ToChord(tonic).Root, $"{goal} in {key}");
                seen++;
            }
        }
        seen.ShouldBeGreaterThan(60);
    }

    // A dominant right before a change of key is heard in the key that it leads to, and so is its ii where the old key has no such chord;
    // the old key's own dominant and common chords stay at home. Common practice.
    [Theory]
    [InlineData("C major", "Cmaj7 G7 * Eb7", "Ab major", "Abmaj7 Db6", "Imaj7 V7 V7 Imaj7 IV6", "tonic; dominant; dominant of the new key, A♭ major; tonic; subdominant")]
    [InlineData("C major", "C Fm7 Bb9 Bb7", "Eb major", "Ebmaj7", "I ii7 V9 V7 Imaj7", "tonic; second degree of the new key, E♭ major; dominant of the new key, E♭ major; dominant of the new key, E♭ major; tonic")]
    [InlineData("C minor", "Cm7 Bb7", "Eb major", "Fm7 Bb7", "i7 V7 ii7 V7", "tonic; dominant of the new key, E♭ major; subdominant; dominant")]
    [InlineData("F major", "F Em7b5 A7b9", "D minor", "Dm", "I iiø7 V7b9 i", "tonic; second degree of the new key, D minor; dominant of the new key, D minor; tonic")]
    [InlineData("C minor", "Fm7 G7", "C major", "C6", "iv7 V7 I6", "subdominant; dominant; tonic")]
    [InlineData("G major", "C D", "F major", "F", "IV V I", "subdominant; dominant; tonic")]
    [InlineData("G major", "Em C", "F major", "F", "vi IV I", "tonic substitute; subdominant; tonic")]
    public void Chords_that_lead_into_a_new_key(string key, string before, string newKey, string after, string numerals, string functions)
    {
        Chord?[] first = [.. before.Split(' ').Select(c => c == "*" ? null : Chord.Parse(c))];
        Chord?[] second = [.. after.Split(' ').Select(Chord.Parse)];
        var keys = first.Select(_ => Key.Parse(key)).Concat(second.Select(_ => Key.Parse(newKey)));
        var analysis = HarmonicAnalysis.Analyze([.. first, .. second], [.. keys]).OfType<ChordAnalysis>().ToArray();
        string.Join(' ', analysis.Select(a => a.Roman)).ShouldBe(numerals);
        string.Join("; ", analysis.Select(a => a.Function)).ShouldBe(functions);
    }

    // The scale of the dominant of a new key is the one that it has there. Common practice.
    [Fact]
    public void The_dominant_of_a_new_key_takes_its_scale_from_there()
    {
        var keys = new[] { Key.Parse("F major"), Key.Parse("F major"), Key.Parse("D minor") };
        var dominant = HarmonicAnalysis.Analyze([Chord.Parse("F"), Chord.Parse("A7"), Chord.Parse("Dm")], keys)[1]!;
        dominant.Scale.ToString().ShouldBe("A phrygian dominant");
        dominant.ChangedNotes.Select(n => n.ToString()).ShouldBe(["C#"]);
    }

    [Fact]
    public void No_chord_stays_in_its_place_and_repetitions_do_not_hide_the_goal()
    {
        Chord?[] progression = [Chord.Parse("A7"), null, Chord.Parse("A7/C#"), Chord.Parse("Dm7")];
        var analysis = HarmonicAnalysis.Analyze(progression, Key.Parse("C major"));
        analysis.Length.ShouldBe(4);
        analysis[1].ShouldBeNull();
        analysis[0]!.Roman.ShouldBe("V7/ii");
        analysis[2]!.Roman.ShouldBe("V7/3 of ii");
        HarmonicAnalysis.Analyze([], Key.Parse("C major")).ShouldBeEmpty();
    }

    // Common practice: a raised fifth is spelled alike in the chord and in its scale, and a sixth chord with a raised eleventh takes lydian.
    [Theory]
    [InlineData("B minor", "F#7#5 Bm", "F# G G## A# B# C## E", "the notes of the key but for A♯ and B♯")]
    [InlineData("C minor", "G7#5 Cm", "G Ab A# B C# D# F", "the notes of the key but for B and C♯")]
    [InlineData("C minor", "D6#11 Cm", "D E F# G# A B C#", "holds every tone of the chord")]
    [InlineData("D major", "D6#11 G", "D E F# G# A B C#", "the notes of the key but for G♯")]
    public void The_scale_agrees_with_the_symbol(string key, string chords, string notes, string reason)
    {
        var analysis = HarmonicAnalysis.Analyze([.. chords.Split(' ').Select(Chord.Parse)], Key.Parse(key))[0]!;
        string.Join(' ', analysis.ScaleNotes).ShouldBe(notes);
        analysis.ScaleReason.ShouldBe(reason);
        analysis.Chord.Tones.ShouldAllBe(t => analysis.ScaleNotes.Contains(t.Note));
    }

    // The bass is the degree of the chord that its spelling says, also where the key reads the root in its other spelling.
    [Theory]
    [InlineData("F major", "Bb7/Ab", "IV7/7")]
    [InlineData("F major", "A#7/G#", "IV7/7")]
    [InlineData("F major", "Bb7/G#", "IV7/#6")]
    [InlineData("F major", "A#7/E#", "IV7/5")]
    [InlineData("C major", "C/Bb", "I/b7")]
    [InlineData("C major", "C/A#", "I/#6")]
    [InlineData("E major", "Ab/Gb", "III/b7")]
    [InlineData("E major", "G#/F#", "III/b7")]
    [InlineData("E major", "Ab/Fb", "III/b6")]
    public void The_bass_is_named_by_its_spelling(string key, string chord, string roman)
    {
        var analysis = HarmonicAnalysis.Analyze([Chord.Parse(chord)], Key.Parse(key));
        analysis[0]!.Roman.ShouldBe(roman);
    }

    // Guide tones: third and seventh, or what stands for them. Common practice.
    [Theory]
    [InlineData("C7sus4", "4 b7")]
    [InlineData("C6", "3 6")]
    [InlineData("Cm", "b3 5")]
    [InlineData("C5", "R 5")]
    [InlineData("Cno5", "3 R")]
    [InlineData("Cdim7", "b3 bb7")]
    public void Guide_tones(string chord, string tones) =>
        string.Join(' ', Analyze("C major", chord)[0].GuideTones.Select(t => t.Degree)).ShouldBe(tones);

    [Fact]
    public void Any_progression_in_any_key_is_analysed()
    {
        var chords = Gen.Select(Samples.NoteNames, Samples.Qualities, Gen.Nullable(Samples.NoteNames), (root, quality, bass) => new Chord(root, quality, bass == root ? null : bass));
        Gen.Select(chords.Array[1, 8], Samples.Keys).Sample((progression, key) =>
        {
            var analysis = HarmonicAnalysis.Analyze(progression, key);
            for (var i = 0; i < progression.Length; i++)
            {
                var entry = analysis[i]!;
                entry.Chord.ShouldBe(progression[i]);
                progression[i].Tones.ShouldAllBe(t => entry.Scale.ContainsSound(t.Note), $"{progression[i]} in {key}: {entry.Scale}");
                entry.ChangedNotes.ShouldAllBe(n => !key.Scale.ContainsSound(n));
                entry.Function.ShouldNotContain("{");
                entry.ScaleReason.ShouldNotContain("{");
                RomanNumeral.Parse(entry.Roman).ToChord(key).Root.PitchClass.ShouldBe(progression[i].Root.PitchClass, entry.Roman);
            }
            HarmonicAnalysis.FindPatterns(progression, key).ShouldAllBe(p => p.First >= 0 && p.Last < progression.Length && p.First <= p.Last && !p.Sentence.Contains('{'));
        });
    }

    [Fact]
    public void The_analysis_goes_along_when_key_and_chords_move()
    {
        var home = Key.Parse("C minor");
        Chord[] chords = [.. CycleInCMinor.Split(' ').Select(Chord.Parse)];
        foreach (var key in Key.All(Mode.Minor))
        {
            var transposition = new KeyTransposition(home, key);
            var moved = HarmonicAnalysis.Analyze([.. chords.Select(transposition.Apply)], key);
            moved.Select(a => a!.Roman).ShouldBe(Analyze("C minor", CycleInCMinor).Select(a => a.Roman));
            moved.Select(a => a!.Scale.Type).ShouldBe(Analyze("C minor", CycleInCMinor).Select(a => a.Scale.Type));
        }
    }

    [Fact]
    public void Wording_covers_every_case()
    {
        var words = HarmonyWording.English;
        Enum.GetValues<HarmonicFunction>().ShouldAllBe(f => words[f].Length > 0);
        Enum.GetValues<ScaleReason>().ShouldAllBe(r => words[r].Length > 0);
        Enum.GetValues<ProgressionPatternKind>().ShouldAllBe(p => words[p].EndsWith('.'));
        Enum.GetValues<Mode>().ShouldAllBe(m => words[m].Length > 0);
        words.List([]).ShouldBe("nothing");
        words.List(["a"]).ShouldBe("a");
        words.List(["a", "b", "c"]).ShouldBe("a, b and c");
    }

    [Fact]
    public void Another_language_is_another_table()
    {
        var german = HarmonyWording.Read("function Tonic: Tonika\n\nreason KeyMode: die Töne von {key}, ab {root}\nmode Minor: Moll\nword nothing: nichts\n");
        var analysis = HarmonicAnalysis.Analyze([Chord.Parse("Ebm7")], Key.Parse("Eb minor"), german)[0]!;
        analysis.Function.ShouldBe("Tonika");
        analysis.ScaleReason.ShouldBe("die Töne von E♭ Moll, ab E♭");
        Should.Throw<FormatException>(() => HarmonyWording.Read("no colon"));
        Should.Throw<FormatException>(() => HarmonyWording.Read("mode Minor: a\nmode Minor: b"));
    }

    private static ChordAnalysis[] Analyze(string key, string progression) =>
        [.. HarmonicAnalysis.Analyze([.. progression.Split(' ').Select(Chord.Parse)], Key.Parse(key)).Select(a => a!)];
}
