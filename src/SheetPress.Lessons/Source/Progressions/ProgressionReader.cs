using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Reads a progression as teachers write it.</summary>
/// <remarks>
/// <para>Bars are parted by <c>|</c>; a line end ends a bar too. A bar holds chord symbols or roman numerals, in any mixture, with blanks between
/// them. They share the bar equally, or one a felt group where there are as many (two in 5/4 are 3+2); a colon and a number of beats
/// after a chord gives its time, <c>Cm7:3 F7:1</c>, counted in the lower number of the meter. <c>N.C.</c> is no chord, <c>hold</c> lets the
/// chord before sound on, <c>same</c> is the bar before once more.</para>
/// <para><c>|: :|</c> repeats, <c>:| x3</c> three times in all. <c>1.</c> and <c>2.</c> at the start of a bar open first and second endings,
/// <c>1-2.</c> one for both times. <c>||</c> is a double barline.</para>
/// <para>Square brackets hold what is said about a bar: <c>[A]</c> or <c>[Verse]</c> a rehearsal mark, <c>[3/4]</c> a new meter, <c>[tempo 60]</c> or <c>[tempo quarter = dotted quarter]</c> a new tempo, <c>[key G minor]</c> a new
/// key, <c>[pickup 1]</c> a first bar of one beat, <c>[new line]</c> a new system, and <c>[segno] [coda] [to coda] [fine] [D.C. al Fine]
/// [D.S. al Coda]</c>. A <c>#</c> with a blank after it starts a remark that goes to the end of the line.</para>
/// </remarks>
public static class ProgressionReader
{
    // Longer than any piece; what is beyond is a slip of some program.
    private const int MaximumBars = 5000;

    /// <summary>The progression as written, in its own key; null when it has no bar. Problems are reported and read over.</summary>
    /// <param name="text">The progression as written.</param>
    /// <param name="key">The key.</param>
    /// <param name="meter">The meter at the start.</param>
    /// <param name="bag">Where problems go.</param>
    public static Progression? Read(LocatedText text, Key key, Meter meter, DiagnosticBag bag) =>
        Read(text, key, meter, new KeyTransposition(key, key), bag);

    /// <summary>The progression; null when it has no bar. Problems are reported and read over.</summary>
    /// <param name="text">The progression as written.</param>
    /// <param name="key">The key as it is played.</param>
    /// <param name="meter">The meter at the start.</param>
    /// <param name="rekeying">The way from the written key.</param>
    /// <param name="bag">Where problems go.</param>
    internal static Progression? Read(LocatedText text, Key key, Meter meter, KeyTransposition rekeying, DiagnosticBag bag)
    {
        var found = bag.Items.Count;
        var bars = new ProgressionParser(bag).Parse(new ProgressionScanner(bag.Source, bag).Scan(text));
        if (bars.IsEmpty)
        {
            // A lone bar line has nothing on either side; two of them have been reported as an empty bar.
            if (!bag.Items.Skip(found).Any(d => d.Severity == Severity.Error)) bag.Add(text.Span, ProgressionProblems.NoBars());
            return null;
        }
        if (bars.Length > MaximumBars)
        {
            bag.Add(bars[MaximumBars].Span, ProgressionProblems.TooManyMeasures(MaximumBars));
            return null;
        }
        RepeatChecker.Check(bars, bag);
        JumpChecker.Check(bars, bag);
        return ProgressionAnalyser.Analyse(new ProgressionBuilder(rekeying, bag).Build(bars, key, meter));
    }
}
