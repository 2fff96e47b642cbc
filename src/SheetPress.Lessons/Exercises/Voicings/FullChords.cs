using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Whole chords on four strings or more: close, with dropped voices, or as full as the hand can hold.</summary>
internal sealed class FullChords : ExerciseStyle
{
    private const double NearlyAsGood = 0.3;
    private const int MostGrips = 6;

    public override string Name => "chords";
    public override string Title => "Chords";
    public override string Summary => "Whole chords with small moves between them: four voices (close, or the second or third from the top dropped an octave), or as many strings as the hand can hold.";
    public override string Group => "chord tones";
    public override ImmutableArray<StyleOption> Options =>
    [
        new("voicing", OptionType.Choice, "full uses every string it can; the others have four voices.", "full") { Choices = ["full", "close", "drop-2", "drop-3"] },
        new("play", OptionType.Choice, "Struck together, one string after the other, or left to ring.", "together") { Choices = ["together", "broken", "ringing"] },
    ];

    public override string? HomeInstrument => "guitar-6";
    public override string Instruction(ExerciseRequest request) => "Look for the finger that can stay where it is; move the others around it.";

    public override Line Generate(ExerciseContext context)
    {
        var empty = new Line([], context.Progression.Length);
        if (context.Instrument.Family == InstrumentFamily.Bass)
        {
            context.Diagnostics.Add(context.Request.Span, InstrumentProblems.Wrong(Name, context.Instrument.Name, "Full chords growl on a bass: try the styles shells or tenths."));
            return empty;
        }
        var play = context.Request.Word("play") switch { "broken" => VoicingPlay.Broken, "ringing" => VoicingPlay.Ringing, _ => VoicingPlay.Together };
        var four = new FourVoices(context);
        var voicing = context.Request.Word("voicing");
        var full = new ChordGripFinder(context.Instrument, context.Request.Neck, context.Level);
        var known = new Dictionary<(Chord, bool), ImmutableArray<Voicing>>();
        var line = VoicingLine.Write(context, LevelRhythm.Or(context, play == VoicingPlay.Together ? EvenRhythms.Halves : EvenRhythms.Eighths), play, step =>
        {
            if (known.TryGetValue((step.Chord, step.IsFinal), out var before)) return before;
            ImmutableArray<Voicing> kept = voicing == "full" ? [] : four.Find(step, voicing switch { "drop-2" => 2, "drop-3" => 3, _ => 0 });
            if (kept.IsEmpty) kept = Grips(context, full, step);
            return known[(step.Chord, step.IsFinal)] = kept;
        }, oneRegion: false);
        if (line is not null) return line;
        context.Diagnostics.Add(context.Request.Span, VoicingProblems.CannotHold(Title, context.Instrument.Name));
        return empty;
    }

    // The usual grip, or one nearly as good that lies nearer to its neighbours.
    private static ImmutableArray<Voicing> Grips(ExerciseContext context, ChordGripFinder finder, HarmonyStep step)
    {
        var voicings = ImmutableArray.CreateBuilder<Voicing>();
        var grips = finder.Find(step.Chord, LevelTable.Of(context.Level).HighestFret);
        // The last chord comes to rest on its root, where four strings leave it out of richer chords.
        if (step.IsFinal && grips.RemoveAll(g => !g.Degrees.Contains(Degree.Root)) is { IsEmpty: false } rooted) grips = rooted;
        foreach (var grip in grips)
        {
            if (grip.Cost > grips[0].Cost + NearlyAsGood || voicings.Count == MostGrips) break;
            voicings.Add(Voicing.Of(context.Instrument, step, grip));
        }
        return voicings.ToImmutable();
    }
}

/// <summary>What is said when a style makes no sense on an instrument.</summary>
internal static class InstrumentProblems
{
    public static Problem Wrong(string style, string instrument, string advice) =>
        new(DiagnosticCodes.WrongInstrument, Severity.Error, $"The style '{style}' makes no sense on a {instrument}.", advice);
}
