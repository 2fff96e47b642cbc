using System.Globalization;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>The messages about written lines.</summary>
internal static class LineProblems
{
    public static Problem UnknownNote(string word, string? suggestion) =>
        new(DiagnosticCodes.UnknownNote, Severity.Error, $"\"{word}\" is no note of a line.",
            suggestion is null ? "Write a degree (R b3 5 8), a pitch (Eb2), rest, or - to hold." : $"Did you mean '{suggestion}'?")
        { Suggestion = suggestion };

    public static Problem LowerCasePitch(string word) =>
        new(DiagnosticCodes.UnknownNote, Severity.Error, $"\"{word}\" is no note of a line.",
            $"Pitches are written with a capital letter, since b7 is a flat seventh: write {char.ToUpperInvariant(word[0])}{word[1..]}.")
        { Suggestion = char.ToUpperInvariant(word[0]) + word[1..] };

    public static Problem EmptyLine() =>
        new(DiagnosticCodes.EmptyLine, Severity.Error, "The line has no notes.", "Write at least one bar, such as: q R 5 8 5");

    public static Problem EmptyBar(int bar) =>
        new(DiagnosticCodes.EmptyBar, Severity.Error, $"Bar {bar} of the line is empty.", "Write its notes, rest for silence, or same to play the bar before again.");

    public static Problem NothingToRepeat() =>
        new(DiagnosticCodes.NothingToRepeat, Severity.Error, "There is no bar before this one to repeat.", "Write out the first bar.");

    public static Problem RepeatAmongNotes(string word) =>
        new(DiagnosticCodes.RepeatAmongNotes, Severity.Error, $"{word} stands for a whole bar and cannot share it with notes.", "Put it alone between two bar lines.");

    public static Problem BarLength(int bar, Fraction has, Fraction needs, Meter meter) => new(
        DiagnosticCodes.BarLength,
        Severity.Error,
        $"Bar {bar} of the line has {Beats(has, meter)}; a bar of {meter} here has {Beats(needs, meter)}.",
        has > needs ? "Take notes out, shorten them, or part the bars with |." : "Add notes, longer values, or a rest.");

    public static Problem StrokeCount(int bar, int has, int needs) => new(
        DiagnosticCodes.BarStrokes,
        Severity.Error,
        $"Bar {bar} of the line has {Notes(has)}, and the rhythm has {Notes(needs)} there.",
        "Write one note for each stroke of the rhythm, or - where the note before is held.");

    public static Problem CannotShare(int bar, int notes) => new(
        DiagnosticCodes.NoRhythm,
        Severity.Error,
        $"The {Notes(notes)} of bar {bar} cannot share the bar in equal written values.",
        "Write values before them (q R e 5 8), or give the exercise a rhythm.");

    public static Problem RhythmTwice() =>
        new(DiagnosticCodes.RhythmTwice, Severity.Error, "The line has note values of its own, and the exercise has a rhythm too.", "Keep one of the two.");

    public static Problem MissingValue() =>
        new(DiagnosticCodes.MissingValue, Severity.Error, "This note stands before the first note value of the line.", "Put a value in front of it, as in: q R 5 e 8 5");

    public static Problem TooManyBars(int line, int progression) => new(
        DiagnosticCodes.TooManyBars,
        Severity.Error,
        $"The line has {line} bars, and the progression has {progression}.",
        "Take bars out, or add chords to the progression.");

    public static Problem UnevenRepeat(int line, int progression) => new(
        DiagnosticCodes.UnevenRepeat,
        Severity.Warning,
        $"The line of {line} bars does not go evenly into the {progression} bars of the progression: its last round is cut.",
        "");

    public static Problem OtherLength(int bar) => new(
        DiagnosticCodes.BarLength,
        Severity.Error,
        $"When the line starts over, bar {bar} of the progression is not as long as the bar written for it.",
        "Write the line out to the end of the progression.");

    public static Problem NoChord(string word, int bar) => new(
        DiagnosticCodes.NoChord,
        Severity.Error,
        $"No chord sounds at \"{word}\" in bar {bar}, so the degree has nothing to be counted from.",
        "Write a pitch, or rest.");

    public static Problem NoNextChord(string word, int bar) => new(
        DiagnosticCodes.NoNextChord,
        Severity.Error,
        $"No chord follows \"{word}\" in bar {bar}.",
        "Write a degree of the chord instead.");

    public static Problem OffTheNeck(string pitch, string instrument) => new(
        DiagnosticCodes.OffTheNeck,
        Severity.Error,
        $"{pitch} is not on the neck of the {instrument}, or not within the frets and strings of this exercise.",
        "Write it in another octave, or allow more of the neck.");

    public static Problem PinMisses(string pitch, string place) => new(
        DiagnosticCodes.PinMisses,
        Severity.Error,
        $"{pitch} does not lie on {place}.",
        "Leave out the string or the fret, or correct it.");

    public static Problem NoSuchString(int number, int strings) =>
        new(DiagnosticCodes.NoSuchString, Severity.Error, $"There is no string {number} on this instrument.", string.Create(CultureInfo.InvariantCulture, $"Strings are numbered from 1, the highest, to {strings}."));

    public static Problem NoSuchFinger(int number) =>
        new(DiagnosticCodes.NoSuchFinger, Severity.Error, string.Create(CultureInfo.InvariantCulture, $"There is no finger {number}."), "Fingers of the fretting hand are 1 (index) to 4 (little finger).");

    public static Problem FingerOfMany() =>
        new(DiagnosticCodes.NoSuchFinger, Severity.Error, "One finger cannot be given to several notes at once.", "Leave the finger out: chords are fingered as a whole.");

    public static Problem NoHarmonic(string pitch, string instrument) => new(
        DiagnosticCodes.NoHarmonic,
        Severity.Error,
        $"{pitch} is no natural harmonic of an open string of the {instrument}, or not where it is asked for.",
        "Harmonics lie at frets 12 (an octave above the open string), 7 (an octave and a fifth) and 5 (two octaves).");

    public static Problem LostConnection(LostConnection lost)
    {
        var (name, side, other, way) = lost.Connection switch
        {
            Connection.HammerOn => ("hammer-on", "higher", "pull", "down"),
            Connection.PullOff => ("pull-off", "lower", "hammer", "up"),
            _ => ("slide", "another one", "", ""),
        };
        var (reason, advice) = lost.Reason switch
        {
            LostReason.NothingFollows => ($"No note follows the {name}, so it is left out.", "Write the note that it leads to right behind it, or take the mark away."),
            LostReason.WrongSide => ($"The {name} is left out: the next note is not {side}.", $"Write {other} for the way {way}."),
            LostReason.OthersAreStruck => ($"The {name} is left out: more notes sound next than it can bring, so they are struck.", "Lead from as many notes to as many, or take the mark away."),
            _ => ($"The {name} is left out: the next note is not {side}.", "Take the mark away, or change one of the notes."),
        };
        return new(DiagnosticCodes.LostConnection, Severity.Warning, reason, advice);
    }

    public static Problem SlurHasNoEnd() =>
        new(DiagnosticCodes.OpenSlur, Severity.Error, "The slur that starts here has no end.", "Mark its last note with end-slur.");

    public static Problem SlurHasNoStart() =>
        new(DiagnosticCodes.OpenSlur, Severity.Error, "No slur is open here.", "Mark its first note with slur.");

    public static Problem SlurInSlur() =>
        new(DiagnosticCodes.OpenSlur, Severity.Error, "A slur starts here before the one ahead of it has ended.", "End the first one with end-slur.");

    public static Problem UnknownChange(string text, string? near) =>
        new(DiagnosticCodes.UnknownMark, Severity.Error, $"'{text}' is no change of a line.", near is null ? "Write [bass clef], [treble clef], or a tempo such as [tempo 60]." : $"Did you mean [{near}]?") { Suggestion = near };

    public static Problem ChangeBehindNote(string text) =>
        new(DiagnosticCodes.MarkBehindChord, Severity.Error, $"'{text}' has to stand before the first note of its bar.", "Move it to the front of the bar, or into a bar of its own.");

    public static Problem ChangeInPattern() =>
        new(DiagnosticCodes.MisplacedChange, Severity.Error, "A pattern goes over any bar and changes neither clef nor tempo.", "Write it into a line of your own, or into the progression.");

    public static Problem ChangeInLower() =>
        new(DiagnosticCodes.MisplacedChange, Severity.Error, "Both voices share a staff and a tempo.", "Write the change into the line above.");

    public static Problem TempoAtStart() =>
        new(DiagnosticCodes.MisplacedChange, Severity.Error, "The tempo at the start is that of the exercise.", "Write it beside the line, as in tempo: 60, or put it into a later bar.");

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
