using System.Text;

namespace SheetPress.Lessons;

/// <summary>Names that are safe in file names everywhere: lower-case words joined with hyphens.</summary>
public static class Slug
{
    /// <summary>Longest name made, in characters.</summary>
    public const int MostCharacters = 60;

    /// <summary>The name made from a text: letters (without accents where they have them) and digits stay, everything else becomes a hyphen.</summary>
    /// <param name="text">The text.</param>
    /// <param name="fallback">Used when nothing is left of it.</param>
    public static string Of(string text, string fallback)
    {
        var name = new StringBuilder();
        foreach (var c in text.Replace("♭", "b", StringComparison.Ordinal).Replace("♯", "#", StringComparison.Ordinal).Normalize(NormalizationForm.FormD))
        {
            if (char.IsLetterOrDigit(c)) name.Append(char.ToLowerInvariant(c));
            else if (c is not ('\u0300' or '\u0301' or '\u0302' or '\u0303' or '\u0308' or '\u030A' or '\u0327' or '\'' or '’') && name.Length > 0 && name[^1] != '-') name.Append('-');
            if (name.Length >= MostCharacters) break;
        }
        var slug = name.ToString().Trim('-');
        return slug.Length > 0 ? slug : fallback;
    }
}
