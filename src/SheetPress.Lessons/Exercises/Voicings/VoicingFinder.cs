using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Puts chord shapes, given as tones above a root, into the octaves in which one hand can hold them.</summary>
internal sealed class VoicingFinder
{
    private const double BelowClear = 0.8;
    private const double BelowClose = 0.15;
    private const int GuitarCloseFrom = 48;
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
        _clearFrom = context.Instrument.Family == InstrumentFamily.Bass ? range.Home + 7 : 0;
    }

    /// <summary>Every octave of a shape that can be held.</summary>
    public IEnumerable<Voicing> Find(NoteName root, ImmutableArray<CellTone> shape, bool together)
    {
        if (_range.Highest < _range.Lowest) yield break;
        for (var at = Pitch.AtOrAbove(root, _range.Lowest - 24); at.MidiNumber <= _range.Highest; at += Interval.Octave)
        {
            var tones = ImmutableArray.CreateBuilder<NamedPitch>(shape.Length);
            foreach (var tone in shape) tones.Add(new NamedPitch(at + tone.FromRoot, tone.Degree));
            tones.Sort(static (a, b) => a.Pitch.CompareTo(b.Pitch));
            var found = tones.MoveToImmutable();
            if (!found.All(t => _range.CanPlay(t.Pitch.MidiNumber)) || (together && !CanHold(found, []))) continue;
            yield return new Voicing(found, [], Cost(found));
        }
    }

    /// <summary>Whether one hand can hold the tones, at given places or any.</summary>
    public bool CanHold(ImmutableArray<NamedPitch> tones, ImmutableArray<FretPosition> places) => !_grips.Find(new LineNote
    {
        Start = Fraction.Zero,
        Duration = Fraction.One,
        Tones = [.. tones.Select((t, i) => new LineTone(t.Pitch) { Position = places.IsEmpty ? null : places[i] })],
    }).IsEmpty;

    /// <summary>How far tones lie from the comfortable part of the neck, and below where they are clear together.</summary>
    public double Cost(ImmutableArray<NamedPitch> tones)
    {
        var strain = tones.Max(t => _range.Strain(t.Pitch.MidiNumber));
        // A third low on a guitar growls as well; a wider shape of the same tones does not.
        var close = tones.Length > 1 && tones[1].Pitch.MidiNumber - tones[0].Pitch.MidiNumber < 7 ? Math.Max(0, _closeFrom - tones[0].Pitch.MidiNumber) * BelowClose : 0;
        return close + (strain * 0.5) + (Math.Max(0, _clearFrom - tones[0].Pitch.MidiNumber) * BelowClear) + (Math.Max(0, tones[0].Pitch.MidiNumber - Math.Max(_clearFrom, _range.Home) - 4) * 0.15);
    }
}
