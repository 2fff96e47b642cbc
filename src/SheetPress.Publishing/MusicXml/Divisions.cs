using SheetPress.Scores;

namespace SheetPress.Publishing;

/// <summary>The divisions of a quarter note in which every time of a file is a whole number: the least common multiple of all denominators.</summary>
internal sealed class Divisions
{
    private Divisions(long perQuarter) => PerQuarter = perQuarter;

    /// <summary>Divisions of one quarter note.</summary>
    public long PerQuarter { get; }

    public static Divisions Of(IReadOnlyList<Score> scores)
    {
        var all = 1L;
        foreach (var measure in scores.SelectMany(s => s.Measures))
        {
            Include(measure.Length);
            foreach (var voice in measure.Voices)
                foreach (var e in voice.Events) Include(e.Duration);
            foreach (var harmony in measure.Harmonies) Include(harmony.Offset);
            foreach (var direction in measure.Directions) Include(direction.Offset);
        }
        return new Divisions(all);

        void Include(Fraction time)
        {
            var (a, b) = (all, time.Denominator);
            while (b != 0) (a, b) = (b, a % b);
            all = all / a * time.Denominator;
        }
    }

    /// <summary>A time in quarter notes as a whole number of divisions.</summary>
    public long Count(Fraction quarters) => checked(quarters.Numerator * (PerQuarter / quarters.Denominator));
}
