using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>
/// The degrees of a pattern over a chord. Over a slash chord the written bass is the floor of the figure: R is the bass, what would lie
/// below it is taken an octave up, and a tone that would only double the bass gives way to another of the chord, so that
/// "R 3 5" over C/E is E G G and "R 5 8" over C/G is G C G (common practice: the bass note is kept, the chord stands over it).
/// </summary>
internal static class PatternDegrees
{
    private static readonly DegreeRequest Fifth = new(new Degree(5), false);

    /// <summary>The degree to play.</summary>
    public static Degree Resolve(DegreeWord word, HarmonyStep step)
    {
        var request = word.Request;
        if (request.IsExact) return request.Degree;
        var bass = step.BassDegree;
        if (request.Degree.Simple.Number == 1) return new Degree(bass.Number + request.Degree.Number - 1, bass.Alteration);
        var degree = DegreeResolver.Resolve(request, step);
        if (bass == Degree.Root || word.Octaves != 0) return degree;
        if (NoteMath.Modulo(degree.HalfSteps - bass.HalfSteps, 12) == 0)
        {
            var octaves = (request.Degree.Number - 1) / 7;
            degree = request.Degree.Number == 3 ? DegreeResolver.Resolve(Fifth, step) : new Degree(1 + (7 * Math.Max(1, octaves)));
        }
        return degree.HalfSteps < bass.HalfSteps ? new Degree(degree.Number + 7, degree.Alteration) : degree;
    }
}
