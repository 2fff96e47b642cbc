using System.Globalization;

namespace SheetPress.PageCorpus;

/// <summary>Fills a bar of any meter with note values, dense or sparse, tuplets and rests among them.</summary>
internal sealed class RhythmWriter
{
    // Figures that stay together, with their length in quarter notes.
    private static readonly (string Figure, double Length)[][] Densities =
    [
        [("w", 4), ("h.", 3), ("h", 2), ("q.", 1.5), ("q", 1), ("e", 0.5)],
        [("h", 2), ("q.", 1.5), ("q", 1), ("q", 1), ("rq", 1), ("e", 0.5)],
        [("q. e", 2), ("q", 1), ("e e", 1), ("e", 0.5), ("re", 0.5)],
        [("e e", 1), ("e3 e3 e3", 1), ("e s s", 1), ("s s e", 1), ("e. s", 1), ("q3 q3 q3", 2), ("e", 0.5)],
        [("s s s s", 1), ("s3 s3 s3 e", 1), ("s5 s5 s5 s5 s5", 1), ("t t t t e", 1), ("e s s", 1), ("re s s", 1), ("s s", 0.5)],
    ];

    private const int Sparse = 2;

    private readonly Random _random;
    private readonly int _choices;
    private readonly double _bar;

    /// <summary>Makes rhythms.</summary>
    /// <param name="random">Where the choice comes from.</param>
    /// <param name="meter">The meter as a lesson has it.</param>
    /// <param name="sparse">Whether it moves in beats and longer notes for the most part.</param>
    public RhythmWriter(Random random, string meter, bool sparse = false)
    {
        _choices = sparse ? Sparse : Densities.Length;
        _random = random;
        var parts = meter.Split(' ')[0].Split('/');
        _bar = double.Parse(parts[0], CultureInfo.InvariantCulture) * 4 / double.Parse(parts[1], CultureInfo.InvariantCulture);
    }

    /// <summary>A bar in letters.</summary>
    public string Write() => string.Join(' ', Figures());

    /// <summary>A bar as figures of one or more values.</summary>
    public List<string> Figures()
    {
        var figures = new List<string>();
        var choice = Densities[_random.Next(_choices)];
        var rest = _bar;
        while (rest > 0)
        {
            var fitting = choice.Where(f => f.Length <= rest).ToArray();
            var (figure, length) = fitting.Length > 0 ? fitting[_random.Next(fitting.Length)] : ("e", 0.5);
            // Whole beats start on a beat.
            if (length >= 1 && rest % 1 == 0.5 && _bar % 1 == 0) (figure, length) = ("e", 0.5);
            figures.Add(figure);
            rest -= length;
        }
        return figures;
    }
}
