using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>A style that is data: a pattern out of a file.</summary>
/// <param name="name">Name in lessons, from the file name.</param>
/// <param name="pattern">The pattern, read when first needed.</param>
internal sealed class PatternStyle(string name, Lazy<Pattern> pattern) : ExerciseStyle
{
    private static readonly StyleOption FillEvery =
        new("fill-every", OptionType.Number, "Bars of a phrase, the last of which has a fill; 0 for none. By level when not given: 0 at level 1, 8 at level 2, then 4.", "") { Minimum = 0, Maximum = 32 };

    private Pattern Pattern => pattern.Value;

    public override string Name => name;
    public override string Title => Pattern.Title;
    public override string Summary => Pattern.Summary;
    public override string Group => Pattern.Group;
    public override Feel? OwnFeel => Pattern.Feel;
    public override ImmutableArray<StyleOption> Options => Pattern.Fills.IsEmpty ? [] : [FillEvery];
    public override Meter? HomeMeter => Pattern.Lines is [var first, ..] ? first.Meter : null;
    public override string? HomeInstrument => Pattern.Families is [var family, ..] ? InstrumentCatalogue.All.First(i => i.Family == family).Id : null;
    public override string TitleIn(Progression progression) => IsAtHome(progression) ? Title : Title + ", cut to fit";
    public override string Instruction(ExerciseRequest request) => string.Join(' ', new[] { Pattern.Instruction, Pattern.InOwnMeter }.Where(s => s.Length > 0));
    public override string InstructionIn(Progression progression, ExerciseRequest request) => IsAtHome(progression) ? Instruction(request) : Pattern.Instruction;

    public override Line Generate(ExerciseContext context)
    {
        var empty = new Line([], context.Progression.Length);
        if (!Pattern.Families.IsEmpty && !Pattern.Families.Contains(context.Instrument.Family))
        {
            context.Diagnostics.Add(context.Request.Span, InstrumentProblems.Wrong(Name, context.Instrument.Name, "Choose a pattern that is not tied to another instrument."));
            return empty;
        }
        if (!Pattern.Tones.IsEmpty) return ByTones(context);
        if (context.Request.Rhythm is not null)
        {
            context.Diagnostics.Add(context.Request.Span, PatternProblems.HasRhythm(Name));
            return empty;
        }
        var every = Pattern.Fills.IsEmpty ? 0 : context.Request.Number("fill-every") ?? LevelTable.Of(context.Level).FillEvery;
        var track = HarmonyTrack.Of(context);
        var bars = PhrasePlan.BarsWithFill(context.Progression, track, every);
        var range = NeckRange.Of(context);
        var tiler = new PatternTiler(Pattern, context, track, bars);
        var placed = tiler.Tile();
        var registers = new WrittenRegisters(context, track, range, PlayerManner.Pattern, placed);
        if (bars.Contains(true))
        {
            // Which fill leads on best shows when the octaves of the roots are known.
            placed = new PatternTiler(Pattern, context, track, bars) { WayOn = (fill, step) => registers.WayOn(fill.Line, step) }.Tile();
            registers = new WrittenRegisters(context, track, range, PlayerManner.Pattern, placed);
        }
        placed = Marked(LeadOctaves.Near(placed, registers, range), context.Request.Marks);
        if (tiler.OddMeter is { } meter) context.Diagnostics.Add(context.Request.Span, PatternProblems.OtherMeter(Name, Meters(), meter.ToString()));
        return new WrittenLinePlayer(context, track, PlayerManner.Pattern).Play(placed, registers);
    }

    private bool IsAtHome(Progression progression) => Pattern.Lines.IsEmpty || progression.Measures.All(m => Pattern.IsFor(m.Meter));

    private Line ByTones(ExerciseContext context)
    {
        var rhythm = LevelRhythm.Or(context, context.Level <= 1 ? EvenRhythms.Beats : EvenRhythms.Eighths);
        return new CellLine(context, rhythm).Write((step, _) => ChordCell.Of(Pattern.Tones, step, static _ => true));
    }

    // Marks that the lesson gives are laid on the strokes in turn, as on any rhythm.
    private static List<PlacedNote> Marked(List<PlacedNote> notes, ImmutableArray<StrokeMarks> marks)
    {
        if (marks.IsEmpty) return notes;
        var stroke = 0;
        return notes.ConvertAll(n => n.Note.IsHold ? n : n with { Note = n.Note with { Marks = n.Note.Marks.With(marks[stroke++ % marks.Length]) } });
    }

    private string Meters() => string.Join(" and ", Pattern.Lines.Select(l => l.Meter.ToString()).Distinct().Order(StringComparer.Ordinal));
}
