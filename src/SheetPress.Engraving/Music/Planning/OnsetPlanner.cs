using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>Places everything that starts at one moment on the staff: heads, ledger lines, accidentals, dots, rests.</summary>
internal sealed class OnsetPlanner(WrittenAccidentals signs)
{
    // White between a bracketed head and its brackets.
    private const double BracketGap = 0.1;

    /// <summary>How far the bracket of a ghost note reaches beyond its head.</summary>
    public static double BracketWidth => BracketGap + Ink.Glyph("noteheadParenthesisRight").Bounds.Width;

    // A dot below a flag keeps this much white from it, or moves to its right.
    private const double FlagGap = 0.2;

    // By this much the stem of a cross is longer, so that its flag ends clear of it.
    private const double CrossRoom = 0.5;

    // A ledger line beside an accidental is shortened to half its reach, so that the accidental need not stand far off.
    private const double ShortLedgerShare = 0.5;

    /// <summary>Plans events of one onset, one or two.</summary>
    public EventPlan[] Plan(EventDraft[] drafts)
    {
        var heads = drafts.Select(d => d.Event.IsRest ? [] : d.Heads()).ToArray();
        var accidentals = heads.Select((h, i) => Accidentals(drafts[i], h)).ToArray();
        var needsAccidental = accidentals.Any(a => a.Count > 0);
        var marks = new ImmutableArray<Mark>.Builder[drafts.Length];
        var obstacles = new List<Box>();
        // Of the heads of both voices, and their brackets.
        var right = double.NegativeInfinity;
        for (var i = 0; i < drafts.Length; i++)
        {
            marks[i] = ImmutableArray.CreateBuilder<Mark>();
            if (drafts[i].Event.IsRest) AddRest(marks[i], drafts[i]);
            else AddHeads(marks[i], drafts[i], heads[i], needsAccidental);
            foreach (var mark in marks[i])
            {
                if (mark.Role == MarkRole.Notehead) right = Math.Max(right, mark.Bounds.Right);
                if (mark.Role is MarkRole.Notehead or MarkRole.LedgerLine) obstacles.Add(mark.Bounds);
                else obstacles.AddRange(InkCover.Of(mark));
            }
        }
        for (var i = 0; i < drafts.Length; i++) AddAccidentals(marks[i], drafts[i], accidentals[i], obstacles);
        var dotted = new HashSet<int>();
        for (var i = 0; i < drafts.Length; i++) AddDots(marks[i], drafts[i], heads[i], heads, right, dotted);
        var plans = new EventPlan[drafts.Length];
        for (var i = 0; i < drafts.Length; i++) plans[i] = ToPlan(drafts[i], heads[i], marks[i]);
        return plans;
    }

    private List<(int Step, string Name)> Accidentals(EventDraft draft, ImmutableArray<HeadPlan> heads)
    {
        var result = new List<(int, string)>();
        // The slashes of a chord chart are the chart's own, not tones of the score.
        foreach (var head in heads.Where(h => h.Tone.Head != Notehead.Slash))
        {
            var sign = signs[draft.Origin.Measure, draft.ScoreVoice, draft.Origin.Event, draft.Event.Tones.IndexOf(head.Tone)];
            if (sign != AccidentalSign.None) result.Add((head.Step, AccidentalGlyphs.Name(head.Tone.Pitch.Name.Alteration)));
        }
        return result;
    }

    private static void AddRest(ImmutableArray<Mark>.Builder marks, EventDraft draft)
    {
        if (draft.IsHidden) return;
        var value = draft.IsCentred ? NoteBase.Whole : draft.Event.Value.Base;
        marks.Add(Ink.At(RestGlyphs.Name(value, draft.RestY), draft.Shift, draft.RestY, MarkRole.Rest, draft.Origin));
    }

    private static void AddHeads(ImmutableArray<Mark>.Builder marks, EventDraft draft, ImmutableArray<HeadPlan> heads, bool besideAccidental)
    {
        AddLedgers(marks, draft, heads, besideAccidental);
        foreach (var head in heads) marks.Add(new GlyphMark(head.Glyph, new Point(head.X, head.Y)) { Role = MarkRole.Notehead, Origin = draft.Origin });
        var (left, right) = (heads.Min(h => h.Left), heads.Max(h => h.Right));
        foreach (var head in heads.Where(h => h.Tone.Head == Notehead.Ghost))
        {
            var (open, close) = (Ink.Glyph("noteheadParenthesisLeft"), Ink.Glyph("noteheadParenthesisRight"));
            marks.Add(new GlyphMark(open, new Point(left - BracketGap - open.Bounds.Right, head.Y)) { Role = MarkRole.Notehead, Origin = draft.Origin });
            marks.Add(new GlyphMark(close, new Point(right + BracketGap - close.Bounds.Left, head.Y)) { Role = MarkRole.Notehead, Origin = draft.Origin });
        }
    }

    private static void AddLedgers(ImmutableArray<Mark>.Builder marks, EventDraft draft, ImmutableArray<HeadPlan> heads, bool besideAccidental)
    {
        var defaults = Ink.Defaults;
        void AddSide(IEnumerable<HeadPlan> outside, int first, int last)
        {
            var list = outside.ToList();
            for (var step = first; Math.Abs(step) <= Math.Abs(last); step += Math.Sign(first) * 2)
            {
                var here = list.Where(h => Math.Abs(h.Step) >= Math.Abs(step)).ToList();
                var left = here.Min(h => h.Left) - (defaults.LegerLineExtension * (besideAccidental ? ShortLedgerShare : 1));
                var right = here.Max(h => h.Right) + defaults.LegerLineExtension;
                marks.Add(Ink.Level(left, right, StaffSteps.Y(step), defaults.LegerLineThickness, MarkRole.LedgerLine, draft.Origin));
            }
        }
        const int firstLedger = StaffSteps.TopLineStep + 2;
        var (low, high) = (heads[0].Step, heads[^1].Step);
        if (high >= firstLedger) AddSide(heads.Where(h => h.Step >= firstLedger), firstLedger, high);
        if (low <= -firstLedger) AddSide(heads.Where(h => h.Step <= -firstLedger), -firstLedger, low);
    }

    private static void AddAccidentals(ImmutableArray<Mark>.Builder marks, EventDraft draft, List<(int Step, string Name)> accidentals, List<Box> obstacles)
    {
        // Brackets of ghost notes stand between head and accidental.
        foreach (var mark in AccidentalStack.Place(accidentals, obstacles, draft.Origin))
        {
            marks.Add(mark);
            obstacles.AddRange(InkCover.Of(mark));
        }
    }

    // Dotted are the spaces that the upper voice has its dots in.
    private static void AddDots(ImmutableArray<Mark>.Builder marks, EventDraft draft, ImmutableArray<HeadPlan> own, ImmutableArray<HeadPlan>[] all, double right, HashSet<int> dotted)
    {
        var count = draft.Event.Value.Dots;
        if (count == 0 || draft.IsCentred || draft.IsHidden) return;
        var ys = new List<double>();
        double x;
        if (draft.Event.IsRest)
        {
            // The dot of a rest stands in the third space, or beside a shifted rest as far from it as usual.
            ys.Add(draft.RestY - 0.5 + (draft.Event.Value.Base == NoteBase.Whole ? 1 : 0));
            x = marks[0].Bounds.Right + DotColumn.HeadGap;
        }
        else
        {
            // A head that both voices share has one dot.
            var isLower = draft.Voice == 1;
            var upper = isLower && all.Length > 1 ? all[0] : [];
            var steps = own.Where(h => !upper.Any(o => o.Step == h.Step && o.X == h.X)).Select(h => h.Step);
            var dots = DotColumn.Steps([.. steps], isLower, dotted);
            if (!isLower) dotted.UnionWith(dots);
            ys.AddRange(dots.Select(StaffSteps.Y));
            x = right + DotColumn.HeadGap;
            if (HasFlagInWay(draft, own, ys)) x = Math.Max(x, FlagRight(draft, own) + DotColumn.HeadGap);
        }
        foreach (var y in ys)
        {
            for (var i = 0; i < count; i++) marks.Add(Ink.At("augmentationDot", x + (i * DotColumn.Pitch), y, MarkRole.Dot, draft.Origin));
        }
    }

    // The flag of a stem that points down curls back to the right arm of a cross.
    private static bool HasCrossAtFlag(EventDraft draft, ImmutableArray<HeadPlan> heads) =>
        draft is { Stem: StemDirection.Down, IsBeamed: false } && draft.Event.Value.Flags > 0 && heads[0].Tone.Head == Notehead.Dead;

    private static bool HasFlagInWay(EventDraft draft, ImmutableArray<HeadPlan> heads, List<double> ys)
    {
        if (draft.IsBeamed || draft.Stem == StemDirection.Down || draft.Event.Value.Flags == 0) return false;
        var tip = StemRules.Tip(StemDirection.Up, heads[0].Step, heads[^1].Step, draft.Event.Value.Flags);
        var bottom = tip + Ink.Glyph(FlagGlyphs.Name(draft.Event.Value.Flags, StemDirection.Up)).Bounds.Bottom;
        return ys.Min() - Ink.Glyph("augmentationDot").Bounds.Bottom < bottom + FlagGap;
    }

    private static double FlagRight(EventDraft draft, ImmutableArray<HeadPlan> heads) =>
        heads[0].Right + Ink.Glyph(FlagGlyphs.Name(draft.Event.Value.Flags, StemDirection.Up)).Bounds.Right;

    private static EventPlan ToPlan(EventDraft draft, ImmutableArray<HeadPlan> heads, ImmutableArray<Mark>.Builder marks)
    {
        var plan = new EventPlan
        {
            Event = draft.Event,
            Origin = draft.Origin,
            Voice = draft.Voice,
            Heads = heads,
            Stem = draft.Stem,
            HasStem = draft.HasStem && !ChartSlashes.IsBeatSlash(draft.Event),
            IsBeamed = draft.IsBeamed,
            IsUnderBeam = draft.IsUnderBeam,
            IsCentred = draft.IsCentred,
            IsHidden = draft.IsHidden,
            Marks = marks.ToImmutable(),
        };
        if (heads.IsEmpty)
        {
            var rest = marks.Count > 0 ? marks[0].Bounds : new Box(0, 0, Ink.Glyph("restQuarter").Bounds.Right, 0);
            return plan with { Left = rest.Left, Right = rest.Right, Centre = (rest.Left + rest.Right) / 2 };
        }
        // The near side of the stem: there is always one.
        var near = heads.First(h => h.X == draft.NearX);
        var half = Ink.Defaults.StemThickness / 2;
        var up = draft.Stem == StemDirection.Up;
        var anchor = near.Glyph.Anchors.TryGetValue(up ? "stemUpSE" : "stemDownNW", out var found) ? found : new Point(up ? near.Glyph.Bounds.Right : 0, 0);
        var root = up ? heads[0] : heads[^1];
        var rootAnchor = root.Glyph.Anchors.TryGetValue(up ? "stemUpSE" : "stemDownNW", out found) ? found : default;
        return plan with
        {
            Left = heads.Min(h => h.Left),
            Right = heads.Max(h => h.Right),
            Centre = near.Centre,
            StemX = near.X + anchor.X + (up ? -half : half),
            StemRoot = root.Y + rootAnchor.Y,
            StemTip = StemRules.Tip(draft.Stem, heads[0].Step, heads[^1].Step, draft.Event.Value.Flags) + (HasCrossAtFlag(draft, heads) ? CrossRoom : 0),
        };
    }
}
