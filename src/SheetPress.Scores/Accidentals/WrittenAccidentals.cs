using SheetPress.Theory;

namespace SheetPress.Scores;

/// <summary>
/// Which noteheads of a score carry an accidental. The rules are those of the engraving handbooks (Ross 1970, Read 1979, Gould 2011,
/// from memory): a sign holds for its line or space to the barline (where a measure is divided without one, it is repeated in the
/// second part); a note tied over a barline needs none and gives none to the notes
/// after it; a courtesy sign follows in the next measure, and in the same measure at another octave. Dead notes and slashes, which
/// have no pitch of their own, carry none.
/// </summary>
public sealed class WrittenAccidentals
{
    // By measure, voice and event; null where no tone of the event has a sign.
    private readonly AccidentalSign[]?[][][] _signs;

    private WrittenAccidentals(Score score)
    {
        _signs = new AccidentalSign[]?[score.Measures.Length][][];
        for (var m = 0; m < _signs.Length; m++)
        {
            var voices = score.Measures[m].Voices;
            _signs[m] = new AccidentalSign[]?[voices.Length][];
            for (var v = 0; v < voices.Length; v++) _signs[m][v] = new AccidentalSign[]?[voices[v].Events.Length];
        }
    }

    /// <summary>The sign of a tone, by the indexes of its measure, voice, event and tone.</summary>
    public AccidentalSign this[int measure, int voice, int @event, int tone] => _signs[measure][voice][@event]?[tone] ?? AccidentalSign.None;

    /// <summary>Works out the signs of a whole score.</summary>
    public static WrittenAccidentals Of(Score score)
    {
        var result = new WrittenAccidentals(score);
        // Staff step -> alteration last seen there: all of this measure, and of the measure before those that left its
        // signature. Octaves of clefs and transposition move all steps alike, so sounding steps serve.
        var before = new Dictionary<int, int>();
        for (var m = 0; m < score.Measures.Length; m++)
        {
            var measure = score.Measures[m];
            var isDivided = m > 0 && EndsOpen(score.Measures[m - 1], measure);
            var now = new Dictionary<int, int>();
            // Reading order: by onset, the upper voice first.
            var next = new int[measure.Voices.Length];
            for (var voice = Earliest(measure, next); voice >= 0; voice = Earliest(measure, next))
            {
                var index = next[voice]++;
                result._signs[m][voice][index] = SignsOf(measure.Voices[voice].Events[index], measure.Key, now, before, isDivided);
            }
            if (m + 1 == score.Measures.Length || !EndsOpen(measure, score.Measures[m + 1])) before.Clear();
            foreach (var (step, alteration) in now)
            {
                if (alteration != measure.Key.Spell((Letter)(((step % 7) + 7) % 7)).Alteration) before[step] = alteration;
                else before.Remove(step);
            }
        }
        return result;
    }

    private static bool EndsOpen(Measure measure, Measure next) => measure.Barline == Barline.None && measure.RepeatEndTimes == 0 && !next.RepeatStart;

    // The voice whose next event comes first, or -1 when all are done.
    private static int Earliest(Measure measure, int[] next)
    {
        var found = -1;
        for (var v = 0; v < next.Length; v++)
        {
            if (next[v] >= measure.Voices[v].Events.Length) continue;
            if (found < 0 || measure.Voices[v].Events[next[v]].Onset < measure.Voices[found].Events[next[found]].Onset) found = v;
        }
        return found;
    }

    private static AccidentalSign[]? SignsOf(ScoreEvent e, Key key, Dictionary<int, int> now, Dictionary<int, int> before, bool isDivided)
    {
        AccidentalSign[]? signs = null;
        for (var t = 0; t < e.Tones.Length; t++)
        {
            var tone = e.Tones[t];
            if (tone.Head is Notehead.Dead or Notehead.Slash || tone.TieStop) continue;
            var sign = Judge(tone.Pitch, key, now, before, isDivided);
            now[tone.Pitch.StaffStep] = tone.Pitch.Name.Alteration;
            if (sign == AccidentalSign.None) continue;
            signs ??= new AccidentalSign[e.Tones.Length];
            signs[t] = sign;
        }
        return signs;
    }

    private static AccidentalSign Judge(Pitch pitch, Key key, Dictionary<int, int> now, Dictionary<int, int> before, bool isDivided)
    {
        var step = pitch.StaffStep;
        var alteration = pitch.Name.Alteration;
        var inKey = key.Spell(pitch.Name.Letter).Alteration;
        if (now.TryGetValue(step, out var current)) return current == alteration ? AccidentalSign.None : AccidentalSign.Needed;
        if (alteration != inKey) return AccidentalSign.Needed;
        // The first note on this line or space, and the signature says it all: remind after a different one nearby.
        if (before.TryGetValue(step, out var last) && last != alteration) return isDivided ? AccidentalSign.Needed : AccidentalSign.Courtesy;
        foreach (var (otherStep, other) in now)
            if ((otherStep - step) % 7 == 0 && other != alteration) return AccidentalSign.Courtesy;
        return AccidentalSign.None;
    }
}
