using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Engraving.Tests.Music.Marks;

/// <summary>Notes that carry several things at once: each finds its place beside the others.</summary>
public class CrowdedNoteTests
{
    private static ImmutableArray<LintFinding> Check(string text, StaffLayout layout = StaffLayout.StaffAndTab)
    {
        var systems = ScoreEngraver.Engrave(ScoreText.Parse(text, layout: layout), 70, new EngravingOptions()).Systems;
        return [.. systems.SelectMany(s => SystemLint.Check(s, 1.75)).Where(f => f.Rule == LintRule.Ink)];
    }

    private static T[] Marks<T>(string text, MarkRole role)
        where T : Mark =>
        [.. ScoreEngraver.Engrave(ScoreText.Parse(text), 70, new EngravingOptions()).Systems[0].Drawing.Marks.OfType<T>().Where(m => m.Role == role)];

    // Common practice, from memory: a tie keeps its place by the heads, the sign goes on outside it.
    [Theory]
    [InlineData("st")]
    [InlineData("te")]
    [InlineData("st!te")]
    public void Signs_keep_clear_of_ties(string signs)
    {
        foreach (var note in (string[])["E1", "G1", "A1", "C2", "D2", "E2", "F2", "G2", "A2", "B2", "C3"])
        {
            Check($"r:3 {note}:3!{signs} r:2").ShouldBeEmpty(note);
        }
    }

    // The accidental of a lower neighbour may reach under the head, where the sign would stand.
    [Theory]
    [InlineData("G#1")]
    [InlineData("Ab1")]
    [InlineData("F#1")]
    [InlineData("Gb1")]
    public void Signs_keep_clear_of_the_accidentals_of_neighbours(string neighbour) =>
        Check($"D2:1/4!te {neighbour}:1/4 D2:1/4!te!st G1:1/4 C2:1/4!te {neighbour}:1/4 C2:1/4 G1:1/4 r:1 r:1 | " + string.Join(' ', Enumerable.Repeat("D2:1/4!te C#2:1/4", 8))).ShouldBeEmpty();

    // The arc over two notes ends where the accidental of a third reaches over the second, or passes its own on a steep way.
    [Fact]
    public void Slurs_keep_clear_of_accidentals_at_their_ends()
    {
        var notes = (string[])["E1", "Gb1", "Bb1", "C2", "Eb2", "F#2", "A2", "C#3", "F3"];
        foreach (var second in notes)
        {
            foreach (var third in notes) Check($"C2:1/4!ho {second}:1/4 {third}:1/4!po {second}:1/4 D3:1/4!ho {second}:1/4 {third}:1/4 C2:1/4 r:2").ShouldBeEmpty($"{second} {third}");
        }
    }

    // A slide upward starts beyond the flag of its note, and is there.
    [Fact]
    public void A_slide_starts_beyond_the_flag()
    {
        const string text = "r:1/2 C2:1/2!sl C3:1 r:1/2 A1:1/2!so A2:1";
        Check(text).ShouldBeEmpty();
        var flag = Marks<GlyphMark>(text, MarkRole.Flag)[0].Bounds;
        var slide = Marks<LineMark>(text, MarkRole.Slide)[0];
        slide.From.X.ShouldBeGreaterThan(flag.Right);
        (slide.To.X - slide.From.X).ShouldBeGreaterThan(0.5);
    }

    // Behind the flag a short rest of the line would be taken for a dot: the head that it leads to stands further off, however high.
    [Theory]
    [InlineData("F1:1/2!sl C2:1 F2:1/2 F2:1/2 F2:1/2 F2:1/2 A1:1/2 ")]
    [InlineData("E1:1/2!sl E2:1 F2:1/2 F2:1/2 F2:1/2 F2:1/2 A1:1/2 ")]
    [InlineData("F1:1/4!sl F2:1/2 F2:1/4 C2:1 F2:1 F2:1 ")]
    public void A_slide_over_a_leap_is_no_dot(string bar)
    {
        var text = string.Concat(Enumerable.Repeat(bar, 4));
        for (var width = 40; width <= 76; width += 4)
        {
            var systems = ScoreEngraver.Engrave(ScoreText.Parse(text, layout: StaffLayout.Staff), width, new EngravingOptions()).Systems;
            var slides = systems.SelectMany(s => s.Of(MarkRole.Slide)).OfType<LineMark>().ToList();
            slides.Count.ShouldBe(4);
            slides.ShouldAllBe(s => s.To.X - s.From.X > 0.8, $"at {width}");
        }
    }

    // A slide from nowhere starts beyond the tie that ends at the note before, wherever its accidental reaches.
    [Theory]
    [InlineData("Ab2")]
    [InlineData("Gb2")]
    [InlineData("Fb2")]
    public void A_slide_into_a_note_keeps_off_the_tie_before_it(string tied)
    {
        var bar = $"C2:1/2 {tied}:1 Bbb2:1/2!si {tied}:1 Cb3:1/2!si C2:1/2 ";
        foreach (var width in (int[])[28, 34, 40, 70])
        {
            var systems = ScoreEngraver.Engrave(ScoreText.Parse(string.Concat(Enumerable.Repeat(bar, 4)), meter: "3/8", layout: StaffLayout.Staff), width, new EngravingOptions()).Systems;
            systems.SelectMany(s => s.Of(MarkRole.Tie)).ShouldNotBeEmpty();
            systems.SelectMany(s => SystemLint.Check(s, 1.75)).Where(f => f.Rule == LintRule.Ink).ShouldBeEmpty($"at {width}");
        }
    }

    // Between a flag and the sign of its goal an octave away it is long enough to be seen for what it is.
    [Theory]
    [InlineData("Db3:1/2!sl Db2:1 D2:1/2 E2:1/2 F2:1/2 D2:1/2 E2:1/2 ")]
    [InlineData("F1:1/2!sl Gb2:1 D2:1/2 E2:1/2 F2:1/2 D2:1/2 E2:1/2 ")]
    public void A_slide_over_a_leap_is_no_tick(string bar)
    {
        for (var width = 40; width <= 76; width += 4)
        {
            var systems = ScoreEngraver.Engrave(ScoreText.Parse(string.Concat(Enumerable.Repeat(bar, 4)), layout: StaffLayout.Staff), width, new EngravingOptions()).Systems;
            var slides = systems.SelectMany(s => s.Of(MarkRole.Slide)).OfType<LineMark>().ToList();
            slides.Count.ShouldBe(4);
            slides.ShouldAllBe(s => Math.Sqrt(Math.Pow(s.To.X - s.From.X, 2) + Math.Pow(s.To.Y - s.From.Y, 2)) > 1.6, $"at {width}");
        }
    }

    // A slide from a note whose flag hangs on its side keeps off it.
    [Theory]
    [InlineData("r:1/2 G2:1/2!sl A1:1 r:2")]
    [InlineData("r:1/2 E2:1/2!sl G1:1 r:2")]
    [InlineData("r:1/2 G2:1/2!so r:3")]
    [InlineData("r:1/4 A2:1/4!sl C2:1/2 r:3")]
    [InlineData("r:1/2 F#2:1/2!sl F2:1 r:2")]
    [InlineData("r:1/2 C#2:1/2!sl C2:1 r:2")]
    [InlineData("r:1/2 C2:1/2!sl C#2:1 r:2")]
    public void A_slide_keeps_off_the_flag(string text) => Check(text).ShouldBeEmpty();

    // The accidental of a high note behind a beam keeps off the beam, however far up it lies.
    [Fact]
    public void Accidentals_behind_a_beam_keep_off_it()
    {
        foreach (var high in (string[])["Bb3", "Db4", "F#4", "Ab4", "Bb4"])
        {
            CheckClose(string.Concat(Enumerable.Repeat($"E3:1/4 G3:1/4 D3:1/4 A3:1/4 {high}:1 ", 8)), high);
        }
    }

    [Fact]
    public void A_short_vibrato_stops_before_the_barline() =>
        Check(string.Join(' ', Enumerable.Repeat("E2:1/4 F2:1/4 G2:1/4 A2:1/4!vi", 8))).ShouldBeEmpty();

    private static void CheckClose(string text, string because)
    {
        // Lines so narrow that the notes stand as near to each other as they may.
        for (var width = 40; width <= 76; width += 4)
        {
            var systems = ScoreEngraver.Engrave(ScoreText.Parse(text, layout: StaffLayout.Staff), width, new EngravingOptions()).Systems;
            systems.SelectMany(s => SystemLint.Check(s, 1.75)).Where(f => f.Rule == LintRule.Ink).ShouldBeEmpty($"{because} at {width}");
        }
    }

    // The accidental of a lower (or higher) note behind a tie may reach under its second head: the tie ends sooner.
    [Theory]
    [InlineData("F#1")]
    [InlineData("A#1")]
    [InlineData("Bbb1")]
    [InlineData("Eb2")]
    [InlineData("Bb2")]
    public void Ties_keep_clear_of_the_accidental_behind_them(string neighbour)
    {
        foreach (var tied in (string[])["G1", "A1", "C2", "D2", "E2", "F2", "G2", "A2"])
        {
            CheckClose(string.Concat(Enumerable.Repeat($"{tied}:5/4 {neighbour}:1/4 {tied}:1/4 {neighbour}:1/4 ", 4)), $"{tied} {neighbour}");
        }
    }

    // Beside a head that stands close and lower, the sign goes on to the next free space.
    [Fact]
    public void Signs_keep_clear_of_the_heads_beside_them()
    {
        foreach (var note in (string[])["A1", "C2", "D2", "E2", "G2"])
        {
            foreach (var lower in (string[])["E1", "F1", "G1", "A1", "B1", "C2"]) CheckClose(string.Concat(Enumerable.Repeat($"{note}:1/8!te {lower}:1/8 ", 8)) + "r:2", $"{note} {lower}");
        }
    }

    // Common practice, from memory: both ends of a slur stand by their notes, however far the notes are apart.
    [Theory]
    [InlineData("E1:1!f1!ss E3:1!f2 C4:1!f4!se E2:1!f1 ")]
    [InlineData("F1:2!f1!ss C4:2!f4!se ")]
    [InlineData("C4:2!f4!ss E1:2!f0!se ")]
    public void Slurs_over_leaps_end_close_to_the_fingers_of_their_notes(string bar)
    {
        var system = Drawn.System(ScoreText.Parse(string.Concat(Enumerable.Repeat(bar, 2)), layout: StaffLayout.Staff, header: h => h with { ShowFingers = true }));
        var fingers = system.Of(MarkRole.Finger).Select(m => m.Bounds).ToList();
        var slurs = system.Of(MarkRole.Slur).OfType<CurveMark>().ToList();
        slurs.Count.ShouldBe(2);
        foreach (var end in slurs.SelectMany(s => (Point[])[s.Start, s.End]))
        {
            var finger = fingers.MinBy(f => Math.Abs(((f.Left + f.Right) / 2) - end.X));
            (finger.Top - end.Y).ShouldBeInRange(0, 1.3);
        }
        SystemLint.Check(system, 1.75).ShouldBeEmpty();
    }

    // Common practice, from memory: a slur stands on the side of the heads where all stems agree; fingers there do not turn it under the tuplets.
    [Fact]
    public void A_phrase_with_all_stems_down_has_its_slur_above_at_any_width()
    {
        var text = string.Concat(Enumerable.Repeat("D2:2/3!f3!ss A2:2/3!f3 D3:2/3!f1 F3:2/3!f4 D3:2/3!f1 A2:2/3!f3!se ", 4));
        for (var width = 40; width <= 100; width += 4)
        {
            var systems = ScoreEngraver.Engrave(ScoreText.Parse(text, layout: StaffLayout.Staff, header: h => h with { ShowFingers = true }), width, new EngravingOptions()).Systems;
            var slurs = systems.SelectMany(s => s.Of(MarkRole.Slur)).OfType<CurveMark>().ToList();
            slurs.Count.ShouldBe(4);
            slurs.ShouldAllBe(s => s.Start.Y < 0, $"at {width}");
        }
    }

    // Where accents and accidentals stand close by the heads, the arc over two notes goes to the other side instead of towering over them.
    [Theory]
    [InlineData("D3:1/4!ho Eb2:1/4 Db3:1/4 C2:1/4 ")]
    [InlineData("F2:1/4!ho Db3:1/4!gh F2:1/4 C2:1/4 ")]
    [InlineData("Ab1:1/4!ho Bbb2:1/4 r:1/4 C2:1/4 ")]
    [InlineData("E3:1/8!ho C2:1/8!ac E2:1/4 C3:1/4 D2:1/4 ")]
    public void Slurs_keep_clear_of_what_stands_close_to_their_notes(string figure)
    {
        CheckClose(string.Concat(Enumerable.Repeat(figure, 8)), figure);
        foreach (var slur in Marks<CurveMark>(string.Concat(Enumerable.Repeat(figure, 8)), MarkRole.Slur).Where(m => m.Origin.Staff == 0))
        {
            slur.Bounds.Height.ShouldBeLessThan(4.5);
        }
    }

    // The arrow of a bend passes the strings above its own: the next number stands beyond it.
    [Theory]
    [InlineData(StaffLayout.Tab)]
    [InlineData(StaffLayout.StaffAndTab)]
    public void Bends_keep_clear_of_the_numbers_behind_them(StaffLayout layout)
    {
        foreach (var next in (string[])["A1", "E2", "A2", "C3"]) Check(string.Concat(Enumerable.Repeat($"G1:1/4!b1 {next}:1/4 ", 16)), layout).ShouldBeEmpty(next);
    }

    // In a tab alone the rest of the voice that moves stands under the number of the other.
    [Fact]
    public void Rests_of_a_tab_keep_clear_of_the_numbers_over_them()
    {
        var score = ScoreText.Parse("r:1/2 D3:1/4 E3:1/4 r:1 r:1/4 D3:1/4 E3:1/4 D3:1/4 r:1", layout: StaffLayout.Tab, lower: "E1:1 G1:1 F1:2");
        ScoreEngraver.Engrave(score, 70, new EngravingOptions()).Systems.SelectMany(s => SystemLint.Check(s, 1.75)).Where(f => f.Rule == LintRule.Ink).ShouldBeEmpty();
    }

    // On the side of the stem a slur starts beyond the flag, which may hang lower than the stem.
    [Fact]
    public void A_slur_starts_beyond_the_flag()
    {
        var system = Drawn.System(ScoreText.Parse("C3:4", layout: StaffLayout.Staff, lower: "A1:1/8!ss r:1/8 r:1/4 r:1/2 A1:1!se r:2"));
        var slur = (CurveMark)system.Of(MarkRole.Slur).Single();
        slur.Start.Y.ShouldBeGreaterThan(system.Of(MarkRole.Flag)[0].Bounds.Bottom + 0.15);
    }

    // The natural of a low note reaches down beside a tenuto under it, and that of a lower one follows: it stays by its note all the same.
    [Theory]
    [InlineData("D3", "D2")]
    [InlineData("D3", "C2")]
    [InlineData("C3", "C2")]
    public void A_tenuto_stays_by_a_low_note_with_an_accidental(string note, string lower)
    {
        var score = ScoreText.Parse(string.Concat(Enumerable.Repeat($"G#3:1/4 {note}:1/4!te {lower}:1/4 G#3:1/4 ", 4)), "guitar-7", "B major", layout: StaffLayout.Staff);
        for (var width = 40; width <= 70; width += 3)
        {
            ScoreEngraver.Engrave(score, width, new EngravingOptions()).Systems.SelectMany(s => SystemLint.Check(s, 1.75)).Where(f => f.Rule is LintRule.Ink or LintRule.Alignment).ShouldBeEmpty($"at {width}");
        }
    }

    // A phrase slur stands outside the tuplets and fingers of its notes.
    [Fact]
    public void Slurs_of_phrases_keep_clear_of_tuplets()
    {
        static ScoreHeader Fingers(ScoreHeader h) => h with { ShowFingers = true };
        var score = ScoreText.Parse(string.Concat(Enumerable.Repeat("A2:1/3!f1!ss C3:1/3!f2 A2:1/3!f1!se r:1 ", 4)), layout: StaffLayout.Staff, lower: string.Concat(Enumerable.Repeat("E1:1/3!f1!ss A1:1/3!f2 E1:1/3!f1!se r:1 ", 4)), header: Fingers);
        ScoreEngraver.Engrave(score, 70, new EngravingOptions()).Systems.SelectMany(s => SystemLint.Check(s, 1.75)).Where(f => f.Rule == LintRule.Ink).ShouldBeEmpty();
    }

    // Common practice, from memory: a finger stands close over its note. The accidental behind it keeps its distance instead.
    [Theory]
    [InlineData("D2", "Db3")]
    [InlineData("B2", "F#3")]
    [InlineData("E2", "Bb2")]
    public void A_finger_is_not_lifted_over_the_accidental_behind_it(string low, string high)
    {
        var text = string.Concat(Enumerable.Repeat($"{low}:1/4!f1 {high}:1/4!f4 ", 8));
        var system = ScoreEngraver.Engrave(ScoreText.Parse(text, layout: StaffLayout.Staff, header: h => h with { ShowFingers = true }), 70, new EngravingOptions()).Systems[0];
        var heads = system.Of(MarkRole.Notehead, 0).Single().Bounds;
        var finger = system.Of(MarkRole.Finger, 0).Single().Bounds;
        (Math.Min(0, heads.Top) - finger.Bottom).ShouldBeLessThan(0.5);
    }

    // Between numbers on one string a dash of the line is seen; a dot of it would read as a sign.
    [Fact]
    public void Between_fret_numbers_a_dash_of_the_line_is_seen()
    {
        var system = ScoreEngraver.Engrave(ScoreText.Parse(string.Concat(Enumerable.Repeat("F#3:1/4 G3:1/4 ", 8)), layout: StaffLayout.Tab), 50, new EngravingOptions()).Systems[0];
        var pieces = system.Of(MarkRole.TabLine).Where(m => Math.Abs(m.Bounds.Top) < 0.1).ToList();
        pieces.Count.ShouldBe(17);
        pieces.ShouldAllBe(m => m.Bounds.Width > 0.28);
    }

    /// <summary>Common practice, from memory: accents of like notes stand in a row, however close the notes, and none is driven off its note by an accidental behind it.</summary>
    [Theory]
    [InlineData("C2:1/4", "E2:1/4", StaffLayout.Staff)]
    [InlineData("G2:1/4", "A#3:1/4", StaffLayout.Staff)]
    [InlineData("E1:1/8", "C3:1/8", StaffLayout.Tab)]
    public void Accents_of_close_notes_stay_in_their_rows(string low, string high, StaffLayout layout)
    {
        var score = ScoreText.Parse(string.Concat(Enumerable.Repeat($"{low}!ac {high}!ac ", 16)), "bass-6", layout: layout);
        for (var width = 60; width <= 90; width += 3)
        {
            foreach (var system in ScoreEngraver.Engrave(score, width, new EngravingOptions()).Systems)
            {
                SystemLint.Check(system, 1.75).Where(f => f.Rule is LintRule.Ink or LintRule.Alignment).ShouldBeEmpty();
                foreach (var alike in system.Of(MarkRole.Articulation).GroupBy(m => m.Origin.Event % 2))
                {
                    alike.Select(m => Math.Round(m.Bounds.Top, 3)).Distinct().Count().ShouldBe(1, $"{width}");
                }
            }
        }
    }

    /// <summary>A tenuto outside the staff does not stand at the height of a ledger line, beside notes that have one.</summary>
    [Theory]
    [InlineData("A2")]
    [InlineData("C3")]
    [InlineData("E3")]
    [InlineData("G1")]
    [InlineData("E1")]
    public void A_tenuto_is_not_taken_for_a_ledger_line(string note)
    {
        var system = Drawn.Staff($"{note}:1!te E3:1 E1:1 r:1");
        var lines = system.Of(MarkRole.LedgerLine).Concat(system.Of(MarkRole.StaffLine)).Select(l => (l.Bounds.Top + l.Bounds.Bottom) / 2).ToList();
        var sign = system.Of(MarkRole.Articulation).ShouldHaveSingleItem().Bounds;
        lines.Min(y => Math.Abs(y - ((sign.Top + sign.Bottom) / 2))).ShouldBeGreaterThan(0.25);
    }
}
