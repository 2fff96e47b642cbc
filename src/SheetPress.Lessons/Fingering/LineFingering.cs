using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>Finds string, fret and finger for every note of a line by a shortest path over the whole line.</summary>
public static class LineFingering
{
    /// <summary>Fingers a line.</summary>
    /// <param name="line">The line; tones that have a position already keep it.</param>
    /// <param name="instrument">The instrument.</param>
    /// <param name="neck">What the author asked for.</param>
    /// <param name="level">Level 1 to 5; a higher level allows wider stretches.</param>
    /// <param name="chordStarts">Starts of the chords in quarter notes, in order: the hand likes to move with the harmony. May be empty.</param>
    public static FingeringResult Apply(Line line, Instrument instrument, NeckRequest neck, int level, ImmutableArray<Fraction> chordStarts) =>
        Apply(line, instrument, neck, level, chordStarts, links: null);

    /// <summary>The same for a line in which single tones depend on those of the event before, as they do where two voices are played by one hand.</summary>
    /// <param name="links">For each event the tones that sound on from the event before or are led to from there. Null for none.</param>
    internal static FingeringResult Apply(Line line, Instrument instrument, NeckRequest neck, int level, ImmutableArray<Fraction> chordStarts, ImmutableArray<ToneLink>[]? links)
    {
        if (line.Notes.IsEmpty) return new FingeringResult(line, -1, "");
        var hand = new HandModel(instrument);
        var costs = new FingeringCosts(hand, neck, level);
        var finder = new GripFinder(hand, costs, neck, level);
        var (grips, failed) = FindGrips(line.Notes, finder);
        if (failed >= 0) return new FingeringResult(line, failed, finder.Explain(line.Notes[failed]));
        var (path, unreached) = FingeringPath.Find(line.Notes, grips, costs, chordStarts, links);
        if (unreached >= 0) return new FingeringResult(line, unreached, WhyUnreached(line.Notes, unreached, links?[unreached] ?? []));
        path = FingeringPath.Find(line.Notes, PlaceHabits.Apply(line.Notes, grips, path, chordStarts), costs, chordStarts, links).Path;
        return new FingeringResult(line with { Notes = Place(line.Notes, path) }, -1, "") { Summary = Summarise(line.Notes, path, hand, costs, chordStarts) };
    }

    private static string WhyUnreached(ImmutableArray<LineNote> notes, int at, ImmutableArray<ToneLink> links) => links switch
    {
        [] => $"{notes[at - 1].Tones[0].Pitch} and {notes[at].Tones[0].Pitch} are joined but do not lie on one string",
        _ when links.FirstOrDefault(l => l.Bond != ToneBond.Held) is { Bond: not ToneBond.Held } joined => $"{notes[at - 1].Tones[joined.Before].Pitch} and {notes[at].Tones[joined.Now].Pitch} are joined, and the hand cannot have them on one string while it plays the rest",
        _ => "the hand cannot hold what sounds on while it plays the rest",
    };

    /// <summary>The grips of each note, open strings copied for every hand position that a neighbour may ask for.</summary>
    internal static (ImmutableArray<Grip>[] Grips, int FailedNote) FindGrips(ImmutableArray<LineNote> notes, GripFinder finder)
    {
        var known = new Dictionary<GripKey, ImmutableArray<Grip>>();
        var grips = new ImmutableArray<Grip>[notes.Length];
        for (var n = 0; n < notes.Length; n++)
        {
            var key = GripKey.Of(notes[n]);
            if (!known.TryGetValue(key, out var found))
            {
                found = finder.Find(notes[n]);
                known.Add(key, found);
            }
            if (found.IsEmpty) return (grips, n);
            grips[n] = found;
        }
        SpreadOpenGrips(grips);
        return (grips, -1);
    }

    private static void SpreadOpenGrips(ImmutableArray<Grip>[] grips)
    {
        if (!grips.Any(g => g.Any(x => x.IsOpen))) return;
        var after = new HashSet<int>[grips.Length];
        var hands = new HashSet<int> { 1 };
        for (var n = grips.Length - 1; n >= 0; n--)
        {
            after[n] = hands;
            if (grips[n].Any(g => !g.IsOpen)) hands = [.. grips[n].Where(g => !g.IsOpen).Select(g => g.Hand)];
        }
        var before = new HashSet<int> { 1 };
        for (var n = 0; n < grips.Length; n++)
        {
            var fretted = grips[n].Where(g => !g.IsOpen).ToArray();
            var places = before.Union(after[n]).Order().ToArray();
            if (fretted.Length < grips[n].Length)
                grips[n] = [.. fretted, .. grips[n].Where(g => g.IsOpen).SelectMany(g => places.Select(g.WithHand))];
            if (fretted.Length > 0) before = [.. fretted.Select(g => g.Hand)];
        }
    }

    private static ImmutableArray<LineNote> Place(ImmutableArray<LineNote> notes, Grip[] path)
    {
        var placed = ImmutableArray.CreateBuilder<LineNote>(notes.Length);
        for (var n = 0; n < notes.Length; n++)
        {
            var tones = ImmutableArray.CreateBuilder<LineTone>(notes[n].Tones.Length);
            for (var t = 0; t < notes[n].Tones.Length; t++)
                tones.Add(notes[n].Tones[t] with { Position = path[n].Positions[t], Finger = path[n].Fingers[t] });
            placed.Add(notes[n] with { Tones = tones.MoveToImmutable() });
        }
        return placed.MoveToImmutable();
    }

    private static FingeringSummary Summarise(ImmutableArray<LineNote> notes, Grip[] path, HandModel hand, FingeringCosts costs, ImmutableArray<Fraction> chordStarts)
    {
        var fretted = path.Where(g => !g.IsOpen).ToArray();
        if (fretted.Length == 0) return new FingeringSummary(0, 0, 0, 0, 0);
        var (shifts, hardest, hardestCost) = (0, 0, path[0].Cost);
        for (var n = 1; n < path.Length; n++)
        {
            if (path[n].Hand != path[n - 1].Hand) shifts++;
            var cost = path[n].Cost + costs.Between(path[n - 1], path[n], FingeringStep.Between(notes[n - 1], notes[n], chordStarts));
            if (cost > hardestCost) (hardest, hardestCost) = (n, cost);
        }
        return new FingeringSummary(fretted.Min(g => g.Hand), fretted.Max(g => g.Hand), shifts, WidestStretch(path, hand), hardest);
    }

    // Tones held at once, and neighbours played without a shift, are what the hand spans.
    private static double WidestStretch(Grip[] path, HandModel hand)
    {
        var widest = 0.0;
        for (var n = 0; n < path.Length; n++)
        {
            var places = n > 0 && path[n - 1].Hand == path[n].Hand ? path[n - 1].Positions.AddRange(path[n].Positions) : path[n].Positions;
            var frets = places.Where(p => p.Fret > 0).Select(p => p.Fret).ToArray();
            if (frets.Length > 1) widest = Math.Max(widest, hand.Distance(frets.Min(), frets.Max()));
        }
        return widest;
    }

    // Events that sound and are joined alike have the same grips.
    private readonly record struct GripKey(string Text)
    {
        public static GripKey Of(LineNote note)
        {
            var text = new System.Text.StringBuilder();
            foreach (var tone in note.Tones)
            {
                text.Append((char)(tone.Pitch.MidiNumber + 64));
                if (tone.Position is { } p) text.Append((char)(p.String + 1000)).Append((char)(p.Fret + 2000));
                if (tone.Finger is { } finger) text.Append((char)(finger + 4000));
                if (tone.Head == Notehead.Harmonic) text.Append('h');
                if (tone.IsStopped ?? note.MovesOnString) text.Append('!');
            }
            text.Append((char)((int)note.Stroke + 3000));
            return new GripKey(text.ToString());
        }
    }
}
