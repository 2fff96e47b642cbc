using SheetPress.Scores;

namespace SheetPress.Publishing;

/// <summary>The sounds one part uses, in order of first use. Nearly always one; a lesson that changes instruments midway has more.</summary>
internal sealed class PartInstruments
{
    /// <summary>Identifier of the only part.</summary>
    public const string PartId = "P1";

    private readonly List<Instrument> _all = [];

    private PartInstruments()
    {
    }

    /// <summary>One instrument for each sound.</summary>
    public IReadOnlyList<Instrument> All => _all;

    public static PartInstruments Of(IReadOnlyList<Score> scores)
    {
        var instruments = new PartInstruments();
        foreach (var score in scores)
            if (instruments.IndexOf(score.Instrument) < 0) instruments._all.Add(score.Instrument);
        return instruments;
    }

    /// <summary>Identifier of the instrument at an index.</summary>
    public static string IdAt(int index) => PartId + "-I" + XmlOutput.Number(index + 1);

    /// <summary>The identifier that notes of an instrument name, or null when there is no choice.</summary>
    public string? IdForNotes(Instrument instrument) => _all.Count == 1 ? null : IdAt(IndexOf(instrument));

    private int IndexOf(Instrument instrument) => _all.FindIndex(i => i.Name == instrument.Name && i.MidiProgram == instrument.MidiProgram);
}
