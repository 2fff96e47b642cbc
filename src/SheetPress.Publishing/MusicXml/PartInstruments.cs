using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Publishing;

/// <summary>The sounds one part uses, in order of first use. Nearly always one; a lesson that changes instruments midway has more.</summary>
internal sealed class PartInstruments
{
    /// <summary>Identifier of the only part.</summary>
    public const string PartId = "P1";

    private PartInstruments(ImmutableArray<Instrument> all) => All = all;

    /// <summary>One instrument for each sound.</summary>
    public ImmutableArray<Instrument> All { get; }

    public static PartInstruments Of(IReadOnlyList<Score> scores) =>
        new([.. scores.Select(s => s.Instrument).DistinctBy(SoundOf)]);

    /// <summary>Identifier of the instrument at an index.</summary>
    public static string IdAt(int index) => PartId + "-I" + XmlOutput.Number(index + 1);

    /// <summary>The identifier that notes of an instrument name, or null when there is no choice.</summary>
    public string? IdForNotes(Instrument instrument)
    {
        if (All.Length == 1) return null;
        for (var i = 0; i < All.Length; i++) if (SoundOf(All[i]) == SoundOf(instrument)) return IdAt(i);
        throw new ArgumentException("The instrument is not of this part.", nameof(instrument));
    }

    private static (string, int) SoundOf(Instrument instrument) => (instrument.Name, instrument.MidiProgram);
}
