using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Engraving.Tests;

/// <summary>Pages with real music on them.</summary>
public class ComposedMusicTests
{
    private const string Bar = "E2:1 G2:1/2 A2:1/2 B2:1 D3:1 | ";

    public static TheoryData<string, int, int> Shapes => new() { { "a4", 1, 4 }, { "a4", 6, 12 }, { "letter", 9, 8 }, { "letter", 2, 120 } };

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Nothing_is_nearer_to_the_edge_than_fifteen_millimetres(string paper, int exercises, int bars)
    {
        foreach (var page in Compose(paper, exercises, bars).Pages)
        {
            var ink = page.Drawing.Bounds;
            ink.Left.ShouldBeGreaterThanOrEqualTo(15);
            ink.Top.ShouldBeGreaterThanOrEqualTo(15);
            ink.Right.ShouldBeLessThanOrEqualTo(page.Width - 15);
            ink.Bottom.ShouldBeLessThanOrEqualTo(page.Height - 15);
        }
    }

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Every_title_has_its_music_under_it_on_its_page(string paper, int exercises, int bars)
    {
        var titles = 0;
        foreach (var page in Compose(paper, exercises, bars).Pages)
        {
            foreach (var title in page.Drawing.Marks.OfType<TextMark>().Where(t => t.Role == MarkRole.Title && t.Run.Text.StartsWith("Study", StringComparison.Ordinal)))
            {
                titles++;
                var below = page.Drawing.Marks.Where(m => m.Role == MarkRole.StaffLine && m.Bounds.Top > title.Bounds.Bottom).Min(m => m.Bounds.Top);
                (below - title.Bounds.Bottom).ShouldBeLessThan(45);
            }
        }
        titles.ShouldBe(exercises);
    }

    [Fact]
    public void Headings_of_sections_are_larger_than_titles_of_exercises()
    {
        var texts = Compose("a4", 2, 4).Pages.SelectMany(p => p.Drawing.Marks).OfType<TextMark>().ToList();
        var headings = texts.Where(t => t.Run.Text is "Exercises" or "The harmony at a glance").Select(t => t.Size).Distinct().ToList();
        var titles = texts.Where(t => t.Role == MarkRole.Title && t.Run.Text.StartsWith("Study", StringComparison.Ordinal)).Select(t => t.Size).Distinct().ToList();
        headings.ShouldHaveSingleItem().ShouldBeGreaterThan(titles.ShouldHaveSingleItem() * 1.1);
    }

    [Fact]
    public void Exercises_that_fit_a_page_are_whole()
    {
        foreach (var page in Compose("a4", 7, 12).Pages.Skip(1))
        {
            // The first music on a page begins an exercise: it stands under a title.
            var marks = page.Drawing.Marks;
            if (!marks.Any(m => m.Role == MarkRole.StaffLine)) continue;
            var staff = marks.Where(m => m.Role == MarkRole.StaffLine).Min(m => m.Bounds.Top);
            marks.ShouldContain(m => m.Role == MarkRole.Title && m.Bounds.Bottom < staff);
        }
    }

    // Whatever the music leaves at the foot of its last page.
    [Fact]
    public void The_caution_is_never_alone_on_a_page()
    {
        var content = Content(2, 8) with { PracticePlan = [] };
        content = content with { Exercises = content.Exercises.SetItem(1, content.Exercises[1] with { Score = Score("Study 2", 16) }) };
        for (var height = 180; height <= 300; height += 5)
        {
            var last = SheetComposer.Compose(content, PageStyle.Handout(PaperSize.A4 with { Height = height })).Pages[^1].Drawing.Marks;
            last.ShouldContain(m => m.Role == MarkRole.StaffLine, $"{height} mm");
        }
    }

    [Fact]
    public void Staves_of_a_page_do_not_touch()
    {
        foreach (var page in Compose("a4", 2, 120).Pages)
        {
            var tops = page.Drawing.Marks.Where(m => m.Role is MarkRole.StaffLine or MarkRole.TabLine).Select(m => Math.Round(m.Bounds.Top, 3)).Distinct().Order().ToList();
            // A system has nine lines here, five of the staff and four of the tab.
            (tops.Count % 9).ShouldBe(0);
            for (var i = 9; i < tops.Count; i += 9) (tops[i] - tops[i - 1]).ShouldBeGreaterThan(7);
        }
    }

    [Fact]
    public void A_diagram_of_an_exercise_stands_between_its_title_and_its_music()
    {
        var path = NeckDiagrams.Path(SampleHandout.Bass, [new(new(3, 3), 1, true), new(new(2, 5), 2, false), new(new(1, 5), 3, false)]);
        var content = Content(1, 4) with { Exercises = [new ExerciseContent { Number = "1", Score = Score("Study", 4), Diagrams = [path] }] };
        var page = SheetComposer.Compose(content, new PageStyle()).Pages.ShouldHaveSingleItem();
        var title = page.Drawing.Marks.First(m => m.Role == MarkRole.Title && m is TextMark { Run.Text: "Study" }).Bounds;
        var diagram = new Drawing([.. page.Drawing.Marks.Where(m => m.Role == MarkRole.Diagram)]).Bounds;
        var staff = page.Drawing.Marks.Where(m => m.Role == MarkRole.StaffLine).Min(m => m.Bounds.Top);
        diagram.Top.ShouldBeGreaterThan(title.Bottom);
        diagram.Bottom.ShouldBeLessThan(staff);
    }

    // Common practice: the tempo stands where it begins to hold, and a swing that ends is called off.
    [Fact]
    public void Tempo_and_feel_are_stated_where_they_are_new()
    {
        Score[] scores =
        [
            Score("One", 4), Score("Two", 4), At(Score("Three", 4), 120), At(Score("Four", 4), 120),
            At(Score("Five", 4), 120) with { Feel = Feel.SwingEighths }, At(Score("Six", 4), 120) with { Feel = Feel.SwingEighths }, At(Score("Seven", 4), 120),
        ];
        var content = Content(0, 0) with { Exercises = [.. scores.Select(s => new ExerciseContent { Score = s })] };
        var stated = new List<string>();
        var title = "";
        foreach (var mark in SheetComposer.Compose(content, new PageStyle()).Pages.SelectMany(p => p.Drawing.Marks).OfType<TextMark>())
        {
            if (mark.Role == MarkRole.Title) title = mark.Run.Text.Trim();
            if (mark.Role == MarkRole.Tempo && (mark.Run.Text.StartsWith("= ", StringComparison.Ordinal) || mark.Run.Text == "straight")) stated.Add($"{title} {mark.Run.Text}");
        }
        stated.ShouldBe([$"One = {scores[0].Tempo.BeatsPerMinute}", "Three = 120", "Five = 120", "Seven = 120", "Seven straight"]);

        static Score At(Score score, double tempo) => score with { Tempo = score.Tempo with { BeatsPerMinute = tempo } };
    }

    // Over eighths alone the sign for swung sixteenths would be taken for that of swung eighths.
    [Fact]
    public void Swung_sixteenths_are_stated_where_there_are_some()
    {
        const string Sixteenths = "E2:1/2 G2:1/4 A2:1/4 B2:1 D3:2 | ";
        Score[] scores =
        [
            Of("One", Bar, Feel.SwingSixteenths, 90), Of("Two", Sixteenths, Feel.SwingSixteenths, 90), Of("Three", Bar, Feel.SwingSixteenths, 90),
            Of("Four", Bar, Feel.SwingSixteenths, 80), Of("Five", Sixteenths, Feel.SwingSixteenths, 80), Of("Six", Bar, Feel.Straight, 80),
            Of("Seven", Bar, Feel.SwingEighths, 80), Of("Eight", Bar, Feel.SwingSixteenths, 80),
        ];
        TempoStatements.Of(scores, "straight").Select(Words).ShouldBe(["tempo", "tempo swing", "", "tempo", "", "tempo straight", "tempo swing", "tempo straight"]);

        static Score Of(string title, string bar, Feel feel, double tempo)
        {
            var score = ScoreText.Parse(bar) with { Title = title, Feel = feel };
            return score with { Tempo = score.Tempo with { BeatsPerMinute = tempo } };
        }

        string Words(EngravingOptions options, int i)
        {
            var marks = ScoreEngraver.Engrave(scores[i], 100, options).Systems[0].Drawing.Marks.Where(m => m.Role == MarkRole.Tempo).ToList();
            string[] found = [marks.Count > 0 ? "tempo" : "", marks.Exists(m => m is TextMark { Run.Text: "(" }) ? "swing" : "", marks.Exists(m => m is TextMark { Run.Text: "straight" }) ? "straight" : ""];
            return string.Join(' ', found.Where(w => w.Length > 0));
        }
    }

    // Small maps of tones over the symbols look like grips: a reader has to learn what the square is, once.
    [Theory]
    [InlineData(true, 0, 1)]
    [InlineData(true, 2, 1)]
    [InlineData(false, 0, 0)]
    public void What_the_shapes_of_small_maps_mean_is_said_once(bool maps, int diagrams, int times)
    {
        FrameMeasure With(int i, FrameMeasure m) => m with { Harmonies = [new HarmonyMark(Fraction.Zero, Chord.Parse("Am")) { Frame = [new FretPosition(4, 5), new FretPosition(3, 3)], FrameIsMap = maps }] };
        var score = ScoreText.Parse(Bar + Bar, frame: With);
        var content = SampleHandout.Make(2, 1, diagrams: diagrams, rows: 1) with { Exercises = [new ExerciseContent { Score = Score("One", 4) }, new ExerciseContent { Score = score with { Title = "Two" } }, new ExerciseContent { Score = score with { Title = "Three" } }] };
        var texts = SheetComposer.Compose(content, new PageStyle()).Pages.SelectMany(p => p.Drawing.Marks).OfType<TextMark>().ToList();
        texts.Count(t => t.Run.Text == new SheetLabels().ToneLegend).ShouldBe(times);
        if (diagrams > 0 || times == 0) return;
        var titles = texts.Where(t => t.Role == MarkRole.Title).Select(t => t.Run.Text).ToList();
        texts.Where(t => t.Role == MarkRole.Title || t.Run.Text == new SheetLabels().ToneLegend).Select(t => t.Run.Text).ShouldBe([.. titles.TakeWhile(t => t != "Three"), new SheetLabels().ToneLegend, "Three"]);
    }

    private static SheetDocument Compose(string paper, int exercises, int bars) =>
        SheetComposer.Compose(Content(exercises, bars), PageStyle.Handout(paper == "a4" ? PaperSize.A4 : PaperSize.Letter));

    private static HandoutContent Content(int exercises, int bars) => SampleHandout.Make(2, 1, diagrams: 0, rows: 1) with
    {
        Exercises = [.. Enumerable.Range(1, exercises).Select(i => new ExerciseContent { Number = $"{i}", Score = Score($"Study {i}", bars) })],
    };

    private static Score Score(string title, int bars) => ScoreText.Parse(string.Concat(Enumerable.Repeat(Bar, bars))) with { Title = title, Instruction = "Evenly, and without haste." };
}
