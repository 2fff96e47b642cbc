using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Publishing;

/// <summary>What one staff of the part does in one exercise.</summary>
/// <param name="Number">1 for the upper staff, 2 for the lower.</param>
/// <param name="IsOnly">Whether the part has no other staff.</param>
/// <param name="IsTab">Whether it is a tab staff.</param>
/// <param name="IsShown">Whether the exercise shows it.</param>
/// <param name="Leads">Whether it is the upper one shown: it carries what is said once, such as chord symbols, articulations and lyrics.</param>
/// <param name="Frets">Whether it carries the marks of the fretting hand, such as hammer-ons and bends: the tab where one is shown.</param>
internal sealed record StaffRole(int Number, bool IsOnly, bool IsTab, bool IsShown, bool Leads, bool Frets)
{
    /// <summary>Whether its notes sound. Only the upper staff does, so that nothing is heard twice.</summary>
    public bool Sounds => Number == 1;

    /// <summary>The number for a staff element or attribute; null where there is no choice.</summary>
    public string? Label => IsOnly ? null : XmlOutput.Number(Number);

    /// <summary>The voice number of a voice: four for each staff.</summary>
    public int VoiceNumber(int voice) => (4 * (Number - 1)) + voice + 1;

    /// <summary>Whether a tone is written here: a tab that only doubles a staff leaves out what has no place on the neck.</summary>
    public bool Writes(Tone tone) => !IsTab || Sounds || tone.Position is not null;

    /// <summary>The staves of the part in each exercise. A file whose exercises show different staves has them all, some hidden.</summary>
    public static ImmutableArray<ImmutableArray<StaffRole>> Assign(IReadOnlyList<Score> scores)
    {
        var notation = scores.Any(s => ShowsNotation(s.Layout));
        var tab = scores.Any(s => ShowsTab(s.Layout));
        var only = !(notation && tab);
        return [.. scores.Select(s => RolesIn(s.Layout))];

        ImmutableArray<StaffRole> RolesIn(StaffLayout layout)
        {
            var (n, t) = (ShowsNotation(layout), ShowsTab(layout));
            var roles = ImmutableArray.CreateBuilder<StaffRole>(2);
            if (notation) roles.Add(new StaffRole(1, only, IsTab: false, IsShown: n, Leads: n, Frets: n && !t));
            if (tab) roles.Add(new StaffRole(notation ? 2 : 1, only, IsTab: true, IsShown: t, Leads: t && !n, Frets: t));
            return roles.ToImmutable();
        }
    }

    private static bool ShowsNotation(StaffLayout layout) => layout != StaffLayout.Tab;

    private static bool ShowsTab(StaffLayout layout) => layout is StaffLayout.StaffAndTab or StaffLayout.Tab;
}
