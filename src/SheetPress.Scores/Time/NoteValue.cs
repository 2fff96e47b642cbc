namespace SheetPress.Scores;

/// <summary>The written bases of note values; the number is the power of two that divides a whole note.</summary>
public enum NoteBase
{
    /// <summary>Whole note, 4 quarter notes.</summary>
    Whole = 0,
    /// <summary>Half note.</summary>
    Half = 1,
    /// <summary>Quarter note.</summary>
    Quarter = 2,
    /// <summary>Eighth note.</summary>
    Eighth = 3,
    /// <summary>Sixteenth note.</summary>
    Sixteenth = 4,
    /// <summary>Thirty-second note.</summary>
    ThirtySecond = 5,
    /// <summary>Sixty-fourth note.</summary>
    SixtyFourth = 6,
}

/// <summary>
/// A written note value: base, dots and the tuplet ratio it stands in (3:2 for a triplet; the product of ratios when nested).
/// The default value is a whole note.
/// </summary>
public readonly record struct NoteValue
{
    private readonly int _actualLessOne;
    private readonly int _normalLessOne;

    /// <summary>The written base.</summary>
    public NoteBase Base { get; }

    /// <summary>Augmentation dots, 0 to 3.</summary>
    public int Dots { get; }

    /// <summary>How many of this value are played in the tuplet (3 for a triplet); 1 outside tuplets.</summary>
    public int ActualNotes => _actualLessOne + 1;

    /// <summary>In the time of how many (2 for a triplet); 1 outside tuplets.</summary>
    public int NormalNotes => _normalLessOne + 1;

    /// <summary>Makes a note value.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The base, dots or ratio is out of range.</exception>
    public NoteValue(NoteBase @base, int dots = 0, int actualNotes = 1, int normalNotes = 1)
    {
        if (!Enum.IsDefined(@base)) throw new ArgumentOutOfRangeException(nameof(@base));
        if (dots is < 0 or > 3) throw new ArgumentOutOfRangeException(nameof(dots), dots, "A note has at most three dots.");
        ArgumentOutOfRangeException.ThrowIfLessThan(actualNotes, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(normalNotes, 1);
        Base = @base;
        Dots = dots;
        _actualLessOne = actualNotes - 1;
        _normalLessOne = normalNotes - 1;
    }

    /// <summary>Whether the value stands in a tuplet.</summary>
    public bool IsTuplet => ActualNotes != NormalNotes;

    /// <summary>Flags or beams the value carries: 0 for a quarter and longer, 1 for an eighth, 2 for a sixteenth.</summary>
    public int Flags => Math.Max(0, (int)Base - (int)NoteBase.Quarter);

    /// <summary>Length in quarter notes.</summary>
    public Fraction Duration => WrittenDuration * new Fraction(NormalNotes, ActualNotes);

    /// <summary>Length in quarter notes as written, the tuplet ratio left out.</summary>
    public Fraction WrittenDuration
    {
        get
        {
            var length = new Fraction(4, 1L << (int)Base);
            return length * new Fraction((2L << Dots) - 1, 1L << Dots);
        }
    }

    /// <summary>The same base and dots inside a tuplet ratio.</summary>
    public NoteValue InTuplet(int actualNotes, int normalNotes) => new(Base, Dots, actualNotes, normalNotes);
}
