using System.Collections.Immutable;
using System.Text;

namespace SheetPress.Theory;

/// <summary>The two parts of a suffix.</summary>
/// <param name="Main">The basic name: "m7", "13sus4".</param>
/// <param name="Changes">What follows it, in order: "b5", "#11", "alt", then "add9", then "no5".</param>
internal sealed record SuffixParts(string Main, ImmutableArray<string> Changes)
{
    /// <summary>The suffix made of its parts. An accidental right after the root would read as part of it, so it goes into brackets.</summary>
    public override string ToString()
    {
        if (Changes.IsEmpty) return Main;
        var text = new StringBuilder(Main);
        foreach (var change in Changes)
        {
            if (text.Length == 0 && change[0] is 'b' or '#') text.Append('(').Append(change).Append(')');
            else text.Append(change);
        }
        return text.ToString();
    }
}
