using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>A note with the one place on the neck that it is about.</summary>
internal readonly record struct PlacedTone(NamedPitch Pitch, FretPosition Place);

/// <summary>Writes lines in which every note has its place, as styles about the neck need.</summary>
internal static class PlacedLine
{
    /// <summary>Writes the line.</summary>
    /// <param name="context">The exercise.</param>
    /// <param name="rhythmOf">The rhythm of a meter.</param>
    /// <param name="tonesOf">The tones of a chord, which go round as long as it lasts; none to leave it silent.</param>
    public static Line Write(ExerciseContext context, Func<Meter, RhythmPattern> rhythmOf, Func<HarmonyStep, ImmutableArray<PlacedTone>> tonesOf) =>
        Write(context, rhythmOf, (step, _) => tonesOf(step));

    /// <summary>Writes the line.</summary>
    /// <param name="context">The exercise.</param>
    /// <param name="rhythmOf">The rhythm of a meter.</param>
    /// <param name="tonesOf">The tones of a chord that lasts for a number of notes.</param>
    public static Line Write(ExerciseContext context, Func<Meter, RhythmPattern> rhythmOf, Func<HarmonyStep, int, ImmutableArray<PlacedTone>> tonesOf)
    {
        var track = HarmonyTrack.Of(context);
        var slots = RhythmTiler.Tile(context.Progression, rhythmOf);
        var writer = new LineWriter();
        foreach (var step in track.Sounding)
        {
            var own = slots[step.Index];
            if (own.IsEmpty) continue;
            if (step.IsFinal) own = Resting.Shorten(own, step.End);
            var tones = tonesOf(step, own.Length);
            for (var k = 0; k < own.Length && !tones.IsEmpty; k++)
            {
                if (step.IsFinal && k == own.Length - 1) Rest(writer, own[k], step, tones, k, NeckRange.Of(context));
                else writer.Add(own[k], [tones[k % tones.Length].Pitch], default, [tones[k % tones.Length].Place]);
            }
        }
        return writer.Finish(context.Progression.Length);
    }

    // On the root among the tones nearest to where the line stands, so that the hand stays; else on any.
    private static void Rest(LineWriter writer, Slot slot, HarmonyStep step, ImmutableArray<PlacedTone> tones, int at, NeckRange range)
    {
        var from = tones[Math.Max(0, at - 1) % tones.Length];
        var roots = tones.Where(t => t.Pitch.Pitch.Name.PitchClass == step.Chord.Root.PitchClass).ToList();
        if (roots.Count == 0)
        {
            writer.Add(slot, Resting.Root(new Pitch(step.Chord.Root, from.Pitch.Pitch.Octave), from.Pitch.Pitch, range));
            return;
        }
        var root = roots.MinBy(r => (Math.Abs(r.Pitch.Pitch.MidiNumber - from.Pitch.Pitch.MidiNumber), r.Place.Fret));
        writer.Add(slot, [root.Pitch], default, [root.Place]);
    }
}

/// <summary>The strings and frets that an exercise about the neck may use.</summary>
internal static class NeckWindow
{
    /// <summary>The strings, from the lowest note of the instrument's usual order (the highest number) to string 1.</summary>
    public static IEnumerable<int> Strings(ExerciseContext context)
    {
        var asked = context.Request.Neck.Strings;
        for (var number = context.Instrument.StringCount; number >= 1; number--) if (asked.IsEmpty || asked.Contains(number)) yield return number;
    }

    /// <summary>Lowest and highest fret: what the author asks for, else up to a usual fret.</summary>
    public static (int Lowest, int Highest) Frets(ExerciseContext context, int usual)
    {
        var neck = context.Request.Neck;
        var highest = Math.Min(context.Instrument.PlayableFrets, neck.HighestFret ?? Math.Max(usual, (neck.LowestFret ?? 0) + 4));
        return (Math.Min(neck.LowestFret ?? (neck.OpenStrings == false ? 1 : 0), highest), highest);
    }

    /// <summary>The pitch at a place, named as a degree over a chord.</summary>
    public static PlacedTone At(Instrument instrument, HarmonyStep step, Degree degree, FretPosition place)
    {
        var midi = instrument.MidiNumberAt(place.String, place.Fret);
        return new PlacedTone(new NamedPitch(Pitch.AtOrAbove(step.Chord.NoteOf(degree), midi), degree.Simple), place);
    }
}
