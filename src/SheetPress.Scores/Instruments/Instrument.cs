using System.Collections.Immutable;
using SheetPress.Theory;

namespace SheetPress.Scores;

/// <summary>A fretted instrument: its strings, neck and how it is written.</summary>
public sealed record Instrument
{
    /// <summary>Identifier in lesson files: "bass-4", "guitar-6".</summary>
    public required string Id { get; init; }

    /// <summary>Name on the page: "4-string bass".</summary>
    public required string Name { get; init; }

    /// <summary>Sounding pitches of the open strings by string number: index 0 is string 1, the one nearest the floor as the instrument is held (the highest, save for re-entrant tunings).</summary>
    public required ImmutableArray<Pitch> OpenStrings { get; init; }

    /// <summary>The highest fret, 12 to 36.</summary>
    public required int FretCount { get; init; }

    /// <summary>Vibrating length of the open strings in millimetres.</summary>
    public required double ScaleLength { get; init; }

    /// <summary>Fret the capo sits at; 0 for none. Frets on a page count from the nut of the capo (0 is the string open at the capo).</summary>
    public int Capo { get; init; }

    /// <summary>Whether neck diagrams are mirrored for a left-handed player.</summary>
    public bool LeftHanded { get; init; }

    /// <summary>The clef of the staff.</summary>
    public required Clef Clef { get; init; }

    /// <summary>Octaves from written to sounding pitch: -1 for bass, guitar and tenor banjo, 0 for mandolin and ukulele.</summary>
    public int OctaveShift { get; init; }

    /// <summary>General MIDI program counted from 1 (34 fingered electric bass, 25 nylon guitar).</summary>
    public required int MidiProgram { get; init; }

    /// <summary>The family, for what makes sense on it: bass, guitar, ukulele, mandolin, banjo.</summary>
    public required InstrumentFamily Family { get; init; }

    /// <summary>How many strings there are.</summary>
    public int StringCount => OpenStrings.Length;

    /// <summary>Highest fret that can be played above the capo.</summary>
    public int PlayableFrets => FretCount - Capo;

    /// <summary>MIDI number that a string sounds when it is stopped at a fret above the capo.</summary>
    /// <param name="stringNumber">1 (nearest the floor) to <see cref="StringCount"/>.</param>
    /// <param name="fret">0 to <see cref="PlayableFrets"/>.</param>
    public int MidiNumberAt(int stringNumber, int fret) => OpenStrings[stringNumber - 1].MidiNumber + Capo + fret;

    /// <summary>Lowest MIDI number on the neck, the capo in place.</summary>
    public int LowestMidiNumber
    {
        get
        {
            var lowest = int.MaxValue;
            foreach (var pitch in OpenStrings) lowest = Math.Min(lowest, pitch.MidiNumber);
            return lowest + Capo;
        }
    }

    /// <summary>Highest MIDI number on the neck.</summary>
    public int HighestMidiNumber
    {
        get
        {
            var highest = int.MinValue;
            foreach (var pitch in OpenStrings) highest = Math.Max(highest, pitch.MidiNumber);
            return highest + FretCount;
        }
    }

    /// <summary>Every place on the neck that sounds a MIDI number, from string 1 on; empty when it lies off the neck.</summary>
    public ImmutableArray<FretPosition> PositionsOf(int midiNumber)
    {
        var places = ImmutableArray.CreateBuilder<FretPosition>(StringCount);
        for (var s = 1; s <= StringCount; s++)
        {
            var fret = midiNumber - MidiNumberAt(s, 0);
            if (fret >= 0 && fret <= PlayableFrets) places.Add(new FretPosition(s, fret));
        }
        return places.ToImmutable();
    }

    /// <summary>Distance in millimetres from the nut to a fret counted from the nut, in equal temperament: L * (1 - 2^(-n/12)).</summary>
    public double FretDistance(int fret) => ScaleLength * (1 - Math.Pow(2, -fret / 12.0));

    /// <summary>Where a written pitch stands for a sounding one.</summary>
    public Pitch ToWritten(Pitch sounding) => new(sounding.Name, sounding.Octave - OctaveShift);
}
