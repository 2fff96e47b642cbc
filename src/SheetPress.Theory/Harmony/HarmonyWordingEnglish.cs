namespace SheetPress.Theory;

/// <summary>The English phrases of the harmonic analysis.</summary>
internal static class HarmonyWordingEnglish
{
    internal const string Table = """
        function Tonic: tonic
        function TonicSubstitute: tonic substitute
        function Subdominant: subdominant
        function Dominant: dominant
        function MinorDominant: minor dominant, no leading tone
        function LeadingTone: dominant, on the leading tone
        function Subtonic: subtonic
        function DominantWithinKey: dominant of {target} within the key
        function SecondaryDominant: secondary dominant of {target}
        function SubstituteDominant: tritone substitute, leads to {target}
        function LeadingToneOf: leading-tone chord of {target}
        function SupertonicOf: second degree of {target}
        function BackdoorDominant: backdoor dominant
        function BluesTonic: tonic with the blues seventh
        function BluesSubdominant: subdominant with the blues seventh
        function Borrowed: borrowed from {key}
        function FlatSecond: Neapolitan, on the flat second degree
        function RaisedFourth: raised fourth degree, stands in for the subdominant
        function MajorTonicInMinor: tonic turned major
        function ModalColor: color chord of the {mode} mode
        function PassingDiminished: passing diminished
        function CommonToneDiminished: common-tone diminished
        function SuspendedDominant: suspended dominant
        function TonicOfMoment: tonic of {key} for a moment
        function ChordOfMoment: belongs to {key} for a moment
        function DominantOfNewKey: dominant of the new key, {key}
        function SupertonicOfNewKey: second degree of the new key, {key}
        function Sliding: passing chord, slides into {target}
        function Chromatic: chromatic
        reason KeyMode: the notes of {key}, from {root}
        reason ParallelMode: the notes of {key}, where the chord comes from
        reason HarmonicMinorFifthMode: fifth mode of {note} harmonic minor
        reason HarmonicMinorSeventhMode: seventh mode of {note} harmonic minor
        reason KeyOfMoment: the notes of {key}, the key of the moment
        reason KeepsKey: the notes of the key but for {changed}
        reason UnresolvedDominant: usual over a dominant that does not fall a fifth
        reason Blues: the scale of a dominant seventh, as in the blues
        reason AlteredTensions: the symbol alters fifth and ninth
        reason AlteredNinth: holds the altered ninth beside the natural fifth
        reason AlteredFifth: holds the altered fifth beside the natural ninth
        reason DiminishedChord: chord tones, each with a half step below
        reason MinorVariant: minor with the sixth or seventh that the symbol asks for
        reason HoldsTones: holds every tone of the chord
        pattern MajorTwoFiveOne: {chords} is a [ii]–[V]–[I] into {key}: the roots climb a fourth twice, and home is on {last}{moment}.
        pattern MinorTwoFiveOne: {chords} is a minor [ii]–[V]–[i] into {key}: the roots climb a fourth twice, and home is on {last}{moment}.
        pattern SubstituteTwoFiveOne: {chords} is a [ii]–[V]–[I] with a tritone substitute in the middle: the roots walk home in half steps.
        pattern TwoFive: {chords} is a [ii]–[V] that asks for {goal}.
        pattern TwoFiveOnward: {chords} is a ii–V into {last}, which becomes a ii at once and goes on.
        pattern SlidingTwoFive: {chords} is a ii–V a half step above the next one, into which it slides.
        pattern CycleOfFourths: From {course}, each root is a fourth above the one before: one string up at the same fret where strings are tuned in fourths.
        pattern CycleOfFourthsWithTritone: From {course}, each root is a fourth above the one before, one string up at the same fret where strings are tuned in fourths; only from {from} to {to} it is a tritone, one fret further.
        pattern Turnaround: {chords} is a turnaround: from the tonic it goes round and leads back {back}.
        pattern TurnaroundFromThird: {chords} is a turnaround: from the third degree, in place of the tonic, it goes round and leads back {back}.
        pattern SecondaryDominant: {first} is the dominant of {last}: its third {third} climbs a half step to {root}, its seventh {seventh} falls to {goalthird}.
        pattern SecondaryDominantTriad: {first} is the dominant of {last}: its third {third} climbs a half step to {root}.
        pattern TritoneSubstitute: {first} slides down a half step into {last}. It stands for {other}, with which it shares its third and seventh.
        pattern Backdoor: {chords} comes home by the back door: the root climbs a whole step into {last}.
        pattern FullClose: {chords} closes the phrase: dominant to tonic, the strongest way home.
        pattern PlagalClose: {chords} closes softly from the subdominant: the root falls a fourth into {last}.
        pattern HalfClose: The phrase stops on the dominant {last}, which leads back to the top.
        pattern DeceptiveCadence: {chords} is a deceptive cadence: the ear expects {goal}, and the bass steps up to {last} instead.
        pattern DescendingMinor: {chords} steps down from the tonic to the dominant of {key}.
        pattern ClimbingDiminished: {chords} climbs in half steps in the bass, with a diminished chord between.
        again MajorTwoFiveOne: {chords} is a [ii]–[V]–[I] into {key}.
        again MinorTwoFiveOne: {chords} is a minor [ii]–[V]–[i] into {key}.
        again CycleOfFourths: From {course}, the roots climb in fourths again.
        again CycleOfFourthsWithTritone: From {course}, the roots climb in fourths again, with the tritone from {from} to {to}.
        again Turnaround: {chords} is a turnaround too and leads back {back}.
        again TurnaroundFromThird: {chords} is a turnaround from the third degree again and leads back {back}.
        again SecondaryDominant: {first} is the dominant of {last}: {third} climbs to {root}, {seventh} falls to {goalthird}.
        again SecondaryDominantTriad: {first} is the dominant of {last}: {third} climbs to {root}.
        again TritoneSubstitute: {first} slides down a half step into {last} and stands for {other}.
        again Backdoor: {chords} comes home by the back door again.
        again ClimbingDiminished: {chords} climbs in the same way.
        blues Major: A twelve-bar blues in {key}
        blues Jazz: A twelve-bar blues in {key} in its jazz form
        blues Minor: A twelve-bar blues in {key} minor
        blues FirstPlain: four bars of the tonic {tonic}
        blues FirstQuick: four bars of the tonic {tonic} with the subdominant already in the second (the quick change)
        blues FirstRound: four bars that leave the tonic {tonic} and come round to {round}
        blues FirstLeads: and {round} in the fourth to lead on
        blues SecondPlain: two of the subdominant {subdominant} and two of the tonic
        blues SecondLeads: two of the subdominant {subdominant} and the tonic in the seventh, with {onward} to lead on
        blues SecondThird: two of the subdominant {subdominant} and {third} in place of the tonic in the seventh
        blues ThirdOver: the last four fall from the dominant {dominant} over the subdominant {tenth} to the tonic
        blues ThirdDominant: the last four go from the dominant {dominant} to the tonic
        blues ThirdThrough: the last four go home through {ninth} and {tenth}
        blues EndTurnaround: The last two bars are a turnaround, which leads back to the top.
        blues EndDominant: The dominant in the last bar leads back to the top.
        blues ScaleMajor: Where tonic and subdominant are dominant sevenths they take Mixolydian; all twelve bars can take the blues scale of {key}: {notes}.
        blues ScaleMinor: All twelve bars can take the blues scale of {key}: {notes}.
        mode Major: major
        mode Minor: minor
        mode Ionian: Ionian
        mode Dorian: Dorian
        mode Phrygian: Phrygian
        mode Lydian: Lydian
        mode Mixolydian: Mixolydian
        mode Aeolian: Aeolian
        mode Locrian: Locrian
        word and: and
        word nothing: nothing
        word top: to the top
        word home: home
        word moment: for a moment
        word course: {first} to {last}
        word round: {first} round to {last} again
        """;
}
