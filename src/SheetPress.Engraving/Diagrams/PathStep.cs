using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>One tone on the path of a line along the neck.</summary>
/// <param name="Place">String and fret.</param>
/// <param name="Number">When it is played, counted from 1.</param>
/// <param name="IsRoot">Whether it is the root of its chord.</param>
public readonly record struct PathStep(FretPosition Place, int Number, bool IsRoot);
