using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>
/// Fingers two voices that one player plays at once: whatever starts or sounds on at a moment is one grip, and a tone that sounds on
/// stays where it is; what a voice joins by a hammer-on, pull-off or slide lies on one string.
/// </summary>
internal static class TwoVoiceFingering
{
    /// <summary>A tone of one of the voices.</summary>
    private readonly record struct Place(int Voice, int Note, int Tone);

    /// <summary>Fingers both voices.</summary>
    /// <returns>The two lines; or the start and the reason of the first moment that cannot be played.</returns>
    public static (Line Upper, Line Lower, FingeringSummary? Summary, Fraction? FailedAt, string Reason) Apply(Line upper, Line lower, Instrument instrument, NeckRequest neck, int level, ImmutableArray<Fraction> chordStarts)
    {
        Line[] voices = [upper, lower];
        var starts = new SortedSet<Fraction>(voices.SelectMany(v => v.Notes.Select(n => n.Start)));
        var events = ImmutableArray.CreateBuilder<LineNote>(starts.Count);
        var owners = new List<List<Place>[]>();
        var links = new ImmutableArray<ToneLink>[starts.Count];
        var before = new List<(Place Owner, int Index)>();
        foreach (var start in starts)
        {
            var sounding = SoundingAt(voices, start);
            // A pitch that both voices have at once is one tone of the hand.
            var byPitch = sounding.GroupBy(s => s.Tone.Pitch.MidiNumber).OrderBy(g => g.Key).ToList();
            // Only the voice that is bent or slides needs a finger for that.
            var tones = byPitch.Select(g => g.Select(s => s.Tone).OrderByDescending(t => t.Position is not null).First() with { IsStopped = g.Any(s => voices[s.Owner.Voice].Notes[s.Owner.Note].MovesOnString) }).ToImmutableArray();
            var struck = sounding.First(s => voices[s.Owner.Voice].Notes[s.Owner.Note].Start == start).Owner;
            var note = voices[struck.Voice].Notes[struck.Note];
            var linked = ImmutableArray.CreateBuilder<ToneLink>();
            var now = new List<(Place, int)>();
            for (var i = 0; i < byPitch.Count; i++)
            {
                foreach (var (owner, _) in byPitch[i])
                {
                    now.Add((owner, i));
                    foreach (var (earlier, index) in before) if (BondOf(voices, earlier, owner, start) is { } bond) linked.Add(new ToneLink(index, i, bond));
                }
            }
            links[events.Count] = linked.ToImmutable();
            events.Add(note with { Tones = tones, Duration = Fraction.One, Connection = Connection.None });
            owners.Add([.. byPitch.Select(g => g.Select(s => s.Owner).ToList())]);
            before = now;
        }
        var times = starts.ToArray();
        for (var i = 0; i + 1 < times.Length; i++) events[i] = events[i] with { Duration = times[i + 1] - times[i] };
        var result = LineFingering.Apply(new Line(events.MoveToImmutable(), upper.Length), instrument, neck, level, chordStarts, links);
        if (result.FailedNote >= 0) return (upper, lower, null, times[result.FailedNote], result.Reason);
        var notes = voices.Select(v => v.Notes.ToBuilder()).ToArray();
        for (var i = 0; i < owners.Count; i++)
        {
            for (var t = 0; t < owners[i].Length; t++)
            {
                var fingered = result.Line.Notes[i].Tones[t];
                foreach (var owner in owners[i][t].Where(o => voices[o.Voice].Notes[o.Note].Start == times[i]))
                {
                    var note = notes[owner.Voice][owner.Note];
                    notes[owner.Voice][owner.Note] = note with { Tones = note.Tones.SetItem(owner.Tone, note.Tones[owner.Tone] with { Position = fingered.Position, Finger = fingered.Finger }) };
                }
            }
        }
        return (upper with { Notes = notes[0].ToImmutable() }, lower with { Notes = notes[1].ToImmutable() }, result.Summary, null, "");
    }

    // What a tone that sounded before is to one that sounds now.
    private static ToneBond? BondOf(Line[] voices, Place before, Place now, Fraction start)
    {
        if (before == now) return ToneBond.Held;
        if (before.Voice != now.Voice || before.Note + 1 != now.Note) return null;
        var (from, to) = (voices[before.Voice].Notes[before.Note], voices[now.Voice].Notes[now.Note]);
        if (from.Connection == Connection.None || to.Start != start || from.End != start) return null;
        // Of a chord that leads to fewer tones those are joined that lie nearest to them.
        var partner = from.Tones.Length == to.Tones.Length ? now.Tone : Nearest(from.Tones, to.Tones[now.Tone]);
        return partner != before.Tone ? null : from.Connection == Connection.Slide ? ToneBond.Slide : ToneBond.SameString;
    }

    private static int Nearest(ImmutableArray<LineTone> tones, LineTone to) =>
        Enumerable.Range(0, tones.Length).MinBy(i => Math.Abs(tones[i].Pitch.MidiNumber - to.Pitch.MidiNumber));

    private static List<(Place Owner, LineTone Tone)> SoundingAt(Line[] voices, Fraction at)
    {
        var found = new List<(Place, LineTone)>();
        for (var v = 0; v < voices.Length; v++)
        {
            var notes = voices[v].Notes;
            for (var n = 0; n < notes.Length && notes[n].Start <= at; n++)
            {
                // A dead note is gone once it is struck.
                if (notes[n].End <= at || (notes[n].Start < at && notes[n].Tones.All(t => t.Head == Notehead.Dead))) continue;
                for (var t = 0; t < notes[n].Tones.Length; t++) found.Add((new Place(v, n, t), notes[n].Tones[t]));
            }
        }
        return found;
    }
}
