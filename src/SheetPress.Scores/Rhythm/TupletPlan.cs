namespace SheetPress.Scores;

/// <summary>A stretch that is written as a tuplet: where, and how many units in the time of how many.</summary>
internal readonly record struct TupletPlan(Fraction Start, Fraction Length, int Actual, int Normal)
{
    public Fraction End => Start + Length;

    /// <summary>The written unit: an eighth in an eighth-note triplet.</summary>
    public Fraction Unit => Length / Normal;

    /// <summary>The factor from sounding to written time.</summary>
    public Fraction Widening => new(Actual, Normal);

    /// <summary>The tree of its written time.</summary>
    public MetricNode ToTree() => MetricNode.OfTuplet(Actual, Unit);

    /// <summary>The stretches inside the tuplet, cut at its ends, in written time from its start.</summary>
    public List<Stretch> Inside(IReadOnlyList<Stretch> stretches)
    {
        var inside = new List<Stretch>();
        foreach (var stretch in stretches)
        {
            var start = Fraction.Max(stretch.Start, Start);
            var end = Fraction.Min(stretch.End, End);
            if (start < end) inside.Add(new Stretch((start - Start) * Widening, (end - Start) * Widening, stretch.Source));
        }
        return inside;
    }
}

/// <summary>A stretch of sound or silence in the times of a metric tree; stretches follow each other without gaps.</summary>
internal readonly record struct Stretch(Fraction Start, Fraction End, int Source)
{
    public bool IsRest => Source < 0;
}
