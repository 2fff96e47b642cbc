using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>
/// Engraves an exercise for the page: in the staff size of the style; where its measures do not fill the lines of narrow paper well,
/// in a somewhat smaller one; and where that is not enough, with measures divided over two systems.
/// </summary>
internal static class ExerciseEngraver
{
    // A staff of 4.8 mm is about the smallest that is read from a stand.
    private const double SmallestStaffSpace = 1.2;

    // Staff sizes that are tried. A much smaller one comes only after divided measures at every other size.
    private static readonly ImmutableArray<double> Sizes = [1, 0.9, 0.81];
    private const double MuchSmaller = 0.729;

    // What a system costs that is wider than its line, and one that is stretched or squeezed beyond the limits; how far comes on top.
    private const double Overfull = 10;
    private const double OutOfBounds = 1;
    private const double Better = 1e-3;

    /// <summary>The systems, in staff spaces, and the style with the staff size they are meant for.</summary>
    internal static (ImmutableArray<EngravedSystem> Systems, PageStyle Style) Engrave(Score score, PageStyle style, EngravingOptions options)
    {
        var best = Whole(score, style, options);
        if (best.Faults == 0) return (best.Systems, best.Style);
        var sizes = Sizes.Where(s => style.StaffSpace * s >= SmallestStaffSpace || s == 1).Select(s => style with { StaffSpace = style.StaffSpace * s }).ToList();
        var small = style with { StaffSpace = Math.Max(SmallestStaffSpace, style.StaffSpace * MuchSmaller) };
        var settings = sizes.Skip(1).Select(s => Whole(score, s, options))
            .Concat(sizes.Select(s => Divided(score, s, options)))
            .Append(Whole(score, small, options)).Append(Divided(score, small, options));
        foreach (var setting in settings)
        {
            if (setting.Faults < best.Faults - Better) best = setting;
            if (best.Faults == 0) break;
        }
        return (best.Systems, best.Style);
    }

    private static Setting Whole(Score score, PageStyle style, EngravingOptions options)
    {
        var systems = ScoreEngraver.Engrave(score, style.TextWidth / style.StaffSpace, options with { StaffSpace = style.StaffSpace }).Systems;
        return new Setting(systems, style, systems.Sum(Faults));
    }

    // Systems may end at every beat at first; the measures that the best set of breaks goes through are then divided there.
    private static Setting Divided(Score score, PageStyle style, EngravingOptions options)
    {
        var points = MeasureDivider.Points(score);
        var sources = MeasureDivider.Sources(score, points);
        var starts = Whole(MeasureDivider.Divide(score, points, breaks: false), style, options).Systems.Select(s => s.FirstMeasure).ToList();
        // A part that is not the first of its measure begins at the point of as many places before it.
        var divisions = starts.Where(s => s > 0 && sources[s] == sources[s - 1]).Select(s => points[s - sources[s] - 1]).ToList();
        return WithSources(Whole(MeasureDivider.Divide(score, divisions, breaks: true), style, options), MeasureDivider.Sources(score, divisions));
    }

    // Marks say which measure of the undivided score they belong to.
    private static Setting WithSources(Setting setting, ImmutableArray<int> sources) => setting with
    {
        Systems = [.. setting.Systems.Select(s => s with
        {
            FirstMeasure = sources[s.FirstMeasure],
            LastMeasure = sources[s.LastMeasure],
            Drawing = new Drawing([.. s.Drawing.Marks.Select(m => m.Origin.Measure < 0 ? m : m with { Origin = m.Origin with { Measure = sources[m.Origin.Measure] } })]),
        })],
    };

    private static double Faults(EngravedSystem system)
    {
        var faults = 0.0;
        if (system.IsOverfull) faults += Overfull * system.LeastWidth / system.Width;
        if (system.StretchRatio > SystemLint.MostStretch) faults += OutOfBounds + system.StretchRatio - SystemLint.MostStretch;
        if (system.StretchRatio < SystemLint.LeastStretch) faults += OutOfBounds + (1 / system.StretchRatio) - (1 / SystemLint.LeastStretch);
        return faults;
    }

    private sealed record Setting(ImmutableArray<EngravedSystem> Systems, PageStyle Style, double Faults);
}
