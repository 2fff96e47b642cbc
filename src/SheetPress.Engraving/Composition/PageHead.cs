namespace SheetPress.Engraving;

/// <summary>What the running head of a page says it is about: its exercises if it has any, else its first section.</summary>
internal static class PageHead
{
    /// <summary>The words; empty when there is nothing to say.</summary>
    /// <param name="running">What was running when the page began; null on the first page.</param>
    /// <param name="beginsAnew">Whether the page begins with something new, so that nothing runs on to it.</param>
    /// <param name="begun">What begins on the page, in order.</param>
    /// <param name="labels">Fixed words.</param>
    internal static string Of(HeadMark? running, bool beginsAnew, IReadOnlyList<HeadMark> begun, SheetLabels labels)
    {
        var all = new List<HeadMark>();
        if (running is not null && !beginsAnew) all.Add(running);
        all.AddRange(begun);
        var exercises = all.FindAll(m => m.IsExercise);
        if (exercises.Count == 0) return all.Count > 0 ? all[0].Text : "";
        var (first, last) = (exercises[0], exercises[^1]);
        return exercises.Count == 1 || first.Number.Length == 0 || last.Number.Length == 0 ? first.Text : $"{labels.Exercises} {first.Number}–{last.Number}";
    }
}
