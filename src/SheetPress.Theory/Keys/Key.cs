using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace SheetPress.Theory;

/// <summary>A key: a tonic and a mode, within the fifteen signatures from seven flats to seven sharps.</summary>
public sealed record Key
{
    /// <summary>The tonic.</summary>
    public NoteName Tonic { get; }

    /// <summary>The mode.</summary>
    public Mode Mode { get; }

    /// <summary>Makes a key.</summary>
    /// <exception cref="ArgumentException">The signature would need more than seven flats or sharps.</exception>
    public Key(NoteName tonic, Mode mode)
    {
        Tonic = tonic;
        Mode = mode;
        if (Fifths is < -7 or > 7) throw new ArgumentException($"{tonic} {mode} has no signature of at most seven flats or sharps.", nameof(tonic));
    }

    /// <summary>Sharps (positive) or flats (negative) of the signature, -7 to 7.</summary>
    public int Fifths => Tonic.Fifths - SignatureOffset(Mode);

    /// <summary>The key with this tonic or, when its signature would need more than seven signs, the one that sounds the same (G# major gives Ab major).</summary>
    public static Key Nearest(NoteName tonic, Mode mode)
    {
        var fifths = tonic.Fifths;
        while (fifths - SignatureOffset(mode) > 7) fifths -= 12;
        while (fifths - SignatureOffset(mode) < -7) fifths += 12;
        return new Key(NoteName.FromFifths(fifths), mode);
    }

    /// <summary>The fifteen keys of a mode, from seven flats to seven sharps.</summary>
    public static ImmutableArray<Key> All(Mode mode)
    {
        var keys = ImmutableArray.CreateBuilder<Key>(15);
        for (var fifths = -7; fifths <= 7; fifths++) keys.Add(new Key(NoteName.FromFifths(fifths + SignatureOffset(mode)), mode));
        return keys.MoveToImmutable();
    }

    /// <summary>The twelve keys of a mode that players use, each a fourth above the one before, from the one without signs through the flats: six flats rather than six sharps.</summary>
    public static ImmutableArray<Key> Twelve(Mode mode)
    {
        var keys = ImmutableArray.CreateBuilder<Key>(12);
        for (var i = 0; i < 12; i++) keys.Add(new Key(NoteName.FromFifths((i <= 6 ? -i : 12 - i) + SignatureOffset(mode)), mode));
        return keys.MoveToImmutable();
    }

    /// <summary>The scale of the key.</summary>
    public Scale Scale => new(Tonic, Mode.Scale());

    /// <summary>True for the modes with a minor third above the tonic.</summary>
    public bool HasMinorThird => Mode is Mode.Minor or Mode.Aeolian or Mode.Dorian or Mode.Phrygian or Mode.Locrian;

    /// <summary>The note of a scale degree of the key, 1 (tonic) to 7; higher numbers wrap around.</summary>
    public NoteName NoteOf(int degree)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(degree, 1);
        return Spell((Letter)(((int)Tonic.Letter + degree - 1) % 7));
    }

    /// <summary>The letter with the accidental that the signature gives it.</summary>
    public NoteName Spell(Letter letter)
    {
        var natural = new NoteName(letter).Fifths;
        // The signature holds the seven places Fifths-1 .. Fifths+5 on the line of fifths.
        var place = Fifths - 1 + NoteName.Mod(natural - (Fifths - 1), 7);
        return NoteName.FromFifths(place);
    }

    /// <summary>Whether the note belongs to the signature.</summary>
    public bool Contains(NoteName note) => Spell(note.Letter) == note;

    /// <summary>"Eb major", "C# minor", "D dorian".</summary>
    public override string ToString() => $"{Tonic} {Mode.Name()}";

    /// <summary>The key as it is printed, with real accidental signs: "E♭ major", "D Dorian".</summary>
    public string ToDisplayString() => $"{Tonic.ToDisplayString()} {Mode.ToDisplayString()}";

    /// <summary>Reads "C minor", "Eb major", "F# dorian", "Am", "Bb".</summary>
    public static bool TryParse([NotNullWhen(true)] string? text, [NotNullWhen(true)] out Key? key)
    {
        key = null;
        text = text?.Trim();
        if (string.IsNullOrEmpty(text) || !NoteName.TryRead(text, 0, out var tonic, out var end)) return false;
        var word = text[end..].Trim();
        Mode mode;
        if (word is "" or "M" or "maj") mode = Mode.Major;
        else if (word is "m" or "min") mode = Mode.Minor;
        else if (!Modes.TryParse(word, out mode)) return false;
        if (Math.Abs(tonic.Fifths - SignatureOffset(mode)) > 7) return false;
        key = new Key(tonic, mode);
        return true;
    }

    /// <summary>Reads a key.</summary>
    /// <exception cref="FormatException">The text is no key with a signature.</exception>
    public static Key Parse(string text) =>
        TryParse(text, out var key) ? key : throw new FormatException($"'{text}' is no key: write a tonic and a mode, as in C minor or Eb major.");

    // Fifths from the tonic of the mode down to the tonic of the major key with the same signature.
    private static int SignatureOffset(Mode mode) => mode switch
    {
        Mode.Major or Mode.Ionian => 0,
        Mode.Mixolydian => 1,
        Mode.Dorian => 2,
        Mode.Minor or Mode.Aeolian => 3,
        Mode.Phrygian => 4,
        Mode.Locrian => 5,
        _ => -1,
    };
}
