using System.Globalization;
using System.Text;
using SheetPress.Engraving;
using SheetPress.Lessons;
using SheetPress.Publishing;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.PageCorpus;

/// <summary>
/// Writes random lessons: all styles, instruments, keys and meters, dense and sparse rhythms, lines of a teacher's own with all their
/// marks, forms with repeats and endings, and page styles. The same number gives the same lesson.
/// </summary>
internal sealed class LessonWriter
{
    private const int ExercisesEach = 6;

    private static readonly string[] Meters = ["2/4", "3/4", "4/4", "4/4", "5/4", "6/8", "7/8", "7/8 (2+2+3)", "9/8", "12/8", "2/2", "6/4", "3/8", "5/8"];
    private static readonly string[] Layouts = ["staff-and-tab", "staff-and-tab", "staff-and-tab", "staff", "tab", "chord-chart"];
    private static readonly string[] Shown = ["fingers", "degrees", "counts", "romans", "fingers degrees", "degrees counts", "fingers romans", "fingers degrees counts romans", "shapes", "shapes", "fingers shapes", "degrees shapes"];
    private static readonly string[] Tunings =
    [
        "{ base: bass-4, tuning: D1 A1 D2 G2 }", "{ base: guitar-6, tuning: D2 A2 D3 G3 B3 E4, capo: 2 }", "{ base: guitar-6, tuning: D2 A2 D3 G3 A3 D4, frets: 22, left-handed: yes }",
    ];
    private static readonly string[] Marks = ["accent", "staccato", "tenuto mute", "accent plain plain", "let-ring", "thumb plain pop plain", "down up", "index middle", "ghost plain"];
    private static readonly string[] Ladders = ["tones", "tempo", "rhythm", "syncopation", "positions"];
    private static readonly ExerciseStyle[] Styles = [.. ExerciseStyles.All.Where(s => !s.Options.Any(o => o.Required))];

    private readonly Random _random;
    private readonly string _meter;
    private readonly Instrument _instrument;

    /// <summary>Writes a lesson.</summary>
    /// <param name="number">Its number.</param>
    public LessonWriter(int number)
    {
        _random = new Random(number);
        _meter = Pick(Meters);
        _instrument = Pick(InstrumentCatalogue.All);
        Text = Write(number);
        Style = StyleOf(number);
    }

    /// <summary>The lesson.</summary>
    public string Text { get; }

    /// <summary>The look of its pages: handouts on both papers, large print, a page of a book.</summary>
    public PageStyle Style { get; }

    private static PageStyle StyleOf(int number)
    {
        var style = PageStyle.Handout(number % 2 == 0 ? PaperSize.A4 : PaperSize.Letter);
        return (number % 8) switch
        {
            2 or 3 => style with { StaffSpace = 2.25 },
            4 or 5 => PageStyles.For(PageKind.Book, style.Paper),
            7 => PageStyles.For(number % 16 == 7 ? PageKind.LargePrint : PageKind.Handout, number % 16 == 7 ? PaperSize.A4 : PaperSize.A5),
            6 => style with { SideMargin = 24, StaffSpace = 1.5 },
            _ => style,
        };
    }

    private string Write(int number)
    {
        var key = Pick(Key.All(_random.Next(2) == 0 ? Mode.Major : Mode.Minor));
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"title: Lesson {number}\nkey: {key}\nmeter: {_meter}\ninstrument: {(_random.Next(12) == 0 ? Pick(Tunings) : _instrument.Id)}\nlevel: {_random.Next(1, 6)}\n");
        if (_random.Next(4) == 0) text.Append("feel: ").Append(Pick(["swing", "swing-sixteenths"])).Append('\n');
        text.Append(CultureInfo.InvariantCulture, $"tempo: {_random.Next(50, 160)}\n");
        if (_random.Next(3) > 0) text.Append("diagrams: none\npractice: none\n");
        text.Append("progression: \"").Append(Progression()).Append("\"\nexercises:\n");
        for (var i = 0; i < ExercisesEach; i++) AppendExercise(text);
        return text.ToString();
    }

    private string Progression()
    {
        var bars = new List<string>();
        var length = 4 * _random.Next(1, 5);
        for (var i = 0; i < length; i++)
        {
            var bar = Chord();
            if (_meter is "4/4" or "2/4" or "6/8" or "12/8" or "2/2" or "6/4" && _random.Next(3) == 0) bar += " " + Chord();
            else if (i > 0 && _random.Next(12) == 0) bar = Pick(["same", "hold", "N.C."]);
            if (i % 4 == 0 && _random.Next(4) == 0) bar = $"[{(char)('A' + (i / 4))}] " + bar;
            bars.Add(bar);
        }
        var text = string.Join(" | ", bars);
        return _random.Next(6) switch
        {
            0 => "|: " + text + " :|",
            1 => "|: " + text + " |1. " + Chord() + " :|2. " + Chord() + " ||",
            2 => text + " || " + string.Join(" | ", bars.Take(4)) + " [D.C. al Fine]",
            _ => text,
        };
    }

    private string Chord()
    {
        var root = NoteName.FromFifths(_random.Next(-6, 7));
        var bass = _random.Next(12) == 0 ? "/" + NoteName.FromFifths(root.Fifths + _random.Next(-2, 5)) : "";
        return root + Pick(ChordQualities.All).Suffix + bass;
    }

    private void AppendExercise(StringBuilder text)
    {
        var own = _random.Next(5) == 0;
        var style = own ? null : Pick(Styles);
        text.Append(CultureInfo.InvariantCulture, $"  - style: {style?.Name ?? "own-line"}\n    seed: {_random.Next(1, 1000)}\n    layout: {Pick(Layouts)}\n");
        if (own)
        {
            var (line, lower) = new OwnLineWriter(_random, _meter, _instrument.OpenStrings.Min(p => p.MidiNumber)).Write();
            text.Append("    line: \"").Append(line).Append("\"\n");
            if (lower is not null) text.Append("    lower: \"").Append(lower).Append("\"\n");
        }
        // Grooves have a rhythm of their own.
        else if (style!.Group != "grooves" && _random.Next(2) == 0) text.Append("    rhythm: ").Append(new RhythmWriter(_random, _meter).Write()).Append('\n');
        if (!own && style!.Group != "grooves" && _random.Next(5) == 0) text.Append("    marks: ").Append(Pick(Marks)).Append('\n');
        if (!own && style!.Group != "grooves" && _random.Next(12) == 0) text.Append("    ladder: ").Append(Pick(Ladders)).Append('\n');
        if (_random.Next(3) == 0) text.Append("    show: ").Append(Pick(Shown)).Append('\n');
        if (_random.Next(8) == 0) text.Append(CultureInfo.InvariantCulture, $"    position: {_random.Next(1, 8)}\n");
        if (_random.Next(12) == 0) text.Append(CultureInfo.InvariantCulture, $"    measures-per-system: {_random.Next(2, 5)}\n");
    }

    private T Pick<T>(IReadOnlyList<T> items) => items[_random.Next(items.Count)];
}
