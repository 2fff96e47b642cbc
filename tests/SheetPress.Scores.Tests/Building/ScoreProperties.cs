using CsCheck;
using SheetPress.Theory;

namespace SheetPress.Scores.Tests;

/// <summary>What holds for every score, whatever line it is built from.</summary>
public class ScoreProperties
{
    [Fact]
    public void A_built_score_passes_every_check() => RandomMusic.Music.Sample(
        music => ScoreChecks.Run(ScoreBuilder.Build(Lines.Header, music.Frame, music.Line)).ShouldBeEmpty(),
        iter: 1000,
        print: Print);

    [Fact]
    public void Ties_merged_give_back_the_line() => RandomMusic.Music.Sample(
        music => Sounding(ScoreBuilder.Build(Lines.Header, music.Frame, music.Line)).ShouldBe(music.Line.Notes.Select(n => (n.Start, n.End, n.Tones[0].Pitch))),
        iter: 1000,
        print: Print);

    // A note value never hides the middle of a bar of four beats unless it starts the bar (Gould, from memory).
    [Fact]
    public void The_middle_of_four_four_is_always_seen() => RandomMusic.In("4/4").Sample(
        music =>
        {
            foreach (var measure in ScoreBuilder.Build(Lines.Header, music.Frame, music.Line).Measures.Where(m => m.Length == 4))
            {
                foreach (var e in measure.Voices[0].Events.Where(e => e.Onset < 2 && e.End > 2 && e.MeasureRest is null && !e.Value.IsTuplet))
                {
                    e.IsRest.ShouldBeFalse();
                    e.Onset.ShouldBe(Fraction.Zero);
                }
            }
        },
        iter: 1000,
        print: Print);

    private static IEnumerable<(Fraction Start, Fraction End, Pitch Pitch)> Sounding(Score score)
    {
        var at = Fraction.Zero;
        (Fraction Start, Fraction End, Pitch Pitch)? open = null;
        foreach (var measure in score.Measures)
        {
            foreach (var e in measure.Voices[0].Events.Where(e => !e.IsRest))
            {
                var tone = e.Tones[0];
                if (tone.TieStop) open = open!.Value with { End = at + e.End };
                else open = (at + e.Onset, at + e.End, tone.Pitch);
                if (!tone.TieStart) yield return open.Value;
            }
            at += measure.Length;
        }
    }

    private static string Print((FrameMeasure[] Frame, Line Line) music) =>
        $"{music.Frame[0].Meter} ({string.Join('+', music.Frame[0].Meter.Groups)}), lengths {string.Join(' ', music.Frame.Select(m => m.Length))}: {string.Join(' ', music.Line.Notes.Select(n => $"{n.Start}-{n.End}"))}";
}
