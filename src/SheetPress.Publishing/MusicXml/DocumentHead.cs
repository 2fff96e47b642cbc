using SheetPress.Scores;

namespace SheetPress.Publishing;

/// <summary>The words at the head of a file.</summary>
/// <param name="WorkTitle">Title of the lesson.</param>
/// <param name="Subtitle">The line under the title; empty for none.</param>
/// <param name="MovementTitle">Title of the exercise when the file holds one; null for a whole lesson.</param>
/// <param name="MovementNumber">Number of that exercise, or null.</param>
internal sealed record TitleWords(string WorkTitle, string Subtitle, string? MovementTitle, int? MovementNumber);

/// <summary>Everything before the music: titles, identification, page, credits and the list of parts.</summary>
internal static class DocumentHead
{
    // An A4 page in tenths of a staff space, with a staff of 7 mm (40 tenths) as on a handout.
    private const double StaffMillimetres = 7;
    private const double TenthsPerMillimetre = 40 / StaffMillimetres;
    private const double PageWidth = 210 * TenthsPerMillimetre;
    private const double PageHeight = 297 * TenthsPerMillimetre;
    private const double Margin = 15 * TenthsPerMillimetre;

    public static void Write(XmlOutput xml, MusicXmlHeader header, TitleWords words, PartInstruments instruments)
    {
        xml.Open("work");
        xml.Leaf("work-title", words.WorkTitle);
        xml.Close();
        if (words.MovementNumber is { } number) xml.Leaf("movement-number", number);
        if (words.MovementTitle is { } movement) xml.Leaf("movement-title", movement);
        WriteIdentification(xml, header);
        WriteDefaults(xml);
        WriteCredit(xml, "title", words.MovementTitle ?? words.WorkTitle, PageWidth / 2, PageHeight - Margin, 22, "center");
        WriteCredit(xml, "subtitle", words.Subtitle, PageWidth / 2, PageHeight - Margin - 60, 14, "center");
        WriteCredit(xml, "composer", header.Author, PageWidth - Margin, PageHeight - Margin - 100, 11, "right");
        WriteCredit(xml, "rights", header.Rights, PageWidth / 2, Margin, 9, "center");
        WritePartList(xml, instruments);
    }

    private static void WriteIdentification(XmlOutput xml, MusicXmlHeader header)
    {
        xml.Open("identification");
        // "composer" is the one type of creator that readers put on the page.
        if (header.Author.Length > 0) xml.Leaf("creator", header.Author, ("type", "composer"));
        if (header.Rights.Length > 0) xml.Leaf("rights", header.Rights);
        xml.Open("encoding");
        xml.Leaf("software", "SheetPress " + typeof(DocumentHead).Assembly.GetName().Version!.ToString(3));
        if (header.Date is { } date) xml.Leaf("encoding-date", date.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));
        // What a reader may rely on being written wherever it is meant.
        xml.Empty("supports", ("element", "accidental"), ("type", "yes"));
        xml.Empty("supports", ("element", "beam"), ("type", "yes"));
        xml.Close();
        xml.Close();
    }

    private static void WriteDefaults(XmlOutput xml)
    {
        xml.Open("defaults");
        xml.Open("scaling");
        xml.Leaf("millimeters", XmlOutput.Number(StaffMillimetres));
        xml.Leaf("tenths", 40);
        xml.Close();
        xml.Open("page-layout");
        xml.Leaf("page-height", Tenths(PageHeight));
        xml.Leaf("page-width", Tenths(PageWidth));
        xml.Open("page-margins", ("type", "both"));
        foreach (var side in (ReadOnlySpan<string>)["left", "right", "top", "bottom"]) xml.Leaf(side + "-margin", Tenths(Margin));
        xml.Close();
        xml.Close();
        xml.Close();
    }

    private static void WriteCredit(XmlOutput xml, string type, string text, double x, double y, int size, string justify)
    {
        if (text.Length == 0) return;
        xml.Open("credit", ("page", "1"));
        xml.Leaf("credit-type", type);
        xml.Leaf("credit-words", text, ("default-x", Tenths(x)), ("default-y", Tenths(y)), ("font-size", XmlOutput.Number(size)), ("justify", justify), ("valign", "top"));
        xml.Close();
    }

    private static void WritePartList(XmlOutput xml, PartInstruments instruments)
    {
        xml.Open("part-list");
        xml.Open("score-part", ("id", PartInstruments.PartId));
        xml.Leaf("part-name", instruments.All[0].Name, ("print-object", "no"));
        for (var i = 0; i < instruments.All.Count; i++)
        {
            xml.Open("score-instrument", ("id", PartInstruments.IdAt(i)));
            xml.Leaf("instrument-name", instruments.All[i].Name);
            xml.Leaf("instrument-sound", SoundName(instruments.All[i]));
            xml.Close();
        }
        for (var i = 0; i < instruments.All.Count; i++)
        {
            xml.Open("midi-instrument", ("id", PartInstruments.IdAt(i)));
            // Channel 10 is percussion in General MIDI.
            xml.Leaf("midi-channel", i < 9 ? i + 1 : 16);
            xml.Leaf("midi-program", instruments.All[i].MidiProgram);
            xml.Close();
        }
        xml.Close();
        xml.Close();
    }

    // Names of the standard's list of sounds (sounds.xml); programs are those of General MIDI level 1.
    private static string SoundName(Instrument instrument) => instrument.Family switch
    {
        InstrumentFamily.Bass => instrument.MidiProgram switch { 33 => "pluck.bass.acoustic", 36 => "pluck.bass.fretless", _ => "pluck.bass.electric" },
        InstrumentFamily.Guitar => instrument.MidiProgram switch { 25 => "pluck.guitar.nylon-string", 26 => "pluck.guitar.steel-string", _ => "pluck.guitar.electric" },
        InstrumentFamily.Ukulele => "pluck.ukulele",
        InstrumentFamily.Mandolin => "pluck.mandolin",
        _ => "pluck.banjo.tenor",
    };

    private static string Tenths(double value) => XmlOutput.Number(Math.Round(value, 2));
}
