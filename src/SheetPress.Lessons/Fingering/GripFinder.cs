using System.Collections.Immutable;
using System.Globalization;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>Finds every sensible grip for an event.</summary>
internal sealed class GripFinder(HandModel hand, FingeringCosts costs, NeckRequest neck, int level)
{
    // A chord of six tones on six strings has few grips that a hand can hold; more than this many are never worth comparing.
    private const int MostGrips = 96;

    // How much the effort of the fingers on a chord counts beside that of its place.
    private const double FingerWeight = 0.15;

    // Open strings ring with a hand near the nut; a shape that leaves the nut is better closed.
    private const double OpenUnderHand = 0.3;
    private const int HighestOpenHand = 4;

    // Tones further apart than over two strings between them are harder to pluck and to damp.
    private const double StringSpread = 0.6;
    private const int UsualSpread = 3;

    // Frets that a chord spans at most, however short the scale: fingers spread sideways no further.
    private const int WidestChord = 5;

    // A string that is tuned higher than its neighbour on the high side (the fourth of a ukulele) is for chords: a line stays off it.
    private const double OutOfOrder = 1.5;

    private readonly double _widestSpan = HandModel.WidestSpan(level);

    /// <summary>All grips for a note or chord, best first among equals by string and fret.</summary>
    public ImmutableArray<Grip> Find(LineNote note) => note.Tones.Length == 1 ? FindSingle(note) : FindChord(note);

    /// <summary>Why an event has no grip, in words.</summary>
    public string Explain(LineNote note)
    {
        var instrument = hand.Instrument;
        foreach (var tone in note.Tones)
        {
            if (tone.Position is { } pinned && !Fits(tone, pinned))
                return string.Create(CultureInfo.InvariantCulture, $"{tone.Pitch} is not at string {pinned.String}, fret {pinned.Fret}");
            if (Places(tone, note).Any(p => p.Fret > 0 || tone.Finger is null)) continue;
            if (tone.Finger is { } finger && Places(tone, note).Any()) return $"{tone.Pitch} lies on an open string and takes no finger {finger}";
            var lowest = instrument.OpenStrings.Min(p => p.MidiNumber) + instrument.Capo;
            var highest = instrument.OpenStrings.Max(p => p.MidiNumber) + instrument.FretCount;
            if (tone.Pitch.MidiNumber < lowest) return $"{tone.Pitch} is below the lowest note of the {instrument.Name}";
            if (tone.Pitch.MidiNumber > highest) return $"{tone.Pitch} is above the highest note of the {instrument.Name}";
            return $"{tone.Pitch} does not lie within the frets and strings asked for";
        }
        if (note.Tones.Length == 1) return $"{note.Tones[0].Pitch} cannot be reached as asked for";
        return $"the chord {string.Join(" ", note.Tones.Select(t => t.Pitch))} cannot be held with one hand on the {instrument.Name}";
    }

    private ImmutableArray<Grip> FindSingle(LineNote note)
    {
        var grips = ImmutableArray.CreateBuilder<Grip>();
        var tone = note.Tones[0];
        foreach (var place in Places(tone, note))
        {
            var side = costs.StrokeSide(note.Stroke, place.String) + (tone.Position is null && IsOutOfOrder(place.String) ? OutOfOrder : 0);
            if (place.Fret == 0)
            {
                if (tone.Finger is not null) continue;
                grips.Add(Make([place], [0], 1, FingeringCosts.Open() + side, isOpen: true));
                continue;
            }
            foreach (var (finger, handAt) in FingersOn(tone, place)) grips.Add(Make([place], [finger], handAt, costs.Fretted(finger, place.Fret, handAt) + side, isOpen: false));
        }
        return grips.ToImmutable();
    }

    // Every finger that can stop one fretted place by itself, and where the hand is then.
    private IEnumerable<(int Finger, int Hand)> FingersOn(LineTone tone, FretPosition place)
    {
        for (var finger = 1; finger <= 4; finger++)
        {
            if (tone.Finger is { } asked && asked != finger) continue;
            for (var handAt = Math.Max(1, place.Fret - 4); handAt <= Math.Min(place.Fret + 1, hand.HighestFret); handAt++)
            {
                // A finger that is asked for may lie nearer to the index than its own fret, as in a chord, and reaches its fret of four however wide.
                var pinned = tone.Finger is not null && place.Fret >= handAt && place.Fret < handAt + finger;
                if (!pinned && !hand.Uses(finger, handAt, _widestSpan)) continue;
                // Only the outer fingers stretch out of the hand's reach, and only by one fret.
                var stretch = place.Fret - (handAt + hand.Reach(finger, handAt));
                var allowed = pinned || stretch == 0 || (stretch == 1 && finger == 4) || (stretch == -1 && finger == 1);
                if (!allowed || (!pinned && hand.Distance(Math.Min(handAt, place.Fret), Math.Max(place.Fret, handAt + hand.Reach(4, handAt))) > _widestSpan + 1e-9)) continue;
                yield return (finger, handAt);
            }
        }
    }

    private bool IsOutOfOrder(int number) => number > 1 && hand.Instrument.MidiNumberAt(number, 0) > hand.Instrument.MidiNumberAt(number - 1, 0);

    private ImmutableArray<Grip> FindChord(LineNote note)
    {
        var places = note.Tones.Select(t => Places(t, note).ToArray()).ToArray();
        var grips = new List<Grip>();
        var chosen = new FretPosition[places.Length];
        Choose(0, 0);
        return [.. grips.OrderBy(g => g.Cost).Take(MostGrips)];

        void Choose(int index, int usedStrings)
        {
            if (index == places.Length)
            {
                var fretted = Array.FindIndex(chosen, p => p.Fret > 0);
                if (fretted >= 0 && Array.FindLastIndex(chosen, p => p.Fret > 0) == fretted) grips.AddRange(BesideOpen(chosen, fretted, note));
                else if (Hold(chosen, note) is { } grip) grips.Add(grip);
                return;
            }
            foreach (var place in places[index])
            {
                if ((usedStrings & (1 << place.String)) != 0) continue;
                chosen[index] = place;
                if (Stretch(chosen.AsSpan(0, index + 1)) <= _widestSpan) Choose(index + 1, usedStrings | (1 << place.String));
            }
        }
    }

    private double Stretch(ReadOnlySpan<FretPosition> places)
    {
        var (low, high) = FrettedRange(places);
        return low == 0 ? 0 : high - low > WidestChord ? double.PositiveInfinity : hand.Distance(low, high);
    }

    private static (int Low, int High) FrettedRange(ReadOnlySpan<FretPosition> places)
    {
        var (low, high) = (0, 0);
        foreach (var place in places)
        {
            if (place.Fret == 0) continue;
            low = low == 0 ? place.Fret : Math.Min(low, place.Fret);
            high = Math.Max(high, place.Fret);
        }
        return (low, high);
    }

    private Grip? Hold(ReadOnlySpan<FretPosition> chosen, LineNote note)
    {
        var (low, high) = FrettedRange(chosen);
        var positions = ImmutableArray.Create(chosen);
        if (ChordHand.Hold(hand, chosen) is not { } hold) return null;
        if (low == 0) return Make(positions, hold.Fingers, 1, (FingeringCosts.Open() * chosen.Length) + Side(chosen, note), isOpen: true);
        var cost = FingeringCosts.Span(hand.Distance(low, high)) + costs.Fretted(1, low, low) + (FingerWeight * hold.Cost) + Beside(chosen, low, note);
        return Make(positions, hold.Fingers, low, cost, isOpen: false);
    }

    // One stopped tone beside open strings takes any finger, as it does alone.
    private IEnumerable<Grip> BesideOpen(FretPosition[] chosen, int fretted, LineNote note)
    {
        var positions = ImmutableArray.Create(chosen);
        var place = chosen[fretted];
        var beside = Beside(chosen, place.Fret, note);
        foreach (var (finger, handAt) in FingersOn(note.Tones[fretted], place))
        {
            yield return Make(positions, [.. chosen.Select(p => p.Fret > 0 ? finger : 0)], handAt, costs.Fretted(finger, place.Fret, handAt) + beside, isOpen: false);
        }
    }

    private double Side(ReadOnlySpan<FretPosition> chosen, LineNote note)
    {
        var cost = 0.0;
        foreach (var place in chosen) cost += costs.StrokeSide(note.Stroke, place.String);
        return cost;
    }

    // What a chord costs beside its fingers: the plucking hand, open strings far from the hand, strings far apart.
    private double Beside(ReadOnlySpan<FretPosition> chosen, int low, LineNote note)
    {
        var cost = Side(chosen, note);
        var (topString, bottomString) = (int.MaxValue, 0);
        foreach (var place in chosen)
        {
            if (place.Fret == 0) cost += FingeringCosts.Open() + (OpenUnderHand * Math.Max(0, low - HighestOpenHand));
            topString = Math.Min(topString, place.String);
            bottomString = Math.Max(bottomString, place.String);
        }
        return cost + (StringSpread * Math.Max(0, bottomString - topString - UsualSpread));
    }

    private IEnumerable<FretPosition> Places(LineTone tone, LineNote note)
    {
        if (tone.Position is { } pinned)
        {
            if (Fits(tone, pinned)) yield return pinned;
            yield break;
        }
        var instrument = hand.Instrument;
        if (tone.Head == Notehead.Harmonic)
        {
            foreach (var harmonic in NaturalHarmonics.PlacesOf(instrument, tone.Pitch.MidiNumber)) if (harmonic.Fret <= hand.HighestFret && neck.Allows(harmonic)) yield return harmonic;
            yield break;
        }
        var needsFinger = tone.IsStopped ?? note.MovesOnString;
        for (var s = instrument.StringCount; s >= 1; s--)
        {
            var fret = tone.Pitch.MidiNumber - instrument.MidiNumberAt(s, 0);
            if (fret < 0 || fret > hand.HighestFret) continue;
            if (fret == 0 && needsFinger) continue;
            var place = new FretPosition(s, fret);
            if (neck.Allows(place)) yield return place;
        }
    }

    private bool Fits(LineTone tone, FretPosition place) =>
        place.String >= 1 && place.String <= hand.Instrument.StringCount && place.Fret >= 0 && place.Fret <= hand.HighestFret
        && (tone.Head == Notehead.Harmonic
            ? NaturalHarmonics.HalfStepsAt(place.Fret) is { } halfSteps && hand.Instrument.MidiNumberAt(place.String, 0) + halfSteps == tone.Pitch.MidiNumber
            : hand.Instrument.MidiNumberAt(place.String, place.Fret) == tone.Pitch.MidiNumber);

    private static Grip Make(ImmutableArray<FretPosition> positions, ImmutableArray<int> fingers, int handAt, double cost, bool isOpen) =>
        new() { Positions = positions, Fingers = fingers, Hand = handAt, Cost = cost, IsOpen = isOpen };
}
