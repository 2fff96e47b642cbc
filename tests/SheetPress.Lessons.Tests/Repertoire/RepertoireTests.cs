using SheetPress.PageCorpus;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons.Tests;

/// <summary>
/// The forms that songs are made of, in all keys and ways of writing. All styles over all of them is a run by hand:
/// dotnet run --project tools/SheetPress.PageCorpus -- repertoire.
/// </summary>
public class RepertoireTests
{
    // All styles over every form would be too slow for every test run: each form gets some of them, the next ones in turn, and the fewer the
    // longer it is. So the work is the same for each form, and all styles have their turn several times.
    private const int BarsEach = 40;
    private const int FewestStyles = 1;
    private const int MostStyles = 6;

    private static readonly ExerciseStyle[] Styles = [.. ExerciseStyles.All.Where(s => !s.Options.Any(o => o.Required))];

    public static TheoryData<int> Forms => [.. Enumerable.Range(0, RepertoireForms.All.Length)];

    [Theory]
    [MemberData(nameof(Forms))]
    public void A_form_is_read_in_every_key_and_way_of_writing(int number)
    {
        var form = RepertoireForms.All[number];
        for (var k = 0; k < RepertoireLesson.Keys; k++)
        {
            var (key, written) = RepertoireLesson.Write(form, k, 0);
            var plain = Read(form, key, written);
            plain.ShouldNotBeEmpty();
            written = RepertoireLesson.Write(form, k, 1 + ((number + k) % (RepertoireLesson.Dialects - 1))).Progression;
            Read(form, key, written).ShouldBe(plain, written);
        }
    }

    [Fact]
    public void Every_style_has_its_turn_over_several_forms()
    {
        var turns = Forms.SelectMany(f => ChosenFor(f.Data)).CountBy(s => s.Name).ToDictionary();
        turns.Count.ShouldBe(Styles.Length);
        turns.Values.Min().ShouldBeGreaterThanOrEqualTo(3);
    }

    [Theory]
    [MemberData(nameof(Forms))]
    public void A_lesson_over_a_form_is_whole(int number)
    {
        var form = RepertoireForms.All[number];
        var (key, progression) = RepertoireLesson.Write(form, number * 4 % RepertoireLesson.Keys, number % RepertoireLesson.Dialects);
        var chosen = ChosenFor(number);
        var instrument = InstrumentCatalogue.All[number % InstrumentCatalogue.All.Length];
        var source = new SourceText("form.yaml", RepertoireLesson.Lesson(form.Name, key, form.Meter, progression, instrument.Id, 1 + (number % 5), chosen));
        var bag = new DiagnosticBag(source);
        var lesson = LessonReader.Read(source, bag);
        bag.Items.Where(d => d.Severity == Severity.Error).Select(DiagnosticPrinter.Print).ShouldBeEmpty();
        var built = LessonBuilder.Build(lesson!, bag);
        // A style may refuse an instrument for good reason; nothing else may be wrong.
        bag.Items.Where(d => d.Severity == Severity.Error && d.Code != DiagnosticCodes.WrongInstrument).Select(DiagnosticPrinter.Print).ShouldBeEmpty();
        built.Exercises.Length.ShouldBe(chosen.Length - bag.Items.Count(d => d.Code == DiagnosticCodes.WrongInstrument));
        foreach (var exercise in built.Exercises)
        {
            ScoreChecks.Run(exercise.Score).ShouldBeEmpty($"{exercise.Request.Style.Name} in {key}: {progression}");
            exercise.Line.Length.ShouldBe(lesson!.Progression.Length);
        }
    }

    private static ExerciseStyle[] ChosenFor(int number)
    {
        var before = 0;
        for (var i = 0; i < number; i++) before += StylesFor(i);
        return [.. Enumerable.Range(before, StylesFor(number)).Select(i => Styles[i % Styles.Length])];
    }

    private static int StylesFor(int number) => Math.Clamp(BarsEach / (RepertoireForms.All[number].Progression.Count(c => c == '|') + 1), FewestStyles, MostStyles);

    // The sound of each chord with its time: a spelling may be simpler in one way of writing than in another.
    private static string[] Read(RepertoireForm form, Key key, string written)
    {
        var bag = new DiagnosticBag(new SourceText("form.yaml", written));
        var progression = ProgressionReader.Read(LocatedText.At(written, 0), key, MeterReader.Read(LocatedText.At(form.Meter, 0), bag)!, bag);
        if (bag.Items.Count > 0) bag.Items.Select(DiagnosticPrinter.Print).ShouldBeEmpty();
        ProgressionReaderTests.CheckWhole(progression!);
        return [.. progression!.Chords.Select(c => $"{c.Chord?.Root.PitchClass} {c.Chord?.Quality} {c.Chord?.Lowest.PitchClass} {c.Duration}")];
    }
}
