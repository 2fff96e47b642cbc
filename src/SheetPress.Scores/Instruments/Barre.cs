namespace SheetPress.Scores;

/// <summary>One finger laid over several strings.</summary>
/// <param name="Fret">Fret above the capo, 1 or more.</param>
/// <param name="FirstString">Lower string number.</param>
/// <param name="LastString">Higher string number.</param>
public readonly record struct Barre(int Fret, int FirstString, int LastString);
