using System.Globalization;

namespace SheetPress.Engraving;

/// <summary>What the running head of a page says it is about: its exercises if it has any, else its first section.</summary>
/// <param name="Text">The words; empty when there is nothing to say.</param>
/// <param name="ShortText">Fewer words for a narrow page; the same where there are none.</param>
internal readonly record struct PageHead(string Text, string ShortText)
{
    /// <summary>The head of a page.</summary>
    /// <param name="running">What was running when the page began; null on the first page.</param>
    /// <param name="beginsAnew">Whether the page begins with something new, so that nothing runs on to it.</param>
    /// <param name="begun">What begins on the page, in order.</param>
    /// <param name="labels">Fixed words.</param>
    internal static PageHead Of(HeadMark? running, bool beginsAnew, IReadOnlyList<HeadMark> begun, SheetLabels labels)
    {
        var all = new List<HeadMark>();
        if (running is not null && !beginsAnew) all.Add(running);
        all.AddRange(begun);
        var exercises = all.FindAll(m => m.IsExercise);
        if (exercises.Count == 0) return all.Count > 0 ? new(all[0].Text, all[0].ShortText.Length > 0 ? all[0].ShortText : all[0].Text) : new("", "");
        var (first, last) = (exercises[0], exercises[^1]);
        if (exercises.Count == 1 || first.Number.Length == 0 || last.Number.Length == 0)
        {
            return new(first.Text, first.Number.Length > 0 ? string.Format(CultureInfo.InvariantCulture, labels.ExerciseShort, first.Number) : first.Text);
        }
        var range = $"{labels.Exercises} {first.Number}–{last.Number}";
        return new(range, range);
    }
}
