namespace SheetPress.Engraving;

/// <summary>A file shipped inside the assembly, read in place: nothing is copied, and the memory stays valid as long as the process runs.</summary>
/// <param name="Address">Address of the first byte; read only.</param>
/// <param name="Length">Length in bytes.</param>
public readonly record struct FontFile(nint Address, int Length)
{
    /// <summary>Number of the text faces.</summary>
    internal const int TextFaces = (int)TextFont.SansSemiBoldItalic + 1;

    /// <summary>The bytes.</summary>
    public ReadOnlySpan<byte> Bytes
    {
        get
        {
            unsafe
            {
                return new ReadOnlySpan<byte>((void*)Address, Length);
            }
        }
    }

    /// <summary>The music font (OpenType with CFF outlines).</summary>
    public static FontFile Music => Named("bravura.otf");

    /// <summary>The file of a text face (OpenType with TrueType outlines).</summary>
    public static FontFile Of(TextFont font) => Named(font switch
    {
        TextFont.Serif => "SourceSerif4_400Regular.ttf",
        TextFont.SerifItalic => "SourceSerif4_400Regular_Italic.ttf",
        TextFont.SerifSemiBold => "SourceSerif4_600SemiBold.ttf",
        TextFont.SerifBold => "SourceSerif4_700Bold.ttf",
        TextFont.Sans => "SourceSans3_400Regular.ttf",
        TextFont.SansItalic => "SourceSans3_400Regular_Italic.ttf",
        TextFont.SansSemiBold => "SourceSans3_600SemiBold.ttf",
        TextFont.SansBold => "SourceSans3_700Bold.ttf",
        TextFont.SerifSemiBoldItalic => "SourceSerif4_600SemiBold_Italic.ttf",
        TextFont.SansSemiBoldItalic => "SourceSans3_600SemiBold_Italic.ttf",
        _ => throw new ArgumentOutOfRangeException(nameof(font), font, "Not a text font."),
    });

    internal static FontFile Named(string name)
    {
        // Resources of an assembly are a view of its image in memory, which is never unloaded.
        using var stream = (UnmanagedMemoryStream)(typeof(FontFile).Assembly.GetManifestResourceStream(name)
            ?? throw new FileNotFoundException($"The font file {name} is not in the assembly.", name));
        unsafe
        {
            return new FontFile((nint)stream.PositionPointer, checked((int)stream.Length));
        }
    }
}
