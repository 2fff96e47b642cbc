namespace SheetPress.Theory;

/// <summary>The English sentences of the harmonic analysis.</summary>
internal static class HarmonyWordingEnglish
{
    internal static HarmonyWording Make() => new()
    {
        And = "and",
        Nothing = "nothing",
        ModeNames = new Dictionary<Mode, string>
        {
            [Mode.Major] = "major",
            [Mode.Minor] = "minor",
            [Mode.Ionian] = "ionian",
            [Mode.Dorian] = "dorian",
            [Mode.Phrygian] = "phrygian",
            [Mode.Lydian] = "lydian",
            [Mode.Mixolydian] = "mixolydian",
            [Mode.Aeolian] = "aeolian",
            [Mode.Locrian] = "locrian",
        },
        Functions = new Dictionary<HarmonicFunction, string>
        {
            [HarmonicFunction.Tonic] = "tonic",
            [HarmonicFunction.TonicSubstitute] = "tonic substitute",
            [HarmonicFunction.Subdominant] = "subdominant",
            [HarmonicFunction.Dominant] = "dominant",
            [HarmonicFunction.MinorDominant] = "minor dominant, no leading tone",
            [HarmonicFunction.LeadingTone] = "dominant, on the leading tone",
            [HarmonicFunction.Subtonic] = "subtonic",
            [HarmonicFunction.DominantWithinKey] = "dominant of {target} within the key",
            [HarmonicFunction.SecondaryDominant] = "secondary dominant of {target}",
            [HarmonicFunction.SubstituteDominant] = "tritone substitute, leads to {target}",
            [HarmonicFunction.LeadingToneOf] = "leading-tone chord of {target}",
            [HarmonicFunction.SupertonicOf] = "second degree of {target}",
            [HarmonicFunction.BackdoorDominant] = "backdoor dominant",
            [HarmonicFunction.BluesTonic] = "tonic with the blues seventh",
            [HarmonicFunction.BluesSubdominant] = "subdominant with the blues seventh",
            [HarmonicFunction.Borrowed] = "borrowed from {key}",
            [HarmonicFunction.FlatSecond] = "neapolitan, on the flat second degree",
            [HarmonicFunction.RaisedFourth] = "raised fourth degree, passes to the dominant",
            [HarmonicFunction.MajorTonicInMinor] = "tonic turned major",
            [HarmonicFunction.ModalColour] = "color chord of the {mode} mode",
            [HarmonicFunction.PassingDiminished] = "passing diminished",
            [HarmonicFunction.CommonToneDiminished] = "common-tone diminished",
            [HarmonicFunction.Chromatic] = "chromatic",
        },
        Reasons = new Dictionary<ScaleReason, string>
        {
            [ScaleReason.KeyMode] = "the notes of {key}, from {root}",
            [ScaleReason.ParallelMode] = "the notes of {key}, where the chord comes from",
            [ScaleReason.HarmonicMinorFifthMode] = "fifth mode of {note} harmonic minor",
            [ScaleReason.HarmonicMinorSeventhMode] = "seventh mode of {note} harmonic minor",
            [ScaleReason.KeepsKey] = "the notes of the key but for {changed}",
            [ScaleReason.UnresolvedDominant] = "usual over a dominant that does not fall a fifth",
            [ScaleReason.Blues] = "the scale of a dominant seventh, as in the blues",
            [ScaleReason.AlteredTensions] = "the symbol alters fifth and ninth",
            [ScaleReason.AlteredNinth] = "holds the altered ninth beside the natural fifth",
            [ScaleReason.AlteredFifth] = "holds the altered fifth beside the natural ninth",
            [ScaleReason.DiminishedChord] = "chord tones, each with a half step below",
            [ScaleReason.MinorVariant] = "minor with the sixth or seventh that the symbol asks for",
            [ScaleReason.HoldsTones] = "holds every tone of the chord",
        },
        Patterns = new Dictionary<ProgressionPatternKind, string>
        {
            [ProgressionPatternKind.MajorTwoFiveOne] = "{chords} is a ii–V–I into {key}: the roots climb a fourth twice, and home is on {last}.",
            [ProgressionPatternKind.MinorTwoFiveOne] = "{chords} is a minor ii–V–i into {key}: the roots climb a fourth twice, and home is on {last}.",
            [ProgressionPatternKind.SubstituteTwoFiveOne] = "{chords} is a ii–V–I with a tritone substitute in the middle: the roots walk home in half steps.",
            [ProgressionPatternKind.TwoFive] = "{chords} is a ii–V that asks for {goal}.",
            [ProgressionPatternKind.CycleOfFourths] = "From {first} to {last} each root is a fourth above the one before: one string up at the same fret where strings are tuned in fourths.",
            [ProgressionPatternKind.CycleOfFourthsWithTritone] = "From {first} to {last} each root is a fourth above the one before, one string up at the same fret where strings are tuned in fourths; only from {from} to {to} it is a tritone, one fret further.",
            [ProgressionPatternKind.Turnaround] = "{chords} is a turnaround: it leaves home, goes round and leads back to the top.",
            [ProgressionPatternKind.SecondaryDominant] = "{first} is the dominant of {last}: its third {third} climbs a half step to {root}, its seventh {seventh} falls to {goalthird}.",
            [ProgressionPatternKind.SecondaryDominantTriad] = "{first} is the dominant of {last}: its third {third} climbs a half step to {root}.",
            [ProgressionPatternKind.TritoneSubstitute] = "{first} slides down a half step into {last}. It stands for {other}, with which it shares its third and seventh.",
            [ProgressionPatternKind.Backdoor] = "{chords} comes home by the back door: the root climbs a whole step into {last}.",
            [ProgressionPatternKind.FullClose] = "{chords} closes the phrase: dominant to tonic, the strongest way home.",
            [ProgressionPatternKind.PlagalClose] = "{chords} closes softly from the subdominant: the root falls a fourth into {last}.",
            [ProgressionPatternKind.HalfClose] = "The phrase stops on the dominant {last}, which leads back to the top.",
            [ProgressionPatternKind.DeceptiveCadence] = "{chords} is a deceptive cadence: the ear expects {goal}, and the bass steps up to {last} instead.",
            [ProgressionPatternKind.DescendingMinor] = "{chords} steps down from the tonic to the dominant of {key}.",
            [ProgressionPatternKind.ClimbingDiminished] = "{chords} climbs in half steps in the bass, with a diminished chord between.",
        },
    };
}
