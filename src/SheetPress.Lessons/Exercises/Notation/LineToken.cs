using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>One word of a written line.</summary>
/// <param name="Word">The word with its place.</param>
internal abstract record LineToken(LocatedText Word);

/// <summary>A note value that holds for the notes after it.</summary>
internal sealed record ValueToken(LocatedText Word, NotePhrase Phrase) : LineToken(Word)
{
    public NoteValue Value => Phrase.Value;
}

/// <summary>Silence.</summary>
internal sealed record RestToken(LocatedText Word) : LineToken(Word);

/// <summary>The note before is held.</summary>
internal sealed record HoldToken(LocatedText Word) : LineToken(Word);

/// <summary>The bar before once more, written out or, as a simile, as the sign for it.</summary>
internal sealed record RepeatBarToken(LocatedText Word, bool IsSimile) : LineToken(Word);

/// <summary>A clef that holds from its bar on.</summary>
internal sealed record ClefToken(LocatedText Word, bool IsBass) : LineToken(Word);

/// <summary>A tempo that holds from its bar on, as written: what a bare number counts is known with the bar's meter.</summary>
internal sealed record TempoToken(LocatedText Word, LocatedText Tempo) : LineToken(Word);

/// <summary>A note or chord.</summary>
internal sealed record NoteToken(LocatedText Word, IReadOnlyList<ToneWord> Tones, StrokeMarks Marks, NeckPin Pin) : LineToken(Word);
