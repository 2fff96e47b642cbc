using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>
/// Fingers two voices that one player plays at once: whatever starts or sounds on at a moment is one grip, and a tone that sounds on
/// stays where it is.
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
        var held = new ImmutableArray<(int, int)>[starts.Count];
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
            var pairs = ImmutableArray.CreateBuilder<(int, int)>();
            var now = new List<(Place, int)>();
            for (var i = 0; i < byPitch.Count; i++)
            {
                foreach (var (owner, _) in byPitch[i])
                {
                    now.Add((owner, i));
                    foreach (var (earlier, index) in before) if (earlier == owner) pairs.Add((index, i));
                }
            }
            held[events.Count] = pairs.ToImmutable();
            events.Add(note with { Tones = tones, Duration = Fraction.One });
            owners.Add([.. byPitch.Select(g => g.Select(s => s.Owner).ToList())]);
            before = now;
        }
        var times = starts.ToArray();
        for (var i = 0; i + 1 < times.Length; i++) events[i] = events[i] with { Duration = times[i + 1] - times[i] };
        var result = LineFingering.Apply(new Line(events.MoveToImmutable(), upper.Length), instrument, neck, level, chordStarts, held);
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
