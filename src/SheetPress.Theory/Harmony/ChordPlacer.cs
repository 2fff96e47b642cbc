namespace SheetPress.Theory;

/// <summary>Finds the numeral and the function of each chord from the chord itself, the key and the chord that follows. Common practice.</summary>
/// <param name="key">The key.</param>
/// <param name="restsOnSeventh">Whether the tonic is a dominant seventh, as <see cref="BluesHome"/> says.</param>
internal sealed class ChordPlacer(Key key, bool restsOnSeventh)
{
    private static readonly Mode[] BorrowedIntoMajor = [Mode.Minor, Mode.Mixolydian, Mode.Dorian, Mode.Phrygian, Mode.Lydian, Mode.Major];
    private static readonly Mode[] BorrowedIntoMinor = [Mode.Dorian, Mode.Phrygian, Mode.Mixolydian, Mode.Major, Mode.Lydian, Mode.Minor];

    /// <summary>Places a chord.</summary>
    /// <param name="chord">The chord.</param>
    /// <param name="before">The other chord before; null at the start.</param>
    /// <param name="next">The next other chord; null at the end.</param>
    /// <param name="afterNext">The other chord after that.</param>
    /// <param name="moment">The key that rules for a moment; null where the key itself rules.</param>
    internal ChordPlace Place(Chord chord, Chord? before, Chord? next, Chord? afterNext = null, Key? moment = null)
    {
        var place = PlaceInKey(chord, before, next, afterNext);
        return moment is null ? place : InMoment(place, moment);
    }

    // The same place counted from the tonic of the moment: V7/III, vi7/III.
    private ChordPlace InMoment(ChordPlace place, Key moment)
    {
        var tonic = Near(moment.Tonic, key.Fifths - 6, key.Fifths + (key.HasMinorThird ? 10 : 6));
        var target = RomanNumeral.FromChord(new Chord(tonic, ChordQualities.Row(moment.HasMinorThird ? "m" : "")), key);
        var signature = tonic.Fifths - (moment.HasMinorThird ? 3 : 0);
        var chord = WithRoot(place.Chord, Near(place.Chord.Root, signature - 6, signature + 10));
        var applied = place with { KeyOfMoment = moment, Target = target, Numeral = RomanNumeral.FromChord(chord, key, target) };
        return Steps.Up(tonic, chord.Root) switch
        {
            0 => applied with { Function = HarmonicFunction.TonicOfMoment },
            7 when chord.Quality.IsDominantSeventh() => applied with { Function = HarmonicFunction.SecondaryDominant },
            2 when place.Function == HarmonicFunction.SupertonicOf => applied with { Function = HarmonicFunction.SupertonicOf },
            _ when place.Function is HarmonicFunction.SecondaryDominant or HarmonicFunction.SupertonicOf or HarmonicFunction.LeadingToneOf => place with { KeyOfMoment = moment },
            _ => applied with { Function = HarmonicFunction.ChordOfMoment },
        };
    }

    private ChordPlace PlaceInKey(Chord chord, Chord? before, Chord? next, Chord? afterNext)
    {
        var read = ReadInKey(chord);
        var place = new ChordPlace
        {
            Chord = chord,
            Numeral = RomanNumeral.FromChord(read, key),
            Function = HarmonicFunction.Chromatic,
            IsDiatonic = IsInKey(read),
        };
        if (place.IsDiatonic && chord.Bass is { } bass && AboveTonic(bass) == 7 && AboveTonic(chord.Root) is 2 or 5 && !chord.Quality.IsHalfDiminished())
        {
            return place with { Function = HarmonicFunction.SuspendedDominant };
        }
        if (chord.Quality.IsDominantSeventh()) return PlaceDominant(place, read, before, next, afterNext);
        if (chord.Quality.IsDiminished()) return PlaceDiminished(place, read, next);
        if (chord.Quality.IsHalfDiminished()) return PlaceHalfDiminished(place, read, next);
        return chord.Quality.IsPlainMinor() ? PlaceMinor(place, read, next, afterNext) : PlaceMajor(place, read, next);
    }

    private bool IsInKey(Chord chord)
    {
        foreach (var tone in chord.Tones) if (!key.Contains(tone.Note)) return false;
        return true;
    }

    private static bool HasSound(Chord chord, NoteName note)
    {
        foreach (var tone in chord.Tones) if (tone.Note.PitchClass == note.PitchClass) return true;
        return false;
    }

    private static bool HasNote(Chord chord, NoteName note)
    {
        foreach (var tone in chord.Tones) if (tone.Note == note) return true;
        return false;
    }

    /// <summary>The chord in the spelling that the key would give it: Ab7 in E major is read as G#7.</summary>
    internal Chord ReadInKey(Chord chord)
    {
        // From the flat second (five fifths down) to the raised second and sixth (nine and ten up) a root is at home; beyond, the other spelling is meant.
        // Only a chord with a minor third climbs from the sharp first or fifth: any other is on the flat second or sixth, so E7 in E flat is bII7.
        var leads = chord.Quality.Shape.Third is { Alteration: < 0 };
        return WithRoot(chord, Near(chord.Root, key.Fifths - 6, leads ? key.Fifths + 10 : key.Tonic.Fifths + 6));
    }

    // The place of a chord whose name says its degree, numbered from there: Gbm7b5 in C major, on the raised fourth, is #ivø7.
    private ChordPlace On(ChordPlace place, HarmonicFunction function, Interval aboveTonic)
    {
        var read = WithRoot(place.Chord, key.Tonic + aboveTonic);
        return place with { Function = function, Numeral = RomanNumeral.FromChord(read, key) };
    }

    // The same chord by sound on another spelling of its root. The bass moves along, so that it is the degree of the chord that was written:
    // A#7/G# is a chord over its seventh, and so is Bb7/Ab. Beyond the double-flat seventh and the sharp seventh it takes its other spelling.
    private static Chord WithRoot(Chord chord, NoteName root)
    {
        if (chord.Bass is not { } bass) return root == chord.Root ? chord : chord with { Root = root };
        var written = NoteName.FromFifths(root.Fifths + bass.Fifths - chord.Root.Fifths);
        return new Chord(root, chord.Quality, Near(written, root.Fifths - 9, root.Fifths + 12));
    }

    // The spelling of a note that lies between two places on the line of fifths, at least twelve apart.
    private static NoteName Near(NoteName note, int lowest, int highest)
    {
        var fifths = note.Fifths;
        while (fifths < lowest) fifths += 12;
        while (fifths > highest) fifths -= 12;
        return fifths == note.Fifths ? note : NoteName.FromFifths(fifths);
    }

    private int AboveTonic(NoteName note) => Steps.Up(key.Tonic, note);

    private ChordPlace PlaceDominant(ChordPlace place, Chord chord, Chord? before, Chord? next, Chord? afterNext)
    {
        var above = AboveTonic(chord.Root);
        if (above == 7) return place with { Function = HarmonicFunction.Dominant };
        var goal = chord.Root + Interval.PerfectFourth;
        var resolves = next is not null && Steps.UpFourth(chord, next);
        if (place.IsDiatonic)
        {
            return resolves && above != 0 && chord.Quality.Find(3) is not null
                ? place with { Function = HarmonicFunction.DominantWithinKey, Target = Bare(goal, next) }
                : place with { Function = DiatonicFunction(place, chord) };
        }
        var isBlues = !key.HasMinorThird && above is 0 or 5;
        // After its own ii the tonic seventh leads on to IV, also in a blues.
        var hasSecond = before is not null && Steps.UpFourth(before, chord) && (before.Quality.IsPlainMinor() || before.Quality.IsHalfDiminished());
        var restsHere = next is null || !resolves || ((restsOnSeventh || next.Quality.IsDominantSeventh()) && !hasSecond);
        if (above == 0 && isBlues && restsHere) return place with { Function = HarmonicFunction.BluesTonic };
        if (resolves) return AsDominantOf(place, chord, Bare(goal, next));
        if (above == 10 && next is not null && IsHome(next)) return place with { Function = HarmonicFunction.BackdoorDominant };
        // IV7 that steps down to iii, as in the second line of a blues, is IV.
        var stepsToThird = isBlues && above == 5 && next is not null && (next.Quality.IsPlainMinor() || next.Quality.IsHalfDiminished());
        if (next is not null && Steps.DownHalfStep(chord, next) && !stepsToThird) return place with { Function = HarmonicFunction.SubstituteDominant, Target = Bare(next.Root, next) };
        if (isBlues) return place with { Function = HarmonicFunction.BluesSubdominant };
        if (above is 1 or 8 && LeadsDownLater(above, next, afterNext)) return place with { Function = HarmonicFunction.SubstituteDominant, Target = Bare(key.NoteOf(above == 1 ? 1 : 5), null) };
        if (next is not null && next.Quality.IsDominantSeventh() && Steps.UpHalfStep(chord, next)) return place with { Function = HarmonicFunction.Sliding, Target = Bare(next.Root, next) };
        // VI7 of a minor key is the key's own chord, made darker.
        if (above == 8 && key.HasMinorThird) return place with { Function = DiatonicFunction(place, chord) };
        // IV7 of a minor key is dorian unless it goes on to VII.
        return CanBeGoal(goal) && above != 5 ? AsDominantOf(place, chord, Bare(goal, null)) : OrBorrowed(place, chord);
    }

    // Whether a dominant on the flat second or sixth comes down a half step although the next chord is another: that chord is the dominant
    // of the goal or the ii before it, or the tonic over its fifth; or the progression ends and begins again with the tonic.
    private bool LeadsDownLater(int above, Chord? next, Chord? afterNext)
    {
        if (next is null) return above == 1;
        if (above == 8 && AboveTonic(next.Root) == 0 && AboveTonic(next.Lowest) == 7) return true;
        var goal = above - 1;
        return afterNext is not null && AboveTonic(afterNext.Root) == goal && AboveTonic(next.Root) == (goal + 7) % 12 && Steps.UpFourth(next, afterNext);
    }

    private ChordPlace PlaceDiminished(ChordPlace place, Chord chord, Chord? next)
    {
        if (AboveTonic(chord.Root) == 11) return On(place, HarmonicFunction.LeadingTone, Interval.FromNumber(7));
        if (place.IsDiatonic) return place with { Function = DiatonicFunction(place, chord) };
        if (next is not null)
        {
            // #iv°7 to the tonic over its fifth leads to that bass, although it holds the tonic; so to any bass of another chord than the tonic.
            if ((AboveTonic(next.Lowest) == 7 || (next.Bass is not null && AboveTonic(next.Root) != 0 && CanBeGoal(next.Lowest))) && Steps.Up(chord.Root, next.Lowest) == 1) return AsLeadingToneOf(place, chord, Bare(next.Lowest, null));
            if (HasSound(chord, next.Root)) return place with { Function = HarmonicFunction.CommonToneDiminished };
            if (Steps.UpHalfStep(chord, next)) return AsLeadingToneOf(place, chord, Bare(next.Root, next));
            if (Steps.Up(chord.Root, next.Lowest) == 1) return AsLeadingToneOf(place, chord, Bare(next.Lowest, null));
            if (Steps.DownHalfStep(chord, next) || Steps.Up(chord.Root, next.Lowest) == 11) return place with { Function = HarmonicFunction.PassingDiminished };
        }
        if (AboveTonic(chord.Root) == 0) return place with { Function = HarmonicFunction.CommonToneDiminished };
        var goal = chord.Root + Interval.MinorSecond;
        return CanBeGoal(goal) ? AsLeadingToneOf(place, chord, Bare(goal, null)) : OrBorrowed(place, chord);
    }

    private ChordPlace PlaceHalfDiminished(ChordPlace place, Chord chord, Chord? next)
    {
        var above = AboveTonic(chord.Root);
        if (LeadsToDominant(chord, next)) return AsSupertonicOf(place, chord);
        if (place.IsDiatonic) return place with { Function = DiatonicFunction(place, chord) };
        if (above == 11) return On(place, HarmonicFunction.LeadingTone, Interval.FromNumber(7));
        if (above == 2 && key.HasMinorThird) return place with { Function = HarmonicFunction.Subdominant };
        return above == 6 ? On(place, HarmonicFunction.RaisedFourth, Interval.FromNumber(4, 1)) : OrBorrowed(place, chord);
    }

    private ChordPlace PlaceMinor(ChordPlace place, Chord chord, Chord? next, Chord? afterNext)
    {
        var above = AboveTonic(chord.Root);
        if (place.IsDiatonic) return place with { Function = DiatonicFunction(place, chord) };
        if (above == 0 && key.HasMinorThird) return place with { Function = HarmonicFunction.Tonic };
        // iv bVII7 I comes home by the back door: iv is borrowed then, and no second degree of bIII.
        var comesHome = above == 5 && afterNext is not null && IsHome(afterNext);
        if (LeadsToDominant(chord, next) && !comesHome) return AsSupertonicOf(place, chord);
        // A sixth or major seventh on a minor chord of the key, as in a line that moves inside it, leaves its place alone.
        return IsInKey(new Chord(chord.Root, ChordQualities.Row("m"))) ? place with { Function = DiatonicFunction(place, chord) } : OrSliding(OrBorrowed(place, chord), next);
    }

    private ChordPlace OrSliding(ChordPlace place, Chord? next)
    {
        if (place.Function != HarmonicFunction.Chromatic || next is null || !(Steps.UpHalfStep(place.Chord, next) || Steps.DownHalfStep(place.Chord, next))) return place;
        var isAlike = place.Chord.Quality.IsPlainMinor() ? next.Quality.IsPlainMinor() : next.Quality.IsPlainMajor();
        return isAlike ? place with { Function = HarmonicFunction.Sliding, Target = Bare(next.Root, next) } : place;
    }

    // The tonic, or in a major key the third degree in its place.
    private bool IsHome(Chord chord) => AboveTonic(chord.Root) == 0 || (!key.HasMinorThird && AboveTonic(chord.Root) == 4 && chord.Quality.IsPlainMinor());

    private ChordPlace PlaceMajor(ChordPlace place, Chord chord, Chord? next)
    {
        var above = AboveTonic(chord.Root);
        var isTriad = chord.Quality.Shape is { Third: not null, Seventh: null };
        if (above == 7 && (isTriad || chord.Quality.Shape.Third is null)) return place with { Function = HarmonicFunction.Dominant };
        var goal = chord.Root + Interval.PerfectFourth;
        var resolves = isTriad && next is not null && Steps.UpFourth(chord, next) && CanBeGoal(goal);
        if (above == 0)
        {
            if (!key.HasMinorThird || chord.Quality.Shape.Third is null) return place with { Function = HarmonicFunction.Tonic };
            return resolves ? AsDominantOf(place, chord, Bare(goal, next)) : place with { Function = HarmonicFunction.MajorTonicInMinor };
        }
        if (place.IsDiatonic) return place with { Function = DiatonicFunction(place, chord) };
        if (resolves) return AsDominantOf(place, chord, Bare(goal, next));
        // III+ of a minor key holds its leading tone.
        if (above == 3 && key.HasMinorThird && chord.Quality.Shape.FifthIs(1)) return place with { Function = HarmonicFunction.TonicSubstitute };
        // The words name a degree and a major chord; without a third it is borrowed, if anything.
        return above == 1 && chord.Quality.Shape.Third is not null ? On(place, HarmonicFunction.FlatSecond, Interval.MinorSecond) : OrSliding(OrBorrowed(place, chord), next);
    }

    private ChordPlace AsDominantOf(ChordPlace place, Chord chord, RomanNumeral target) =>
        place with { Function = HarmonicFunction.SecondaryDominant, Target = target, Numeral = Applied(chord, target, Interval.PerfectFifth) };

    private ChordPlace AsLeadingToneOf(ChordPlace place, Chord chord, RomanNumeral target) =>
        place with { Function = HarmonicFunction.LeadingToneOf, Target = target, Numeral = Applied(chord, target, -Interval.MinorSecond) };

    private ChordPlace AsSupertonicOf(ChordPlace place, Chord chord)
    {
        var target = Bare(chord.Root - Interval.MajorSecond, null);
        // A chord of the key keeps its own numeral.
        var numeral = place.IsDiatonic ? place.Numeral : Applied(chord, target, Interval.MajorSecond);
        return place with { Function = HarmonicFunction.SupertonicOf, Target = target, Numeral = numeral };
    }

    // The numeral of a chord whose root lies an interval above a target, spelled from there.
    private RomanNumeral Applied(Chord chord, RomanNumeral target, Interval above) =>
        RomanNumeral.FromChord(WithRoot(chord, target.ToChord(key).Root + above), key, target);

    // Whether the next chord is a dominant a fourth up that is not the key's own.
    private bool LeadsToDominant(Chord chord, Chord? next) =>
        next is not null && Steps.UpFourth(chord, next) && next.Quality.IsDominantSeventh() && next.Quality.Find(3) is not null && AboveTonic(next.Root) != 7;

    // The whole chord in another mode on the tonic, or at least its triad.
    private ChordPlace OrBorrowed(ChordPlace place, Chord chord)
    {
        var mode = ModeWith(chord, highest: 13) ?? ModeWith(chord, highest: 5);
        return mode is null ? place : place with { Function = HarmonicFunction.Borrowed, BorrowedFrom = mode };
    }

    private Mode? ModeWith(Chord chord, int highest)
    {
        foreach (var mode in key.HasMinorThird ? BorrowedIntoMinor : BorrowedIntoMajor)
        {
            if (mode == key.Mode) continue;
            var type = mode.Scale();
            var holds = true;
            foreach (var tone in chord.Tones)
            {
                if (tone.Degree.Number > highest) continue;
                var place = key.Tonic.IntervalTo(tone.Note);
                holds &= key.Tonic + type.Degrees[place.Steps].ToInterval() == tone.Note;
            }
            if (holds) return mode;
        }
        return null;
    }

    private HarmonicFunction DiatonicFunction(ChordPlace place, Chord chord)
    {
        var number = place.Numeral.Number;
        if (number == 1) return HarmonicFunction.Tonic;
        if (ColorNote() is { } color && HasNote(chord, color)) return HarmonicFunction.ModalColor;
        return number switch
        {
            3 => HarmonicFunction.TonicSubstitute,
            5 when AboveTonic(chord.Root) == 7 => place.Numeral.IsSmall ? HarmonicFunction.MinorDominant : HarmonicFunction.Dominant,
            6 => key.HasMinorThird && !place.Numeral.IsSmall ? HarmonicFunction.Subdominant : HarmonicFunction.TonicSubstitute,
            7 => AboveTonic(chord.Root) == 11 ? HarmonicFunction.LeadingTone : HarmonicFunction.Subtonic,
            _ => HarmonicFunction.Subdominant,
        };
    }

    // The note by which a church mode differs from major or natural minor.
    private NoteName? ColorNote() => key.Mode switch
    {
        Mode.Dorian => key.NoteOf(6),
        Mode.Phrygian => key.NoteOf(2),
        Mode.Lydian => key.NoteOf(4),
        Mode.Mixolydian => key.NoteOf(7),
        _ => null,
    };

    // A degree other than the tonic whose own triad is major or minor, so that it can stand as a tonic for a moment.
    private bool CanBeGoal(NoteName root) => root.PitchClass != key.Tonic.PitchClass && key.Contains(root) && OwnFifthIsPerfect(root);

    private bool OwnFifthIsPerfect(NoteName root) => key.Contains(root + Interval.PerfectFifth);

    // The bare numeral of a goal: the triad that the key has there, or what the chord that follows says where the key's is diminished or foreign.
    // If that chord stands on the goal, it has the same numeral in both places.
    private RomanNumeral Bare(NoteName root, Chord? arrival)
    {
        root = arrival?.Root.PitchClass == root.PitchClass ? ReadInKey(arrival!).Root : Near(root, key.Fifths - 6, key.Fifths + 10);
        bool minor;
        if (key.Contains(root) && OwnFifthIsPerfect(root) && root != key.NoteOf(5)) minor = key.Contains(root + Interval.MinorThird);
        else if (arrival is not null) minor = arrival.Quality.Shape.IsMinor;
        else minor = key.Contains(root) && root != key.NoteOf(5);
        return RomanNumeral.FromChord(new Chord(root, ChordQualities.Row(minor ? "m" : "")), key);
    }
}
