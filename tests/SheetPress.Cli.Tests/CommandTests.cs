using System.Text.Json;

namespace SheetPress.Cli.Tests;

public sealed class CommandTests : IDisposable
{
    private const string Lesson = """
        title: Two chords
        key: G major
        progression: G6 | D7
        exercises:
          - style: roots
          - style: arpeggio
        """;

    private readonly SheetPressProcess _sheetPress = new();

    public void Dispose() => _sheetPress.Dispose();

    [Fact]
    public void Build_writes_every_file_of_a_lesson()
    {
        _sheetPress.WriteFile("lessons/two-chords.yaml", Lesson);
        var result = _sheetPress.Run("build", "lessons", "-o", "sheets", "--images", "--report", "report.json");
        result.ExitCode.ShouldBe(0, result.Error);
        var files = Directory.GetFiles(_sheetPress.Path("sheets"), "*", SearchOption.AllDirectories)
            .Select(f => Path.GetRelativePath(_sheetPress.Path("sheets"), f).Replace('\\', '/')).Order(StringComparer.Ordinal).ToArray();
        files.ShouldContain("two-chords/two-chords.pdf");
        files.ShouldContain("two-chords/two-chords.musicxml");
        files.ShouldContain("two-chords/two-chords.mid");
        files.ShouldContain("two-chords/exercises/01-roots.musicxml");
        files.ShouldContain("two-chords/exercises/02-arpeggios.mid");
        files.ShouldContain("two-chords/page-01.png");
        files.ShouldContain("two-chords/page-01.svg");

        using var report = JsonDocument.Parse(File.ReadAllText(_sheetPress.Path("report.json")));
        var lesson = report.RootElement.GetProperty("lessons")[0];
        lesson.GetProperty("files").GetArrayLength().ShouldBe(files.Length);
        lesson.GetProperty("measures").GetInt32().ShouldBe(4);
        lesson.GetProperty("exercises").GetArrayLength().ShouldBe(2);
        report.RootElement.GetProperty("totals").GetProperty("errors").GetInt32().ShouldBe(0);
    }

    [Fact]
    public void Same_lesson_gives_same_bytes_in_any_locale()
    {
        _sheetPress.WriteFile("two-chords.yaml", Lesson);
        _sheetPress.RunWith(new() { ["LC_ALL"] = "C", ["TZ"] = "UTC" }, "build", "two-chords.yaml", "-o", "a", "--images").ExitCode.ShouldBe(0);
        _sheetPress.RunWith(new() { ["LC_ALL"] = "de_DE.UTF-8", ["TZ"] = "Asia/Tokyo", ["DOTNET_PROCESSOR_COUNT"] = "1" }, "build", "two-chords.yaml", "-o", "b", "--images").ExitCode.ShouldBe(0);
        var first = Directory.GetFiles(_sheetPress.Path("a"), "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal).ToArray();
        first.Length.ShouldBeGreaterThan(6);
        foreach (var file in first)
        {
            var other = Path.Combine(_sheetPress.Path("b"), Path.GetRelativePath(_sheetPress.Path("a"), file));
            File.ReadAllBytes(other).ShouldBe(File.ReadAllBytes(file), file);
        }
    }

    [Fact]
    public void Problems_of_all_files_are_reported_at_once_and_older_sheets_stay()
    {
        _sheetPress.WriteFile("lessons/a.yaml", Lesson);
        _sheetPress.Run("build", "lessons", "-o", "sheets").ExitCode.ShouldBe(0);
        var before = File.ReadAllBytes(_sheetPress.Path("sheets", "a", "a.pdf"));

        _sheetPress.WriteFile("lessons/a.yaml", Lesson.Replace("D7", "Dmja7").Replace("roots", "rots"));
        _sheetPress.WriteFile("lessons/b.yaml", Lesson.Replace("key: G major", "key: H major"));
        _sheetPress.WriteFile("lessons/c.yaml", Lesson);
        var result = _sheetPress.Run("build", "lessons", "-o", "sheets");
        result.ExitCode.ShouldBe(1);
        result.Error.ShouldContain("a.yaml:3:19: error");
        result.Error.ShouldContain("Dmja7");
        result.Error.ShouldContain("maj7");
        result.Error.ShouldContain("rots");
        result.Error.ShouldContain("b.yaml:2:6: error");
        File.ReadAllBytes(_sheetPress.Path("sheets", "a", "a.pdf")).ShouldBe(before);
        File.Exists(_sheetPress.Path("sheets", "b", "b.pdf")).ShouldBeFalse();
        File.Exists(_sheetPress.Path("sheets", "c", "c.pdf")).ShouldBeTrue();
        Directory.GetFiles(_sheetPress.Path("sheets"), "*.part", SearchOption.AllDirectories).ShouldBeEmpty();
    }

    [Fact]
    public void Shorter_lesson_leaves_no_exercises_of_the_longer_one_behind()
    {
        _sheetPress.WriteFile("a.yaml", Lesson);
        _sheetPress.Run("build", "a.yaml", "-o", "sheets");
        _sheetPress.WriteFile("sheets/a/exercises/my-own.musicxml", "kept");
        _sheetPress.WriteFile("a.yaml", Lesson.Replace("  - style: arpeggio", "").TrimEnd() + "\n");
        _sheetPress.Run("build", "a.yaml", "-o", "sheets").ExitCode.ShouldBe(0);
        Directory.GetFiles(_sheetPress.Path("sheets", "a", "exercises")).Select(Path.GetFileName).Order(StringComparer.Ordinal)
            .ShouldBe(["01-roots.mid", "01-roots.musicxml", "my-own.musicxml"]);
    }

    [Fact]
    public void Lesson_can_be_re_keyed_and_written_for_another_instrument()
    {
        _sheetPress.WriteFile("a.yaml", Lesson);
        var result = _sheetPress.Run("build", "a.yaml", "-o", "sheets", "--key", "Eb major", "--instrument", "guitar-6", "--paper", "letter");
        result.ExitCode.ShouldBe(0, result.Error);
        var xml = File.ReadAllText(_sheetPress.Path("sheets", "a", "a.musicxml"));
        xml.ShouldContain("<fifths>-3</fifths>");
        xml.ShouldContain("<staff-lines>6</staff-lines>");
    }

    [Fact]
    public void Check_writes_nothing()
    {
        _sheetPress.WriteFile("a.yaml", Lesson);
        var result = _sheetPress.Run("check", "a.yaml");
        result.ExitCode.ShouldBe(0);
        result.Output.ShouldContain("all well");
        Directory.GetFileSystemEntries(_sheetPress.Folder).Length.ShouldBe(1);
    }

    [Fact]
    public void Check_can_look_at_the_pages_too()
    {
        _sheetPress.WriteFile("a.yaml", Lesson);
        var result = _sheetPress.Run("check", "a.yaml", "--page", "--paper", "letter");
        result.ExitCode.ShouldBe(0, result.Error);
        result.Output.ShouldContain("all well");
        Directory.GetFileSystemEntries(_sheetPress.Folder).Length.ShouldBe(1);
    }

    [Fact]
    public void Pages_are_of_the_kind_and_on_the_paper_asked_for()
    {
        _sheetPress.WriteFile("a.yaml", Lesson);
        _sheetPress.WriteFile("b.yaml", Lesson + "\npages: large-print\n");
        _sheetPress.Run("build", "a.yaml", "b.yaml", "-o", "own").ExitCode.ShouldBe(0);
        _sheetPress.Run("build", "a.yaml", "b.yaml", "-o", "large", "--pages", "large-print").ExitCode.ShouldBe(0);
        var result = _sheetPress.Run("build", "b.yaml", "-o", "small", "--pages", "handout", "--paper", "a5", "--images");
        result.ExitCode.ShouldBe(0, result.Error);
        Pdf("large", "b").ShouldBe(Pdf("own", "b"));
        Pdf("large", "a").ShouldNotBe(Pdf("own", "a"));
        // ISO 216: A5 is 148 x 210 mm.
        File.ReadAllText(_sheetPress.Path("small", "b", "page-01.svg")).ShouldContain("width=\"148mm\" height=\"210mm\"");
        _sheetPress.Run("check", "a.yaml", "--page", "--pages", "book", "--paper", "a5").ExitCode.ShouldBe(0);

        byte[] Pdf(string folder, string name) => File.ReadAllBytes(_sheetPress.Path(folder, name, name + ".pdf"));
    }

    [Fact]
    public void Explain_shows_the_harmony_and_the_neck()
    {
        var result = _sheetPress.Run("explain", "Dm7b5 | G7 | Cm7", "--key", "C minor");
        result.ExitCode.ShouldBe(0, result.Error);
        // Common practice: a minor ii-V-i; the scale of V7 in minor is the fifth mode of harmonic minor.
        result.Output.ShouldContain("iiø7");
        result.Output.ShouldContain("phrygian dominant");
        result.Output.ShouldContain("B*");
        result.Output.ShouldContain("E1");
    }

    [Fact]
    public void Explain_points_at_what_it_cannot_read()
    {
        var result = _sheetPress.Run("explain", "Dm7 | Gq7", "--key", "C major");
        result.ExitCode.ShouldBe(1);
        result.Error.ShouldContain("Gq7");
    }

    [Fact]
    public void Every_style_is_listed_and_its_snippet_builds()
    {
        var list = _sheetPress.Run("styles");
        list.ExitCode.ShouldBe(0);
        list.Output.ShouldContain("walking-line");
        var one = _sheetPress.Run("styles", "octave-run");
        one.Output.ShouldContain("  - style: octave-run");
        var own = _sheetPress.Run("styles", "own-line").Output;
        own.ShouldContain("Over Dm7b5 | G7 | Cm7 | Cm7 in C minor:");
        own.ShouldNotContain("error[");
        _sheetPress.Run("styles", "octav-run").Error.ShouldContain("octave-run");
    }

    [Fact]
    public void New_lesson_builds_as_it_is_and_is_not_overwritten()
    {
        _sheetPress.Run("new", "My first lesson").ExitCode.ShouldBe(0);
        File.Exists(_sheetPress.Path("my-first-lesson.yaml")).ShouldBeTrue();
        _sheetPress.Run("build", "my-first-lesson.yaml").ExitCode.ShouldBe(0);
        File.Exists(_sheetPress.Path("out", "my-first-lesson", "my-first-lesson.pdf")).ShouldBeTrue();
        _sheetPress.Run("new", "My first lesson").ExitCode.ShouldBe(2);
    }

    [Theory]
    [InlineData("build", "missing.yaml")]
    [InlineData("build")]
    [InlineData("bild")]
    [InlineData("explain", "Cm7", "--key", "H minor")]
    [InlineData("build", ".", "--instrument", "bas-4")]
    [InlineData("build", ".", "--paper", "a3")]
    [InlineData("build", ".", "--pages", "huge")]
    [InlineData("check", ".", "--pages", "huge")]
    public void Wrong_use_ends_with_1_and_a_reason(params string[] arguments)
    {
        var result = _sheetPress.Run(arguments);
        result.ExitCode.ShouldBe(1);
        result.Error.Trim().ShouldNotBeEmpty();
    }

    [Fact]
    public void Folder_that_cannot_be_written_ends_with_2()
    {
        _sheetPress.WriteFile("a.yaml", Lesson);
        _sheetPress.WriteFile("sheets", "a file where the folder should be");
        var result = _sheetPress.Run("build", "a.yaml", "-o", "sheets");
        result.ExitCode.ShouldBe(2);
        result.Error.ShouldContain("cannot be written");
        File.ReadAllText(_sheetPress.Path("sheets")).ShouldBe("a file where the folder should be");
    }
}
