using System.Globalization;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>
/// The syllables that beats and their parts are counted with. Simple beats: 1 e &amp; a for sixteenths, 1 trip let for triplets.
/// Triplets of sixteenths count each half of the beat: 1 trip let &amp; trip let. Compound beats (6/8, 9/8, 12/8): 1 la li for eighths with
/// "ta" between for sixteenths, or 1 &amp; a; triplets of sixteenths count each eighth: 1 trip let la trip let li trip let. Other meters in
/// eighths count every eighth with its number. Common practice. Quintuplets, septuplets and thirty-seconds have no settled syllables
/// (from memory): where one of their notes falls on a place that has a syllable it is counted, the others are not.
/// </summary>
public static class Counting
{
    /// <summary>Length of a counted beat in quarter notes: the dotted value in compound meters, else the beat unit.</summary>
    public static Fraction BeatLength(Meter meter) => meter.IsCompound ? meter.UnitLength * 3 : meter.UnitLength;

    /// <summary>The syllable at an offset in a measure; null where no usual syllable falls (thirty-seconds, quintuplets, triplets of sixteenths).</summary>
    /// <param name="meter">The meter.</param>
    /// <param name="offset">Quarter notes from the start of the measure, zero or more.</param>
    public static string? SyllableAt(Meter meter, Fraction offset)
    {
        var beats = offset / BeatLength(meter);
        var number = beats.Floor;
        var part = beats - new Fraction(number);
        if (part == Fraction.Zero) return (number + 1).ToString(CultureInfo.InvariantCulture);
        if (meter.IsCompound)
        {
            if (part == new Fraction(1, 3)) return "la";
            if (part == new Fraction(2, 3)) return "li";
            return part.Denominator is 2 or 6 ? "ta" : null;
        }
        if (part == new Fraction(1, 2)) return "&";
        if (part == new Fraction(1, 4)) return "e";
        if (part == new Fraction(3, 4)) return "a";
        if (part == new Fraction(1, 3)) return "trip";
        return part == new Fraction(2, 3) ? "let" : null;
    }

    /// <summary>
    /// The syllable of a note among the others of its beat. Where both halves of the beat have triplets of sixteenths, or one has, each
    /// half is counted by itself: 1 trip let &amp; trip let. The sixteenths of a triplet of eighths are "ta": 1 ta trip ta let ta. Common practice
    /// (from memory): no syllable stands for two places of one beat but trip and let, which the numbers and "&amp;" tell apart. The eighths of
    /// a dotted beat are counted by themselves in the same way.
    /// </summary>
    /// <param name="meter">The meter.</param>
    /// <param name="offset">Quarter notes from the start of the measure, zero or more.</param>
    /// <param name="notes">Start and end of the notes of the measure, that of the syllable among them.</param>
    internal static string? SyllableAmong(Meter meter, Fraction offset, IEnumerable<(Fraction Start, Fraction End)> notes)
    {
        var beat = BeatLength(meter);
        var start = offset - offset.Modulo(beat);
        var part = (offset - start) / beat;
        if (part == Fraction.Zero) return SyllableAt(meter, offset);
        var beatNotes = notes.Where(n => n.End > start && n.Start < start + beat).Select(n => (Start: (n.Start - start) / beat, End: (n.End - start) / beat)).ToList();
        if (meter.IsCompound) return part.Denominator == 9 ? SyllableInThird(part, beatNotes) : SyllableAt(meter, offset);
        bool Begins(Fraction at) => beatNotes.Exists(n => n.Start == at);
        var (third, twoThirds) = (Begins(new(1, 3)), Begins(new(2, 3)));
        var isSixth = Begins(new(1, 6)) || Begins(new(5, 6));
        if (!third && !twoThirds && !isSixth) return SyllableAt(meter, offset);
        var half = new Fraction(1, 2);
        var isHalved = (isSixth || (Begins(half) && third != twoThirds)) && !beatNotes.Exists(n => n.Start < half && n.End > half);
        if (!isHalved) return part == half || part.Denominator == 6 ? "ta" : SyllableAt(meter, offset);
        if (part.Modulo(half) == new Fraction(1, 6)) return "trip";
        return part.Modulo(half) == new Fraction(1, 3) ? "let" : SyllableAt(meter, offset);
    }

    // A note that reaches over the edge of its eighth belongs to a longer triplet, which has no syllables.
    private static string? SyllableInThird(Fraction part, List<(Fraction Start, Fraction End)> beatNotes)
    {
        var third = new Fraction(1, 3);
        var within = part.Modulo(third);
        var start = part - within;
        if (beatNotes.Exists(n => (n.Start < start && n.End > start) || (n.Start < start + third && n.End > start + third))) return null;
        return within == new Fraction(1, 9) ? "trip" : "let";
    }

    /// <summary>The places within a beat, as parts of it, where a syllable can fall; empty for a word that is no syllable.</summary>
    /// <param name="syllable">The syllable in lower case.</param>
    /// <param name="division">How its beat is divided.</param>
    internal static ReadOnlySpan<Fraction> PlacesOf(string syllable, BeatDivision division) => (syllable, division) switch
    {
        ("&", BeatDivision.Dotted or BeatDivision.TripletThirds) => Third,
        ("&", _) => Half,
        ("e", not (BeatDivision.Dotted or BeatDivision.TripletThirds)) => FirstQuarter,
        ("a", BeatDivision.Dotted or BeatDivision.TripletThirds) => TwoThirds,
        ("a", _) => LastQuarter,
        ("trip", BeatDivision.TripletHalves) => ThirdOfEachHalf,
        ("let", BeatDivision.TripletHalves) => TwoThirdsOfEachHalf,
        ("trip", BeatDivision.TripletThirds) => ThirdOfEachThird,
        ("let", BeatDivision.TripletThirds) => TwoThirdsOfEachThird,
        ("trip" or "la", _) => Third,
        ("let" or "li", _) => TwoThirds,
        ("te", not (BeatDivision.Dotted or BeatDivision.TripletThirds)) => Half,
        ("ta", BeatDivision.Dotted or BeatDivision.TripletThirds or BeatDivision.Triplet) => Sixths,
        ("ta", _) => Quarters,
        _ => default,
    };

    /// <summary>Every syllable besides numbers.</summary>
    internal static readonly string[] Syllables = ["&", "and", "e", "a", "trip", "let", "la", "li", "ta", "te"];

    private static readonly Fraction[] Half = [new(1, 2)];
    private static readonly Fraction[] Third = [new(1, 3)];
    private static readonly Fraction[] TwoThirds = [new(2, 3)];
    private static readonly Fraction[] FirstQuarter = [new(1, 4)];
    private static readonly Fraction[] LastQuarter = [new(3, 4)];
    private static readonly Fraction[] Quarters = [new(1, 4), new(3, 4)];
    private static readonly Fraction[] Sixths = [new(1, 6), new(1, 2), new(5, 6)];
    private static readonly Fraction[] ThirdOfEachHalf = [new(1, 6), new(2, 3)];
    private static readonly Fraction[] TwoThirdsOfEachHalf = [new(1, 3), new(5, 6)];
    private static readonly Fraction[] ThirdOfEachThird = [new(1, 9), new(4, 9), new(7, 9)];
    private static readonly Fraction[] TwoThirdsOfEachThird = [new(2, 9), new(5, 9), new(8, 9)];
}

/// <summary>How a counted beat is divided.</summary>
internal enum BeatDivision
{
    /// <summary>Halves and quarters: 1 e &amp; a.</summary>
    Halves,

    /// <summary>A triplet: 1 trip let, with ta between.</summary>
    Triplet,

    /// <summary>Halves that are triplets: 1 trip let &amp; trip let.</summary>
    TripletHalves,

    /// <summary>The thirds of a dotted beat: 1 la li, with ta between.</summary>
    Dotted,

    /// <summary>The thirds of a dotted beat that are triplets: 1 trip let la trip let li trip let.</summary>
    TripletThirds,
}
