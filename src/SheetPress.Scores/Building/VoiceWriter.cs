using System.Collections.Immutable;

namespace SheetPress.Scores;

/// <summary>Writes one line into the measures of a frame, one measure after the other.</summary>
internal sealed class VoiceWriter
{
    private readonly ImmutableArray<LineNote> _notes;
    private readonly IReadOnlyList<FrameMeasure> _frame;
    private readonly ImmutableArray<MeasurePlan> _plans;
    private readonly List<SoundingSpan> _spans = [];
    private readonly List<int> _noteOfSpan = [];
    private int _next;
    private Meter? _meter;
    private MetricNode? _tree;

    public VoiceWriter(Line line, IReadOnlyList<FrameMeasure> frame, ImmutableArray<MeasurePlan> plans)
    {
        _notes = line.Notes;
        _frame = frame;
        _plans = plans;
        var total = plans[^1].Start + frame[^1].Length;
        var end = Fraction.Zero;
        foreach (var note in _notes)
        {
            if (note.Tones.IsDefaultOrEmpty) throw new ArgumentException($"The note at {note.Start} has no tones.", nameof(line));
            if (note.Duration <= Fraction.Zero) throw new ArgumentException($"The note at {note.Start} lasts {note.Duration} quarter notes.", nameof(line));
            if (note.Start < end) throw new ArgumentException($"The note at {note.Start} starts before the one ahead of it ends at {end}.", nameof(line));
            end = note.End;
        }
        if (Fraction.Max(end, line.Length) > total) throw new ArgumentException($"The line lasts {Fraction.Max(end, line.Length)} quarter notes, and the measures hold {total}.", nameof(line));
    }

    /// <summary>Writes a measure; call for each measure in order.</summary>
    public Voice Write(int index)
    {
        var measure = _frame[index];
        var plan = _plans[index];
        CollectSpans(plan.Start, plan.Start + measure.Length);
        if (_spans.Count == 0 && measure.Length == measure.Meter.MeasureLength)
        {
            return new Voice([new ScoreEvent { Onset = Fraction.Zero, Value = new NoteValue(NoteBase.Whole), MeasureRest = measure.Length }], []);
        }
        var rhythm = Spell(index, measure, plan);
        var events = ImmutableArray.CreateBuilder<ScoreEvent>(rhythm.Values.Length);
        for (var i = 0; i < rhythm.Values.Length; i++) events.Add(ToEvent(rhythm.Values[i], plan));
        return new Voice(Beamer.Beam(measure.Meter, TreeOf(measure.Meter), plan.Offset, events.MoveToImmutable(), rhythm.Tuplets), rhythm.Tuplets);
    }

    // One tree serves all measures of a meter in a row.
    private MetricNode TreeOf(Meter meter)
    {
        if (_tree is not null && meter == _meter) return _tree;
        _meter = meter;
        return _tree = MetricNode.OfMeter(meter);
    }

    // The sounding stretches of the measure. A short note does not ring over the bar line.
    private void CollectSpans(Fraction start, Fraction end)
    {
        _spans.Clear();
        _noteOfSpan.Clear();
        while (_next < _notes.Length && _notes[_next].End <= start) _next++;
        for (var i = _next; i < _notes.Length && _notes[i].Start < end; i++)
        {
            var note = _notes[i];
            if (note.Start < start && IsShort(note)) continue;
            _spans.Add(new SoundingSpan(Fraction.Max(note.Start, start) - start, Fraction.Min(note.End, end) - start));
            _noteOfSpan.Add(i);
        }
    }

    // A dead note is struck once, and a staccato note does not last: where such a length would need ties, its first value stays and the
    // rest is silence. A dot and a tie at one note contradict each other (handbook rule, from memory).
    private SpelledRhythm Spell(int index, FrameMeasure measure, MeasurePlan plan)
    {
        while (true)
        {
            SpelledRhythm rhythm;
            try
            {
                rhythm = RhythmSpeller.Spell(measure.Meter, TreeOf(measure.Meter), plan.Offset, measure.Length, _spans);
            }
            catch (UnwritableRhythmException e)
            {
                throw new UnwritableRhythmException(e.Message, index, e);
            }
            var shortened = false;
            for (var i = 1; i < rhythm.Values.Length; i++)
            {
                var (before, value) = (rhythm.Values[i - 1], rhythm.Values[i]);
                if (value.IsRest || value.Span != before.Span || !IsShort(_notes[_noteOfSpan[value.Span]])) continue;
                if (_spans[value.Span].End <= value.Onset) continue;
                _spans[value.Span] = _spans[value.Span] with { End = value.Onset };
                shortened = true;
            }
            if (!shortened) return rhythm;
        }
    }

    private static bool IsShort(LineNote note)
    {
        if ((note.Articulations & (Articulations.Staccato | Articulations.Tenuto)) == Articulations.Staccato) return true;
        foreach (var tone in note.Tones) if (tone.Head != Notehead.Dead) return false;
        return true;
    }

    private ScoreEvent ToEvent(SpelledValue value, MeasurePlan plan)
    {
        if (value.IsRest) return new ScoreEvent { Onset = value.Onset, Value = value.Value };
        var note = _notes[_noteOfSpan[value.Span]];
        var start = plan.Start + value.Onset;
        var isFirst = start == note.Start;
        var isLast = start + value.Value.Duration == note.End || IsShort(note);
        var tones = ImmutableArray.CreateBuilder<Tone>(note.Tones.Length);
        foreach (var tone in note.Tones)
        {
            var isDead = tone.Head == Notehead.Dead;
            if (isDead && !isFirst) continue;
            tones.Add(new Tone(tone.Pitch)
            {
                Position = tone.Position,
                Finger = isFirst && !isDead ? tone.Finger : null, // a dead note has no pitch, only a damped string
                Degree = isFirst && !isDead ? tone.Degree : null,
                Head = tone.Head,
                TieStop = !isFirst,
                TieStart = !isLast && !isDead,
            });
        }
        // A fermata and a slide out belong to the end of a tied chain, as the connection does; everything else to its start.
        var articulations = Articulations.None;
        if (isFirst) articulations |= note.Articulations & ~Articulations.Fermata;
        if (isLast) articulations |= note.Articulations & Articulations.Fermata;
        return new ScoreEvent
        {
            Onset = value.Onset,
            Value = value.Value,
            Tones = tones.ToImmutable(),
            Articulations = articulations,
            Stroke = isFirst ? note.Stroke : Stroke.None,
            Connection = isLast ? note.Connection : Connection.None,
            SlurStart = isFirst && note.SlurStart,
            SlurStop = isLast && note.SlurStop,
            SlideIn = isFirst ? note.SlideIn : LooseSlide.None,
            SlideOut = isLast ? note.SlideOut : LooseSlide.None,
            BendHalfSteps = isFirst ? note.BendHalfSteps : null,
            Count = isFirst ? note.Count : null,
        };
    }
}
