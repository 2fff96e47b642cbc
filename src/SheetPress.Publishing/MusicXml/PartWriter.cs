using SheetPress.Engraving;
using SheetPress.Scores;

namespace SheetPress.Publishing;

/// <summary>Writes the one part of a file: exercise by exercise, measure by measure.</summary>
internal sealed class PartWriter
{
    // Tenths between the system before and an exercise, with room for its title.
    private const int TitleDistance = 180;

    private readonly XmlOutput _xml;
    private readonly bool _titled;
    private readonly Divisions _divisions;
    private readonly List<ExercisePlan> _plans = [];
    private readonly AttributesWriter _attributes;
    private readonly BarlineWriter _barlines;
    private readonly SpanNumbers _numbers = new();
    private readonly MeasureNumbers _measureNumbers = new();
    private readonly bool _anySwing;

    /// <param name="xml">Where to write.</param>
    /// <param name="scores">The exercises.</param>
    /// <param name="instruments">The sounds of the part.</param>
    /// <param name="titled">Whether each exercise begins with its title, as in a lesson.</param>
    public PartWriter(XmlOutput xml, IReadOnlyList<Score> scores, PartInstruments instruments, bool titled)
    {
        _xml = xml;
        _titled = titled;
        _divisions = Divisions.Of(scores);
        var staves = StaffRole.Assign(scores);
        for (var i = 0; i < scores.Count; i++) _plans.Add(new ExercisePlan(scores[i], i, staves[i], instruments));
        _attributes = new AttributesWriter(xml, _divisions);
        _barlines = new BarlineWriter(xml);
        _anySwing = scores.Any(s => s.Feel != Feel.Straight);
    }

    public void Write()
    {
        _xml.Open("part", ("id", PartInstruments.PartId));
        foreach (var plan in _plans) WriteExercise(plan);
        _xml.Close();
    }

    private void WriteExercise(ExercisePlan plan)
    {
        var directions = new DirectionWriter(_xml, plan);
        var notes = new NoteWriter(_xml, plan, _divisions, new NotationsWriter(_xml, plan, _numbers));
        var staves = new StaffWriter(_xml, plan, _divisions, directions, new HarmonyWriter(_xml, plan), notes);
        var breaks = SystemBreaks(plan.Score);
        var tempos = UnsaidTempos(plan.Score);
        _measureNumbers.BeginExercise();
        for (var m = 0; m < plan.Score.Measures.Length; m++)
        {
            var measure = plan.Score.Measures[m];
            var (number, text, isImplicit) = _measureNumbers.Next(measure);
            _xml.Open("measure", ("number", number), ("text", text), ("implicit", isImplicit ? "yes" : null));
            WriteBreak(plan, m, breaks[m]);
            _barlines.WriteLeft(measure, measure.RepeatStart || (m == 0 && BeginsWithRepeat(plan)));
            _attributes.Write(plan, m);
            if (m == 0) WriteOpening(plan, directions);
            else if (tempos[m] is { } tempo) directions.WriteSoundingTempo(tempo);
            staves.Write(m, _attributes.MiddleLine);
            if (measure.RepeatEndTimes > 2 && !_barlines.IsInEnding) directions.WriteTimes(measure.RepeatEndTimes);
            _barlines.WriteRight(measure);
            _xml.Close();
        }
    }

    // Where a measure is reached from another place than the one before it on the page, its tempo may be another than what a player has
    // kept: going back to a repeat, into an ending, to a sign.
    private static Tempo?[] UnsaidTempos(Score score)
    {
        var unsaid = new Tempo?[score.Measures.Length];
        if (!TempoPath.Changes(score)) return unsaid;
        var starts = TempoPath.AtStarts(score);
        var order = PlaybackOrder.Of(score);
        void Follow(int from, int to)
        {
            if (TempoPath.AtEnd(score.Measures[from], starts[from]) == starts[to]) return;
            if (!score.Measures[to].Directions.BeginWith(DirectionKind.Tempo)) unsaid[to] = starts[to];
        }
        for (var i = 1; i < score.Measures.Length; i++) Follow(i - 1, i);
        for (var i = 1; i < order.Length; i++) Follow(order[i - 1], order[i]);
        return unsaid;
    }

    private void WriteOpening(ExercisePlan plan, DirectionWriter directions)
    {
        if (_titled) directions.WriteTitle(XmlOutput.Number(plan.Index + 1) + ". " + plan.Score.Title);
        directions.WriteInstruction(PlainText.Of(plan.Score.Instruction));
        if (plan.Index > 0 && plan.Score.Measures.Any(m => m.Directions.Any(d => d.Kind == DirectionKind.DaCapo))) directions.WriteStartName();
        directions.WriteTempo(stateFeel: _anySwing);
    }

    private void WriteBreak(ExercisePlan plan, int measure, bool breakBefore)
    {
        if (measure == 0 && plan.Index > 0)
        {
            _xml.Open("print", ("new-system", "yes"));
            _xml.Open("system-layout");
            _xml.Leaf("system-distance", TitleDistance);
            _xml.Close();
            _xml.Close();
        }
        else if (measure > 0 && breakBefore)
        {
            _xml.Empty("print", ("new-system", "yes"));
        }
    }

    // A repeat without a start goes back to the beginning of the exercise; within a lesson that has to be said.
    private static bool BeginsWithRepeat(ExercisePlan plan)
    {
        if (plan.Index == 0) return false;
        foreach (var measure in plan.Score.Measures)
        {
            if (measure.RepeatStart) return false;
            if (measure.RepeatEndTimes > 0) return true;
        }
        return false;
    }

    // Breaks that the author wants: where they are marked, and after so many measures of a system (pickups not counted).
    private static bool[] SystemBreaks(Score score)
    {
        var breaks = new bool[score.Measures.Length];
        var inSystem = 0;
        for (var m = 0; m < breaks.Length; m++)
        {
            breaks[m] = score.Measures[m].BreakBefore || (score.MeasuresPerSystem is { } limit && inSystem >= limit);
            if (breaks[m]) inSystem = 0;
            if (score.Measures[m].Number > 0) inSystem++;
        }
        return breaks;
    }
}
