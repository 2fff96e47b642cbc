using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace SheetPress.Theory;

/// <summary>A chord: a root, a quality and, for a slash chord, another bass note. Equality is by root, quality and bass.</summary>
/// <param name="Root">The root.</param>
/// <param name="Quality">The quality.</param>
/// <param name="Bass">The bass note when it is not the root; null otherwise.</param>
public sealed record Chord(NoteName Root, ChordQuality Quality, NoteName? Bass = null)
{
    /// <summary>The note to play lowest: the slash bass, or the root.</summary>
    public NoteName Lowest => Bass ?? Root;

    /// <summary>The chord tones, root first, spelled from the root.</summary>
    public ImmutableArray<ChordTone> Tones => [.. Quality.Degrees.Select(d => new ChordTone(d, NoteOf(d)))];

    /// <summary>The note of a degree above the root, spelled exactly.</summary>
    public NoteName NoteOf(Degree degree) => Root + degree.ToInterval();

    /// <summary>The same chord an interval away.</summary>
    public Chord Transpose(Interval interval) => new(Root + interval, Quality, Bass is { } bass ? bass + interval : null);

    /// <summary>The canonical symbol in plain text: "Cm7", "Bbmaj7/D".</summary>
    public override string ToString() => $"{Root}{Quality.Suffix}{(Bass is { } bass ? "/" + bass : "")}";

    /// <summary>Reads a chord symbol.</summary>
    public static bool TryParse([NotNullWhen(true)] string? text, [NotNullWhen(true)] out Chord? chord)
    {
        chord = null;
        if (text is null || !NoteName.TryRead(text, 0, out var root, out var end)) return false;
        var quality = ChordQualities.All.FirstOrDefault(q => q.Suffix == text[end..] || q.Aliases.Contains(text[end..]));
        if (quality is null) return false;
        chord = new Chord(root, quality);
        return true;
    }

    /// <summary>Reads a chord symbol.</summary>
    /// <exception cref="FormatException">The text is no chord symbol.</exception>
    public static Chord Parse(string text) =>
        TryParse(text, out var chord) ? chord : throw new FormatException($"'{text}' is no chord symbol.");
}

/// <summary>One tone of a chord: its degree above the root and its spelled name.</summary>
/// <param name="Degree">Degree above the root.</param>
/// <param name="Note">The spelled note.</param>
public readonly record struct ChordTone(Degree Degree, NoteName Note);
