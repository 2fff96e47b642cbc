using CsCheck;

namespace SheetPress.Scores.Tests;

/// <summary>Random frames and lines: any meter, notes and rests on binary divisions and tuplets, over beats and bar lines.</summary>
internal static class RandomMusic
{
    private static readonly string[] Meters =
    [
        "4/4", "3/4", "2/4", "2/2", "3/2", "4/2", "5/4", "5/4 2+3", "6/4", "7/4", "6/8", "9/8", "12/8", "3/8", "5/8", "7/8", "7/8 3+2+2", "8/8 3+3+2", "4/8", "15/8", "6/16", "11/8",
    ];

    private static readonly string[] Pitches = ["E1", "F#1", "Ab1", "A1", "C2", "D2", "Eb2", "G2"];

    /// <summary>A frame of one to four measures, perhaps with a pickup, and a line that fits it.</summary>
    public static Gen<(FrameMeasure[] Frame, Line Line)> Music { get; } = Gen.Int[0, Meters.Length - 1].SelectMany(i => In(Meters[i]));

    /// <summary>The same in one meter.</summary>
    public static Gen<(FrameMeasure[] Frame, Line Line)> In(string meter) =>
        from count in Gen.Int[1, 4]
        from pickup in Gen.Int[0, 3]
        from seed in Gen.UInt
        select Make(meter, count, pickup, seed);

    private static (FrameMeasure[] Frame, Line Line) Make(string meterText, int count, int pickup, uint seed)
    {
        var random = new Random(unchecked((int)seed));
        var meter = RhythmText.MeterOf(meterText);
        var frame = new List<FrameMeasure>();
        if (pickup == 1 && meter.Groups.Length > 1) frame.Add(Lines.Measure(meterText) with { Length = meter.UnitLength * meter.Groups[^1] });
        for (var i = 0; i < count; i++) frame.Add(Lines.Measure(meterText));

        // Boundaries beat by beat; a beat may be left out, so that notes run over it.
        var times = new SortedSet<Fraction>();
        var at = Fraction.Zero;
        foreach (var measure in frame)
        {
            var beats = meter.BeatStarts;
            var offset = meter.MeasureLength - measure.Length;
            for (var b = 0; b + 1 < beats.Length; b++)
            {
                if (beats[b] < offset) continue;
                var start = at + beats[b] - offset;
                var length = beats[b + 1] - beats[b];
                var ternary = length.Numerator % 3 == 0;
                int[] divisions = ternary ? [3, 3, 6, 12, 2, 4, 5, 7] : [1, 2, 2, 4, 4, 8, 3, 3, 6, 5, 7];
                var division = divisions[random.Next(divisions.Length)];
                if (length / division >= new Fraction(1, 14))
                {
                    for (var k = 0; k < division; k++) if (random.Next(3) > 0) times.Add(start + (length * new Fraction(k, division)));
                }
            }
            at += measure.Length;
        }
        times.Add(Fraction.Zero);
        times.Add(at);
        var notes = new List<LineNote>();
        var list = times.ToList();
        for (var i = 0; i + 1 < list.Count; i++)
        {
            if (random.Next(5) > 0) notes.Add(Lines.Note(list[i], list[i + 1] - list[i], Pitches[random.Next(Pitches.Length)]));
        }
        return ([.. frame], new Line([.. notes], at));
    }
}
