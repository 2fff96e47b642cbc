namespace SheetPress.Engraving;

/// <summary>Draws rhythm below a tab that stands alone.</summary>
internal static class TabRhythmDrawer
{
    /// <summary>Stems, flags, beams, dots and rests.</summary>
    public static void Draw(SystemFrame frame, StaffCanvas canvas, int strings)
    {
        var bottom = TabRhythm.StemBottom(strings);
        var half = Ink.Defaults.BeamThickness / 2;
        foreach (var measure in frame.Measures)
        {
            // Two voices in one tab share their stems: the rhythm below is that of the voice that moves.
            if (measure.Voices.IsEmpty) continue;
            var voice = BusiestVoice(measure);
            var events = measure.Voices[voice];
            foreach (var e in events)
            {
                e.StemTip = bottom;
                if (e.Plan.IsCentred) canvas.Add(CentredRest(measure, e, strings));
                var drop = e.Plan.Event.IsRest && StandsUnderNumber(measure, e, strings) ? TabRhythm.RestDrop : 0;
                canvas.AddAll(TabRhythm.MarksOf(e.Plan, strings).Select(m => m.Transform(1, e.X, drop)));
            }
            foreach (var group in measure.Plan.Voices[voice].Groups)
            {
                var members = events[group.First..(group.Last + 1)];
                var notes = members.Where(e => !e.Plan.Event.IsRest).ToList();
                if (notes.Count < 2) continue;
                var line = new BeamLine(notes[0].Centre, bottom - half, notes[^1].Centre, bottom - half);
                BeamDrawer.Draw(canvas, members, e => e.Centre, line, up: false);
            }
            TupletDrawer.DrawBelowTab(measure, voice, canvas, bottom);
        }
    }

    // A whole-bar rest hangs from the second line, in the middle of the measure.
    private static GlyphMark CentredRest(PlacedMeasure measure, PlacedEvent e, int strings) =>
        Ink.Centred("restWhole", (measure.InnerLeft + measure.InnerRight) / 2, FretNumbers.LineY(Math.Min(2, strings)), MarkRole.Rest, e.Plan.Origin);

    // The other voice may strike the lowest string where this one rests.
    private static bool StandsUnderNumber(PlacedMeasure measure, PlacedEvent rest, int strings)
    {
        foreach (var voice in measure.Voices)
        {
            foreach (var e in voice) if (e.Plan.Event.Onset == rest.Plan.Event.Onset && e.Plan.Event.Tones.Any(t => t.Position?.String == strings)) return true;
        }
        return false;
    }

    private static int BusiestVoice(PlacedMeasure measure)
    {
        var voice = 0;
        for (var v = 1; v < measure.Voices.Length; v++)
        {
            if (measure.Voices[v].Count(e => !e.Plan.Event.IsRest) > measure.Voices[voice].Count(e => !e.Plan.Event.IsRest)) voice = v;
        }
        return voice;
    }
}
