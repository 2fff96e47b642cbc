using System.Text;

namespace SheetPress.Theory;

/// <summary>
/// The phrases of the harmonic analysis in one language, read from a table of text: templates with names in braces that the analysis fills
/// in. Another language is another table.
/// </summary>
/// <remarks>
/// A line is a group, a name, a colon and the template. The groups are
/// <list type="bullet">
/// <item>function: a short phrase for each <see cref="HarmonicFunction"/>. {target} is the numeral of the degree that the chord leads to, {key}
/// the key that it is borrowed from or leads to, {mode} the mode of the key.</item>
/// <item>reason: a short phrase for each <see cref="ScaleReason"/>. {key} is a key, {root} the root of the chord, {note} the tonic of the minor
/// scale that is meant, {changed} the notes that leave the key.</item>
/// <item>pattern: one or two sentences for each <see cref="ProgressionPatternKind"/>, numerals in square brackets as in <see cref="MarkedText"/>. {chords} are the chord symbols in order, {first} and {last}
/// the outer ones, {course} the way from one to the other, {key} the key of the moment, {goal} what is expected to follow, {from} and {to} the roots of the tritone, {third}, {seventh},
/// {root} and {goalthird} notes, {other} the dominant that is replaced, {back} where a turnaround leads, {moment} nothing or, after a space, that a key
/// does not stay.</item>
/// <item>again: the same, short, where the sentence of the kind has been read already; a kind without such a line says all again.</item>
/// <item>blues: the parts of the description of a twelve-bar blues: its name (Major, Jazz, Minor), then a part for each line of four bars and one
/// for the end, and a sentence about its scales. {key} is the tonic, {tonic}, {subdominant} and {dominant} are the chords there, {third} the
/// chord in the seventh bar, {round}, {onward}, {ninth} and {tenth} the chords of the fourth, eighth, ninth and tenth bars, {notes} a scale.</item>
/// <item>mode: the name of each <see cref="Mode"/> as it follows a tonic.</item>
/// <item>word: "and" between the last two of a list, "nothing" for an empty one, "top" and "home" for where a turnaround leads, "moment" for a key that does
/// not stay, "course" for the way from {first} to {last} and "round" for the same where both are one chord.</item>
/// </list>
/// Phrases for functions and reasons have no capital and no full stop.
/// </remarks>
public sealed class HarmonyWording
{
    private static HarmonyWording? english;

    private readonly Dictionary<string, string> templates;

    private HarmonyWording(Dictionary<string, string> templates) => this.templates = templates;

    /// <summary>The phrases in plain English.</summary>
    public static HarmonyWording English => english ??= Read(HarmonyWordingEnglish.Table);

    /// <summary>Reads a table; blank lines are passed over.</summary>
    /// <exception cref="FormatException">A line is no "group name: template", or comes twice.</exception>
    public static HarmonyWording Read(string table)
    {
        ArgumentNullException.ThrowIfNull(table);
        var templates = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var line in table.Split('\n'))
        {
            var text = line.Trim();
            if (text.Length == 0) continue;
            var colon = text.IndexOf(": ", StringComparison.Ordinal);
            if (colon < 0 || !templates.TryAdd(text[..colon], text[(colon + 2)..])) throw new FormatException($"'{text}' is no new line of the form 'group name: template'.");
        }
        return new HarmonyWording(templates);
    }

    /// <summary>The template for a function.</summary>
    /// <exception cref="KeyNotFoundException">The table has no such line.</exception>
    public string this[HarmonicFunction function] => templates["function " + function];

    /// <summary>The template for the reason of a scale.</summary>
    /// <exception cref="KeyNotFoundException">The table has no such line.</exception>
    public string this[ScaleReason reason] => templates["reason " + reason];

    /// <summary>The template for a pattern.</summary>
    /// <exception cref="KeyNotFoundException">The table has no such line.</exception>
    public string this[ProgressionPatternKind kind] => templates["pattern " + kind];

    /// <summary>The short template for a pattern of a kind that has been explained before; null where there is none.</summary>
    internal string? Again(ProgressionPatternKind kind) => templates.GetValueOrDefault("again " + kind);

    /// <summary>Where a turnaround at the end leads.</summary>
    internal string ToTheTop => templates["word top"];

    /// <summary>Where any other turnaround leads.</summary>
    internal string Home => templates["word home"];

    /// <summary>Said of a key that does not stay.</summary>
    internal string ForAMoment => templates["word moment"];

    /// <summary>The way from the first chord of a pattern to the last.</summary>
    internal string Course(bool isRound) => templates[isRound ? "word round" : "word course"];

    /// <summary>A part of the description of a blues, by its name.</summary>
    internal string Blues(string part) => templates["blues " + part];

    /// <summary>The name of a mode.</summary>
    /// <exception cref="KeyNotFoundException">The table has no such line.</exception>
    public string this[Mode mode] => templates["mode " + mode];

    /// <summary>"C minor", "E♭ major".</summary>
    public string KeyName(NoteName tonic, Mode mode) => $"{tonic.ToDisplayString()} {this[mode]}";

    /// <summary>"C♯", "C♯ and F♯", "B♭, E♭ and A♭".</summary>
    public string List(IReadOnlyList<string> items)
    {
        ArgumentNullException.ThrowIfNull(items);
        if (items.Count == 0) return templates["word nothing"];
        var text = new StringBuilder(items[0]);
        for (var i = 1; i < items.Count; i++)
        {
            if (i < items.Count - 1) text.Append(", ");
            else text.Append(' ').Append(templates["word and"]).Append(' ');
            text.Append(items[i]);
        }
        return text.ToString();
    }

    /// <summary>A template with its names filled in.</summary>
    /// <param name="template">The template.</param>
    /// <param name="values">Name, value, name, value.</param>
    internal static string Fill(string template, params string[] values)
    {
        for (var i = 0; i < values.Length; i += 2) template = template.Replace("{" + values[i] + "}", values[i + 1], StringComparison.Ordinal);
        return template;
    }
}
