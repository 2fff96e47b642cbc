using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>One voice of a measure on the staff.</summary>
/// <param name="Events">Its events in order.</param>
/// <param name="Groups">Its beams.</param>
/// <param name="Tuplets">Its tuplets.</param>
internal sealed record VoicePlan(ImmutableArray<EventPlan> Events, ImmutableArray<BeamGroup> Groups, ImmutableArray<TupletSpan> Tuplets);
