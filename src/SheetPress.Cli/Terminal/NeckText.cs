using System.Globalization;
using System.Text;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Cli;

/// <summary>A neck in text: one line a string, the highest on top, degrees where the tones of a chord lie.</summary>
internal static class NeckText
{
    private const int CellWidth = 5;

    /// <summary>Writes the neck with the tones of a chord.</summary>
    /// <param name="writer">Where to.</param>
    /// <param name="instrument">The instrument.</param>
    /// <param name="chord">The chord.</param>
    /// <param name="lastFret">Highest fret shown.</param>
    public static void Write(TextWriter writer, Instrument instrument, Chord chord, int lastFret)
    {
        var degrees = new string[12];
        foreach (var tone in chord.Tones) degrees[tone.Note.PitchClass] ??= tone.Degree.Simple.ToDisplayString();
        var header = new StringBuilder("     ");
        for (var fret = 0; fret <= lastFret; fret++) header.Append(Centre(fret.ToString(CultureInfo.InvariantCulture), ' ')).Append(' ');
        writer.WriteLine(header.ToString().TrimEnd());
        for (var s = 1; s <= instrument.StringCount; s++)
        {
            var line = new StringBuilder();
            line.Append(instrument.OpenStrings[s - 1].ToString().PadLeft(4)).Append(' ');
            for (var fret = 0; fret <= lastFret; fret++)
            {
                var degree = degrees[instrument.MidiNumberAt(s, fret) % 12];
                line.Append(fret == 0 ? Centre(degree ?? "", ' ') : Centre(degree ?? "", '-'));
                line.Append(fret == 0 ? '‖' : '|');
            }
            writer.WriteLine(line.ToString());
        }
    }

    private static string Centre(string text, char fill)
    {
        var width = CellWidth - 1;
        var left = (width - text.Length + 1) / 2;
        return new string(fill, left) + text + new string(fill, Math.Max(0, width - left - text.Length));
    }
}
