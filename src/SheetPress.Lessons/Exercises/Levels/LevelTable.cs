using System.Collections.Immutable;

namespace SheetPress.Lessons;

/// <summary>The levels: the one place that says what they change. <see cref="LevelGuide"/> puts it into words.</summary>
internal static class LevelTable
{
    /// <summary>Levels 1 to 5 in order. Common practice of what is taught first; the numbers are from memory of teaching.</summary>
    public static ImmutableArray<Level> All { get; } =
    [
        new()
        {
            Number = 1, Player = "first months", Runs = RunValue.Beats, ArpeggioOctaves = 1,
            Walking = WalkingNotes.ChordTones, LineRange = 15, SkipEvery = 0, LeadEvery = 0,
            Groove = "its bare frame", FillEvery = 0, OneNote = "beats and halves",
        },
        new()
        {
            Number = 2, Player = "first year", Runs = RunValue.Eighths, ArpeggioOctaves = 1,
            Walking = WalkingNotes.ScaleSteps, LineRange = 16, SkipEvery = 0, LeadEvery = 0,
            Groove = "the usual figure", FillEvery = 8, OneNote = "and eighths",
        },
        new()
        {
            Number = 3, Player = "steady player", Runs = RunValue.Eighths, ArpeggioOctaves = 1,
            Walking = WalkingNotes.HalfSteps, LineRange = 18, SkipEvery = 0, LeadEvery = 2,
            Groove = "more chord tones", FillEvery = 4, OneNote = "and off beats",
        },
        new()
        {
            Number = 4, Player = "experienced", Runs = RunValue.Eighths, ArpeggioOctaves = 2,
            Walking = WalkingNotes.HalfSteps, LineRange = 22, SkipEvery = 4, LeadEvery = 1,
            Groove = "notes before the beat", FillEvery = 4, OneNote = "and sixteenths",
        },
        new()
        {
            Number = 5, Player = "advanced", Runs = RunValue.Sixteenths, ArpeggioOctaves = 2,
            Walking = WalkingNotes.HalfSteps, LineRange = 26, SkipEvery = 2, LeadEvery = 1,
            Groove = "ghost notes, short values", FillEvery = 4, OneNote = "syncopated sixteenths",
        },
    ];

    /// <summary>A level; numbers outside 1 to 5 count as the nearest.</summary>
    public static Level Of(int level) => All[Math.Clamp(level, 1, All.Length) - 1];
}
