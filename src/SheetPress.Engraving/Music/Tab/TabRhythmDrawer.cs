namespace SheetPress.Engraving;

/// <summary>Draws the rhythm of a tab that stands alone: below it, and of two voices the upper one above.</summary>
internal static class TabRhythmDrawer
{
    /// <summary>Stems, flags, beams, dots, rests and tuplets.</summary>
    public static void Draw(SystemFrame frame, StaffCanvas canvas, int strings, TextSizes sizes)
    {
        foreach (var side in frame.Measures.SelectMany(m => m.Voices.Select((_, v) => (Measure: m, Voice: v))).GroupBy(s => s.Measure.Plan.HasTwoVoices && s.Voice == 0))
        {
            // All stems of a side end level.
            var moreStem = side.Max(s => MoreStem(s.Measure, s.Voice));
            foreach (var (measure, voice) in side) Draw(measure, voice, above: side.Key, moreStem, canvas, strings, sizes);
        }
    }

    private static double MoreStem(PlacedMeasure measure, int voice) =>
        measure.Plan.Voices[voice].Groups.SelectMany(g => RestsUnderBeams(measure.Voices[voice][g.First..(g.Last + 1)])).Select(r => TabRhythm.MoreStem(r.Event.Plan, r.Beams)).DefaultIfEmpty().Max();

    private static IEnumerable<(PlacedEvent Event, int Beams)> RestsUnderBeams(IReadOnlyList<PlacedEvent> group)
    {
        var notes = group.Where(e => !e.Plan.Event.IsRest).ToList();
        return group.Where(e => e.Plan.Event.IsRest).Select(rest => (rest, BeamedRest.BeamsBeside(rest, notes)));
    }

    private static void Draw(PlacedMeasure measure, int voice, bool above, double moreStem, StaffCanvas canvas, int strings, TextSizes sizes)
    {
        var away = above ? -1 : 1;
        var end = TabRhythm.StemEnd(strings, above) + (away * moreStem);
        var events = measure.Voices[voice];
        var groups = measure.Plan.Voices[voice].Groups.Select(g => events[g.First..(g.Last + 1)]).ToList();
        var moves = groups.SelectMany(g => RestsUnderBeams(g)).ToDictionary(r => r.Event, r => -away * TabRhythm.MoveFromBeams(r.Event.Plan, r.Beams, moreStem));
        foreach (var e in events)
        {
            e.StemTip = e.Plan.Event.IsRest ? end : TabRhythm.StemEnd(e.Plan, strings) + (away * moreStem);
            if (e.Plan.IsCentred) canvas.Add(TabRhythm.CentredRest(e.Plan, (measure.InnerLeft + measure.InnerRight) / 2, strings));
            canvas.AddAll(TabRhythm.MarksOf(e.Plan, strings, sizes, moreStem).Select(m => m.Transform(1, e.X, moves.GetValueOrDefault(e))));
        }
        foreach (var members in groups)
        {
            var notes = members.Where(e => !e.Plan.Event.IsRest).ToList();
            if (notes.Count < 2) continue;
            var y = end - (away * Ink.Defaults.BeamThickness / 2);
            BeamDrawer.Draw(canvas, members, e => e.Centre, new BeamLine(notes[0].Centre, y, notes[^1].Centre, y), above);
        }
        TupletDrawer.DrawBesideTab(measure, voice, canvas, above, end);
    }
}
