using SheetPress.Scores;

namespace SheetPress.Publishing;

/// <summary>A score unrolled in time: measures in the order of playing and the notes that sound in them.</summary>
internal sealed class Performance
{
    private Performance(Score score, List<PlayedMeasure> measures, List<PlayedNote> notes)
    {
        Score = score;
        Measures = measures;
        Notes = notes;
    }

    public Score Score { get; }

    public List<PlayedMeasure> Measures { get; }

    /// <summary>The notes in order of start within each voice.</summary>
    public List<PlayedNote> Notes { get; }

    public Fraction Length => Measures[^1].End;

    public static Performance Of(Score score)
    {
        var written = new Fraction[score.Measures.Length];
        for (var i = 1; i < written.Length; i++) written[i] = written[i - 1] + score.Measures[i - 1].Length;
        var tempos = TempoPath.AtStarts(score);
        var measures = new List<PlayedMeasure>();
        var at = Fraction.Zero;
        foreach (var index in PlaybackOrder.Of(score))
        {
            var measure = score.Measures[index];
            measures.Add(new PlayedMeasure(measure, at, score.OffsetOf(index), written[index], tempos[index]));
            at += measure.Length;
        }
        var notes = new List<PlayedNote>();
        for (var voice = 0; voice < 2; voice++) PlayVoice(score.Feel, measures, voice, new DynamicCurve(score, voice), notes);
        return new Performance(score, measures, notes);
    }

    private static void PlayVoice(Feel feel, List<PlayedMeasure> measures, int voiceIndex, DynamicCurve dynamics, List<PlayedNote> notes)
    {
        // Notes of the event before that are tied on, and how that event is joined to the next.
        var open = new List<PlayedNote>();
        var arrivedBy = Connection.None;
        foreach (var played in measures)
        {
            if (voiceIndex >= played.Measure.Voices.Length)
            {
                open.Clear();
                arrivedBy = Connection.None;
                continue;
            }
            var voice = played.Measure.Voices[voiceIndex];
            var timing = new SwingTiming(feel, played.Measure, voice, played.Offset);
            foreach (var e in voice.Events)
            {
                var start = played.Start + timing.Of(e.Onset);
                var end = played.Start + timing.Of(e.End);
                var tied = new List<PlayedNote>();
                foreach (var tone in e.Tones)
                {
                    if (tone.Head == Notehead.Slash) continue;
                    var note = tone.TieStop ? open.Find(n => n.Tone.Pitch == tone.Pitch && n.Tone.Position == tone.Position) : null;
                    if (note is null)
                    {
                        note = new PlayedNote
                        {
                            Start = start,
                            End = end,
                            Tone = tone,
                            Event = e,
                            ArrivedBy = arrivedBy,
                            Level = dynamics.At(played.WrittenStart + e.Onset),
                            MeasureEnd = played.End,
                        };
                        notes.Add(note);
                    }
                    note.End = end;
                    note.Connection = e.Connection;
                    if (tone.TieStart) tied.Add(note);
                }
                open = tied;
                arrivedBy = e.Connection;
            }
        }
    }
}
