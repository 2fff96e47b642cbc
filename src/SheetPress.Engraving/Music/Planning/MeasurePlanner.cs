using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>Plans the measures of a score one after the other: stems, heads, accidentals, dots and rests on the staff.</summary>
internal sealed class MeasurePlanner(Score score)
{
    private readonly WrittenAccidentals _signs = WrittenAccidentals.Of(score);

    /// <summary>Plans every measure.</summary>
    public static ImmutableArray<MeasurePlan> PlanAll(Score score, ImmutableArray<MeasureContext> contexts)
    {
        var planner = new MeasurePlanner(score);
        return [.. contexts.Select(planner.Plan)];
    }

    private MeasurePlan Plan(MeasureContext context)
    {
        if (context.Count > 1) return new MeasurePlan(context, MeasureKind.MultiBarRest, []);
        if (context.Measure.RepeatsPrevious) return new MeasurePlan(context, MeasureKind.RepeatSign, []);
        var voices = score.Layout == StaffLayout.ChordChart ? [ChartSlashes.VoiceOf(context.Measure, score.ShowRhythm)] : context.Measure.Voices;
        var shown = VisibleVoices(voices);
        voices = [.. shown.Select(i => voices[i])];
        if (voices.Length == 1 && score.Layout != StaffLayout.Tab) voices = [WideBeams.Break(voices[0], [.. voices[0].Events.Select(e => StepsOf(context, e))])];
        var groups = voices.Select(BeamGroup.Of).ToArray();
        var drafts = new EventDraft[voices.Length][];
        for (var v = 0; v < voices.Length; v++) drafts[v] = Draft(context, voices[v], v, shown[v], groups[v], voices.Length > 1);
        if (score.Layout == StaffLayout.Tab) return new MeasurePlan(context, MeasureKind.Music, [.. voices.Select((v, i) => new VoicePlan([.. drafts[i].Select(d => BareTime(d, voices.Length > 1))], groups[i], v.Tuplets))]);
        if (voices.Length > 1) VoiceSeparation.Apply(drafts[0], drafts[1]);
        var plans = EventsInPlace(drafts);
        return new MeasurePlan(context, MeasureKind.Music, [.. voices.Select((v, i) => new VoicePlan(WithBeams(plans[i], groups[i]), groups[i], v.Tuplets))]);
    }

    // Stems under a beam reach about as far as the one of the note nearest the beam; its place is found once the columns have theirs.
    private static ImmutableArray<EventPlan> WithBeams(ImmutableArray<EventPlan> events, ImmutableArray<BeamGroup> groups)
    {
        if (groups.IsEmpty) return events;
        var result = events.ToBuilder();
        foreach (var group in groups)
        {
            var (up, down) = (double.PositiveInfinity, double.NegativeInfinity);
            for (var i = group.First; i <= group.Last; i++)
            {
                if (!events[i].HasStem) continue;
                if (events[i].Stem == StemDirection.Up) up = Math.Min(up, events[i].StemTip);
                else down = Math.Max(down, events[i].StemTip);
            }
            // A beam between the notes: both stems meet about half way.
            if (double.IsFinite(up) && double.IsFinite(down)) up = down = (up + down) / 2;
            for (var i = group.First; i <= group.Last; i++)
            {
                if (events[i].HasStem) result[i] = events[i] with { StemTip = events[i].Stem == StemDirection.Up ? up : down };
            }
        }
        return result.ToImmutable();
    }

    // A second voice of nothing but rests is not shown.
    private static int[] VisibleVoices(ImmutableArray<Voice> voices)
    {
        var sounding = Enumerable.Range(0, voices.Length).Where(i => voices[i].Events.Any(e => !e.IsRest)).ToArray();
        return sounding.Length == 0 ? [0] : sounding;
    }

    private ImmutableArray<int> StepsOf(MeasureContext context, ScoreEvent e) =>
        [.. e.Tones.Select(t => t.Head == Notehead.Slash ? 0 : StaffSteps.Of(t.Pitch, context.Clef, score.Instrument))];

    private EventDraft[] Draft(MeasureContext context, Voice voice, int voiceIndex, int scoreVoice, ImmutableArray<BeamGroup> groups, bool twoVoices)
    {
        var drafts = new EventDraft[voice.Events.Length];
        for (var i = 0; i < drafts.Length; i++)
        {
            var e = voice.Events[i];
            var whole = e.MeasureRest is not null;
            var origin = new MarkOrigin(-1, context.Index, 0, i) { Voice = voiceIndex };
            drafts[i] = new EventDraft(e, voiceIndex, origin)
            {
                ScoreVoice = scoreVoice,
                Steps = StepsOf(context, e),
                IsCentred = whole,
                RestY = RestGlyphs.Y(whole ? NoteBase.Whole : e.Value.Base),
            };
        }
        var (tiedFrom, tiedOn) = (voice.Events is [var first, ..] && first.Tones.Any(t => t.TieStop), voice.Events is [.., var last] && last.Tones.Any(t => t.TieStart));
        var decided = StemRules.Decide([.. drafts.Select(d => d.Steps)], groups, [.. drafts.Select(d => d.Event.Beams.IsDefaultOrEmpty ? 0 : d.Event.Beams.Length)], tiedFrom, tiedOn);
        for (var i = 0; i < drafts.Length; i++)
        {
            drafts[i].Stem = !twoVoices ? decided[i] : voiceIndex == 0 ? StemDirection.Up : StemDirection.Down;
            if (drafts[i].Event.Tones.Any(t => t.Head == Notehead.Slash)) drafts[i].Stem = twoVoices && voiceIndex == 1 ? StemDirection.Down : StemDirection.Up;
        }
        foreach (var group in groups)
        {
            for (var i = group.First; i <= group.Last; i++)
            {
                drafts[i].IsBeamed = !drafts[i].Event.IsRest;
                drafts[i].IsUnderBeam = drafts[i].Event.IsRest;
            }
        }
        return drafts;
    }

    // What a tab alone shows of an event: its rhythm, below the tab, and of the upper of two voices above it.
    private static EventPlan BareTime(EventDraft draft, bool twoVoices)
    {
        var head = Ink.Glyph("noteheadBlack").Bounds;
        return new EventPlan
        {
            Event = draft.Event,
            Origin = draft.Origin with { Staff = 1 },
            Voice = draft.Voice,
            IsBeamed = draft.IsBeamed,
            IsCentred = draft.IsCentred,
            HasStem = draft.HasStem,
            Stem = twoVoices && draft.Voice == 0 ? StemDirection.Up : StemDirection.Down,
            Left = head.Left,
            Right = head.Right,
            Centre = (head.Left + head.Right) / 2,
        };
    }

    // Events of both voices that start together share their accidentals and align their dots.
    private ImmutableArray<EventPlan>[] EventsInPlace(EventDraft[][] drafts)
    {
        var result = drafts.Select(d => new EventPlan[d.Length]).ToArray();
        var order = drafts.SelectMany((voice, v) => voice.Select((d, i) => (Voice: v, Index: i, Draft: d)))
            .OrderBy(x => x.Draft.Event.Onset).ThenBy(x => x.Voice).ToList();
        for (var i = 0; i < order.Count;)
        {
            var count = 1;
            while (i + count < order.Count && order[i + count].Draft.Event.Onset == order[i].Draft.Event.Onset) count++;
            var together = order.GetRange(i, count);
            var plans = new OnsetPlanner(_signs).Plan([.. together.Select(x => x.Draft)]);
            for (var k = 0; k < count; k++) result[together[k].Voice][together[k].Index] = plans[k];
            i += count;
        }
        return [.. result.Select(r => r.ToImmutableArray())];
    }
}
