using System.Collections.Immutable;

namespace SheetPress.Theory;

/// <summary>A whole progression as one key hears it.</summary>
internal sealed class ProgressionInKey
{
    private readonly IReadOnlyList<Chord?> progression;
    private readonly Key key;
    private readonly HarmonyWording wording;
    private readonly ChordPlacer placer;
    private readonly ScaleChooser chooser;
    private readonly Key?[] moments;

    /// <summary>Listens to a progression.</summary>
    /// <param name="progression">The chords; null for "no chord".</param>
    /// <param name="key">The key.</param>
    /// <param name="wording">The language of the phrases.</param>
    internal ProgressionInKey(IReadOnlyList<Chord?> progression, Key key, HarmonyWording wording)
    {
        this.progression = progression;
        this.key = key;
        this.wording = wording;
        placer = new ChordPlacer(key, BluesHome.Is(progression, key));
        chooser = new ScaleChooser(key);
        moments = KeysOfMoment.Find(progression, key);
    }

    /// <summary>The analysis of one chord.</summary>
    /// <param name="index">Its index; there is a chord.</param>
    /// <param name="leading">What it does in this key while another one is still written; null where this is the key in force.</param>
    internal ChordAnalysis Analyze(int index, HarmonicFunction? leading)
    {
        var next = Other(index, 1);
        var place = placer.Place(progression[index]!, At(Other(index, -1)), At(next), next is { } n ? At(Other(n, 1)) : null, moments[index]);
        // The scale is that of its place in the key; only the name says that the key is yet to come.
        return Describe(place, leading);
    }

    private ChordAnalysis Describe(ChordPlace place, HarmonicFunction? leading)
    {
        var chord = place.Chord;
        var (scale, reason) = chooser.Choose(place);
        ImmutableArray<NoteName> changed = [.. chooser.Changed(scale).Select(n => ChordScales.Spelled(n, scale, chord))];
        var function = HarmonyWording.Fill(
            wording[leading ?? place.Function],
            "target", place.Target is { } target ? MarkedText.Mark(target) : "",
            "key", leading is null && place.KeyOfMoment is { } moment ? wording.KeyName(moment.Tonic, moment.Mode) : wording.KeyName(key.Tonic, leading is null ? place.BorrowedFrom ?? key.Mode : key.Mode),
            "mode", wording[key.Mode]);
        // In the letters of the scale, but no double flat minor.
        var parent = (scale.Root + (reason == ScaleReason.HarmonicMinorSeventhMode ? Interval.MinorSecond : Interval.PerfectFourth)).Simplest;
        var why = HarmonyWording.Fill(
            wording[reason],
            "key", reason == ScaleReason.KeyOfMoment ? wording.KeyName(place.KeyOfMoment!.Tonic, place.KeyOfMoment.Mode) : wording.KeyName(key.Tonic, reason == ScaleReason.ParallelMode ? place.BorrowedFrom!.Value : key.Mode),
            "root", chord.Root.ToDisplayString(),
            "note", parent.ToDisplayString(),
            "changed", wording.List(Names(changed)));
        return new ChordAnalysis(chord, place.Numeral.ToString(), MarkedText.Plain(function), scale, why, ChordScales.GuideTones(chord))
        {
            Numeral = place.Numeral,
            Kind = leading ?? place.Function,
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

    private Chord? At(int? index) => index is { } i ? progression[i] : null;

    // The index of the nearest chord, after it or before it, that is no repetition of this one.
    private int? Other(int index, int step)
    {
        var chord = progression[index]!;
        for (var i = index + step; i >= 0 && i < progression.Count; i += step)
        {
            if (progression[i] is { } other && (other.Root != chord.Root || !other.Quality.Equals(chord.Quality))) return i;
        }
        return null;
    }
}
