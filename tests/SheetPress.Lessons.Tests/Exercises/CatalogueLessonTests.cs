namespace SheetPress.Lessons.Tests;

public class CatalogueLessonTests
{
    [Fact]
    public void The_catalogue_lesson_shows_every_style()
    {
        var (source, bag) = LessonFiles.Load(RepositoryRoot.Combine("lesson-sources", "catalogue-of-styles.yaml"));
        var lesson = LessonReader.Read(source, bag)!;
        lesson.Exercises.Select(e => e.Style.Name).ShouldBe(ExerciseStyles.All.Select(s => s.Name), ignoreOrder: true);
    }
}
