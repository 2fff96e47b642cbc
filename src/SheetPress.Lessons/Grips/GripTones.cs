using System.Collections.Immutable;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>The tones of a chord as a grip needs them, by half steps above the root.</summary>
internal sealed class GripTones
{
    private const int Octave = 12;
    private readonly Degree?[] _degrees = new Degree?[Octave];

    public GripTones(Chord chord)
    {
        Chord = chord;
        foreach (var degree in chord.Quality.Degrees) _degrees[Step(degree)] ??= degree.Simple;
        if (chord.Bass is { } bass)
        {
            BassStep = NoteMath.Modulo(bass.PitchClass - chord.Root.PitchClass, Octave);
            if (_degrees[BassStep] is null) _degrees[BassStep] = OfBass(chord.Root, bass);
        }
        Full = Mask(essential: chord.Quality.Degrees.Length);
        Plain = Mask(essential: 2);
        Least = Mask(essential: 1);
    }

    public Chord Chord { get; }

    /// <summary>Half steps of the note that is to be lowest.</summary>
    public int BassStep { get; }

    /// <summary>Set of the tones without which it is another chord: third or what stands for it, altered fifth, seventh, altered tones, and the highest of the extensions.</summary>
    public int Full { get; }

    /// <summary>The two that tell most: third and seventh.</summary>
    public int Plain { get; }

    /// <summary>The one that tells most: the third or what stands for it.</summary>
    public int Least { get; }

    /// <summary>Set of all tones.</summary>
    public int All
    {
        get
        {
            var mask = 0;
            for (var step = 0; step < Octave; step++) if (_degrees[step] is not null) mask |= 1 << step;
            return mask;
        }
    }

    /// <summary>Whether the slash bass, or the root, is one of the chord's own tones.</summary>
    public bool BassIsTone
    {
        get
        {
            foreach (var degree in Chord.Quality.Degrees) if (Step(degree) == BassStep) return true;
            return false;
        }
    }

    /// <summary>Whether a tone stands above the seventh: ninth, eleventh, thirteenth.</summary>
    public bool IsExtension(int step)
    {
        foreach (var degree in Chord.Quality.Degrees) if (degree.Number > 8 && Step(degree) == step) return true;
        return false;
    }

    /// <summary>Half steps of the plain fifth when it is a tone; -1 otherwise.</summary>
    public int FifthStep => _degrees[7] is { Number: 5 } ? 7 : -1;

    /// <summary>Half steps of the third; -1 when there is none.</summary>
    public int ThirdStep => _degrees[4] is { Number: 3 } ? 4 : _degrees[3] is { Number: 3 } ? 3 : -1;

    /// <summary>The degree of a number of half steps above the root, 0 to 11; null when it is no tone.</summary>
    public Degree? At(int step) => _degrees[step];

    private static int Step(Degree degree) => NoteMath.Modulo(degree.HalfSteps, Octave);

    private static Degree OfBass(NoteName root, NoteName bass)
    {
        var interval = root.IntervalTo(bass);
        return interval.IsDescending || Math.Abs(interval.Alteration) > 3 ? new Degree(8, -1) : Degree.FromInterval(interval);
    }

    private int Mask(int essential)
    {
        var mask = 0;
        var highest = 0;
        foreach (var degree in Chord.Quality.Degrees) highest = Math.Max(highest, degree.Number);
        foreach (var number in (ReadOnlySpan<int>)[3, 7, 4, 2, 6, 5, 9, 13, 11])
        {
            foreach (var degree in Chord.Quality.Degrees)
            {
                if (degree.Number != number || (number == 5 && degree.Alteration == 0 && Chord.Quality.Degrees.Length > 2)) continue;
                // Of plain extensions only the highest names the chord.
                if (number > 7 && degree.Alteration == 0 && number != highest) continue;
                if (essential-- > 0) mask |= 1 << Step(degree);
            }
        }
        return mask;
    }
}
