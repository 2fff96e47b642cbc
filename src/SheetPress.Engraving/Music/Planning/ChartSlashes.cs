using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Engraving;

/// <summary>What a chord chart shows in a measure: stemless slashes, one a beat (dotted in compound meters; handbooks, from memory), or the rhythm where the score asks for one.</summary>
internal static class ChartSlashes
{
    /// <summary>The voice to draw for a measure of a chord chart.</summary>
    /// <remarks>
    /// A measure of slash heads in any other rhythm than the beat, and every measure of a chart that shows its rhythm, is drawn as
    /// that rhythm; every other measure shows time to be filled, a slash for each beat. A measure of rests stays a rest, but a pickup
    /// with a chord, which many lines leave to the player, is filled too.
    /// </remarks>
    /// <param name="measure">The measure.</param>
    /// <param name="showsRhythm">Whether the chart shows the rhythm of its notes whatever their heads.</param>
    public static Voice VoiceOf(Measure measure, bool showsRhythm)
    {
        var voice = measure.Voices[0];
        if (voice.Events.All(e => e.IsRest)) return IsOpenPickup(measure) ? new Voice(Beats(measure), []) : voice;
        if (showsRhythm) return voice with { Events = [.. voice.Events.Select(AsSlash)] };
        if (voice.Events.All(e => e.IsRest || e.Tones.All(t => t.Head == Notehead.Slash)) && !voice.Events.All(e => IsOnBeat(e, measure.Meter))) return voice;
        return new Voice(Beats(measure), []);
    }

    /// <summary>Whether an event is a beat to be filled, drawn as a slash without a stem.</summary>
    public static bool IsBeatSlash(ScoreEvent e) => e.Tones.Length == 1 && ReferenceEquals(e.Tones[0], BeatTone);

    private static Tone BeatTone { get; } = new(new Pitch(Letter.C, 0, 4)) { Head = Notehead.Slash };

    private static ScoreEvent AsSlash(ScoreEvent e) => e.IsRest ? e : e with
    {
        Tones = [RhythmTone with { TieStart = e.Tones.Any(t => t.TieStart), TieStop = e.Tones.Any(t => t.TieStop) }],
        Connection = Connection.None,
        SlideIn = LooseSlide.None,
        SlideOut = LooseSlide.None,
        BendHalfSteps = null,
    };

    private static Tone RhythmTone { get; } = new(new Pitch(Letter.C, 0, 4)) { Head = Notehead.Slash };

    private static bool IsOnBeat(ScoreEvent e, Meter meter) => e.Tones.Length > 0 && e.Value.Duration == BeatLength(meter);

    private static bool IsOpenPickup(Measure measure) => measure.Length < measure.Meter.MeasureLength && measure.Harmonies.Any(h => h.Chord is not null);

    private static Fraction BeatLength(Meter meter) => meter.IsCompound ? meter.UnitLength * 3 : meter.UnitLength;

    private static ImmutableArray<ScoreEvent> Beats(Measure measure)
    {
        var events = ImmutableArray.CreateBuilder<ScoreEvent>();
        var length = BeatLength(measure.Meter);
        // A dot says that the head stands for its value: where the beat is a dotted half the slash is a white one.
        var slash = new NoteValue(measure.Meter.IsCompound && length > 2 ? NoteBase.Half : NoteBase.Quarter, measure.Meter.IsCompound ? 1 : 0);
        for (var at = Fraction.Zero; at < measure.Length; at += length)
        {
            events.Add(new ScoreEvent { Onset = at, Value = slash, Tones = [BeatTone] });
        }
        return events.ToImmutable();
    }
}
