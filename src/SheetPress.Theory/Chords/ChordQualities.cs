using System.Collections.Immutable;

namespace SheetPress.Theory;

/// <summary>
/// The table of the chord qualities in common use, each with its usual other spellings. It is no limit: any basic name with alterations,
/// additions and omissions is read by <see cref="ChordParser"/> and built on the fly.
/// </summary>
/// <remarks>
/// Degrees follow common practice (the shorthands of Harte, Sandler, Abdallah and Gomez, ISMIR 2005, agree): thirteenth chords over a major
/// third leave the eleventh out; "alt" holds the raised fifth and both altered ninths.
/// </remarks>
public static class ChordQualities
{
    private static ImmutableArray<ChordQuality> all;
    private static Dictionary<string, ChordQuality>? bySuffix;

    /// <summary>Every quality of the table: triads first, then sixths, sevenths, extensions, altered and suspended chords.</summary>
    public static ImmutableArray<ChordQuality> All
    {
        get
        {
            if (all.IsDefault) ImmutableInterlocked.InterlockedInitialize(ref all, [.. Rows()]);
            return all;
        }
    }

    /// <summary>The quality of a shape: the row of the table, or a new one.</summary>
    internal static ChordQuality Of(ChordShape shape)
    {
        var suffix = ChordNaming.Parts(shape).ToString();
        return BySuffix.TryGetValue(suffix, out var row) ? row : new ChordQuality(shape, suffix);
    }

    /// <summary>The row with a canonical suffix.</summary>
    /// <exception cref="KeyNotFoundException">No row has this suffix.</exception>
    internal static ChordQuality Row(string suffix) => BySuffix[suffix];

    private static Dictionary<string, ChordQuality> BySuffix
    {
        get
        {
            if (bySuffix is not null) return bySuffix;
            var rows = new Dictionary<string, ChordQuality>(All.Length, StringComparer.Ordinal);
            foreach (var quality in All) rows.Add(quality.Suffix, quality);
            return bySuffix = rows;
        }
    }

    private static ChordQuality[] Rows()
    {
        var rows = new List<ChordQuality>();
        foreach (var line in Table.Split('\n'))
        {
            if (line.StartsWith("# ", StringComparison.Ordinal)) continue;
            var columns = line.Split('|', StringSplitOptions.TrimEntries);
            rows.Add(new ChordQuality(columns[0], columns[1], columns[2], columns[3]));
        }
        return [.. rows];
    }

    // Suffix, name, degrees, other suffixes. One text costs less at start than hundreds of small ones.
    private const string Table = """
        # Triads and smaller.
                    | major triad                                        | 1 3 5                | maj M ma major
        m           | minor triad                                        | 1 b3 5               | min - mi minor
        dim         | diminished triad                                   | 1 b3 b5              | ° o mb5 m(b5)
        aug         | augmented triad                                    | 1 3 #5               | + +5 (#5) maj#5
        (b5)        | major triad flat fifth                             | 1 3 b5               | Mb5 maj(b5)
        m#5         | minor triad sharp fifth                            | 1 b3 #5              | m+ -#5 m(#5)
        5           | power chord                                        | 1 5                  | no3 (no3) omit3
        sus4        | suspended fourth                                   | 1 4 5                | sus
        sus2        | suspended second                                   | 1 2 5                | (sus2)
        sus2(4)     | suspended second and fourth                        | 1 2 4 5              | sus24 sus2/4 sus2sus4 sus4sus2
        add9        | major triad added ninth                            | 1 3 5 9              | add2 (add9) Madd9 majadd9
        m(add9)     | minor triad added ninth                            | 1 b3 5 9             | madd9 madd2 -add9 minadd9
        add11       | major triad added eleventh                         | 1 3 5 11             | add4 (add11) (add4)
        m(add11)    | minor triad added eleventh                         | 1 b3 5 11            | madd11 madd4 -add11
        add#11      | major triad added sharp eleventh                   | 1 3 5 #11            | (#11) add#4 (add#11)
        addb9       | major triad added flat ninth                       | 1 3 5 b9             | Maddb9 (addb9)
        m(addb6)    | minor triad added flat sixth                       | 1 b3 5 b6            | maddb6 mb6 m(b6) -b6
        aug(add9)   | augmented triad added ninth                        | 1 3 #5 9             | augadd9 +add9
        sus4(add9)  | suspended fourth added ninth                       | 1 4 5 9              | sus4add9 sus(add9)
        # Sixths.
        6           | major sixth                                        | 1 3 5 6              | maj6 M6 add6 add13 ma6
        m6          | minor sixth                                        | 1 b3 5 6             | min6 -6 mi6 madd6
        6/9         | six-nine                                           | 1 3 5 6 9            | 69 6add9 maj6/9 M69 6(9)
        m6/9        | minor six-nine                                     | 1 b3 5 6 9           | m69 -69 min6/9 m6add9
        6#11        | major sixth sharp eleventh                         | 1 3 5 6 #11          | 6(#11) M6#11 6#4
        6/9#11      | six-nine sharp eleventh                            | 1 3 5 6 9 #11        | 69#11 6/9(#11)
        # Sevenths.
        7           | dominant seventh                                   | 1 3 5 b7             | dom7 dom
        maj7        | major seventh                                      | 1 3 5 7              | M7 Δ7 Δ ma7 Maj7 major7 (maj7) j7
        m7          | minor seventh                                      | 1 b3 5 b7            | min7 -7 mi7 minor7
        mMaj7       | minor-major seventh                                | 1 b3 5 7             | mM7 m(maj7) mmaj7 minMaj7 -maj7 -Δ7 mΔ7 mΔ m/maj7 m(#7) m+7
        mMaj7b13    | minor-major seventh flat thirteenth                | 1 b3 5 7 b13         | mMaj7b6 mM7b6 mMaj7(b13)
        m7b5        | half-diminished seventh                            | 1 b3 b5 b7           | ø7 ø -7b5 min7b5 m7(b5) mi7b5 m7-5 hdim7 half-dim
        dim7        | diminished seventh                                 | 1 b3 b5 bb7          | °7 o7
        dimMaj7     | diminished major seventh                           | 1 b3 b5 7            | °maj7 oM7 °M7 dim(maj7)
        7#5         | augmented seventh                                  | 1 3 #5 b7            | +7 7+ aug7 7+5 7aug 7(#5)
        7b5         | dominant seventh flat fifth                        | 1 3 b5 b7            | 7(b5) 7-5
        maj7#5      | major seventh sharp fifth                          | 1 3 #5 7             | +maj7 +M7 augmaj7 M7#5 maj7+5 maj7(#5) Δ7#5
        maj7b5      | major seventh flat fifth                           | 1 3 b5 7             | M7b5 Δ7b5 maj7(b5)
        m7#5        | minor seventh sharp fifth                          | 1 b3 #5 b7           | -7#5 m7+5 m7(#5) min7#5
        m7(add11)   | minor seventh added eleventh                       | 1 b3 5 b7 11         | m7add11 m7(11) m7add4 -7add11
        7(add13)    | dominant seventh added thirteenth                  | 1 3 5 b7 13          | 7add13 7add6 7(13)
        maj7(add13) | major seventh added thirteenth                     | 1 3 5 7 13           | maj7add13 maj7add6 M7add13 maj7(13)
        7(no5)      | dominant seventh without fifth                     | 1 3 b7               | 7no5 7omit5
        7(no3)      | dominant seventh without third                     | 1 5 b7               | 7no3 7omit3
        # Ninths.
        9           | dominant ninth                                     | 1 3 5 b7 9           | 7add9 7(9) dom9
        maj9        | major ninth                                        | 1 3 5 7 9            | M9 Δ9 ma9 Maj9 maj7(9)
        m9          | minor ninth                                        | 1 b3 5 b7 9          | min9 -9 mi9 m7(9)
        mMaj9       | minor-major ninth                                  | 1 b3 5 7 9           | mM9 m(maj9) -maj9 m9(maj7) -Δ9
        m9b5        | minor ninth flat fifth                             | 1 b3 b5 b7 9         | ø9 m9(b5) -9b5
        dim9        | diminished ninth                                   | 1 b3 b5 bb7 9        | °9 o9
        9#5         | augmented ninth                                    | 1 3 #5 b7 9          | +9 9+ aug9 9+5 9(#5)
        9b5         | dominant ninth flat fifth                          | 1 3 b5 b7 9          | 9(b5) 9-5
        maj9#5      | major ninth sharp fifth                            | 1 3 #5 7 9           | M9#5 +maj9 maj9(#5)
        9(no5)      | dominant ninth without fifth                       | 1 3 b7 9             | 9no5 9omit5
        # Elevenths.
        11          | dominant eleventh                                  | 1 3 5 b7 9 11        | dom11 9(11) 9add11
        maj11       | major eleventh                                     | 1 3 5 7 9 11         | M11 Δ11 ma11
        m11         | minor eleventh                                     | 1 b3 5 b7 9 11       | min11 -11 mi11 m9(11) m9add11
        mMaj11      | minor-major eleventh                               | 1 b3 5 7 9 11        | mM11 m(maj11) -maj11
        m11b5       | minor eleventh flat fifth                          | 1 b3 b5 b7 9 11      | ø11 m11(b5) -11b5
        # Thirteenths.
        13          | dominant thirteenth                                | 1 3 5 b7 9 13        | 9(13) 9add13 dom13 9add6
        maj13       | major thirteenth                                   | 1 3 5 7 9 13         | M13 Δ13 ma13 maj9(13)
        m13         | minor thirteenth                                   | 1 b3 5 b7 9 11 13    | min13 -13 mi13
        mMaj13      | minor-major thirteenth                             | 1 b3 5 7 9 11 13     | mM13 m(maj13) -maj13
        # Altered dominants.
        7alt        | altered dominant                                   | 1 3 #5 b7 b9 #9      | alt alt7 7(alt) 7#5b9#9
        7b9         | dominant seventh flat ninth                        | 1 3 5 b7 b9          | 7(b9) 7-9 7addb9
        7#9         | dominant seventh sharp ninth                       | 1 3 5 b7 #9          | 7(#9) 7+9
        7b9#9       | dominant seventh flat and sharp ninth              | 1 3 5 b7 b9 #9       | 7(b9,#9) 7#9b9
        7#11        | dominant seventh sharp eleventh                    | 1 3 5 b7 #11         | 7(#11) 7#4 7+11
        7b13        | dominant seventh flat thirteenth                   | 1 3 5 b7 b13         | 7(b13) 7b6
        7b9#11      | dominant seventh flat ninth sharp eleventh         | 1 3 5 b7 b9 #11      | 7(b9,#11) 7#11b9
        7#9#11      | dominant seventh sharp ninth sharp eleventh        | 1 3 5 b7 #9 #11      | 7(#9,#11)
        7b9b13      | dominant seventh flat ninth flat thirteenth        | 1 3 5 b7 b9 b13      | 7(b9,b13)
        7#9b13      | dominant seventh sharp ninth flat thirteenth       | 1 3 5 b7 #9 b13      | 7(#9,b13)
        7#11b13     | dominant seventh sharp eleventh flat thirteenth    | 1 3 5 b7 #11 b13     | 7(#11,b13)
        7b5b9       | dominant seventh flat fifth flat ninth             | 1 3 b5 b7 b9         | 7b9b5 7(b5,b9)
        7b5#9       | dominant seventh flat fifth sharp ninth            | 1 3 b5 b7 #9         | 7#9b5 7(b5,#9)
        7#5b9       | augmented seventh flat ninth                       | 1 3 #5 b7 b9         | 7b9#5 +7b9 7(#5,b9)
        7#5#9       | augmented seventh sharp ninth                      | 1 3 #5 b7 #9         | 7#9#5 +7#9 7(#5,#9)
        7#5b9#11    | augmented seventh flat ninth sharp eleventh        | 1 3 #5 b7 b9 #11     | 7b9#5#11 +7b9#11
        9#11        | dominant ninth sharp eleventh                      | 1 3 5 b7 9 #11       | 9(#11) 9#4 9+11
        9b13        | dominant ninth flat thirteenth                     | 1 3 5 b7 9 b13       | 9(b13)
        9#5#11      | augmented ninth sharp eleventh                     | 1 3 #5 b7 9 #11      | 9#11#5 +9#11
        11b9        | dominant eleventh flat ninth                       | 1 3 5 b7 b9 11       | 11(b9)
        13b9        | dominant thirteenth flat ninth                     | 1 3 5 b7 b9 13       | 13(b9) 7(b9,13)
        13#9        | dominant thirteenth sharp ninth                    | 1 3 5 b7 #9 13       | 13(#9) 7(#9,13)
        13#11       | dominant thirteenth sharp eleventh                 | 1 3 5 b7 9 #11 13    | 13(#11) 9(#11,13) 13#4
        13b9#11     | dominant thirteenth flat ninth sharp eleventh      | 1 3 5 b7 b9 #11 13   | 13(b9,#11)
        13#9#11     | dominant thirteenth sharp ninth sharp eleventh     | 1 3 5 b7 #9 #11 13   | 13(#9,#11)
        13b5        | dominant thirteenth flat fifth                     | 1 3 b5 b7 9 13       | 13(b5)
        # Lydian major chords.
        maj7#11     | major seventh sharp eleventh                       | 1 3 5 7 #11          | M7#11 Δ7#11 maj7(#11) maj#11 maj7#4 Δ#11
        maj9#11     | major ninth sharp eleventh                         | 1 3 5 7 9 #11        | M9#11 Δ9#11 maj9(#11)
        maj13#11    | major thirteenth sharp eleventh                    | 1 3 5 7 9 #11 13     | M13#11 Δ13#11 maj13(#11)
        maj7#9#11   | major seventh sharp ninth sharp eleventh           | 1 3 5 7 #9 #11       | M7#9#11 maj7(#9,#11)
        # Suspended chords with a seventh.
        7sus4       | seventh suspended fourth                           | 1 4 5 b7             | 7sus sus7 7(sus4)
        7sus2       | seventh suspended second                           | 1 2 5 b7             | 7(sus2)
        maj7sus4    | major seventh suspended fourth                     | 1 4 5 7              | M7sus4 M7sus maj7sus
        9sus4       | ninth suspended fourth                             | 1 4 5 b7 9           | 9sus sus9 9(sus4) 11sus4
        maj9sus4    | major ninth suspended fourth                       | 1 4 5 7 9            | M9sus4 maj9sus
        13sus4      | thirteenth suspended fourth                        | 1 4 5 b7 9 13        | 13sus sus13 13(sus4)
        7sus4b9     | seventh suspended fourth flat ninth                | 1 4 5 b7 b9          | 7b9sus4 7b9sus 7susb9 susb9 sus4b9
        7sus4b9b13  | seventh suspended fourth flat ninth flat thirteenth | 1 4 5 b7 b9 b13      | 7b9b13sus4
        13sus4b9    | thirteenth suspended fourth flat ninth             | 1 4 5 b7 b9 13       | 13b9sus4 13susb9
        """;
}
