namespace SheetPress.Publishing;

/// <summary>Writes files so that a reader, or a failure half-way, never sees half a file: to a temporary file beside it, then moved into place.</summary>
public static class AtomicFile
{
    /// <summary>Writes a file, making its folder when needed. An older file stays as it is until the new one is complete.</summary>
    /// <param name="path">Where the file is to be.</param>
    /// <param name="write">Writes the contents.</param>
    /// <exception cref="IOException">The disk is full or the path cannot be written.</exception>
    /// <exception cref="UnauthorizedAccessException">The path may not be written.</exception>
    public static void Write(string path, Action<Stream> write)
    {
        var folder = Path.GetDirectoryName(Path.GetFullPath(path))!;
        Directory.CreateDirectory(folder);
        var temporary = Path.Combine(folder, $".{Path.GetFileName(path)}.{Environment.ProcessId}.part");
        try
        {
            using (var stream = new FileStream(temporary, FileMode.Create, FileAccess.Write, FileShare.None, 1 << 16))
            {
                write(stream);
            }
            File.Move(temporary, path, overwrite: true);
        }
        catch
        {
            File.Delete(temporary);
            throw;
        }
    }
}
