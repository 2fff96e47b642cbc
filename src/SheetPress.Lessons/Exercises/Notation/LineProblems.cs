using System.Globalization;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>The messages about written lines.</summary>
internal static class LineProblems
{
    public static Problem UnknownNote(string word, string? suggestion) =>
        new("unknown-note", Severity.Error, $"\"{word}\" is no note of a line.", "Write a degree (R b3 5 8), a pitch (Eb2), rest, or - to hold.") { Suggestion = suggestion };

    public static Problem LowerCasePitch(string word) =>
        new("unknown-note", Severity.Error, $"\"{word}\" is no note of a line.", "Pitches are written with a capital letter; b7 is a flat seventh.") { Suggestion = char.ToUpperInvariant(word[0]) + word[1..] };

    public static Problem UnknownMark(string word, string? suggestion) =>
        new("unknown-mark", Severity.Error, $"\"{word}\" is no mark of a note.", "Marks are accent, ghost, thumb, pop, hammer, pull, slide and others, or string3 and fret5.") { Suggestion = suggestion };

    public static Problem EmptyLine() =>
        new("empty-line", Severity.Error, "The line has no notes.", "Write at least one bar, such as: q R 5 8 5");

    public static Problem EmptyBar(int bar) =>
        new("empty-bar", Severity.Error, $"Bar {bar} of the line is empty.", "Write its notes, rest for silence, or % to play the bar before again.");

    public static Problem NothingToRepeat() =>
        new("nothing-to-repeat", Severity.Error, "There is no bar before this one to repeat.", "Write out the first bar.");

    public static Problem RepeatAmongNotes() =>
        new("repeat-among-notes", Severity.Error, "% stands for a whole bar and cannot share it with notes.", "Put it alone between two bar lines.");

    public static Problem BarLength(int bar, Fraction has, Fraction needs, Meter meter) => new(
        "bar-length",
        Severity.Error,
        $"Bar {bar} of the line has {Beats(has, meter)}; a bar of {meter} here has {Beats(needs, meter)}.",
        has > needs ? "Take notes out, shorten them, or part the bars with |." : "Add notes, longer values, or a rest.");

    public static Problem StrokeCount(int bar, int has, int needs) => new(
        "bar-strokes",
        Severity.Error,
        $"Bar {bar} of the line has {Notes(has)}, and the rhythm has {Notes(needs)} there.",
        "Write one note for each stroke of the rhythm, or - where the note before is held.");

    public static Problem CannotShare(int bar, int notes) => new(
        "no-rhythm",
        Severity.Error,
        $"The {Notes(notes)} of bar {bar} cannot share the bar in equal written values.",
        "Write values before them (q R e 5 8), or give the exercise a rhythm.");

    public static Problem RhythmTwice() =>
        new("rhythm-twice", Severity.Error, "The line has note values of its own, and the exercise has a rhythm too.", "Keep one of the two.");

    public static Problem MissingValue() =>
        new("missing-value", Severity.Error, "This note stands before the first note value of the line.", "Put a value in front of it, as in: q R 5 e 8 5");

    public static Problem TooManyBars(int line, int progression) => new(
        "too-many-bars",
        Severity.Error,
        $"The line has {line} bars, and the progression has {progression}.",
        "Take bars out, or add chords to the progression.");

    public static Problem UnevenRepeat(int line, int progression) => new(
        "uneven-repeat",
        Severity.Warning,
        $"The line of {line} bars does not go evenly into the {progression} bars of the progression: its last round is cut.",
        "");

    public static Problem OtherLength(int bar) => new(
        "bar-length",
        Severity.Error,
        $"When the line starts over, bar {bar} of the progression is not as long as the bar written for it.",
        "Write the line out to the end of the progression.");

    public static Problem NoChord(string word, int bar) => new(
        "no-chord",
        Severity.Error,
        $"No chord sounds at \"{word}\" in bar {bar}, so the degree has nothing to be counted from.",
        "Write a pitch, or rest.");

    public static Problem NoNextChord(string word, int bar) => new(
        "no-next-chord",
        Severity.Error,
        $"No chord follows \"{word}\" in bar {bar}.",
        "Write a degree of the chord instead.");

    public static Problem OffTheNeck(string pitch, string instrument) => new(
        "off-the-neck",
        Severity.Error,
        $"{pitch} is not on the neck of the {instrument}, or not within the frets and strings of this exercise.",
        "Write it in another octave, or allow more of the neck.");

    public static Problem PinMisses(string pitch, string place) => new(
        "pin-misses",
        Severity.Error,
        $"{pitch} does not lie on {place}.",
        "Leave out the string or the fret, or correct it.");

    public static Problem NoSuchString(int number, int strings) =>
        new("no-such-string", Severity.Error, $"There is no string {number} on this instrument.", string.Create(CultureInfo.InvariantCulture, $"Strings are numbered from 1, the highest, to {strings}."));

    private static string Notes(int count) => count == 1 ? "one note" : string.Create(CultureInfo.InvariantCulture, $"{count} notes");

    private static string Beats(Fraction quarters, Meter meter)
    {
        var beats = quarters / meter.UnitLength;
        var whole = beats.Floor;
        var part = beats - new Fraction(whole);
        var text = part == Fraction.Zero ? whole.ToString(CultureInfo.InvariantCulture) : whole == 0 ? part.ToString() : string.Create(CultureInfo.InvariantCulture, $"{whole} {part}");
        return beats == Fraction.One ? "1 beat" : $"{text} beats";
    }
}
