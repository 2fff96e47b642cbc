namespace SheetPress.Engraving.Tests.Music.Planning;

/// <summary>Accidentals, after the engraving handbooks (Read 1979, Gould 2011), from memory.</summary>
public class AccidentalRulesTests
{
    /// <summary>Handbook rule, from memory: an accidental holds on its line or space to the barline; a reminder follows in the next bar.</summary>
    [Fact]
    public void An_accidental_holds_to_the_barline()
    {
        Drawn.Staff("C#2:1 C#2:1 D2:1 C#2:1").Names(MarkRole.Accidental).ShouldBe("accidentalSharp");
        Drawn.Staff("C#2:1 C2:1 C#2:2").Names(MarkRole.Accidental).ShouldBe("accidentalSharp accidentalNatural accidentalSharp");
        Drawn.Staff("C#2:4 | C2:4").Names(MarkRole.Accidental).ShouldBe("accidentalSharp accidentalNatural");
    }

    /// <summary>Handbook rule, from memory: at another octave an accidental does not hold, and is said again.</summary>
    [Fact]
    public void Another_octave_has_a_sign_of_its_own() =>
        Drawn.Staff("C#2:1 C#3:1 C2:1 C3:1").Names(MarkRole.Accidental).ShouldBe("accidentalSharp accidentalSharp accidentalNatural accidentalNatural");

    /// <summary>Handbook rule, from memory: a tied note needs no accidental over the barline.</summary>
    [Fact]
    public void A_tied_note_keeps_its_accidental_over_the_barline() => Drawn.Staff("r:3 Eb2:2 r:3").Names(MarkRole.Accidental).ShouldBe("accidentalFlat");

    /// <summary>Handbook rule, from memory: double sharps and double flats are signs of their own.</summary>
    [Fact]
    public void Double_accidentals_are_signs_of_their_own() =>
        Drawn.Staff("Fx1:1 Bbb1:1 D2:2").Names(MarkRole.Accidental).ShouldBe("accidentalDoubleSharp accidentalDoubleFlat");

    /// <summary>Handbook rule, from memory: accidentals that do not touch share one column, also where a ledger line keeps one of them further off.</summary>
    [Fact]
    public void Accidentals_far_above_each_other_share_a_column()
    {
        var signs = Drawn.Staff("A#1+C#3:2 Ab1+Cb3:2").Of(MarkRole.Accidental).GroupBy(m => m.Origin.Event).ToList();
        signs.Count.ShouldBe(2);
        foreach (var chord in signs) chord.Max(m => m.Bounds.Right).ShouldBe(chord.Min(m => m.Bounds.Right), 1e-6);
    }

    /// <summary>Handbook rule, from memory: accidentals of a chord are stacked from the outside in, and never touch each other or a head.</summary>
    [Theory]
    [InlineData("Ab3+C4+Eb4+Gb4:4")]
    [InlineData("A#3+C#4+E#4+G#4:4")]
    [InlineData("Eb3+F#3+Ab3+B#3+Db4:4")]
    [InlineData("C#4+D#4+E#4:4")]
    public void Accidentals_of_a_chord_do_not_touch(string chord)
    {
        var system = Drawn.Staff(chord, "guitar-6", "C major");
        var signs = system.Glyphs(MarkRole.Accidental);
        signs.Count.ShouldBeGreaterThan(2);
        var heads = system.Of(MarkRole.Notehead).Concat(system.Of(MarkRole.LedgerLine)).ToList();
        for (var i = 0; i < signs.Count; i++)
        {
            foreach (var box in InkCover.Of(signs[i]))
            {
                foreach (var other in signs.Skip(i + 1).SelectMany(s => InkCover.Of(s)).Concat(heads.Select(h => h.Bounds))) box.Overlaps(other).ShouldBeFalse(chord);
            }
        }
        // The highest sign is nearest to the heads.
        signs.MinBy(s => s.Position.Y)!.Bounds.Right.ShouldBe(signs.Max(s => s.Bounds.Right), 0.3);
    }

    /// <summary>Handbook rule, from memory: the signature of a key needs no accidentals, and a note against it has one.</summary>
    [Fact]
    public void The_signature_is_counted_in() => Drawn.Staff("Bb1:1 Eb2:1 B1:1 F2:1", key: "Bb major").Names(MarkRole.Accidental).ShouldBe("accidentalNatural");
}
