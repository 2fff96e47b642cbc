using System.Collections.Immutable;

namespace SheetPress.Scores;

/// <summary>Checks that the events of a voice fill their measure, that tuplets are exact and beams balanced.</summary>
internal static class RhythmChecks
{
    public static void Run(Measure measure, int measureIndex, int voiceIndex, ImmutableArray<ScoreFinding>.Builder findings)
    {
        var voice = measure.Voices[voiceIndex];
        void Add(ScoreRule rule, int index, string message) => findings.Add(new ScoreFinding(rule, measureIndex, voiceIndex, index, message));

        var at = Fraction.Zero;
        for (var i = 0; i < voice.Events.Length; i++)
        {
            var e = voice.Events[i];
            if (e.Onset != at) Add(ScoreRule.MeasureAddsUp, i, $"It starts at {e.Onset}, and the event before ends at {at}.");
            if (e.MeasureRest is { } rest && (!e.IsRest || voice.Events.Length != 1 || rest != measure.Length)) Add(ScoreRule.MeasureAddsUp, i, "A measure rest stands alone, has no tones and lasts as long as its measure.");
            at = e.End;
        }
        if (at != measure.Length) Add(ScoreRule.MeasureAddsUp, voice.Events.Length - 1, $"The events last {at} quarter notes and the measure {measure.Length}.");
        CheckTuplets(voice, Add);
        CheckBeams(voice, Add);
    }

    private static void CheckTuplets(Voice voice, Action<ScoreRule, int, string> add)
    {
        foreach (var tuplet in voice.Tuplets)
        {
            if (tuplet.First < 0 || tuplet.Last >= voice.Events.Length || tuplet.First > tuplet.Last || tuplet.Actual < 2 || tuplet.Normal < 1)
            {
                add(ScoreRule.TupletIsExact, Math.Clamp(tuplet.First, -1, voice.Events.Length - 1), $"A tuplet {tuplet.Actual}:{tuplet.Normal} over events {tuplet.First + 1} to {tuplet.Last + 1} is no tuplet of this voice.");
                continue;
            }
            var length = voice.Events[tuplet.Last].End - voice.Events[tuplet.First].Onset;
            var outer = OuterStretch(voice, tuplet);
            // In the time of so many units: each unit, seen from outside the tuplet, is a plain note value or one with a dot.
            var unit = length * outer / tuplet.Normal;
            if (ValueSpeller.ValueOf(unit) is not { Dots: 0 }) add(ScoreRule.TupletIsExact, tuplet.First, $"A tuplet {tuplet.Actual}:{tuplet.Normal} lasts {length} quarter notes, which is no {tuplet.Normal} note values.");
        }
        for (var i = 0; i < voice.Events.Length; i++)
        {
            var ratio = Fraction.One;
            foreach (var tuplet in voice.Tuplets) if (tuplet.First <= i && i <= tuplet.Last) ratio *= new Fraction(tuplet.Actual, tuplet.Normal);
            var value = voice.Events[i].Value;
            if (ratio != new Fraction(value.ActualNotes, value.NormalNotes)) add(ScoreRule.TupletIsExact, i, $"Its value has the ratio {value.ActualNotes}:{value.NormalNotes}, and the tuplets over it make {ratio.Numerator}:{ratio.Denominator}.");
        }
    }

    private static Fraction OuterStretch(Voice voice, TupletSpan tuplet)
    {
        var stretch = Fraction.One;
        foreach (var other in voice.Tuplets)
        {
            if (other.Level < tuplet.Level && other.First <= tuplet.First && tuplet.Last <= other.Last) stretch *= new Fraction(other.Actual, other.Normal);
        }
        return stretch;
    }

    private static void CheckBeams(Voice voice, Action<ScoreRule, int, string> add)
    {
        var open = new bool[8];
        for (var i = 0; i < voice.Events.Length; i++)
        {
            var e = voice.Events[i];
            if (e.IsRest)
            {
                if (!e.Beams.IsEmpty) add(ScoreRule.BeamsAreBalanced, i, "A rest has no beams of its own.");
                continue;
            }
            if (!e.Beams.IsEmpty && e.Beams.Length != e.Value.Flags) add(ScoreRule.BeamsAreBalanced, i, $"It has {e.Beams.Length} beams and {e.Value.Flags} flags.");
            for (var level = 0; level < open.Length; level++)
            {
                if (level >= e.Beams.Length)
                {
                    if (open[level]) add(ScoreRule.BeamsAreBalanced, i, $"Beam {level + 1} is open and does not reach it.");
                    open[level] = false;
                    continue;
                }
                var state = e.Beams[level];
                var needsOpen = state is BeamState.Continue or BeamState.End;
                if (open[level] != needsOpen) add(ScoreRule.BeamsAreBalanced, i, $"Beam {level + 1} is {(open[level] ? "open" : "not open")} before its {state}.");
                if (level == 0 && state is BeamState.ForwardHook or BeamState.BackwardHook) add(ScoreRule.BeamsAreBalanced, i, "The first beam is never a hook.");
                open[level] = state is BeamState.Begin or BeamState.Continue;
            }
        }
        for (var level = 0; level < open.Length; level++)
        {
            if (open[level]) add(ScoreRule.BeamsAreBalanced, voice.Events.Length - 1, $"Beam {level + 1} is not ended in its measure.");
        }
    }
}
