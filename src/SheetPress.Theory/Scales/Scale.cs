using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Runtime.InteropServices;

namespace SheetPress.Theory;

/// <summary>A scale: a root and a kind of scale. Equality is by the spelled root and the kind.</summary>
/// <param name="Root">The root.</param>
/// <param name="Type">The kind of scale.</param>
public sealed record Scale(NoteName Root, ScaleType Type)
{
    /// <summary>
    /// The notes from the root up within one octave, one for each degree of the type, spelled from the root. A note that would need three
    /// signs or more is written as the simpler note that sounds the same.
    /// </summary>
    public ImmutableArray<NoteName> Notes
    {
        get
        {
            var degrees = Type.Degrees;
            var notes = new NoteName[degrees.Length];
            for (var i = 0; i < notes.Length; i++) notes[i] = NoteOf(degrees[i]);
            return ImmutableCollectionsMarshal.AsImmutableArray(notes);
        }
    }

    /// <summary>The note of a degree above the root, spelled as <see cref="Notes"/> are.</summary>
    public NoteName NoteOf(Degree degree)
    {
        var note = Root + degree.ToInterval();
        return Math.Abs(note.Alteration) > 2 ? note.Simplest : note;
    }

    /// <summary>Whether a note of this sound is in the scale, however it is spelled.</summary>
    public bool ContainsSound(NoteName note) => Type.Sounds(NoteName.Mod(note.PitchClass - Root.PitchClass, 12));

    /// <summary>"C natural minor".</summary>
    public override string ToString() => $"{Root} {Type.Name}";

    /// <summary>"E♭ natural minor", "D Dorian": as it is printed, with real accidental signs.</summary>
    public string ToDisplayString() => $"{Root.ToDisplayString()} {Type.ToDisplayString()}";

    /// <summary>Reads a root and a name of <see cref="ScaleTypes"/>: "D dorian", "F# half-whole diminished".</summary>
    public static bool TryParse([NotNullWhen(true)] string? text, [NotNullWhen(true)] out Scale? scale)
    {
        scale = null;
        if (text is null) return false;
        text = text.Trim();
        if (!NoteName.TryRead(text, 0, out var root, out var end) || end == text.Length || text[end] != ' ') return false;
        if (ScaleTypes.Find(text[end..]) is not { } type) return false;
        scale = new Scale(root, type);
        return true;
    }

    /// <summary>Reads a root and a name of <see cref="ScaleTypes"/>.</summary>
    /// <exception cref="FormatException">The text is no scale that is known.</exception>
    public static Scale Parse(string text) =>
        TryParse(text, out var scale) ? scale : throw new FormatException($"'{text}' is no scale: write a root and a name, as in D dorian or G phrygian dominant.");
}
