using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>One chord, numeral or word of a bar as it is written.</summary>
/// <param name="Text">The chord, numeral or word, its beats left out.</param>
/// <param name="Beats">Beats given, in the meter's beat unit; null when the bar is shared out.</param>
/// <param name="Span">Where it stands, its beats included.</param>
internal sealed record WrittenChord(LocatedText Text, Fraction? Beats, SourceSpan Span);

/// <summary>A mark of a bar as it is written.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Text">Its words as they are printed; empty for a sign.</param>
/// <param name="Span">Where it stands.</param>
internal sealed record WrittenMark(DirectionKind Kind, string Text, SourceSpan Span);

/// <summary>One bar as it is written.</summary>
internal sealed class WrittenBar
{
    /// <summary>Its chords in order.</summary>
    public List<WrittenChord> Chords { get; } = [];

    /// <summary>Where it stands.</summary>
    public SourceSpan Span { get; set; }

    /// <summary>A new meter from here on.</summary>
    public Meter? Meter { get; set; }

    /// <summary>A new key from here on, as written.</summary>
    public Key? Key { get; set; }

    /// <summary>A new tempo from here on, as written: what a bare number counts is known once the meter is.</summary>
    public LocatedText? Tempo { get; set; }

    /// <summary>Length of a pickup in beats of the meter; null for a whole bar.</summary>
    public Fraction? Pickup { get; set; }

    /// <summary>Marks at its start.</summary>
    public List<WrittenMark> StartMarks { get; } = [];

    /// <summary>Marks at its end.</summary>
    public List<WrittenMark> EndMarks { get; } = [];

    /// <summary>Whether a new system is wanted.</summary>
    public bool BreakBefore { get; set; }

    /// <summary>Whether a repeat starts.</summary>
    public bool RepeatStart { get; set; }

    /// <summary>Where the sign that starts it stands.</summary>
    public SourceSpan RepeatStartSpan { get; set; }

    /// <summary>Whether a repeat ends.</summary>
    public bool RepeatEnd { get; set; }

    /// <summary>Where the sign that ends it stands.</summary>
    public SourceSpan RepeatEndSpan { get; set; }

    /// <summary>Times the repeat that ends here is played; null when not said.</summary>
    public int? Times { get; set; }

    /// <summary>Whether a double barline ends it.</summary>
    public bool DoubleBarline { get; set; }

    /// <summary>Numbers of the ending that starts here.</summary>
    public ImmutableArray<int> Ending { get; set; } = [];

    /// <summary>Where the ending's numbers stand.</summary>
    public SourceSpan EndingSpan { get; set; }

    /// <summary>Whether anything but chords was said about it.</summary>
    public bool HasMarks => Meter is not null || Key is not null || Tempo is not null || Pickup is not null || StartMarks.Count > 0 || BreakBefore || RepeatStart || !Ending.IsEmpty;
}
