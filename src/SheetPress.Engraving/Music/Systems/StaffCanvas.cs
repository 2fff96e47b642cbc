namespace SheetPress.Engraving;

/// <summary>The marks of one staff of a system, with y from its top line, and their outlines above and below.</summary>
internal sealed class StaffCanvas
{
    private readonly List<Mark> _marks = [];

    /// <summary>The upper outline.</summary>
    public SkylineBuilder Upper { get; } = new(isUpper: true);

    /// <summary>The lower outline.</summary>
    public SkylineBuilder Lower { get; } = new(isUpper: false);

    /// <summary>The marks in drawing order.</summary>
    public IReadOnlyList<Mark> Marks => _marks;

    /// <summary>Adds a mark and its outline.</summary>
    public void Add(Mark mark)
    {
        _marks.Add(mark);
        foreach (var box in InkCover.Of(mark))
        {
            Upper.Add(box);
            Lower.Add(box);
        }
    }

    /// <summary>Adds marks and their outlines.</summary>
    public void AddAll(IEnumerable<Mark> marks)
    {
        foreach (var mark in marks) Add(mark);
    }

    /// <summary>
    /// Moves a shape up (or down) until it clears everything there and adds it.
    /// </summary>
    /// <param name="marks">The shape where it would lie if nothing were in its way.</param>
    /// <param name="above">Whether it stands above the staff.</param>
    /// <param name="gap">White to what is nearer to the staff.</param>
    /// <param name="padding">White to what stands beside it.</param>
    /// <returns>How far it was moved (negative is up).</returns>
    public double Place(IReadOnlyList<Mark> marks, bool above, double gap, double padding = 0.2)
    {
        var move = Clearance(marks, above, gap, padding);
        foreach (var mark in marks) Add(move == 0 ? mark : mark.Transform(1, 0, move));
        return move;
    }

    /// <summary>Moves and adds a shape like <see cref="Place(IReadOnlyList{Mark}, bool, double, double)"/>, further off the marks that it would be read with.</summary>
    /// <param name="marks">The shape where it would lie if nothing were in its way.</param>
    /// <param name="above">Whether it stands above the staff.</param>
    /// <param name="gap">White to what is nearer to the staff.</param>
    /// <param name="padding">White to what stands beside it.</param>
    /// <param name="isRead">The marks that it would be read with.</param>
    /// <param name="readGap">White to these.</param>
    /// <param name="readBeside">White to these beside it; null for that to all.</param>
    /// <returns>How far it was moved (negative is up).</returns>
    public double Place(IReadOnlyList<Mark> marks, bool above, double gap, double padding, Func<Mark, bool> isRead, double readGap, double? readBeside = null)
    {
        var read = new SkylineBuilder(isUpper: above);
        foreach (var mark in _marks)
        {
            if (!isRead(mark)) continue;
            foreach (var box in InkCover.Of(mark)) read.Add(box);
        }
        var move = read.Clearance(marks.SelectMany(m => InkCover.Of(m)), readGap, readBeside ?? padding);
        return move + Place(move == 0 ? marks : [.. marks.Select(m => m.Transform(1, 0, move))], above, gap, padding);
    }

    /// <summary>How far a shape has to move to clear what is there.</summary>
    public double Clearance(IReadOnlyList<Mark> marks, bool above, double gap, double padding = 0.2) =>
        (above ? Upper : Lower).Clearance(marks.SelectMany(m => InkCover.Of(m)), gap, padding);
}
