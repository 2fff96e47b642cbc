namespace SheetPress.Engraving;

/// <summary>Draws the rhythm of a tab that stands alone: below it, and of two voices the upper one above.</summary>
internal static class TabRhythmDrawer
{
    /// <summary>Stems, flags, beams, dots, rests and tuplets.</summary>
    public static void Draw(SystemFrame frame, StaffCanvas canvas, int strings, TextSizes sizes)
    {
        foreach (var measure in frame.Measures)
        {
            for (var v = 0; v < measure.Voices.Length; v++) Draw(measure, v, above: measure.Plan.HasTwoVoices && v == 0, canvas, strings, sizes);
        }
    }

    private static void Draw(PlacedMeasure measure, int voice, bool above, StaffCanvas canvas, int strings, TextSizes sizes)
    {
        var end = TabRhythm.StemEnd(strings, above);
        var away = above ? -1 : 1;
        var events = measure.Voices[voice];
        foreach (var e in events)
        {
            e.StemTip = e.Plan.Event.IsRest ? end : TabRhythm.StemEnd(e.Plan, strings);
            if (e.Plan.IsCentred) canvas.Add(TabRhythm.CentredRest(e.Plan, (measure.InnerLeft + measure.InnerRight) / 2, strings));
            var drop = e.Plan.Event.IsRest && StandsBesideNumber(measure, e, above ? 1 : strings) ? away * TabRhythm.RestDrop(e.Plan.Event.Value) : 0;
            canvas.AddAll(TabRhythm.MarksOf(e.Plan, strings, sizes).Select(m => m.Transform(1, e.X, drop)));
        }
        foreach (var group in measure.Plan.Voices[voice].Groups)
        {
            var members = events[group.First..(group.Last + 1)];
            var notes = members.Where(e => !e.Plan.Event.IsRest).ToList();
            if (notes.Count < 2) continue;
            var y = end - (away * Ink.Defaults.BeamThickness / 2);
            BeamDrawer.Draw(canvas, members, e => e.Centre, new BeamLine(notes[0].Centre, y, notes[^1].Centre, y), above);
        }
        TupletDrawer.DrawBesideTab(measure, voice, canvas, above, end);
    }

    // The other voice may strike the outer string where this one rests.
    private static bool StandsBesideNumber(PlacedMeasure measure, PlacedEvent rest, int outer)
    {
        foreach (var voice in measure.Voices)
        {
            foreach (var e in voice) if (e.Plan.Event.Onset == rest.Plan.Event.Onset && e.Plan.Event.Tones.Any(t => t.Position?.String == outer)) return true;
        }
        return false;
    }
}
