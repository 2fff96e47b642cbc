using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>Events of one voice under one beam.</summary>
/// <param name="First">First event.</param>
/// <param name="Last">Last event, included.</param>
internal readonly record struct BeamGroup(int First, int Last)
{
    /// <summary>The groups of a voice, from the states of the first beam level.</summary>
    public static ImmutableArray<BeamGroup> Of(Voice voice)
    {
        var groups = ImmutableArray.CreateBuilder<BeamGroup>();
        var first = -1;
        for (var i = 0; i < voice.Events.Length; i++)
        {
            var beams = voice.Events[i].Beams;
            if (beams.IsDefaultOrEmpty) continue;
            if (beams[0] == BeamState.Begin) first = i;
            else if (beams[0] == BeamState.End && first >= 0)
            {
                groups.Add(new BeamGroup(first, i));
                first = -1;
            }
        }
        return groups.ToImmutable();
    }
}
