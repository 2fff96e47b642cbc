using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>Collects the flow of a document from top to bottom.</summary>
internal sealed class FlowBuilder
{
    private readonly List<FlowBox> _boxes = [];

    internal IReadOnlyList<FlowBox> Boxes => _boxes;

    /// <summary>Adds boxes under white of their own; a break there costs nothing.</summary>
    internal void Add(FlowSpace before, params ReadOnlySpan<FlowBox> boxes)
    {
        if (boxes.IsEmpty) return;
        if (_boxes.Count > 0) _boxes[^1] = _boxes[^1] with { After = before };
        foreach (var box in boxes) _boxes.Add(box);
    }

    /// <summary>Adds boxes under white of their own; a break there is unwanted.</summary>
    internal void AddNear(FlowSpace before, params ReadOnlySpan<FlowBox> boxes)
    {
        if (!boxes.IsEmpty) Discourage(FlowBox.Unwanted);
        Add(before, boxes);
    }

    /// <summary>Makes a break after what has been added so far cost a penalty at least.</summary>
    internal void Discourage(double penalty)
    {
        if (_boxes.Count > 0) _boxes[^1] = _boxes[^1] with { BreakPenalty = Math.Max(_boxes[^1].BreakPenalty, penalty) };
    }

    /// <summary>Says that what has been added so far ends a part of the document.</summary>
    internal void EndPart()
    {
        if (_boxes.Count > 0) _boxes[^1] = _boxes[^1] with { EndsPart = true };
    }

    /// <summary>Adds boxes under white of their own that no page break may part from what is above.</summary>
    internal void AddKept(FlowSpace before, params ReadOnlySpan<FlowBox> boxes)
    {
        if (_boxes.Count > 0 && !boxes.IsEmpty) _boxes[^1] = _boxes[^1] with { BreakPenalty = FlowBox.Never };
        Add(before, boxes);
    }
}
