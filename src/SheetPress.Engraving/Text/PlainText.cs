using System.Text;
using SheetPress.Theory;

namespace SheetPress.Engraving;

/// <summary>Running text without its form, for files and places that can hold nothing but characters.</summary>
public static class PlainText
{
    /// <summary>The words of a Markdown line: emphasis and links go, music is written with characters ("B♭maj7", "♭3").</summary>
    /// <param name="source">The source, as <see cref="MarkdownReader.ReadInline"/> takes it.</param>
    public static string Of(string source)
    {
        var text = new StringBuilder(source.Length);
        foreach (var inline in MarkdownReader.ReadInline(source))
        {
            text.Append(inline switch
            {
                TextInline words => words.Text,
                ChordInline chord => chord.Chord.ToDisplayString(),
                DegreeInline degree => degree.Degree.ToDisplayString(),
                RomanInline roman => RomanNumeral.TryParse(roman.Roman, out var numeral) ? numeral.ToDisplayString() : roman.Roman,
                _ => " ",
            });
        }
        return text.ToString().Trim();
    }
}
