using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>
/// Draws ties in a tab that stands alone: an arc from the number to the stem of the tied note, or to its number in brackets where it has one.
/// Upward on the upper strings, downward on the lower ones.
/// </summary>
internal static class TabTies
{
    // Ends of an arc from the number, and from the line of its string.
    private const double NumberGap = 0.3;
    private const double FromLine = 0.3;

    // A long arc between numbers of the other voice on both strings beside its own is as flat as this and keeps this white from them.
    private const double PassingHeight = 0.22;
    private const double PassingGap = 0.19;

    // So flat that it stays between its string and the next.
    private const double BaseHeight = 0.25;
    private const double HeightPerSpace = 0.04;
    private const double LeastHeight = 0.35;
    private const double MostHeight = 0.6;

    private const double EdgeGap = 0.2;
    private const double ShortestTie = 0.8;

    /// <summary>Draws all ties.</summary>
    public static void Draw(SystemFrame frame, StaffCanvas canvas, int strings, TextSizes sizes)
    {
        foreach (var voice in frame.Voices)
        {
            for (var i = 0; i < voice.Length; i++)
            {
                foreach (var tone in voice[i].Plan.Event.Tones)
                {
                    if (tone is { TieStart: true, Position: { } position }) Draw(frame, canvas, voice[i], tone, position, i + 1 < voice.Length ? voice[i + 1] : null, strings, sizes);
                }
            }
        }
    }

    private static void Draw(SystemFrame frame, StaffCanvas canvas, PlacedEvent from, Tone tone, FretPosition position, PlacedEvent? to, int strings, TextSizes sizes)
    {
        var hasNumber = !tone.TieStop || FretNumbers.LeadsOn(from.Plan) || frame.BeginsWith(from);
        var start = hasNumber && TabJoins.NumberBox(from, position, sizes) is { } box ? box.Right + NumberGap : from.Centre;
        var numbered = to is not null && FretNumbers.LeadsOn(to.Plan) ? TabJoins.NumberBox(to, position, sizes)?.Left - NumberGap : null;
        var end = numbered ?? to?.Centre ?? frame.Boundaries[^1].X + frame.Boundaries[^1].Boundary.Left - EdgeGap;
        end = Math.Max(end, start + ShortestTie);
        var height = Math.Clamp(BaseHeight + (HeightPerSpace * (end - start)), LeastHeight, MostHeight);
        var origin = from.Plan.Origin with { Staff = 1 };
        var usual = position.String * 2 <= strings + 1;
        var room = new InkRoom(canvas, start, end, m => m.Role is MarkRole.FretNumber or MarkRole.Rest);
        canvas.Add(Free(height, NumberGap) ?? Free(PassingHeight, PassingGap) ?? On(usual, PassingHeight));

        CurveMark? Free(double high, double gap) => Array.Find([On(usual, high), On(!usual, high)], arc => room.IsFree(arc, gap));

        CurveMark On(bool above, double high)
        {
            var y = FretNumbers.LineY(position.String) + (above ? -FromLine : FromLine);
            return Arc.Of(new Point(start, y), new Point(end, y), high, above, MarkRole.Tie, origin);
        }
    }
}
