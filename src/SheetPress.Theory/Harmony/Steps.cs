namespace SheetPress.Theory;

/// <summary>Distances between roots by sound.</summary>
internal static class Steps
{
    /// <summary>Half steps from one note up to another, 0 to 11.</summary>
    internal static int Up(NoteName from, NoteName to) => NoteName.Mod(to.PitchClass - from.PitchClass, 12);

    internal static bool UpFourth(Chord from, Chord to) => Up(from.Root, to.Root) == 5;

    internal static bool UpHalfStep(Chord from, Chord to) => Up(from.Root, to.Root) == 1;

    internal static bool DownHalfStep(Chord from, Chord to) => Up(from.Root, to.Root) == 11;
}
