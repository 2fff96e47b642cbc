using System.Collections.Immutable;
using System.Globalization;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Engraving;

/// <summary>Makes the usual diagrams.</summary>
public static class NeckDiagrams
{
    /// <summary>Fewest frets that a diagram shows when its range is chosen to fit.</summary>
    public const int LeastFrets = 4;

    /// <summary>All places of the tones of a chord in a range of frets.</summary>
    /// <param name="instrument">The instrument.</param>
    /// <param name="chord">The chord.</param>
    /// <param name="fromFret">Lowest fret; 0 takes in the open strings.</param>
    /// <param name="toFret">Highest fret.</param>
    /// <param name="labels">What stands in the dots.</param>
    public static NeckDiagram ChordTones(Instrument instrument, Chord chord, int fromFret, int toFret, DotLabels labels = DotLabels.Degrees) =>
        Map(instrument, chord.Tones, fromFret, toFret, labels, _ => true) with { Symbol = chord };

    /// <summary>All places of the notes of a scale in a range of frets; notes of a chord can be made to stand out.</summary>
    /// <param name="instrument">The instrument.</param>
    /// <param name="scale">The scale.</param>
    /// <param name="fromFret">Lowest fret; 0 takes in the open strings.</param>
    /// <param name="toFret">Highest fret.</param>
    /// <param name="labels">What stands in the dots.</param>
    /// <param name="chord">A chord on the root of the scale whose tones are filled; null fills the root alone.</param>
    public static NeckDiagram Scale(Instrument instrument, Scale scale, int fromFret, int toFret, DotLabels labels = DotLabels.Degrees, Chord? chord = null)
    {
        var tones = ImmutableArray.CreateBuilder<ChordTone>(scale.Type.Degrees.Length);
        foreach (var degree in scale.Type.Degrees) tones.Add(new ChordTone(degree, scale.Root + degree.ToInterval()));
        var chordClasses = chord is null ? [] : chord.Tones.Select(t => t.Note.PitchClass).ToHashSet();
        return Map(instrument, tones.MoveToImmutable(), fromFret, toFret, labels, t => chordClasses.Contains(t.Note.PitchClass));
    }

    /// <summary>Given places, with degrees above a root in the dots; the range is chosen to fit.</summary>
    /// <param name="instrument">The instrument.</param>
    /// <param name="places">The places; at least one.</param>
    /// <param name="chord">The chord whose tones they are; a note outside it gets the chromatic degree above its root.</param>
    /// <param name="labels">What stands in the dots.</param>
    /// <param name="upright">Whether the diagram stands upright; strings without a place are then marked as not to sound.</param>
    public static NeckDiagram Shape(Instrument instrument, IReadOnlyList<FretPosition> places, Chord chord, DotLabels labels = DotLabels.Degrees, bool upright = false)
    {
        var (first, last) = FitRange(places, instrument.PlayableFrets);
        var dots = ImmutableArray.CreateBuilder<NeckDot>(places.Count);
        foreach (var place in places) dots.Add(DotAt(instrument, place, chord.Tones, labels, _ => true) ?? new NeckDot(place, DotShape.Other));
        var muted = upright ? Enumerable.Range(1, instrument.StringCount).Where(s => !places.Any(p => p.String == s)) : [];
        return new NeckDiagram
        {
            Instrument = instrument,
            FirstFret = first,
            LastFret = last,
            Dots = dots.MoveToImmutable(),
            MutedStrings = [.. muted],
            Upright = upright,
            EvenFrets = upright,
            Symbol = chord,
        };
    }

    /// <summary>The path of a line along the neck: every place it visits with the numbers of its visits, counted from 1.</summary>
    /// <param name="instrument">The instrument.</param>
    /// <param name="path">The places in the order they are played; at least one.</param>
    /// <param name="isRoot">Whether the note at an index of the path is a root.</param>
    public static NeckDiagram Path(Instrument instrument, IReadOnlyList<FretPosition> path, Func<int, bool> isRoot)
    {
        var (first, last) = FitRange(path, instrument.PlayableFrets);
        var dots = ImmutableArray.CreateBuilder<NeckDot>();
        var visits = new Dictionary<FretPosition, int>();
        for (var i = 0; i < path.Count; i++)
        {
            var number = (i + 1).ToString(CultureInfo.InvariantCulture);
            if (visits.TryGetValue(path[i], out var at))
            {
                dots[at] = dots[at] with { Label = dots[at].Label + ", " + number };
                continue;
            }
            visits.Add(path[i], dots.Count);
            dots.Add(new NeckDot(path[i], isRoot(i) ? DotShape.Root : DotShape.Tone, number));
        }
        return new NeckDiagram { Instrument = instrument, FirstFret = first, LastFret = last, Dots = dots.DrainToImmutable(), Path = [.. path] };
    }

    /// <summary>The range of frets that shows all places: from the nut when they lie near it, at least <see cref="LeastFrets"/> wide.</summary>
    /// <param name="places">The places.</param>
    /// <param name="playableFrets">Highest fret there is.</param>
    public static (int First, int Last) FitRange(IReadOnlyList<FretPosition> places, int playableFrets)
    {
        var (lowest, highest) = (int.MaxValue, 0);
        foreach (var place in places)
        {
            if (place.Fret > 0) lowest = Math.Min(lowest, place.Fret);
            highest = Math.Max(highest, place.Fret);
        }
        if (lowest > highest) return (1, Math.Min(LeastFrets, playableFrets));
        var open = places.Any(p => p.Fret == 0);
        var first = lowest <= 2 || (open && highest <= 5) ? 1 : lowest;
        var last = Math.Min(playableFrets, Math.Max(highest, first + LeastFrets - 1));
        return (Math.Max(1, Math.Min(first, last - LeastFrets + 1)), last);
    }

    private static NeckDiagram Map(Instrument instrument, ImmutableArray<ChordTone> tones, int fromFret, int toFret, DotLabels labels, Func<ChordTone, bool> isFilled)
    {
        var last = Math.Min(toFret, instrument.PlayableFrets);
        ArgumentOutOfRangeException.ThrowIfNegative(fromFret);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(fromFret, last);
        var dots = ImmutableArray.CreateBuilder<NeckDot>();
        for (var s = instrument.StringCount; s >= 1; s--)
        {
            for (var fret = fromFret; fret <= last; fret++)
            {
                if (DotAt(instrument, new FretPosition(s, fret), tones, labels, isFilled) is { } dot) dots.Add(dot);
            }
        }
        return new NeckDiagram { Instrument = instrument, FirstFret = Math.Max(1, fromFret), LastFret = Math.Max(1, last), Dots = dots.DrainToImmutable() };
    }

    private static NeckDot? DotAt(Instrument instrument, FretPosition place, ImmutableArray<ChordTone> tones, DotLabels labels, Func<ChordTone, bool> isFilled)
    {
        var pitchClass = ((instrument.MidiNumberAt(place.String, place.Fret) % 12) + 12) % 12;
        foreach (var tone in tones)
        {
            if (tone.Note.PitchClass != pitchClass) continue;
            var shape = tone.Degree.Simple == Degree.Root ? DotShape.Root : isFilled(tone) ? DotShape.Tone : DotShape.Other;
            var label = labels switch { DotLabels.Degrees => tone.Degree.ToDisplayString(), DotLabels.Notes => tone.Note.ToDisplayString(), _ => "" };
            return new NeckDot(place, shape, label);
        }
        return null;
    }
}
