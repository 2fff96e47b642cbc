namespace SheetPress.Engraving.Tests.Fonts;

/// <summary>The fonts of "the system" are shipped ones copied to a folder, so that the tests do not depend on the machine.</summary>
public sealed class SystemFontsTests : IDisposable
{
    private const int Square = 0x25A1; // In the sans face only.
    private readonly string _folder = Directory.CreateTempSubdirectory("fonts").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private void Install(string name, TextFont font) => File.WriteAllBytes(Path.Combine(_folder, name), FontFile.Of(font).Bytes);

    [Fact]
    public void The_font_that_has_the_character_is_found_in_a_subfolder()
    {
        Directory.CreateDirectory(Path.Combine(_folder, "deep"));
        Install("A-Serif.ttf", TextFont.Serif);
        Install("deep/B-Sans.ttf", TextFont.Sans);
        var found = new SystemFonts([_folder]).For(Square).ShouldNotBeNull();
        found.Name.ShouldBe(Path.Combine(_folder, "deep", "B-Sans.ttf"));
        found.Face.Shape("□").Glyphs.Single().GlyphId.ShouldNotBe((ushort)0);
    }

    [Fact]
    public void An_upright_face_of_normal_weight_comes_before_a_bold_one()
    {
        Install("A-Bold.ttf", TextFont.SansBold);
        Install("B-Regular.ttf", TextFont.Sans);
        new SystemFonts([_folder]).For(Square).ShouldNotBeNull().Name.ShouldEndWith("B-Regular.ttf");
    }

    [Fact]
    public void No_font_no_folder_and_broken_files_give_nothing()
    {
        File.WriteAllText(Path.Combine(_folder, "broken.ttf"), "not a font");
        Install("A-Serif.ttf", TextFont.Serif);
        new SystemFonts([_folder, Path.Combine(_folder, "missing")]).For(Square).ShouldBeNull();
        new SystemFonts([]).For(Square).ShouldBeNull();
    }
}
