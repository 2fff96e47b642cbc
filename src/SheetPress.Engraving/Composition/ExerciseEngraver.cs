using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>Engraves an exercise for the page: in the staff size of the style, or in a smaller one where a single measure is too full for the width of narrow paper.</summary>
internal static class ExerciseEngraver
{
    // A staff of 4.8 mm is about the smallest that is read from a stand.
    private const double SmallestStaffSpace = 1.2;
    private const double Step = 0.9;

    /// <summary>The systems, in staff spaces, and the style with the staff size they are meant for.</summary>
    internal static (ImmutableArray<EngravedSystem> Systems, PageStyle Style) Engrave(Score score, PageStyle style, EngravingOptions options)
    {
        var systems = At(style);
        for (var smaller = style; IsCrammed(systems) && smaller.StaffSpace * Step >= SmallestStaffSpace;)
        {
            smaller = smaller with { StaffSpace = smaller.StaffSpace * Step };
            systems = At(smaller);
            style = smaller;
        }
        return (systems, style);

        ImmutableArray<EngravedSystem> At(PageStyle look) => ScoreEngraver.Engrave(score, look.TextWidth / look.StaffSpace, options with { StaffSpace = look.StaffSpace }).Systems;
    }

    private static bool IsCrammed(ImmutableArray<EngravedSystem> systems)
    {
        foreach (var system in systems) if (system.StretchRatio < SystemLint.LeastStretch) return true;
        return false;
    }
}
