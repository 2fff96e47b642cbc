using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>
/// Skips: a beat of a walking line or a two-feel gives its last eighth to a dead note on the same string, which throws the line onto the
/// next beat (common practice). One in so many bars, on a weak beat chosen by the seed.
/// </summary>
internal static class Skips
{
    private const int OftenEvery = 1;
    private static readonly Fraction Length = new(1, 2);

    /// <summary>The option of the styles that have skips.</summary>
    public static StyleOption Option { get; } =
        new("skips", OptionType.Choice, "Dead eighths thrown in before a beat; by level when not given: none up to level 3, then every four and every two bars.", "") { Choices = ["never", "sometimes", "often"] };

    /// <summary>Whether each slot ends in a skip.</summary>
    public static bool[] Of(ExerciseContext context, IReadOnlyList<Slot> slots)
    {
        var skips = new bool[slots.Count];
        var level = LevelTable.Of(context.Level).SkipEvery;
        var every = context.Request.Word("skips") switch { "never" => 0, "sometimes" => 4, "often" => OftenEvery, _ => level };
        // Where the lesson gives the rhythm it is played as given.
        if (every == 0 || context.Request.Rhythm is not null) return skips;
        var at = 0;
        var end = Fraction.Zero;
        for (var bar = 0; bar < context.Progression.Measures.Length; bar++)
        {
            end += context.Progression.Measures[bar].Length;
            var first = at;
            while (at < slots.Count && slots[at].Start < end) at++;
            if ((bar + 1) % every != 0) continue;
            var places = Enumerable.Range(first, at - first).Where(i => i + 1 < slots.Count && slots[i].Weight != MetricWeight.Downbeat && slots[i].Duration >= 1 && slots[i].End == slots[i + 1].Start).ToList();
            if (places.Count > 0) skips[places[(int)(places.Count * SeededNoise.At(context.Request.Seed, bar, 0))]] = true;
        }
        return skips;
    }

    /// <summary>Writes a note, with its skip where it has one.</summary>
    public static void Write(LineWriter writer, Slot slot, NamedPitch pitch, bool skips)
    {
        if (!skips)
        {
            writer.Add(slot, pitch);
            return;
        }
        writer.Add(slot with { Duration = slot.Duration - Length }, pitch);
        writer.Add(new Slot(slot.End - Length, Length, MetricWeight.OffBeat, null), pitch, new StrokeMarks(Head: Notehead.Dead));
    }
}
