using System.Collections.Immutable;
using SheetPress.Lessons;
using SheetPress.Theory;

namespace SheetPress.Publishing.Tests.Handouts;

public class TheoryNotesTests
{
    private const string Blues = "F7 | Bb7 | F7 | hold | Bb7 | same | F7 | D7 | Gm7 | C7 | F7 D7 | Gm7 C7";

    // A form has its choruses where parts of the progression begin and end; a pickup is bar 0.
    [Theory]
    [InlineData("F major", Blues, "Bars 1–12")]
    [InlineData("F major", "[pickup 1] C7 | " + Blues, "Bars 1–12")]
    [InlineData("F major", "|: " + Blues + " :|", "Bars 1–12")]
    [InlineData("F major", Blues + " | " + Blues, "Bars 1–12, 13–24")]
    [InlineData("F major", "Gm7 | C7 | Gm7 | C7 || [A] " + Blues + " || F7 | hold", "Bars 5–16")]
    [InlineData("F major", "|: F7 | hold | hold | hold | Bb7 | hold | F7 | hold | C7 | Bb7 | F7 |1. C7 :|2. F7 ||", "Bars 1–12")]
    [InlineData("G major", "G | C | D7 | G || [key F major] " + Blues, "Bars 5–16")]
    public void A_blues_is_named_with_its_bars(string key, string progression, string bars)
    {
        var notes = Notes(key, progression);
        notes[0].ShouldStartWith($"**{bars}:** A twelve-bar blues in F");
        notes.Count(n => n.Contains("twelve-bar", StringComparison.Ordinal)).ShouldBe(1);
    }

    [Theory]
    [InlineData("Gm7 | C7 | " + Blues)]
    [InlineData(Blues + " | F7")]
    [InlineData("F7 | Bb7 | F7 | hold | Bb7 | same | F7 | D7 || [key G major] Gm7 | C7 | F7 D7 | Gm7 C7")]
    public void Twelve_bars_that_are_no_part_are_no_form(string progression) =>
        Notes("F major", progression).ShouldNotContain(n => n.Contains("twelve-bar", StringComparison.Ordinal));

    [Fact]
    public void What_the_form_says_is_not_said_again()
    {
        var notes = Notes("F major", Blues);
        notes.Count(n => n.Contains("is a turnaround:", StringComparison.Ordinal)).ShouldBe(1);
        notes.ShouldContain(n => n.StartsWith("**Bars 11–12:** [F7] – [D7] – [Gm7] – [C7] is a turnaround:", StringComparison.Ordinal));
        notes.ShouldNotContain(n => n.Contains("The phrase stops", StringComparison.Ordinal));
    }

    // A pattern belongs to the key in which it ends.
    [Fact]
    public void After_a_change_of_key_the_new_one_rules()
    {
        var notes = Notes("C major", "Cmaj7 | Bb7 | [key Eb major] Ebmaj7 | Bb7 Ebmaj7");
        notes.ShouldContain(n => n.EndsWith("[Bb7] – [Ebmaj7] closes the phrase: dominant to tonic, the strongest way home.", StringComparison.Ordinal));
        notes.ShouldNotContain(n => n.Contains("is the dominant of", StringComparison.Ordinal));
    }

    [Fact]
    public void The_table_marks_notes_outside_the_key_in_force()
    {
        var rows = HarmonyRows.For(Read("C major", "Cmaj7 | Bb7 | [key Eb major] Ebmaj7 | D7"));
        rows.Select(r => string.Join(' ', r.ScaleNotes.Where(n => n.IsChanged).Select(n => n.Note))).ShouldBe(["", "", "", "F♯ A"]);
        // In every column alike: the line over the table speaks of all of it.
        rows.Select(r => string.Join(' ', r.Tones.Where(n => n.IsChanged).Select(n => n.Note))).ShouldBe(["", "", "", "F♯ A"]);
        rows.Select(r => string.Join(' ', r.GuideTones.Where(n => n.IsChanged).Select(n => n.Note))).ShouldBe(["", "", "", "F♯"]);
        rows[1].Function.ShouldBe("dominant of the new key, E♭ major");
    }

    [Fact]
    public void A_goal_counts_where_it_comes() =>
        Notes("C major", "Cmaj7 | A7 | A7 | Dm7 | Dm7 | Fmaj7").ShouldContain(n => n.StartsWith("**Bars 2–4:** [A7] is the dominant of [Dm7]", StringComparison.Ordinal));

    [Fact]
    public void A_kind_of_pattern_is_explained_once()
    {
        var notes = Notes("C major", "Cmaj7 | Fmaj7 | Am7 D7 | Gm7 C7 | Fmaj7 | Fm6 | Em7 A7 | Dm7 G7");
        notes.ShouldContain(n => n.StartsWith("**Bars 3–5:** From [Am7] to [Fmaj7], each root is a fourth above the one before: one string up", StringComparison.Ordinal));
        notes.ShouldContain("**Bars 7–8:** From [Em7] to [G7], the roots climb in fourths again.");
    }

    [Fact]
    public void A_cycle_that_comes_back_to_its_chord_says_so() =>
        Notes("C minor", "Cm7 | Fm7 | Bb7 | Ebmaj7 | Abmaj7 | Dm7b5 | G7 | Cm7").ShouldContain(n => n.Contains("From [Cm7] round to [Cm7] again, each root is a fourth", StringComparison.Ordinal));

    // Six notes are read: of more, those stay that explain something new.
    [Fact]
    public void What_is_new_is_kept_before_what_was_explained()
    {
        var notes = Notes("C major", "B7 | E7 | A7 | D7 | Fmaj7 | E7 | Am7 | Dm7 | Db7 | C6");
        notes.Length.ShouldBe(6);
        notes.ShouldContain(n => n.Contains("[Db7] slides down", StringComparison.Ordinal));
        notes[2].ShouldBe("**Bars 2–3:** [E7] is the dominant of [A7]: G♯ climbs to A, D falls to C♯.");
    }

    [Fact]
    public void A_chord_in_two_roles_has_two_rows()
    {
        var rows = HarmonyRows.For(Read("C minor", "Cm7 | Ab7 | G7 | Ab7 | Fm7 | Ab7 | G7"));
        rows.Where(r => r.Roman == "VI7").Select(r => $"{r.Measures}: {r.Function}").ShouldBe(["2, 6: tritone substitute, leads to [V]", "4: subdominant"]);
    }

    private static ImmutableArray<string> Notes(string key, string progression) => TheoryNotes.For(Read(key, progression));

    private static Progression Read(string key, string progression)
    {
        var bag = new DiagnosticBag(new SourceText("progression", progression));
        var read = ProgressionReader.Read(LocatedText.At(progression, 0), Key.Parse(key), MeterReader.Read(LocatedText.At("4/4", 0), bag)!, bag);
        bag.Items.ShouldBeEmpty();
        return read.ShouldNotBeNull();
    }
}
