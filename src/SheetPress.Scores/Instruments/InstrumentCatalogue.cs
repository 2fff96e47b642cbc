using System.Collections.Immutable;
using SheetPress.Theory;

namespace SheetPress.Scores;

/// <summary>
/// The catalogue of instruments: usual tunings, necks and octaves of writing, common practice. Bass, guitar and tenor banjo (tuned
/// in fifths from C3) are written an octave above their sound in a plain clef, so that the staff holds their range; mandolin and
/// ukulele are written as they sound. The ukulele's fourth string is tuned above the third (re-entrant). General MIDI has no
/// ukulele and no mandolin: the nylon and the steel guitar stand in.
/// </summary>
public static class InstrumentCatalogue
{
    /// <summary>Every instrument, in the order listings show them.</summary>
    public static ImmutableArray<Instrument> All { get; } =
    [
        Make("bass-4", "4-string bass", InstrumentFamily.Bass, "G2 D2 A1 E1", 24, 863.6, Clef.Bass, -1, 34),
        Make("bass-5", "5-string bass", InstrumentFamily.Bass, "G2 D2 A1 E1 B0", 24, 863.6, Clef.Bass, -1, 34),
        Make("bass-6", "6-string bass", InstrumentFamily.Bass, "C3 G2 D2 A1 E1 B0", 24, 863.6, Clef.Bass, -1, 34),
        Make("guitar-6", "6-string guitar", InstrumentFamily.Guitar, "E4 B3 G3 D3 A2 E2", 22, 648, Clef.Treble, -1, 26),
        Make("guitar-7", "7-string guitar", InstrumentFamily.Guitar, "E4 B3 G3 D3 A2 E2 B1", 24, 648, Clef.Treble, -1, 28),
        Make("ukulele", "ukulele", InstrumentFamily.Ukulele, "A4 E4 C4 G4", 15, 380, Clef.Treble, 0, 25),
        Make("mandolin", "mandolin", InstrumentFamily.Mandolin, "E5 A4 D4 G3", 20, 352, Clef.Treble, 0, 26),
        Make("tenor-banjo", "tenor banjo", InstrumentFamily.Banjo, "A4 D4 G3 C3", 19, 580, Clef.Treble, -1, 106),
    ];

    /// <summary>The instrument of an identifier, or null.</summary>
    public static Instrument? Find(string id) => All.FirstOrDefault(i => i.Id == id);

    private static Instrument Make(string id, string name, InstrumentFamily family, string strings, int frets, double scaleLength, Clef clef, int octaveShift, int program) => new()
    {
        Id = id,
        Name = name,
        Family = family,
        OpenStrings = [.. strings.Split(' ').Select(Pitch.Parse)],
        FretCount = frets,
        ScaleLength = scaleLength,
        Clef = clef,
        OctaveShift = octaveShift,
        MidiProgram = program,
    };
}
