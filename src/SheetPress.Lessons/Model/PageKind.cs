using System.Collections.Immutable;

namespace SheetPress.Lessons;

/// <summary>What kind of pages a lesson is to be set on.</summary>
public enum PageKind
{
    /// <summary>Loose sheets for a student.</summary>
    Handout,

    /// <summary>Pages of a bound book.</summary>
    Book,

    /// <summary>Loose sheets for a reader who sees little.</summary>
    LargePrint,
}

/// <summary>The words for kinds of pages, the same in a lesson and on the command line.</summary>
public static class PageKinds
{
    /// <summary>Each word and what it means.</summary>
    public static ImmutableArray<(string Word, PageKind Kind)> Words { get; } =
        [("handout", PageKind.Handout), ("book", PageKind.Book), ("large-print", PageKind.LargePrint)];

    /// <summary>The kind of a word; null for none.</summary>
    public static PageKind? Find(string word)
    {
        foreach (var (known, kind) in Words) if (known.Equals(word, StringComparison.OrdinalIgnoreCase)) return kind;
        return null;
    }
}
