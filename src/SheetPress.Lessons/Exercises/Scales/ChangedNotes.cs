using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>
/// The notes by which the scale of a chord differs from the key get an accent, such as the raised third in the fifth mode of harmonic
/// minor over the dominant of a minor key.
/// </summary>
internal static class ChangedNotes
{
    /// <summary>The option that scale styles take.</summary>
    public static StyleOption Option => new("accent-changes", OptionType.Flag, "Whether notes that leave the key get an accent.", "true");

    /// <summary>The marks of a note; null where none are wanted.</summary>
    public static Func<HarmonyStep, NamedPitch, StrokeMarks>? Marks(ExerciseRequest request) => request.Flag("accent-changes")
        ? static (step, note) => step.LeavesKey(note.Pitch) ? new StrokeMarks(Articulations.Accent) : default
        : null;
}
