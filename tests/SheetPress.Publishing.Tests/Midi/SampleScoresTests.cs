using NAudio.Midi;
using SheetPress.Publishing.Tests.MusicXml;
using SheetPress.Scores;

namespace SheetPress.Publishing.Tests;

/// <summary>Every sample score written, read by an independent library and compared note by note with the score.</summary>
public class SampleScoresTests
{
    public static TheoryData<string> Ids => [.. SampleScores.All.Select(s => s.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Notes_are_those_of_the_score_played_out(string id)
    {
        var score = SampleScores.Named(id) with { Feel = Feel.Straight };
        var read = MidiScores.Read(score).Notes().Select(n => (n.Start, n.Key)).Order();
        read.ShouldBe(Played(score).Distinct().Order());
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void No_key_is_struck_while_it_sounds(string id)
    {
        var options = new MidiOptions { CountIn = true, Click = true, Chords = true };
        var file = MidiScores.Read(SampleScores.Named(id), options);
        for (var track = 1; track < file.Tracks; track++)
        {
            var ends = new Dictionary<int, long>();
            foreach (var (start, length, key, _) in file.Notes(track))
            {
                length.ShouldBeGreaterThan(0);
                start.ShouldBeGreaterThanOrEqualTo(ends.GetValueOrDefault(key));
                ends[key] = start + length;
            }
        }
    }

    [Fact]
    public void The_whole_of_them_makes_one_lesson()
    {
        var stream = new MemoryStream();
        MidiWriter.WriteLesson(SampleScores.All, "Samples", new MidiOptions { CountIn = true, Click = true, Chords = true }, stream);
        var file = MidiScores.Read(stream.ToArray());
        file.Events[0].OfType<TextEvent>().Count(e => e.MetaEventType == MetaEventType.Marker && e.Text.StartsWith("Study: ", StringComparison.Ordinal)).ShouldBe(SampleScores.All.Length);
        file.Notes().Count.ShouldBe(SampleScores.All.Sum(s => Played(s).Distinct().Count()));
    }

    // Onsets and keys straight from the score: measures in order of playing, a tone with a tie into it struck only when no tie led there.
    private static IEnumerable<(long Start, int Key)> Played(Score score)
    {
        var at = score.Measures[0].Number == 0 ? score.Measures[0].Meter.MeasureLength - score.Measures[0].Length : Fraction.Zero;
        var tied = new List<int>[] { [], [] };
        foreach (var index in PlaybackOrder.Of(score))
        {
            var measure = score.Measures[index];
            for (var v = 0; v < 2; v++)
            {
                if (v >= measure.Voices.Length) { tied[v] = []; continue; }
                foreach (var e in measure.Voices[v].Events)
                {
                    foreach (var tone in e.Tones.Where(t => t.Head != Notehead.Slash))
                    {
                        if (!tone.TieStop || !tied[v].Contains(tone.Pitch.MidiNumber)) yield return ((long)Math.Round((at + e.Onset).ToDouble() * 960, MidpointRounding.AwayFromZero), tone.Pitch.MidiNumber);
                    }
                    tied[v] = [.. e.Tones.Where(t => t.TieStart).Select(t => t.Pitch.MidiNumber)];
                }
            }
            at += measure.Length;
        }
    }
}
