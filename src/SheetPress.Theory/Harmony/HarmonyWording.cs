using System.Text;

namespace SheetPress.Theory;

/// <summary>
/// The sentences of the harmonic analysis in one language: templates with names in braces, filled in by the analysis. Another language is
/// another instance.
/// </summary>
public sealed class HarmonyWording
{
    private static HarmonyWording? english;

    /// <summary>
    /// A short phrase for each function, without a capital or full stop. Names: {target} the numeral of the degree that the chord leads to,
    /// {key} the key that it is borrowed from, {mode} the mode of the key.
    /// </summary>
    public required IReadOnlyDictionary<HarmonicFunction, string> Functions { get; init; }

    /// <summary>
    /// A short phrase for each reason. Names: {key} a key, {note} the tonic of the minor scale meant, {root} the root of the chord, {changed}
    /// the notes that leave the key.
    /// </summary>
    public required IReadOnlyDictionary<ScaleReason, string> Reasons { get; init; }

    /// <summary>
    /// One or two full sentences for each pattern. Names: {chords} the chord symbols in order, {first}, {last}, {goal} the chord that is
    /// reached, {key} the key for a moment, {from} and {to} the roots of the tritone, {third}, {seventh}, {root}, {goalthird} notes,
    /// {other} the dominant that is replaced, {count} the number of chords.
    /// </summary>
    public required IReadOnlyDictionary<ProgressionPatternKind, string> Patterns { get; init; }

    /// <summary>The names of the modes as they follow a tonic: "C minor".</summary>
    public required IReadOnlyDictionary<Mode, string> ModeNames { get; init; }

    /// <summary>The word between the last two of a list.</summary>
    public required string And { get; init; }

    /// <summary>What stands for a list that is empty, in {changed}.</summary>
    public required string Nothing { get; init; }

    /// <summary>The sentences in plain English.</summary>
    public static HarmonyWording English => english ??= HarmonyWordingEnglish.Make();

    /// <summary>"C minor", "E♭ major".</summary>
    public string KeyName(NoteName tonic, Mode mode) => $"{tonic.ToDisplayString()} {ModeNames[mode]}";

    /// <summary>"C♯", "C♯ and F♯", "B♭, E♭ and A♭".</summary>
    public string List(IReadOnlyList<string> items)
    {
        ArgumentNullException.ThrowIfNull(items);
        if (items.Count == 0) return Nothing;
        var text = new StringBuilder(items[0]);
        for (var i = 1; i < items.Count; i++) text.Append(i == items.Count - 1 ? $" {And} " : ", ").Append(items[i]);
        return text.ToString();
    }

    /// <summary>A template with its names filled in.</summary>
    internal static string Fill(string template, params ReadOnlySpan<(string Name, string Value)> values)
    {
        var text = template;
        foreach (var (name, value) in values) text = text.Replace("{" + name + "}", value, StringComparison.Ordinal);
        return text;
    }
}
