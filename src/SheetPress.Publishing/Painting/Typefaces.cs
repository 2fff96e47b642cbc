using System.Collections.Concurrent;
using SheetPress.Engraving;
using SkiaSharp;

namespace SheetPress.Publishing;

/// <summary>The whole fonts as Skia sees them, opened once and shared by all threads (a Skia typeface never changes).</summary>
internal static class Typefaces
{
    private static readonly Lazy<SKTypeface> MusicFace = new(() => Open(FontFile.Music));
    private static readonly ConcurrentDictionary<string, SKTypeface> ByFile = new(StringComparer.Ordinal);

    /// <summary>The music font.</summary>
    internal static SKTypeface Music => MusicFace.Value;

    /// <summary>The font that a run of text was shaped in.</summary>
    internal static SKTypeface Of(TextRun run) => run.FallbackFamily is { } path
        ? ByFile.GetOrAdd(path, p => SKTypeface.FromFile(p) ?? throw new FileNotFoundException($"The font {p} cannot be opened.", p))
        : ByFile.GetOrAdd(run.Font.ToString(), _ => Open(FontFile.Of(run.Font)));

    private static SKTypeface Open(FontFile file) => SKTypeface.FromData(SKData.Create(file.Address, file.Length));
}
