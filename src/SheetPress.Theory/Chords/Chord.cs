using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Runtime.InteropServices;

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
    public ImmutableArray<ChordTone> Tones
    {
        get
        {
            var degrees = Quality.Degrees;
            var tones = new ChordTone[degrees.Length];
            for (var i = 0; i < tones.Length; i++) tones[i] = new ChordTone(degrees[i], NoteOf(degrees[i]));
            return ImmutableCollectionsMarshal.AsImmutableArray(tones);
        }
    }

    /// <summary>The symbol taken apart for engraving.</summary>
    public ChordSymbol Symbol
    {
        get
        {
            var parts = Quality.Parts;
            // "m(maj7)"; no basic name holds a flat or a sharp.
            var main = parts.Main;
            if (main.Contains("Maj", StringComparison.Ordinal)) main = main.Replace("Maj", "(maj", StringComparison.Ordinal) + ")";
            var written = parts.Written;
            var changes = new string[written.Length];
            for (var i = 0; i < changes.Length; i++) changes[i] = written[i].Replace('b', '♭').Replace('#', '♯');
            // Alterations come first. Additions and omissions alone stay on the baseline; behind an alteration they follow it up.
            var isRaised = changes is [['♭' or '♯', ..] or ['(', '♭' or '♯', ..] or "alt", ..];
            return isRaised ? new(Root, main, [.. changes], Bass) : new(Root, main + string.Concat(changes), [], Bass);
        }
    }

    /// <summary>The note of a degree above the root, spelled exactly.</summary>
    public NoteName NoteOf(Degree degree) => Root + degree.ToInterval();

    /// <summary>The same chord an interval away.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The spelling would need more than six flats or sharps.</exception>
    public Chord Transpose(Interval interval) => new(Root + interval, Quality, Bass is { } bass ? bass + interval : null);

    /// <summary>
    /// The chord as a player wants to read it: where root or bass has two signs, the whole chord in the simpler spelling that sounds the same
    /// (Abb7 becomes G7); a bass with two signs alone is respelled alone.
    /// </summary>
    public Chord Readable
    {
        get
        {
            if (Math.Abs(Root.Alteration) < 2 && (Bass is null || Math.Abs(Bass.Value.Alteration) < 2)) return this;
            var root = Root.Simplest;
            var bass = Bass is { } b ? (root + Root.IntervalTo(b)).Simplest : (NoteName?)null;
            return new Chord(root, Quality, bass);
        }
    }

    /// <summary>The canonical symbol in plain text: "Cm7", "Bbmaj7/D", "C7b9#11".</summary>
    public override string ToString() => $"{Root}{Quality.Suffix}{(Bass is { } bass ? "/" + bass : "")}";

    /// <summary>The symbol with real accidental signs, as players write it: "B♭maj7/D", "Cm(maj7)".</summary>
    public string ToDisplayString() => Symbol.ToString();

    /// <summary>Reads a chord symbol. For what is wrong with a text, ask <see cref="ChordParser"/>.</summary>
    public static bool TryParse([NotNullWhen(true)] string? text, [NotNullWhen(true)] out Chord? chord)
    {
        chord = text is null ? null : ChordParser.Parse(text).Chord;
        return chord is not null;
    }

    /// <summary>Reads a chord symbol.</summary>
    /// <exception cref="FormatException">The text is no chord symbol ("N.C." is none either).</exception>
    public static Chord Parse(string text)
    {
        var result = ChordParser.Parse(text);
        if (result.Chord is { } chord) return chord;
        var reason = result.Message is { } message ? $"{message} (at character {result.ErrorIndex + 1})" : "it says that there is no chord";
        throw new FormatException($"'{text}' is no chord symbol: {reason}.{(result.Suggestion is { } suggestion ? $" Did you mean {suggestion}?" : "")}");
    }
}
