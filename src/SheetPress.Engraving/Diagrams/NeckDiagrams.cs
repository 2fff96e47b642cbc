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
    /// <param name="chord">The chord whose tones they are; a note outside it is an open circle.</param>
    /// <param name="labels">What stands in the dots.</param>
    /// <param name="upright">Whether the diagram stands upright; strings without a place are then marked as not to sound, when no string has two.</param>
    /// <param name="fingers">A finger for each place, 0 for none; fingers on several places of one fret lie flat over them. Empty when they are not known.</param>
    public static NeckDiagram Shape(
        Instrument instrument, IReadOnlyList<FretPosition> places, Chord chord, DotLabels labels = DotLabels.Degrees, bool upright = false, IReadOnlyList<int>? fingers = null)
    {
        var (first, last) = FitRange(places, instrument.PlayableFrets);
        var dots = ImmutableArray.CreateBuilder<NeckDot>(places.Count);
        for (var i = 0; i < places.Count; i++)
        {
            var finger = fingers is { Count: > 0 } && fingers[i] > 0 ? fingers[i] : (int?)null;
            var dot = DotAt(instrument, places[i], chord.Tones, labels, _ => true) ?? OutsideDot(instrument, places[i], chord, labels);
            if (labels == DotLabels.Fingers) dot = dot with { Label = finger?.ToString(CultureInfo.InvariantCulture) ?? "" };
            else dot = dot with { Finger = finger };
            dots.Add(dot);
        }
        var isChord = !places.GroupBy(p => p.String).Any(g => g.Count() > 1);
        return new NeckDiagram
        {
            Instrument = instrument,
            FirstFret = first,
            LastFret = last,
            Dots = dots.MoveToImmutable(),
            // A scale has one finger on several strings as well, one after the other.
            Barres = isChord ? Barres(places, fingers ?? []) : [],
            MutedStrings = upright && isChord ? [.. Enumerable.Range(1, instrument.StringCount).Where(s => !places.Any(p => p.String == s))] : [],
            Upright = upright,
            EvenFrets = upright,
        };
    }

    private static ImmutableArray<Barre> Barres(IReadOnlyList<FretPosition> places, IReadOnlyList<int> fingers)
    {
        var barres = ImmutableArray.CreateBuilder<Barre>();
        for (var i = 0; i < fingers.Count; i++)
        {
            var (first, last) = (places[i].String, places[i].String);
            for (var k = 0; k < fingers.Count; k++)
            {
                if (fingers[k] != fingers[i] || places[k].Fret != places[i].Fret) continue;
                (first, last) = (Math.Min(first, places[k].String), Math.Max(last, places[k].String));
            }
            var barre = new Barre(places[i].Fret, first, last);
            if (fingers[i] > 0 && first < last && !barres.Contains(barre)) barres.Add(barre);
        }
        return barres.ToImmutable();
    }

    /// <summary>The path of a line along the neck: every place it visits with the numbers of its visits.</summary>
    /// <param name="instrument">The instrument.</param>
    /// <param name="path">The places in the order they are played, tones struck together under one number; at least one.</param>
    public static NeckDiagram Path(Instrument instrument, IReadOnlyList<PathStep> path)
    {
        FretPosition[] places = [.. path.Select(p => p.Place)];
        var (first, last) = FitRange(places, instrument.PlayableFrets);
        var dots = ImmutableArray.CreateBuilder<NeckDot>();
        var visits = new Dictionary<FretPosition, int>();
        foreach (var step in path)
        {
            var number = step.Number.ToString(CultureInfo.InvariantCulture);
            if (visits.TryGetValue(step.Place, out var at))
            {
                dots[at] = dots[at] with { Label = dots[at].Label + " " + number };
                continue;
            }
            visits.Add(step.Place, dots.Count);
            dots.Add(new NeckDot(step.Place, step.IsRoot ? DotShape.Root : DotShape.Tone, number));
        }
        return new NeckDiagram { Instrument = instrument, FirstFret = first, LastFret = last, Dots = dots.DrainToImmutable(), Path = [.. places] };
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

    // A note outside the chord, by its usual name above the root.
    private static NeckDot OutsideDot(Instrument instrument, FretPosition place, Chord chord, DotLabels labels)
    {
        var step = (((instrument.MidiNumberAt(place.String, place.Fret) - chord.Root.PitchClass) % 12) + 12) % 12;
        var degree = Degree.Parse(UsualDegrees[step]);
        return new NeckDot(place, DotShape.Other, LabelOf(degree, chord.NoteOf(degree), labels));
    }

    private static string LabelOf(Degree degree, NoteName note, DotLabels labels) =>
        labels switch { DotLabels.Degrees => degree.ToDisplayString(), DotLabels.Notes => note.ToDisplayString(), _ => "" };

    private static readonly string[] UsualDegrees = ["R", "b2", "2", "b3", "3", "4", "#4", "5", "b6", "6", "b7", "7"];

    private static NeckDot? DotAt(Instrument instrument, FretPosition place, ImmutableArray<ChordTone> tones, DotLabels labels, Func<ChordTone, bool> isFilled)
    {
        var pitchClass = ((instrument.MidiNumberAt(place.String, place.Fret) % 12) + 12) % 12;
        foreach (var tone in tones)
        {
            if (tone.Note.PitchClass != pitchClass) continue;
            var shape = tone.Degree.Simple == Degree.Root ? DotShape.Root : isFilled(tone) ? DotShape.Tone : DotShape.Other;
            return new NeckDot(place, shape, LabelOf(tone.Degree, tone.Note, labels));
        }
        return null;
    }
}
