using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>What styles of held chords have in common: how they are played, and what is said when one cannot be held.</summary>
internal abstract class VoicingStyle : ExerciseStyle
{
    protected static StyleOption PlayOption { get; } =
        new("play", OptionType.Choice, "Struck together, one after the other, or one after the other and left to ring.", "together") { Choices = ["together", "broken", "ringing"] };

    public override string Group => "chord tones";

    /// <summary>The shapes of a chord: tones above its root.</summary>
    protected abstract IEnumerable<ImmutableArray<CellTone>> Shapes(HarmonyStep step, ExerciseRequest request);

    public override Line Generate(ExerciseContext context)
    {
        var play = context.Request.Word("play") switch { "broken" => VoicingPlay.Broken, "ringing" => VoicingPlay.Ringing, _ => VoicingPlay.Together };
        var together = play != VoicingPlay.Broken;
        var finder = new VoicingFinder(context, NeckRange.Of(context));
        var rhythm = LevelRhythm.Or(context, together && play == VoicingPlay.Together ? EvenRhythms.Halves : context.Level <= 2 ? EvenRhythms.Beats : EvenRhythms.Eighths);
        var line = VoicingLine.Write(context, rhythm, play, step => Voicings(step, context.Request, finder, together));
        if (line is not null) return line;
        context.Diagnostics.Add(context.Request.Span, VoicingProblems.CannotHold(Title, context.Instrument.Name));
        return new Line([], context.Progression.Length);
    }

    private IEnumerable<Voicing> Voicings(HarmonyStep step, ExerciseRequest request, VoicingFinder finder, bool together)
    {
        var shapes = Shapes(step, request).ToList();
        // A shape that no octave allows is turned over; what still cannot be held is thinned to its outer tones.
        foreach (var openAnywhere in (ReadOnlySpan<bool>)[false, true])
        {
            var held = shapes.SelectMany(s => finder.Find(step.Chord.Root, s, together, openAnywhere)).ToList();
            if (held.Count > 0) return held;
            var turned = shapes.SelectMany(Inversions).SelectMany(s => finder.Find(step.Chord.Root, s, together, openAnywhere)).ToList();
            if (turned.Count > 0) return turned;
        }
        return shapes.SelectMany(s => Inversions([s[0], s[^1]])).SelectMany(s => finder.Find(step.Chord.Root, s, together));
    }

    // Close position with each tone at the bottom in turn.
    private static IEnumerable<ImmutableArray<CellTone>> Inversions(ImmutableArray<CellTone> shape)
    {
        var close = shape.Select(t => t.Up(-(t.FromRoot.HalfSteps / 12))).OrderBy(t => t.FromRoot.HalfSteps).ToImmutableArray();
        for (var lowest = 0; lowest < close.Length; lowest++)
        {
            yield return [.. close[lowest..], .. close[..lowest].Select(t => t.Up(1))];
        }
    }
}

/// <summary>What can be wrong with held chords.</summary>
internal static class VoicingProblems
{
    public static Problem CannotHold(string title, string instrument) => new(
        DiagnosticCodes.CannotHold,
        Severity.Error,
        $"\"{title}\": some chord cannot be held with one hand on the {instrument} within the frets and strings of this exercise.",
        "Allow more of the neck, or play it broken.");
}
