using System.Collections.Immutable;
using CsCheck;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons.Tests;

/// <summary>Random lessons: 2 to 16 bars of any chords in any key, meter, instrument and level.</summary>
internal static class LessonGen
{
    private static readonly Meter[] Meters =
    [
        new(4, 4), new(3, 4), new(2, 4), new(5, 4), new(7, 4), new(2, 2), new(6, 8), new(9, 8), new(12, 8), new(7, 8), new(5, 8),
    ];

    private static readonly Gen<NoteName> Root = Gen.Int[-6, 6].Select(NoteName.FromFifths);

    private static readonly Gen<string> Symbol =
        from root in Root
        from quality in OneOf([.. ChordQualities.All])
        from slash in Gen.Int[0, 9]
        from bass in Root
        select $"{root}{quality.Suffix}{(slash == 0 && bass != root ? "/" + bass : "")}";

    private static readonly Gen<string> Entry = Gen.Int[0, 19].SelectMany(n => n == 0 ? Gen.Const("N.C.") : Symbol);

    private static readonly Gen<string[]> Bar = Gen.Int[0, 9].SelectMany(n => n < 6 ? Entry.Array[1] : n < 9 ? Entry.Array[2] : Entry.Array[3]);

    public static readonly Gen<Key> Keys = Gen.Select(Gen.Int[-6, 6], OneOf(Mode.Major, Mode.Minor, Mode.Dorian, Mode.Mixolydian), (fifths, mode) =>
    {
        var tonic = NoteName.FromFifths(fifths + (mode switch { Mode.Minor => 3, Mode.Dorian => 2, Mode.Mixolydian => 1, _ => 0 }));
        return new Key(tonic, mode);
    });

    public static readonly Gen<Lesson> Lessons =
        from meter in OneOf(Meters)
        from other in OneOf(Meters)
        from changes in Gen.Int[0, 9]
        from bars in Bar.Array[2, 16]
        from key in Keys
        from instrument in OneOf([.. InstrumentCatalogue.All])
        from level in Gen.Int[1, 5]
        let inMeter = bars.Select((b, i) => (Meter: changes == 0 && i >= bars.Length / 2 ? other : meter, Chords: b))
        select LessonMaker.Lesson([.. inMeter.Select(b => (b.Meter, b.Chords.Take(b.Meter.Beats).ToArray()))], key, instrument, level);

    /// <summary>What a lesson may ask of the neck: nothing, a position, a range of at least five frets, or some of the strings.</summary>
    public static Gen<NeckRequest> Necks(Instrument instrument) =>
        from kind in Gen.Int[0, 4]
        from fret in Gen.Int[1, Math.Max(1, instrument.PlayableFrets - 6)]
        from width in Gen.Int[4, 6]
        from skip in Gen.Int[1, instrument.StringCount]
        from open in Gen.Int[0, 2]
        select (kind switch
        {
            0 => new NeckRequest(),
            1 => new NeckRequest { Position = fret },
            2 => new NeckRequest { LowestFret = fret, HighestFret = fret + width },
            3 => new NeckRequest { HighestFret = 5 + width },
            _ => new NeckRequest { Strings = [.. Enumerable.Range(1, instrument.StringCount).Where(s => s != skip)] },
        }) with
        { OpenStrings = open == 0 ? null : open == 1 };

    /// <summary>A request for a style with each option at random, or at its default.</summary>
    public static Gen<ExerciseRequest> Requests(string style)
    {
        var options = ExerciseStyles.Find(style)!.Options.Where(o => o.Type is OptionType.Choice or OptionType.Flag or OptionType.Number).ToArray();
        return (from picks in Gen.Int[-1, 7].Array[options.Length]
                from seed in Gen.Int[1, 1000]
                select LessonMaker.Request(style, [.. options.Select((o, i) => (o, picks[i])).Where(p => p.Item2 >= 0).Select(p => (p.o.Name, ValueOf(p.o, p.Item2)))]) with { Seed = seed }).Where(r => r.Style.ClashIn(r) is null);
    }

    private static Gen<T> OneOf<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);

    private static object ValueOf(StyleOption option, int pick) => option.Type switch
    {
        OptionType.Choice => option.Choices[pick % option.Choices.Length],
        OptionType.Flag => pick % 2 == 0,
        _ => option.Minimum + (pick % (Math.Min(option.Maximum, option.Minimum + 7) - option.Minimum + 1)),
    };
}
