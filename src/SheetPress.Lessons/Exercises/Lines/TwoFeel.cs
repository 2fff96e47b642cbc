using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>A line in two: the root on one, a strong tone on the second half of the bar, and where there is room a step into the next root.</summary>
internal sealed class TwoFeel : ExerciseStyle
{
    public override string Name => "two-feel";
    public override string Title => "Two-feel";
    public override string Summary => "A line in two: root on one, fifth or another chord tone on the second half, a short lead into the next root where wanted.";
    public override string Group => "lines";
    public override ImmutableArray<StyleOption> Options =>
    [
        new("lead", OptionType.Choice, "Whether a short note leads into the next root: never, before every other chord, or always; by level when not given.", "") { Choices = ["never", "sometimes", "always"] },
        Skips.Option,
    ];

    public override string Instruction(ExerciseRequest request) => "Long notes with a lift between them: let the two halves of the bar answer each other.";

    public override Line Generate(ExerciseContext context)
    {
        var track = HarmonyTrack.Of(context);
        var slots = RhythmTiler.Tile(context.Progression, LevelRhythm.Or(context, EvenRhythms.Halves));
        var range = NeckRange.Of(context);
        var leads = context.Request.Word("lead") switch { "always" => 1, "sometimes" => 2, "never" => 0, _ => LevelTable.Of(context.Level).LeadEvery };
        var places = new List<Slot>();
        var layers = new List<ImmutableArray<Candidate>>();
        var arrives = new List<bool>();
        var number = 0;
        foreach (var step in track.Sounding)
        {
            var own = slots[step.Index];
            if (own.IsEmpty) continue;
            number++;
            if (step.IsFinal) own = Resting.Shorten(own, step.End, 0);
            for (var k = 0; k < own.Length; k++)
            {
                places.Add(own[k]);
                layers.Add(Candidates(context, range, step, k == 0, layers.Count));
                arrives.Add(false);
            }
            var last = own[^1];
            var wantsLead = leads > 0 && number % leads == 0 && step.Next is not null && context.Request.Rhythm is null && last.Duration >= new Fraction(3, 2);
            if (!wantsLead) continue;
            // The lead takes the last beat of a long note, or the last eighth where the beat is long.
            var lead = last.Duration >= 2 ? Fraction.One : new Fraction(1, 2);
            places[^1] = last with { Duration = last.Duration - lead };
            places.Add(new Slot(last.End - lead, lead, MetricWeight.Beat, null));
            layers.Add(LeadCandidates(range, step));
            arrives.Add(true);
        }
        var line = LineSearch.Best(layers, (int beforeLast, in Candidate last, in Candidate next, int slot) =>
            WalkingCosts.Move(beforeLast, last.Midi, next.Midi) + (slot > 0 && arrives[slot - 1] && Math.Abs(next.Midi - last.Midi) is 0 or > 2 ? 40 : 0));
        var writer = new LineWriter();
        var skips = Skips.Of(context, places);
        for (var i = 0; i < line.Length; i++) Skips.Write(writer, places[i], line[i], skips[i]);
        return writer.Finish(context.Progression.Length);
    }

    private static ImmutableArray<Candidate> Candidates(ExerciseContext context, NeckRange range, HarmonyStep step, bool isFirst, int place)
    {
        var level = LevelTable.Of(context.Level);
        var to = Math.Min(range.Highest, Math.Max(range.Home, range.Lowest) + level.LineRange);
        ImmutableArray<Degree> degrees = isFirst ? [step.BassDegree] : level.Walking == WalkingNotes.ChordTones ? [FifthOf(step)] : step.BasicTones;
        var found = ScaleLadder.Of(step, degrees, range, range.Lowest, to);
        if (found.IsEmpty) found = ScaleLadder.Of(step, [Degree.Root, .. step.BasicTones], range, range.Lowest, range.Highest);
        if (found.IsEmpty) return [new Candidate(new PitchPlacer(context, range).Place(new NamedPitch(Pitch.AtOrAbove(step.Chord.Lowest, range.Home), step.BassDegree), step.Start), 0)];
        return [.. found.Select(t => new Candidate(t, Weight(t, isFirst) + (range.Strain(t.Pitch.MidiNumber) * 0.8) + (Math.Max(0, range.Home - t.Pitch.MidiNumber) * 0.6) + (0.4 * SeededNoise.At(context.Request.Seed, place, t.Pitch.MidiNumber))))];
    }

    private static ImmutableArray<Candidate> LeadCandidates(NeckRange range, HarmonyStep step)
    {
        var next = step.Next!;
        var found = new List<Candidate>();
        for (var target = Pitch.AtOrAbove(next.Chord.Lowest, range.Lowest); target.MidiNumber <= range.Highest; target += Interval.Octave)
        {
            foreach (var pitch in (Pitch[])[ApproachNotes.ScaleBelow(step, target), ApproachNotes.ScaleAbove(step, target), ApproachNotes.ChromaticBelow(target)])
            {
                if (range.CanPlay(pitch.MidiNumber) && !found.Exists(c => c.Midi == pitch.MidiNumber)) found.Add(new Candidate(new NamedPitch(pitch, step.NameOf(pitch.Name)), range.Strain(pitch.MidiNumber) * 0.5));
            }
        }
        if (found.Count == 0) found.Add(new Candidate(new NamedPitch(Pitch.AtOrAbove(step.Chord.Lowest, range.Lowest), step.BassDegree), 0));
        return [.. found];
    }

    // The chord's fifth, its root where the fifth is the bass already.
    private static Degree FifthOf(HarmonyStep step) => DegreeResolver.Resolve(new DegreeRequest(new Degree(5), false), step) is var fifth && fifth != step.BassDegree ? fifth : Degree.Root;

    // Common practice: the fifth answers the root, the octave or third now and then.
    private static double Weight(NamedPitch tone, bool isFirst) => isFirst || tone.Degree is not { } degree ? 0 : degree.Number switch { 5 => 0, 1 => 1.6, 3 => 1.2, _ => 1.8 };
}
