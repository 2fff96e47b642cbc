using CsCheck;

namespace SheetPress.Theory.Tests;

public class PitchTests
{
    // MIDI 1.0: 60 is middle C. Open strings of bass and guitar: common practice.
    [Theory]
    [InlineData("C4", 60)]
    [InlineData("A4", 69)]
    [InlineData("E1", 28)]
    [InlineData("A1", 33)]
    [InlineData("D2", 38)]
    [InlineData("G2", 43)]
    [InlineData("B0", 23)]
    [InlineData("C3", 48)]
    [InlineData("E2", 40)]
    [InlineData("B#3", 60)]
    [InlineData("Cb4", 59)]
    [InlineData("C-1", 0)]
    [InlineData("G9", 127)]
    public void Midi_numbers(string pitch, int number) => Pitch.Parse(pitch).MidiNumber.ShouldBe(number);

    [Fact]
    public void Frequency_follows_equal_temperament()
    {
        // ISO 16:1975: A4 is 440 Hz; f = 440 * 2^((m-69)/12).
        Pitch.Parse("A4").Frequency.ShouldBe(440);
        Pitch.Parse("A3").Frequency.ShouldBe(220);
        // From memory: middle C is 261.626 Hz, the low E of a bass 41.203 Hz.
        Pitch.Parse("C4").Frequency.ShouldBe(261.626, 0.001);
        Pitch.Parse("E1").Frequency.ShouldBe(41.203, 0.001);
    }

    [Fact]
    public void Printing_then_reading_gives_the_same_pitch() =>
        Samples.Pitches.Sample(pitch => Pitch.Parse(pitch.ToString()).ShouldBe(pitch));

    [Fact]
    public void At_or_above_is_the_nearest() =>
        Gen.Select(Samples.NoteNames, Gen.Int[0, 127]).Sample((name, number) =>
        {
            var pitch = Pitch.AtOrAbove(name, number);
            pitch.Name.ShouldBe(name);
            pitch.MidiNumber.ShouldBeInRange(number, number + 11);
        });

    [Fact]
    public void Order_is_by_sound() =>
        Gen.Select(Samples.Pitches, Samples.Pitches).Sample((a, b) =>
        {
            if (a.MidiNumber < b.MidiNumber) (a < b && b > a && a <= b && !(a >= b)).ShouldBeTrue();
            (a.CompareTo(b) == 0).ShouldBe(a == b);
        });
}
