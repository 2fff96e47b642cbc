using System.Collections.Immutable;
using System.Globalization;
using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>Fret numbers of an event in the tab: centred on their lines and under the notehead. A tied note shows no number of its own, unless something leads on from it.</summary>
internal static class FretNumbers
{
    /// <summary>Distance between two lines of a tab.</summary>
    public const double LineDistance = 1.5;

    private const TextFont Font = TextFont.SansSemiBold;

    /// <summary>y of the line of a string from the top line of the tab.</summary>
    public static double LineY(int stringNumber) => (stringNumber - 1) * LineDistance;

    /// <summary>The marks of an event with x from its column and y from the top line of the tab.</summary>
    /// <param name="plan">The event.</param>
    /// <param name="sizes">Sizes of text.</param>
    /// <param name="showTied">Whether numbers of tied notes are shown, in brackets: where a system begins with them.</param>
    public static ImmutableArray<Mark> Of(EventPlan plan, TextSizes sizes, bool showTied)
    {
        var marks = ImmutableArray.CreateBuilder<Mark>();
        foreach (var tone in plan.Event.Tones)
        {
            if (tone.Position is not { } position || (tone.TieStop && !showTied && !LeadsOn(plan))) continue;
            var y = LineY(position.String);
            var origin = plan.Origin with { Staff = 1 };
            if (tone.Head == Notehead.Dead)
            {
                marks.Add(Ink.Centred("noteheadXBlack", plan.Centre, y, MarkRole.FretNumber, origin));
                continue;
            }
            marks.Add(Centred(TextOf(tone, position), plan.Centre, y, sizes.Fret) with { Origin = origin });
        }
        return marks.ToImmutable();
    }

    /// <summary>Whether a slide, hammer-on or pull-off starts at the note: its number is shown even where it is tied.</summary>
    public static bool LeadsOn(EventPlan plan) => plan.Event.Connection != Connection.None || plan.Event.SlideOut != LooseSlide.None;

    private static string TextOf(Tone tone, FretPosition position)
    {
        var fret = position.Fret.ToString(CultureInfo.InvariantCulture);
        if (tone.TieStop || tone.Head == Notehead.Ghost) return $"({fret})";
        return tone.Head == Notehead.Harmonic ? $"<{fret}>" : fret;
    }

    private static TextMark Centred(string text, double x, double y, double size)
    {
        var run = TextShaper.Run(text, Font);
        var digit = TextShaper.Run("0", Font).Bounds;
        var left = x - ((run.Bounds.Left + run.Bounds.Right) / 2 * size);
        return new TextMark(run, new Point(left, y - ((digit.Top + digit.Bottom) / 2 * size)), size) { Role = MarkRole.FretNumber };
    }
}
