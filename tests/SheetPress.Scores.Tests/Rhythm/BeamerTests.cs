namespace SheetPress.Scores.Tests;

/// <summary>Beams by meter: [ begin, - continue, ] end, &gt; and &lt; hooks, one sign a level. Rules of the engraving handbooks (Read, Gould), from memory.</summary>
public class BeamerTests
{
    [Theory]
    // 4/4: eighths by the half bar, never over the middle; shorter values by the beat.
    [InlineData("4/4", "1/2 1/2 1/2 1/2 1/2 1/2 1/2 1/2", "8[ 8- 8- 8] 8[ 8- 8- 8]")]
    [InlineData("4/4", "1/2 1/2 1/4 1/4 1/2 2", "8[ 8] 16[[ 16-] 8] 2")]
    [InlineData("4/4", "1/4 1/4 1/4 1/4 1/4 1/4 1/4 1/4 2", "16[[ 16-- 16-- 16]] 16[[ 16-- 16-- 16]] 2")]
    [InlineData("4/4", "3/4 1/4 1/4 3/4 2", "8.[ 16]< 16[> 8.] 2")]
    [InlineData("4/4", "1/4 1/2 1/4 3", "16[> 8- 16]< 4 2")]
    [InlineData("4/4", "r1/2 1/2 1/2 1/2 2", "r8 8[ 8- 8] 2")]
    [InlineData("4/4", "3/2 1/2 1/2 3/2", "4. 8 8 4.")]
    [InlineData("4/4", "1/2 1 1 1 1/2", "8 4 8 8 4 8")]
    // A short rest inside a beat is bridged; an eighth rest is not.
    [InlineData("4/4", "1/4 r1/4 1/4 1/4 3", "16[[ r16 16-- 16]] 4 2")]
    [InlineData("4/4", "1/2 r1/2 1/2 1/2 2", "8 r8 8[ 8] 2")]
    // Thirty-seconds break their inner beams at the eighth.
    [InlineData("4/4", "1/8 1/8 1/8 1/8 1/8 1/8 1/8 1/8 3", "32[[[ 32--- 32--- 32-]] 32-[[ 32--- 32--- 32]]] 4 2")]
    [InlineData("2/4", "1/2 1/2 1/2 1/2", "8[ 8- 8- 8]")]
    [InlineData("2/2", "1/2 1/2 1/2 1/2 1/2 1/2 1/2 1/2", "8[ 8- 8- 8] 8[ 8- 8- 8]")]
    // 3/4: by the bar, from a beat to a beat; three eighths from an off-beat would look like 6/8.
    [InlineData("3/4", "1/2 1/2 1/2 1/2 1/2 1/2", "8[ 8- 8- 8- 8- 8]")]
    [InlineData("3/4", "1 1/2 1/2 1/2 1/2", "4 8[ 8- 8- 8]")]
    [InlineData("3/4", "3/2 1/2 1/2 1/2", "4. 8 8[ 8]")]
    [InlineData("3/4", "1/2 1/2 1/4 1/4 1/2 1", "8[ 8] 16[[ 16-] 8] 4")]
    // Compound and mixed meters: by the beat or the stated group.
    [InlineData("6/8", "1/2 1/2 1/2 1/2 1/2 1/2", "8[ 8- 8] 8[ 8- 8]")]
    [InlineData("6/8", "1/4 1/4 1/4 1/4 1/4 1/4 3/2", "16[[ 16-- 16-- 16-- 16-- 16]] 4.")]
    [InlineData("6/8", "3/4 1/4 1/2 3/2", "8.[ 16-< 8] 4.")]
    [InlineData("6/8", "1/2 1/4 3/4 3/2", "8[ 16-> 8.] 4.")]
    [InlineData("12/8", "1/2 1/2 1/2 1 1/2 3", "8[ 8- 8] 4 8 2.")]
    [InlineData("7/8", "1/2 1/2 1/2 1/2 1/2 1/2 1/2", "8[ 8] 8[ 8] 8[ 8- 8]")]
    [InlineData("7/8 3+2+2", "1/2 1/2 1/2 1/2 1/2 1/2 1/2", "8[ 8- 8] 8[ 8] 8[ 8]")]
    [InlineData("5/8", "1/2 1/2 1/2 1/2 1/2", "8[ 8- 8] 8[ 8]")]
    [InlineData("5/4", "1/2 1/2 1/2 1/2 1/2 1/2 1/2 1/2 1/2 1/2", "8[ 8- 8- 8- 8- 8] 8[ 8- 8- 8]")]
    [InlineData("8/8 3+3+2", "1/2 1/2 1/2 1/2 1/2 1/2 1/2 1/2", "8[ 8- 8] 8[ 8- 8] 8[ 8]")]
    // Tuplets beam as one.
    [InlineData("4/4", "1/3 1/3 1/3 1/2 1/2 2", "8[ 8- 8] 8[ 8] 2")]
    [InlineData("4/4", "1/3 r1/3 1/3 3", "8[ r8 8] 4 2")]
    [InlineData("4/4", "2/5 2/5 2/5 2/5 2/5 2", "8[ 8- 8- 8- 8] 2")]
    [InlineData("4/4", "1/2 1/6 1/6 1/6 3", "8[ 16-[ 16-- 16]] 4 2")]
    [InlineData("4/4", "1/6 1/6 1/6 1/6 1/6 1/6 3", "16[[ 16-- 16-- 16-- 16-- 16]] 4 2")]
    public void Beams_show_the_beat(string meter, string lengths, string expected)
    {
        var score = ScoreBuilder.Build(Lines.Header, [Lines.Measure(meter)], Lines.OnOnePitch(lengths));
        Lines.BeamText(score.Measures[0].Voices[0]).ShouldBe(expected);
    }
}
