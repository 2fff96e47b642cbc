using System.Text;

namespace SheetPress.Theory;

/// <summary>
/// Recognises a twelve-bar blues: three lines of four bars that begin on the tonic, the subdominant, and the dominant or the chord before
/// it, with the tonic back in the seventh and eleventh bars. The definition and its variants are common practice.
/// </summary>
internal sealed class BluesFinder(IReadOnlyList<IReadOnlyList<Chord>> bars, int start, Key key, HarmonyWording wording)
{
    /// <summary>The form, or null where the twelve bars from the start are none.</summary>
    internal BluesForm? Find()
    {
        if (start < 0 || start + BluesForm.Bars > bars.Count) return null;
        for (var i = 1; i <= BluesForm.Bars; i++) if (Bar(i).Count == 0) return null;
        if (Above(First(1)) != 0 || First(1).Quality.Shape.Third is null || !HasFirstLine() || !HasSecondLine() || !HasThirdLine()) return null;
        var kind = First(1).Quality.IsPlainMinor() ? BluesKind.Minor
            : Above(First(9)) == 2 && !First(9).Quality.IsDominantSeventh() ? BluesKind.Jazz : BluesKind.Major;
        return new BluesForm(kind, start, Describe(kind));
    }

    // Bars are counted from 1, as players count them.
    private IReadOnlyList<Chord> Bar(int number) => bars[start + number - 1];

    private Chord First(int number) => Bar(number)[0];

    private Chord Last(int number) => Bar(number)[^1];

    private int Above(Chord chord) => Steps.Up(key.Tonic, chord.Root);

    private bool IsTonic(Chord chord) => Above(chord) == 0;

    private bool IsSubdominant(Chord chord) => Above(chord) == 5;

    private bool IsDominant(Chord chord) => Above(chord) == 7 && !chord.Quality.IsPlainMinor();

    // Another chord round to the tonic seventh, which leads into the second line.
    private bool LeadsOn => Bar(4).Count > 1 && !IsTonic(First(4)) && IsTonic(Last(4)) && Last(4).Quality.IsDominantSeventh();

    private bool StaysHome => Above(First(2)) is 0 or 5 && IsTonic(First(3)) && IsTonic(Last(4));

    // A tonic with a major seventh is the home of other songs, unless it goes round to the seventh chord.
    private bool HasFirstLine() => StaysHome ? LeadsOn || First(1).Quality.IsPlainMinor() || First(1).Quality.Shape.Seventh is not { Alteration: 0 } : LeadsOn;

    // The second bar of it may walk on from the subdominant: a half step up as a diminished chord, or to its own flat seventh.
    private bool HasSecondLine() => IsSubdominant(First(5)) && Above(First(6)) is 5 or 6 or 10 && IsHomeAgain(First(7));

    private bool HasThirdLine()
    {
        var hasDominant = IsDominant(First(9)) || IsDominant(Last(10)) || (Above(Last(10)) == 1 && Last(10).Quality.IsDominantSeventh());
        return hasDominant && IsHomeAgain(First(11));
    }

    // The tonic, or the third degree in its place.
    private bool IsHomeAgain(Chord chord) => IsTonic(chord) || (Above(chord) == 4 && (chord.Quality.IsPlainMinor() || chord.Quality.IsHalfDiminished()));

    private string Describe(BluesKind kind)
    {
        var text = new StringBuilder();
        Say(text, kind.ToString());
        text.Append(": ");
        Say(text, !StaysHome ? "FirstRound" : IsSubdominant(First(2)) ? "FirstQuick" : "FirstPlain");
        if (StaysHome && LeadsOn) Say(text.Append(", "), "FirstLeads");
        text.Append("; ");
        Say(text, !IsTonic(First(7)) ? "SecondThird" : IsTonic(Last(8)) || IsTonic(First(8)) ? "SecondPlain" : "SecondLeads");
        text.Append("; ");
        Say(text, !IsDominant(First(9)) ? "ThirdThrough" : IsSubdominant(Last(10)) ? "ThirdOver" : "ThirdDominant");
        text.Append('.');
        if (IsDominant(Last(12)) || Above(Last(12)) == 1) Say(text.Append(' '), Bar(11).Count + Bar(12).Count > 2 ? "EndTurnaround" : "EndDominant");
        Say(text.Append(' '), kind == BluesKind.Minor ? "ScaleMinor" : "ScaleMajor");
        return text.ToString();
    }

    private void Say(StringBuilder text, string part)
    {
        var notes = new List<string>();
        foreach (var note in new Scale(key.Tonic, ScaleTypes.Get("minor blues")).Notes) notes.Add(note.ToDisplayString());
        text.Append(HarmonyWording.Fill(
            wording.Blues(part),
            "key", key.Tonic.ToDisplayString(),
            "tonic", MarkedText.Mark(First(1)),
            "round", Chords(Bar(4)),
            "subdominant", MarkedText.Mark(First(5)),
            "third", MarkedText.Mark(First(7)),
            "onward", Chords(Bar(8)),
            "ninth", Chords(Bar(9)),
            "tenth", Chords(Bar(10)),
            "dominant", MarkedText.Mark(First(9)),
            "notes", string.Join(' ', notes)));
    }

    private static string Chords(IReadOnlyList<Chord> chords)
    {
        var symbols = new List<string>();
        foreach (var chord in chords) symbols.Add(MarkedText.Mark(chord));
        return string.Join(" – ", symbols);
    }
}
