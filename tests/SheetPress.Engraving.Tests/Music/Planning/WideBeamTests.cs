using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Engraving.Tests;

/// <summary>
/// Notes under one beam that are more than two octaves apart. Handbook rule (from memory): no stem grows longer than needed; a
/// beam may lie between high and low notes, or end at the leap.
/// </summary>
public class WideBeamTests
{
    [Fact]
    public void A_beam_lies_between_notes_far_apart()
    {
        // Written an octave higher: E2 below the staff, G4 far above it.
        var marks = Marks("E1:1/2 G3:1/2 F1:1/2 A3:1/2 r:2");
        var (beam, heads) = (marks.Single(m => m.Role == MarkRole.Beam).Bounds, Heads(marks));
        heads.Count.ShouldBe(4);
        foreach (var (head, i) in heads.Select((h, i) => (h, i)))
        {
            if (i % 2 == 0) head.Top.ShouldBeGreaterThan(beam.Bottom);
            else head.Bottom.ShouldBeLessThan(beam.Top);
        }
        foreach (var stem in Stems(marks)) (stem.Bottom - stem.Top).ShouldBeInRange(2.5, 7);
    }

    [Fact]
    public void Stems_from_above_reach_the_last_of_several_beams()
    {
        var marks = Marks("E1:1/4 G3:1/4 E1:1/4 G3:1/4 r:3");
        var beams = marks.Where(m => m.Role == MarkRole.Beam).Select(m => m.Bounds).ToList();
        beams.Count.ShouldBe(2);
        var (top, bottom) = (beams.Min(b => b.Top), beams.Max(b => b.Bottom));
        foreach (var stem in Stems(marks))
        {
            stem.Top.ShouldBeLessThan(top + 0.2);
            stem.Bottom.ShouldBeGreaterThan(bottom - 0.2);
        }
    }

    [Fact]
    public void A_beam_between_the_notes_does_not_cross_ledger_lines()
    {
        // Between E2 in the staff and G4 lie nothing but the ledger lines of G4: the notes are parted instead.
        Marks("E2:1/2 G4:1/2 E2:1/2 G4:1/2 r:2").ShouldNotContain(m => m.Role == MarkRole.Beam);
    }

    [Fact]
    public void Two_octaves_keep_their_stems_on_one_side()
    {
        var marks = Marks("E2:1/2 E4:1/2 E2:1/2 E4:1/2 r:2");
        var beam = marks.Single(m => m.Role == MarkRole.Beam).Bounds;
        var heads = Heads(marks);
        (heads.TrueForAll(h => h.Top > beam.Bottom) || heads.TrueForAll(h => h.Bottom < beam.Top)).ShouldBeTrue();
    }

    [Fact]
    public void A_climb_over_three_octaves_with_no_gap_for_a_beam_is_broken_at_its_widest_leap()
    {
        // Leaps of an octave, a ninth and an octave.
        var marks = Marks("E1:1/4 E2:1/4 F3:1/4 F4:1/4 r:3");
        var beams = marks.Where(m => m.Role == MarkRole.Beam).Select(m => m.Bounds).ToList();
        var heads = Heads(marks);
        beams.ShouldAllBe(b => b.Right < heads[2].Left || b.Left > heads[1].Right);
        beams.Count.ShouldBe(4);
        foreach (var stem in Stems(marks)) (stem.Bottom - stem.Top).ShouldBeLessThan(8.5);
    }

    [Fact]
    public void A_note_cut_off_from_its_beam_gets_its_flag()
    {
        // Two leaps of a ninth.
        var marks = Marks("E1:1/2 F2:1/2 G3:1/2 r:1/2 r:2");
        marks.Count(m => m.Role == MarkRole.Flag).ShouldBe(1);
        marks.Count(m => m.Role == MarkRole.Beam).ShouldBe(1);
    }

    [Fact]
    public void Chords_of_more_than_two_octaves_keep_their_beam()
    {
        // Their stems are no longer under a beam than with a flag.
        var system = Drawn.Staff("F2+C3+F3+Ab3+C4+G4:1/2 F2+C3+F3+Ab3+C4+G4:1/2 F2+C3+F3+Ab3+C4+G4:1/2 r:3/2", "guitar-6", meter: "6/8");
        system.Of(MarkRole.Beam).Count.ShouldBe(1);
        system.Of(MarkRole.Flag).ShouldBeEmpty();
        SystemLint.Check(system, 1.75).ShouldBeEmpty();
    }

    [Fact]
    public void Parts_of_broken_beams_begin_and_end_at_every_level()
    {
        var score = ScoreText.Parse("E1:1/4 F2:1/8 F2:1/8 G3:1/4 G3:1/4 r:3", instrument: "bass-6", layout: StaffLayout.Staff);
        var voice = score.Measures[0].Voices[0];
        var steps = voice.Events.Select(e => e.Tones.Select(t => StaffSteps.Of(t.Pitch, Clef.Bass, score.Instrument)).ToImmutableArray()).ToImmutableArray();
        var broken = WideBeams.Break(voice, steps);
        broken.Events.ShouldNotBe(voice.Events);
        var open = new bool[4];
        foreach (var e in broken.Events)
        {
            for (var level = 0; level < e.Beams.Length; level++)
            {
                open[level].ShouldBe(e.Beams[level] is BeamState.Continue or BeamState.End);
                open[level] = e.Beams[level] is BeamState.Begin or BeamState.Continue;
            }
        }
        open.ShouldAllBe(o => !o);
    }

    private static List<Mark> Marks(string text)
    {
        var system = ScoreEngraver.Engrave(ScoreText.Parse(text, instrument: "bass-6", layout: StaffLayout.Staff), 90, new EngravingOptions()).Systems[0];
        SystemLint.Check(system, 1.75).ShouldBeEmpty();
        return [.. system.Drawing.Marks];
    }

    private static List<Box> Heads(List<Mark> marks) => [.. marks.Where(m => m.Role == MarkRole.Notehead).Select(m => m.Bounds).OrderBy(b => b.Left)];

    private static IEnumerable<Box> Stems(List<Mark> marks) => marks.Where(m => m.Role == MarkRole.Stem).Select(m => m.Bounds);
}
