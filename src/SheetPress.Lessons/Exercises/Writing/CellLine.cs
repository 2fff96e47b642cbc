using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>The notes that lead out of a chord into the next one.</summary>
/// <param name="step">The chord that is left.</param>
/// <param name="target">The first note of the next chord.</param>
/// <param name="room">The most notes there is room for.</param>
/// <param name="range">What can be played.</param>
internal delegate ImmutableArray<NamedPitch> LeadIn(HarmonyStep step, Pitch target, int room, NeckRange range);

/// <summary>
/// The line of every style that plays a figure over each chord: the figure starts anew with each chord and goes round as
/// long as the chord lasts, and may give its last notes to a lead into the next chord. The last chord comes to rest on its
/// root (see <see cref="Resting"/>).
/// </summary>
internal sealed class CellLine(ExerciseContext context, Func<Meter, RhythmPattern> rhythmOf)
{
    private readonly NeckRange _range = NeckRange.Of(context);
    private readonly List<Passage> _passages = [];

    private sealed record Passage(HarmonyStep Step, ImmutableArray<Slot> Slots, ImmutableArray<CellTone> Figure);

    /// <summary>Notes of the last chord before its held root; 0 to hold the root for the whole chord.</summary>
    public int NotesBeforeRest { get; init; } = Resting.UsualNotesBefore;

    /// <summary>What leads from each chord to the next; null for nothing.</summary>
    public LeadIn? Lead { get; init; }

    /// <summary>Marks for a note of a figure, by the chord and the note; null for none besides those of the rhythm.</summary>
    public Func<HarmonyStep, NamedPitch, StrokeMarks>? MarksOf { get; init; }

    /// <summary>Writes the line of figures.</summary>
    /// <param name="figureOf">The figure over a chord, given how many notes the chord has room for; at least one tone.</param>
    public Line Write(Func<HarmonyStep, int, ImmutableArray<CellTone>> figureOf)
    {
        var track = HarmonyTrack.Of(context);
        var slots = RhythmTiler.Tile(context.Progression, rhythmOf);
        foreach (var step in track.Sounding)
        {
            var own = slots[step.Index];
            if (own.IsEmpty) continue;
            if (step.IsFinal) own = Resting.Shorten(own, step.End, NotesBeforeRest);
            _passages.Add(new Passage(step, own, figureOf(step, own.Length)));
        }
        if (Lead is not null && context.Request.Rhythm is not null && _passages.Count > 1 && _passages.TrueForAll(p => p.Slots.Length < 2))
            context.Diagnostics.Add(context.Request.Span, OptionProblems.NoRoom(context.Request.Style.Name));
        var roots = RegisterPlanner.Plan([.. _passages.Select(p => new RegisterNeed(p.Step.Chord.Root, Offsets(p)))], _range, Lead is null ? null : JoinCost);
        var writer = new LineWriter();
        var placer = new PitchPlacer(context, _range);
        for (var i = 0; i < _passages.Count; i++)
        {
            var notes = NotesOf(i, roots, placer);
            for (var k = 0; k < notes.Length; k++) writer.Add(_passages[i].Slots[k], notes[k], MarksOf?.Invoke(_passages[i].Step, notes[k]) ?? default);
        }
        return writer.Finish(context.Progression.Length);
    }

    private NamedPitch[] NotesOf(int index, ImmutableArray<Pitch> roots, PitchPlacer placer)
    {
        var (step, slots, figure) = _passages[index];
        var notes = new NamedPitch[slots.Length];
        var lead = LeadFrom(index, roots, placer);
        for (var k = 0; k < notes.Length; k++)
        {
            var tone = figure[k % figure.Length];
            var fromLead = k - (notes.Length - lead.Length);
            if (fromLead == -1 && lead.Length > 0 && k > 0) tone = LeadUp.ToneBefore(figure, tone, step, roots[index], notes[k - 1].Pitch, lead[0].Pitch, _range);
            var rests = step.IsFinal && k == notes.Length - 1 && !(k == 0 && RestsAlready(step, tone));
            // The root is kept for the rest: no other one stands right before it.
            if (step.IsFinal && k > 0 && k == notes.Length - 2 && tone.FromRoot == Interval.Unison) tone = figure.FirstOrDefault(t => t.FromRoot != Interval.Unison && roots[index] + t.FromRoot != notes[k - 1].Pitch, tone);
            var wanted = fromLead >= 0 ? lead[fromLead] : new NamedPitch(roots[index] + tone.FromRoot, tone.Degree);
            notes[k] = placer.Place(wanted, slots[k].Start);
            if (rests) notes[k] = Resting.Root(roots[index], notes[Math.Max(0, k - 1)].Pitch, _range);
        }
        return notes;
    }

    private ImmutableArray<NamedPitch> LeadFrom(int index, ImmutableArray<Pitch> roots, PitchPlacer placer)
    {
        var (step, slots, _) = _passages[index];
        if (Lead is null || step.Next is null || slots.Length < 2) return [];
        var next = _passages.FindIndex(p => ReferenceEquals(p.Step, step.Next));
        if (next < 0) return [];
        var (following, nextSlots, figure) = _passages[next];
        var first = placer.Place(new NamedPitch(roots[next] + figure[0].FromRoot, figure[0].Degree), nextSlots[0].Start).Pitch;
        if (following.IsFinal && nextSlots.Length == 1 && !RestsAlready(following, figure[0])) first = Resting.Root(roots[next], first, _range).Pitch;
        return LeadInto(index, roots[index], first);
    }

    // The lead into a target; one that would strike the only note before it again starts a note later.
    private ImmutableArray<NamedPitch> LeadInto(int index, Pitch root, Pitch target)
    {
        var (step, slots, figure) = _passages[index];
        if (slots.Length < 2) return [];
        var lead = Lead!(step, target, slots.Length - 1, _range);
        return lead.Length > 1 && lead.Length == slots.Length - 1 && lead[0].Pitch == root + figure[0].FromRoot ? lead[1..] : lead;
    }

    // The leaps into the lead to the next chord, and out of it.
    private double JoinCost(int index, Pitch from, Pitch to)
    {
        var (step, slots, figure) = _passages[index];
        var target = to + _passages[index + 1].Figure[0].FromRoot;
        var lead = LeadInto(index, from, target);
        var lastOwn = slots.Length - lead.Length - 1;
        var last = from + figure[lastOwn % figure.Length].FromRoot;
        if (lead.IsEmpty) return LeadUp.LeapCost(last, target);
        if (lastOwn == 0) return LeadUp.LeapCost(last, lead[0].Pitch) + LeadUp.LeapCost(lead[^1].Pitch, target);
        var before = from + figure[(lastOwn - 1) % figure.Length].FromRoot;
        last = from + LeadUp.ToneBefore(figure, figure[lastOwn % figure.Length], step, from, before, lead[0].Pitch, _range).FromRoot;
        return LeadUp.LeapCost(before, last) + LeadUp.LeapCost(last, lead[0].Pitch) + LeadUp.LeapCost(lead[^1].Pitch, target);
    }

    private static bool RestsAlready(HarmonyStep step, CellTone tone) => tone.Degree is { } degree && (degree.Simple == Degree.Root || degree == step.BassDegree);

    private static ImmutableArray<int> Offsets(Passage passage)
    {
        var offsets = ImmutableArray.CreateBuilder<int>(Math.Min(passage.Slots.Length, passage.Figure.Length));
        for (var i = 0; i < passage.Figure.Length && i < passage.Slots.Length; i++) offsets.Add(passage.Figure[i].FromRoot.HalfSteps);
        return offsets.ToImmutable();
    }
}
