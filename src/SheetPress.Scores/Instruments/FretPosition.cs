namespace SheetPress.Scores;

/// <summary>A place on the neck.</summary>
/// <param name="String">String number, 1 is nearest the floor (highest).</param>
/// <param name="Fret">Fret above the capo, 0 for open.</param>
public readonly record struct FretPosition(int String, int Fret);
