using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>
/// Finds the ways in which one hand holds a chord: every string sounds a chord tone within the reach of the hand, open near the nut,
/// or is silent. The lowest tone is the root or the slash bass where the neck has room for it, and the tones that make the chord
/// what it is are there.
/// </summary>
internal sealed class ChordGripFinder
{
    private const int Reach = 3;
    private const int HighestOpenHand = 3;
    private const int FewestTones = 3;
    private const int FewStrings = 4;
    private const double PerFretOff = 0.8;
    private readonly Instrument _instrument;
    private readonly HandModel _hand;
    private readonly NeckRequest _neck;
    private readonly double _widestSpan;
    private readonly bool _mayUseOpen;
    private readonly int _level;

    public ChordGripFinder(Instrument instrument, NeckRequest neck, int level)
    {
        _instrument = instrument;
        _hand = new HandModel(instrument);
        _neck = neck;
        _level = level;
        _widestSpan = HandModel.WidestSpan(level);
        _mayUseOpen = neck.OpenStrings ?? (Math.Max(neck.Position ?? 1, neck.LowestFret ?? 1) <= HighestOpenHand + 1);
    }

    /// <summary>
    /// Grips of a chord with the hand no higher than a fret, best first. A chord for which there are none with its bass note lowest is
    /// turned over; one whose tones no hand holds at once is thinned to what tells it most.
    /// </summary>
    public ImmutableArray<ChordGrip> Find(Chord chord, int highestHand)
    {
        var tones = new GripTones(chord);
        var bass = 1 << tones.BassStep;
        // On four strings chords are played in any inversion, but for a bass that is asked for.
        var isFree = chord.Bass is null && _instrument.StringCount <= FewStrings;
        (int Wanted, bool AnyBass)[] tiers = isFree ? [(tones.Full | 1, true), (tones.Plain | 1, true), (tones.Least | 1, true), (tones.Plain, true)] :
            [(tones.Full | bass, false), (tones.Full | 1, true), (tones.Plain | bass, false), (tones.Plain | 1, true), (tones.Least | 1, true), (tones.Plain, true)];
        var neck = Math.Max(1, _instrument.PlayableFrets - Reach);
        var comfortable = Math.Min(neck, highestHand);
        // Rather a chord with its root higher up than is comfortable than one without.
        foreach (var highest in comfortable < neck ? [comfortable, neck] : (ReadOnlySpan<int>)[neck])
        {
            foreach (var (wanted, anyBass) in tiers)
            {
                var found = new Search(this, tones, wanted, anyBass).Run(highest);
                if (found.Count > 0) return [.. found.OrderBy(g => g.Cost)];
            }
        }
        return [];
    }

    /// <summary>The grip of given places; null when one hand cannot hold them.</summary>
    public ChordGrip? Of(Chord chord, IReadOnlyList<FretPosition> places)
    {
        var ordered = places.OrderByDescending(p => p.String).ToArray();
        int[] fretted = [.. ordered.Where(p => p.Fret > 0).Select(p => p.Fret)];
        if (fretted.Length > 0 && _hand.Distance(fretted.Min(), fretted.Max()) > _widestSpan) return null;
        if (ChordHand.Hold(_hand, ordered) is not { } hold) return null;
        var tones = new GripTones(chord);
        return new ChordGrip { Places = [.. ordered], Fingers = hold.Fingers, Degrees = [.. ordered.Select(p => tones.At(StepAt(tones, p)))], Cost = hold.Cost };
    }

    private double OffPosition(int lowestFret, int highestFret) =>
        _neck.Position is not { } position || highestFret == 0 ? 0 : lowestFret < position ? PerFretOff * (position - lowestFret) : PerFretOff * Math.Max(0, highestFret - position - Reach);

    private int StepAt(GripTones tones, FretPosition place) =>
        NoteMath.Modulo(_instrument.MidiNumberAt(place.String, place.Fret) - tones.Chord.Root.PitchClass, 12);

    /// <summary>One search for one set of tones.</summary>
    private sealed class Search(ChordGripFinder finder, GripTones tones, int wanted, bool anyBass)
    {
        private readonly List<ChordGrip> _found = [];
        private readonly List<FretPosition> _places = [];
        private readonly Instrument _instrument = finder._instrument;
        private readonly bool _isInOrder = IsInOrder(finder._instrument);

        public List<ChordGrip> Run(int highestHand)
        {
            for (var hand = 1; hand <= highestHand; hand++) Next(_instrument.StringCount, hand, hasGap: false);
            return _found;
        }

        // Strings from the lowest on: the ones below the bass are silent, and those above the last tone; between them one at most,
        // damped by the finger on the string below it.
        private void Next(int number, int hand, bool hasGap)
        {
            if (_places.Count >= Math.Min(FewestTones, _instrument.StringCount) && _places[^1].String == number + 1) Keep(hand);
            if (number == 0) return;
            if (finder._mayUseOpen && hand <= HighestOpenHand) Take(number, 0, hand, hasGap);
            for (var fret = hand; fret <= Math.Min(hand + Reach, _instrument.PlayableFrets); fret++) Take(number, fret, hand, hasGap);
            if (_places.Count == 0) Next(number - 1, hand, hasGap);
            else if (!hasGap && number > 1 && _places[^1] is { Fret: > 0 } below && below.String == number + 1) Next(number - 1, hand, hasGap: true);
        }

        private void Take(int number, int fret, int hand, bool hasGap)
        {
            var place = new FretPosition(number, fret);
            if (!finder._neck.Allows(place)) return;
            var step = finder.StepAt(tones, place);
            if (tones.At(step) is null || (_places.Count == 0 && !anyBass && _isInOrder && step != tones.BassStep)) return;
            if (_isInOrder && _places.Count > 0 && _instrument.MidiNumberAt(number, fret) <= _instrument.MidiNumberAt(_places[^1].String, _places[^1].Fret)) return;
            _places.Add(place);
            Next(number - 1, hand, hasGap);
            _places.RemoveAt(_places.Count - 1);
        }

        private void Keep(int hand)
        {
            var (has, lowest, lowestFret, highestFret, hasOpen) = (0, int.MaxValue, int.MaxValue, 0, false);
            var bassStep = 0;
            foreach (var place in _places)
            {
                var step = finder.StepAt(tones, place);
                has |= 1 << step;
                if (_instrument.MidiNumberAt(place.String, place.Fret) is var midi && midi < lowest) (lowest, bassStep) = (midi, step);
                hasOpen |= place.Fret == 0;
                if (place.Fret > 0) lowestFret = Math.Min(lowestFret, place.Fret);
                highestFret = Math.Max(highestFret, place.Fret);
            }
            if ((has & wanted) != wanted || (!anyBass && _isInOrder && bassStep != tones.BassStep)) return;
            // Each grip once, at the hand that it needs.
            if (highestFret == 0 ? hand != 1 : lowestFret != hand) return;
            if (highestFret > 0 && finder._hand.Distance(lowestFret, highestFret) > finder._widestSpan) return;
            var places = _places.ToArray();
            if (ChordHand.Hold(finder._hand, places) is not { } hold) return;
            _found.Add(new ChordGrip
            {
                Places = [.. places],
                Fingers = hold.Fingers,
                Degrees = [.. places.Select(p => tones.At(finder.StepAt(tones, p)))],
                Cost = GripCosts.Of(_instrument, tones, places, hold, finder._hand.Distance(highestFret == 0 ? 0 : lowestFret, highestFret), finder._level) + finder.OffPosition(lowestFret, highestFret),
            });
        }

        // Tuned from low to high, as all but re-entrant tunings are.
        private static bool IsInOrder(Instrument instrument)
        {
            for (var i = 1; i < instrument.StringCount; i++) if (instrument.OpenStrings[i].MidiNumber > instrument.OpenStrings[i - 1].MidiNumber) return false;
            return true;
        }
    }
}
