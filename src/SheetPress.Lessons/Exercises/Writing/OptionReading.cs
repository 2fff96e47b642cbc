using System.Collections.Immutable;

namespace SheetPress.Lessons;

/// <summary>Reads the options of a request: what the lesson gives, else the default that the style declares.</summary>
internal static class OptionReading
{
    /// <summary>The word of a choice, or a text.</summary>
    public static string Word(this ExerciseRequest request, string name) =>
        request.Options.TryGetValue(name, out var given) ? given.Text.Value.Trim() : request.Declared(name).Default;

    /// <summary>A whole number; null when neither the lesson nor the style gives one.</summary>
    public static int? Number(this ExerciseRequest request, string name)
    {
        if (request.Options.TryGetValue(name, out var given)) return given.Number;
        return int.TryParse(request.Declared(name).Default, System.Globalization.CultureInfo.InvariantCulture, out var number) ? number : null;
    }

    /// <summary>True or false.</summary>
    public static bool Flag(this ExerciseRequest request, string name) =>
        request.Options.TryGetValue(name, out var given) ? given.Flag : request.Declared(name).Default == "true";

    /// <summary>A list of degrees; empty when neither the lesson nor the style gives one.</summary>
    public static ImmutableArray<DegreeRequest> Degrees(this ExerciseRequest request, string name)
    {
        if (request.Options.TryGetValue(name, out var given)) return given.Degrees;
        return DegreeWords.ParseList(request.Declared(name).Default);
    }

    private static StyleOption Declared(this ExerciseRequest request, string name)
    {
        foreach (var option in request.Style.Options) if (option.Name == name) return option;
        throw new ArgumentException($"The style {request.Style.Name} declares no option {name}.", nameof(name));
    }
}
