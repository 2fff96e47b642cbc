using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>
/// Finds chords over as many strings as one hand can hold: at each hand position every string takes a chord tone within four
/// frets, or open near the nut, or is left out below the bass note. The lowest tone is the root or the slash bass, all tones
/// that make the chord are there, and neighbouring strings are used throughout.
/// </summary>
internal sealed class FullChordFinder(ExerciseContext context, NeckRange range, VoicingFinder finder)
{
    private const int Reach = 3;
    private const int MostKept = 12;
    private const int Root = 1;

    /// <summary>
    /// The best voicings, fullest and lowest first. A chord for which there are none with its bass note lowest is turned over;
    /// one whose tones no hand can hold at once is thinned to what tells it most, third and seventh.
    /// </summary>
    public IEnumerable<Voicing> Find(HarmonyStep step)
    {
        var all = Essential(step, int.MaxValue);
        (int Wanted, bool AnyBass)[] rooted = [(all, false), (all | Root, true), (Essential(step, 2), false), (Essential(step, 2) | Root, true), (Essential(step, 1) | Root, true)];
        var neck = context.Instrument.PlayableFrets - Reach;
        var comfortable = Math.Min(neck, LevelTable.HighestFret(context.Level));
        // Rather a chord with its root higher up than the level likes than one without.
        foreach (var highest in comfortable < neck ? [comfortable, neck] : (int[])[neck])
        {
            foreach (var (wanted, anyBass) in rooted)
            {
                var found = Find(step, wanted, anyBass, highest);
                if (found.Count > 0) return found.OrderBy(v => v.Cost).Take(MostKept);
            }
        }
        return Find(step, Essential(step, 2), anyBass: true, neck).OrderBy(v => v.Cost).Take(MostKept);
    }

    private List<Voicing> Find(HarmonyStep step, int wanted, bool anyBass, int highest)
    {
        var instrument = context.Instrument;
        var tones = ToneTable(step);
        var found = new List<Voicing>();
        for (var hand = 1; hand <= Math.Max(1, highest); hand++)
        {
            for (var bass = instrument.StringCount; bass >= Math.Min(3, instrument.StringCount); bass--)
            {
                Search(step, tones, wanted, anyBass, hand, bass, [], [], found);
            }
        }
        return found;
    }

    // Degree by half steps above the root; null where the chord has no tone.
    private static Degree?[] ToneTable(HarmonyStep step)
    {
        var table = new Degree?[12];
        foreach (var degree in step.Chord.Quality.Degrees) table[NoteMath.Modulo(degree.HalfSteps, 12)] ??= degree.Simple;
        if (step.Chord.Bass is not null) table[NoteMath.Modulo(step.BassDegree.HalfSteps, 12)] ??= step.BassDegree;
        return table;
    }

    // Without these the chord is another one: its third (or what stands for it), an altered fifth, its seventh; the bass comes by itself.
    private static int Essential(HarmonyStep step, int most)
    {
        var mask = 0;
        var tones = step.BasicTones;
        foreach (var number in (ReadOnlySpan<int>)[3, 7, 4, 6, 5, 2])
        {
            foreach (var degree in tones)
            {
                var plainFifth = degree is { Number: 5, Alteration: 0 } && tones.Length > 3;
                if (degree.Number == number && !plainFifth && most-- > 0) mask |= 1 << NoteMath.Modulo(degree.HalfSteps, 12);
            }
        }
        return mask;
    }

    private void Search(HarmonyStep step, Degree?[] tones, int wanted, bool anyBass, int hand, int number, ImmutableArray<NamedPitch> pitches, ImmutableArray<FretPosition> places, List<Voicing> found)
    {
        if (number == 0 || (places.Length >= 3 && number < context.Instrument.StringCount - 5))
        {
            Keep(step, wanted, anyBass, pitches, places, found);
            return;
        }
        if (places.Length >= 3 && Covers(step, pitches, wanted)) Keep(step, wanted, anyBass, pitches, places, found);
        foreach (var fret in Frets(hand))
        {
            if (!context.Request.Neck.Allows(new FretPosition(number, fret))) continue;
            var midi = context.Instrument.MidiNumberAt(number, fret);
            var above = NoteMath.Modulo(midi - step.Chord.Root.PitchClass, 12);
            if (tones[above] is not { } degree || !range.CanPlay(midi)) continue;
            if (places.IsEmpty && !anyBass && NoteMath.Modulo(midi, 12) != step.Chord.Lowest.PitchClass) continue;
            var pitch = Pitch.AtOrAbove(step.Chord.NoteOf(degree), midi);
            if (pitches.Any(p => p.Pitch.MidiNumber == midi)) continue;
            Search(step, tones, wanted, anyBass, hand, number - 1, pitches.Add(new NamedPitch(pitch, degree)), places.Add(new FretPosition(number, fret)), found);
        }
    }

    private static IEnumerable<int> Frets(int hand)
    {
        if (hand <= 2) yield return 0;
        for (var fret = hand; fret <= hand + Reach; fret++) yield return fret;
    }

    private void Keep(HarmonyStep step, int wanted, bool anyBass, ImmutableArray<NamedPitch> pitches, ImmutableArray<FretPosition> places, List<Voicing> found)
    {
        if (pitches.Length < 3 || !Covers(step, pitches, wanted)) return;
        var ordered = pitches.Zip(places).OrderBy(p => p.First.Pitch.MidiNumber).ToArray();
        // With a re-entrant tuning the lowest string is not the lowest tone.
        if (!anyBass && ordered[0].First.Pitch.Name.PitchClass != step.Chord.Lowest.PitchClass) return;
        ImmutableArray<NamedPitch> tones = [.. ordered.Select(p => p.First)];
        ImmutableArray<FretPosition> at = [.. ordered.Select(p => p.Second)];
        if (found.Exists(v => v.Places.SequenceEqual(at)) || !finder.CanHold(tones, at)) return;
        var highest = places.Max(p => p.Fret);
        var lowest = places.Where(p => p.Fret > 0).Select(p => p.Fret).DefaultIfEmpty(0).Min();
        found.Add(new Voicing(tones, at, (lowest * 0.5) + ((highest - lowest) * 0.8) - (tones.Length * 1.2)));
    }

    private static bool Covers(HarmonyStep step, ImmutableArray<NamedPitch> pitches, int wanted)
    {
        var has = 0;
        foreach (var pitch in pitches) has |= 1 << NoteMath.Modulo(pitch.Pitch.MidiNumber - step.Chord.Root.PitchClass, 12);
        return (has & wanted) == wanted;
    }
}
