using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>
/// Turns a degree as a teacher writes it into the one to play over a chord.
/// <list type="bullet">
/// <item>A degree with an accidental is played as written, whatever the chord.</item>
/// <item>A plain degree is the chord's own: 3 over a minor chord is the minor third, 7 over a dominant the minor seventh.</item>
/// <item>A third the chord lacks is its suspended tone (4, else 2); a chord with neither plays its fifth.</item>
/// <item>A seventh the chord lacks is its sixth, else the octave.</item>
/// <item>A fifth the chord lacks, and any 2, 4, 6, 9, 11 or 13 it does not name, come from the scale over the chord.</item>
/// </list>
/// The octave is kept: 10 is the third an octave up, by the same rules.
/// </summary>
internal static class DegreeResolver
{
    public static Degree Resolve(DegreeRequest request, HarmonyStep step)
    {
        if (request.IsExact) return request.Degree;
        var simple = request.Degree.Simple.Number;
        var octaves = (request.Degree.Number - 1) / 7;
        var own = Own(step, simple);
        return new Degree(own.Number + (7 * octaves), own.Alteration);
    }

    // The answer lies within one octave, the octave itself (8) included.
    private static Degree Own(HarmonyStep step, int number) => number switch
    {
        1 => Degree.Root,
        3 => step.ChordDegree(3) ?? step.ChordDegree(4) ?? step.ChordDegree(2) ?? step.ChordDegree(5) ?? new Degree(5),
        5 => step.ChordDegree(5) ?? step.ScaleDegree(5) ?? new Degree(5),
        7 => step.ChordDegree(7) ?? step.ChordDegree(6) ?? new Degree(8),
        _ => step.ChordDegree(number) ?? step.ScaleDegree(number) ?? new Degree(number),
    };
}
