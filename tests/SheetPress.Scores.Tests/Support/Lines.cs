using SheetPress.Theory;

namespace SheetPress.Scores.Tests;

/// <summary>Small lines, frames and headers for tests.</summary>
internal static class Lines
{
    public static ScoreHeader Header { get; } = new()
    {
        Id = "test",
        Title = "Test",
        Instrument = InstrumentCatalogue.Find("bass-4")!,
        Tempo = new Tempo(92, new NoteValue(NoteBase.Quarter)),
    };

    public static LineTone Tone(string pitch) => new(Pitch.Parse(pitch));

    public static LineNote Note(Fraction start, Fraction duration, params string[] pitches) => new()
    {
        Start = start,
        Duration = duration,
        Tones = [.. pitches.Select(Tone)],
    };

    /// <summary>A line on one pitch from lengths in quarter notes, "r" before rests.</summary>
    public static Line OnOnePitch(string lengths, string pitch = "A1")
    {
        var spans = RhythmText.SpansOf(lengths, out var total);
        return new Line([.. spans.Select(s => Note(s.Start, s.End - s.Start, pitch))], total);
    }

    public static FrameMeasure Measure(string meter, string? length = null) => new()
    {
        Meter = RhythmText.MeterOf(meter),
        Key = Key.Parse("C minor"),
        Length = length is null ? RhythmText.MeterOf(meter).MeasureLength : RhythmText.FractionOf(length),
    };

    public static string BeamText(Voice voice) => string.Join(' ', voice.Events.Select(e => (e.IsRest ? "r" : "") + RhythmText.Text(e.Value) + string.Concat(e.Beams.Select(b => b switch
    {
        BeamState.Begin => '[',
        BeamState.Continue => '-',
        BeamState.End => ']',
        BeamState.ForwardHook => '>',
        _ => '<',
    }))));
}
