using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>Draws the notes and rests of a system on the staff with their stems, flags and beams.</summary>
internal static class NoteDrawer
{
    /// <summary>Draws all measures.</summary>
    public static void Draw(SystemFrame frame, StaffCanvas canvas)
    {
        foreach (var measure in frame.Measures)
        {
            for (var v = 0; v < measure.Voices.Length; v++) DrawVoice(measure, v, canvas);
        }
    }

    private static void DrawVoice(PlacedMeasure measure, int voice, StaffCanvas canvas)
    {
        var events = measure.Voices[voice];
        foreach (var group in measure.Plan.Voices[voice].Groups)
        {
            var members = events[group.First..(group.Last + 1)];
            var notes = members.Where(e => e.Plan.HasStem).ToList();
            if (notes.Count < 2) continue;
            if (notes.Exists(e => e.IsUp != notes[0].IsUp)) DrawKneed(canvas, members, notes);
            else DrawPlain(canvas, members, notes);
        }
        foreach (var e in events) DrawEvent(e, canvas);
    }

    private static void DrawPlain(StaffCanvas canvas, ImmutableArray<PlacedEvent> members, List<PlacedEvent> notes)
    {
        var up = notes[0].IsUp;
        var line = BeamPlacement.Place([.. notes.Select(e => ToBeamNote(e, up))], up);
        var half = Ink.Defaults.BeamThickness / 2;
        foreach (var e in notes) e.StemTip = line.At(e.StemX) + (up ? -half : half);
        BeamDrawer.Draw(canvas, members, e => e.StemX, line, up);
        foreach (var rest in members.Where(e => e.Plan.Event.IsRest)) rest.RestDrop = BeamedRest.Drop(rest, notes, line, up);
    }

    // The beams hang below the first one; stems from above go on to the last that is theirs.
    private static void DrawKneed(StaffCanvas canvas, ImmutableArray<PlacedEvent> members, List<PlacedEvent> notes)
    {
        var (high, low) = (notes.Where(e => !e.IsUp).Max(e => e.Plan.BottomHead), notes.Where(e => e.IsUp).Min(e => e.Plan.TopHead));
        var y = KneedBeam.Place(high, low, notes.Max(e => e.Plan.Event.Beams.Length)) ?? ((high + low) / 2);
        var line = new BeamLine(notes[0].StemX, y, notes[^1].StemX, y);
        var (half, pitch) = (Ink.Defaults.BeamThickness / 2, Ink.Defaults.BeamThickness + Ink.Defaults.BeamSpacing);
        foreach (var e in notes) e.StemTip = e.IsUp ? y - half : y + half + ((Math.Max(1, e.Plan.Event.Beams.Length) - 1) * pitch);
        BeamDrawer.Draw(canvas, members, e => e.StemX, line, up: true);
        foreach (var rest in members.Where(e => e.Plan.Event.IsRest))
        {
            var (below, above) = (BeamedRest.Drop(rest, notes, line, up: true), BeamedRest.Drop(rest, notes, line, up: false));
            rest.RestDrop = below <= -above ? below : above;
        }
    }

    private static BeamNote ToBeamNote(PlacedEvent e, bool up)
    {
        var ink = e.Plan.Marks.Where(m => m.Role is MarkRole.Accidental or MarkRole.Dot).SelectMany(m => InkCover.Of(m)).Select(b => b.Transform(1, e.X, 0));
        return new BeamNote(e.StemX, up ? e.Plan.TopHead : e.Plan.BottomHead, Math.Max(1, e.Plan.Event.Beams.Length)) { Ink = [.. ink] };
    }

    private static void DrawEvent(PlacedEvent e, StaffCanvas canvas)
    {
        var plan = e.Plan;
        foreach (var mark in plan.Marks) canvas.Add(mark.Transform(1, e.X, e.RestDrop));
        if (!plan.HasStem) return;
        var half = Ink.Defaults.StemThickness / 2;
        var tip = e.StemTip;
        if (plan.IsBeamed)
        {
            // A stem ends inside its beam, a little short of the outer edge, so that no corner shows at a slant.
            tip += e.IsUp ? half : -half;
        }
        else if (plan.Event.Value.Flags > 0)
        {
            var flag = Ink.Glyph(FlagGlyphs.Name(plan.Event.Value.Flags, plan.Stem));
            canvas.Add(new GlyphMark(flag, new Point(e.StemX - half, tip)) { Role = MarkRole.Flag, Origin = plan.Origin });
            if (flag.Anchors.TryGetValue(e.IsUp ? "stemUpNW" : "stemDownSW", out var anchor)) tip += anchor.Y;
        }
        canvas.Add(Ink.Upright(e.StemX, Math.Min(tip, plan.StemRoot), Math.Max(tip, plan.StemRoot), half * 2, MarkRole.Stem, plan.Origin));
    }
}
