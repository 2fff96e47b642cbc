using CsCheck;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons.Tests;

/// <summary>What single styles promise: which notes they use, and where they arrive. The rules are common practice.</summary>
public class PromiseTests
{
    public static TheoryData<string> ChordToneStyles => ["roots", "root-octave", "arpeggio", "permutations", "broken-arpeggio", "triads-inside", "connected-arpeggios", "string-skipping", "every-position", "shells", "tenths", "guide-tones"];

    [Theory]
    [MemberData(nameof(ChordToneStyles))]
    public void Only_chord_tones_sound(string style) => Gen.Select(LessonGen.Lessons, LessonGen.Requests(style)).Sample((lesson, request) =>
    {
        if (style == "every-position" && request.Options.TryGetValue("of", out var of) && of.Text.Value != "arpeggio") return;
        foreach (var (note, chord, _) in Sounding(lesson, LessonMaker.Generate(lesson, request).Line))
        {
            foreach (var tone in note.Tones) IsIn(ChordTones(chord), tone.Pitch).ShouldBeTrue($"{tone.Pitch} over {chord}");
        }
    }, iter: 60, print: t => EveryStyleTests.Print(t));

    /// <summary>
    /// The run is written with the letters of the symbol over it: the flat fifth of G13b5 is no raised fourth. A raised fifth beside the
    /// natural one stays the sixth of its scale: no run goes D, D sharp, F.
    /// </summary>
    [Theory]
    [InlineData("G13b5", "Db")]
    [InlineData("G7b5", "Db")]
    [InlineData("G13#11", "C#")]
    [InlineData("G13#9", "A#")]
    [InlineData("Gm7#5", "Eb")]
    public void A_run_spells_the_tones_of_the_chord_as_the_symbol_does(string symbol, string tone)
    {
        var lesson = LessonMaker.Lesson($"{symbol} | {symbol} | C", key: "C major");
        var names = LessonMaker.Generate(lesson, "scale-run").Notes.Where(n => n.Start < 8).SelectMany(n => n.Tones).Select(t => t.Pitch.Name).ToList();
        names.ShouldContain(NoteName.Parse(tone));
        names.ShouldAllBe(n => n.PitchClass != NoteName.Parse(tone).PitchClass || n == NoteName.Parse(tone));
    }

    public static TheoryData<string> ScaleStyles => ["scale-run", "scale-patterns", "connected-scales", "notes-per-string", "octave-run", "scale-links", "extensions", "tone-cell"];

    [Theory]
    [MemberData(nameof(ScaleStyles))]
    public void Only_notes_of_the_scale_or_chord_sound(string style) => Gen.Select(LessonGen.Lessons, LessonGen.Requests(style)).Sample((lesson, request) =>
    {
        foreach (var (note, chord, index) in Sounding(lesson, LessonMaker.Generate(lesson, request).Line))
        {
            var allowed = ChordTones(chord).Concat(ScaleTones(lesson, index)).Concat(KeyTones(lesson)).ToHashSet();
            // A run that overshoots sounds its target, the next root, before it arrives there.
            if (index + 1 < lesson.Progression.Chords.Length && lesson.Progression.Chords[index + 1].Chord is { } next)
            {
                allowed.Add(next.Lowest.PitchClass);
                // Where the scale has no tone beside the target, its chromatic neighbour is the step too far.
                if (style == "scale-links") allowed.UnionWith([(next.Root.PitchClass + 1) % 12, (next.Root.PitchClass + 11) % 12, (next.Lowest.PitchClass + 1) % 12, (next.Lowest.PitchClass + 11) % 12]);
            }
            IsIn(allowed, note.Tones[0].Pitch).ShouldBeTrue($"{note.Tones[0].Pitch} over {chord}");
        }
    }, iter: 60, print: t => EveryStyleTests.Print(t));

    [Fact]
    public void An_octave_run_starts_every_chord_on_its_root_and_reaches_it_by_step() => Gen.Select(LessonGen.Lessons, LessonGen.Requests("octave-run")).Sample((lesson, request) =>
    {
        var line = LessonMaker.Generate(lesson, request).Line;
        foreach (var (before, first, chord, isNew) in Arrivals(lesson, line))
        {
            first.Tones[0].Pitch.Name.PitchClass.ShouldBe(chord.Lowest.PitchClass);
            if (before is null || before.End != first.Start) continue;
            var run = line.Notes.Where(n => n.End <= first.Start && SpanOf(lesson, n) == SpanOf(lesson, before)).ToList();
            // One note alone has no room to run.
            if (run.Count >= 3) Math.Abs(first.Tones[0].Pitch.MidiNumber - before.Tones[0].Pitch.MidiNumber).ShouldBeLessThanOrEqualTo(4, $"{before.Tones[0].Pitch} to {first.Tones[0].Pitch}");
        }
    }, iter: 60, print: t => EveryStyleTests.Print(t));

    [Theory]
    [InlineData("connected-arpeggios")]
    [InlineData("connected-scales")]
    public void A_connected_line_goes_to_the_nearest_tone_and_turns_only_at_its_ends(string style) => Gen.Select(LessonGen.Lessons, LessonGen.Requests(style)).Sample((lesson, request) =>
    {
        var line = LessonMaker.Generate(lesson, request).Line;
        var midi = line.Notes.Select(n => n.Tones[0].Pitch.MidiNumber).ToArray();
        // The last note is the root to rest on.
        for (var i = 2; i < midi.Length - 1; i++)
        {
            if (line.Notes[i].Start != line.Notes[i - 1].End) continue;
            midi[i].ShouldNotBe(midi[i - 1]);
            if ((midi[i] - midi[i - 1]) * (midi[i - 1] - midi[i - 2]) >= 0) continue;
            // It turned: onward lay no tone of the chord before the end of what the line uses.
            var chord = lesson.Progression.Chords[SpanOf(lesson, line.Notes[i])].Chord!;
            var onward = Math.Sign(midi[i - 1] - midi[i - 2]);
            var end = onward > 0 ? midi.Max() : midi.Min();
            Math.Abs(end - midi[i - 1]).ShouldBeLessThan(12, $"turned at {line.Notes[i - 1].Tones[0].Pitch} over {chord}");
        }
    }, iter: 40, print: t => EveryStyleTests.Print(t));

    [Theory]
    [InlineData("approaches")]
    [InlineData("scale-links")]
    [InlineData("target-tones")]
    public void Lines_that_lead_on_do_not_leap_into_the_lead(string style)
    {
        // Common practice: a bass line leaps an octave at most, and leads smoothly. In all keys, levels and both cycles.
        foreach (var key in Keys)
        {
            foreach (var level in (int[])[2, 3, 4])
            {
                var lesson = LessonMaker.Lesson(Cycle(key), key: key.ToString(), level: level);
                var line = style == "target-tones" ? LessonMaker.Generate(lesson, style, ("target", level == 3 ? "ninth" : "third")) : LessonMaker.Generate(lesson, style);
                for (var i = 1; i < line.Notes.Length; i++)
                {
                    var (a, b) = (line.Notes[i - 1].Tones[0].Pitch, line.Notes[i].Tones[0].Pitch);
                    Math.Abs(a.MidiNumber - b.MidiNumber).ShouldBeLessThanOrEqualTo(12, $"{a} to {b} in {key}, level {level}: {LessonMaker.Pitches(lesson, line)}");
                }
            }
        }
    }

    [Theory]
    [InlineData("roots")]
    [InlineData("root-octave")]
    [InlineData("tone-cell")]
    [InlineData("arpeggio")]
    [InlineData("broken-arpeggio")]
    [InlineData("scale-run")]
    public void A_chord_that_comes_back_is_played_in_the_same_octave(string style)
    {
        foreach (var key in Keys)
        {
            var lesson = LessonMaker.Lesson(Cycle(key), key: key.ToString(), level: 2);
            var line = LessonMaker.Generate(lesson, style);
            var last = lesson.Progression.Chords[^1].Start;
            var (first, again) = (line.Notes[0].Tones[0].Pitch, line.Notes.First(n => n.Start == last).Tones[0].Pitch);
            // Scales take turns between up and down, so they may start an octave higher.
            if (style == "scale-run") again.Name.ShouldBe(first.Name);
            else again.ShouldBe(first, $"{key}: {LessonMaker.Pitches(lesson, line)}");
        }
    }

    [Fact]
    public void Beginners_stay_in_the_low_positions()
    {
        // Common practice: the first months are played within reach of the nut. Notes up to the fifth fret of the highest string have a place there.
        foreach (var style in (string[])["roots", "arpeggio", "triads-inside", "scale-run", "approaches", "octave-run"])
        {
            foreach (var key in Keys)
            {
                var lesson = LessonMaker.Lesson(Cycle(key), key: key.ToString(), level: 1);
                var line = LessonMaker.Generate(lesson, style);
                var fingered = LineFingering.Apply(line, lesson.Instrument, new NeckRequest(), 1, [.. lesson.Progression.Chords.Select(c => c.Start)]).Line;
                // A line with a note further up may go there for the notes beside it; a chord on the fourth fret reaches for the seventh.
                if (fingered.Notes.Any(n => n.Tones[0].Pitch.MidiNumber > 48)) continue;
                var frets = fingered.Notes.Select(n => n.Tones[0].Position!.Value.Fret).ToArray();
                frets.Max().ShouldBeLessThanOrEqualTo(7, $"{style} in {key}");
                frets.Count(f => f > 5).ShouldBeLessThanOrEqualTo(frets.Length / 5, $"{style} in {key}");
            }
        }
    }

    [Fact]
    public void Notes_that_leave_the_key_get_an_accent()
    {
        // Common practice: over the dominant of a minor key the fifth mode of harmonic minor raises the third against the key.
        var lesson = LessonMaker.Lesson("Cm7 | Fm7 | G7 | Cm7", level: 3);
        foreach (var style in (string[])["scale-run", "scale-patterns", "connected-scales"])
        {
            var dominant = LessonMaker.Generate(lesson, style).Notes.Where(n => SpanOf(lesson, n) == 2).ToList();
            dominant.ShouldContain(n => n.Tones[0].Pitch.Name == NoteName.Parse("B"));
            foreach (var note in dominant) (note.Articulations == Articulations.Accent).ShouldBe(note.Tones[0].Pitch.Name == NoteName.Parse("B"), $"{note.Tones[0].Pitch} in {style}");
            LessonMaker.Generate(lesson, style, ("accent-changes", false)).Notes.ShouldAllBe(n => n.Articulations == Articulations.None);
        }
    }

    [Theory]
    [InlineData("approaches")]
    [InlineData("octave-run")]
    [InlineData("scale-links")]
    public void A_rhythm_without_room_to_lead_is_refused(string style)
    {
        var lesson = LessonMaker.Lesson("Cm7 | Fm7 | G7 | Cm7");
        var (_, diagnostics) = LessonMaker.Generate(lesson, LessonMaker.Request(style) with { Rhythm = EvenRhythms.Repeat(4) });
        diagnostics.Items.Select(d => d.Code).ShouldBe([DiagnosticCodes.NoRoom]);
    }

    [Fact]
    public void A_walking_line_has_roots_on_one_strong_tones_on_strong_beats_and_steps_into_the_next_chord() => Gen.Select(LessonGen.Lessons, LessonGen.Requests("walking-line")).Sample((lesson, request) =>
    {
        var line = WithoutSkips(LessonMaker.Generate(lesson, request).Line);
        var roots = !(request.Options.TryGetValue("on-one", out var one) && one.Text.Value == "chord-tone");
        var dominant = request.Options.TryGetValue("approach", out var approach) && approach.Text.Value == "dominant";
        foreach (var (before, first, chord, isNew) in Arrivals(lesson, line))
        {
            if (!isNew) continue;
            if (roots) first.Tones[0].Pitch.Name.PitchClass.ShouldBe(chord.Lowest.PitchClass);
            else IsIn(ChordTones(chord), first.Tones[0].Pitch).ShouldBeTrue();
            if (before is null || before.End != first.Start || !HasTwoNotes(lesson, line, before)) continue;
            var step = Math.Abs(first.Tones[0].Pitch.MidiNumber - before.Tones[0].Pitch.MidiNumber);
            step.ShouldBeOneOf(dominant ? [5, 7] : [1, 2]);
        }
        for (var i = 1; i < line.Notes.Length; i++)
        {
            var (last, note) = (line.Notes[i - 1], line.Notes[i]);
            // A fixed approach can be the root itself, as chromatic-above from Gb to F: only a mixed one can always avoid it.
            if (approach is null && SpanOf(lesson, last) == SpanOf(lesson, note)) note.Tones[0].Pitch.MidiNumber.ShouldNotBe(last.Tones[0].Pitch.MidiNumber);
        }
    }, iter: 60, print: t => EveryStyleTests.Print(t));

    [Fact]
    public void Strong_beats_of_a_walking_line_are_chord_tones() => LessonGen.Lessons.Sample(lesson =>
    {
        var line = WithoutSkips(LessonMaker.Generate(lesson, LessonMaker.Request("walking-line")).Line);
        foreach (var (note, chord, index) in Sounding(lesson, line))
        {
            var span = lesson.Progression.Chords[index];
            var leadsOn = line.Notes.FirstOrDefault(n => n.Start >= note.End) is not { } next || SpanOf(lesson, next) != index;
            var measure = lesson.Progression.Measures[span.Measure];
            var start = lesson.Progression.Measures.Take(span.Measure).Aggregate(Fraction.Zero, (s, m) => s + m.Length);
            if (!leadsOn && MetricWeights.At(measure.Meter, note.Start - start) >= MetricWeight.Strong) IsIn(ChordTones(chord), note.Tones[0].Pitch).ShouldBeTrue($"{note.Tones[0].Pitch} over {chord}");
        }
    }, iter: 60);

    [Theory]
    [InlineData("chromatic-below", 1)]
    [InlineData("chromatic-above", -1)]
    [InlineData("double-chromatic-below", 1)]
    [InlineData("enclosure", 1)]
    public void An_approach_comes_from_where_it_says(string approach, int step)
    {
        var lesson = LessonMaker.Lesson("Cm7 | Fm7 | Bb7 | Ebmaj7 | Abmaj7 | Dm7b5 | G7 | Cm7");
        var line = LessonMaker.Generate(lesson, "approaches", ("approach", approach));
        foreach (var (before, first, _, _) in Arrivals(lesson, line).Where(a => a.Before is not null))
        {
            var moved = first.Tones[0].Pitch.MidiNumber - before!.Tones[0].Pitch.MidiNumber;
            // Below the open E of four strings there is no place: where the approach would need one it comes from above.
            if (first.Tones[0].Pitch.MidiNumber > 29) moved.ShouldBe(step);
        }
    }

    [Theory]
    [InlineData("third", "b3 b3 3 3 3 b3 3")]
    [InlineData("seventh", "b7 b7 b7 7 7 b7 b7")]
    public void A_target_tone_stands_on_every_first_beat(string target, string degrees)
    {
        var lesson = LessonMaker.Lesson("Cm7 | Fm7 | Bb7 | Ebmaj7 | Abmaj7 | Dm7b5 | G7 | Cm7");
        var line = LessonMaker.Generate(lesson, "target-tones", ("target", target));
        string.Join(' ', Arrivals(lesson, line).Take(7).Select(a => a.First.Tones[0].Degree)).ShouldBe(degrees);
    }

    [Fact]
    public void Guide_tones_move_by_the_smallest_steps()
    {
        // Common practice: through a cycle of fourths thirds and sevenths hold or fall by a step.
        var lesson = LessonMaker.Lesson("Dm7 | G7 | Cmaj7 | Fmaj7", key: "C major");
        LessonMaker.Pitches(lesson, LessonMaker.Generate(lesson, "guide-tones")).ShouldBe("F2 | F2 | E2 | E2");
        LessonMaker.Degrees(lesson, LessonMaker.Generate(lesson, "guide-tones")).ShouldBe("b3 | b7 | 3 | 7");
    }

    [Fact]
    public void All_24_orders_of_four_tones_are_different()
    {
        var lesson = LessonMaker.Lesson(string.Join(" | ", Enumerable.Repeat("Cmaj7", 25)), key: "C major");
        var bars = LessonMaker.Degrees(lesson, LessonMaker.Generate(lesson, "permutations")).Split(" | ");
        bars.Take(24).Select(b => b[..7]).Distinct().Count().ShouldBe(24);
        foreach (var bar in bars.Take(24)) bar.Split(' ').Take(4).Order(StringComparer.Ordinal).ShouldBe(["3", "5", "7", "R"]);
    }

    [Fact]
    public void Approaches_are_named_and_spelled_as_players_read_them()
    {
        // Common practice: from below the letter below, a leading tone (F sharp to G, E to F); from above the letter above (D flat to C).
        var lesson = LessonMaker.Lesson("Dm7 | G7 | Cmaj7 | Fmaj7 | Cmaj7", key: "C major", instrument: "bass-5", level: 3);
        Before("chromatic-below").ShouldBe(["F#", "B", "E", "B"]);
        Before("chromatic-above").ShouldBe(["Ab", "Db", "Gb", "Db"]);
        Before("double-chromatic-below").ShouldBe(["F#", "B", "E", "B"]);
        Before("scale-above").ShouldBe(["A", "D", "G", "D"]);
        Before("dominant").ShouldBe(["D", "G", "C", "G"]);

        string[] Before(string approach) => [.. Arrivals(lesson, LessonMaker.Generate(lesson, "approaches", ("approach", approach))).Skip(1).Select(a => a.Before!.Tones[0].Pitch.Name.ToString())];
    }

    // The twelve minor keys, as a lesson would name them.
    private static readonly Key[] Keys = [.. new[] { "C", "C#", "D", "Eb", "E", "F", "F#", "G", "G#", "A", "Bb", "B" }.Select(t => Key.Parse($"{t} minor"))];

    // Round the key in fourths and home: i iv bVII bIII bVI ii V i.
    private static string Cycle(Key key)
    {
        (int Degree, string Quality)[] chords = [(1, "m7"), (4, "m7"), (7, "7"), (3, "maj7"), (6, "maj7"), (2, "m7b5"), (5, "7"), (1, "m7")];
        return string.Join(" | ", chords.Select(c => $"{key.NoteOf(c.Degree)}{c.Quality}"));
    }

    // A skip is a dead eighth at the end of a beat: the beat is whole without it.
    private static Line WithoutSkips(Line line)
    {
        var notes = new List<LineNote>();
        foreach (var note in line.Notes)
        {
            if (note.Tones[0].Head == Notehead.Dead) notes[^1] = notes[^1] with { Duration = note.End - notes[^1].Start };
            else notes.Add(note);
        }
        return line with { Notes = [.. notes] };
    }

    private static IEnumerable<(LineNote Note, Chord Chord, int Span)> Sounding(Lesson lesson, Line line)
    {
        foreach (var note in line.Notes)
        {
            var span = SpanOf(lesson, note);
            if (lesson.Progression.Chords[span].Chord is { } chord) yield return (note, chord, span);
        }
    }

    // The first note of every chord with the note before it.
    private static IEnumerable<(LineNote? Before, LineNote First, Chord Chord, bool IsNew)> Arrivals(Lesson lesson, Line line)
    {
        var chords = lesson.Progression.Chords;
        for (var i = 0; i < chords.Length; i++)
        {
            if (chords[i].Chord is not { } chord) continue;
            var first = line.Notes.FirstOrDefault(n => SpanOf(lesson, n) == i);
            if (first is null) continue;
            var at = line.Notes.IndexOf(first);
            yield return (at > 0 ? line.Notes[at - 1] : null, first, chord, i == 0 || chords[i - 1].Chord != chord);
        }
    }

    private static bool HasTwoNotes(Lesson lesson, Line line, LineNote note) => line.Notes.Count(n => SpanOf(lesson, n) == SpanOf(lesson, note)) >= 2;

    // The chord a note belongs to: the one it starts in, or the next when it is a push of at most an eighth.
    private static int SpanOf(Lesson lesson, LineNote note)
    {
        var chords = lesson.Progression.Chords;
        var at = 0;
        while (at < chords.Length - 1 && note.Start >= chords[at].End) at++;
        return note.End > chords[at].End && chords[at].End - note.Start <= new Fraction(1, 2) ? at + 1 : at;
    }

    private static IEnumerable<int> ChordTones(Chord chord) => chord.Tones.Select(t => t.Note.PitchClass).Append(chord.Lowest.PitchClass);

    private static IEnumerable<int> ScaleTones(Lesson lesson, int span) => lesson.Progression.Chords[span].Analysis!.Scale.Notes.Select(n => n.PitchClass);

    private static IEnumerable<int> KeyTones(Lesson lesson) => Enumerable.Range(1, 7).Select(d => lesson.Key.NoteOf(d).PitchClass);

    private static bool IsIn(IEnumerable<int> pitchClasses, Pitch pitch) => pitchClasses.Contains(pitch.Name.PitchClass);
}
