using System.Text;

namespace SheetPress.Lessons.Tests;

public sealed class LessonFilesTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("lessons").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private string Write(string name, string text = "title: x")
    {
        var path = Path.Combine(_folder, name);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
        return path;
    }

    private IEnumerable<string> Names(LessonFileSet set) => set.Paths.Select(p => Path.GetRelativePath(_folder, p).Replace('\\', '/'));

    [Fact]
    public void Finds_lessons_of_a_folder_in_a_stable_order()
    {
        foreach (var name in new[] { "b.yaml", "a.yml", "Z.YAML", "sub/c.yaml", "notes.txt", ".hidden/d.yaml", "README.md" }) Write(name);
        var set = LessonFiles.Find([_folder]);
        set.Problems.ShouldBeEmpty();
        Names(set).ShouldBe(["Z.YAML", "a.yml", "b.yaml", "sub/c.yaml"]);
    }

    [Fact]
    public void Takes_files_as_they_are_given_and_each_once()
    {
        var b = Write("b.yaml");
        Write("a.yaml");
        Names(LessonFiles.Find([b, _folder, b])).ShouldBe(["b.yaml", "a.yaml"]);
        LessonFiles.Find([Write("odd.txt")]).Paths.Count.ShouldBe(1);
    }

    [Fact]
    public void Reports_what_leads_nowhere()
    {
        var empty = Directory.CreateDirectory(Path.Combine(_folder, "empty")).FullName;
        LessonFiles.Find([Path.Combine(_folder, "gone.yaml"), empty]).Problems.Select(p => p.Code).ShouldBe([DiagnosticCodes.NotFound, DiagnosticCodes.NoLessons]);
    }

    [Fact]
    public void Two_files_of_one_id_are_an_error()
    {
        Write("first lesson.yaml");
        Write("sub/First-Lesson.yml");
        var problem = LessonFiles.Find([_folder]).Problems.ShouldHaveSingleItem();
        problem.Code.ShouldBe(DiagnosticCodes.SameId);
        problem.Message.ShouldContain("first-lesson");
    }

    [Theory]
    [InlineData("a/b/Round the cycle.yaml", "round-the-cycle")]
    [InlineData("Größe & Maß.yml", "größe-maß")]
    [InlineData("E\u0301tude №2.yaml", "e\u0301tude-2")]
    [InlineData("--.yaml", "lesson")]
    [InlineData("x.y.yaml", "x-y")]
    public void Ids_are_words_joined_with_hyphens(string path, string id) => LessonFiles.IdOf(path).ShouldBe(id);

    [Fact]
    public void A_byte_order_mark_does_no_harm()
    {
        var path = Path.Combine(_folder, "bom.yaml");
        File.WriteAllText(path, MarkedLesson.Tiny, new UTF8Encoding(encoderShouldEmitUTF8Identifier: true));
        var (source, bag) = LessonFiles.Load(path);
        LessonReader.Read(source, bag).ShouldNotBeNull().Id.ShouldBe("bom");
        bag.Items.ShouldBeEmpty();
    }

    [Fact]
    public void Other_encodings_are_reported()
    {
        CodeOf(Encoding.Unicode.GetPreamble().Concat(Encoding.Unicode.GetBytes("title: x")).ToArray()).ShouldBe(DiagnosticCodes.Utf16);
        CodeOf(Encoding.BigEndianUnicode.GetPreamble().Concat(Encoding.BigEndianUnicode.GetBytes("title: x")).ToArray()).ShouldBe(DiagnosticCodes.Utf16);
        var latin = Encoding.Latin1.GetBytes("title: x\nauthor: Zo\u00eb\n");
        var (source, bag) = LessonFiles.Decode("latin.yaml", latin);
        bag.Items.ShouldHaveSingleItem().Code.ShouldBe(DiagnosticCodes.NotUtf8);
        bag.Items[0].Position.ShouldBe(new LinePosition(2, 11));
        LessonReader.Read(source, bag).ShouldBeNull();

        string CodeOf(byte[] bytes) => LessonFiles.Decode("x.yaml", bytes).Bag.Items.ShouldHaveSingleItem().Code;
    }

    [Fact]
    public void Files_that_no_lesson_is_are_turned_away()
    {
        Read(new string('x', SourceGuard.MaximumLength + 1)).ShouldBe(DiagnosticCodes.FileTooLarge);
        Read("title: " + new string('x', SourceGuard.MaximumLine + 1)).ShouldBe(DiagnosticCodes.LineTooLong);
        Read("title: a\0b").ShouldBe(DiagnosticCodes.ControlCharacter);
        Read("title: a\uD800b").ShouldBe(DiagnosticCodes.ControlCharacter);
        Read("title: a\rb").ShouldBe(DiagnosticCodes.ControlCharacter);
        var large = Write("large.yaml", new string(' ', (SourceGuard.MaximumLength * 4) + 1));
        LessonFiles.Load(large).Bag.Items.ShouldHaveSingleItem().Code.ShouldBe(DiagnosticCodes.FileTooLarge);
        LessonFiles.Load(Path.Combine(_folder, "gone.yaml")).Bag.Items.ShouldHaveSingleItem().Code.ShouldBe(DiagnosticCodes.Unreadable);

        static string Read(string text) => MarkedLesson.Read(text).Findings.ShouldHaveSingleItem().Code;
    }
}
