using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>
/// Keeps the way into the next chord free of leaps (common practice: a lead moves by step, or as nearly so as the neck allows):
/// where a pattern's tones lie far above or below the next root that they lead to, the last of them are played an octave nearer to it.
/// </summary>
internal static class LeadOctaves
{
    /// <summary>Half steps that are not felt as a leap into a lead: a major sixth.</summary>
    public const int WidestStep = 9;

    /// <summary>The notes, those before a lead moved by an octave where that makes the widest leap of their bar's end smaller.</summary>
    /// <param name="notes">The notes in order of time.</param>
    /// <param name="registers">Where their roots lie.</param>
    /// <param name="range">What can be played.</param>
    public static List<PlacedNote> Near(List<PlacedNote> notes, WrittenRegisters registers, NeckRange range)
    {
        var result = notes;
        for (var lead = 1; lead < notes.Count; lead++)
        {
            if (notes[lead].Note.Tones is not [NextWord word] || notes[lead].Step is not { Next: { } next } step) continue;
            if (PitchOf(notes[lead - 1], step, registers) is not { } last) continue;
            var target = registers.BassOf(next).MidiNumber;
            // At the end of the neck the lead comes from an octave above.
            if (word.Note != NextNote.Root && !range.CanPlay(target - 1)) continue;
            if (Math.Abs(target - last) <= WidestStep) continue;
            var octave = target < last ? -1 : 1;
            if (BestStart(notes, lead, step, target, octave, registers, range) is not { } start) continue;
            if (ReferenceEquals(result, notes)) result = [.. notes];
            for (var i = start; i < lead; i++) result[i] = Moved(result[i], octave);
        }
        return result;
    }

    // The first note to move, so that the widest leap up to the lead is the smallest; null where no move makes it smaller.
    private static int? BestStart(List<PlacedNote> notes, int lead, HarmonyStep step, int target, int octave, WrittenRegisters registers, NeckRange range)
    {
        var first = lead;
        while (first > 0 && PitchOf(notes[first - 1], step, registers) is not null) first--;
        var pitches = new int[lead - first];
        for (var i = first; i < lead; i++) pitches[i - first] = PitchOf(notes[i], step, registers)!.Value;
        int? best = null;
        var (widest, sum) = Leaps(pitches, pitches.Length, octave, target);
        for (var start = lead - 1; start >= first; start--)
        {
            var note = notes[start].Note;
            if (note.Marks.Stroke == Stroke.Pop || note.Pin.IsSet || !range.CanPlay(pitches[start - first] + (12 * octave))) break;
            if (start > 0 && notes[start - 1].Note.Marks.Connection != Connection.None) continue;
            var (itsWidest, itsSum) = Leaps(pitches, start - first, octave, target);
            if ((itsWidest, itsSum).CompareTo((widest, sum)) >= 0) continue;
            (best, widest, sum) = (start, itsWidest, itsSum);
        }
        return best;
    }

    // The widest leap and the sum of all leaps when the tones from an index on are moved.
    private static (int Widest, int Sum) Leaps(int[] pitches, int moved, int octave, int target)
    {
        var (widest, sum) = (0, 0);
        for (var i = 0; i < pitches.Length; i++)
        {
            var here = At(i);
            var leap = Math.Abs((i + 1 < pitches.Length ? At(i + 1) : target) - here);
            (widest, sum) = (Math.Max(widest, leap), sum + leap);
        }
        return (widest, sum);

        int At(int index) => pitches[index] + (index >= moved ? 12 * octave : 0);
    }

    private static int? PitchOf(PlacedNote placed, HarmonyStep step, WrittenRegisters registers) =>
        placed.Step == step && placed.Note.Tones is [DegreeWord word] ? (registers.RootOf(step) + WrittenRegisters.FromRoot(registers.Resolve(word, step), word)).MidiNumber : null;

    private static PlacedNote Moved(PlacedNote placed, int octave)
    {
        var word = (DegreeWord)placed.Note.Tones[0];
        return placed with { Note = placed.Note with { Tones = [word with { Octaves = word.Octaves + octave }] } };
    }
}
