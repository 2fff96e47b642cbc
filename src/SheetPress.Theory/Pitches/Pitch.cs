using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace SheetPress.Theory;

/// <summary>
/// A spelled pitch: a note name and the octave number of scientific pitch notation (C4 is middle C, MIDI 60).
/// Equality is by spelling; compare <see cref="MidiNumber"/> for "sounds the same". The default value is C0.
/// </summary>
public readonly record struct Pitch : IComparable<Pitch>
{
    /// <summary>The letter and alteration.</summary>
    public NoteName Name { get; }

    /// <summary>The octave of the letter: it changes between B and C, so B#3 sounds like C4 and Cb4 like B3.</summary>
    public int Octave { get; }

    /// <summary>Makes a pitch.</summary>
    public Pitch(NoteName name, int octave)
    {
        Name = name;
        Octave = octave;
    }

    /// <summary>Makes a pitch from a letter, an alteration in half steps and an octave.</summary>
    public Pitch(Letter letter, int alteration, int octave) : this(new NoteName(letter, alteration), octave)
    {
    }

    /// <summary>The MIDI note number (60 is middle C). It can lie outside 0..127 for extreme pitches.</summary>
    public int MidiNumber => (12 * (Octave + 1)) + Name.Letter.HalfSteps() + Name.Alteration;

    /// <summary>Place of the letter on an endless staff: C0 is 0, D0 is 1, C4 is 28. Accidentals do not move it.</summary>
    public int StaffStep => (7 * Octave) + (int)Name.Letter;

    /// <summary>Frequency in hertz with A4 at 440 Hz in equal temperament (ISO 16:1975).</summary>
    public double Frequency => 440.0 * Math.Pow(2, (MidiNumber - 69) / 12.0);

    /// <summary>The pitch an interval higher (or lower, when it descends).</summary>
    /// <exception cref="ArgumentOutOfRangeException">The spelling would need more than six flats or sharps.</exception>
    public Pitch Plus(Interval interval)
    {
        var staffStep = StaffStep + interval.Steps;
        var letter = (Letter)NoteName.Mod(staffStep, 7);
        var octave = (staffStep - (int)letter) / 7;
        var natural = (12 * (octave + 1)) + letter.HalfSteps();
        return new Pitch(letter, MidiNumber + interval.HalfSteps - natural, octave);
    }

    /// <summary>The directed interval from this pitch to another.</summary>
    public Interval IntervalTo(Pitch other) => new(other.StaffStep - StaffStep, other.MidiNumber - MidiNumber);

    /// <summary>The pitch an interval higher.</summary>
    public static Pitch operator +(Pitch pitch, Interval interval) => pitch.Plus(interval);
    /// <summary>The pitch an interval lower.</summary>
    public static Pitch operator -(Pitch pitch, Interval interval) => pitch.Plus(-interval);
    /// <summary>True when the left pitch sorts below the right one.</summary>
    public static bool operator <(Pitch left, Pitch right) => left.CompareTo(right) < 0;
    /// <summary>True when the left pitch sorts above the right one.</summary>
    public static bool operator >(Pitch left, Pitch right) => left.CompareTo(right) > 0;
    /// <summary>True when the left pitch does not sort above the right one.</summary>
    public static bool operator <=(Pitch left, Pitch right) => left.CompareTo(right) <= 0;
    /// <summary>True when the left pitch does not sort below the right one.</summary>
    public static bool operator >=(Pitch left, Pitch right) => left.CompareTo(right) >= 0;

    /// <summary>Sounding order; pitches that sound the same are ordered by letter.</summary>
    public int CompareTo(Pitch other)
    {
        var bySound = MidiNumber.CompareTo(other.MidiNumber);
        return bySound != 0 ? bySound : StaffStep.CompareTo(other.StaffStep);
    }

    /// <summary>The pitch of a name that is nearest above or at a MIDI number.</summary>
    public static Pitch AtOrAbove(NoteName name, int midiNumber)
    {
        var base0 = new Pitch(name, 0).MidiNumber;
        var octave = (int)Math.Ceiling((midiNumber - base0) / 12.0);
        return new Pitch(name, octave);
    }

    /// <summary>Plain text, as in "Eb2" or "F#4".</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Name}{Octave}");

    /// <summary>Reads a pitch such as "Eb2": a note name and an octave number, which may be negative.</summary>
    public static bool TryParse([NotNullWhen(true)] string? text, out Pitch pitch)
    {
        pitch = default;
        if (text is null || !NoteName.TryRead(text, 0, out var name, out var end)) return false;
        if (!int.TryParse(text.AsSpan(end), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var octave) || octave is < -2 or > 12) return false;
        pitch = new Pitch(name, octave);
        return true;
    }

    /// <summary>Reads a pitch such as "Eb2".</summary>
    /// <exception cref="FormatException">The text is no pitch.</exception>
    public static Pitch Parse(string text) =>
        TryParse(text, out var pitch) ? pitch : throw new FormatException($"'{text}' is no pitch: write a note name and an octave number, as in Eb2 (middle C is C4).");
}
