using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>A pitch with the degree to name it by.</summary>
/// <param name="Pitch">Sounding pitch.</param>
/// <param name="Degree">Degree above the root of the chord of the moment; null when it has none.</param>
internal readonly record struct NamedPitch(Pitch Pitch, Degree? Degree);

/// <summary>Why a note cannot be joined to the next one as it was asked for.</summary>
internal enum LostReason
{
    /// <summary>No note follows at once.</summary>
    NothingFollows,
    /// <summary>The next note is the same.</summary>
    SamePitch,
    /// <summary>The next note is lower after a hammer-on, or higher after a pull-off.</summary>
    WrongSide,
    /// <summary>The next note is one of more tones, which have to be struck.</summary>
    OthersAreStruck,
}

/// <summary>A connection that is left out.</summary>
/// <param name="Connection">Its kind.</param>
/// <param name="Reason">Why.</param>
internal readonly record struct LostConnection(Connection Connection, LostReason Reason);

/// <summary>Collects the notes of a line in order of time.</summary>
internal sealed class LineWriter
{
    private readonly ImmutableArray<LineNote>.Builder _notes = ImmutableArray.CreateBuilder<LineNote>();

    /// <summary>Adds a single note in a slot, with the marks that the slot's rhythm carries and others.</summary>
    public void Add(Slot slot, NamedPitch pitch, StrokeMarks others = default) => Add(slot, [pitch], others);

    /// <summary>Adds notes struck together in a slot, from low to high, at places and with fingers where they are fixed.</summary>
    public void Add(Slot slot, ImmutableArray<NamedPitch> pitches, StrokeMarks others = default, ImmutableArray<FretPosition> places = default, ImmutableArray<int> fingers = default)
    {
        var cell = slot.Cell;
        var marks = cell is null ? others : cell.Marks.With(others);
        _notes.Add(marks.On(new LineNote
        {
            Start = slot.Start,
            Duration = slot.Duration,
            Tones = [.. pitches.Select((p, i) => new LineTone(p.Pitch) { Degree = p.Degree, Head = marks.Head, Position = places.IsDefaultOrEmpty ? null : places[i], Finger = FingerAt(fingers, i) })],
            Count = cell?.Count,
        }));
    }

    // An open string takes no finger, so that there is none to fix.
    private static int? FingerAt(ImmutableArray<int> fingers, int index) => fingers.IsDefaultOrEmpty || fingers[index] == 0 ? null : fingers[index];

    /// <summary>Adds a finished note.</summary>
    public void Add(LineNote note) => _notes.Add(note);

    /// <summary>Lets the last note sound on, when it sounds up to the start of the hold; false when there is nothing to hold.</summary>
    public bool HoldUntil(Fraction start, Fraction end)
    {
        if (_notes.Count == 0 || _notes[^1].End != start) return false;
        _notes[^1] = _notes[^1] with { Duration = end - _notes[^1].Start };
        return true;
    }

    /// <summary>How many notes there are.</summary>
    public int Count => _notes.Count;

    /// <summary>How a note is joined to the next one, where that note is missing, lies on the wrong side or is struck with others; null where all is well.</summary>
    /// <param name="index">Index of the note.</param>
    public LostConnection? LostAt(int index)
    {
        var note = _notes[index];
        if (note.Connection == Connection.None) return null;
        if (index + 1 >= _notes.Count || _notes[index + 1].Start != note.End) return new LostConnection(note.Connection, LostReason.NothingFollows);
        var next = _notes[index + 1];
        var rise = next.Tones[0].Pitch.MidiNumber - note.Tones[0].Pitch.MidiNumber;
        if (rise == 0) return new LostConnection(note.Connection, LostReason.SamePitch);
        if (note.Connection == Connection.Slide) return null;
        if (rise > 0 != (note.Connection == Connection.HammerOn)) return new LostConnection(note.Connection, LostReason.WrongSide);
        return next.Tones.Length > note.Tones.Length ? new LostConnection(note.Connection, LostReason.OthersAreStruck) : null;
    }

    /// <summary>
    /// The line. A hammer-on that does not go up or a pull-off that does not go down, as a rhythm's marks can ask for over some
    /// chord, and any connection over a gap, out of the last note or into a chord that is struck, is taken back; so is a slur with only one end.
    /// </summary>
    public Line Finish(Fraction length)
    {
        for (var i = 0; i < _notes.Count; i++) if (LostAt(i) is not null) _notes[i] = _notes[i] with { Connection = Connection.None };
        PairSlurs();
        return new Line(_notes.ToImmutable(), length);
    }

    private void PairSlurs()
    {
        var open = -1;
        for (var i = 0; i < _notes.Count; i++)
        {
            if (_notes[i].SlurStop && open < 0) _notes[i] = _notes[i] with { SlurStop = false };
            if (_notes[i].SlurStop) open = -1;
            if (!_notes[i].SlurStart) continue;
            if (open >= 0) _notes[i] = _notes[i] with { SlurStart = false };
            else open = i;
        }
        if (open >= 0) _notes[open] = _notes[open] with { SlurStart = false };
    }
}
