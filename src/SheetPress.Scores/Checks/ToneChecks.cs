using System.Collections.Immutable;

namespace SheetPress.Scores;

/// <summary>Checks of pitches, positions, ties and connections.</summary>
internal static class ToneChecks
{
    public static void Run(Score score, int measureIndex, int voiceIndex, ImmutableArray<ScoreFinding>.Builder findings)
    {
        var events = score.Measures[measureIndex].Voices[voiceIndex].Events;
        var before = Neighbour(score, measureIndex - 1, voiceIndex)?.Events[^1];
        for (var i = 0; i < events.Length; i++)
        {
            var index = i;
            void Add(ScoreRule rule, string message) => findings.Add(new ScoreFinding(rule, measureIndex, voiceIndex, index, message));
            var e = events[i];
            var next = i + 1 < events.Length ? events[i + 1] : Neighbour(score, measureIndex + 1, voiceIndex)?.Events[0];
            CheckTones(score.Instrument, e, Add);
            CheckTies(before, e, next, Add);
            CheckConnection(e, next, Add);
            before = e;
        }
    }

    private static Voice? Neighbour(Score score, int measureIndex, int voiceIndex)
    {
        if (measureIndex < 0 || measureIndex >= score.Measures.Length) return null;
        var voices = score.Measures[measureIndex].Voices;
        return voiceIndex < voices.Length && !voices[voiceIndex].Events.IsEmpty ? voices[voiceIndex] : null;
    }

    private static void CheckTones(Instrument instrument, ScoreEvent e, Action<ScoreRule, string> add)
    {
        for (var i = 0; i < e.Tones.Length; i++)
        {
            var tone = e.Tones[i];
            // A unison on two strings is a chord of two equal pitches.
            if (i > 0 && (e.Tones[i - 1].Pitch > tone.Pitch || (e.Tones[i - 1].Pitch == tone.Pitch && e.Tones[i - 1].Position == tone.Position)))
            {
                add(ScoreRule.TonesInOrder, $"{e.Tones[i - 1].Pitch} stands before {tone.Pitch}.");
            }
            if (tone.Position is not { } position) continue;
            if (position.String < 1 || position.String > instrument.StringCount || position.Fret < 0 || position.Fret > instrument.PlayableFrets)
            {
                add(ScoreRule.PositionSoundsPitch, $"String {position.String}, fret {position.Fret} is not on the neck.");
                continue;
            }
            if (!Sounds(instrument, position, tone)) add(ScoreRule.PositionSoundsPitch, $"String {position.String}, fret {position.Fret} does not sound {tone.Pitch}.");
            for (var j = 0; j < i; j++)
            {
                if (e.Tones[j].Position?.String == position.String) add(ScoreRule.PositionSoundsPitch, $"Two tones lie on string {position.String}.");
            }
        }
    }

    private static bool Sounds(Instrument instrument, FretPosition position, Tone tone)
    {
        var pitch = tone.Pitch.MidiNumber;
        if (tone.Head != Notehead.Harmonic) return instrument.MidiNumberAt(position.String, position.Fret) == pitch;
        return NaturalHarmonics.HalfStepsAt(position.Fret) is { } halfSteps && instrument.MidiNumberAt(position.String, 0) + halfSteps == pitch;
    }

    private static void CheckTies(ScoreEvent? before, ScoreEvent e, ScoreEvent? next, Action<ScoreRule, string> add)
    {
        foreach (var tone in e.Tones)
        {
            if (tone.TieStart && next?.Tones.Any(t => t.TieStop && t.Pitch == tone.Pitch && t.Position == tone.Position) != true) add(ScoreRule.TieConnectsSamePitch, $"The tie from {tone.Pitch} leads nowhere.");
            if (tone.TieStop && before?.Tones.Any(t => t.TieStart && t.Pitch == tone.Pitch) != true) add(ScoreRule.TieConnectsSamePitch, $"The tie into {tone.Pitch} comes from nowhere.");
        }
    }

    private static void CheckConnection(ScoreEvent e, ScoreEvent? next, Action<ScoreRule, string> add)
    {
        if (e.Connection == Connection.None) return;
        if (e.IsRest || next is null || next.IsRest)
        {
            add(ScoreRule.ConnectionLeadsOn, $"{e.Connection} leads from or to no note.");
            return;
        }
        var ok = false;
        foreach (var from in e.Tones)
        {
            foreach (var to in next.Tones)
            {
                var sameString = from.Position is null || to.Position is null || from.Position.Value.String == to.Position.Value.String;
                ok |= sameString && e.Connection switch
                {
                    Connection.HammerOn => to.Pitch.MidiNumber > from.Pitch.MidiNumber,
                    Connection.PullOff => to.Pitch.MidiNumber < from.Pitch.MidiNumber,
                    _ => true,
                };
            }
        }
        if (!ok) add(ScoreRule.ConnectionLeadsOn, $"{e.Connection} leads to no tone on its string in its direction.");
    }
}
