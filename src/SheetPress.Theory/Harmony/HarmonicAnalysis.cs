using System.Collections.Immutable;

namespace SheetPress.Theory;

/// <summary>Says what each chord of a progression does in a key and which scale to use over it.</summary>
public static class HarmonicAnalysis
{
    /// <summary>Analyses a progression chord by chord; each looks at the next other chord.</summary>
    /// <param name="progression">The chords in order; null stands for "no chord" and gives null.</param>
    /// <param name="key">The key of the whole progression.</param>
    /// <param name="wording">The language of the phrases; English when null.</param>
    /// <returns>One entry for each chord, in order.</returns>
    public static ImmutableArray<ChordAnalysis?> Analyze(IReadOnlyList<Chord?> progression, Key key, HarmonyWording? wording = null)
    {
        ArgumentNullException.ThrowIfNull(progression);
        ArgumentNullException.ThrowIfNull(key);
        wording ??= HarmonyWording.English;
        var placer = new ChordPlacer(key);
        var chooser = new ScaleChooser(key);
        var moments = KeysOfMoment.Find(progression, key);
        var result = ImmutableArray.CreateBuilder<ChordAnalysis?>(progression.Count);
        for (var i = 0; i < progression.Count; i++)
        {
            if (progression[i] is not { } chord)
            {
                result.Add(null);
                continue;
            }
            var next = NextOther(progression, i);
            var afterNext = next is null ? null : NextOther(progression, next.Value);
            result.Add(Analyze(placer.Place(chord, At(next), At(afterNext), moments[i]), chooser, key, wording));
        }
        return result.MoveToImmutable();

        Chord? At(int? index) => index is { } i ? progression[i] : null;
    }

    /// <summary>The patterns between the chords of a progression, in order of their first chord, longer ones first.</summary>
    /// <param name="progression">The chords in order; null stands for "no chord".</param>
    /// <param name="key">The key of the whole progression.</param>
    /// <param name="wording">The language of the sentences; English when null.</param>
    public static ImmutableArray<ProgressionPattern> FindPatterns(IReadOnlyList<Chord?> progression, Key key, HarmonyWording? wording = null)
    {
        ArgumentNullException.ThrowIfNull(progression);
        ArgumentNullException.ThrowIfNull(key);
        return new PatternFinder(progression, key, wording ?? HarmonyWording.English).Find();
    }

    private static ChordAnalysis Analyze(ChordPlace place, ScaleChooser chooser, Key key, HarmonyWording wording)
    {
        var chord = place.Chord;
        var (scale, reason) = chooser.Choose(place);
        var changed = chooser.Changed(scale);
        var function = HarmonyWording.Fill(
            wording[place.Function],
            "target", place.Target is { } target ? MarkedText.Mark(target) : "",
            "key", place.KeyOfMoment is { } moment ? wording.KeyName(moment.Tonic, moment.Mode) : wording.KeyName(key.Tonic, place.BorrowedFrom ?? key.Mode),
            "mode", wording[key.Mode]);
        var parent = reason == ScaleReason.HarmonicMinorSeventhMode ? place.ReadRoot + Interval.MinorSecond : place.ReadRoot + Interval.PerfectFourth;
        if (place.ReadRoot != chord.Root) parent = parent.Simplest;
        var why = HarmonyWording.Fill(
            wording[reason],
            "key", reason == ScaleReason.KeyOfMoment ? wording.KeyName(place.KeyOfMoment!.Tonic, place.KeyOfMoment.Mode) : wording.KeyName(key.Tonic, reason == ScaleReason.ParallelMode ? place.BorrowedFrom!.Value : key.Mode),
            "root", chord.Root.ToDisplayString(),
            "note", parent.ToDisplayString(),
            "changed", wording.List(Names(changed)));
        return new ChordAnalysis(chord, place.Numeral.ToString(), MarkedText.Plain(function), scale, why, ChordScales.GuideTones(chord))
        {
            Numeral = place.Numeral,
            Kind = place.Function,
            FunctionMarkup = function,
            ChangedNotes = changed,
        };
    }

    private static List<string> Names(ImmutableArray<NoteName> notes)
    {
        var names = new List<string>();
        foreach (var note in notes) names.Add(note.ToDisplayString());
        return names;
    }

    // The index of the next chord that is no repetition of this one.
    private static int? NextOther(IReadOnlyList<Chord?> progression, int index)
    {
        var chord = progression[index]!;
        for (var i = index + 1; i < progression.Count; i++)
        {
            if (progression[i] is { } next && (next.Root != chord.Root || !next.Quality.Equals(chord.Quality))) return i;
        }
        return null;
    }
}
