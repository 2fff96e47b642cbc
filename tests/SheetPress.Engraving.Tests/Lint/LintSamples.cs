using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Engraving.Tests.Lint;

/// <summary>Systems and pages on which the lint finds nothing, and ways to spoil one mark of them.</summary>
internal static class LintSamples
{
    /// <summary>Distance from every edge of a page that its ink keeps, in millimetres.</summary>
    public const double Margin = 15;

    private const double StaffSpace = 1.75;

    /// <summary>A system of staff and tab with beams, accidentals, chord symbols and a repeat.</summary>
    public static EngravedSystem System()
    {
        var score = ScoreText.Parse(
            "E2:1/2 F#2:1/2 G#2:1/2 Bb2:1/2 C3:1 r:1 | E2:1/2 F2:1/2 G2:1/2 A2:1/2 B2:1 E2:1",
            frame: (i, m) => m with
            {
                RepeatStart = i == 0,
                RepeatEndTimes = i == 1 ? 2 : 0,
                Harmonies = [new HarmonyMark(0, SheetPress.Theory.Chord.Parse("C7"), "I7"), new HarmonyMark(2, SheetPress.Theory.Chord.Parse("F7"), "IV7")],
            });
        return ScoreEngraver.Engrave(score, 70, new EngravingOptions { StaffSpace = StaffSpace }).Systems.ShouldHaveSingleItem();
    }

    /// <summary>The system with its marks changed.</summary>
    public static EngravedSystem With(this EngravedSystem system, Func<Mark, Mark> change) =>
        system with { Drawing = new Drawing([.. system.Drawing.Marks.Select(change)]) };

    /// <summary>The system with the first mark of a kind changed.</summary>
    public static EngravedSystem WithFirst<T>(this EngravedSystem system, MarkRole role, Func<T, Mark> change)
        where T : Mark
    {
        var first = system.Drawing.Marks.OfType<T>().First(m => m.Role == role);
        return system.With(m => ReferenceEquals(m, first) ? change(first) : m);
    }

    /// <summary>What the lint finds in a system.</summary>
    public static ImmutableArray<LintFinding> Check(this EngravedSystem system) => SystemLint.Check(system, StaffSpace);

    /// <summary>An A4 page with a title, a line of text and a system.</summary>
    public static Page Page(params Mark[] more)
    {
        var marks = ImmutableArray.CreateBuilder<Mark>();
        marks.Add(Text("Heading", 20, 30, 5, MarkRole.Title));
        marks.Add(Text("A line of words", 20, 40, 3.5));
        foreach (var mark in System().Drawing.Marks) marks.Add(mark.Transform(StaffSpace, 20, 70));
        marks.AddRange(more);
        return new Page(210, 297, new Drawing(marks.ToImmutable()));
    }

    /// <summary>Text on a page, in millimetres.</summary>
    public static TextMark Text(string text, double x, double y, double size, MarkRole role = MarkRole.BodyText) =>
        new(TextShaper.Run(text, TextFont.Serif), new Point(x, y), size) { Role = role };

    /// <summary>What the lint finds on a page.</summary>
    public static ImmutableArray<LintFinding> Check(this Page page) =>
        PageLint.Check(new SheetDocument { Title = "Sheet", Pages = [page] }, Margin);
}
