using System.Collections.Immutable;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>A value given for an option, parsed by its type, with its place in the lesson.</summary>
/// <param name="Text">The text as written, located.</param>
public sealed record OptionValue(LocatedText Text)
{
    /// <summary>The number, for <see cref="OptionType.Number"/>.</summary>
    public int Number { get; init; }
    /// <summary>The flag, for <see cref="OptionType.Flag"/>.</summary>
    public bool Flag { get; init; }
    /// <summary>The degrees, for <see cref="OptionType.Degrees"/>.</summary>
    public ImmutableArray<DegreeRequest> Degrees { get; init; } = [];
}

/// <summary>A degree as a teacher writes it: "b7" is exact, a plain "7" or "3" means the one the chord has.</summary>
/// <param name="Degree">Number and, when exact, alteration.</param>
/// <param name="IsExact">Whether an accidental was written; a plain number (5 and R too) takes the size the chord has.</param>
public readonly record struct DegreeRequest(Degree Degree, bool IsExact);
