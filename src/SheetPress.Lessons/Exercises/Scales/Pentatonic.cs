using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>
/// Five-note scales over each chord, or the key's over all of them. Over a chord the tones are its own where it has them: over
/// a major third 1 2 3 5 6, over a minor third and an altered dominant 1 3 4 5 7, over a suspended chord 1 2 4 5 7. The blues scale adds the flat third
/// to the first, the flat fifth to the second.
/// </summary>
internal sealed class Pentatonic : ExerciseStyle
{
    public override string Name => "pentatonics";
    public override string Title => "Pentatonic scales";
    public override string Summary => "The pentatonic or blues scale of each chord, or of the key over all chords.";
    public override string Group => "scales";
    public override ImmutableArray<StyleOption> Options =>
    [
        new("kind", OptionType.Choice, "Five notes, or with the blue note.", "pentatonic") { Choices = ["pentatonic", "blues"] },
        new("scale", OptionType.Choice, "Of each chord, or of the key.", "chord") { Choices = ["chord", "key"] },
        new("direction", OptionType.Choice, "Which way it runs.", "both") { Choices = ["up", "down", "both"] },
    ];

    public override string Instruction(ExerciseRequest request) => request.Word("scale") == "key"
        ? "One scale over everything: hear which of its notes each chord likes."
        : "Five notes a chord: two to a string, wherever the hand finds them.";

    public override Line Generate(ExerciseContext context)
    {
        var withBlueNote = context.Request.Word("kind") == "blues";
        var direction = context.Request.Word("direction");
        var ofKey = context.Request.Word("scale") == "key";
        return new CellLine(context, LevelRhythm.ForRuns(context)).Write((step, room) =>
        {
            var scale = ofKey ? OfKey(step, withBlueNote) : OfChord(step, withBlueNote);
            if (direction == "both" && room >= 2 * scale.Length) return Figures.UpAndBack(i => ChordStack.At(scale, i), scale.Length, room);
            var up = Enumerable.Range(0, scale.Length + 1).Select(i => ChordStack.At(scale, i));
            return Figures.TurningBack([.. direction == "down" ? up.Reverse() : up], room);
        });
    }

    private static ImmutableArray<Degree> OfChord(HarmonyStep step, bool withBlueNote)
    {
        var third = step.ChordDegree(3);
        var isMinor = third is { Alteration: < 0 };
        var isSuspended = third is null && (step.ChordDegree(4) ?? step.ChordDegree(2)) is not null;
        // Where the scale over a major third alters the second or sixth, the tones that it leaves alone are taken: 1 3 4 5 7.
        var isAltered = step.ScaleDegree(2) is { Alteration: not 0 } || step.ScaleDegree(6) is { Alteration: not 0 };
        ReadOnlySpan<int> numbers = isMinor || (isAltered && !isSuspended) ? [1, 3, 4, 5, 7] : isSuspended ? [1, 2, 4, 5, 7] : [1, 2, 3, 5, 6];
        var degrees = new List<Degree>();
        foreach (var number in numbers)
        {
            var degree = DegreeResolver.Resolve(new DegreeRequest(new Degree(number), false), step);
            if (degree.Number < 8) Insert(degrees, degree);
        }
        if (withBlueNote && !isSuspended) Insert(degrees, isMinor ? new Degree(5, -1) : new Degree(3, -1));
        return [.. degrees];
    }

    private static ImmutableArray<Degree> OfKey(HarmonyStep step, bool withBlueNote)
    {
        var key = step.Key;
        var type = ScaleTypes.Find((key.HasMinorThird, withBlueNote) switch
        {
            (true, true) => "minor blues",
            (true, false) => "minor pentatonic",
            (false, true) => "major blues",
            _ => "major pentatonic",
        })!;
        return ScaleOverChord.From(step.Chord.Root, new Scale(key.Tonic, type));
    }

    private static void Insert(List<Degree> degrees, Degree degree)
    {
        if (degrees.Exists(d => d.HalfSteps == degree.HalfSteps)) return;
        degrees.Add(degree);
        degrees.Sort(static (a, b) => a.HalfSteps.CompareTo(b.HalfSteps));
    }
}
