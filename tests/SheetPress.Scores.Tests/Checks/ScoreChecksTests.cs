using System.Collections.Immutable;
using SheetPress.Theory;

namespace SheetPress.Scores.Tests;

/// <summary>Each test takes a sound score and changes one thing; exactly that is found.</summary>
public class ScoreChecksTests
{
    private static readonly Score Sound = ScoreBuilder.Build(
        Lines.Header,
        [Lines.Measure("4/4"), Lines.Measure("4/4") with { RepeatEndTimes = 2 }],
        new Line(
            [
                Fretted(0, new Fraction(1, 2), "A1", 3, 0), Fretted(new Fraction(1, 2), new Fraction(1, 2), "B1", 3, 2),
                Fretted(1, new Fraction(1, 3), "C2", 3, 3), Fretted(new Fraction(4, 3), new Fraction(1, 3), "D2", 2, 0), Fretted(new Fraction(5, 3), new Fraction(1, 3), "E2", 2, 2),
                Fretted(2, 4, "G2", 1, 0),
                Lines.Note(6, 2, "E1", "B1"),
            ],
            8));

    [Fact]
    public void A_sound_score_has_no_findings() => ScoreChecks.Run(Sound).ShouldBeEmpty();

    [Fact]
    public void A_gap_is_found() => ShouldFind(ChangeEvent(0, 1, e => e with { Onset = new Fraction(3, 4) }), ScoreRule.MeasureAddsUp);

    [Fact]
    public void A_measure_longer_than_its_meter_is_found() => ShouldFind(ChangeMeasure(0, m => m with { Meter = new Meter(3, 4) }), ScoreRule.MeasureAddsUp);

    [Fact]
    public void A_missing_event_is_found() => ShouldFind(ChangeMeasure(1, m => m with { Voices = [m.Voices[0] with { Events = m.Voices[0].Events[..^1] }] }), ScoreRule.MeasureAddsUp);

    [Fact]
    public void A_tuplet_over_too_few_events_is_found() => ShouldFind(ChangeMeasure(0, m => m with { Voices = [m.Voices[0] with { Tuplets = [new TupletSpan(2, 3, 3, 2)] }] }), ScoreRule.TupletIsExact);

    [Fact]
    public void A_missing_tuplet_is_found() => ShouldFind(ChangeMeasure(0, m => m with { Voices = [m.Voices[0] with { Tuplets = [] }] }), ScoreRule.TupletIsExact);

    [Fact]
    public void A_tie_to_another_pitch_is_found() => ShouldFind(ChangeEvent(1, 0, e => e with { Tones = [e.Tones[0] with { Pitch = Pitch.Parse("F2"), Position = null }] }), ScoreRule.TieConnectsSamePitch);

    [Fact]
    public void A_tie_from_nowhere_is_found() => ShouldFind(ChangeEvent(0, 1, e => e with { Tones = [e.Tones[0] with { TieStop = true }] }), ScoreRule.TieConnectsSamePitch);

    [Theory]
    [InlineData(3, 3)]
    [InlineData(5, 0)]
    [InlineData(3, 25)]
    [InlineData(0, 0)]
    public void A_wrong_position_is_found(int stringNumber, int fret) => ShouldFind(ChangeEvent(0, 1, e => e with { Tones = [e.Tones[0] with { Position = new FretPosition(stringNumber, fret) }] }), ScoreRule.PositionSoundsPitch);

    [Fact]
    public void Two_tones_on_one_string_are_found() => ShouldFind(
        ChangeEvent(1, 1, e => e with { Tones = [e.Tones[0] with { Position = new FretPosition(4, 0) }, e.Tones[1] with { Position = new FretPosition(4, 7) }] }),
        ScoreRule.PositionSoundsPitch);

    // A touch at a third of the string sounds the third partial, an octave and a fifth above the open string (physics of strings, from memory).
    [Fact]
    public void A_harmonic_sounds_its_partial_and_not_the_stopped_fret()
    {
        static ScoreEvent Harmonic(ScoreEvent e, string pitch) => e with { Tones = [e.Tones[0] with { Pitch = Pitch.Parse(pitch), Position = new FretPosition(3, 7), Head = Notehead.Harmonic }] };
        ScoreChecks.Run(ChangeEvent(0, 1, e => Harmonic(e, "E3"))).ShouldBeEmpty();
        ShouldFind(ChangeEvent(0, 1, e => Harmonic(e, "E2")), ScoreRule.PositionSoundsPitch);
    }

    [Fact]
    public void An_open_beam_is_found() => ShouldFind(ChangeEvent(0, 1, e => e with { Beams = [] }), ScoreRule.BeamsAreBalanced);

    [Fact]
    public void A_hook_as_first_beam_is_found() => ShouldFind(ChangeEvent(0, 1, e => e with { Beams = [BeamState.BackwardHook] }), ScoreRule.BeamsAreBalanced);

    [Fact]
    public void A_beam_on_a_half_note_is_found() => ShouldFind(ChangeEvent(1, 1, e => e with { Beams = [BeamState.Begin] }), ScoreRule.BeamsAreBalanced);

    [Fact]
    public void Tones_out_of_order_are_found() => ShouldFind(ChangeEvent(1, 1, e => e with { Tones = [e.Tones[1], e.Tones[0]] }), ScoreRule.TonesInOrder);

    [Fact]
    public void A_hammer_on_downward_is_found()
    {
        ScoreChecks.Run(ChangeEvent(0, 0, e => e with { Connection = Connection.HammerOn })).ShouldBeEmpty();
        ShouldFind(ChangeEvent(0, 0, e => e with { Connection = Connection.PullOff }), ScoreRule.ConnectionLeadsOn);
        // From the third string to the second.
        ShouldFind(ChangeEvent(0, 2, e => e with { Connection = Connection.HammerOn }), ScoreRule.ConnectionLeadsOn);
        ShouldFind(ChangeEvent(1, 1, e => e with { Connection = Connection.Slide }), ScoreRule.ConnectionLeadsOn);
    }

    [Fact]
    public void A_chord_symbol_outside_its_measure_is_found() => ShouldFind(ChangeMeasure(0, m => m with { Harmonies = [new HarmonyMark(4, null)] }), ScoreRule.MarksInMeasure);

    [Fact]
    public void A_repeat_played_once_is_found() => ShouldFind(ChangeMeasure(1, m => m with { RepeatEndTimes = 1 }), ScoreRule.RepeatsMakeSense);

    [Fact]
    public void An_ending_without_a_repeat_is_found()
    {
        ShouldFind(ChangeMeasure(0, m => m with { EndingStart = [1], EndingStop = true }), ScoreRule.RepeatsMakeSense);
        ShouldFind(ChangeMeasure(0, m => m with { EndingStop = true }), ScoreRule.RepeatsMakeSense);
        ScoreChecks.Run(ChangeMeasure(1, m => m with { EndingStart = [1], EndingStop = true })).ShouldBeEmpty();
    }

    [Fact]
    public void A_finding_says_where()
    {
        var finding = ScoreChecks.Run(ChangeEvent(0, 1, e => e with { Beams = [BeamState.BackwardHook] }))[0];
        (finding.MeasureIndex, finding.VoiceIndex, finding.EventIndex).ShouldBe((0, 0, 1));
        finding.ToString().ShouldStartWith("measure 1, voice 1, event 2: ");
    }

    private static LineNote Fretted(Fraction start, Fraction duration, string pitch, int stringNumber, int fret)
    {
        var note = Lines.Note(start, duration, pitch);
        return note with { Tones = [note.Tones[0] with { Position = new FretPosition(stringNumber, fret) }] };
    }

    private static Score ChangeMeasure(int index, Func<Measure, Measure> change) => Sound with { Measures = Sound.Measures.SetItem(index, change(Sound.Measures[index])) };

    private static Score ChangeEvent(int measure, int index, Func<ScoreEvent, ScoreEvent> change) => ChangeMeasure(
        measure,
        m => m with { Voices = [m.Voices[0] with { Events = m.Voices[0].Events.SetItem(index, change(m.Voices[0].Events[index])) }] });

    private static void ShouldFind(Score score, ScoreRule rule)
    {
        var rules = ScoreChecks.Run(score).Select(f => f.Rule).Distinct().ToImmutableArray();
        rules.ShouldBe([rule]);
    }
}
