using SheetPress.Theory;

namespace SheetPress.Scores;

/// <summary>
/// Which noteheads of a score carry an accidental. The rules are those of the engraving handbooks (Ross 1970, Read 1979, Gould 2011,
/// from memory): a sign holds for its line or space to the barline; a note tied over a barline needs none and gives none to the notes
/// after it; a courtesy sign follows in the next measure, and in the same measure at another octave. Dead notes and slashes, which
/// have no pitch of their own, carry none.
/// </summary>
public sealed class WrittenAccidentals
{
    private readonly Dictionary<(int Measure, int Voice, int Event, int Tone), AccidentalSign> _signs = [];

    private WrittenAccidentals()
    {
    }

    /// <summary>The sign of a tone, by the indexes of its measure, voice, event and tone.</summary>
    public AccidentalSign this[int measure, int voice, int @event, int tone] =>
        _signs.GetValueOrDefault((measure, voice, @event, tone));

    /// <summary>Works out the signs of a whole score.</summary>
    public static WrittenAccidentals Of(Score score)
    {
        var result = new WrittenAccidentals();
        // Staff step -> alteration last seen there: all of this measure, and of the measure before those that left its
        // signature. Octaves of clefs and transposition move all steps alike, so sounding steps serve.
        var before = new Dictionary<int, int>();
        for (var m = 0; m < score.Measures.Length; m++)
        {
            var measure = score.Measures[m];
            var now = new Dictionary<int, int>();
            foreach (var (voice, index) in InReadingOrder(measure))
            {
                var tones = measure.Voices[voice].Events[index].Tones;
                for (var t = 0; t < tones.Length; t++)
                {
                    if (tones[t].Head is Notehead.Dead or Notehead.Slash || tones[t].TieStop) continue;
                    var sign = Judge(tones[t].Pitch, measure.Key, now, before);
                    now[tones[t].Pitch.StaffStep] = tones[t].Pitch.Name.Alteration;
                    if (sign != AccidentalSign.None) result._signs[(m, voice, index, t)] = sign;
                }
            }
            before = now.Where(p => p.Value != measure.Key.Spell((Letter)(((p.Key % 7) + 7) % 7)).Alteration).ToDictionary();
        }
        return result;
    }

    private static AccidentalSign Judge(Pitch pitch, Key key, Dictionary<int, int> now, Dictionary<int, int> before)
    {
        var step = pitch.StaffStep;
        var alteration = pitch.Name.Alteration;
        var inKey = key.Spell(pitch.Name.Letter).Alteration;
        if (now.TryGetValue(step, out var current)) return current == alteration ? AccidentalSign.None : AccidentalSign.Needed;
        if (alteration != inKey) return AccidentalSign.Needed;
        // The first note on this line or space, and the signature says it all: remind after a different one nearby.
        if (before.TryGetValue(step, out var last) && last != alteration) return AccidentalSign.Courtesy;
        foreach (var (otherStep, other) in now)
            if ((otherStep - step) % 7 == 0 && other != alteration) return AccidentalSign.Courtesy;
        return AccidentalSign.None;
    }

    private static IEnumerable<(int Voice, int Event)> InReadingOrder(Measure measure)
    {
        if (measure.Voices.Length == 1) return Enumerable.Range(0, measure.Voices[0].Events.Length).Select(i => (0, i));
        return Enumerable.Range(0, measure.Voices.Length)
            .SelectMany(v => Enumerable.Range(0, measure.Voices[v].Events.Length).Select(e => (v, e)))
            .OrderBy(p => measure.Voices[p.v].Events[p.e].Onset).ThenBy(p => p.v);
    }
}
