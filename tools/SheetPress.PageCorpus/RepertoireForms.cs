using System.Collections.Immutable;

namespace SheetPress.PageCorpus;

/// <summary>A harmonic form in one key, as it would be written in a lesson.</summary>
/// <param name="Name">What the form is.</param>
/// <param name="Key">The key it is written in.</param>
/// <param name="Meter">The meter at its start.</param>
/// <param name="Progression">The bars.</param>
internal sealed record RepertoireForm(string Name, string Key, string Meter, string Progression)
{
    /// <inheritdoc />
    public override string ToString() => Name;
}

/// <summary>
/// The harmonic forms that songs are made of, each invented here after the common practice of its kind: blues, songs of 32 bars, bossa,
/// soul, loops of four chords, power chords, modal vamps, line clichés, odd meters. None is any song.
/// </summary>
internal static class RepertoireForms
{
    /// <summary>All forms.</summary>
    public static ImmutableArray<RepertoireForm> All { get; } =
    [
        .. Table.Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(row => row.Split(';', 4, StringSplitOptions.TrimEntries))
            .Select(columns => new RepertoireForm(columns[0], columns[1], columns[2], columns[3])),
    ];

    private const string Table = """
        blues of twelve bars; C major; 4/4; C7 | F7 | C7 | C7 | F7 | F7 | C7 | C7 | G7 | F7 | C7 | G7
        blues without the quick change; E major; 12/8; E7 | hold | hold | hold | A7 | hold | E7 | hold | B7 | A7 | E7 A7 | E7 B7
        minor blues; C minor; 4/4; Cm7 | Fm7 | Cm7 | Cm7 | Fm7 | Fm7 | Cm7 | Cm7 | Ab7 | G7#9 | Cm7 | Dm7b5 G7alt
        jazz blues; F major; 4/4; F7 | Bb7 Bdim7 | F7 | Cm7 F7 | Bb7 | Bdim7 | F7/C | Am7b5 D7b9 | Gm7 | C7 | F7 D7b9 | Gm7 C7
        blues with many changes; F major; 4/4; Fmaj7 | Em7b5 A7b9 | Dm7 G7 | Cm7 F7 | Bb7 | Bbm7 Eb7 | Am7 | Abm7 Db7 | Gm7 | C7 | Am7 D7 | Gm7 C7
        blues of eight bars; A major; 4/4; A7 | E7 | D7 | D7 D#dim7 | A/E F#7 | B7 E7 | A7 D7 | A7 E7
        blues of sixteen bars; G major; 4/4; G7 | G7 | G7 | G7 | C7 | C7 | G7 | G7 | D7 | C7 | D7 | C7 | D7 | C7 | G7 C7 | G7 D7
        blues waltz; G minor; 3/4; Gm7 | Cm7 | Gm7 | Gm7 | Cm7 | Cm7 | Gm7 | Gm7 | Eb7 | D7 | Gm7 | D7#5
        fast changes, first part; Bb major; 4/4; Bb6 G7 | Cm7 F7 | Dm7 G7 | Cm7 F7 | Bb7 | Eb7 Edim7 | Bb/F G7 | Cm7 F7
        fast changes, bridge of dominants; Bb major; 4/4; D7 | D7 | G7 | G7 | C7 | C7 | F7 | F7
        fast changes, whole; Bb major; 4/4; [A] |: Bbmaj7 G7b9 | Cm7 F7 | Dm7 Db7 | Cm7 B7 | Fm7 Bb7 | Ebmaj7 Ab7 |1. Dm7 G7 | Cm7 F7 :|2. Cm7 F7 | Bb6 || [B] D9 | hold | G13 | hold | C9 | hold | F13 | F7#5 || [A] Bbmaj7 Bdim7 | Cm7 C#dim7 | Dm7 G7alt | Cm7 F7alt | Bb9 | Eb9 Ab13 | Cm7 F7 | Bb6/9
        32 bars with a bridge a major third up; C major; 4/4; [A] Cmaj7 | Am7 | Dm7 | G7 | Em7 | A7 | Dm7 G7 | C6 || [B] Emaj7 | C#m7 | F#m7 | B7 | Emaj7 | Am7 D7 | Gmaj7 | Dm7 G7 || [A] Cmaj7 | Am7 | Dm7 | G7 | Em7 | A7 | Dm7 G7 | C6/9
        32 bars, circle of keys; Ab major; 4/4; Fm7 | Bbm7 | Eb7 | Abmaj7 | Dbmaj7 | Dm7 G7 | Cmaj7 | Cmaj7 | Cm7 | Fm7 | Bb7 | Ebmaj7 | Abmaj7 | Am7b5 D7 | Gmaj7 | E7#5 | Am7 | D7 | Gmaj7 | Gmaj7 | F#m7b5 | B7b9 | Emaj7 | C7#5
        two-fives down in whole steps; G major; 4/4; Gmaj7 | Gmaj7 | Gm7 | C7 | Fmaj7 | Fmaj7 | Fm7 | Bb7 | Ebmaj7 | Am7b5 D7b9 | Gm7 | Am7 D7
        minor and its relative major; G minor; 4/4; Cm7 | F7 | Bbmaj7 | Ebmaj7 | Am7b5 | D7 | Gm6 | Gm6 | Am7b5 | D7b9 | Gm7 | Gm7 Gb7 | Fm7 E7 | Ebmaj7 | Am7b5 D7 | Gm6
        the three keys a major third apart; B major; 4/4; Bmaj7 D7 | Gmaj7 Bb7 | Ebmaj7 | Am7 D7 | Gmaj7 Bb7 | Ebmaj7 F#7 | Bmaj7 | Fm7 Bb7 | Ebmaj7 | C#m7 F#7
        ballad with a chromatic bass; Eb major; 4/4; Ebmaj7 Bb7#5 | Ebmaj7 Gm7 C7b9 hold | Fm7 Fm7/Eb | Dm7b5 G7b9 | Cm CmMaj7 | Cm7 Cm6 | Abmaj7 Am7b5 D7 hold | Gm7 Gbdim7 | Fm7 Bb7 | Eb6
        ballad, bridge with notated keys; Db major; 4/4; Dbmaj7 Bbm7 | Ebm7 Ab7 | Fm7 Bb7 | Ebm7 Ab7 | [key A major] Bm7 E7 | Amaj7 F#m7 | Bm7 E7 | C#m7b5 F#7b9 | [key Db major] Ebm7 | Ab7sus4 Ab7 | Db6 | hold
        verse before the song; F major; 4/4; F Fmaj7 | F6 C/E | Dm Dm/C | Bbmaj7 C7 | F/A Abdim7 | Gm7 C9 | Am7 Dm7 | Gm7 C7sus4 C7 hold
        stage tune, step up; C major; 4/4; C Caug | F Fm6 | C/G A7 | D9 G7 | C Caug | F Fm6 | D7/F# G7 | C Ab7 | [key Db major] Db Dbaug | Gb Gbm6 | Db/Ab Bb7 | Eb9 Ab7 | Db | Gbm/Db | Db6 | hold
        patter in six; G major; 6/8; G | G#dim7 | D/A | D7 | C/E Cm/Eb | G/D E7 | A7 D7 | G:4 D7:2
        bossa in a minor key; A minor; 4/4; Am9 | hold | Bm7b5 | E7b9 | Am9 | Dm9 G13 | Cmaj9 | Fmaj7#11 | Bm7b5 | E7#5 | Am7 Ab7 | Gm7 C9
        bossa in a major key; F major; 2/2; Fmaj7 | Fmaj7 | G13 | G13 | Gm7 | Gb7#11 | Fmaj7 | Gb7b5 | Gbmaj7 | hold | B9 | hold | F#m9 | hold | D9 | hold | Gm9 | hold | Eb9 | hold | Am7 | D7b9#11 | Gm7 | C7b9#11
        bossa, falling diminished; D major; 4/4; Dmaj7 | Ddim7 | Em7 | A7 | F#m7 | Fdim7 | Em7 | A13 A7b13 | Am7 | D7b9 | Gmaj7 | Gm6 | F#m7 F7 | Em7 Eb7 | D6/9 | Em7 A7sus4
        samba of two chords; G major; 2/4; Gmaj7 | C9 | Gmaj7 | C9 | Bm7 | E7b9 | Am7 | D7
        choro; A minor; 2/4; Am Am/G# | Am/G D7/F# | Dm/F E7 | Am E7/B | A7/C# | Dm | B7/D# E7 | Am
        soul, sixteen bars; Ab major; 4/4; Abmaj7 Bbm7 | Cm7 Dbmaj7 | Abmaj7 Bbm7 | Cm7 Dbmaj7 Eb11 hold | Db/Eb | Abmaj9 | Dbmaj9 Cm7 | Bbm7 Bbm7/Eb
        soul, suspended dominants; E major; 4/4; Emaj7 A/B | G#m7 C#m7 | F#m7 F#m7/B | Emaj9 | Amaj7 Am6 | G#m7 C#7b9 | F#m9 | B9sus4 B7b9
        gospel walk; Bb major; 12/8; Bb Bb7/D | Eb Edim7 | Bb/F G7#5 | C9 F7sus4 F13 hold | Bb Bbdim/Bb | Bb Ebm6 | Bb/F Gm7 C7 F7#5 | Bb Eb/Bb Bb F7sus4
        gospel shout; Ab major; 4/4; Ab | Ab/C | Db Ddim7 | Ab/Eb | Ab7/Gb | Db/F Dbm/Fb | Ab/Eb F7 Bb7 Eb7 | Ab Db/Ab Ab hold
        loop of four; G major; 4/4; G | D/F# | Em7 | Cadd9
        loop from the sixth degree; C major; 4/4; Am | F | C | G/B
        loop with a borrowed fourth; C major; 4/4; C | E7 | F | Fm
        loop with flat seventh; D mixolydian; 4/4; D | C | G | D
        old loop; Eb major; 12/8; Eb | Cm | Ab | Bb7 | Eb Cm | Ab Bb7 | Eb Ab | Eb Bb7#5
        loop in a minor key; E minor; 4/4; Em | C | G | D/F# | Em | Cmaj7 | Am7 | B7sus4 B7
        descending minor; D minor; 4/4; Dm | C | Bb | A7 | Dm/C | Bm7b5 | Bbmaj7 | A7sus4 A7
        stepwise bass in major; C major; 4/4; C G/B | Am C/G | F C/E | Dm7 G7 | C Cmaj7/B | Am7 Am7/G | F#m7b5 Fm6 | C/E Ebdim7 | Dm7 G13 | C
        line cliché; A minor; 4/4; Am | AmMaj7 | Am7 | Am6 | F | Dm7 | E7sus4 | E7
        line cliché up; C major; 4/4; C | Caug | C6 | C7 | F | Fm | C/G G7 | C
        line cliché on the dominant; F minor; 3/4; Fm | Fm#5 | Fm6 | Fm#5 | Bbm7 | C7b9 | Fm(add9) | hold
        spy riff; E minor; 4/4; Em | Em(b6) | Em6 | Em(b6) | Am9 | Am(b6) | F#7alt B7#9 | EmMaj9
        power chords; E minor; 4/4; E5 | G5 A5 | E5 | G5 Bb5 A5 hold | E5 | C5 D5 | E5 F5 | E5
        heavy, flat second; F# phrygian; 4/4; F#5 | G5 | F#5 A5 | G5 F#5 | F#5 | C5 B5 | G5 | F#5
        drop riff in seven; D minor; 7/8; D5 | D5 F5 | D5 G5 F5 | C5 | D5 | Bb5 C5 | D5 Ab5 G5 | D5
        rock, double plagal; A major; 4/4; A | G D | A | G D | F# | F C | A/E | E7sus4 E7
        dorian vamp; D dorian; 4/4; Dm7 | G7 | Dm9 | G13 | Dm7 | Em7 | Fmaj7 | Em7 Dm7
        two modes a half step apart; D dorian; 4/4; Dm7 | hold | hold | hold | [key Eb dorian] Ebm7 | hold | hold | hold | [key D dorian] Dm11 | hold | hold | hold
        quartal stacks; E dorian; 4/4; Em11 | D/E | A/E | Em7sus4 | F#m7 | G/A | A7sus4 | D6/9/E
        lydian vamp; F lydian; 4/4; Fmaj7#11 | G/F | Em7 | Fmaj7 | Fmaj9#11 | G6 | Am7 | G/F
        phrygian vamp; E phrygian; 4/4; Em | F | G | F | E7sus4b9 | Fmaj7#11 | Dm7 | E
        spanish cadence; A minor; 3/4; Am | G | F | E | Am G | F E | E7b9 | E
        mixolydian waltz; A mixolydian; 3/4; A7 | G | D/F# | A | G6 | Em7 | D | A7sus4
        locrian, seldom; B locrian; 4/4; Bm7b5 | Cmaj7 | Em7 | Fmaj7 | Am7 | G7 | Fmaj7 | Bm7b5
        pedal point; E major; 4/4; E | F#/E | G/E | A/E | E | B/E | D/E | E
        pedal on the dominant; C major; 4/4; Dm7/G | G7 | Fmaj7/G | G7b9 | Cmaj7/G | F#dim7/G | Dm7b5/G | G7 | C
        upper structures; C major; 4/4; D/C | Db/C | Eb/C | F#/C | G/C | A/C | B/C | Cmaj7 | Ab/Bb | Emaj7/F# | Bbmaj7/C | C13sus4
        tritone substitutes; C major; 4/4; Cmaj7 Eb7 | D7 Db7 | Em7 Bb7 | A7 Ab7 | Dm9 Db9#11 | Cmaj9 | Em7b5 Eb7#11 | Dm7 Db13 | C6/9 | hold
        turnarounds; Eb major; 4/4; Ebmaj7 C7 | Fm7 Bb7 | Gm7 Gbdim7 | Fm7 E7 | Ebmaj7 Gb7 | B7 E7 | Ebmaj7 Gbmaj7 | Bmaj7 Emaj7 | Eb6/9 | hold
        rising diminished; C major; 4/4; Cmaj7 C#dim7 | Dm7 D#dim7 | Em7 | Gm7 C7 | Fmaj7 F#dim7 | C/G G#dim7 | Am7 D7 | Dm7 G7
        common-tone diminished; G major; 4/4; G Gdim7 | G | D7 | D7 | G Gdim7 | G/B Bbdim7 | Am7 D7 | G C/G G hold
        altered dominants; C minor; 4/4; Cm6 | G7b9b13 | Cm9 | G7#5#9 | Fm9 | Bb13b9 | Ebmaj7#5 | Ab13#11 | Dm11b5 | G7alt | CmMaj9 | hold
        whole tones; C major; 4/4; C9#5 | Bb9#5 | Ab7#5 | Gb7#5 | E9#11 | D9#11 | G7b5 | Cmaj7#5
        back door; F major; 4/4; Fmaj7 | Bbm7 Eb9 | Fmaj7 | Cm7 F7 | Bbmaj7 | Bbm6 Eb7 | Am7 Abm7 | Gm7 C7sus4b9
        back door to the minor third; A major; 4/4; Amaj9 | Cmaj9 | Ebmaj9 | Gbmaj9 | Bm11 | E13sus4 | A6/9 | hold
        constant structure; C major; 4/4; Cmaj7#11 | Ebmaj7#11 | Gbmaj7#11 | Amaj7#11 | Bbmaj9 | Dbmaj9 | Emaj9 | Cmaj13
        jazz waltz; Bb major; 3/4; Bbmaj7 | Eb7 | Bbmaj7 | Fm7 Bb7 | Ebmaj7 | Em7b5 A7b9 | Dm7 | Db7 | Cm7 | F7 | Dm7 G7 | Cm7 F7
        slow waltz, country; D major; 3/4; D | D7 | G | Gm | D | Bm7 | E7 | A7 | D D/F# | G G#dim7 | D/A A7 | D
        five four; Eb minor; 5/4; Ebm Bbm7 | Ebm Bbm7 | Ebm Bbm7 | Ebm Abm7:1 Bbm7:1 | Cbmaj7 Abm6 | Bbm7 Ebm7 | Abm7 Dbm7 | Gbmaj7 Fm7b5:1 Bb7:1
        seven four; A dorian; 7/4; Am7:4 D:3 | Am7:4 D/F#:3 | Gmaj7:4 Em7:3 | Am7
        meter changes; C major; 4/4; Cadd9 | F/C | [3/4] Gsus4 G:1 | [4/4] Am7 | [2/4] Dm7 | [4/4] G | [6/8] C F | [4/4] C
        nine eight; D minor; 9/8; Dm | Gm/D | A7/C# | Dm C Bb | Gm6 | A7sus4 A7 A7b9 | Dm | Dm
        pickup and endings; G major; 4/4; [pickup 1] D7 | |: G | Em7 | Am7 |1. D7 :|2. D7sus4 D7 || C | Cm6 | G/D E7 | Am7 D7 | G6
        signs all the way; F major; 4/4; [segno] F | Dm7 | Gm7 | C7 [to coda] | [B] Bbmaj7 | Bbm6 | Am7 D7 | Gm7 C7 [D.S. al Coda] | [coda] F6 | Gb7 | F6/9 | N.C.
        silences; A minor; 4/4; Am7 N.C. | N.C. | Am7 | F7 N.C. E7 hold | N.C. | Am6 | N.C. Dm7 | N.C.
        train beat; E major; 2/2; E | A | E | B7 | E E7 | A A#dim7 | E/B B7 | E
        fiddle tune; D major; 2/2; |: D | G D | A7 | D A7 | D | G D | A7 | D :| |: D | Bm | G | A7 | D/F# G | D/A Bm | Em7 A7 | D :|
        march, two keys; Bb major; 6/8; Bb | F7/C | Bb/D Edim7 | F7 | Gm D7 | Gm C7 | F C7/G | F7 || [key Eb major] Eb | Bb7/F | Eb/G | Abm6/F Bb7 | Eb C7 | Fm7 Bb7 | Eb Ab | Eb
        praise song; E major; 4/4; Eadd9 | B/D# | C#m7 | Aadd9 | Esus4 E | Bsus4 B | C#m7 G#m7 | Aadd9(no3) | F#m7 | A/B | E | hold
        guitar voicings; G major; 4/4; G5add9 | Dsus4 | Cadd9 | G6 | Em7add11 | A7sus4 | Cmaj7 | Dsus2 | Fadd#11 | Gsus24 | Cadd11/E | G
        film chords; C minor; 4/4; Cm | Abm | Ebm | Bm | Cm | F# | Cm(add9) | E | Ab/C | CmMaj7 | Fm6/C | C
        thirds of major chords; C major; 4/4; C | Ab | E | C | Eb | B | G | C
        far keys; F# major; 4/4; F#maj7 | D#m7 | G#m7 | C#7 | B#m7b5 E#7 | A#m7 D#7 | G#7 C#7 | F#6 | E#m7b5 | A#7 | D#m7 | Fxdim7 | G#m7 | C#7sus4 C#7 | F#maj9 | hold
        far flats; Gb major; 4/4; Gbmaj7 | Cbmaj7 | Fm7b5 Bb7 | Ebm7 Abm7 | Cbm6 | Gb/Bb Bbbdim7 | Abm7 Db7 | Gb6 | Fbmaj7 | Ebbmaj7 | Abm7b5 Db7 | Gb
        spelled against the key; E major; 4/4; Emaj7 | Db7 | Gbm7 | B7 | Abm7 | Dbm7 | Gb7 | Cb7 | E6
        seven flats and more; Ab minor; 4/4; Abm7 | Dbm7 | Gb7 | Cbmaj7 | Fbmaj7 | Bbm7b5 | Eb7b9 | Abm6
        cycle through all dominants; C major; 4/4; C7 F7 | Bb7 Eb7 | Ab7 Db7 | Gb7 B7 | E7 A7 | D7 G7 | C6 | hold
        every kind of chord, one; C major; 4/4; C | Cm | Cdim | Caug | C5 | Csus2 | Csus4 | C6 | Cm6 | C7 | Cmaj7 | Cm7 | CmMaj7 | Cm7b5 | Cdim7 | C7#5 | C7b5 | Cmaj7#5
        every kind of chord, two; C major; 4/4; C9 | Cmaj9 | Cm9 | C11 | Cm11 | C13 | Cmaj13 | Cm13 | C6/9 | Cm6/9 | Cadd9 | Cmadd9 | C7sus4 | C9sus4 | C13sus4 | C7sus4b9 | C7#9 | C7b9
        every kind of chord, three; C major; 4/4; C7alt | C7#11 | C7b9b13 | C7#9b13 | C13b9 | C13#11 | Cmaj7#11 | Cmaj7b5 | Cm7#5 | CdimMaj7 | Cm9b5 | C7no3 | C7no5 | Cmaj7sus4 | Csus24 | C(b5) | C9#5 | CmMaj9
        one chord; E mixolydian; 4/4; E7 | hold | hold | same
        eight chords a bar; C major; 4/4; C G/B Am Em/G F C/E Dm G | C
        """;
}
