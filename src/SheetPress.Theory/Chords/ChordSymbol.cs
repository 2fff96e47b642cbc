using System.Collections.Immutable;
using System.Text;

namespace SheetPress.Theory;

/// <summary>A chord symbol taken apart for engraving. All texts use the real signs ♭ and ♯, which a music font draws.</summary>
/// <param name="Root">The root, set large.</param>
/// <param name="Main">The basic quality on the baseline: "", "m7", "maj9", "7sus4", "6/9", "add9", "m(add9)", "m(maj7)".</param>
/// <param name="Raised">What is set small and raised, in order: "♭5", "♯11", "alt", "(add11)".</param>
/// <param name="Bass">The bass note after the slash; null when it is the root.</param>
public sealed record ChordSymbol(NoteName Root, string Main, ImmutableArray<string> Raised, NoteName? Bass)
{
    /// <summary>The symbol on one line as players write it: "B♭m7♭5", "C7♭9♯11/E", "Cm(maj7)".</summary>
    public override string ToString()
    {
        var text = new StringBuilder(Root.ToDisplayString()).Append(Main);
        foreach (var part in Raised) text.Append(part);
        if (Bass is { } bass) text.Append('/').Append(bass.ToDisplayString());
        return text.ToString();
    }
}
