using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>The guide tones, third and seventh, led from chord to chord by the smallest steps.</summary>
internal sealed class GuideTones : ExerciseStyle
{
    public override string Name => "guide-tones";
    public override string Title => "Guide tones";
    public override string Summary => "Third and seventh of each chord, led to the next by the smallest steps: as one voice, or both.";
    public override string Group => "chord tones";
    public override ImmutableArray<StyleOption> Options =>
    [
        new("play", OptionType.Choice, "One voice, both struck together, or both one after the other.", "line") { Choices = ["line", "together", "broken"] },
        new("start", OptionType.Choice, "Where the single voice starts.", "third") { Choices = ["third", "seventh"] },
    ];

    public override string Instruction(ExerciseRequest request) => "Two notes tell the chord. Hear how little they move while the roots leap.";

    public override Line Generate(ExerciseContext context) => context.Request.Word("play") == "line" ? OneVoice(context) : BothVoices(context);

    private static ImmutableArray<Degree> Tones(HarmonyStep step)
    {
        var third = DegreeResolver.Resolve(new DegreeRequest(new Degree(3), false), step);
        var seventh = DegreeResolver.Resolve(new DegreeRequest(new Degree(7), false), step);
        // Root and fifth are all that a chord without a third has to guide with.
        if (third.Number == 5 && seventh.Number == 8) return [third, Degree.Root];
        return [third, seventh.Number == 8 ? DegreeResolver.Resolve(new DegreeRequest(new Degree(5), false), step) : seventh];
    }

    private static Line OneVoice(ExerciseContext context)
    {
        var track = HarmonyTrack.Of(context);
        var slots = RhythmTiler.Tile(context.Progression, LevelRhythm.Or(context, EvenRhythms.Measures));
        var range = NeckRange.Of(context);
        var steps = track.Sounding.Where(s => !slots[s.Index].IsEmpty).ToList();
        var from = Math.Max(range.Lowest, range.Home + 5);
        var layers = new List<ImmutableArray<Candidate>>();
        foreach (var step in steps)
        {
            var tones = Tones(step);
            if (layers.Count == 0) tones = [context.Request.Word("start") == "seventh" ? tones[1] : tones[0]];
            var ladder = ScaleLadder.Of(step, tones, range, from, range.Highest);
            if (ladder.IsEmpty) ladder = ScaleLadder.Of(step, tones, range, range.Lowest, range.Highest);
            layers.Add(ladder.IsEmpty
                ? [new Candidate(new PitchPlacer(context, range).Place(new NamedPitch(Pitch.AtOrAbove(step.Chord.NoteOf(tones[0]), from), tones[0].Simple), step.Start), 0)]
                : [.. ladder.Select(t => new Candidate(t, (range.Strain(t.Pitch.MidiNumber) * 0.5) + (Math.Abs(t.Pitch.MidiNumber - from - 7) * 0.05)))]);
        }
        var line = LineSearch.Best(layers, static (int _, in Candidate last, in Candidate next, int _) => Math.Abs(next.Midi - last.Midi));
        var writer = new LineWriter();
        for (var i = 0; i < steps.Count; i++)
        {
            var own = slots[steps[i].Index];
            foreach (var slot in steps[i].IsFinal ? Resting.Shorten(own, steps[i].End, 0) : own) writer.Add(slot, line[i]);
        }
        return writer.Finish(context.Progression.Length);
    }

    private Line BothVoices(ExerciseContext context)
    {
        var together = context.Request.Word("play") == "together";
        var finder = new VoicingFinder(context, NeckRange.Of(context));
        var rhythm = LevelRhythm.Or(context, together ? EvenRhythms.Halves : EvenRhythms.Beats);
        var line = VoicingLine.Write(context, rhythm, together ? VoicingPlay.Together : VoicingPlay.Broken, step =>
        {
            var tones = Tones(step);
            var (low, high) = (CellTone.Of(tones[0]), CellTone.Of(tones[1]));
            return finder.Find(step.Chord.Root, [low, high], together).Concat(finder.Find(step.Chord.Root, [high, low.Up(1)], together));
        });
        if (line is not null) return line;
        context.Diagnostics.Add(context.Request.Span, VoicingProblems.CannotHold(Title, context.Instrument.Name));
        return new Line([], context.Progression.Length);
    }
}
