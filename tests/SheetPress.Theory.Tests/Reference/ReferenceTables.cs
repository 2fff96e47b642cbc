using System.Text.Json;

namespace SheetPress.Theory.Tests;

/// <summary>The tables of the npm package tonal (MIT), written by make-reference.mjs beside this file.</summary>
internal static class ReferenceTables
{
    internal sealed record ChordRow(string Name, string[] Suffixes, Dictionary<string, string> Notes);

    internal sealed record ScaleRow(string[] Names, Dictionary<string, string> Notes);

    internal sealed record KeyRow(
        string Key,
        int Signature,
        string Scale,
        string Triads,
        string Sevenths,
        string[] Scales,
        string? SecondaryDominants,
        string? HarmonicSevenths,
        string[]? HarmonicScales,
        string? MelodicSevenths,
        string[]? MelodicScales);

    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web);

    internal static ChordRow[] Chords => Read<ChordRow>("chords.json");

    internal static ScaleRow[] Scales => Read<ScaleRow>("scales.json");

    internal static KeyRow[] Keys => Read<KeyRow>("keys.json");

    private static T[] Read<T>(string file)
    {
        var directory = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(directory.FullName, "SheetPress.sln"))) directory = directory.Parent ?? throw new InvalidOperationException("The repository root was not found.");
        var path = Path.Combine(directory.FullName, "tests", "SheetPress.Theory.Tests", "Reference", file);
        return JsonSerializer.Deserialize<T[]>(File.ReadAllText(path), Options)!;
    }
}
