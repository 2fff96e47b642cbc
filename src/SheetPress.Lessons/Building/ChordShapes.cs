using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Small chord diagrams over the chord symbols of an exercise.</summary>
internal static class ChordShapes
{
    private const int LeastTones = 3;

    /// <summary>
    /// The measures of the progression with a diagram at the first symbol of each chord: the grip that the line strikes there, else
    /// the usual one. On a bass, where chords are played tone by tone, the tones from root to octave, where the line plays the root if they lie there.
    /// </summary>
    public static ImmutableArray<FrameMeasure> Over(ExerciseContext context, Line line)
    {
        var measures = context.Progression.Measures;
        var shown = new HashSet<Chord>();
        var result = ImmutableArray.CreateBuilder<FrameMeasure>(measures.Length);
        var start = Fraction.Zero;
        foreach (var measure in measures)
        {
            var harmonies = measure.Harmonies.ToBuilder();
            for (var i = 0; i < harmonies.Count; i++)
            {
                if (harmonies[i].Chord is not { } chord || !shown.Add(chord)) continue;
                harmonies[i] = Struck(harmonies[i], line, start + harmonies[i].Offset) ?? Usual(harmonies[i], chord, context, line, start + harmonies[i].Offset);
            }
            result.Add(measure with { Harmonies = harmonies.ToImmutable() });
            start += measure.Length;
        }
        return result.MoveToImmutable();
    }

    private static HarmonyMark? Struck(HarmonyMark mark, Line line, Fraction at)
    {
        foreach (var note in line.Notes)
        {
            if (note.Start != at || note.Tones.Length < LeastTones || !note.Tones.All(t => t.Position is not null && t.Head == Notehead.Normal)) continue;
            ImmutableArray<FretPosition> places = [.. note.Tones.Select(t => t.Position!.Value)];
            return mark with { Frame = places, FrameBarres = ChordHand.Barres(places, [.. note.Tones.Select(t => t.Finger ?? 0)]) };
        }
        return null;
    }

    // Where the line plays the root as the chord begins.
    private static FretPosition? RootPlayed(Chord chord, Line line, Fraction at)
    {
        var tone = line.Notes.FirstOrDefault(n => n.Start == at)?.Tones[0];
        return tone?.Pitch.Name.PitchClass == chord.Root.PitchClass ? tone?.Position : null;
    }

    private static HarmonyMark Usual(HarmonyMark mark, Chord chord, ExerciseContext context, Line line, Fraction at)
    {
        if (context.Instrument.Family == InstrumentFamily.Bass) return mark with { Frame = OneOctave.Of(context.Instrument, chord, context.Request.Neck, RootPlayed(chord, line, at)), FrameIsMap = true };
        var grips = new ChordGripFinder(context.Instrument, context.Request.Neck, context.Level).Find(chord, LevelTable.Of(context.Level).HighestFret);
        return grips.IsEmpty ? mark : mark with { Frame = grips[0].Places, FrameBarres = grips[0].Barres };
    }
}
