using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>An exercise set into systems, ready to be stacked on pages.</summary>
/// <param name="Systems">The systems from first to last; at least one.</param>
public sealed record EngravedScore(ImmutableArray<EngravedSystem> Systems);
