using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Engraving.Tests.Music.Marks;

/// <summary>Marks around the notes, after the engraving handbooks (Read 1979, Gould 2011), from memory.</summary>
public class MarkRulesTests
{
    /// <summary>Handbook rule, from memory: staccato and tenuto stand on the side of the head, in a space of the staff; accents outside the staff.</summary>
    [Theory]
    [InlineData("C2:1!st", true)]
    [InlineData("E2:1!st", false)]
    [InlineData("C2:1!te", true)]
    [InlineData("E2:1!te", false)]
    public void Dots_and_dashes_stand_by_the_head_in_a_space(string note, bool below)
    {
        var system = Drawn.Staff(note + " r:3");
        var (sign, head) = (system.Of(MarkRole.Articulation).Single().Bounds, system.Glyphs(MarkRole.Notehead).Single());
        (sign.Top > head.Position.Y).ShouldBe(below);
        (((sign.Top + sign.Bottom) / 2) - 0.5).ShouldBe(Math.Round(((sign.Top + sign.Bottom) / 2) - 0.5), 0.05);
    }

    /// <summary>Handbook rule, from memory: an accent stands outside the staff, a strong accent above it.</summary>
    [Theory]
    [InlineData("C2:1!ac", false)]
    [InlineData("F2:1!ac", true)]
    [InlineData("C2:1!ma", true)]
    public void Accents_stand_outside_the_staff(string note, bool above)
    {
        var sign = Drawn.Staff(note + " r:3").Of(MarkRole.Articulation).Single().Bounds;
        if (above) sign.Bottom.ShouldBeLessThan(0);
        else sign.Top.ShouldBeGreaterThan(StaffSteps.BottomLine);
    }

    /// <summary>Common practice: a tab that stands alone has everything the player has to know.</summary>
    [Theory]
    [InlineData("st", "articStaccatoAbove")]
    [InlineData("te", "articTenutoAbove")]
    [InlineData("ac", "articAccentAbove")]
    [InlineData("ma", "articMarcatoAbove")]
    [InlineData("fe", "fermataAbove")]
    public void A_tab_alone_shows_articulations_over_it(string mark, string glyph)
    {
        var sign = Drawn.System(ScoreText.Parse($"C2:1!{mark} r:3", layout: StaffLayout.Tab)).Glyphs(MarkRole.Articulation).Single();
        sign.Glyph.Name.ShouldBe(glyph);
        sign.Bounds.Bottom.ShouldBeLessThan(0);
    }

    /// <summary>Common practice: the figures of a fraction over a bend are read at arm's length and more: they are 1.4 mm high at every size of staff. In the face they are as high as its raised figures.</summary>
    [Theory]
    [InlineData("b0.5", "¼", 1.75)]
    [InlineData("b1", "½", 1.75)]
    [InlineData("b1.5", "¾", 1.625)]
    [InlineData("b3", "1½", 1.75)]
    [InlineData("b1", "½", 2.25)]
    [InlineData("b1", "½", 1.4)]
    public void Fractions_over_bends_are_large_enough_to_read(string bend, string amount, double staffSpace)
    {
        foreach (var layout in (StaffLayout[])[StaffLayout.Tab, StaffLayout.Staff, StaffLayout.StaffAndTab])
        {
            var score = ScoreText.Parse($"G2:1!{bend} A2:1!{bend} B1:2!b2", layout: layout);
            var system = ScoreEngraver.Engrave(score, Drawn.Wide, new EngravingOptions { StaffSpace = staffSpace }).Systems[0];
            var texts = system.Of(MarkRole.Technique).OfType<TextMark>().ToList();
            texts.Select(t => t.Run.Text).ShouldBe([amount, amount, "full"]);
            foreach (var text in texts.Take(2)) (TextShaper.Run("⁴", text.Run.Font).Bounds.Height * text.Size * staffSpace).ShouldBeGreaterThanOrEqualTo(1.4);
            SystemLint.Check(system, staffSpace).ShouldBeEmpty();
        }
    }

    [Fact]
    public void A_tab_alone_shows_phrasing_slurs_over_it()
    {
        var score = ScoreText.Parse("C2:1 D2:1 E2:1 F2:1", layout: StaffLayout.Tab);
        var voice = score.Measures[0].Voices[0];
        var slurred = voice with { Events = [voice.Events[0] with { SlurStart = true }, voice.Events[1], voice.Events[2], voice.Events[3] with { SlurStop = true }] };
        var system = Drawn.System(score with { Measures = [score.Measures[0] with { Voices = [slurred] }] });
        var slur = system.Of(MarkRole.Slur).Single().Bounds;
        slur.Bottom.ShouldBeLessThan(0);
        var numbers = system.Of(MarkRole.FretNumber);
        slur.Left.ShouldBeInRange(numbers[0].Bounds.Left, numbers[0].Bounds.Right);
        slur.Right.ShouldBeInRange(numbers[3].Bounds.Left, numbers[3].Bounds.Right);
    }

    /// <summary>Barlines run through between staff and tab: what stands there keeps clear of them.</summary>
    [Fact]
    public void Dynamics_between_staff_and_tab_keep_off_the_barlines()
    {
        var score = ScoreText.Parse("C2:1/2 D2:1/2 C2:1/2 D2:1/2 C2:1/2 D2:1/2 C2:1/2 D2:1/2 | C2:1/2 D2:1/2 C2:1/2 D2:1/2 C2:1/2 D2:1/2 C2:1/2 D2:1/2",
            frame: (i, m) => m with { Directions = [i == 0 ? new Direction(new Fraction(7, 2), DirectionKind.Dynamic, "ppp") : new Direction(0, DirectionKind.Dynamic, "fff")] });
        var system = ScoreEngraver.Engrave(score, 60, new EngravingOptions()).Systems[0];
        var dynamics = system.Of(MarkRole.Dynamic);
        foreach (var line in system.Of(MarkRole.Barline)) foreach (var sign in dynamics) sign.Bounds.Inflate(0.2).Overlaps(line.Bounds).ShouldBeFalse();
    }

    /// <summary>Common practice: the letters of a dynamic are closer than they stand in words, as in the whole signs of the font.</summary>
    [Theory]
    [InlineData("ff", "dynamicForte dynamicForte")]
    [InlineData("fff", "dynamicForte dynamicForte dynamicForte")]
    [InlineData("fp", "dynamicForte dynamicPiano")]
    [InlineData("sfz", "dynamicSforzando dynamicForte dynamicZ")]
    public void Letters_of_a_dynamic_stand_close(string text, string names)
    {
        var system = Drawn.System(ScoreText.Parse("C2:4", frame: (_, m) => m with { Directions = [new Direction(0, DirectionKind.Dynamic, text)] }));
        var letters = names.Split(' ').Select(Ink.Glyph).ToList();
        var apart = letters.SkipLast(1).Sum(l => l.Advance) + letters[^1].Bounds.Right - letters[0].Bounds.Left;
        Box.Around(system.Of(MarkRole.Dynamic).Select(m => m.Bounds)).Width.ShouldBeLessThan(apart - 0.3);
    }

    /// <summary>Common practice: how often a section is played is said where it is more than twice.</summary>
    [Theory]
    [InlineData(2, "")]
    [InlineData(3, "3×")]
    [InlineData(4, "4×")]
    public void A_section_played_more_than_twice_says_so(int times, string expected)
    {
        var score = ScoreText.Parse("C2:4 | D2:4", frame: (i, m) => i == 0 ? m with { RepeatStart = true } : m with { RepeatEndTimes = times });
        string.Concat(Drawn.System(score).Of(MarkRole.Direction).OfType<TextMark>().Select(t => t.Run.Text)).ShouldBe(expected);
    }

    /// <summary>Common practice: the sign for the bar before says its chords too.</summary>
    [Fact]
    public void The_sign_for_the_bar_before_stands_without_the_same_chord()
    {
        static FrameMeasure Chord(FrameMeasure m, string symbol) => m with { Harmonies = [new HarmonyMark(0, Theory.Chord.Parse(symbol))] };
        int Symbols(string second)
        {
            var score = ScoreText.Parse("C2:1 E2:1 G2:1 E2:1 | C2:1 E2:1 G2:1 E2:1", frame: (i, m) => Chord(m, i == 0 ? "C" : second));
            score = score with { Measures = [score.Measures[0], score.Measures[1] with { RepeatsPrevious = true }] };
            return Drawn.System(score).Of(MarkRole.ChordSymbol).Select(m => m.Origin.Measure).Distinct().Count();
        }
        Symbols("C").ShouldBe(1);
        Symbols("F").ShouldBe(2);
    }

    /// <summary>Handbook rule, from memory: a slur broken by the end of a system stays open there, outside its notes.</summary>
    [Fact]
    public void A_slur_that_goes_on_stays_outside_its_notes()
    {
        var score = ScoreText.Parse("F1:1 A1:1 F2:1 F1:1 | F1:1 A1:1 F2:1 F1:1") with { MeasuresPerSystem = 1 };
        Measure Slurred(int i, int e, bool start) => score.Measures[i] with { Voices = [score.Measures[i].Voices[0] with { Events = score.Measures[i].Voices[0].Events.SetItem(e, score.Measures[i].Voices[0].Events[e] with { SlurStart = start, SlurStop = !start }) }] };
        score = score with { Measures = [Slurred(0, 0, true), Slurred(1, 3, false)] };
        var systems = ScoreEngraver.Engrave(score, 60, new EngravingOptions()).Systems;
        var open = systems[0].Of(MarkRole.Slur).OfType<CurveMark>().Single();
        open.End.Y.ShouldBeLessThan(systems[0].Of(MarkRole.Stem).Min(m => m.Bounds.Top));
        var closing = systems[1].Of(MarkRole.Slur).OfType<CurveMark>().Single();
        closing.Start.Y.ShouldBeLessThan(systems[1].Of(MarkRole.Stem).Min(m => m.Bounds.Top));
    }

    /// <summary>Handbook rule, from memory: a tuplet has its number on the beam; one with another inside has a bracket outside of that.</summary>
    [Fact]
    public void A_tuplet_with_another_inside_has_a_bracket()
    {
        Drawn.Staff("C2:1/3 E2:1/3 G2:1/3 r:3").Of(MarkRole.Tuplet).OfType<LineMark>().ShouldBeEmpty();
        var nested = Drawn.Staff("C2:1/3 E2:1/3 G2:1/9 F2:1/9 E2:1/9 r:3");
        var lines = nested.Of(MarkRole.Tuplet).OfType<LineMark>().ToList();
        lines.Count.ShouldBe(8);
        lines.MinBy(l => l.Bounds.Left)!.Bounds.Bottom.ShouldBeGreaterThan(lines.MaxBy(l => l.From.X)!.Bounds.Top);
    }

    /// <summary>Handbook rule, from memory: a bracket is level over notes of one pitch or nearly so, and never slants against its notes.</summary>
    [Theory]
    [InlineData("G3+C4:2/3 G3+C4:1/3 r:3", 0)]
    [InlineData("F3:2/3 B3:2/3 C4:2/3 r:2", 0)]
    [InlineData("C3:2/3 E3:2/3 G3:2/3 r:2", -1)]
    [InlineData("G3:2/3 E3:2/3 C3:2/3 r:2", 1)]
    [InlineData("F3:2/3 F3:2/3 G3:2/3 r:2", 0)]
    public void A_bracket_slants_with_its_notes_only(string notes, int direction)
    {
        var lines = Drawn.Staff(notes, "guitar-6").Of(MarkRole.Tuplet).OfType<LineMark>().OrderBy(l => l.To.X).ToList();
        Math.Sign(Math.Round(lines[^1].From.Y - lines[0].From.Y, 3)).ShouldBe(direction);
    }

    /// <summary>Open and muted strings are marked over the nut, or over the top fret line at the same height, with white between.</summary>
    [Theory]
    [InlineData(0, 2, 0.15, 0.4)]
    [InlineData(0, 7, 0.5, 0.7)]
    public void Signs_of_open_strings_stand_clear_of_the_nut(int open, int stopped, double least, double most)
    {
        static FretPosition At(int s, int fret) => new(s, fret);
        var guitar = InstrumentCatalogue.Find("guitar-6")!;
        var mark = new HarmonyMark(0, Chord.Parse("Em")) { Frame = [At(6, open), At(5, stopped), At(4, stopped), At(1, open)] };
        var marks = ChordFrame.Layout(mark, guitar, new TextSizes(1.75)).Drawing.Marks;
        var grid = marks.OfType<LineMark>().Where(l => l.From.Y == l.To.Y).Min(l => l.Bounds.Top);
        var signs = marks.Where(m => m.Bounds.Bottom < grid + 0.3 && m.Bounds.Height is > 0.5 and < 1).ToList();
        signs.Count.ShouldBeGreaterThan(2);
        foreach (var sign in signs) (grid - sign.Bounds.Bottom).ShouldBeInRange(least, most);
    }

    /// <summary>The number of the first fret stands as far from a dot beside it as from the grid.</summary>
    [Theory]
    [InlineData("guitar-6", false)]
    [InlineData("guitar-6", true)]
    [InlineData("bass-4", false)]
    public void The_number_of_a_small_diagram_keeps_off_the_dots(string instrument, bool isLeftHanded)
    {
        var player = InstrumentCatalogue.Find(instrument)! with { LeftHanded = isLeftHanded };
        var outer = isLeftHanded ? player.StringCount : 1;
        double Gap(params FretPosition[] frame)
        {
            var marks = ChordFrame.Layout(new HarmonyMark(0, Chord.Parse("A")) { Frame = [.. frame] }, player, new TextSizes(1.75)).Drawing.Marks;
            var number = marks.OfType<TextMark>().Single().Bounds;
            return number.Left - marks.Where(m => m is not TextMark && m.Bounds.Bottom > number.Top && m.Bounds.Top < number.Bottom).Max(m => m.Bounds.Right);
        }
        var clear = Gap(new FretPosition(2, 6), new FretPosition(outer, 8));
        clear.ShouldBeGreaterThan(0.5);
        Gap(new FretPosition(outer, 6), new FretPosition(2, 8)).ShouldBe(clear, 0.001);
    }

    /// <summary>Common practice: a natural is printed as its sign, in the bass of a numeral too.</summary>
    [Theory]
    [InlineData("bII13#9/n2", 1)]
    [InlineData("V7no3", 0)]
    [InlineData("ii7/4", 0)]
    public void A_natural_bass_of_a_numeral_has_its_sign(string roman, int naturals)
    {
        var marks = RomanText.Layout(roman, 4).Drawing.Marks;
        marks.OfType<GlyphMark>().Count(g => g.Glyph.Name == "csymAccidentalNatural").ShouldBe(naturals);
        marks.OfType<TextMark>().Count(t => t.Run.Text.Contains('n', StringComparison.Ordinal)).ShouldBe(roman.Contains("no", StringComparison.Ordinal) ? 1 : 0);
    }

    /// <summary>The figures of a chord are raised (common practice); its bass is none of them and stands on the line, full size, before the degree that follows.</summary>
    [Theory]
    [InlineData("V7/ii", "V ↑7 / ii")]
    [InlineData("V7/3 of ii", "V ↑7 / 3  of  ii")]
    [InlineData("V13b9/5 of V", "V ↑13 ↑9 / 5  of  V")]
    [InlineData("I/3", "I / 3")]
    [InlineData("I6/9", "I ↑6/9")]
    [InlineData("#VI6/9#11/5", "VI ↑6/9 ↑11 / 5")]
    [InlineData("II6/9/V", "II ↑6/9 / V")]
    public void The_bass_of_a_numeral_stands_on_the_line(string roman, string drawn)
    {
        var marks = RomanText.Layout(roman, 4).Drawing.Marks.OfType<TextMark>();
        string.Join(" ", marks.Select(t => (t.Position.Y < 0 ? "↑" : "") + t.Run.Text)).ShouldBe(drawn);
    }

    /// <summary>Handbook rule, from memory: the dashes reach as far as what is to be played so, ties and all.</summary>
    [Fact]
    public void A_technique_lasts_to_the_end_of_a_tie()
    {
        var system = Drawn.Staff("G2:1!lr A2:5/2!lr G2:1/2!lr | A2:2!lr G2:2");
        var heads = system.Glyphs(MarkRole.Notehead);
        heads.Count.ShouldBe(6, "A is written in two parts");
        system.Of(MarkRole.Technique).OfType<TextMark>().ShouldHaveSingleItem();
        system.Of(MarkRole.Technique).OfType<LineMark>().Max(l => l.Bounds.Right).ShouldBe(heads[4].Bounds.Right, 0.2);
        var tied = Drawn.Staff("G2:1!lr A2:5/2!lr G2:1/2");
        tied.Of(MarkRole.Technique).OfType<LineMark>().Max(l => l.Bounds.Right).ShouldBe(tied.Glyphs(MarkRole.Notehead)[2].Bounds.Right, 0.2);
        var wave = Drawn.Staff("G2:1 A2:5/2!vi G2:1/2");
        wave.Of(MarkRole.Technique).Max(m => m.Bounds.Right).ShouldBeGreaterThan(wave.Glyphs(MarkRole.Notehead)[2].Bounds.Right - 0.5);
    }

    /// <summary>An accent or a hairpin on the line of a chord symbol would be read as a part of it.</summary>
    [Theory]
    [InlineData("E1:1/2 E1:1/2 G2:1/2!ma G2:1/2!ma G2:1/2!ma G2:3/2", StaffLayout.Tab, null)]
    [InlineData("G2:1/2!< G2:1/2 G2:1/2 G2:1/2 G2:1 E2:1!*f", StaffLayout.Staff, "E1:2!*p E1:2")]
    public void Chord_symbols_stand_over_the_signs_beside_them(string upper, StaffLayout layout, string? lower)
    {
        var seen = 0;
        for (var width = 24; width <= 80; width++)
        {
            var score = ScoreText.Parse(upper, lower: lower, layout: layout, frame: (_, m) => m with { Harmonies = [new HarmonyMark(Fraction.Zero, Chord.Parse("Ebmaj11"))] });
            var system = ScoreEngraver.Engrave(score, width, new EngravingOptions()).Systems[0];
            var symbol = Box.Around(system.Of(MarkRole.ChordSymbol).Select(m => m.Bounds));
            foreach (var sign in system.Drawing.Marks.Where(m => m.Role is MarkRole.Articulation or MarkRole.Dynamic && m.Bounds.Bottom < 0))
            {
                if (sign.Bounds.Left - symbol.Right >= 1.9) continue;
                sign.Bounds.Top.ShouldBeGreaterThan(symbol.Bottom, $"{sign.Role} at {width}");
                seen++;
            }
        }
        seen.ShouldBeGreaterThan(10);
    }

    /// <summary>Handbook rule, from memory: over a line break the line stays open, and its word stands in brackets where it goes on.</summary>
    [Theory]
    [InlineData("!lr", "let ring", StaffLayout.StaffAndTab)]
    [InlineData("!pm", "P.M.", StaffLayout.Tab)]
    public void A_technique_goes_on_over_a_line_break(string mark, string word, StaffLayout layout)
    {
        var bar = string.Concat(Enumerable.Repeat($"E2:1{mark} A2:1{mark} ", 2));
        var score = ScoreText.Parse($"E2:4 {bar} {bar} E2:1{mark} E2:3", layout: layout) with { MeasuresPerSystem = 2 };
        var systems = ScoreEngraver.Engrave(score, 70, new EngravingOptions()).Systems;
        systems.Select(Words).ShouldBe([word, $"({word})"]);
        Lines(systems[0]).Single().Bounds.Right.ShouldBeGreaterThan(systems[0].Width - 1);
        Lines(systems[1]).Count.ShouldBe(2, "dashes and a hook");

        static string Words(EngravedSystem system) => string.Join(' ', system.Of(MarkRole.Technique).OfType<TextMark>().Select(t => t.Run.Text));
        static List<LineMark> Lines(EngravedSystem system) => [.. system.Of(MarkRole.Technique).OfType<LineMark>()];
    }

    /// <summary>The slash leans over what follows: the stem of a flat would run into it.</summary>
    [Theory]
    [InlineData("V7/bVI", "csymAccidentalFlat")]
    [InlineData("V7/#iv", "csymAccidentalSharp")]
    public void A_sign_behind_the_slash_of_a_numeral_stands_off_it(string roman, string sign)
    {
        var marks = RomanText.Layout(roman, 4).Drawing.Marks;
        var slash = marks.OfType<TextMark>().Single(t => t.Run.Text == "/").Bounds;
        (marks.OfType<GlyphMark>().Single(g => g.Glyph.Name == sign).Bounds.Left - slash.Right).ShouldBeInRange(0.3, 0.8);
    }

    /// <summary>A tab alone with a tuplet in brackets, rests of both voices among it, is drawn with a level bracket.</summary>
    [Theory]
    [InlineData("G3:2/3 E3:1/3 r:1 r:2", null)]
    [InlineData("r:1/3 E3:1/3 r:1/3 r:1/3 r:1/3 G3:1/3 r:2", "r:1/3 E2:1/3 r:1/3 r:3")]
    [InlineData("r:2/3 E3:1/3 r:3", "r:1/3 r:1/3 E2:1/3 r:3")]
    public void A_bracket_beside_a_tab_is_level(string notes, string? lower)
    {
        var lines = Drawn.System(ScoreText.Parse(notes, "guitar-6", layout: StaffLayout.Tab, lower: lower)).Of(MarkRole.Tuplet).OfType<LineMark>().Where(l => l.Bounds.Width > l.Bounds.Height).ToList();
        lines.ShouldNotBeEmpty();
        lines.ShouldAllBe(l => Math.Abs(l.From.Y - l.To.Y) < 0.001);
    }

    /// <summary>Common practice: words that belong to the way through a piece stand in line with the chord symbols where there is room.</summary>
    [Fact]
    public void Words_stand_in_line_with_the_chord_symbols()
    {
        var score = ScoreText.Parse("C3:1 E2:1 G2:1 E2:1 | C2:1 E2:1 G2:1 E2:1", frame: (i, m) => m with
        {
            Harmonies = [new HarmonyMark(0, Chord.Parse("C"))],
            Directions = i == 1 ? [new Direction(4, DirectionKind.Fine)] : [],
        });
        var system = Drawn.System(score);
        var fine = system.Of(MarkRole.Direction).OfType<TextMark>().Single();
        var symbol = system.Of(MarkRole.ChordSymbol).OfType<TextMark>().Last();
        fine.Position.Y.ShouldBe(symbol.Position.Y, 0.001);
        (fine.Bounds.Left - symbol.Bounds.Right).ShouldBeGreaterThan(0.9);
    }

    /// <summary>Common practice: the major seventh over a minor triad stands in brackets.</summary>
    [Theory]
    [InlineData("CmMaj7", "Cm(maj7)")]
    [InlineData("CmMaj9", "Cm(maj9)")]
    [InlineData("CdimMaj7", "Cdim(maj7)")]
    [InlineData("Cmaj7", "Cmaj7")]
    [InlineData("Emadd9", "Em(add9)")]
    [InlineData("Csus24", "Csus2(4)")]
    [InlineData("C/E", "C/E")]
    public void Chord_symbols_are_set_as_they_are_printed(string symbol, string expected) =>
        string.Concat(ChordSymbolText.Layout(Chord.Parse(symbol), 10).Drawing.Marks.OfType<TextMark>().Select(m => m.Run.Text)).ShouldBe(expected);

    /// <summary>
    /// Additions and omissions stand on the line with their brackets, and what is in brackets is on one level: common practice, from memory.
    /// </summary>
    [Theory]
    [InlineData("Cm(addb6)", "C m ( add 6 )")]
    [InlineData("Cm7b5(add11)", "C m 7 ↑5 ( add 11 )")]
    [InlineData("C(b5)", "C ↑( ↑5 ↑)")]
    [InlineData("C(b5,add9)/E", "C ↑( ↑5 ↑,add ↑9 ↑) / E")]
    [InlineData("Caddb9", "C add 9")]
    public void What_is_in_brackets_is_on_one_level(string symbol, string drawn)
    {
        var marks = ChordSymbolText.Layout(Chord.Parse(symbol), 10).Drawing.Marks;
        string.Join(" ", marks.OfType<TextMark>().Select(t => (t.Position.Y < 0 ? "↑" : "") + t.Run.Text)).ShouldBe(drawn);
        marks.OfType<GlyphMark>().ShouldAllBe(g => g.Position.Y < 0 == (symbol.Contains("b5", StringComparison.Ordinal)));
    }

    /// <summary>Words stand on the line of the chord symbols or wholly over it, at every spacing; handbook rule, from memory.</summary>
    [Fact]
    public void Words_stand_beside_the_chord_symbols_or_over_them()
    {
        var beside = new HashSet<bool>();
        foreach (var chord in (string[])["C", "Bb7", "Bbmaj7", "Ebmaj7#11", "F#m7b5/C"])
        {
            var frame = (int i, FrameMeasure m) => m with { Harmonies = [new HarmonyMark(0, Chord.Parse(chord))], Directions = [new Direction(0, DirectionKind.Fine)] };
            var system = Drawn.System(ScoreText.Parse("C3:1 C3:1 C3:1 C3:1", frame: frame));
            var word = system.Of(MarkRole.Direction).OfType<TextMark>().Single(t => t.Run.Text == "Fine");
            var symbol = Box.Around(system.Of(MarkRole.ChordSymbol).Select(m => m.Bounds));
            var root = system.Of(MarkRole.ChordSymbol).OfType<TextMark>().First();
            var isBeside = Math.Abs(word.Position.Y - root.Position.Y) < 0.5;
            if (isBeside) word.Bounds.Left.ShouldBeGreaterThan(symbol.Right + 1.9);
            else word.Bounds.Bottom.ShouldBeLessThan(root.Bounds.Top - 0.5);
            beside.Add(isBeside);
        }
        beside.Count.ShouldBe(2);
    }
}
