using System.Diagnostics.CodeAnalysis;

namespace SheetPress.Theory;

/// <summary>
/// A spelled note without its octave: a letter and an alteration in half steps (-1 flat, +1 sharp, 0 natural).
/// Equality is by spelling: E-flat and D-sharp differ. The default value is C natural.
/// </summary>
/// <remarks>Alterations beyond double flat and double sharp are allowed, since exact arithmetic needs them.</remarks>
public readonly record struct NoteName
{
    /// <summary>The letter of the note.</summary>
    public Letter Letter { get; }

    /// <summary>Half steps above (positive) or below (negative) the natural note, from -6 to 6.</summary>
    public int Alteration { get; }

    /// <summary>Makes a note name.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The letter is none of the seven, or the alteration is outside -6..6.</exception>
    public NoteName(Letter letter, int alteration = 0)
    {
        if (!Enum.IsDefined(letter)) throw new ArgumentOutOfRangeException(nameof(letter), letter, "A letter is C to B.");
        if (alteration is < -6 or > 6) throw new ArgumentOutOfRangeException(nameof(alteration), alteration, "An alteration is from -6 to 6 half steps.");
        Letter = letter;
        Alteration = alteration;
    }

    /// <summary>The pitch class, 0 (C) to 11 (B), that spellings of the same sound share.</summary>
    public int PitchClass => Mod(Letter.HalfSteps() + Alteration, 12);

    /// <summary>
    /// The simplest spelling of the same sound: this note when it has at most one sign, else a natural, else one sign of the same kind
    /// (B double flat becomes A, F triple sharp becomes G sharp).
    /// </summary>
    public NoteName Simplest
    {
        get
        {
            if (Math.Abs(Alteration) <= 1) return this;
            var place = Fifths;
            // Twelve fifths are an enharmonic step: naturals lie at -1..5, single signs seven places beyond.
            var step = Math.Sign(Alteration) * -12;
            while (place is < -8 or > 12) place += step;
            if (place is < -1 or > 5 && place + step is >= -1 and <= 5) place += step;
            return FromFifths(place);
        }
    }

    /// <summary>Place on the line of fifths: F -1, C 0, G 1, D 2, ... ; a sharp adds 7, a flat takes 7.</summary>
    public int Fifths => FifthsOfLetter(Letter) + (7 * Alteration);

    /// <summary>The note at a place on the line of fifths (C is 0).</summary>
    /// <exception cref="ArgumentOutOfRangeException">The note would need more than six flats or sharps on one letter.</exception>
    public static NoteName FromFifths(int fifths)
    {
        var letter = (Letter)Mod(4 * fifths, 7);
        return new NoteName(letter, (fifths - FifthsOfLetter(letter)) / 7);
    }

    /// <summary>The note an interval above this one.</summary>
    public static NoteName operator +(NoteName note, Interval interval) => new Pitch(note, 0).Plus(interval).Name;

    /// <summary>The note an interval below this one.</summary>
    public static NoteName operator -(NoteName note, Interval interval) => note + (-interval);

    /// <summary>The ascending interval within one octave (unison to seventh) from this note up to another.</summary>
    public Interval IntervalTo(NoteName upper)
    {
        var steps = Mod((int)upper.Letter - (int)Letter, 7);
        var letterHalfSteps = upper.Letter.HalfSteps() - Letter.HalfSteps() + (upper.Letter < Letter ? 12 : 0);
        return new Interval(steps, letterHalfSteps + upper.Alteration - Alteration);
    }

    /// <summary>Plain text: a letter and ASCII accidentals, as in "Eb", "F#", "Bbb", "C##".</summary>
    public override string ToString() => Letter + (Alteration < 0 ? new string('b', -Alteration) : new string('#', Alteration));

    /// <summary>Text with real accidental signs: E♭, F♯; a double flat is two flat signs.</summary>
    public string ToDisplayString() => Letter + (Alteration < 0 ? new string('♭', -Alteration) : new string('♯', Alteration));

    /// <summary>Reads a note name: a letter (either case) and any run of b ♭ # ♯ (or x for a double sharp) of one direction; a natural sign changes nothing.</summary>
    public static bool TryParse([NotNullWhen(true)] string? text, out NoteName note)
    {
        note = default;
        if (text is null || !TryRead(text, 0, out note, out var end)) return false;
        return end == text.Length;
    }

    /// <summary>Reads a note name that must fill the whole text.</summary>
    /// <exception cref="FormatException">The text is no note name.</exception>
    public static NoteName Parse(string text) =>
        TryParse(text, out var note) ? note : throw new FormatException($"'{text}' is no note name: write a letter A to G and b or # signs, as in Eb or F#.");

    /// <summary>Reads the longest note name that starts at an index, and says where it ends.</summary>
    public static bool TryRead(string text, int start, out NoteName note, out int end)
    {
        note = default;
        end = start;
        if (start >= text.Length) return false;
        var letterIndex = "CDEFGAB".IndexOf(char.ToUpperInvariant(text[start]), StringComparison.Ordinal);
        if (letterIndex < 0) return false;
        var alteration = 0;
        var at = start + 1;
        if (at < text.Length && text[at] == '♮') at++;
        while (at < text.Length)
        {
            var (step, width) = text[at] switch
            {
                '#' or '♯' => (1, 1),
                'x' when alteration >= 0 => (2, 1),
                'b' or '♭' => (-1, 1),
                // The double signs of musical type lie beyond the first plane.
                '\uD834' when at + 1 < text.Length => (text[at + 1] switch { '\uDD2A' => 2, '\uDD2B' => -2, _ => 0 }, 2),
                _ => (0, 0),
            };
            if (step == 0 || (step > 0 && alteration < 0) || (step < 0 && alteration > 0) || Math.Abs(alteration + step) > 6) break;
            alteration += step;
            at += width;
        }
        note = new NoteName((Letter)letterIndex, alteration);
        end = at;
        return true;
    }

    private static int FifthsOfLetter(Letter letter) => letter switch
    {
        Letter.F => -1,
        Letter.C => 0,
        Letter.G => 1,
        Letter.D => 2,
        Letter.A => 3,
        Letter.E => 4,
        _ => 5,
    };

    internal static int Mod(int value, int modulus) => ((value % modulus) + modulus) % modulus;
}
