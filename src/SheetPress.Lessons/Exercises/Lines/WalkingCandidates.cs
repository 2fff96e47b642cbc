using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>The notes that may stand in each slot of a walking line.</summary>
internal sealed class WalkingCandidates
{
    private const double Unprepared = 50;
    // The top of the range, in half steps, is for the peaks of a line; it lives below (common practice).
    private const int HighPart = 7;
    private const double HighNote = 0.25;
    private readonly ExerciseContext _context;
    private readonly NeckRange _range;
    private readonly PitchPlacer _placer;
    private readonly string _approach;
    private readonly bool _rootOnOne;
    private readonly double _chance;
    private readonly Level _level;
    private readonly int _high;
    private readonly int _from;
    private readonly int _to;

    public WalkingCandidates(ExerciseContext context, NeckRange range)
    {
        _context = context;
        _range = range;
        _placer = new PitchPlacer(context, range);
        _rootOnOne = context.Request.Word("on-one") == "root";
        _level = LevelTable.Of(context.Level);
        var approach = context.Request.Word("approach");
        _approach = approach == "mixed" && _level.Walking < WalkingNotes.HalfSteps ? "scale" : approach;
        _chance = _level.Walking < WalkingNotes.HalfSteps ? 1.2 : 1.8 + (0.4 * Math.Max(0, _level.Number - 3));
        var home = Math.Max(range.Home, range.Lowest);
        _from = range.Lowest;
        _to = Math.Min(range.Highest, home + _level.LineRange);
        _high = home + _level.LineRange - HighPart;
    }

    /// <summary>The candidates of one slot; never empty.</summary>
    /// <param name="step">The chord.</param>
    /// <param name="before">The chord before, or null.</param>
    /// <param name="slot">The slot.</param>
    /// <param name="index">Its index within the chord.</param>
    /// <param name="count">Slots of the chord.</param>
    /// <param name="place">Index within the line, for chance.</param>
    public ImmutableArray<Candidate> For(HarmonyStep step, HarmonyStep? before, Slot slot, int index, int count, int place)
    {
        var found = new List<Candidate>(16);
        if (index == 0) AddFirst(found, step, step.Continues(before) && !step.IsFinal, place);
        else if (index == count - 1 && LeadsOn(step)) AddApproaches(found, step, step.Next!, place);
        else
        {
            var cost = slot.Weight >= MetricWeight.Strong ? 0 : 0.3;
            if (_level.Walking > WalkingNotes.ChordTones) Add(found, step, step.BasicTones, place, cost);
            else
            {
                // Beginners walk the triad; the seventh is for where it lies on the way.
                Add(found, step, [.. step.BasicTones.Where(d => d.Number < 7)], place, cost);
                Add(found, step, [.. step.BasicTones.Where(d => d.Number == 7)], place, cost + 1);
            }
            if (slot.Weight < MetricWeight.Strong && _level.Walking >= WalkingNotes.ScaleSteps) Add(found, step, step.Scale, place, 0.5);
        }
        if (found.Count == 0) found.Add(new Candidate(_placer.Place(RootNear(step), slot.Start), 0));
        return [.. found];
    }

    /// <summary>What it costs to reach a new chord's first note from the note before: nothing by the approach asked for.</summary>
    public double ArrivalCost(int from, int to)
    {
        var move = to - from;
        return _approach switch
        {
            "chromatic-below" => move == 1 ? 0 : Unprepared,
            "chromatic-above" => move == -1 ? 0 : Unprepared,
            "chromatic" => move is 1 or -1 ? 0 : Unprepared,
            "scale-below" => move is 1 or 2 ? 0 : Unprepared,
            "scale-above" => move is -1 or -2 ? 0 : Unprepared,
            "dominant" => move is 5 or -7 ? 0 : Unprepared,
            _ => move is >= -2 and <= 2 and not 0 ? 0 : Unprepared,
        };
    }

    private static bool LeadsOn(HarmonyStep step) => step.Next is { } next && !next.Continues(step);

    private void AddFirst(List<Candidate> found, HarmonyStep step, bool held, int place)
    {
        if (_rootOnOne || step.IsFinal)
        {
            Add(found, step, [step.BassDegree], place, 0);
            if (held) Add(found, step, step.BasicTones, place, -0.6);
        }
        else Add(found, step, step.BasicTones, place, 0.4);
    }

    private void AddApproaches(List<Candidate> found, HarmonyStep step, HarmonyStep next, int place)
    {
        foreach (var degree in _rootOnOne || next.IsFinal ? [next.BassDegree] : next.BasicTones)
        {
            var name = next.Chord.NoteOf(degree);
            for (var target = Pitch.AtOrAbove(name, _from); target.MidiNumber <= _to; target += Interval.Octave)
            {
                if (_range.CanPlay(target.MidiNumber)) AddApproachesTo(found, step, target, place);
            }
        }
    }

    private void AddApproachesTo(List<Candidate> found, HarmonyStep step, Pitch target, int place)
    {
        var mixed = _approach == "mixed";
        if (mixed || _approach is "scale" or "scale-below") Add(found, step, ApproachNotes.ScaleBelow(step, target), place, 0);
        if (mixed || _approach is "scale" or "scale-above") Add(found, step, ApproachNotes.ScaleAbove(step, target), place, 0);
        if (mixed || _approach is "chromatic" or "chromatic-below") Add(found, step, ApproachNotes.ChromaticBelow(target), place, 0);
        if (mixed || _approach is "chromatic" or "chromatic-above") Add(found, step, ApproachNotes.ChromaticAbove(target), place, 0);
        if (_approach != "dominant") return;
        Add(found, step, ApproachNotes.Dominant(target, below: true), place, 0);
        Add(found, step, ApproachNotes.Dominant(target, below: false), place, 0);
    }

    private void Add(List<Candidate> found, HarmonyStep step, ImmutableArray<Degree> degrees, int place, double cost)
    {
        foreach (var tone in ScaleLadder.Of(step, degrees, _range, _from, _to)) Add(found, tone, place, cost);
    }

    private void Add(List<Candidate> found, HarmonyStep step, Pitch pitch, int place, double cost) =>
        Add(found, new NamedPitch(pitch, step.NameOf(pitch.Name)), place, cost);

    private void Add(List<Candidate> found, NamedPitch tone, int place, double cost)
    {
        var midi = tone.Pitch.MidiNumber;
        if (!_range.CanPlay(midi) || found.Exists(c => c.Midi == midi)) return;
        var outside = (Math.Max(0, _range.Home - midi) * 0.6) + (Math.Max(0, midi - _high) * HighNote);
        found.Add(new Candidate(tone, cost + outside + (_range.Strain(midi) * 0.8) + (_chance * SeededNoise.At(_context.Request.Seed, place, midi))));
    }

    private NamedPitch RootNear(HarmonyStep step) =>
        new(Pitch.AtOrAbove(step.Chord.Lowest, Math.Clamp(_range.Home, _range.Lowest, Math.Max(_range.Lowest, _range.Highest))), step.BassDegree);
}
