using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>How the degrees of written notes are counted over a chord, and the octave in which each chord's root lies for them.</summary>
internal sealed class WrittenRegisters
{
    private readonly Dictionary<HarmonyStep, Pitch> _roots = [];
    private readonly Dictionary<Key, Pitch> _tonics = [];
    private readonly List<(Fraction Start, Key Key)> _keys = [];
    private readonly PlayerManner _manner;

    /// <summary>Plans the registers of placed notes.</summary>
    /// <param name="context">The exercise.</param>
    /// <param name="track">Its chords.</param>
    /// <param name="range">What can be played.</param>
    /// <param name="manner">How the notes are read.</param>
    /// <param name="notes">The notes in order of time.</param>
    public WrittenRegisters(ExerciseContext context, HarmonyTrack track, NeckRange range, PlayerManner manner, IReadOnlyList<PlacedNote> notes)
    {
        _manner = manner;
        var start = Fraction.Zero;
        foreach (var measure in context.Progression.Measures)
        {
            if (_keys.Count == 0 || _keys[^1].Key != measure.Key) _keys.Add((start, measure.Key));
            start += measure.Length;
        }
        if (manner == PlayerManner.OwnLineInKey) PlanTonics(range, notes);
        var byStep = new Dictionary<HarmonyStep, ImmutableArray<int>.Builder>();
        foreach (var step in track.Sounding) byStep[step] = ImmutableArray.CreateBuilder<int>();
        foreach (var placed in notes)
        {
            foreach (var tone in placed.Note.Tones)
            {
                if (tone is DegreeWord word && manner != PlayerManner.OwnLineInKey && placed.Step is { } step) byStep[step].Add(FromRoot(Resolve(word, step), word).HalfSteps);
            }
        }
        // A hold with nothing before it is struck as the root, so a pattern's root always has to lie well.
        if (manner == PlayerManner.Pattern) foreach (var step in track.Sounding) byStep[step].Add(step.BassDegree.HalfSteps);
        var needs = track.Sounding.Select(s => new RegisterNeed(s.Chord.Root, byStep[s].Count == 0 ? [s.BassDegree.HalfSteps] : byStep[s].ToImmutable())).ToList();
        var roots = RegisterPlanner.Plan(needs, range);
        for (var i = 0; i < roots.Length; i++) _roots[track.Sounding[i]] = roots[i];
    }

    /// <summary>The key that rules at a time.</summary>
    public Key KeyAt(Fraction time) => _keys[_keys.FindLastIndex(k => k.Start <= time)].Key;

    /// <summary>The tonic that steps of a key are counted from.</summary>
    public Pitch TonicOf(Key key) => _tonics[key];

    /// <summary>The root that degrees of a chord are counted from.</summary>
    public Pitch RootOf(HarmonyStep step) => _roots[step];

    /// <summary>The chord's lowest note, the slash bass where there is one.</summary>
    public Pitch BassOf(HarmonyStep step) => _roots[step] + step.BassDegree.ToInterval();

    /// <summary>Half steps from the last degree of a line over a chord to the bass of the next one; 0 where none follows.</summary>
    public int WayOn(WrittenLine line, HarmonyStep step)
    {
        if (step.Next is not { } next || line.Notes.SelectMany(n => n.Tones).OfType<DegreeWord>().LastOrDefault() is not { } last) return 0;
        return Math.Abs((_roots[step] + FromRoot(Resolve(last, step), last)).MidiNumber - BassOf(next).MidiNumber);
    }

    /// <summary>The degree that a word means over a chord.</summary>
    public Degree Resolve(DegreeWord word, HarmonyStep step) => _manner == PlayerManner.Pattern ? PatternDegrees.Resolve(word, step) : DegreeResolver.Resolve(word.Request, step);

    /// <summary>The degree that a word means as a step of the key.</summary>
    public static Degree OfKey(Key key, DegreeRequest request)
    {
        if (request.IsExact) return request.Degree;
        var interval = key.Tonic.IntervalTo(key.NoteOf(request.Degree.Number));
        return new Degree(request.Degree.Number, interval.Alteration);
    }

    // One tonic for each key that a note stands in, in the octave in which most of its notes lie well.
    private void PlanTonics(NeckRange range, IReadOnlyList<PlacedNote> notes)
    {
        var keys = new List<Key>();
        var offsets = new List<ImmutableArray<int>.Builder>();
        foreach (var placed in notes)
        {
            var key = KeyAt(placed.Start);
            var index = keys.IndexOf(key);
            if (index < 0)
            {
                index = keys.Count;
                keys.Add(key);
                offsets.Add(ImmutableArray.CreateBuilder<int>());
            }
            foreach (var tone in placed.Note.Tones) if (tone is DegreeWord word) offsets[index].Add(FromRoot(OfKey(key, word.Request), word).HalfSteps);
        }
        var tonics = RegisterPlanner.Plan([.. keys.Select((k, i) => new RegisterNeed(k.Tonic, offsets[i].Count == 0 ? [0] : offsets[i].ToImmutable()))], range);
        for (var i = 0; i < tonics.Length; i++) _tonics[keys[i]] = tonics[i];
    }

    /// <summary>The interval above the planned root.</summary>
    public static Interval FromRoot(Degree degree, DegreeWord word) => degree.ToInterval() + (Interval.Octave * word.Octaves);
}
