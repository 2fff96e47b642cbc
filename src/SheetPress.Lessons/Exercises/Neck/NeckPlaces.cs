using System.Globalization;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>Finds pitches on the neck.</summary>
internal static class NeckPlaces
{
    /// <summary>The lowest place of a pitch that meets a pin; null when there is none.</summary>
    public static FretPosition? Find(Instrument instrument, int midiNumber, NeckPin pin)
    {
        FretPosition? best = null;
        for (var number = 1; number <= instrument.StringCount; number++)
        {
            if (pin.String is { } wanted && wanted != number) continue;
            var fret = midiNumber - instrument.MidiNumberAt(number, 0);
            if (fret < 0 || fret > instrument.PlayableFrets || (pin.Fret is { } at && at != fret)) continue;
            if (best is null || fret < best.Value.Fret) best = new FretPosition(number, fret);
        }
        return best;
    }

    /// <summary>A pin in words: "string 3, fret 5".</summary>
    public static string Describe(NeckPin pin) => (pin.String, pin.Fret) switch
    {
        ({ } number, { } fret) => string.Create(CultureInfo.InvariantCulture, $"string {number}, fret {fret}"),
        ({ } number, null) => string.Create(CultureInfo.InvariantCulture, $"string {number}"),
        (null, { } fret) => string.Create(CultureInfo.InvariantCulture, $"fret {fret} of any string"),
        _ => "the neck",
    };
}
