using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>
/// Chords of four voices in all inversions, close or with a voice dropped an octave, each on the strings where players have them
/// (common practice): close chords and those with the second voice from the top dropped on four neighbouring strings, those with
/// the third dropped with a string left out above the bass.
/// </summary>
internal sealed class FourVoices
{
    private const int Voices = 4;
    private const double PerFret = 0.12;
    private const double Outside = 0.5;
    private const double OpenTone = 1;
    private const double PerLowHalfStep = 0.12;
    private const int ClearFrom = 50;
    private const int WideReach = 4;
    private const int WideReachFrom = 5;
    private const double RootInBass = 0.4;
    private const double RootInLoneBass = 1.5;
    private const int NearTheNut = 3;
    private readonly ExerciseContext _context;
    private readonly HandModel _hand;
    private readonly int _comfortable;

    public FourVoices(ExerciseContext context)
    {
        _context = context;
        _hand = new HandModel(context.Instrument);
        _comfortable = LevelTable.Of(context.Level).HighestFret;
    }

    /// <summary>All voicings of a chord that can be held.</summary>
    /// <param name="step">The chord.</param>
    /// <param name="dropped">The voice counted from the top that goes an octave down: 2 or 3; 0 for none.</param>
    public ImmutableArray<Voicing> Find(HarmonyStep step, int dropped)
    {
        var tones = Tones(step);
        var found = ImmutableArray.CreateBuilder<Voicing>();
        for (var inversion = 0; inversion < tones.Length; inversion++)
        {
            var steps = Stack(tones, inversion, dropped);
            for (var lowest = _context.Instrument.StringCount; lowest >= Voices; lowest--) AddPlaces(found, step, steps, Strings(lowest, dropped), dropped);
        }
        return found.ToImmutable();
    }

    // Four tones; in a chord with more, the ninth stands for the root (but in the last chord) and thirteenth or eleventh for the
    // fifth. A triad has three.
    private static ImmutableArray<Degree> Tones(HarmonyStep step)
    {
        var tones = ChordStack.FourTones(step).ToList();
        if (tones.Count < Voices) return [.. tones];
        foreach (var degree in step.Chord.Quality.Degrees)
        {
            var replaced = degree.Number switch { 9 when !step.IsFinal => 1, 11 or 13 => 5, _ => 0 };
            var at = tones.FindIndex(t => t.Number == replaced);
            if (at >= 0) tones[at] = degree.Simple;
        }
        return [.. tones.OrderBy(t => NoteMath.Modulo(t.HalfSteps, 12))];
    }

    // Half steps above the chord's root in close position from a tone on, then with the voice dropped.
    private static (int HalfSteps, Degree Degree)[] Stack(ImmutableArray<Degree> tones, int inversion, int dropped)
    {
        var voices = new (int HalfSteps, Degree Degree)[Voices];
        for (var i = 0; i < Voices; i++)
        {
            var degree = tones[(inversion + i) % tones.Length];
            var above = NoteMath.Modulo(degree.HalfSteps, 12);
            while (i > 0 && above <= voices[i - 1].HalfSteps) above += 12;
            voices[i] = (above, degree);
        }
        if (dropped > 0) voices[Voices - dropped].HalfSteps -= 12;
        Array.Sort(voices, static (a, b) => a.HalfSteps.CompareTo(b.HalfSteps));
        return voices;
    }

    private static int[] Strings(int lowest, int dropped) =>
        dropped != 3 ? [lowest, lowest - 1, lowest - 2, lowest - 3] : lowest > Voices ? [lowest, lowest - 2, lowest - 3, lowest - 4] : [];

    private void AddPlaces(ImmutableArray<Voicing>.Builder found, HarmonyStep step, (int HalfSteps, Degree Degree)[] voices, int[] strings, int dropped)
    {
        if (strings.Length == 0) return;
        var instrument = _context.Instrument;
        var open = instrument.MidiNumberAt(strings[0], 0);
        var first = NoteMath.Modulo(step.Chord.Root.PitchClass + voices[0].HalfSteps - open, 12);
        for (var fret = first; fret <= instrument.PlayableFrets; fret += 12)
        {
            var places = new FretPosition[Voices];
            for (var i = 0; i < Voices; i++)
                places[i] = new FretPosition(strings[i], open + fret + voices[i].HalfSteps - voices[0].HalfSteps - instrument.MidiNumberAt(strings[i], 0));
            if (CostOf(places) is not { } cost) continue;
            var tones = ImmutableArray.CreateBuilder<NamedPitch>(Voices);
            for (var i = 0; i < Voices; i++)
                tones.Add(new NamedPitch(Pitch.AtOrAbove(step.Chord.NoteOf(voices[i].Degree), instrument.MidiNumberAt(places[i].String, places[i].Fret)), voices[i].Degree.Simple));
            found.Add(new Voicing(tones.ToImmutable(), [.. places], cost + Muddiness(tones[0].Pitch.MidiNumber, dropped) + (voices[0].Degree.Simple == Degree.Root ? 0 : dropped == 3 ? RootInLoneBass : RootInBass)));
        }
    }

    // Low close voices run into each other; with the third voice dropped the bass stands by itself.
    private static double Muddiness(int lowest, int dropped) => dropped == 3 ? 0 : PerLowHalfStep * Math.Max(0, ClearFrom - lowest);

    private double? CostOf(FretPosition[] places)
    {
        var (lowest, highest, open) = (int.MaxValue, 0, 0);
        foreach (var place in places)
        {
            if (place.Fret < 0 || place.Fret > _context.Instrument.PlayableFrets || !_context.Request.Neck.Allows(place)) return null;
            highest = Math.Max(highest, place.Fret);
            if (place.Fret > 0) lowest = Math.Min(lowest, place.Fret);
            else open++;
        }
        // Open strings belong to the first frets; higher up a shape is closed.
        if (open > 0 && highest > NearTheNut) return null;
        if (highest - lowest > (lowest >= WideReachFrom ? WideReach : WideReach - 1)) return null;
        var span = highest == 0 ? 0 : _hand.Distance(lowest, highest);
        if (span > HandModel.WidestSpan(_context.Level) || ChordHand.Hold(_hand, places) is not { } hold) return null;
        var position = _context.Request.Neck.Position is { } at && highest > 0 ? Outside * Math.Abs(lowest - at) : Outside * Math.Max(0, highest - _comfortable);
        return (PerFret * highest) + (OpenTone * open) + position + FingeringCosts.Span(span) + (0.4 * hold.Cost);
    }
}
