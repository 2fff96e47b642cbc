using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>
/// Tones with their octaves as shapes with one string between (two strings across, two frets up on strings in fourths), chosen for
/// chord after chord so that the hand moves little.
/// </summary>
internal sealed class SkippedOctaves
{
    private const int Fingers = 4;
    private const int WidestShape = 4;
    private const int ClimbsFromLevel = 5;
    private const double Outside = 1.5;
    private const double OutsideOfClimb = 0.6;
    private const double Shift = 0.5;
    private const double Falling = 0.8;
    private const double NotClimbing = 20;
    private const double BeyondLevel = 1.2;
    private const double Open = 1;
    private const double HighRoot = 0.15;
    private const int HighestNumber = 13;
    private readonly ExerciseContext _context;
    private readonly HandModel _hand;
    private readonly int _comfortable;
    private readonly int _home;
    private readonly bool _climbs;
    private readonly Dictionary<int, List<Shape>> _known = [];
    private int _at;

    public SkippedOctaves(ExerciseContext context)
    {
        _context = context;
        _hand = new HandModel(context.Instrument);
        _comfortable = LevelTable.Of(context.Level).HighestFret;
        _home = NeckRange.Of(context).Home;
        _climbs = context.Level >= ClimbsFromLevel;
    }

    private readonly record struct Shape(FretPosition Low, FretPosition High, int Midi)
    {
        public bool IsOpen => Low.Fret == 0 || High.Fret == 0;
        public int Highest => Math.Max(Low.Fret, High.Fret);
    }

    /// <summary>Whether each of a chord's tones has such an octave.</summary>
    public bool HasAll(Chord chord)
    {
        foreach (var degree in chord.Quality.Degrees) if (Shapes(chord.NoteOf(degree).PitchClass).Count == 0) return false;
        return true;
    }

    /// <summary>The tones of a chord, each followed by its octave, for a number of notes.</summary>
    public ImmutableArray<PlacedTone> Over(HarmonyStep step, ImmutableArray<Degree> tones, int room)
    {
        var count = Math.Clamp((room + 1) / 2, 1, tones.Length);
        var (best, place, lowest) = (Array.Empty<Shape>(), 0, double.MaxValue);
        var position = _context.Request.Neck.Position;
        for (var hand = position ?? 1; hand <= (position ?? _context.Instrument.PlayableFrets); hand++)
        {
            var (shapes, cost) = At(hand, step, tones, count);
            if (_at > 0) cost += Shift * Math.Abs(hand - _at);
            if (cost >= lowest) continue;
            (best, place, lowest) = (shapes, hand, cost);
        }
        _at = place;
        var line = ImmutableArray.CreateBuilder<PlacedTone>(2 * count);
        for (var i = 0; i < best.Length; i++)
        {
            line.Add(Named(step, tones[i], best[i].Low, best[0].Midi));
            line.Add(Named(step, tones[i], best[i].High, best[0].Midi));
        }
        return line.MoveToImmutable();
    }

    // The best shape of each tone for a hand that lies at a fret.
    private (Shape[] Shapes, double Cost) At(int hand, HarmonyStep step, ImmutableArray<Degree> tones, int count)
    {
        var chosen = new Shape[count];
        var sum = 0.0;
        for (var i = 0; i < count; i++)
        {
            var lowest = double.MaxValue;
            foreach (var shape in Shapes(step.Chord.NoteOf(tones[i]).PitchClass))
            {
                var cost = CostOf(shape, hand) + (i == 0 ? HighRoot * Math.Max(0, shape.Midi - _home - 11) : 0) + (i > 0 && shape.Midi < chosen[i - 1].Midi ? _climbs ? NotClimbing : Falling : 0);
                // The others stand over the root.
                if (i > 0 && shape.Midi - chosen[0].Midi >= 12) cost += NotClimbing;
                if (cost < lowest) (chosen[i], lowest) = (shape, cost);
            }
            sum += lowest;
        }
        return (chosen, sum);
    }

    private double CostOf(Shape shape, int hand)
    {
        var cost = (BeyondLevel * Math.Max(0, shape.Highest - _comfortable)) + (shape.IsOpen ? Open : 0) + (0.05 * shape.Highest);
        foreach (var fret in (ReadOnlySpan<int>)[shape.Low.Fret, shape.High.Fret])
        {
            if (fret > 0) cost += (_climbs ? OutsideOfClimb : Outside) * Math.Max(0, Math.Max(hand - fret, fret - hand - (Fingers - 1)));
        }
        return cost;
    }

    private List<Shape> Shapes(int pitchClass)
    {
        if (_known.TryGetValue(pitchClass, out var known)) return known;
        var shapes = new List<Shape>();
        var instrument = _context.Instrument;
        for (var number = instrument.StringCount; number >= 3; number--)
        {
            for (var fret = 0; fret <= instrument.PlayableFrets; fret++)
            {
                var midi = instrument.MidiNumberAt(number, fret);
                if (NoteMath.Modulo(midi, 12) != pitchClass) continue;
                var shape = new Shape(new FretPosition(number, fret), new FretPosition(number - 2, midi + 12 - instrument.MidiNumberAt(number - 2, 0)), midi);
                if (IsHeld(shape)) shapes.Add(shape);
            }
        }
        return _known[pitchClass] = shapes;
    }

    private bool IsHeld(Shape shape)
    {
        var (low, high) = (shape.Low.Fret, shape.High.Fret);
        if (high < 0 || high > _context.Instrument.PlayableFrets || !_context.Request.Neck.Allows(shape.Low) || !_context.Request.Neck.Allows(shape.High)) return false;
        // Open strings belong to a hand at the nut.
        if (low == 0 || high == 0) return shape.Highest <= WidestShape;
        return Math.Abs(high - low) <= WidestShape && _hand.Distance(low, high) <= HandModel.WidestSpan(_context.Level);
    }

    // Named from the chord's first root upward: its octave is 8, the octave of the third 10. No player counts beyond the thirteenth.
    private PlacedTone Named(HarmonyStep step, Degree degree, FretPosition place, int root)
    {
        var tone = NeckWindow.At(_context.Instrument, step, degree, place);
        var octaves = Math.Max(0, (tone.Pitch.Pitch.MidiNumber - root) / 12);
        var number = degree.Simple.Number + (7 * octaves);
        return tone with { Pitch = tone.Pitch with { Degree = number > HighestNumber ? degree.Simple : new Degree(number, degree.Simple.Alteration) } };
    }
}
