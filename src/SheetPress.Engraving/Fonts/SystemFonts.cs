using System.Collections.Concurrent;

namespace SheetPress.Engraving;

/// <summary>The font files of some folders, searched for a character in a fixed order.</summary>
internal sealed class SystemFonts
{
    private readonly Lazy<FontEntry[]> _fonts;
    private readonly ConcurrentDictionary<int, FallbackFont?> _byCharacter = new();

    internal SystemFonts(IEnumerable<string> folders)
    {
        _fonts = new Lazy<FontEntry[]>(() => Find(folders));
    }

    /// <summary>The first font that has a character, or null.</summary>
    internal FallbackFont? For(int character) => _byCharacter.GetOrAdd(character, FirstWith);

    /// <summary>Where Linux, macOS and Windows keep fonts.</summary>
    internal static IEnumerable<string> StandardFolders()
    {
        if (OperatingSystem.IsWindows())
        {
            yield return Environment.GetFolderPath(Environment.SpecialFolder.Fonts);
        }
        else if (OperatingSystem.IsMacOS())
        {
            yield return "/System/Library/Fonts";
            yield return "/Library/Fonts";
        }
        else
        {
            yield return "/usr/share/fonts";
            yield return "/usr/local/share/fonts";
        }
    }

    private FallbackFont? FirstWith(int character)
    {
        foreach (var entry in _fonts.Value)
        {
            if (entry.Font.Value is { } font && font.Face.Has(character))
            {
                return font;
            }
        }
        return null;
    }

    /// <summary>All faces, upright text faces of normal weight first, then by path, so that the choice is the same on each run.</summary>
    private static FontEntry[] Find(IEnumerable<string> folders)
    {
        var options = new EnumerationOptions { RecurseSubdirectories = true, IgnoreInaccessible = true };
        var paths = folders
            .Where(Directory.Exists)
            .SelectMany(folder => Directory.EnumerateFiles(folder, "*", options))
            .Where(path => Path.GetExtension(path).ToUpperInvariant() is ".TTF" or ".OTF" or ".TTC" or ".OTC")
            .OrderBy(path => Rank(Path.GetFileNameWithoutExtension(path)))
            .ThenBy(path => path, StringComparer.Ordinal);
        return [.. paths.Select(path => new FontEntry(path))];
    }

    private static int Rank(string name)
    {
        string[] special = ["Bold", "Italic", "Oblique", "Black", "Light", "Thin", "Medium", "Condensed", "Mono", "Emoji", "Symbol"];
        return special.Count(word => name.Contains(word, StringComparison.OrdinalIgnoreCase));
    }

    private sealed class FontEntry(string path)
    {
        internal Lazy<FallbackFont?> Font { get; } = new(() => Open(path));

        // A collection holds one design in several regional forms; the first is taken.
        private static FallbackFont? Open(string path)
        {
            try
            {
                return new FallbackFont(path, TextFace.FromPath(path, 0));
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                return null;
            }
        }
    }
}
