namespace SheetPress.Engraving;

/// <summary>Checks stems, beams, the alignment of heads and fret numbers, and that articulations stand by their notes.</summary>
internal static class NoteLint
{
    private const double ShortestStem = 2.5;
    private const double LongestFreeStem = 5.2;
    private const double LongestBeamedStem = 11;
    private const double SteepestBeam = 0.26;
    private const double HighestBeam = 1.3;
    private const double AlignmentTolerance = 0.1;

    // Beyond staff, head and stem an articulation may give way to a tie or to another sign, but no further.
    private const double FurthestSign = 3;

    // How near to the middle line a stem ends that reaches it from afar, without and with a flag.
    private const double AtMiddle = 0.3;
    private const double BeyondMiddle = 1;

    // The point where a stem meets a head lies a little off the middle of the head.
    private const double HeadTolerance = 0.05;

    /// <summary>Checks the marks of one system.</summary>
    /// <param name="marks">The marks.</param>
    /// <param name="unit">Length of a staff space.</param>
    public static IEnumerable<LintFinding> Check(IReadOnlyList<Mark> marks, double unit)
    {
        var events = new Dictionary<(int Measure, int Event, int Voice), List<Mark>>();
        foreach (var mark in marks.Where(m => m.Origin.Event >= 0 && m.Role is MarkRole.Notehead or MarkRole.FretNumber or MarkRole.Stem or MarkRole.Flag or MarkRole.Articulation))
        {
            var key = (mark.Origin.Measure, mark.Origin.Event, mark.Origin.Voice);
            if (!events.TryGetValue(key, out var list)) events[key] = list = [];
            list.Add(mark);
        }
        var beams = marks.OfType<PolygonMark>().Where(m => m.Role == MarkRole.Beam).ToList();
        var lines = marks.Where(m => m.Role == MarkRole.StaffLine).Select(m => (m.Bounds.Top + m.Bounds.Bottom) / 2).Order().ToList();
        double? middle = lines.Count == 5 ? lines[2] : null;
        foreach (var list in events.Values)
        {
            var heads = list.OfType<GlyphMark>().Where(m => m.Role == MarkRole.Notehead && !m.Glyph.Name.Contains("Parenthesis", StringComparison.Ordinal)).ToList();
            if (heads.Count == 0) continue;
            foreach (var finding in Stems(list, heads, beams, middle, unit)) yield return finding;
            foreach (var finding in Alignment(list, heads, unit)) yield return finding;
            if (middle is { } line) foreach (var finding in Signs(list, line, unit)) yield return finding;
        }
        foreach (var beam in beams)
        {
            if (beam.Corners.Length < 4) continue;
            var (rise, run) = (Math.Abs(beam.Corners[1].Y - beam.Corners[0].Y), beam.Corners[1].X - beam.Corners[0].X);
            if (rise > HighestBeam * unit || rise > SteepestBeam * run) yield return new LintFinding(LintRule.Beam, beam.Origin, beam.Bounds, FormattableString.Invariant($"beam rises {rise / unit:0.00} spaces over {run / unit:0.00}"));
        }
    }

    private static IEnumerable<LintFinding> Stems(List<Mark> list, List<GlyphMark> heads, List<PolygonMark> beams, double? middle, double unit)
    {
        foreach (var stem in list.Where(m => m.Role == MarkRole.Stem))
        {
            var bounds = stem.Bounds;
            var (highest, lowest) = (heads.Min(h => h.Position.Y), heads.Max(h => h.Position.Y));
            var up = highest - bounds.Top > bounds.Bottom - lowest;
            var length = (up ? highest - bounds.Top : bounds.Bottom - lowest) / unit;
            var tip = up ? bounds.Top : bounds.Bottom;
            var beamed = beams.Exists(b => b.Bounds.Inflate(0.05 * unit).Overlaps(new Box(bounds.Left, tip - (0.1 * unit), bounds.Right, tip + (0.1 * unit))));
            // Slash heads are two spaces high: their stems are measured from the middle all the same.
            if (length < ShortestStem - HeadTolerance) yield return new LintFinding(LintRule.Stem, stem.Origin, bounds, FormattableString.Invariant($"stem is {length:0.00} spaces long"));
            // A flag that would end beside a ledger line takes its stem a little beyond the middle line.
            var beyond = list.Exists(m => m.Role == MarkRole.Flag) ? BeyondMiddle : AtMiddle;
            var reachesMiddle = middle is { } y && Math.Abs(tip - y) < beyond * unit;
            if (length > (beamed ? LongestBeamedStem : LongestFreeStem) && !reachesMiddle) yield return new LintFinding(LintRule.Stem, stem.Origin, bounds, FormattableString.Invariant($"stem is {length:0.00} spaces long"));
        }
    }

    private static IEnumerable<LintFinding> Alignment(List<Mark> list, List<GlyphMark> heads, double unit)
    {
        foreach (var number in list.Where(m => m.Role == MarkRole.FretNumber))
        {
            var centre = (number.Bounds.Left + number.Bounds.Right) / 2;
            if (heads.Exists(h => Math.Abs(((h.Bounds.Left + h.Bounds.Right) / 2) - centre) <= AlignmentTolerance * unit)) continue;
            yield return new LintFinding(LintRule.Alignment, number.Origin, number.Bounds, "fret number does not stand under its notehead");
        }
    }

    private static IEnumerable<LintFinding> Signs(List<Mark> list, double middle, double unit)
    {
        var note = Box.Around(list.Where(m => m.Role is MarkRole.Notehead or MarkRole.Stem or MarkRole.Flag).Select(m => m.Bounds));
        var (top, bottom) = (Math.Min(note.Top, middle - (2 * unit)), Math.Max(note.Bottom, middle + (2 * unit)));
        foreach (var sign in list.OfType<GlyphMark>().Where(m => m.Role == MarkRole.Articulation && m.Glyph.Name.StartsWith("artic", StringComparison.Ordinal)))
        {
            var off = Math.Max(top - sign.Bounds.Bottom, sign.Bounds.Top - bottom) / unit;
            if (off > FurthestSign) yield return new LintFinding(LintRule.Alignment, sign.Origin, sign.Bounds, FormattableString.Invariant($"{sign.Glyph.Name} stands {off:0.0} spaces off its note"));
        }
    }
}
