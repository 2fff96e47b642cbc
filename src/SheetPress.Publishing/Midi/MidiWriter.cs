using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Publishing;

/// <summary>
/// Writes scores as Standard MIDI Files (MIDI 1.0, SMF 1.0) of format 1 with 960 ticks a quarter note: a track of tempo, meter, key
/// and marks, one for the instrument at sounding pitch, and on request one for chords and one for the click. Repeats are played
/// out, ties merged, swing applied. The same bytes for the same input.
/// </summary>
public static class MidiWriter
{
    private const int PartChannel = 0;
    private const int ChordChannel = 1;
    private const int PercussionChannel = 9;

    /// <summary>Writes one exercise.</summary>
    /// <param name="score">The exercise.</param>
    /// <param name="options">What the file holds.</param>
    /// <param name="output">Where to write; it stays open.</param>
    /// <exception cref="ArgumentOutOfRangeException">The tempo factor is outside 0.1 to 4.</exception>
    public static void WriteExercise(Score score, MidiOptions options, Stream output) => Write([score], score.Title, options, output);

    /// <summary>Writes all exercises of a lesson one after another, a silent bar between them.</summary>
    /// <param name="scores">The exercises in order; at least one.</param>
    /// <param name="title">Title of the lesson.</param>
    /// <param name="options">What the file holds.</param>
    /// <param name="output">Where to write; it stays open.</param>
    /// <exception cref="ArgumentException">There is no exercise.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The tempo factor is outside 0.1 to 4.</exception>
    public static void WriteLesson(IReadOnlyList<Score> scores, string title, MidiOptions options, Stream output)
    {
        if (scores.Count == 0) throw new ArgumentException("A lesson file needs at least one exercise.", nameof(scores));
        Write(scores, title, options, output);
    }

    private static void Write(IReadOnlyList<Score> scores, string title, MidiOptions options, Stream output)
    {
        if (options.TempoFactor is not (>= 0.1 and <= 4)) throw new ArgumentOutOfRangeException(nameof(options), options.TempoFactor, "The tempo factor is from 0.1 to 4.");
        var conductor = new MidiTrack();
        conductor.Name(title);
        var part = new MidiTrack();
        part.Name(scores[0].Instrument.Name);
        var chords = new MidiTrack();
        chords.Name("Chords");
        chords.Program(ChordChannel, 0, ChordTrack.Program);
        var click = new MidiTrack();
        click.Name("Click");
        if (scores.Any(PartTrack.HasBends)) PartTrack.SetBendRange(part, PartChannel);

        var at = Fraction.Zero;
        var program = 0;
        for (var i = 0; i < scores.Count; i++)
        {
            var score = scores[i];
            var performance = Performance.Of(score);
            var meter = score.Measures[0].Meter;
            var lead = at;
            var start = WriteLead(click, score, lead, options);
            ConductorTrack.Write(conductor, performance, lead, start, options.TempoFactor);
            if (score.Instrument.MidiProgram != program) part.Program(PartChannel, MidiClock.TickOf(lead), program = score.Instrument.MidiProgram);
            PartTrack.Write(part, PartChannel, performance, start);
            ChordTrack.Write(chords, ChordChannel, performance, start);
            if (options.Click) ClickTrack.Write(click, PercussionChannel, performance, start);
            at = start + performance.Length;
            if (i + 1 < scores.Count) at += meter.MeasureLength;
        }

        var tracks = ImmutableArray.CreateBuilder<MidiTrack>();
        tracks.Add(conductor);
        if (options.Part) tracks.Add(part);
        if (options.Chords) tracks.Add(chords);
        if (options.Click || options.CountIn) tracks.Add(click);
        WriteFile(tracks.ToImmutable(), MidiClock.TickOf(at), output);
    }

    // The beats that a pickup lacks pass in silence, so that bar lines fall on bars; counted in, a full bar comes before them.
    private static Fraction WriteLead(MidiTrack click, Score score, Fraction lead, MidiOptions options)
    {
        var meter = score.Measures[0].Meter;
        var missing = score.OffsetOf(0);
        if (!options.CountIn) return lead + missing;
        ClickTrack.WriteMeasure(click, PercussionChannel, meter, lead, Fraction.Zero, meter.MeasureLength);
        ClickTrack.WriteMeasure(click, PercussionChannel, meter, lead + meter.MeasureLength, Fraction.Zero, missing);
        return lead + meter.MeasureLength + missing;
    }

    private static void WriteFile(ImmutableArray<MidiTrack> tracks, long end, Stream output)
    {
        output.Write([(byte)'M', (byte)'T', (byte)'h', (byte)'d', 0, 0, 0, 6, 0, 1, 0, (byte)tracks.Length, MidiClock.TicksPerQuarter >> 8, MidiClock.TicksPerQuarter & 0xFF]);
        foreach (var track in tracks) output.Write(track.ToChunk(end));
    }
}
