using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Engraving.Tests.Music.Marks;

/// <summary>Two voices, and arcs over what stands between their ends: each finds its place beside the others.</summary>
public class CrowdedVoicesTests
{
    private static ImmutableArray<LintFinding> Check(string text, string? lower = null, StaffLayout layout = StaffLayout.StaffAndTab, string instrument = "bass-4", bool fingers = false)
    {
        var score = ScoreText.Parse(text, instrument, layout: layout, lower: lower, header: h => h with { ShowFingers = fingers });
        return [.. ScoreEngraver.Engrave(score, 70, new EngravingOptions()).Systems.SelectMany(s => SystemLint.Check(s, 1.75)).Where(f => f.Rule is LintRule.Ink or LintRule.Stem)];
    }

    // Handbook rule, from memory: a slur lies outside the ties and rests it passes.
    [Theory]
    [InlineData("A1:1!ss G1:1/2 G1:5/2!se r:4")]
    [InlineData("Ab1:1/2!gh!ss Ab1:1/2 D2:1!se r:2")]
    [InlineData("G2:1/2!ss Bb2:2 A2:1/2!se r:1")]
    [InlineData("A1:1/2!de!ss r:1 B2:3/2 E2:1!se")]
    [InlineData("E2:1/2!ss r:1 E2:1/2!se r:2")]
    public void A_slur_passes_outside_ties_and_rests(string text) => Check(text, layout: StaffLayout.Staff).ShouldBeEmpty();

    // It starts and ends outside the fingers and tuplets of its notes, as flat as elsewhere.
    [Fact]
    public void A_slur_of_two_notes_under_a_bracket_stays_flat()
    {
        var text = string.Concat(Enumerable.Repeat("B1:1/5!f1 F#1:1/5!f2!ss Eb2:1/5!f2!se G1:1/5!f2 A1:1/5!f1 r:1 ", 4));
        Check(text, string.Concat(Enumerable.Repeat("E1:2 ", 4)), StaffLayout.Staff, fingers: true).ShouldBeEmpty();
        var score = ScoreText.Parse(text, layout: StaffLayout.Staff, lower: string.Concat(Enumerable.Repeat("E1:2 ", 4)), header: h => h with { ShowFingers = true });
        foreach (var slur in Drawn.System(score).Of(MarkRole.Slur)) slur.Bounds.Height.ShouldBeLessThan(2);
    }

    // Handbook rule, from memory: a phrase with all stems down has its slur above, arched over its peak with its ends at their notes.
    [Theory]
    [InlineData("E4:1/2!ss A4:1/2 C5:1/2 A5:1/2 G5:1/2 C5:1/2 A4:1/2 E4:1/2!se")]
    [InlineData("E4:1/2!ss G4:1/2 B4:1/2 E5:1/2 G5:1/2 E5:1/2 C5:1/2 G4:1/2!se")]
    public void A_slur_is_arched_over_a_peak(string text)
    {
        var system = Drawn.Staff(text, "guitar-6");
        var slur = (CurveMark)system.Of(MarkRole.Slur).Single();
        var heads = system.Of(MarkRole.Notehead);
        (heads[0].Bounds.Top - slur.Start.Y).ShouldBeInRange(0.1, 1.2);
        (heads[^1].Bounds.Top - slur.End.Y).ShouldBeInRange(0.1, 1.2);
    }

    // Handbook rule, from memory: a slur stands on the side of the heads where all stems agree, and does not fall steeply through the
    // staff to the beam, though a high note before its end lifts it off its notes.
    [Theory]
    [InlineData("F2:4!ss | D3:1/8 E2:1/8!se B1:1/4 C#3:1/2 r:3")]
    [InlineData("Gb2:4!ss | Cb3:1/8 Db2:1/8!se A1:1/4 C3:1/2 r:3")]
    public void A_slur_is_not_driven_steeply_through_the_staff_by_a_high_note(string text)
    {
        var slur = (CurveMark)Drawn.System(ScoreText.Parse(text, layout: StaffLayout.Staff)).Of(MarkRole.Slur).Single();
        slur.Bounds.Bottom.ShouldBeLessThan(0);
    }

    // Handbook rule, from memory: the ends of a slur stay close to their notes, also where it leads over a leap.
    [Theory]
    [InlineData("E1:1!ss E3:1!se r:2", true)]
    [InlineData("E3:1!ss E1:1!se r:2", false)]
    public void A_slur_over_a_leap_starts_and_ends_near_its_notes(string text, bool isLowFirst)
    {
        var system = Drawn.Staff(text);
        var slur = (CurveMark)system.Of(MarkRole.Slur).Single();
        var low = (isLowFirst ? slur.Start : slur.End).Y;
        (system.Of(MarkRole.Stem, isLowFirst ? 0 : 1).Single().Bounds.Top - low).ShouldBeInRange(0, 2.5);
    }

    // Who slides to a note does not come to it from nowhere as well.
    [Theory]
    [InlineData(StaffLayout.Staff)]
    [InlineData(StaffLayout.Tab)]
    public void One_slide_leads_into_a_note(StaffLayout layout)
    {
        const string text = "C2:1!sl F2:1!si r:2 F2:1!so!sl C2:1 r:2";
        Check(text, layout: layout).ShouldBeEmpty();
        Drawn.System(ScoreText.Parse(text, layout: layout)).Of(MarkRole.Slide).Count.ShouldBe(2);
    }

    // A slide past notes of the other voice is broken there.
    [Fact]
    public void A_slide_is_broken_where_the_other_voice_has_notes_on_its_way()
    {
        const string upper = "F3:3!sl F#3:1";
        const string lower = "D3:2 F#3:1 D3:1";
        Check(upper, lower, StaffLayout.Staff, "guitar-6").ShouldBeEmpty();
        Drawn.System(ScoreText.Parse(upper, "guitar-6", layout: StaffLayout.Staff, lower: lower)).Of(MarkRole.Slide).Count.ShouldBe(2);
    }

    [Fact]
    public void A_slide_is_broken_where_the_other_voice_has_ledger_lines_on_its_way() =>
        Check("F#3:1 C#3:3!sl E3:1/2 G3:1/2 r:1 Ab3:1 Eb3:1", "E2:2 F2:1 E2:1/2 E2:1/2 r:2 A2:2", StaffLayout.Staff, "guitar-6").ShouldBeEmpty();

    // Rests of one voice stand off the stems and brackets of the other.
    [Theory]
    [InlineData("de")]
    [InlineData("gh")]
    public void Rests_keep_clear_of_the_other_voice(string head)
    {
        foreach (var note in (string[])["C3", "D3", "E3", "F3", "G3", "A3", "B3"])
        {
            Check($"{note}:1/2 {note}:1/2!{head} {note}:1/2 {note}:1/2!{head} r:2", "E2:1/2 r:1/2 E2:1/2 r:1/2 E2:2", StaffLayout.Staff, "guitar-6").ShouldBeEmpty(note);
        }
    }

    // The arc of the lower voice goes below its numbers where those of the upper stand in its way, its letter with it.
    [Fact]
    public void A_hammered_note_of_the_lower_voice_is_joined_below_the_numbers()
    {
        const string upper = "D3:1/2 E3:1/4 C3:1/4 D3:1/2 D3:1/2 r:2";
        Check(upper, "F#1:1!ho G1:1 r:2").ShouldBeEmpty();
        var system = Drawn.System(ScoreText.Parse(upper, lower: "B1:1!ho F#1:1 r:2"));
        Check(upper, "B1:1!ho F#1:1 r:2").ShouldBeEmpty();
        system.Of(MarkRole.Slur).ShouldContain(m => m.Origin.Staff == 1);
    }

    // On a tab alone the fingers of a voice stand in one row, outside the arcs and their letters and inside the words.
    [Fact]
    public void Fingers_of_a_tab_alone_stand_in_a_row_outside_the_letters()
    {
        const string text = "A1:1/2!ho!f1 B1:1/2!po!f3 A1:1/2!f1 G2:1/2!pm!f0 A2:1/4!ho!f1 B2:1/4!f4 E1:3/2!pm!f0";
        var system = Drawn.System(ScoreText.Parse(text, layout: StaffLayout.Tab, header: h => h with { ShowFingers = true }));
        var fingers = system.Glyphs(MarkRole.Finger);
        fingers.Count.ShouldBe(7);
        fingers.Select(f => Math.Round(f.Bounds.Bottom, 6)).Distinct().Count().ShouldBe(1);
        var words = system.Of(MarkRole.Technique).OfType<TextMark>().ToLookup(t => t.Run.Text.Length == 1);
        words[true].Select(t => t.Run.Text).ShouldBe(["H", "P", "H"]);
        words[true].Min(t => t.Bounds.Top).ShouldBeGreaterThan(fingers.Max(f => f.Bounds.Bottom));
        words[false].Max(t => t.Bounds.Bottom).ShouldBeLessThan(fingers.Min(f => f.Bounds.Top));
        Check(text, layout: StaffLayout.Tab, fingers: true).ShouldBeEmpty();
    }

    // What is written for the lower of two voices stands below it.
    [Theory]
    [InlineData(StaffLayout.Staff)]
    [InlineData(StaffLayout.Tab)]
    [InlineData(StaffLayout.StaffAndTab)]
    public void Words_and_arcs_of_the_lower_voice_stand_below(StaffLayout layout)
    {
        const string upper = "G2:1!lr A2:1!vi G2:1 A2:1";
        const string lower = "E1:1!pm F1:1!pm E1:1!ho F1:1!vi";
        Check(upper, lower, layout).ShouldBeEmpty();
        var system = Drawn.System(ScoreText.Parse(upper, lower: lower, layout: layout));
        var (top, bottom) = layout == StaffLayout.StaffAndTab ? (system.StaffBottom - 4.5, system.StaffBottom) : (system.StaffTop, system.StaffBottom);
        system.Of(MarkRole.Technique).Where(m => m.Origin.Voice == 0).ShouldNotBeEmpty();
        foreach (var mark in system.Of(MarkRole.Technique).Where(m => m.Origin.Voice == 0)) mark.Bounds.Bottom.ShouldBeLessThan(top);
        system.Of(MarkRole.Technique).Where(m => m.Origin.Voice == 1).ShouldNotBeEmpty();
        foreach (var mark in system.Of(MarkRole.Technique).Where(m => m.Origin.Voice == 1)) mark.Bounds.Top.ShouldBeGreaterThan(bottom);
    }

    // A rest of one voice stands outside the tie that the other draws past it.
    [Fact]
    public void Rests_keep_clear_of_the_ties_of_the_other_voice()
    {
        foreach (var held in (string[])["D4", "F4", "A4", "C5", "E5", "D4+F4", "F4+A4"])
        {
            Check($"r:1/2 {held}:2 r:3/2", "E3:1 r:1/2 E3:1/2 r:1/2 E3:3/2", StaffLayout.Staff, "guitar-6").ShouldBeEmpty(held);
            Check("A5:1 r:1/2 A5:1/2 r:1/2 A5:3/2", $"r:1/2 {held}:2 r:3/2", StaffLayout.Staff, "guitar-6").ShouldBeEmpty(held);
        }
    }

    // An accidental stands left of the rest of the other voice as it does of its head.
    [Fact]
    public void Accidentals_keep_clear_of_the_rests_of_the_other_voice()
    {
        foreach (var note in (string[])["C#3", "Eb3", "F#3", "A#3", "C#4"]) Check($"{note}:2 {note}:2", "r:2 E2:2", StaffLayout.Staff, "guitar-6").ShouldBeEmpty(note);
    }

    // Brackets reach down to the numbers of the next string, which are shown all the same.
    [Fact]
    public void A_number_under_a_bracketed_one_is_shown()
    {
        var numbers = Drawn.System(ScoreText.Parse("D2:1!gh r:3", lower: "A#1:1 r:3")).Of(MarkRole.FretNumber).OfType<TextMark>().Select(m => m.Run.Text);
        numbers.ShouldBe(["(0)", "1"], ignoreOrder: true);
    }

    // A slide is broken where it passes a number of the other voice.
    [Theory]
    [InlineData("r:1 A#1:1 r:2")]
    [InlineData("r:1 F2:1 r:2")]
    [InlineData("r:1 F2:1!gh r:2")]
    public void A_slide_passes_the_numbers_of_the_other_voice(string upper)
    {
        const string lower = "C3:2!sl F1:2";
        Check(upper, lower, StaffLayout.Tab).ShouldBeEmpty();
        var slides = Drawn.System(ScoreText.Parse(upper, lower: lower, layout: StaffLayout.Tab)).Of(MarkRole.Slide).OfType<LineMark>().ToList();
        slides.Count.ShouldBe(2);
        slides[0].To.X.ShouldBeLessThan(slides[1].From.X);
    }

    // Where the voices cross, the head of the lower stands clear of the flag of the upper.
    [Theory]
    [InlineData("F#4:1/2 r:1/2 E4:1 r:2", "A4:1/2 r:1/2 A4:1 r:2")]
    [InlineData("F#3:1/4 r:3/4 F#3:1/2 r:5/2", "D4:1 A3:1/2 r:5/2")]
    public void Crossing_voices_keep_clear_of_flags(string upper, string lower) => Check(upper, lower, StaffLayout.Staff, "guitar-6").ShouldBeEmpty();

    // A slide into a note, or out of it, keeps clear of the accidental and head that stand beside it in the other voice.
    [Theory]
    [InlineData("D#4:1 F4:1 D#4:1 F#4:1", "B3:1!si C4:1!sl B3:1 C4:1!so")]
    [InlineData("F#4:1 Gb4:1 F#4:1 A#4:1", "D4:1!si E4:1!sl E4:1 F4:1!si")]
    [InlineData("F#4:1!si Gb4:1!so F#4:1!sl A#4:1", "D#4:1 Eb4:1 E4:1 F#4:1")]
    public void Slides_keep_clear_of_the_other_voice(string upper, string lower) => Check(upper, lower, StaffLayout.Staff, "guitar-6").ShouldBeEmpty();

    // A number in brackets on the next string is wider than the one that a loose slide belongs to.
    [Theory]
    [InlineData("F5:2!gh r:2", "D#4:2!sa r:2")]
    [InlineData("F5:2!gh r:2", "C#4:2!sa r:2")]
    public void Loose_slides_keep_clear_of_a_number_on_the_next_string(string upper, string lower)
    {
        Check(upper, lower, StaffLayout.Tab, "guitar-6").ShouldBeEmpty();
        Drawn.System(ScoreText.Parse(upper, "guitar-6", lower: lower, layout: StaffLayout.Tab)).Of(MarkRole.Slide).Count.ShouldBe(1);
    }

    // Where a tied note shows no number a slide out of it still has room.
    [Fact]
    public void A_slide_out_of_a_tied_note_keeps_clear_of_the_next_number()
    {
        for (var width = 50; width <= 70; width += 4)
        {
            var score = ScoreText.Parse("A1:1/2 C2:1/2!so C2:1/4 A1:1/4 A1:1/4 C2:1/4 r:1/4 C2:1/2!so C2:1/4 A1:1/4 A1:1/4 C2:1/4 A1:1/4 C2:1/4 A1:1/4 C2:1/4 C2:1/2!so C2:1/4 A1:1/4 A1:1/4");
            ScoreEngraver.Engrave(score, width, new EngravingOptions()).Systems.SelectMany(s => SystemLint.Check(s, 1.75)).Where(f => f.Rule == LintRule.Ink).ShouldBeEmpty($"{width}");
        }
    }

    // In a tab alone the dots of a flagged note stand behind its flag.
    [Fact]
    public void Dots_of_a_tab_keep_clear_of_flags() => Check("E2:3/4 r:1/4 r:1/4 E2:3/4 r:2", layout: StaffLayout.Tab).ShouldBeEmpty();

    // Beams between far notes leave stems no shorter than others.
    [Fact]
    public void Stems_to_a_beam_between_the_notes_are_not_too_short()
    {
        foreach (var high in (string[])["G3", "A3", "B3", "C4"])
        {
            foreach (var low in (string[])["A1", "B1", "C2", "D2", "E2", "F2"])
            {
                Check($"{high}:1/2 G4:1/2 {low}:1/2 C1:1/2 r:2", layout: StaffLayout.Staff, instrument: "bass-6").ShouldBeEmpty($"{high} {low}");
            }
        }
    }
}
