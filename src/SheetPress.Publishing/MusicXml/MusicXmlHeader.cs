using SheetPress.Lessons;

namespace SheetPress.Publishing;

/// <summary>What a MusicXML file says about itself beside the music. Nothing is filled in from a clock or a machine.</summary>
public sealed record MusicXmlHeader
{
    /// <summary>Title of the lesson.</summary>
    public required string Title { get; init; }

    /// <summary>A second line under the title; empty for none.</summary>
    public string Subtitle { get; init; } = "";

    /// <summary>Who made the lesson; empty for nobody named.</summary>
    public string Author { get; init; } = "";

    /// <summary>The line of rights; empty for none.</summary>
    public string Rights { get; init; } = "";

    /// <summary>The day to state as day of encoding; null leaves it out, so that equal lessons give equal files.</summary>
    public DateOnly? Date { get; init; }

    /// <summary>The header of a lesson.</summary>
    public static MusicXmlHeader Of(Lesson lesson) => new() { Title = lesson.Title, Subtitle = lesson.Subtitle, Author = lesson.Author };
}
