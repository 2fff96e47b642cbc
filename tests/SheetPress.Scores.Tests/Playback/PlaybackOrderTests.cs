using CsCheck;

namespace SheetPress.Scores.Tests;

/// <summary>
/// Forms are written as letters, a measure each, with signs: "|:" and ":|" repeats (":|3" three times), "1[" to "]" endings, "$" segno,
/// "@" coda, then after a letter "!to" To Coda, "!fine", "!dc", "!ds" with "-fine" or "-coda". The order is common practice.
/// </summary>
public class PlaybackOrderTests
{
    [Theory]
    [InlineData("A B C", "ABC")]
    [InlineData("A B :| C", "ABABC")]
    [InlineData("A |: B C :| D", "ABCBCD")]
    [InlineData("A |: B :|3 C", "ABBBC")]
    [InlineData("A :| B :| C", "AABBC")]
    [InlineData("|: A 1[ B ] :| 2[ C ] D", "ABACD")]
    [InlineData("|: A 1[ B C ] :| 2[ D E ]", "ABCADE")]
    [InlineData("|: A 1,2[ B ] :| 3[ C ] D", "ABABACD")]
    [InlineData("|: A 1[ B ] :| 2[ C ] :| 3[ D ] E", "ABACADE")]
    // Only the first ending is bracketed.
    [InlineData("|: A 1[ B ] :| C D", "ABACD")]
    // A new section after the endings.
    [InlineData("|: A 1[ B ] :| 2[ C ] D :| E", "ABACDDE")]
    [InlineData("|: A 1[ B ] :| 2[ C ] |: D 1[ E ] :| 2[ F ]", "ABACDEDF")]
    // Jumps.
    [InlineData("A B!fine C D!dc-fine", "ABCDAB")]
    [InlineData("A $ B C!fine D!ds-fine E", "ABCDBC")]
    [InlineData("A B!to C D!dc-coda @ E F", "ABCDABEF")]
    [InlineData("A $ B C!to D!ds-coda @ E", "ABCDBCE")]
    [InlineData("A B!dc C", "ABABC")]
    // Repeats are not taken after a jump, and the last ending is played; in the coda they count again.
    [InlineData("|: A B :| C!fine D!dc-fine", "ABABCDABC")]
    [InlineData("|: A 1[ B ] :| 2[ C!fine ] D!dc-fine", "ABACDAC")]
    [InlineData("A!to B!dc-coda @ |: C :| D", "ABACCD")]
    // The repeat comes before the jump in the same measure.
    [InlineData("A!fine |: B!dc-fine :| C", "ABBA")]
    // A sign that leads nowhere is passed over.
    [InlineData("A B!ds C", "ABC")]
    [InlineData("A B!to C!dc-coda", "ABCABC")]
    [InlineData("A B!dc-coda @ C", "ABABC")]
    [InlineData("A B!dc-fine C", "ABABC")]
    [InlineData("A B!fine C", "ABC")]
    [InlineData("A B!to C @ D", "ABCD")]
    [InlineData("A B!ds C $ D", "ABCD")]
    [InlineData("A @ B C!to D!dc-coda", "ABCDABCD")]
    // Of several signs, the last segno before the jump and the next coda.
    [InlineData("$ A B!ds $ C D!ds E", "ABABCDCDE")]
    [InlineData("A!to B!dc-coda @ C $ D!to E!ds-coda @ F", "ABACDEDF")]
    // An ending that no pass reaches is passed over; a form that would be silent is played as written.
    [InlineData("2[ A ] B", "B")]
    [InlineData("2[ A ]", "A")]
    public void Follows_the_signs(string form, string expected)
    {
        var (score, names) = ScoreOf(form);
        string.Concat(PlaybackOrder.Of(score).Select(i => names[i])).ShouldBe(expected);
    }

    [Fact]
    public void Never_runs_for_ever()
    {
        string[] signs = ["A", "|:", ":|", ":|9999999", "1[", "2[", "]", "$", "@", "A!to", "A!fine", "A!dc", "A!ds-coda", "A!dc-fine", "A!ds"];
        Gen.Int[0, signs.Length - 1].Array[1, 14].Sample(picks =>
        {
            var (score, _) = ScoreOf("A " + string.Join(' ', picks.Select(p => signs[p])));
            var order = PlaybackOrder.Of(score);
            order.Length.ShouldBeInRange(1, PlaybackOrder.MostMeasures);
            order.ShouldAllBe(i => i >= 0 && i < score.Measures.Length);
        }, iter: 500);
    }

    private static (Score Score, List<char> Names) ScoreOf(string form)
    {
        var frame = new List<FrameMeasure>();
        var names = new List<char>();
        var next = Lines.Measure("4/4");
        foreach (var word in form.Split(' '))
        {
            if (word == "|:") next = next with { RepeatStart = true };
            else if (word.StartsWith(":|", StringComparison.Ordinal)) frame[^1] = frame[^1] with { RepeatEndTimes = word.Length > 2 ? int.Parse(word[2..]) : 2 };
            else if (word.EndsWith('[')) next = next with { EndingStart = [.. word[..^1].Split(',').Select(int.Parse)] };
            else if (word == "]") frame[^1] = frame[^1] with { EndingStop = true };
            else if (word == "$") next = next with { Directions = [new Direction(0, DirectionKind.Segno)] };
            else if (word == "@") next = next with { Directions = [new Direction(0, DirectionKind.Coda)] };
            else
            {
                names.Add(word[0]);
                frame.Add(word.Length == 1 ? next : next with { Directions = next.Directions.Add(SignOf(word[2..])) });
                next = Lines.Measure("4/4");
            }
        }
        return (ScoreBuilder.Build(Lines.Header, frame, new Line([], 0)), names);
    }

    private static Direction SignOf(string sign) => sign switch
    {
        "to" => new(4, DirectionKind.ToCoda),
        "fine" => new(4, DirectionKind.Fine),
        "dc" => new(4, DirectionKind.DaCapo, "D.C."),
        "ds" => new(4, DirectionKind.DalSegno, "D.S."),
        "dc-fine" => new(4, DirectionKind.DaCapo, "D.C. al Fine"),
        "dc-coda" => new(4, DirectionKind.DaCapo, "D.C. al Coda"),
        "ds-fine" => new(4, DirectionKind.DalSegno, "D.S. al Fine"),
        _ => new(4, DirectionKind.DalSegno, "D.S. al Coda"),
    };
}
