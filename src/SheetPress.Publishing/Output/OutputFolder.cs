using System.Collections.Immutable;

namespace SheetPress.Publishing;

/// <summary>The folder of one lesson's files: remembers what it wrote, so that pages and exercises of an earlier, longer lesson can go.</summary>
/// <param name="path">The folder.</param>
internal sealed class OutputFolder(string path)
{
    private readonly ImmutableArray<string>.Builder _written = ImmutableArray.CreateBuilder<string>();

    /// <summary>Paths of the files written, in order.</summary>
    public ImmutableArray<string> Written => _written.ToImmutable();

    /// <summary>Writes a file whole or not at all.</summary>
    public void Write(string name, Action<Stream> write)
    {
        var file = Path.Combine(path, name);
        AtomicFile.Write(file, write);
        _written.Add(file);
    }

    /// <summary>Removes files that an earlier run wrote under our numbered names and this one did not; files of other names are never touched.</summary>
    public void RemoveLeftovers()
    {
        var kept = _written.Select(Path.GetFullPath).ToHashSet();
        Remove(Path.Combine(path, "exercises"), name => name.EndsWith(".musicxml", StringComparison.Ordinal) || name.EndsWith(".mid", StringComparison.Ordinal));
        Remove(path, name => name.StartsWith("page-", StringComparison.Ordinal) && (name.EndsWith(".png", StringComparison.Ordinal) || name.EndsWith(".svg", StringComparison.Ordinal)));

        void Remove(string folder, Func<string, bool> isOurs)
        {
            if (!Directory.Exists(folder)) return;
            foreach (var file in Directory.GetFiles(folder))
            {
                var name = Path.GetFileName(file);
                var number = name.StartsWith("page-", StringComparison.Ordinal) ? name[5..] : name;
                var isNumbered = number.Length > 2 && char.IsAsciiDigit(number[0]) && char.IsAsciiDigit(number[1]);
                if (isNumbered && isOurs(name) && !kept.Contains(Path.GetFullPath(file))) File.Delete(file);
            }
        }
    }
}
