using CsCheck;

namespace SheetPress.Theory.Tests;

/// <summary>Random values of the theory types.</summary>
internal static class Samples
{
    internal static readonly Gen<NoteName> NoteNames = Gen.Select(Gen.Int[0, 6], Gen.Int[-2, 2], (letter, alteration) => new NoteName((Letter)letter, alteration));

    internal static readonly Gen<Pitch> Pitches = Gen.Select(NoteNames, Gen.Int[0, 8], (name, octave) => new Pitch(name, octave));

    /// <summary>Up to two octaves either way, at most doubly augmented or diminished.</summary>
    internal static readonly Gen<Interval> Intervals = Gen.Select(Gen.Int[1, 15], Gen.Int[-2, 2], Gen.Bool, (number, alteration, down) =>
        down ? -Interval.FromNumber(number, alteration) : Interval.FromNumber(number, alteration));

    internal static readonly Gen<ChordQuality> Qualities = Gen.Int[0, ChordQualities.All.Length - 1].Select(i => ChordQualities.All[i]);

    internal static readonly Gen<Key> Keys = Gen.Select(Gen.Enum<Mode>(), Gen.Int[-7, 7], (mode, fifths) => KeyWith(mode, fifths));

    /// <summary>The key of a mode with a signature.</summary>
    internal static Key KeyWith(Mode mode, int fifths)
    {
        var offset = new Key(NoteName.Parse("D"), mode).Fifths - NoteName.Parse("D").Fifths;
        return new Key(NoteName.FromFifths(fifths - offset), mode);
    }
}
