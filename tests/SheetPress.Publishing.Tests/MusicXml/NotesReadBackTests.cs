using CsCheck;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Publishing.Tests.MusicXml;

/// <summary>The notes of a file, read back by the rules of the standard and compared with the score one by one.</summary>
public class NotesReadBackTests
{
    // Half steps that a natural harmonic sounds above the open string, by fret touched: the partials of a string (physics of a string).
    private static readonly Dictionary<int, int> Harmonics = new() { [12] = 12, [7] = 19, [19] = 19, [5] = 24, [24] = 24, [9] = 28, [4] = 28, [16] = 28 };

    public static TheoryData<string> Samples => SchemaTests.Samples;

    [Theory]
    [MemberData(nameof(Samples))]
    public void An_exercise_reads_back(string sample)
    {
        var score = SampleScores.Named(sample);
        Compare([score], ReadMusic.Of(Written.Exercise(score)));
    }

    [Fact]
    public void A_lesson_reads_back() => Compare(SampleScores.All, ReadMusic.Of(Written.Lesson([.. SampleScores.All])));

    [Fact]
    public void Random_lines_read_back()
    {
        var instruments = OneOf([.. InstrumentCatalogue.All]);
        var meters = OneOf("4/4", "3/4", "6/8", "5/4", "7/8", "12/8");
        var keys = OneOf("C major", "Eb minor", "F# major", "D dorian", "Cb major");
        var lengths = OneOf("1", "1/2", "3/2", "2", "1/4", "3/4", "1/3", "2/3", "4", "5").Array[1, 24];
        var compared = 0;
        Gen.Select(instruments, meters, keys, lengths, Gen.Int[0, int.MaxValue - 1]).Sample((instrument, meter, key, values, seed) =>
        {
            var random = new Random(seed);
            var line = string.Join(' ', values.Select(v => Word(random, instrument, v)));
            // A second voice of half notes and silence, as long as whole half notes fit under the first.
            var halves = (int)(LineText.Read(instrument, line).Length / 2).Floor;
            var second = random.Next(2) == 0 || halves == 0 ? null : string.Join(' ', Enumerable.Range(0, halves).Select(_ => Word(random, instrument, "2")));
            var layout = (StaffLayout)random.Next(3);
            Score score;
            try
            {
                score = SampleScores.Build(SampleScores.Header("random") with { Instrument = instrument, Layout = layout }, meter, key, line, second);
            }
            catch (ArgumentException)
            {
                // Such a chain of thirds may have no notation; nothing to write then.
                return;
            }
            Compare([score], ReadMusic.Of(Written.Exercise(score)));
            Interlocked.Increment(ref compared);
            Compare([score, SampleScores.Named("tab-only"), score], ReadMusic.Of(Written.Lesson(score, SampleScores.Named("tab-only"), score)));
        }, iter: 200);
        compared.ShouldBeGreaterThan(100);
    }

    private static Gen<T> OneOf<T>(params T[] choices) => Gen.Int[0, choices.Length - 1].Select(i => choices[i]);

    private static string Word(Random random, Instrument instrument, string length)
    {
        if (random.Next(6) == 0) return "r:" + length;
        var s = random.Next(1, instrument.StringCount + 1);
        var fret = random.Next(0, instrument.PlayableFrets + 1);
        var number = instrument.MidiNumberAt(s, fret);
        var spellings = from letter in Enum.GetValues<Letter>()
                        from alteration in new[] { -2, -1, 0, 1, 2 }
                        let name = new NoteName(letter, alteration)
                        where Math.Abs(name.PitchClass - (number % 12)) % 12 == 0
                        select Pitch.AtOrAbove(name, number);
        var all = spellings.Where(p => p.MidiNumber == number).ToArray();
        return $"{all[random.Next(all.Length)]}@{s}.{fret}:{length}";
    }

    private static void Compare(IReadOnlyList<Score> scores, ReadMusic music)
    {
        var measure = 0;
        var shows = scores.Select(s => s.Layout).ToArray();
        var hasNotation = shows.Any(l => l != StaffLayout.Tab);
        var tabStaff = hasNotation ? 2 : 1;
        foreach (var score in scores)
        {
            foreach (var m in score.Measures)
            {
                music.Lengths[measure].ShouldBe(m.Length, $"length of measure {measure}");
                for (var v = 0; v < m.Voices.Length; v++)
                {
                    var upper = music.Notes.Where(n => n.Measure == measure && n.Staff == 1 && n.Voice == v + 1).ToList();
                    var where = $"{score.Id}, measure {measure}, voice {v}";
                    CompareVoice(score, m.Voices[v], upper, music, where);
                    if (score.Layout == StaffLayout.StaffAndTab) CompareTab(score, m.Voices[v], [.. music.Notes.Where(n => n.Measure == measure && n.Staff == 2 && n.Voice == v + 5)], music, where);
                    if (score.Layout == StaffLayout.Tab && tabStaff == 1) CompareFrets(m.Voices[v], upper, music, where);
                }
                measure++;
            }
        }
        music.Lengths.Count.ShouldBe(measure);
    }

    private static void CompareVoice(Score score, Voice voice, List<ReadNote> read, ReadMusic music, string where)
    {
        var expected = voice.Events.SelectMany(e => e.IsRest ? [(Event: e, Tone: (Tone?)null)] : e.Tones.Select(t => (Event: e, Tone: (Tone?)t))).ToList();
        read.Count.ShouldBe(expected.Count, where);
        for (var i = 0; i < expected.Count; i++)
        {
            var (e, tone) = expected[i];
            var note = read[i];
            CompareTime(e, note, where);
            note.IsRest.ShouldBe(tone is null, where);
            if (tone is null) continue;
            note.Sounds.ShouldBe(tone.Head != Notehead.Slash, where);
            note.Head.ShouldBe(HeadOf(tone.Head, score.Layout == StaffLayout.Tab), where);
            (note.TieStart, note.TieStop).ShouldBe((tone.TieStart, tone.TieStop), where);
            if (tone.Head == Notehead.Slash) continue;
            music.Sounding(note).ShouldBe(tone.Pitch.MidiNumber, where);
            note.Spelling.ShouldBe($"{tone.Pitch.Name.Letter}{tone.Pitch.Name.Alteration}/{tone.Pitch.Octave - score.Instrument.OctaveShift}", where);
        }
    }

    private static void CompareTab(Score score, Voice voice, List<ReadNote> read, ReadMusic music, string where)
    {
        var expected = voice.Events.SelectMany(e => Fretted(e) is { Count: > 0 } tones ? tones.Select(t => (Event: e, Tone: (Tone?)t)) : [(Event: e, Tone: (Tone?)null)]).ToList();
        read.Count.ShouldBe(expected.Count, where);
        for (var i = 0; i < expected.Count; i++)
        {
            CompareTime(expected[i].Event, read[i], where);
            read[i].IsRest.ShouldBe(expected[i].Tone is null, where);
            if (read[i].IsRest) read[i].IsShown.ShouldBeFalse(where);
            else read[i].Sounds.ShouldBeFalse(where);
        }
        CompareFrets(voice, read, music, where);
    }

    private static void CompareFrets(Voice voice, List<ReadNote> read, ReadMusic music, string where)
    {
        var tones = voice.Events.SelectMany(Fretted).ToList();
        var notes = read.Where(n => n.Fret is not null).ToList();
        notes.Count.ShouldBe(tones.Count, where);
        for (var i = 0; i < tones.Count; i++)
        {
            (notes[i].String, notes[i].Fret).ShouldBe((tones[i].Position!.Value.String, tones[i].Position!.Value.Fret), where);
            // The pitch on the tab is the pitch of the staff, and what string and fret give on the tuning of the file.
            music.Sounding(notes[i]).ShouldBe(tones[i].Pitch.MidiNumber, where);
            var fret = notes[i].Fret!.Value;
            var above = tones[i].Head == Notehead.Harmonic ? Harmonics[fret] : fret;
            (music.OpenStrings[notes[i].Measure][notes[i].String!.Value - 1] + above).ShouldBe(tones[i].Pitch.MidiNumber, where);
        }
    }

    private static List<Tone> Fretted(ScoreEvent e) => [.. e.Tones.Where(t => t.Position is not null)];

    private static void CompareTime(ScoreEvent e, ReadNote note, string where)
    {
        note.Onset.ShouldBe(e.Onset, where);
        note.Duration.ShouldBe(e.Duration, where);
        note.IsMeasureRest.ShouldBe(e.MeasureRest is not null, where);
        // A written value and its duration have to say the same.
        if (note.IsMeasureRest) note.ValueLength.ShouldBeNull(where);
        else note.ValueLength.ShouldBe(note.Duration, where);
    }

    private static string? HeadOf(Notehead head, bool onTab) => head switch
    {
        Notehead.Ghost or Notehead.Dead => "x",
        Notehead.Slash => "slash",
        Notehead.Harmonic => onTab ? null : "diamond",
        _ => null,
    };
}
