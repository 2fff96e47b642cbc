using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>
/// Rhythms to read on one note: beats filled with the figures of a level, chosen by the seed, in phrases of A B A C. Figures are written
/// as values; the order in which they are taught is common practice (from memory).
/// </summary>
internal static class RhythmBook
{
    private const int Bars = 8;
    // How many of the places with room for two beats get a figure of two.
    private const double Pairs = 0.4;
    private static readonly Fraction DottedBeat = new(3, 2);

    // The figures that each level adds, for a beat of a quarter, for two of them, and for a beat of a dotted quarter.
    private static readonly string[][] Quarter = [["q"], ["e e"], ["re e"], ["s s s s", "e s s", "s s e"], ["s e s", "rs s s s", "e. s"]];
    private static readonly string[][] TwoQuarters = [["h"], ["q e e", "e e q"], ["q. e", "e q e"], ["e q."], ["s e. e s s"]];
    private static readonly string[][] DottedQuarter = [["q."], ["q e", "e e e"], ["e q", "re e e"], ["e s s e", "s s e e"], ["s e s e", "e. s e"]];

    /// <summary>The rhythm of a meter: eight bars, counted.</summary>
    /// <param name="meter">The meter.</param>
    /// <param name="level">Level 1 to 5: its figures and those below, its own more often.</param>
    /// <param name="seed">Another seed gives another rhythm.</param>
    public static RhythmPattern Of(Meter meter, int level, int seed)
    {
        var cells = ImmutableArray.CreateBuilder<RhythmCell>();
        for (var bar = 0; bar < Bars; bar++)
        {
            // A B A C, then A B A D.
            var kind = (bar % 4) switch { 0 or 2 => 0, 1 => 1, _ => 2 + (bar / 4) };
            AddBar(cells, meter, Math.Clamp(level, 1, Quarter.Length), seed, kind, meter.MeasureLength * bar);
        }
        return new RhythmPattern(cells.ToImmutable(), meter.MeasureLength * Bars);
    }

    private static void AddBar(ImmutableArray<RhythmCell>.Builder cells, Meter meter, int level, int seed, int kind, Fraction barStart)
    {
        for (var at = Fraction.Zero; at < meter.MeasureLength;)
        {
            var rest = meter.BeatStarts.First(s => s > at) - at;
            var place = (int)(at * 8).Floor;
            var (figures, length) = Figures(meter, rest, at, SeededNoise.At(seed, kind, place), level);
            var figure = figures.Length == 0 ? [] : figures[(int)(figures.Length * SeededNoise.At(seed, kind + 100, place))].Split(' ');
            if (figure.Length == 0) cells.Add(Cell(meter, barStart, at, length, isRest: false));
            var start = at;
            foreach (var word in figure)
            {
                var value = ValueOf(word);
                cells.Add(Cell(meter, barStart, start, value, word[0] == 'r'));
                start += value;
            }
            at += length;
        }
    }

    // The figures that may stand at a place, and how much time they take; none where what is left of the group has to be one note.
    private static (string[] Figures, Fraction Length) Figures(Meter meter, Fraction rest, Fraction at, double noise, int level)
    {
        var begins = at == Fraction.Zero;
        if (rest == DottedBeat && meter.BeatUnit >= 8) return (Upto(DottedQuarter, level, begins), DottedBeat);
        if (rest < 1) return ([], rest);
        var isPair = meter.Groups.All(g => g == 1) && meter.BeatUnit == 4 && (at / 2).IsMultipleOf(1) && at + 2 <= meter.MeasureLength;
        return (isPair || rest >= 2) && noise < Pairs ? (Upto(TwoQuarters, level, begins), 2) : (Upto(Quarter, level, begins), 1);
    }

    // Those of the level twice, so that they are met often; a bar does not begin with a rest.
    private static string[] Upto(string[][] figures, int level, bool begins) =>
        [.. figures.Take(level).SelectMany(f => f).Concat(figures[level - 1]).Where(f => !begins || f[0] != 'r')];

    private static RhythmCell Cell(Meter meter, Fraction barStart, Fraction at, Fraction length, bool isRest) =>
        new() { Start = barStart + at, Duration = length, IsRest = isRest, Count = Counting.SyllableAt(meter, at) };

    private static Fraction ValueOf(string word)
    {
        var letter = word[0] == 'r' ? word[1] : word[0];
        var plain = letter switch { 'h' => new Fraction(2), 'q' => Fraction.One, 'e' => new Fraction(1, 2), _ => new Fraction(1, 4) };
        return word[^1] == '.' ? plain * new Fraction(3, 2) : plain;
    }
}
