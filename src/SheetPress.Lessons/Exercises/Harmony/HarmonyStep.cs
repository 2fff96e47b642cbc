using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>One sounding chord of the progression as a style sees it: when it sounds, its tones, the scale over it and what comes next.</summary>
internal sealed class HarmonyStep
{
    private static readonly string[] UsualNames = ["R", "b2", "2", "b3", "3", "4", "#4", "5", "b6", "6", "b7", "7"];
    private ImmutableArray<Degree> _scale;

    public HarmonyStep(int index, ChordSpan span, Chord chord, Key key)
    {
        Index = index;
        Span = span;
        Chord = chord;
        Key = key;
    }

    /// <summary>Place in <see cref="Progression.Chords"/>.</summary>
    public int Index { get; }

    /// <summary>Where and how long it sounds.</summary>
    public ChordSpan Span { get; }

    /// <summary>The chord.</summary>
    public Chord Chord { get; }

    /// <summary>The key that rules where it sounds.</summary>
    public Key Key { get; }

    /// <summary>Start in quarter notes from the start of the progression.</summary>
    public Fraction Start => Span.Start;

    /// <summary>End in quarter notes from the start of the progression.</summary>
    public Fraction End => Span.End;

    /// <summary>The chord that is heard after it, back to the start of a repeat where one ends here; null before silence and at the end.</summary>
    public HarmonyStep? Next { get; internal set; }

    /// <summary>Whether it is the last chord of the exercise, to which the line may come to rest.</summary>
    public bool IsFinal { get; internal set; }

    /// <summary>Whether it goes on from the chord before, so that a line need not start anew with it.</summary>
    public bool Continues(HarmonyStep? before) => before is not null && before.End == Start && (Span.IsHeld || before.Chord == Chord);

    /// <summary>Degrees of the scale over the chord, counted from the chord's root, the chord's own as the chord has them.</summary>
    public ImmutableArray<Degree> Scale
    {
        get
        {
            if (_scale.IsDefault) _scale = Span.Analysis is { } analysis ? analysis.Scale.Type.DegreesOver(Chord.Quality) : ScaleOverChord.FromKey(Chord, Key);
            return _scale;
        }
    }

    /// <summary>Degrees of the key over the chord, altered where the chord alters them.</summary>
    public ImmutableArray<Degree> KeyScale => ScaleOverChord.FromKey(Chord, Key);

    /// <summary>Whether a note leaves the key, by sound: the notes of the natural scale of the key's mode stay in it.</summary>
    public bool LeavesKey(Pitch pitch)
    {
        for (var letter = 0; letter < 7; letter++) if (Key.Spell((Letter)letter).PitchClass == pitch.Name.PitchClass) return false;
        return true;
    }

    /// <summary>The chord tones within the octave: root, third or suspended tone, fifth, sixth or seventh.</summary>
    public ImmutableArray<Degree> BasicTones
    {
        get
        {
            var tones = ImmutableArray.CreateBuilder<Degree>(5);
            foreach (var degree in Chord.Quality.Degrees) if (degree.Number <= 7) tones.Add(degree);
            tones.Sort(static (a, b) => a.HalfSteps.CompareTo(b.HalfSteps));
            return tones.DrainToImmutable();
        }
    }

    /// <summary>The chord's own tone of a number within the octave (a ninth counts as a second), or null.</summary>
    public Degree? ChordDegree(int number)
    {
        Degree? compound = null;
        foreach (var degree in Chord.Quality.Degrees)
        {
            if (degree.Number == number) return degree;
            if (degree.Simple.Number == number) compound ??= degree.Simple;
        }
        return compound;
    }

    /// <summary>The scale's own tone of a number within the octave, or null: 6 over C7#5 is the flat sixth of its altered scale.</summary>
    public Degree? ScaleDegree(int number)
    {
        foreach (var degree in Span.Analysis?.Scale.Type.Degrees ?? Scale) if (degree.Number == number) return degree;
        return null;
    }

    /// <summary>The degree of the slash bass, the root where there is none.</summary>
    public Degree BassDegree => Chord.Bass is { } bass ? DegreeOf(bass) ?? Degree.Root : Degree.Root;

    /// <summary>The degree of a note above the root within the octave; null when its spelling is too far from the root for a degree.</summary>
    public Degree? DegreeOf(NoteName note)
    {
        var interval = Chord.Root.IntervalTo(note);
        // F over F sharp shares its letter and lies below it: it is the flat octave.
        if (interval.IsDescending) return new Degree(8, Math.Max(-3, interval.HalfSteps));
        return Math.Abs(interval.Alteration) > 3 ? null : Degree.FromInterval(interval);
    }

    /// <summary>
    /// The degree by which players call a note over the chord: its exact degree where that is in use, else the usual name of the
    /// same sound (C sharp over A flat is called 4, not the sharp third that its spelling says).
    /// </summary>
    public Degree NameOf(NoteName note)
    {
        if (DegreeOf(note) is { } exact && (IsUsual(exact) || ChordDegree(exact.Number) == exact)) return exact;
        return Degree.Parse(UsualNames[NoteMath.Modulo(note.PitchClass - Chord.Root.PitchClass, 12)]);
    }

    /// <summary>Whether the note is one of the chord's, by sound.</summary>
    public bool IsChordTone(int midiNumber)
    {
        var above = NoteMath.Modulo(midiNumber - Chord.Root.PitchClass, 12);
        foreach (var degree in Chord.Quality.Degrees) if (NoteMath.Modulo(degree.HalfSteps, 12) == above) return true;
        return Chord.Bass is { } bass && bass.PitchClass == NoteMath.Modulo(midiNumber, 12);
    }

    private static bool IsUsual(Degree degree) => degree.Alteration switch
    {
        0 => true,
        -1 => degree.Number is not (1 or 4 or 8),
        1 => degree.Number is 1 or 2 or 4 or 5 or 6,
        _ => false,
    };
}

/// <summary>Arithmetic that C# lacks.</summary>
internal static class NoteMath
{
    /// <summary>The rest of a division, never negative.</summary>
    public static int Modulo(int value, int modulus) => ((value % modulus) + modulus) % modulus;
}
