using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>One note value as a teacher writes it: "dotted quarter", "2 eighths", "e3", "rq.", "triplet eighth rest".</summary>
/// <param name="Value">The value.</param>
internal sealed record NotePhrase(NoteValue Value)
{
    /// <summary>Notes of its tuplet, 0 outside tuplets.</summary>
    public int Tuplet { get; init; }

    /// <summary>Notes of the tuplet that lies within its tuplet, 0 where none does.</summary>
    public int InnerTuplet { get; init; }

    /// <summary>The time that it takes of its outer tuplet as that is written, in quarter notes; null where there is no inner one.</summary>
    public Fraction? InnerTime { get; init; }

    /// <summary>How many.</summary>
    public int Count { get; init; } = 1;

    /// <summary>Whether it is silent.</summary>
    public bool IsRest { get; init; }

    /// <summary>Whether it is a plural without a number: as many as fill the bar.</summary>
    public bool IsFill { get; init; }

    /// <summary>Its marks.</summary>
    public StrokeMarks Marks { get; init; }

    /// <summary>The words that can stand in a phrase, for suggestions.</summary>
    public static IEnumerable<string> Words => NotePhraseReader.Words;

    /// <summary>Reads one phrase from an index on and moves the index behind it, at least one word on.</summary>
    /// <param name="words">All words.</param>
    /// <param name="at">Index of the first word, below their number.</param>
    /// <param name="bag">Where problems go; null to try without reporting.</param>
    /// <returns>The phrase; null when none is there.</returns>
    public static NotePhrase? Read(ImmutableArray<LocatedText> words, ref int at, DiagnosticBag? bag)
    {
        var reader = new NotePhraseReader(words, at, bag ?? new DiagnosticBag(new SourceText("", "")));
        var phrase = reader.Read();
        at = reader.At;
        return phrase;
    }
}
