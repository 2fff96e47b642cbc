using System.Collections.Immutable;
using System.Globalization;

namespace SheetPress.Scores;

/// <summary>Says what is wrong with an instrument of one's own: the limits within which everything else works.</summary>
public static class InstrumentChecks
{
    /// <summary>Fewest strings of an instrument.</summary>
    public const int FewestStrings = 3;
    /// <summary>Most strings of an instrument.</summary>
    public const int MostStrings = 12;
    /// <summary>Fewest frets of a neck.</summary>
    public const int FewestFrets = 12;
    /// <summary>Most frets of a neck.</summary>
    public const int MostFrets = 36;
    /// <summary>Highest fret of a capo; five frets have to be left above it.</summary>
    public const int HighestCapo = 12;
    /// <summary>Shortest scale in millimetres.</summary>
    public const double ShortestScale = 200;
    /// <summary>Longest scale in millimetres.</summary>
    public const double LongestScale = 1200;

    private const int FewestPlayableFrets = 5;
    private const int LowestOpenString = 12;
    private const int HighestOpenString = 96;

    /// <summary>Lists what is wrong; empty when nothing is. A problem that only follows from another is left out.</summary>
    public static ImmutableArray<InstrumentProblem> Run(Instrument instrument)
    {
        var problems = ImmutableArray.CreateBuilder<InstrumentProblem>();
        void Add(InstrumentPart part, FormattableString message) => problems.Add(new InstrumentProblem(part, message.ToString(CultureInfo.InvariantCulture)));

        var neckIsPossible = instrument.FretCount is >= FewestFrets and <= MostFrets;
        var stringsArePossible = CheckStrings(instrument, Add);
        if (!neckIsPossible) Add(InstrumentPart.Frets, $"A neck of {instrument.FretCount} frets is not possible here: {FewestFrets} to {MostFrets} are.");
        if (instrument.Capo is < 0 or > HighestCapo) Add(InstrumentPart.Capo, $"A capo at fret {instrument.Capo} is not possible: write 1 to {HighestCapo}, or 0 for none.");
        else if (neckIsPossible && instrument.PlayableFrets < FewestPlayableFrets) Add(InstrumentPart.Capo, $"A capo at fret {instrument.Capo} leaves fewer than five of the {instrument.FretCount} frets to play on: write a lower fret.");
        if (neckIsPossible && stringsArePossible && instrument.HighestMidiNumber > 127) Add(InstrumentPart.Tuning, $"The highest fret of this neck would sound above the range of MIDI: tune it lower or give it fewer frets.");
        if (!(instrument.ScaleLength is >= ShortestScale and <= LongestScale)) Add(InstrumentPart.ScaleLength, $"A scale length is {ShortestScale:0} to {LongestScale:0} millimetres; {instrument.ScaleLength:0.##} is outside.");
        return problems.ToImmutable();
    }

    private static bool CheckStrings(Instrument instrument, Action<InstrumentPart, FormattableString> add)
    {
        var strings = instrument.OpenStrings;
        if (strings.IsDefault || strings.Length is < FewestStrings or > MostStrings)
        {
            add(InstrumentPart.Tuning, $"A tuning names {FewestStrings} to {MostStrings} strings; this one has {(strings.IsDefault ? 0 : strings.Length)}.");
            return false;
        }
        var inReach = true;
        foreach (var pitch in strings)
        {
            if (pitch.MidiNumber is >= LowestOpenString and <= HighestOpenString) continue;
            inReach = false;
            add(InstrumentPart.Tuning, $"An open string at {pitch} is out of reach: C0 to C7 are possible, and the low string of a bass is E1.");
        }
        // String 1 is the highest save on re-entrant instruments, where some string breaks the order; none has it all the way round.
        var rising = true;
        for (var i = 1; i < strings.Length; i++) rising &= strings[i].MidiNumber > strings[i - 1].MidiNumber;
        if (rising) add(InstrumentPart.Tuning, $"A tuning starts with the string nearest the ceiling, the lowest: write {string.Join(' ', strings)}.");
        return inReach;
    }
}
