namespace SheetPress.Lessons.Tests;

public class CatalogueLessonTests
{
    [Fact]
    public void The_catalogue_lesson_shows_every_style_that_its_bass_can_play()
    {
        var (source, bag) = LessonFiles.Load(RepositoryRoot.Combine("lesson-sources", "catalogue-of-styles.yaml"));
        var lesson = LessonReader.Read(source, bag)!;
        // Whole chords are for guitars and their like: a bass refuses them.
        var shown = lesson.Exercises.Select(e => e.Style.Name).Append("chords");
        shown.ShouldBe(ExerciseStyles.All.Select(s => s.Name), ignoreOrder: true);
    }
}
