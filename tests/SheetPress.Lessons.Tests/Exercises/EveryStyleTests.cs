using CsCheck;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons.Tests;

/// <summary>What holds for every style over any progression, key, meter, instrument, level and options.</summary>
public class EveryStyleTests
{
    public static TheoryData<string> Names => [.. ExerciseStyles.All.Where(s => !s.Options.Any(o => o.Required)).Select(s => s.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_line_is_whole_in_order_and_on_the_neck(string style) => Gen.Select(LessonGen.Lessons, LessonGen.Requests(style)).Sample((lesson, request) =>
    {
        var (line, diagnostics) = LessonMaker.Generate(lesson, request);
        if (diagnostics.Items.Any(d => d.Code == DiagnosticCodes.WrongInstrument)) return;
        diagnostics.Items.Where(d => d.Severity == Severity.Error).ShouldBeEmpty();
        line.Length.ShouldBe(lesson.Progression.Length);
        var end = Fraction.Zero;
        foreach (var note in line.Notes)
        {
            note.Start.ShouldBeGreaterThanOrEqualTo(end);
            note.Duration.ShouldBeGreaterThan(Fraction.Zero);
            end = note.End;
            foreach (var tone in note.Tones) HasPlace(lesson.Instrument, tone.Pitch).ShouldBeTrue(tone.Pitch.ToString());
        }
        end.ShouldBeLessThanOrEqualTo(line.Length);
    }, iter: 150, print: t => Print(t));

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_chord_is_heard_and_silence_is_kept(string style) => Gen.Select(LessonGen.Lessons, LessonGen.Requests(style)).Sample((lesson, request) =>
    {
        var line = LessonMaker.Generate(lesson, request).Line;
        var chords = lesson.Progression.Chords;
        for (var i = 0; i < chords.Length; i++)
        {
            // A chord that goes on is one chord, which a groove may leave alone for a beat.
            var (first, last) = (i, i);
            while (i + 1 < chords.Length && chords[i + 1].Chord == chords[first].Chord) last = ++i;
            var within = line.Notes.Where(n => n.Start < chords[last].End && n.End > chords[first].Start).ToList();
            if (chords[first].Chord is null) within.ShouldBeEmpty();
            else if (!line.Notes.IsEmpty) within.ShouldNotBeEmpty();
        }
    }, iter: 50, print: t => Print(t));

    [Theory]
    [MemberData(nameof(Names))]
    public void The_same_request_gives_the_same_line(string style) => Gen.Select(LessonGen.Lessons, LessonGen.Requests(style)).Sample((lesson, request) =>
    {
        var first = LessonMaker.Generate(lesson, request).Line;
        var second = LessonMaker.Generate(lesson, request).Line;
        LessonMaker.Pitches(lesson, second).ShouldBe(LessonMaker.Pitches(lesson, first));
        LessonMaker.Lengths(lesson, second).ShouldBe(LessonMaker.Lengths(lesson, first));
    }, iter: 15, print: t => Print(t));

    [Theory]
    [MemberData(nameof(Names))]
    public void The_last_chord_comes_to_rest_on_its_root(string style) => Gen.Select(LessonGen.Lessons, LessonGen.Requests(style)).Sample((lesson, request) =>
    {
        var line = LessonMaker.Generate(lesson, request).Line;
        var last = lesson.Progression.Chords[^1];
        // Guide tones end on a guide tone and a single note on itself: that is what they are.
        if (last.Chord is not { } chord || line.Notes.IsEmpty || style is "guide-tones" or "one-note" or "chromatic-warm-up") return;
        var note = line.Notes[^1];
        note.End.ShouldBe(last.End);
        note.Tones.ShouldContain(t => t.Pitch.Name.PitchClass == chord.Root.PitchClass || t.Pitch.Name.PitchClass == chord.Lowest.PitchClass);
    }, iter: 50, print: t => Print(t));

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_line_can_be_fingered(string style) => Gen.Select(LessonGen.Lessons, LessonGen.Requests(style)).Sample((lesson, request) =>
    {
        var line = LessonMaker.Generate(lesson, request).Line;
        var fingered = LineFingering.Apply(line, lesson.Instrument, request.Neck, lesson.Level, [.. lesson.Progression.Chords.Select(c => c.Start)]);
        fingered.FailedNote.ShouldBe(-1, fingered.Reason);
        foreach (var note in fingered.Line.Notes)
        {
            note.Tones.Select(t => t.Position!.Value.String).ShouldBeUnique();
            foreach (var tone in note.Tones)
            {
                var place = tone.Position!.Value;
                lesson.Instrument.MidiNumberAt(place.String, place.Fret).ShouldBe(tone.Pitch.MidiNumber);
                tone.Finger!.Value.ShouldBeInRange(0, 4);
                (tone.Finger == 0).ShouldBe(place.Fret == 0);
            }
        }
        // What is played in one position, or struck together, lies within the span of the hand.
        if (fingered.Summary is { } summary) summary.WidestStretch.ShouldBeLessThanOrEqualTo(HandModel.WidestSpan(lesson.Level) + 1e-9);
        var header = new ScoreHeader { Id = "test", Title = "Test", Instrument = lesson.Instrument, Tempo = lesson.Tempo };
        var score = ScoreBuilder.Build(header, lesson.Progression.Measures, fingered.Line);
        score.Measures.Length.ShouldBe(lesson.Progression.Measures.Length);
    }, iter: 20, print: t => Print(t));

    [Theory]
    [MemberData(nameof(Names))]
    public void What_is_asked_of_the_neck_is_kept_or_refused(string style) =>
        (from lesson in LessonGen.Lessons from request in LessonGen.Requests(style) from neck in LessonGen.Necks(lesson.Instrument) select (lesson, request with { Neck = neck })).Sample((lesson, request) =>
    {
        var (line, diagnostics) = LessonMaker.Generate(lesson, request);
        if (diagnostics.HasErrors)
        {
            diagnostics.Items.ShouldAllBe(d => d.Code == DiagnosticCodes.OffTheNeck || d.Code == DiagnosticCodes.CannotHold || d.Code == DiagnosticCodes.WrongInstrument || d.Code == DiagnosticCodes.OtherMeter);
            return;
        }
        foreach (var note in line.Notes) foreach (var tone in note.Tones) Places(lesson.Instrument, request.Neck, tone).ShouldNotBeEmpty($"{tone.Pitch} with {request.Neck}, strings {string.Join(' ', request.Neck.Strings)}");
    }, iter: 40, print: t => Print(t));

    private static IEnumerable<FretPosition> Places(Instrument instrument, NeckRequest neck, LineTone tone) =>
        from number in Enumerable.Range(1, instrument.StringCount)
        let fret = tone.Pitch.MidiNumber - instrument.MidiNumberAt(number, 0)
        where fret >= 0 && fret <= instrument.PlayableFrets && (tone.Position is not { } pinned || pinned == new FretPosition(number, fret))
        where neck.Strings.IsEmpty || neck.Strings.Contains(number)
        where fret == 0 ? neck.OpenStrings != false : fret >= (neck.LowestFret ?? 0) && fret <= (neck.HighestFret ?? int.MaxValue)
        select new FretPosition(number, fret);

    private static bool HasPlace(Instrument instrument, Pitch pitch) =>
        Enumerable.Range(1, instrument.StringCount).Any(s => pitch.MidiNumber - instrument.MidiNumberAt(s, 0) is var fret && fret >= 0 && fret <= instrument.PlayableFrets);

    internal static string Print((Lesson Lesson, ExerciseRequest Request) t)
    {
        var options = string.Join(", ", t.Request.Options.Select(o => $"{o.Key}: {o.Value.Text}"));
        var bars = string.Join(" | ", t.Lesson.Progression.Measures.Select((m, i) => $"[{m.Meter}] " + string.Join(' ', t.Lesson.Progression.Chords.Where(c => c.Measure == i).Select(c => c.Chord?.ToString() ?? "N.C."))));
        return $"{t.Request.Style.Name} ({options}) seed {t.Request.Seed} in {t.Lesson.Key} on {t.Lesson.Instrument.Id}, level {t.Lesson.Level}: {bars}";
    }
}
