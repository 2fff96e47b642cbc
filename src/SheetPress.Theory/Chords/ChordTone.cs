namespace SheetPress.Theory;

/// <summary>One tone of a chord: its degree above the root and its spelled name.</summary>
/// <param name="Degree">Degree above the root.</param>
/// <param name="Note">The spelled note.</param>
public readonly record struct ChordTone(Degree Degree, NoteName Note);
