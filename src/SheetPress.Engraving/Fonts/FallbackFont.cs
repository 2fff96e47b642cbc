namespace SheetPress.Engraving;

/// <summary>A face of the system that stands in for a shipped font.</summary>
/// <param name="Name">Path of the file, followed by "#" and the index of the face where the file is a collection.</param>
/// <param name="Face">The opened face.</param>
internal sealed record FallbackFont(string Name, TextFace Face);
