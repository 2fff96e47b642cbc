using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>
/// Which pitches an exercise may use: those with a place on the neck within what the author asks for, and how far each lies
/// from where the level is at home.
/// </summary>
internal sealed class NeckRange
{
    private const int PitchCount = 128;
    // Frets that a position spans: one finger a fret, and one fret of reach to either side.
    private const int PositionReach = 4;
    private readonly bool[] _playable = new bool[PitchCount];
    private readonly byte[] _strain = new byte[PitchCount];

    private NeckRange()
    {
    }

    /// <summary>The lowest MIDI number that can be played.</summary>
    public int Lowest { get; private set; } = PitchCount;

    /// <summary>The highest MIDI number that can be played; below <see cref="Lowest"/> when none can.</summary>
    public int Highest { get; private set; } = -1;

    /// <summary>Where the lowest notes of a line are best placed, as a MIDI number: the home of the roots, an octave from here.</summary>
    public int Home { get; private set; }

    /// <summary>Whether a pitch has a place.</summary>
    public bool CanPlay(int midiNumber) => midiNumber is >= 0 and < PitchCount && _playable[midiNumber];

    /// <summary>Half steps or frets by which a pitch lies outside the comfortable part of the neck; 0 inside.</summary>
    public int Strain(int midiNumber) => midiNumber is >= 0 and < PitchCount ? _strain[midiNumber] : PitchCount;

    /// <summary>The range of an exercise.</summary>
    public static NeckRange Of(ExerciseContext context)
    {
        var range = new NeckRange();
        range.Fill(context.Instrument, context.Request.Neck, LevelTable.Of(context.Level).HighestFret);
        return range;
    }

    private void Fill(Instrument instrument, NeckRequest neck, int comfortableFret)
    {
        var lowestFret = Math.Max(1, neck.LowestFret ?? 1);
        var highestFret = Math.Min(instrument.PlayableFrets, neck.HighestFret ?? instrument.PlayableFrets);
        // High up the neck a line is meant to stay there; open strings are for the first positions.
        var open = neck.OpenStrings ?? (Math.Max(neck.Position ?? 1, lowestFret) <= 4);
        var anchored = neck.Position is not null || neck.LowestFret is not null || neck.HighestFret is not null;
        Array.Fill(_strain, byte.MaxValue);
        for (var number = 1; number <= instrument.StringCount; number++)
        {
            if (!neck.Strings.IsEmpty && !neck.Strings.Contains(number)) continue;
            if (open) Allow(instrument.MidiNumberAt(number, 0), neck.Position is { } position && position > 2 ? 2 : 0);
            for (var fret = lowestFret; fret <= highestFret; fret++)
            {
                var strain = neck.Position is { } at ? OutsideOf(fret, at - 1, at + PositionReach) : anchored ? 0 : OutsideOf(fret, 1, comfortableFret);
                Allow(instrument.MidiNumberAt(number, fret), strain);
            }
        }
        Home = HomeOf(instrument);
        if (anchored || !neck.Strings.IsEmpty || Home < Lowest) Home = Math.Max(Home, Lowest);
    }

    private void Allow(int midiNumber, int strain)
    {
        if (midiNumber is < 0 or >= PitchCount) return;
        _playable[midiNumber] = true;
        _strain[midiNumber] = (byte)Math.Min(_strain[midiNumber], strain);
        Lowest = Math.Min(Lowest, midiNumber);
        Highest = Math.Max(Highest, midiNumber);
    }

    private static int OutsideOf(int fret, int low, int high) => fret < low ? low - fret : fret > high ? fret - high : 0;

    // Common practice: roots sit on the E and A strings of a bass or guitar, whatever strings lie below; elsewhere on the lowest.
    private static int HomeOf(Instrument instrument)
    {
        var lowest = int.MaxValue;
        foreach (var open in instrument.OpenStrings) lowest = Math.Min(lowest, open.MidiNumber + instrument.Capo);
        var usual = instrument.Family switch { InstrumentFamily.Bass => 28, InstrumentFamily.Guitar => 40, _ => lowest };
        usual += instrument.Family is InstrumentFamily.Bass or InstrumentFamily.Guitar ? instrument.Capo : 0;
        return lowest > usual - 3 ? lowest : usual;
    }
}
