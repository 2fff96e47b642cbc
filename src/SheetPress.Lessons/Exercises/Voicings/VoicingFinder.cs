using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Puts chord shapes, given as tones above a root, into the octaves and places in which one hand can hold them.</summary>
internal sealed class VoicingFinder
{
    private const double BelowClear = 0.65;
    private const double AboveClear = 0.15;
    private const double BelowClose = 0.15;
    private const int GuitarCloseFrom = 48;
    // Of one octave the easiest grip and those that are little harder.
    private const double MuchHarder = 3;
    private const int MostGrips = 5;
    // Above the octave of the nut the neck is worn by the body; a shape that mixes open strings in has to be found anew for the next chord.
    private const double HighPerFret = 1;
    private const int HighFrom = 12;
    private const double OpenInShape = 2;
    private const int HighestWithOpen = 4;
    private const int UsualSpan = 3;
    private const double WiderPerFret = 2.5;
    private const double BelowHome = 1;
    private readonly NeckRange _range;
    private readonly GripFinder _grips;
    private readonly int _clearFrom;
    private readonly int _closeFrom;

    public VoicingFinder(ExerciseContext context, NeckRange range)
    {
        _range = range;
        var hand = new HandModel(context.Instrument);
        var costs = new FingeringCosts(hand, context.Request.Neck, context.Level);
        _grips = new GripFinder(hand, costs, context.Request.Neck, context.Level);
        // Common practice: below about the seventh fret of the E string tones struck together on a bass growl.
        _closeFrom = context.Instrument.Family == InstrumentFamily.Guitar ? GuitarCloseFrom : 0;
        _clearFrom = context.Instrument.Family == InstrumentFamily.Bass ? range.Home + 7 : range.Home;
    }

    /// <summary>Every octave of a shape, each with the grips that hold it; without places where no hand holds it and it need not be held.</summary>
    /// <param name="root">The root.</param>
    /// <param name="shape">The tones above it.</param>
    /// <param name="together">Whether the tones sound together, so that they must be held.</param>
    /// <param name="openAnywhere">Whether open strings may sound with fretted ones far up the neck.</param>
    public IEnumerable<Voicing> Find(NoteName root, ImmutableArray<CellTone> shape, bool together, bool openAnywhere = true)
    {
        if (_range.Highest < _range.Lowest) yield break;
        for (var at = Pitch.AtOrAbove(root, _range.Lowest - 24); at.MidiNumber <= _range.Highest; at += Interval.Octave)
        {
            var tones = ImmutableArray.CreateBuilder<NamedPitch>(shape.Length);
            foreach (var tone in shape) tones.Add(new NamedPitch(at + tone.FromRoot, tone.Degree));
            tones.Sort(static (a, b) => a.Pitch.CompareTo(b.Pitch));
            var found = tones.MoveToImmutable();
            if (!found.All(t => _range.CanPlay(t.Pitch.MidiNumber))) continue;
            var grips = Grips(found).RemoveAll(g => !openAnywhere && IsFarFromOpen(g));
            if (grips.IsEmpty && !together) yield return new Voicing(found, [], Register(found) + NotHeld(found));
            for (var i = 0; i < grips.Length && i < MostGrips && grips[i].Cost <= grips[0].Cost + MuchHarder; i++)
                yield return new Voicing(found, grips[i].Positions, Register(found) + Place(grips[i])) { Fingers = grips[i].Fingers };
        }
    }

    private ImmutableArray<Grip> Grips(ImmutableArray<NamedPitch> tones) => _grips.Find(new LineNote
    {
        Start = Fraction.Zero,
        Duration = Fraction.One,
        Tones = [.. tones.Select(t => new LineTone(t.Pitch))],
    });

    // A shape that one hand holds is what the style is about.
    private double NotHeld(ImmutableArray<NamedPitch> tones) => 10 + (0.5 * tones.Max(t => _range.Strain(t.Pitch.MidiNumber)));

    private static bool IsFarFromOpen(Grip grip) => Frets(grip) is ( > 0, > HighestWithOpen, _);

    // Open strings, the highest fret, and frets from the lowest finger to the highest.
    private static (int Open, int Highest, int Span) Frets(Grip grip)
    {
        var (open, highest, lowest) = (0, 0, int.MaxValue);
        foreach (var place in grip.Positions)
        {
            highest = Math.Max(highest, place.Fret);
            if (place.Fret == 0) open++;
            else lowest = Math.Min(lowest, place.Fret);
        }
        return (open, highest, Math.Max(0, highest - lowest));
    }

    private static double Place(Grip grip)
    {
        var (open, highest, span) = Frets(grip);
        return grip.Cost + (WiderPerFret * Math.Max(0, span - UsualSpan)) + (HighPerFret * Math.Max(0, highest - HighFrom)) + (open > 0 && highest > 0 ? OpenInShape : 0);
    }

    // How far the tones lie below where they are clear together, and above.
    private double Register(ImmutableArray<NamedPitch> tones)
    {
        var lowest = tones[0].Pitch.MidiNumber;
        // A third low on a guitar growls as well; a wider shape of the same tones does not.
        var close = tones.Length > 1 && tones[1].Pitch.MidiNumber - lowest < 7 ? Math.Max(0, _closeFrom - lowest) * BelowClose : 0;
        return close + (Math.Max(0, _range.Home - lowest) * BelowHome) + (Math.Max(0, _clearFrom - lowest) * BelowClear) + (Math.Max(0, lowest - Math.Max(_clearFrom, _range.Home) - 4) * AboveClear);
    }
}
