using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>
/// Draws what lasts over several notes: palm mute, let ring, vibrato. They stand above a tab (or a staff alone), those of a lower
/// voice below it.
/// </summary>
internal static class TechniqueSpans
{
    private const double Rise = 0.7;
    private const double Gap = 0.4;
    private const double Hook = 0.7;
    private const double Dash = 0.6;
    private const double TextGap = 0.4;

    // A span shorter than this shows its word only.
    private const double ShortestLine = 1.2;

    // Vibrato is at least this long and stops short of what follows.
    private const double ShortestVibrato = 2;
    private const double VibratoEnd = 0.6;
    private const double BarlineGap = 0.3;

    // Words of one row keep this far from each other; one that comes nearer stands in a row above.
    private const double WordGap = 0.4;

    /// <summary>Draws all spans of a staff.</summary>
    /// <param name="frame">The system.</param>
    /// <param name="canvas">The staff or tab.</param>
    /// <param name="held">What lasts where in the score.</param>
    /// <param name="bottomLine">y of its bottom line.</param>
    /// <param name="sizes">Sizes of text.</param>
    /// <param name="staff">Index of the staff, for the origin.</param>
    public static void Draw(SystemFrame frame, StaffCanvas canvas, HeldTechniques held, double bottomLine, TextSizes sizes, int staff)
    {
        foreach (var side in frame.Voices.ToLookup(voice => voice.All(e => e.Plan.Voice == 0)))
        {
            var words = new List<List<Mark>>();
            foreach (var voice in side)
            {
                DrawVibrato(canvas, voice, bottomLine, staff, above: side.Key);
                AddWords(words, frame, voice, held, Articulations.PalmMute, "P.M.", bottomLine, sizes, staff, above: side.Key);
                AddWords(words, frame, voice, held, Articulations.LetRing, "let ring", bottomLine, sizes, staff, above: side.Key);
            }
            DrawRows(canvas, words, above: side.Key);
        }
    }

    private static void DrawVibrato(StaffCanvas canvas, IReadOnlyList<PlacedEvent> voice, double bottomLine, int staff, bool above)
    {
        var glyph = Ink.Glyph("guitarVibratoStroke");
        var pitch = glyph.Anchors.TryGetValue("repeatOffset", out var offset) ? offset.X : glyph.Advance;
        for (var i = 0; i < voice.Count; i++)
        {
            var e = voice[i];
            if (!e.Plan.Event.Articulations.HasFlag(Articulations.Vibrato) || e.Plan.Event.IsRest) continue;
            var next = i + 1;
            while (next < voice.Count && HeldTechniques.IsTiedOn(voice[next].Plan.Event)) next++;
            var end = next < voice.Count && voice[next].Measure == e.Measure ? voice[next].Left : e.Measure.InnerRight;
            var count = Math.Max(1, (int)(Math.Max(ShortestVibrato, end - VibratoEnd - e.Left) / pitch));
            // Beside a barline that is near it starts a little earlier.
            var left = Math.Min(e.Left, e.Measure.InnerRight - BarlineGap - ((count - 1) * pitch) - glyph.Bounds.Right);
            var y = above ? -Rise - glyph.Bounds.Bottom : bottomLine + Rise - glyph.Bounds.Top;
            var marks = new List<Mark>(count);
            for (var k = 0; k < count; k++) marks.Add(new GlyphMark(glyph, new Point(left + (k * pitch), y)) { Role = MarkRole.Technique, Origin = e.Plan.Origin with { Staff = staff } });
            canvas.Place(marks, above, Gap);
        }
    }

    // The words of a system share one baseline, as far as they do not overlap.
    private static void DrawRows(StaffCanvas canvas, List<List<Mark>> words, bool above)
    {
        var waiting = words.Select(marks => (Marks: marks, Box: Box.Around(marks.Select(m => m.Bounds)))).OrderBy(w => w.Box.Left).ToList();
        while (waiting.Count > 0)
        {
            var row = new List<(List<Mark> Marks, Box Box)>();
            foreach (var word in waiting) if (row.Count == 0 || row[^1].Box.Right + WordGap <= word.Box.Left) row.Add(word);
            waiting.RemoveAll(row.Contains);
            var moves = row.Select(w => canvas.Clearance(w.Marks, above, Gap));
            var move = above ? moves.Min() : moves.Max();
            foreach (var mark in row.SelectMany(w => w.Marks)) canvas.Add(mark.Transform(1, 0, move));
        }
    }

    // Over a line break the dashes stay open, and the word stands in brackets where they go on.
    private static void AddWords(List<List<Mark>> all, SystemFrame frame, IReadOnlyList<PlacedEvent> voice, HeldTechniques held, Articulations kind, string words, double bottomLine, TextSizes sizes, int staff, bool above)
    {
        for (var i = 0; i < voice.Count; i++)
        {
            var (comesOn, isHeld, _) = held.At(voice[i].Plan, kind);
            if (!isHeld) continue;
            var last = i;
            while (last + 1 < voice.Count && held.At(voice[last + 1].Plan, kind).Here) last++;
            var goesOn = last == voice.Count - 1 && held.At(voice[last].Plan, kind).After;
            var origin = voice[i].Plan.Origin with { Staff = staff };
            var text = new SymbolBuilder(MarkRole.Technique).Text(i == 0 && comesOn ? $"({words})" : words, TextFont.SerifItalic, sizes.Small).Build();
            var y = above ? -Rise : bottomLine + Rise - text.Bounds.Top;
            var left = voice[i].Left - text.Bounds.Left;
            left += BarlineRoom.Move(frame, text.Bounds.Transform(1, left, y));
            // Over the last note of a system a word may have to start a little before it.
            left = Math.Min(left, frame.Width - text.Bounds.Right);
            var marks = text.At(left, y).Marks.Select(m => m with { Origin = origin }).ToList();
            var (lineStart, lineEnd) = (left + text.Bounds.Right + TextGap, goesOn ? frame.Width - BarlineGap : voice[last].Right);
            if ((last > i || goesOn) && lineEnd - lineStart >= ShortestLine)
            {
                var lineY = y - (sizes.Small * 0.3);
                var thickness = Ink.Defaults.HairpinThickness;
                marks.Add(Ink.Level(lineStart, lineEnd, lineY, thickness, MarkRole.Technique, origin) with { Dashes = [Dash, Dash] });
                // The hook points to the notes.
                if (!goesOn) marks.Add(above ? Ink.Upright(lineEnd, lineY - (thickness / 2), lineY + Hook, thickness, MarkRole.Technique, origin)
                    : Ink.Upright(lineEnd, lineY - Hook, lineY + (thickness / 2), thickness, MarkRole.Technique, origin));
            }
            all.Add(marks);
            i = last;
        }
    }
}
