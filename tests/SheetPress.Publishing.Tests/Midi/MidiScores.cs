using NAudio.Midi;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Publishing.Tests;

/// <summary>Small scores, and their MIDI files as an independent reader (NAudio) sees them.</summary>
internal static class MidiScores
{
    public static readonly Instrument Bass = InstrumentCatalogue.Find("bass-4")!;

    public static LineNote Note(Fraction start, Fraction duration, params string[] pitches) => new()
    {
        Start = start,
        Duration = duration,
        Tones = [.. pitches.Select(p => new LineTone(Pitch.Parse(p)))],
    };

    public static FrameMeasure Measure(Meter? meter = null, Fraction? length = null, string key = "C minor") => new()
    {
        Meter = meter ?? new Meter(4, 4),
        Key = Key.Parse(key),
        Length = length ?? (meter ?? new Meter(4, 4)).MeasureLength,
    };

    public static Score Build(IReadOnlyList<FrameMeasure> frame, params LineNote[] notes) => Build(Feel.Straight, frame, notes);

    public static Score Build(Feel feel, IReadOnlyList<FrameMeasure> frame, params LineNote[] notes) => ScoreBuilder.Build(
        new ScoreHeader { Id = "test", Title = "Test", Instrument = Bass, Tempo = new Tempo(120, new NoteValue(NoteBase.Quarter)), Feel = feel },
        frame,
        new Line([.. notes], notes.Length == 0 ? Fraction.Zero : notes[^1].End));

    public static byte[] Bytes(Score score, MidiOptions? options = null)
    {
        var stream = new MemoryStream();
        MidiWriter.WriteExercise(score, options ?? MidiOptions.Default, stream);
        return stream.ToArray();
    }

    /// <summary>Strict checking of the reader is on: it throws on notes without an end and on a missing end of track.</summary>
    public static MidiFile Read(byte[] bytes) => new(new MemoryStream(bytes), strictChecking: true);

    public static MidiFile Read(Score score, MidiOptions? options = null) => Read(Bytes(score, options));

    /// <summary>Start and length in ticks, key and velocity of every note of a track, in order.</summary>
    public static List<(long Start, int Length, int Key, int Velocity)> Notes(this MidiFile file, int track = 1) =>
        [.. file.Events[track].OfType<NoteOnEvent>().Where(e => e.Velocity > 0).Select(e => (e.AbsoluteTime, e.NoteLength, e.NoteNumber, e.Velocity))];

    public static List<long> Starts(this MidiFile file, int track = 1) => [.. file.Notes(track).Select(n => n.Start)];

    public static int TrackNamed(this MidiFile file, string name)
    {
        for (var i = 0; i < file.Tracks; i++)
        {
            if (file.Events[i].OfType<TextEvent>().Any(e => e.MetaEventType == MetaEventType.SequenceTrackName && e.Text == name)) return i;
        }
        return -1;
    }
}
