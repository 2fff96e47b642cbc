using System.Collections.Immutable;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Finds for chord after chord the tone that lies nearest to the one found for the chord before, within an octave from home.</summary>
/// <param name="range">The range of the exercise.</param>
internal sealed class NearestTone(NeckRange range)
{
    private int? _last;

    /// <summary>Index of the nearest of a chord's tones; the root of the first chord.</summary>
    public int IndexIn(HarmonyStep step, ImmutableArray<Degree> tones)
    {
        var (best, at, distance) = (0, 0, int.MaxValue);
        for (var i = 0; i < tones.Length; i++)
        {
            var midi = Pitch.AtOrAbove(step.Chord.NoteOf(tones[i]), range.Home).MidiNumber;
            if (_last is null && i > 0) break;
            var away = Math.Abs(midi - (_last ?? midi));
            if (away >= distance) continue;
            (best, at, distance) = (i, midi, away);
        }
        _last = at;
        return best;
    }
}
