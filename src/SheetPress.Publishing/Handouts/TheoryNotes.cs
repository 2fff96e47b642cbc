using System.Collections.Immutable;
using SheetPress.Lessons;

namespace SheetPress.Publishing;

/// <summary>Theory notes written from the analysis of a lesson's progression.</summary>
public static class TheoryNotes
{
    /// <summary>The paragraphs, as Markdown.</summary>
    public static ImmutableArray<string> For(Lesson lesson) => [];
}
