using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace SheetPress.Lessons;

/// <summary>The lesson files that some paths lead to.</summary>
/// <param name="Paths">Files in a stable order, each once.</param>
/// <param name="Problems">What was wrong with the paths and with pattern files: errors about files besides the lessons.</param>
/// <param name="OwnStyles">Styles of the pattern files beside the lessons, by the folder of the lessons.</param>
public sealed record LessonFileSet(IReadOnlyList<string> Paths, IReadOnlyList<Diagnostic> Problems, IReadOnlyDictionary<string, ImmutableArray<ExerciseStyle>> OwnStyles)
{
    /// <summary>The styles that a lesson of the set can use: the catalogue, and the patterns beside the lesson.</summary>
    public IReadOnlyList<ExerciseStyle> StylesFor(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        return OwnStyles.TryGetValue(LessonFiles.FolderOf(path), out var own) ? [.. ExerciseStyles.All, .. own] : ExerciseStyles.All;
    }
}

/// <summary>Finds and loads lesson files.</summary>
public static class LessonFiles
{
    /// <summary>
    /// The lesson files (*.yaml, *.yml) of some paths: a file stands for itself, a folder for all files in it and below, hidden ones and
    /// links to other folders left out, and folders of <see cref="PatternLibrary.FolderName"/>, whose files are patterns. Files come in the order of the paths, those of a folder in the order of their relative paths by
    /// character code. Paths that do not exist, folders without lessons and files that would share an id are reported.
    /// </summary>
    public static LessonFileSet Find(IEnumerable<string> paths)
    {
        ArgumentNullException.ThrowIfNull(paths);
        var files = new List<string>();
        var problems = new List<Diagnostic>();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var path in paths)
        {
            if (File.Exists(path))
            {
                Add(path);
            }
            else if (Directory.Exists(path))
            {
                var inFolder = InFolder(path, problems);
                if (inFolder.Count == 0) problems.Add(About(path, FileProblems.NoLessons()));
                foreach (var file in inFolder) Add(file);
            }
            else
            {
                problems.Add(About(path, FileProblems.NotFound()));
            }
        }
        var byId = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var file in files)
        {
            if (!byId.TryAdd(IdOf(file), file)) problems.Add(About(file, FileProblems.SameId(IdOf(file), byId[IdOf(file)])));
        }
        var own = new Dictionary<string, ImmutableArray<ExerciseStyle>>(StringComparer.Ordinal);
        foreach (var folder in files.Select(FolderOf).Distinct())
        {
            var (styles, troubles) = PatternLibrary.Load(Path.Combine(folder, PatternLibrary.FolderName));
            problems.AddRange(troubles);
            if (!styles.IsEmpty) own.Add(folder, styles);
        }
        return new LessonFileSet(files, problems, own);

        void Add(string file)
        {
            if (seen.Add(Path.GetFullPath(file))) files.Add(file);
        }
    }

    /// <summary>The folder that a lesson lies in.</summary>
    internal static string FolderOf(string path) => Path.GetDirectoryName(path) ?? "";

    /// <summary>
    /// The name for a lesson's outputs: its file name without extension, in lower case, everything that is no letter or digit turned to
    /// single hyphens; "lesson" when nothing is left.
    /// </summary>
    public static string IdOf(string path) => Slug(Path.GetFileNameWithoutExtension(path));

    /// <summary>A text as lower-case words joined with hyphens; "lesson" when nothing is left.</summary>
    public static string Slug(string text)
    {
        var id = new StringBuilder();
        foreach (var sign in text)
        {
            // A mark over a letter may be a character of its own, as some systems write file names.
            if (char.IsLetterOrDigit(sign) || (id.Length > 0 && CharUnicodeInfo.GetUnicodeCategory(sign) == UnicodeCategory.NonSpacingMark)) id.Append(char.ToLowerInvariant(sign));
            else if (id.Length > 0 && id[^1] != '-') id.Append('-');
        }
        var slug = id.ToString().TrimEnd('-');
        return slug.Length == 0 ? "lesson" : slug;
    }

    /// <summary>Loads a file. UTF-8, with or without a byte-order mark; anything else is reported into the bag that comes back.</summary>
    /// <returns>The text, empty when it could not be read, and a bag that says why.</returns>
    public static (SourceText Source, DiagnosticBag Bag) Load(string path)
    {
        byte[] bytes;
        try
        {
            var length = new FileInfo(path).Length;
            if (length > SourceGuard.MaximumLength * 4L) return Failed(path, FileProblems.FileTooLarge(SourceGuard.MaximumLength));
            bytes = File.ReadAllBytes(path);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            return Failed(path, FileProblems.Unreadable());
        }
        return Decode(path, bytes);
    }

    /// <summary>Makes a source of the bytes of a file.</summary>
    public static (SourceText Source, DiagnosticBag Bag) Decode(string path, ReadOnlySpan<byte> bytes)
    {
        if (bytes.Length >= 2 && ((bytes[0] == 0xFF && bytes[1] == 0xFE) || (bytes[0] == 0xFE && bytes[1] == 0xFF))) return Failed(path, FileProblems.Utf16());
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xEF, 0xBB, 0xBF])) bytes = bytes[3..];
        try
        {
            var source = new SourceText(path, new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes));
            return (source, new DiagnosticBag(source));
        }
        catch (DecoderFallbackException)
        {
            // Read once more with marks for what is wrong, to show where it is.
            var source = new SourceText(path, Encoding.UTF8.GetString(bytes));
            var bag = new DiagnosticBag(source);
            var at = Math.Max(0, source.Text.IndexOf('\uFFFD', StringComparison.Ordinal));
            bag.Add(new SourceSpan(at, at + 1), source.Text.Contains('\0', StringComparison.Ordinal) ? FileProblems.Utf16() : FileProblems.NotUtf8());
            return (source, bag);
        }
    }

    private static List<string> InFolder(string folder, List<Diagnostic> problems)
    {
        var options = new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.Hidden | FileAttributes.System | FileAttributes.ReparsePoint, IgnoreInaccessible = true };
        try
        {
            var found = Directory.EnumerateFiles(folder, "*", options).Where(f => Path.GetExtension(f).ToLowerInvariant() is ".yaml" or ".yml" && Path.GetFileName(FolderOf(f)) != PatternLibrary.FolderName).ToList();
            found.Sort((a, b) => string.CompareOrdinal(a.Replace('\\', '/'), b.Replace('\\', '/')));
            return found;
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            problems.Add(About(folder, FileProblems.Unreadable()));
            return [];
        }
    }

    private static (SourceText, DiagnosticBag) Failed(string path, Problem problem)
    {
        var source = new SourceText(path, "");
        var bag = new DiagnosticBag(source);
        bag.Add(new SourceSpan(0, 0), problem);
        return (source, bag);
    }

    private static Diagnostic About(string path, Problem problem) =>
        new(problem.Code, problem.Severity, problem.Message, problem.Advice, new SourceText(path, ""), new SourceSpan(0, 0));
}
