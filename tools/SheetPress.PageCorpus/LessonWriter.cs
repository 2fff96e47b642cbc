using System.Globalization;
using System.Text;
using SheetPress.Lessons;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.PageCorpus;

/// <summary>Writes random lessons: all styles, instruments, keys and meters, dense and sparse rhythms. The same number gives the same lesson.</summary>
internal static class LessonWriter
{
    private const int ExercisesEach = 6;

    private static readonly string[] Meters = ["2/4", "3/4", "4/4", "5/4", "6/8", "7/8", "9/8", "12/8"];
    private static readonly string[] Rhythms = ["halves", "quarters", "eighths", "sixteenths", "q e e", "q. e", "e3 e3 e3", "e s s", "w"];
    private static readonly string[] Layouts = ["staff-and-tab", "staff-and-tab", "staff-and-tab", "staff", "tab", "chord-chart"];

    /// <summary>The text of a lesson.</summary>
    public static string Write(int number)
    {
        var random = new Random(number);
        var keys = Key.All(random.Next(2) == 0 ? Mode.Major : Mode.Minor);
        var meter = Pick(random, Meters);
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"title: Lesson {number}\nkey: {Pick(random, keys)}\nmeter: {meter}\n");
        text.Append(CultureInfo.InvariantCulture, $"instrument: {Pick(random, InstrumentCatalogue.All).Id}\nlevel: {random.Next(1, 6)}\n");
        text.Append("diagrams: none\npractice: none\nprogression: \"").Append(Progression(random, meter)).Append("\"\nexercises:\n");
        for (var i = 0; i < ExercisesEach; i++) AppendExercise(text, random);
        return text.ToString();
    }

    private static string Progression(Random random, string meter)
    {
        var bars = new List<string>();
        var length = 4 * random.Next(1, 5);
        for (var i = 0; i < length; i++)
        {
            var bar = Chord(random);
            if (meter is ("4/4" or "2/4" or "6/8" or "12/8") && random.Next(3) == 0) bar += " " + Chord(random);
            bars.Add(bar);
        }
        return string.Join(" | ", bars);
    }

    private static string Chord(Random random)
    {
        var root = NoteName.FromFifths(random.Next(-6, 7));
        var bass = random.Next(12) == 0 ? "/" + NoteName.FromFifths(root.Fifths + random.Next(-2, 5)) : "";
        return root + Pick(random, ChordQualities.All).Suffix + bass;
    }

    private static void AppendExercise(StringBuilder text, Random random)
    {
        var style = Pick(random, ExerciseStyles.All);
        if (style.Options.Any(o => o.Required)) style = ExerciseStyles.All[0];
        text.Append(CultureInfo.InvariantCulture, $"  - style: {style.Name}\n    seed: {random.Next(1, 1000)}\n    layout: {Pick(random, Layouts)}\n");
        // Grooves have a rhythm of their own.
        if (style.Group != "grooves" && style.Name is not ("root-fifth" or "root-fifth-octave-seventh") && random.Next(2) == 0)
            text.Append("    rhythm: ").Append(Pick(random, Rhythms)).Append('\n');
        if (random.Next(3) == 0) text.Append("    show: fingers degrees romans\n");
    }

    private static T Pick<T>(Random random, IReadOnlyList<T> items) => items[random.Next(items.Count)];
}
