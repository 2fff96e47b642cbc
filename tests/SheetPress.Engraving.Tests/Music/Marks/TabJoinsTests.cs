using SheetPress.Scores;

namespace SheetPress.Engraving.Tests;

/// <summary>What joins or leaves fret numbers, and the signs over them: common practice of tabs.</summary>
public class TabJoinsTests
{
    // Across its line and as long as the way to the next number, a slide to nowhere would be read as one to that number.
    [Theory]
    [InlineData("A2:1/4!so B2:1/4 A2:1/4!so A2:1/4 A2:3", 2)]
    [InlineData("A2:1/4 B2:1/4!si A2:1/4 A2:1/4!sa A2:3", 2)]
    [InlineData("F3:1/4!so G3:1/4!si F3:1/4!so F3:1/4 F3:3", 3)]
    public void Slides_from_or_to_nowhere_leave_their_string_and_end_off_the_next_number(string text, int slides)
    {
        foreach (var layout in (StaffLayout[])[StaffLayout.Tab, StaffLayout.StaffAndTab])
        {
            var system = Drawn.System(ScoreText.Parse(text, layout: layout));
            var numbers = system.Of(MarkRole.FretNumber);
            var loose = system.Of(MarkRole.Slide).Where(m => m.Origin.Staff == 1).ToList();
            loose.Count.ShouldBe(slides);
            foreach (var slide in loose)
            {
                var number = numbers.Single(n => n.Origin.Event == slide.Origin.Event && n.Origin.Measure == slide.Origin.Measure);
                var line = (number.Bounds.Top + number.Bounds.Bottom) / 2;
                (slide.Bounds.Top > line || slide.Bounds.Bottom < line).ShouldBeTrue("it stays on one side of its string");
                numbers.Where(n => n != number).ShouldAllBe(n => n.Bounds.Left - slide.Bounds.Right > 0.9 || slide.Bounds.Left - n.Bounds.Right > 0.9);
            }
            SystemLint.Check(system, 1.75).ShouldBeEmpty();
        }
    }

    // Two digits leave less between the numbers than one does.
    [Theory]
    [InlineData("F3:1/4!sl G3:1/4 F3:1/4!sl G3:1/4 F3:3")]
    [InlineData("E2:1/4!sl F2:1/4 E2:1/4!sl F2:1/4 E2:3")]
    public void Slides_between_numbers_are_long_enough_to_be_seen(string text)
    {
        var system = Drawn.System(ScoreText.Parse(text, layout: StaffLayout.Tab));
        system.Of(MarkRole.Slide).Count.ShouldBe(2);
        system.Of(MarkRole.Slide).ShouldAllBe(s => s.Bounds.Width > 2 && s.Bounds.Height > 0.8);
    }

    // A P over the tab is a pop: that of a pulled note says so in two letters.
    [Theory]
    [InlineData("E2:1!P!po D2:1 E1:1!T!ho G1:1", "PO HO")]
    [InlineData("E2:1!po D2:1 E1:1!T!ho G1:1", "P H")]
    public void The_letter_of_a_pulled_note_is_not_that_of_a_popped_one(string text, string letters)
    {
        foreach (var layout in (StaffLayout[])[StaffLayout.Tab, StaffLayout.StaffAndTab])
        {
            var system = Drawn.System(ScoreText.Parse(text, layout: layout));
            var arcs = system.Of(MarkRole.Slur).Where(s => s.Origin.Staff == 1).ToList();
            arcs.Count.ShouldBe(2);
            var joins = system.Of(MarkRole.Technique).OfType<TextMark>().Where(t => arcs.Any(a => IsInMiddle(a, t))).ToList();
            string.Join(' ', joins.Select(t => t.Run.Text)).ShouldBe(letters);
        }

        static bool IsInMiddle(Mark arc, TextMark text) => Math.Abs(arc.Bounds.Left + arc.Bounds.Right - text.Bounds.Left - text.Bounds.Right) < 0.2;
    }

    // Numbers on the outer line reach over it as heads on a staff do not.
    [Theory]
    [InlineData("B2:1!ac!f1 C3:1!ma!f2 D3:1!ac!st!f4 B2:1!te!f1")]
    [InlineData("G2:1/2!ac!ho!f0 A2:1/2!ac!f1 B2:1/2!ac!po!f4 A2:1/2!f1 B2:2!te!f4")]
    public void Signs_and_fingers_over_the_outer_string_do_not_crowd(string text)
    {
        var system = Drawn.System(ScoreText.Parse(text, layout: StaffLayout.Tab, header: h => h with { ShowFingers = true }));
        var signs = system.Of(MarkRole.Articulation);
        var others = system.Of(MarkRole.FretNumber).Concat(system.Of(MarkRole.Finger)).ToList();
        signs.Count.ShouldBeGreaterThan(3);
        others.Count.ShouldBeGreaterThan(7);
        signs.ShouldAllBe(s => others.TrueForAll(o => !o.Bounds.Overlaps(s.Bounds.Inflate(0.4))));
        var letters = system.Of(MarkRole.Technique).OfType<TextMark>().ToList();
        signs.ShouldAllBe(s => letters.TrueForAll(l => l.Bounds.Top > s.Bounds.Bottom || l.Bounds.Bottom < s.Bounds.Top || l.Bounds.Left - s.Bounds.Right > 0.7 || s.Bounds.Left - l.Bounds.Right > 0.7));
    }

    // Where the number before stands close on the next string the slide is shorter, and stays by its own number.
    [Fact]
    public void A_slide_from_nowhere_stays_by_its_number_in_a_narrow_place()
    {
        var bar = string.Concat(Enumerable.Repeat("C#2:1/4 F#2:1/4!si G#1:1/4 C#2:1/4!si ", 4));
        foreach (var width in (int[])[38, 42, 46, 52, 60])
        {
            var systems = ScoreEngraver.Engrave(ScoreText.Parse(bar + bar, layout: StaffLayout.Tab), width, new EngravingOptions()).Systems;
            foreach (var system in systems)
            {
                SystemLint.Check(system, 1.75).Where(f => f.Rule == LintRule.Ink).ShouldBeEmpty($"at {width}");
                foreach (var slide in system.Of(MarkRole.Slide).OfType<LineMark>())
                {
                    var number = system.Of(MarkRole.FretNumber).Single(m => m.Origin == slide.Origin).Bounds;
                    (number.Left - slide.To.X).ShouldBeInRange(0, 0.8, $"at {width}");
                }
            }
        }
    }
}
