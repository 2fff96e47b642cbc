using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>One row of the practice plan.</summary>
/// <param name="Task">What to practise: the exercise by number and title, or a sentence.</param>
/// <param name="Tempos">Tempo steps as printed, slow to fast: "60", "72"; each gets a box to tick.</param>
/// <param name="Repetitions">Times at each tempo as printed; empty when not said.</param>
/// <param name="Minutes">Minutes as printed; empty when not said.</param>
public sealed record PracticeRow(string Task, ImmutableArray<string> Tempos, string Repetitions, string Minutes);
