using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>A display list: marks in drawing order, in one unit, y downward.</summary>
/// <param name="Marks">The marks, first drawn first.</param>
public sealed record Drawing(ImmutableArray<Mark> Marks)
{
    /// <summary>A drawing of nothing.</summary>
    public static Drawing Nothing { get; } = new([]);

    /// <summary>The box of all ink.</summary>
    public Box Bounds => Box.Around(Marks.Select(m => m.Bounds));

    /// <summary>The drawing scaled about its origin, then moved.</summary>
    public Drawing Transform(double scale, double dx, double dy) => new([.. Marks.Select(m => m.Transform(scale, dx, dy))]);
}

/// <summary>One finished page.</summary>
/// <param name="Width">Width in millimetres.</param>
/// <param name="Height">Height in millimetres.</param>
/// <param name="Drawing">The marks, in millimetres from the top left corner.</param>
public sealed record Page(double Width, double Height, Drawing Drawing);

/// <summary>An entry of the document outline.</summary>
/// <param name="Title">Text of the bookmark.</param>
/// <param name="PageIndex">Page, from 0.</param>
/// <param name="Top">Millimetres from the top of the page.</param>
/// <param name="Level">0 for the outermost.</param>
public sealed record Bookmark(string Title, int PageIndex, double Top, int Level = 0);

/// <summary>A finished document, ready for any writer.</summary>
public sealed record SheetDocument
{
    /// <summary>Title of the document.</summary>
    public required string Title { get; init; }
    /// <summary>Author; may be empty.</summary>
    public string Author { get; init; } = "";
    /// <summary>Language tag (BCP 47) of the text.</summary>
    public string Language { get; init; } = "en";
    /// <summary>The pages.</summary>
    public required ImmutableArray<Page> Pages { get; init; }
    /// <summary>The outline.</summary>
    public ImmutableArray<Bookmark> Bookmarks { get; init; } = [];
}
