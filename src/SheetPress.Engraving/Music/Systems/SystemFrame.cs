using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>A system with every column at its x.</summary>
internal sealed class SystemFrame
{
    /// <summary>Sets a run of measures to a width.</summary>
    /// <param name="index">Index of the system.</param>
    /// <param name="springs">The run.</param>
    /// <param name="measures">All measures of the score.</param>
    /// <param name="width">Width of the system.</param>
    public SystemFrame(int index, SystemSprings springs, ImmutableArray<MeasureSprings> measures, double width)
    {
        (Index, Springs, Width) = (index, springs, width);
        var positions = springs.Positions(width);
        var bounds = ImmutableArray.CreateBuilder<(double, Boundary)>(springs.Boundaries.Length);
        bounds.Add((0, springs.Boundaries[0]));
        var placed = ImmutableArray.CreateBuilder<PlacedMeasure>(springs.End - springs.First);
        for (var i = 0; i < springs.ColumnNodes.Length; i++)
        {
            var columns = measures[springs.First + i].Measure;
            var node = springs.ColumnNodes[i];
            var (start, end) = (positions[node - 1], positions[node + columns.Columns.Length]);
            placed.Add(new PlacedMeasure(
                columns.Plan,
                [.. columns.Columns.Select((c, k) => (c.Onset, positions[node + k]))],
                start,
                innerLeft: start + springs.Boundaries[i].Right,
                innerRight: end + springs.Boundaries[i + 1].Left,
                end));
            bounds.Add((end, springs.Boundaries[i + 1]));
        }
        Measures = placed.MoveToImmutable();
        Boundaries = bounds.MoveToImmutable();
        Voices = [VoiceEvents(0), VoiceEvents(1)];
    }

    /// <summary>Index of the system.</summary>
    public int Index { get; }

    /// <summary>The run of measures.</summary>
    public SystemSprings Springs { get; }

    /// <summary>Width of the system.</summary>
    public double Width { get; }

    /// <summary>Its measures.</summary>
    public ImmutableArray<PlacedMeasure> Measures { get; }

    /// <summary>Its boundaries with their x.</summary>
    public ImmutableArray<(double X, Boundary Boundary)> Boundaries { get; }

    /// <summary>Events of the upper and the lower voice through the whole system.</summary>
    public ImmutableArray<ImmutableArray<PlacedEvent>> Voices { get; }

    /// <summary>All events.</summary>
    public IEnumerable<PlacedEvent> Events => Voices.SelectMany(v => v);

    /// <summary>Whether the system begins with an event: what is tied to it stands on the system before.</summary>
    public bool BeginsWith(PlacedEvent e) => e.Measure == Measures[0] && e.Plan.Event.Onset == Fraction.Zero;

    private ImmutableArray<PlacedEvent> VoiceEvents(int voice) =>
        [.. Measures.Where(m => m.Voices.Length > voice).SelectMany(m => m.Voices[voice])];
}
