using System.Collections.Immutable;
using System.Reflection;
using System.Text;

namespace SheetPress.Lessons;

/// <summary>Pattern styles: those that come with the program, and a teacher's own.</summary>
public static class PatternLibrary
{
    /// <summary>The name of the folder in which a teacher keeps pattern files of their own, beside the lessons.</summary>
    public const string FolderName = "patterns";

    private const string ResourcePrefix = "patterns/";

    /// <summary>The patterns that come with the program, by name. Their files are read only when they are used.</summary>
    internal static ImmutableArray<ExerciseStyle> BuiltIn()
    {
        var assembly = typeof(PatternLibrary).Assembly;
        var names = assembly.GetManifestResourceNames();
        Array.Sort(names, StringComparer.Ordinal);
        var styles = ImmutableArray.CreateBuilder<ExerciseStyle>();
        foreach (var resource in names)
        {
            if (!resource.StartsWith(ResourcePrefix, StringComparison.Ordinal)) continue;
            styles.Add(new PatternStyle(LessonFiles.IdOf(resource[ResourcePrefix.Length..]), new Lazy<Pattern>(() => ReadResource(assembly, resource))));
        }
        return styles.ToImmutable();
    }

    /// <summary>
    /// Reads the pattern files (*.yaml, *.yml) of a folder; a style's name is its file name. A folder that does not exist has none.
    /// </summary>
    /// <param name="folder">The folder.</param>
    /// <returns>The styles of the files without errors, in order of their names, and everything that was found wrong.</returns>
    public static (ImmutableArray<ExerciseStyle> Styles, ImmutableArray<Diagnostic> Diagnostics) Load(string folder)
    {
        if (!Directory.Exists(folder)) return ([], []);
        var files = Directory.GetFiles(folder).Where(f => Path.GetExtension(f).ToLowerInvariant() is ".yaml" or ".yml").Order(StringComparer.Ordinal);
        var styles = ImmutableArray.CreateBuilder<ExerciseStyle>();
        var diagnostics = ImmutableArray.CreateBuilder<Diagnostic>();
        foreach (var file in files)
        {
            var (source, bag) = LessonFiles.Load(file);
            var name = LessonFiles.IdOf(file);
            var pattern = bag.HasErrors ? null : new PatternReader(bag).Read(source);
            var isTaken = ExerciseStyles.Find(name) is not null || styles.Any(s => s.Name == name);
            if (isTaken) bag.Add(new SourceSpan(0, 0), PatternProblems.NameTaken(name));
            else if (pattern is not null) styles.Add(new PatternStyle(name, new Lazy<Pattern>(pattern)));
            diagnostics.AddRange(bag.Sorted());
        }
        return (styles.ToImmutable(), diagnostics.ToImmutable());
    }

    private static Pattern ReadResource(Assembly assembly, string resource)
    {
        using var stream = assembly.GetManifestResourceStream(resource)!;
        using var reader = new StreamReader(stream, Encoding.UTF8);
        var source = new SourceText(resource, reader.ReadToEnd());
        var bag = new DiagnosticBag(source);
        // The files are part of the program and tested with it.
        return new PatternReader(bag).Read(source) ?? throw new InvalidDataException($"{resource}: {bag.Items[0].Message}");
    }
}
