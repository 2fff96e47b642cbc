using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>The boundaries of a score, each laid out when it is first asked for.</summary>
internal sealed class BoundaryCache(BoundaryBuilder builder, ImmutableArray<MeasureContext> contexts)
{
    private readonly Boundary?[] _starts = new Boundary?[contexts.Length];
    private readonly Boundary?[] _between = new Boundary?[contexts.Length];
    private readonly Boundary?[] _ends = new Boundary?[contexts.Length];

    /// <summary>The start of a system at a measure.</summary>
    public Boundary Start(int measure) => _starts[measure] ??= builder.Start(contexts[measure]);

    /// <summary>The boundary after a measure within a system.</summary>
    public Boundary Between(int measure) => _between[measure] ??= builder.Between(contexts[measure], contexts[measure + 1]);

    /// <summary>The end of a system after a measure.</summary>
    public Boundary End(int measure) => _ends[measure] ??= builder.End(contexts[measure], measure + 1 < contexts.Length ? contexts[measure + 1] : null);
}
