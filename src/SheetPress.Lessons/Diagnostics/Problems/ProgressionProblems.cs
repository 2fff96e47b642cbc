namespace SheetPress.Lessons;

/// <summary>What can be wrong with a written progression.</summary>
public static class ProgressionProblems
{
    /// <summary>Nothing in it.</summary>
    public static Problem NoBars() => Error(DiagnosticCodes.NoBars, "The progression is empty.", "Write bars such as 'Cm7 | Fm7 | G7 | Cm7 |'.");

    /// <summary>More bars than any piece has.</summary>
    public static Problem TooManyMeasures(int maximum) => Error(DiagnosticCodes.TooManyMeasures, $"A progression has at most {maximum} bars.", "Write what comes again as a repeat, or split the lesson.");

    /// <summary>A bar with nothing in it.</summary>
    public static Problem EmptyBar() => Error(DiagnosticCodes.EmptyBar, "There is nothing between these two bar lines.", "Write a chord, 'same' for the bar before once more, 'hold' to let the chord sound on, or 'N.C.' for no chord.");

    /// <summary>No chord symbol.</summary>
    public static Problem UnknownChord(string symbol, string reason, string? near) =>
        new(DiagnosticCodes.UnknownChord, Severity.Error, $"'{symbol}' is no chord symbol: {Clause(reason)}.", near is null ? "Write a root and a kind, as in C, Fm7, Bbmaj7, F#m7b5 or G7(b9)." : $"Did you mean {near}?") { Suggestion = near };

    /// <summary>A sign or a number where a chord should be.</summary>
    public static Problem SignForChord(string text) =>
        Error(DiagnosticCodes.SignForChord, $"'{text}' is no chord.", "Write 'hold' to let a chord sound on, 'same' for the bar before once more, and beats behind a colon: Cm7:2.");

    /// <summary>No roman numeral.</summary>
    public static Problem UnknownRoman(string numeral, string reason, string? near) =>
        new(DiagnosticCodes.UnknownRoman, Severity.Error, $"'{numeral}' is no roman numeral: {Clause(reason)}.", near is null ? "Write capitals for major and small letters for minor, as in I, ii7, V7, bVII, viiø7 or V7/ii." : $"Did you mean {near}?") { Suggestion = near };

    /// <summary>A run of bar signs that means nothing.</summary>
    public static Problem UnknownBarline() => Error(DiagnosticCodes.UnknownBarline, "This is no bar line.", "Write |, || or the repeat signs |: and :|.");

    /// <summary>A bracket that is not closed on its line.</summary>
    public static Problem UnclosedMark() => Error(DiagnosticCodes.UnclosedMark, "The bracket that opens here is not closed on its line.", "Write ']' behind the mark.");

    /// <summary>Nothing in the bracket.</summary>
    public static Problem EmptyMark() => Error(DiagnosticCodes.EmptyMark, "There is nothing in this bracket.", "Write a rehearsal mark such as [A], a meter such as [3/4], or [key G minor].");

    /// <summary>Nearly one of the words for marks.</summary>
    public static Problem UnknownMark(string text, string near) => new(DiagnosticCodes.UnknownMark, Severity.Error, $"'{text}' is no mark.", $"Did you mean [{near}]?") { Suggestion = near };

    /// <summary>A change of key that does not say which.</summary>
    public static Problem UnknownKeyForMark(string text) => Error(DiagnosticCodes.UnknownMark, $"'{text}' is no mark.", "A new key is written as in [key D] or [key G minor].");

    /// <summary>A repeat in words.</summary>
    public static Problem RepeatForMark(string text, string? times) =>
        Error(DiagnosticCodes.UnknownMark, $"'{text}' is no mark.", $"Write |: where the repeat starts and :|{(times is null ? "" : " x" + times)} where it ends.");

    /// <summary>A clef in a progression.</summary>
    public static Problem ClefForMark(string text) => Error(DiagnosticCodes.UnknownMark, $"'{text}' is no mark of a progression.", "Clefs change in a line of your own: [treble clef] at the front of one of its bars.");

    /// <summary>Words over the music that would be boxed like a rehearsal mark.</summary>
    public static Problem WordsForMark(string text) =>
        new(DiagnosticCodes.WordsForMark, Severity.Warning, $"'{text}' is printed as a rehearsal mark and changes nothing.", $"Write [\"{text}\"] for words over the music, [tempo 60] for a new tempo.");

    /// <summary>A rehearsal mark as long as a sentence.</summary>
    public static Problem LongLabel() => Error(DiagnosticCodes.LongLabel, "A rehearsal mark has at most 24 letters.", "Write a short name, and the rest in the notes.");

    /// <summary>Long words over the music.</summary>
    public static Problem LongWords() => Error(DiagnosticCodes.LongLabel, "Words over the music have at most 60 letters.", "Write a few words, and the rest in the notes.");

    /// <summary>A mark that belongs before the bar's chords.</summary>
    public static Problem MarkBehindChord(string text) => Error(DiagnosticCodes.MarkBehindChord, $"'[{text}]' has to stand before the first chord of its bar.", "Move it to the front of the bar, or into a bar of its own.");

    /// <summary>The same change twice in a bar.</summary>
    public static Problem ChangeTwice(string what) => Error(DiagnosticCodes.ChangeTwice, $"This bar has a {what} before this one already.", "Keep one of the two, or put the second into a bar of its own.");

    /// <summary>Two tempos for the start.</summary>
    public static Problem TempoTwice() => Error(DiagnosticCodes.TempoTwice, "The first bar of the progression states a tempo too.", "Keep one of the two.");

    /// <summary>An equation of note values with no bar before it.</summary>
    public static Problem EquationAtStart() => Error(DiagnosticCodes.EquationAtStart, "The left value of an equation is that of the bar before, and no bar stands before this one.", "Write the tempo as a number, as in tempo 90, or move the equation to the bar where the tempo changes.");

    /// <summary>A mark with no bar.</summary>
    public static Problem NoBarForMark() => Error(DiagnosticCodes.NoBarForMark, "No bar follows this mark.", "Write the bar it is for, or take it away.");

    /// <summary>A pickup of no length.</summary>
    public static Problem PickupLength() => Error(DiagnosticCodes.PickupLength, "A pickup needs its length in beats.", "Write for example [pickup 1] or [pickup 1.5].");

    /// <summary>A pickup later on.</summary>
    public static Problem PickupNotFirst() => Error(DiagnosticCodes.PickupNotFirst, "Only the first bar can be a pickup, and its length comes before its chord.", "Move it to the very start, or change the meter for this bar: [2/4].");

    /// <summary>A pickup as long as a bar.</summary>
    public static Problem PickupTooLong(string meter) => Error(DiagnosticCodes.PickupTooLong, $"A pickup is shorter than a bar of {meter}.", "Give it fewer beats, or leave [pickup] away.");

    /// <summary>Beats that are no number.</summary>
    public static Problem BadBeats() => Error(DiagnosticCodes.BadBeats, "After the colon comes a number of beats.", "Write for example Cm7:3, or Cm7:1.5; quarters of a beat are the finest.");

    /// <summary>Beats of nothing.</summary>
    public static Problem BeatsWithoutChord() => Error(DiagnosticCodes.BeatsWithoutChord, "These beats belong to no chord.", "Write the chord, or 'hold', before the colon.");

    /// <summary>More beats than the bar has.</summary>
    public static Problem TooManyBeats(string given, string has, bool othersWait) =>
        Error(DiagnosticCodes.TooManyBeats, $"The beats given in this bar add up to {given}, and the bar has {has}{(othersWait ? ", with chords still to share what is left" : "")}.", $"Make them add up to {has}.");

    /// <summary>Fewer beats than the bar has.</summary>
    public static Problem TooFewBeats(string given, string has) =>
        Error(DiagnosticCodes.TooFewBeats, $"The beats given in this bar add up to {given}, and the bar has {has}.", "Make them add up, or leave the beats of one chord away: it takes the rest.");

    /// <summary>Chords that do not share a bar evenly, and how they were taken.</summary>
    public static Problem SharesUneven(int chords, string units, string taken) =>
        new(DiagnosticCodes.SharesUnclear, Severity.Warning, $"{chords} chords do not share {units} beats equally; they are taken as {taken}.", "Write the beats behind the chords, like that or as you want them.");

    /// <summary>More chords than a bar can hold.</summary>
    public static Problem TooManyChords(int chords, string units) =>
        Error(DiagnosticCodes.SharesUnclear, $"{chords} chords are too many for {units} beats.", "Part the bars with |, as in C | F | G7 | C.");

    /// <summary>A symbol that people use in two ways.</summary>
    public static Problem TwoMeanings(string symbol, string taken, string other) =>
        new(DiagnosticCodes.TwoMeanings, Severity.Warning, $"'{symbol}' is taken as {taken}.", $"Write {taken} to be sure, or {other} if you mean that.") { Suggestion = taken };

    /// <summary>The kind of a chord, a blank away from its root.</summary>
    public static Problem KindAlone(string kind, string whole) =>
        new(DiagnosticCodes.UnknownChord, Severity.Error, $"'{kind}' has no root.", $"Write root and kind without a blank between them: {whole}.") { Suggestion = whole };

    /// <summary>Chords joined by something else than a blank.</summary>
    public static Problem ChordsJoined(string text, string parted) =>
        new(DiagnosticCodes.UnknownChord, Severity.Error, $"'{text}' looks like several chords in one word.", $"Write blanks between chords of one bar and | between bars: {parted}.") { Suggestion = parted };

    /// <summary>A quotation mark that is none for the file.</summary>
    public static Problem CurlyQuote(string text) => Error(DiagnosticCodes.UnknownChord, $"'{text}' holds a curly quotation mark, which counts as a letter here.", "Leave the quotation marks away, or write straight ones.");

    /// <summary>The name of a part where a chord should be.</summary>
    public static Problem NameForChord(string text) => Error(DiagnosticCodes.UnknownChord, $"'{text}' is no chord.", $"Write the name of a part in square brackets at the front of its first bar: [{text}].");

    /// <summary>A dash or an arrow between chords.</summary>
    public static Problem SignBetweenChords(string text) => Error(DiagnosticCodes.SignForChord, $"'{text}' does not stand between chords.", "Write | between bars, and a blank between chords that share a bar: C | F G | Am.");

    /// <summary>A degree of the key as a plain number.</summary>
    public static Problem NumberForChord(string text, string numeral) =>
        new(DiagnosticCodes.SignForChord, Severity.Error, $"'{text}' is no chord.", $"Degrees of the key are written as roman numerals, {numeral}; beats go behind a colon: Cm7:2.") { Suggestion = numeral };

    /// <summary>A number of times with no repeat before it.</summary>
    public static Problem TimesWithoutRepeat(string text) => Error(DiagnosticCodes.TimesWithoutRepeat, $"'{text}' stands behind no repeat sign.", $"Write |: where the repeat starts and :| {text} where it ends.");

    /// <summary>No bar before.</summary>
    public static Problem NothingBefore() => Error(DiagnosticCodes.NothingBefore, "There is no bar before this one that could be the same.", "Write the chord.");

    /// <summary>No chord before.</summary>
    public static Problem NothingToHold() => Error(DiagnosticCodes.NothingToHold, "There is no chord before this that could be held.", "Write the chord.");

    /// <summary>'same' beside other chords.</summary>
    public static Problem SameNotAlone() => Error(DiagnosticCodes.SameNotAlone, "'same' stands for the whole bar before and cannot share its bar.", "Write the chords, or 'hold' to let one sound on.");

    /// <summary>'same' with beats.</summary>
    public static Problem SameWithBeats() => Error(DiagnosticCodes.SameWithBeats, "'same' takes no beats: the bar is like the one before.", "Leave the colon and the number away.");

    /// <summary>'same' in another meter.</summary>
    public static Problem SameInOtherLength() => Error(DiagnosticCodes.SameInOtherLength, "This bar is not as long as the one before, so it cannot be the same.", "Write its chords.");

    /// <summary>A repeat with nothing in it.</summary>
    public static Problem RepeatOfNothing() => Error(DiagnosticCodes.RepeatOfNothing, "There is nothing before this sign to repeat.", "Write |: where a repeat starts and :| where it ends.");

    /// <summary>A repeat that is never closed.</summary>
    public static Problem RepeatNotClosed() => Error(DiagnosticCodes.RepeatNotClosed, "The repeat that starts here is never closed.", "Write :| where it ends.");

    /// <summary>Times out of range.</summary>
    public static Problem BadTimes() => Error(DiagnosticCodes.BadTimes, "A repeat is played 2 to 20 times.", "Write for example :| x3.");

    /// <summary>Times beside endings.</summary>
    public static Problem TimesWithEndings() => Error(DiagnosticCodes.TimesWithEndings, "The endings say already how often this is played.", "Leave the times away, or give the ending more numbers: 1-2.");

    /// <summary>An ending that starts inside a bar.</summary>
    public static Problem EndingInsideBar() => Error(DiagnosticCodes.EndingInsideBar, "An ending starts at the front of a bar.", "Write its number right behind the bar line.");

    /// <summary>Endings out of order.</summary>
    public static Problem EndingOutOfOrder(int wanted) => Error(DiagnosticCodes.EndingOutOfOrder, "This ending is out of order.", $"Ending {wanted}. comes next here.");

    /// <summary>An ending before another that does not go back.</summary>
    public static Problem EndingWithoutRepeat() => Error(DiagnosticCodes.EndingWithoutRepeat, "Another ending follows this one, but nothing goes back in between.", "Write :| at its end.");

    /// <summary>A last ending that goes back.</summary>
    public static Problem LastEndingRepeats() => Error(DiagnosticCodes.LastEndingRepeats, "This is the last ending, yet it goes back.", "Write | instead, or the ending that follows.");

    /// <summary>A D.S. with no segno before it.</summary>
    public static Problem NoSegno(string jump) =>
        Lost($"'{jump}' goes back to a segno, and none stands before it.", "Write [segno] at the front of the bar to go back to, or D.C. in place of D.S. for the very start.");

    /// <summary>A jump "al Fine" that meets no Fine.</summary>
    public static Problem NoFine(string jump) =>
        Lost($"'{jump}' ends at a Fine, and it comes to none.", $"Write [fine] in the bar to end with, or [{jump[..4]}] alone to play on to the last bar.");

    /// <summary>A jump "al Coda" that meets no To Coda.</summary>
    public static Problem NoToCoda(string jump, bool hasCoda) =>
        Lost($"'{jump}' leaves for the coda at a To Coda, and it comes to none.", $"Write [to coda] in the bar to leave from{(hasCoda ? "" : ", and [coda] at the front of the bar to go to")}.");

    /// <summary>A To Coda with no coda behind it.</summary>
    public static Problem NoCoda() => Lost("This To Coda leads to a coda, and none follows.", "Write [coda] at the front of the bar to go to.");

    /// <summary>A segno that no D.S. goes back to.</summary>
    public static Problem UnusedSegno() => Unused("No D.S. goes back to this segno.", "Write [D.S.], [D.S. al Fine] or [D.S. al Coda] in the bar to go back from, or take the sign away.");

    /// <summary>A Fine that no jump ends at.</summary>
    public static Problem UnusedFine() => Unused("No jump ends at this Fine, so it is played past.", "Write [D.C. al Fine] or [D.S. al Fine] in the bar to go back from, or take it away.");

    /// <summary>A To Coda that no jump leaves from.</summary>
    public static Problem UnusedToCoda() => Unused("No jump leaves from this To Coda, so it is played past.", "Write [D.C. al Coda] or [D.S. al Coda] in the bar to go back from, or take it away.");

    /// <summary>A coda that no To Coda leads to.</summary>
    public static Problem UnusedCoda() => Unused("No To Coda leads to this coda.", "Write [to coda] in the bar to leave from, or take the sign away.");

    private static string Clause(string reason) => reason.Length > 1 && char.IsUpper(reason[0]) && (char.IsLower(reason[1]) || reason[1] == ' ') ? char.ToLowerInvariant(reason[0]) + reason[1..] : reason;

    private static Problem Lost(string message, string advice) => new(DiagnosticCodes.JumpWithoutGoal, Severity.Warning, message, advice);

    private static Problem Unused(string message, string advice) => new(DiagnosticCodes.SignWithoutJump, Severity.Warning, message, advice);

    private static Problem Error(string code, string message, string advice) => new(code, Severity.Error, message, advice);
}
