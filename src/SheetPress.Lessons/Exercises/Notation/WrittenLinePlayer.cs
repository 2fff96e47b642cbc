using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>A written note put at its time in the progression, over the chord it is counted from; null where no chord sounds.</summary>
internal readonly record struct PlacedNote(WrittenNote Note, Fraction Start, Fraction Duration, HarmonyStep? Step);

/// <summary>How written notes are read.</summary>
internal enum PlayerManner
{
    /// <summary>A teacher's line: degrees of the chord, R the root of the chord; what cannot be played is an error.</summary>
    OwnLine,
    /// <summary>A teacher's line in steps of the key.</summary>
    OwnLineInKey,
    /// <summary>A pattern that has to go over any chord: R is the bass of a slash chord, a hold with nothing before it is struck, and what has no next chord stays with this one.</summary>
    Pattern,
}

/// <summary>Turns the written notes of a teacher's line or a pattern into pitches over the chords.</summary>
internal sealed class WrittenLinePlayer
{
    private readonly ExerciseContext _context;
    private readonly HarmonyTrack _track;
    private readonly NeckRange _range;
    private readonly PitchPlacer _placer;
    private readonly LineWriter _writer = new();
    private readonly List<PlacedNote> _written = [];
    private readonly PlayerManner _manner;
    private static readonly DegreeWord Root = new(new DegreeRequest(Degree.Root, false), 0);
    private WrittenRegisters _registers = null!;
    private readonly HashSet<(SourceSpan, string)> _reported = [];
    private Pitch? _last;
    private int _octaves;

    /// <summary>Makes a player.</summary>
    /// <param name="context">The exercise.</param>
    /// <param name="track">Its chords.</param>
    /// <param name="manner">How the notes are read.</param>
    public WrittenLinePlayer(ExerciseContext context, HarmonyTrack track, PlayerManner manner)
    {
        _context = context;
        _track = track;
        _range = NeckRange.Of(context);
        _placer = new PitchPlacer(context, _range);
        _manner = manner;
    }

    private bool IsOfKey => _manner == PlayerManner.OwnLineInKey;

    private bool IsPattern => _manner == PlayerManner.Pattern;

    // In another key or for another instrument the notes stay and their places on the neck are chosen anew.
    private bool IsMoved => _context.Lesson.Transposition != Interval.Unison || _context.Lesson.WrittenFor != _context.Instrument;

    /// <summary>Plays the notes.</summary>
    /// <param name="notes">In order of time.</param>
    /// <param name="registers">Where their roots lie; planned from the notes when not given.</param>
    public Line Play(IReadOnlyList<PlacedNote> notes, WrittenRegisters? registers = null)
    {
        _registers = registers ?? new WrittenRegisters(_context, _track, _range, _manner, notes);
        if (_context.Lesson.WrittenFor != _context.Instrument) _octaves = OctavesThatFit(notes);
        foreach (var placed in notes)
        {
            if (!placed.Note.IsHold) Write(placed);
            else if (!(CanHold(placed) && _writer.HoldUntil(placed.Start, placed.Start + placed.Duration)) && IsPattern) Write(placed with { Note = placed.Note with { Tones = [Root] } });
        }
        if (!IsPattern && !IsMoved) CheckConnections();
        return _writer.Finish(_context.Progression.Length);
    }

    // What joins a note to one on the wrong side is left out; the author hears of it. At the very end only where the line does not start over.
    private void CheckConnections()
    {
        for (var i = 0; i < _writer.Count; i++)
        {
            if (!_written[i].Note.IsJoined || _writer.LostAt(i) is not { } lost) continue;
            var startsOver = i == _writer.Count - 1 && _written.Count(w => ReferenceEquals(w.Note, _written[i].Note)) > 1;
            if (!startsOver) Report(_written[i], LineProblems.LostConnection(lost));
        }
    }

    // What sounds may be held into a bar of a pattern as the root of its chord, taken early, or while its own chord lasts.
    private bool CanHold(PlacedNote placed)
    {
        if (!IsPattern || _last is not { } last) return true;
        if (placed.Step is not { } step) return false;
        return last.Name.PitchClass == step.Chord.Lowest.PitchClass || (placed.Start > step.Start && step.IsChordTone(last.MidiNumber));
    }

    private void Write(PlacedNote placed)
    {
        var tones = ImmutableArray.CreateBuilder<LineTone>(placed.Note.Tones.Count);
        foreach (var word in placed.Note.Tones)
        {
            if (PitchOf(word, placed) is not { } named) return;
            var head = placed.Note.Marks.Head;
            var pitch = head == Notehead.Harmonic ? Harmonic(named, placed, word, ref head, out var position) : Pinned(named, placed, word, out position);
            tones.Add(new LineTone(pitch.Pitch) { Degree = pitch.Degree, Position = position, Head = head, Finger = IsMoved ? null : placed.Note.Pin.Finger });
        }
        tones.Sort(static (a, b) => a.Pitch.CompareTo(b.Pitch));
        _last = tones[0].Pitch;
        _written.Add(placed);
        _writer.Add(placed.Note.Marks.On(new LineNote
        {
            Start = placed.Start,
            Duration = placed.Duration,
            Tones = tones.ToImmutable(),
            IsSimile = placed.Note.IsSimile,
            Count = placed.Note.Count,
        }));
    }

    private NamedPitch? PitchOf(ToneWord word, PlacedNote placed)
    {
        switch (word)
        {
            case DegreeWord degree when IsOfKey:
                return OfKeyDegree(degree, placed);
            case DegreeWord degree:
                if (placed.Step is not { } step) return Report(placed, LineProblems.NoChord(Written(placed), BarOf(placed)));
                var resolved = _registers.Resolve(degree, step);
                return _placer.Place(new NamedPitch(_registers.RootOf(step) + WrittenRegisters.FromRoot(resolved, degree), degree.Octaves == 0 ? resolved : resolved.Simple), placed.Start);
            case NextWord next:
                if (IsPattern && placed.Step is { Next: null }) return PitchOf(Root, placed);
                if (placed.Step?.Next is not { } following) return Report(placed, LineProblems.NoNextChord(Written(placed), BarOf(placed)));
                var pitch = Following(next.Note, placed.Step, following);
                return _placer.Place(new NamedPitch(pitch, placed.Step.NameOf(pitch.Name)), placed.Start);
            case PitchWord absolute:
                return Absolute(absolute, placed);
            default:
                return Same(placed);
        }
    }

    private NamedPitch OfKeyDegree(DegreeWord word, PlacedNote placed)
    {
        var key = _registers.KeyAt(placed.Start);
        var pitch = _registers.TonicOf(key) + WrittenRegisters.FromRoot(WrittenRegisters.OfKey(key, word.Request), word);
        return _placer.Place(new NamedPitch(pitch, placed.Step?.NameOf(pitch.Name)), placed.Start);
    }

    private Pitch Following(NextNote note, HarmonyStep step, HarmonyStep next)
    {
        var root = _registers.BassOf(next);
        if (!IsPattern || note == NextNote.Root) return FollowingAsWritten(note, step, root);
        // A pattern does not strike one note twice on the way to a root, nor leap or leave the neck for it: it comes from the other side
        // then. Where the tones before are far from the root, its lead stays with them and the root takes its own octave.
        foreach (var way in WaysTo(note))
        {
            var pitch = FollowingAsWritten(way, step, root);
            if (IsLead(pitch) && IsNear(pitch)) return pitch;
            if (_last is not { } last) continue;
            var other = pitch + (Interval.Octave * (last.MidiNumber > pitch.MidiNumber ? 1 : -1));
            if (IsLead(other) && IsNear(other)) return other;
        }
        foreach (var way in WaysTo(note))
        {
            var pitch = FollowingAsWritten(way, step, root);
            if (IsLead(pitch)) return pitch;
        }
        return FollowingAsWritten(note, step, root);
    }

    private bool IsLead(Pitch pitch) => _range.CanPlay(pitch.MidiNumber) && pitch.MidiNumber != _last?.MidiNumber;

    private bool IsNear(Pitch pitch) => _last is not { } last || Math.Abs(pitch.MidiNumber - last.MidiNumber) <= LeadOctaves.WidestStep;

    private static ReadOnlySpan<NextNote> WaysTo(NextNote note) => note switch
    {
        NextNote.Under => [NextNote.Under, NextNote.Over, NextNote.StepOver],
        NextNote.Over => [NextNote.Over, NextNote.Under, NextNote.StepUnder],
        NextNote.StepUnder => [NextNote.StepUnder, NextNote.StepOver, NextNote.Over],
        NextNote.StepOver => [NextNote.StepOver, NextNote.StepUnder, NextNote.Under],
        _ => [NextNote.Fifth, NextNote.Under, NextNote.Over],
    };

    private Pitch FollowingAsWritten(NextNote note, HarmonyStep step, Pitch root) => note switch
    {
        NextNote.Under => ApproachNotes.ChromaticBelow(root),
        NextNote.Over => ApproachNotes.ChromaticAbove(root),
        NextNote.StepUnder => ApproachNotes.ScaleBelow(step, root),
        NextNote.StepOver => ApproachNotes.ScaleAbove(step, root),
        NextNote.Fifth => _range.CanPlay(root.MidiNumber - 5) ? ApproachNotes.Dominant(root, below: true) : ApproachNotes.Dominant(root, below: false),
        _ => root,
    };

    private NamedPitch? Absolute(PitchWord word, PlacedNote placed)
    {
        var transposed = _context.Lesson.Transposition;
        var name = word.Name + transposed;
        var pitch = word.Octave is { } octave ? new Pitch(word.Name, octave + _octaves) + transposed : Nearest(name);
        var named = new NamedPitch(pitch, placed.Step?.NameOf(name));
        if (_range.CanPlay(pitch.MidiNumber)) return named;
        // A line moved to another key or instrument may leave the neck and is folded back; one as its author wrote it must be on it.
        if (IsMoved || word.Octave is null) return _placer.Place(named, placed.Start);
        return Report(placed, LineProblems.OffTheNeck(pitch.Name.ToDisplayString() + pitch.Octave, _context.Instrument.Name));
    }

    // The move by whole octaves, the smallest first, that brings the most of the written pitches onto the neck.
    private int OctavesThatFit(IReadOnlyList<PlacedNote> notes)
    {
        Pitch[] pitches = [.. notes.SelectMany(n => n.Note.Tones).OfType<PitchWord>().Where(w => w.Octave is not null).Select(w => new Pitch(w.Name, w.Octave!.Value) + _context.Lesson.Transposition)];
        var (best, most) = (0, -1);
        foreach (var octaves in (ReadOnlySpan<int>)[0, -1, 1, -2, 2, -3, 3])
        {
            var fitting = pitches.Count(p => _range.CanPlay(p.MidiNumber + (12 * octaves)));
            if (fitting > most) (best, most) = (octaves, fitting);
        }
        return best;
    }

    private Pitch Nearest(NoteName name)
    {
        var center = _last?.MidiNumber ?? Math.Max(_range.Home, _range.Lowest) + 7;
        return Pitch.AtOrAbove(name, center - 6);
    }

    private NamedPitch? Same(PlacedNote placed)
    {
        if (_last is { } last) return new NamedPitch(last, placed.Step?.NameOf(last.Name));
        if (placed.Step is { } step) return _placer.Place(new NamedPitch(_registers.BassOf(step), step.BassDegree), placed.Start);
        return Report(placed, LineProblems.NoChord(Written(placed), BarOf(placed)));
    }

    // A pinned note keeps its place in the key and on the instrument it was written for.
    private NamedPitch Pinned(NamedPitch named, PlacedNote placed, ToneWord word, out FretPosition? position)
    {
        position = null;
        var pin = placed.Note.Pin;
        if (!pin.IsSet || IsMoved) return named;
        var instrument = _context.Instrument;
        if (IsPattern)
        {
            position = NeckPlaces.Find(instrument, named.Pitch.MidiNumber, pin);
            return named;
        }
        if (pin.String is { } number && (number < 1 || number > instrument.StringCount))
        {
            Report(placed, LineProblems.NoSuchString(number, instrument.StringCount));
            return named;
        }
        var octaves = word is DegreeWord or NextWord ? 3 : 0;
        for (var octave = 0; octave <= octaves; octave++)
        {
            foreach (var sign in octave == 0 ? [1] : new[] { 1, -1 })
            {
                var pitch = named.Pitch + (Interval.Octave * (octave * sign));
                if (NeckPlaces.Find(instrument, pitch.MidiNumber, pin) is not { } found) continue;
                position = found;
                return named with { Pitch = pitch };
            }
        }
        Report(placed, LineProblems.PinMisses(named.Pitch.Name.ToDisplayString() + named.Pitch.Octave, NeckPlaces.Describe(pin)));
        return named;
    }

    // A degree takes the octave in which it can be had as a harmonic. Moved to another key or instrument, what is none there is played as a note.
    private NamedPitch Harmonic(NamedPitch named, PlacedNote placed, ToneWord word, ref Notehead head, out FretPosition? position)
    {
        var pin = IsMoved ? default : placed.Note.Pin;
        foreach (var octave in word is DegreeWord or NextWord ? (ReadOnlySpan<int>)[0, 1, -1, 2, -2, 3] : [0])
        {
            var pitch = named.Pitch + (Interval.Octave * octave);
            foreach (var place in NaturalHarmonics.PlacesOf(_context.Instrument, pitch.MidiNumber))
            {
                if ((pin.String ?? place.String) != place.String || (pin.Fret ?? place.Fret) != place.Fret) continue;
                position = pin.IsSet ? place : null;
                return named with { Pitch = pitch };
            }
        }
        position = null;
        if (IsMoved || IsPattern) head = Notehead.Normal;
        else Report(placed, LineProblems.NoHarmonic(named.Pitch.Name.ToDisplayString() + named.Pitch.Octave, _context.Instrument.Name));
        return named;
    }

    // A line that starts over, or that stands over several chords, has each fault reported once.
    private NamedPitch? Report(PlacedNote placed, Problem problem)
    {
        if (!_reported.Add((placed.Note.Span, problem.Code))) return null;
        _context.Diagnostics.Add(placed.Note.Span, problem);
        return null;
    }

    private string Written(PlacedNote placed) => _context.Diagnostics.Source.Text.Length >= placed.Note.Span.End && placed.Note.Span.End > placed.Note.Span.Start
        ? _context.Diagnostics.Source.Text[placed.Note.Span.Start..placed.Note.Span.End]
        : "the note";

    private int BarOf(PlacedNote placed) => ProgressionBars.NumberAt(_context.Progression, placed.Start);
}
