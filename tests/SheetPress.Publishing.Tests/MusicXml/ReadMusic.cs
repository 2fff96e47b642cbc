using System.Globalization;
using System.Xml.Linq;
using SheetPress.Scores;

namespace SheetPress.Publishing.Tests.MusicXml;

/// <summary>One note or rest as a reader of MusicXML finds it; times in quarter notes from the start of its measure.</summary>
internal sealed record ReadNote(
    int Measure, int Staff, int Voice, Fraction Onset, Fraction Duration, bool IsRest, bool IsMeasureRest, bool IsShown, int WrittenMidi, string Spelling,
    int? String, int? Fret, string? Head, bool TieStart, bool TieStop, bool Sounds, Fraction? ValueLength);

/// <summary>
/// Reads MusicXML anew, by the words of the standard alone: time moves with notes, backup and forward; pitches are written, and move by
/// transpose to what sounds; string tunings are counted from the bottom line.
/// </summary>
internal sealed class ReadMusic
{
    /// <summary>All notes and rests in the order of the file.</summary>
    public List<ReadNote> Notes { get; } = [];

    /// <summary>How far time got in each measure, at most.</summary>
    public List<Fraction> Lengths { get; } = [];

    /// <summary>Half steps from written to sounding pitch, by measure.</summary>
    public List<int> Transposition { get; } = [];

    /// <summary>MIDI numbers of the open strings, string 1 first, capo counted in; by measure.</summary>
    public List<int[]> OpenStrings { get; } = [];

    public static ReadMusic Of(XDocument document)
    {
        var music = new ReadMusic();
        long divisions = 0;
        var transposition = 0;
        int[] strings = [];
        foreach (var measure in Written.Measures(document))
        {
            var at = Fraction.Zero;
            var before = Fraction.Zero;
            var longest = Fraction.Zero;
            foreach (var element in measure.Elements())
            {
                switch (element.Name.LocalName)
                {
                    case "attributes":
                        divisions = (long?)element.Element("divisions") ?? divisions;
                        if (element.Element("transpose") is { } t) transposition = (int)t.Element("chromatic")! + (12 * ((int?)t.Element("octave-change") ?? 0));
                        foreach (var details in element.Elements("staff-details").Where(d => d.Elements("staff-tuning").Any())) strings = ReadTuning(details);
                        break;
                    case "backup":
                        at -= Time(element);
                        break;
                    case "forward":
                        at += Time(element);
                        break;
                    case "note":
                        var isChord = element.Element("chord") is not null;
                        if (!isChord) before = at;
                        var duration = Time(element);
                        music.Notes.Add(ReadNote(element, music.Lengths.Count, before, duration));
                        if (!isChord) at += duration;
                        break;
                }
                at.ShouldBeGreaterThanOrEqualTo(Fraction.Zero);
                longest = Fraction.Max(longest, at);
            }
            music.Lengths.Add(longest);
            music.Transposition.Add(transposition);
            music.OpenStrings.Add(strings);
        }
        return music;

        Fraction Time(XElement element) => new((long)element.Element("duration")!, divisions);
    }

    /// <summary>What a note sounds: MIDI number.</summary>
    public int Sounding(ReadNote note) => note.WrittenMidi + Transposition[note.Measure];

    private static int[] ReadTuning(XElement details)
    {
        var capo = (int?)details.Element("capo") ?? 0;
        return [.. details.Elements("staff-tuning").OrderByDescending(t => (int)t.Attribute("line")!)
            .Select(t => Midi((string)t.Element("tuning-step")!, (int?)t.Element("tuning-alter") ?? 0, (int)t.Element("tuning-octave")!) + capo)];
    }

    private static ReadNote ReadNote(XElement note, int measure, Fraction onset, Fraction duration)
    {
        var pitch = note.Element("pitch");
        var (step, alter, octave) = pitch is null ? ("C", 0, -1) : ((string)pitch.Element("step")!, (int?)pitch.Element("alter") ?? 0, (int)pitch.Element("octave")!);
        var technical = note.Element("notations")?.Element("technical");
        return new ReadNote(
            measure, (int?)note.Element("staff") ?? 1, (int)note.Element("voice")!, onset, duration,
            IsRest: note.Element("rest") is not null,
            IsMeasureRest: (string?)note.Element("rest")?.Attribute("measure") == "yes",
            IsShown: (string?)note.Attribute("print-object") != "no",
            WrittenMidi: Midi(step, alter, octave),
            Spelling: step + alter.ToString(CultureInfo.InvariantCulture) + "/" + octave.ToString(CultureInfo.InvariantCulture),
            String: (int?)technical?.Element("string"),
            Fret: (int?)technical?.Element("fret"),
            Head: (string?)note.Element("notehead"),
            TieStart: note.Elements("tie").Any(t => (string)t.Attribute("type")! == "start"),
            TieStop: note.Elements("tie").Any(t => (string)t.Attribute("type")! == "stop"),
            Sounds: (string?)note.Attribute("dynamics") != "0",
            ValueLength: ValueLength(note));
    }

    // The length of the written value: type, dots and time modification.
    private static Fraction? ValueLength(XElement note)
    {
        if (note.Element("type") is not { } type) return null;
        var denominator = type.Value switch { "whole" => 1, "half" => 2, "quarter" => 4, "eighth" => 8, "16th" => 16, "32nd" => 32, "64th" => 64, _ => throw new ArgumentException(type.Value) };
        var length = new Fraction(4, denominator);
        var dot = length;
        foreach (var _ in note.Elements("dot")) length += dot /= 2;
        return note.Element("time-modification") is { } m ? length * new Fraction((long)m.Element("normal-notes")!, (long)m.Element("actual-notes")!) : length;
    }

    private static int Midi(string step, int alter, int octave) => (12 * (octave + 1)) + step switch { "C" => 0, "D" => 2, "E" => 4, "F" => 5, "G" => 7, "A" => 9, _ => 11 } + alter;
}
