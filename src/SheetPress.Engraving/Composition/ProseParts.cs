using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>The parts into which headings and rules divide a text.</summary>
internal static class ProseParts
{
    /// <summary>Whether a list holds another: such a one is hard to read in two columns.</summary>
    internal static bool HasListInList(ImmutableArray<TextBlock> blocks)
    {
        foreach (var block in blocks) if (block is ListBlock list && list.Items.Any(item => item.Any(inner => inner is ListBlock))) return true;
        return false;
    }

    /// <summary>The parts in order: a heading begins one, and heads that follow each other stay together; a rule is one of its own.</summary>
    internal static ImmutableArray<ImmutableArray<TextBlock>> Of(ImmutableArray<TextBlock> blocks)
    {
        var parts = ImmutableArray.CreateBuilder<ImmutableArray<TextBlock>>();
        var start = 0;
        for (var i = 1; i < blocks.Length; i++)
        {
            var begins = (blocks[i] is HeadingBlock && blocks[i - 1] is not HeadingBlock) || blocks[i] is RuleBlock || blocks[i - 1] is RuleBlock;
            if (!begins) continue;
            parts.Add(blocks[start..i]);
            start = i;
        }
        if (start < blocks.Length) parts.Add(blocks[start..]);
        return parts.DrainToImmutable();
    }
}
