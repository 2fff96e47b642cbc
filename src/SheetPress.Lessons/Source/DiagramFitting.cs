using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>Takes diagrams over to another instrument than they were written for.</summary>
internal static class DiagramFitting
{
    /// <summary>The diagrams for an instrument: places that a lesson spells out are left out, and grips where chords are not strummed; frets are chosen anew.</summary>
    public static ImmutableArray<DiagramRequest> To(Instrument instrument, ImmutableArray<DiagramRequest> diagrams)
    {
        var fitting = ImmutableArray.CreateBuilder<DiagramRequest>(diagrams.Length);
        foreach (var diagram in diagrams)
        {
            if (!diagram.Positions.IsEmpty) continue;
            var isGripOnBass = diagram.Kind == DiagramKind.Grip && instrument.Family == InstrumentFamily.Bass;
            fitting.Add(diagram with
            {
                FromFret = null,
                ToFret = null,
                Kind = isGripOnBass ? DiagramKind.Chord : diagram.Kind,
                Labels = isGripOnBass && diagram.Labels == DiagramText.Fingers ? null : diagram.Labels,
            });
        }
        return fitting.ToImmutable();
    }
}
