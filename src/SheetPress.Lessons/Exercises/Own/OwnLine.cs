using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>The teacher's own line, written note by note as <see cref="LineNotation"/> describes.</summary>
internal sealed class OwnLine : ExerciseStyle
{
    public override string Name => "own-line";
    public override string Title => "A line to play";
    public override string Summary => "Your own line, note by note: degrees of the chord or the key, or pitches, with rhythm and marks.";
    public override string Group => "own";
    public override string Guide => LineNotation.Guide;
    public override ImmutableArray<StyleOption> Options =>
    [
        new("line", OptionType.Text, "The notes, bar by bar.", "") { Required = true, Example = "q R 5 8 5 | e R R 5 5 8:accent - 5 5 | h R q 5 under-next | w R" },
        new("lower", OptionType.Text, "A second voice below it on the same staff, written like the line.", "none") { Example = "h R 5 | R 5" },
        new("degrees", OptionType.Choice, "What degrees are counted from: the chord that sounds, or the key.", "chord") { Choices = ["chord", "key"] },
    ];

    public override string Instruction(ExerciseRequest request) => "Slowly at first, and in time: only as fast as every note speaks.";

    public override Line Generate(ExerciseContext context) => Make(context, "line");

    public override Line? GenerateLower(ExerciseContext context) => context.Request.Options.TryGetValue("lower", out var given) && !IsNone(given.Text.Value) ? Make(context, "lower") : null;

    private static bool IsNone(string text) => text.Trim().Equals("none", StringComparison.OrdinalIgnoreCase);

    private static Line Make(ExerciseContext context, string option)
    {
        var progression = context.Progression;
        var empty = new Line([], progression.Length);
        if (!context.Request.Options.TryGetValue(option, out var given)) return empty;
        var text = given.Text;
        var bag = context.Diagnostics;
        var hadErrors = bag.HasErrors;
        var count = bag.Items.Count;
        var bars = new LineTokenReader(bag).Read(text);
        if (bars.Count == 1 && bars[0].Count == 0)
        {
            if (bag.Items.Count == count) bag.Add(text.Span, LineProblems.EmptyLine());
            return empty;
        }
        var measures = progression.Measures;
        if (bars.Count > measures.Length) bag.Add(text.Span, LineProblems.TooManyBars(bars.Count, measures.Length));
        if (context.Request.Rhythm is not null && bars.SelectMany(b => b).FirstOrDefault(t => t is ValueToken) is { } value) bag.Add(value.Word.Span, LineProblems.RhythmTwice());
        if (bag.Items.Count > count) return empty;
        var line = new LineTimer(bag).Time(bars, Frame(context), context.Request.Rhythm is not null);
        if (line is null) return empty;
        CheckSlurs(line, bag);
        if (!CheckChanges(line, option, bag)) return empty;
        if (measures.Length % line.Bars != 0) bag.Add(text.Span, LineProblems.UnevenRepeat(line.Bars, measures.Length));
        var track = HarmonyTrack.Of(context);
        var placed = Rounds(context, line, track, text.Span);
        if (bag.HasErrors && !hadErrors) return empty;
        return new WrittenLinePlayer(context, track, context.Request.Word("degrees") == "key" ? PlayerManner.OwnLineInKey : PlayerManner.OwnLine).Play(placed) with { Changes = LineChanges.Of(context, line) };
    }

    private static bool CheckChanges(WrittenLine line, string option, DiagnosticBag bag)
    {
        var problems = bag.Items.Count;
        foreach (var change in line.Changes)
        {
            if (option == "lower") bag.Add(change.Span, LineProblems.ChangeInLower());
            else if (change.Equation is not null && change.Start == Fraction.Zero) bag.Add(change.Span, ProgressionProblems.EquationAtStart());
            else if (change.Tempo is not null && change.Start == Fraction.Zero) bag.Add(change.Span, LineProblems.TempoAtStart());
        }
        return bag.Items.Count == problems;
    }

    private static void CheckSlurs(WrittenLine line, DiagnosticBag bag)
    {
        WrittenNote? open = null;
        foreach (var note in line.Notes)
        {
            if (note.Marks.SlurStop && open is null) bag.Add(note.Span, LineProblems.SlurHasNoStart());
            if (note.Marks.SlurStop) open = null;
            if (!note.Marks.SlurStart) continue;
            if (open is not null) bag.Add(note.Span, LineProblems.SlurInSlur());
            open = note;
        }
        if (open is not null) bag.Add(open.Span, LineProblems.SlurHasNoEnd());
    }

    private static List<LineBar> Frame(ExerciseContext context)
    {
        var measures = context.Progression.Measures;
        if (context.Request.Rhythm is not { } rhythm) return [.. measures.Select(m => new LineBar(m.Length, m.Meter, []))];
        var strokes = RhythmTiler.StrokesByMeasure(context.Progression, _ => rhythm);
        return [.. measures.Select((m, i) => new LineBar(m.Length, m.Meter, strokes[i]))];
    }

    // The line over and over until the progression ends, each round on measures as long as the written ones.
    private static List<PlacedNote> Rounds(ExerciseContext context, WrittenLine line, HarmonyTrack track, SourceSpan span)
    {
        var measures = context.Progression.Measures;
        var end = context.Progression.Length;
        var placed = new List<PlacedNote>();
        var start = Fraction.Zero;
        for (var first = 0; first < measures.Length; first += line.Bars)
        {
            for (var i = 0; i < line.Bars && first + i < measures.Length; i++)
            {
                if (measures[first + i].Length == measures[i].Length) continue;
                context.Diagnostics.Add(span, LineProblems.OtherLength(first + i + 1));
                return placed;
            }
            foreach (var note in line.Notes)
            {
                var from = start + note.Start;
                if (from >= end) break;
                placed.Add(new PlacedNote(note, from, Fraction.Min(note.Duration, end - from), track.At(from)));
            }
            start += line.Length;
        }
        return placed;
    }
}
