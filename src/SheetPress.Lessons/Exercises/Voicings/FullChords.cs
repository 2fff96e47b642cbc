using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Whole chords on four strings or more: close, with dropped voices, or as full as the hand can hold.</summary>
internal sealed class FullChords : ExerciseStyle
{
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
        var range = NeckRange.Of(context);
        var finder = new VoicingFinder(context, range);
        var voicing = context.Request.Word("voicing");
        var full = new FullChordFinder(context, range, finder);
        var known = new Dictionary<Chord, ImmutableArray<Voicing>>();
        var line = VoicingLine.Write(context, LevelRhythm.Or(context, play == VoicingPlay.Together ? EvenRhythms.Halves : EvenRhythms.Eighths), play, step =>
        {
            if (known.TryGetValue(step.Chord, out var before)) return before;
            IEnumerable<Voicing> found = voicing == "full" ? full.Find(step) : FourVoices(step, voicing, finder);
            var kept = found.ToImmutableArray();
            if (kept.IsEmpty) kept = [.. full.Find(step)];
            return known[step.Chord] = kept;
        });
        if (line is not null) return line;
        context.Diagnostics.Add(context.Request.Span, VoicingProblems.CannotHold(Title, context.Instrument.Name));
        return empty;
    }

    private static IEnumerable<Voicing> FourVoices(HarmonyStep step, string voicing, VoicingFinder finder)
    {
        var tones = ChordStack.Four(step);
        if (tones[3].FromRoot.HalfSteps % 12 == 0) tones = [tones[0], tones[1], tones[2], tones[0].Up(1)];
        for (var inversion = 0; inversion < 4; inversion++)
        {
            var close = new List<CellTone>();
            for (var i = 0; i < 4; i++)
            {
                var tone = tones[(inversion + i) % 4];
                while (close.Count > 0 && tone.FromRoot.HalfSteps <= close[^1].FromRoot.HalfSteps) tone = tone.Up(1);
                close.Add(tone);
            }
            var dropped = voicing switch { "drop-2" => 2, "drop-3" => 1, _ => -1 };
            if (dropped >= 0) close = [.. close.Select((t, i) => i == dropped ? t : t.Up(1))];
            foreach (var found in finder.Find(step.Chord.Root, [.. close], together: true)) yield return found;
        }
    }
}

/// <summary>What is said when a style makes no sense on an instrument.</summary>
internal static class InstrumentProblems
{
    public static Problem Wrong(string style, string instrument, string advice) =>
        new(DiagnosticCodes.WrongInstrument, Severity.Error, $"The style '{style}' makes no sense on a {instrument}.", advice);
}
