namespace SheetPress.Lessons;

/// <summary>How lines are written, by teachers in a lesson and by patterns in their files: the one place that says so.</summary>
internal static class LineNotation
{
    /// <summary>The guide that "styles own-line" prints.</summary>
    public const string Guide = """
        A line is written note by note, with blanks between and | between bars.

        Notes
          R 3 5 b7 8 10     degrees of the chord that sounds; a plain 3 or 7 is the one the chord has,
                            b7 or n7 is exact. With "degrees: key" they are steps of the key instead.
          low-5 low-3       the degree an octave lower, below the root.
          Eb2 F#1           pitches as they sound (the open low string of a bass is E1).
          Eb F#             the same without an octave: the nearest to the note before.
          next              the root of the next chord, taken early.
          under-next over-next              a half step below or above the next root.
          step-under-next step-over-next    the scale step below or above it.
          fifth-of-next                     the fifth of the next root, its dominant.
          R&10              two or more notes struck together.
          x                 a dead note on the string of the note before.
          (5)               a ghost note.
          rest              silence.          -   holds the note before.
          same              the whole bar before once more.
          simile            the same, printed as the sign for "repeat the bar before".

        Rhythm
          A value stands before the notes it is for and holds until the next one:
          quarter R 5 eighth 8 5 R 5, or by letters: q R 5 e 8 5 R 5.
          w h q e s t are whole to thirty-second; q. is dotted; e3 is an eighth of a triplet.
          e3in3 is an eighth of a triplet within a triplet: q3 R 5 e3in3 8 5 3.
          Without values the notes take the exercise's rhythm; without one they share the bar equally.

        Marks follow a colon, several in a row: 8:pop  R:thumb:accent  5:hammer  R:string3:fret5
          accent strong staccato tenuto fermata     how it is struck and held
          mute let-ring vibrato ghost dead          how it sounds
          harmonic                                  a natural harmonic; the pitch is the one that sounds
          thumb pop down up index middle ring       the plucking hand
          hammer pull slide                         lead up, down or anywhere to the next note
          slide-from-below slide-from-above slide-off-down slide-off-up
          bend-quarter bend-half bend-full bend-full-and-half bend-two-full
          slur end-slur                             the first and the last note of a slur
          ppp pp p mp mf f ff fff fp sfz            loud and soft, from this note on
          crescendo diminuendo end-hairpin          up to the next of these, or to end-hairpin
          stringN fretN fingerN                     fix the place on the neck, and the finger

        Changes stand at the front of their bar and hold from there on
          [treble clef] [bass clef]                 the staff in another clef
          [tempo 60] [tempo half = 72]              another tempo
          [tempo quarter = dotted quarter]          the left value, as it went before, is now the right one

        With "lower" a second voice stands on the same staff, written like the line.

        A line shorter than the progression starts over until the progression ends.
        Example, four bars of 4/4:
          q R 5 8 5 | e R R 5 5 8:accent - 5 5 | h R q 5 under-next | w R
        """;
}
