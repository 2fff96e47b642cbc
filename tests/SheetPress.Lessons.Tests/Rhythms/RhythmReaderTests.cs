using CsCheck;
using SheetPress.Scores;

namespace SheetPress.Lessons.Tests;

public class RhythmReaderTests
{
    private static Meter MeterOf(string text) => MeterReader.Read(LocatedText.At(text, 0), new DiagnosticBag(new SourceText("", "")))!;

    private static string Read(string written, string meter, bool counted)
    {
        var source = new SourceText("test.yaml", written);
        var bag = new DiagnosticBag(source);
        var text = LocatedText.At(written, 0);
        var pattern = counted ? RhythmReader.ReadCounts(text, MeterOf(meter), bag) : RhythmReader.ReadValues(text, MeterOf(meter), bag);
        bag.Items.Select(DiagnosticPrinter.Print).ShouldBeEmpty();
        CheckWhole(pattern.ShouldNotBeNull());
        return string.Join(' ', pattern.Cells.Select(Describe));
    }

    private static void CheckWhole(RhythmPattern pattern)
    {
        var at = Fraction.Zero;
        foreach (var cell in pattern.Cells)
        {
            cell.Start.ShouldBe(at);
            cell.Duration.ShouldBeGreaterThan(Fraction.Zero);
            at = cell.End;
        }
        at.ShouldBe(pattern.Length);
    }

    private static string Describe(RhythmCell cell)
    {
        var text = (cell.IsRest ? "-" : "") + cell.Duration;
        if (cell.Marks.Articulations != Articulations.None) text += $":{cell.Marks.Articulations}";
        if (cell.Marks.Stroke != Stroke.None) text += $":{cell.Marks.Stroke}";
        if (cell.Marks.Head != Notehead.Normal) text += $":{cell.Marks.Head}";
        return cell.Marks.Connection == Connection.None ? text : text + $":{cell.Marks.Connection}";
    }

    // Lengths in quarter notes: common practice of note values.
    [Theory]
    [InlineData("4/4", "quarters", "1")]
    [InlineData("4/4", "quarter notes", "1")]
    [InlineData("4/4", "eighths", "1/2")]
    [InlineData("4/4", "sixteenths", "1/4")]
    [InlineData("4/4", "halves", "2")]
    [InlineData("4/4", "wholes", "4")]
    [InlineData("6/8", "dotted quarters", "3/2")]
    [InlineData("3/4", "dotted halves", "3")]
    [InlineData("4/4", "triplets", "1/3 1/3 1/3")]
    [InlineData("4/4", "eighth triplets", "1/3 1/3 1/3")]
    [InlineData("4/4", "triplet eighths", "1/3 1/3 1/3")]
    [InlineData("4/4", "quarter triplets", "2/3 2/3 2/3")]
    [InlineData("4/4", "eighths:staccato", "1/2:Staccato")]
    [InlineData("4/4", "q3 q3 e3in3 re3in3 e3in3 h", "2/3 2/3 2/9 -2/9 2/9 2")]
    [InlineData("4/4", "q q e e q", "1 1 1/2 1/2 1")]
    [InlineData("4/4", "q. e h", "3/2 1/2 2")]
    [InlineData("4/4", "h.. e", "7/2 1/2")]
    [InlineData("4/4", "q rq q re e", "1 -1 1 -1/2 1/2")]
    [InlineData("4/4", "q, q, h", "1 1 2")]
    [InlineData("4/4", "e3 e3 e3 q h", "1/3 1/3 1/3 1 2")]
    [InlineData("4/4", "q3 q3 q3 h", "2/3 2/3 2/3 2")]
    [InlineData("4/4", "q3 e3 q h", "2/3 1/3 1 2")]
    [InlineData("4/4", "s5 s5 s5 s5 s5 q h", "1/5 1/5 1/5 1/5 1/5 1 2")]
    [InlineData("4/4", "s6 s6 s6 s6 s6 s6 q h", "1/6 1/6 1/6 1/6 1/6 1/6 1 2")]
    [InlineData("6/8", "e2 e2 q.", "3/4 3/4 3/2")]
    [InlineData("4/4", "q + e e h", "3/2 1/2 2")]
    [InlineData("4/4", "q+e e h", "3/2 1/2 2")]
    [InlineData("4/4", "h q e e + | e e q h", "2 1 1/2 1 1/2 1 2")]
    [InlineData("4/4", "half, quarter, 2 eighths", "2 1 1/2 1/2")]
    [InlineData("4/4", "dotted quarter eighth half", "3/2 1/2 2")]
    [InlineData("4/4", "dotted half, quarter rest", "3 -1")]
    [InlineData("4/4", "double-dotted half eighth", "7/2 1/2")]
    [InlineData("4/4", "3 triplet eighths, quarter, half", "1/3 1/3 1/3 1 2")]
    [InlineData("4/4", "triplet quarter, triplet eighth, dotted half", "2/3 1/3 3")]
    [InlineData("4/4", "quarter, 3 eighth triplets, half", "1 1/3 1/3 1/3 2")]
    [InlineData("4/4", "half, quarter, triplet eighth, triplet eighth rest, triplet eighth", "2 1 1/3 -1/3 1/3")]
    [InlineData("4/4", "half rest half", "-2 2")]
    [InlineData("4/4", "whole", "4")]
    [InlineData("4/4", "h", "2")]
    [InlineData("4/4", "q e e", "1 1/2 1/2")]
    [InlineData("3/4", "h q", "2 1")]
    [InlineData("6/8", "q e q e", "1 1/2 1 1/2")]
    [InlineData("5/4", "h. h", "3 2")]
    [InlineData("7/8", "q q q.", "1 1 3/2")]
    [InlineData("4/4", "h. + h. h", "6 2")]
    [InlineData("4/4", "| q q h | w |", "1 1 2 4")]
    [InlineData("4/4", "s:thumb s:dead e:pop:accent q h", "1/4:Thumb 1/4:Dead 1/2:Accent:Pop 1 2")]
    [InlineData("4/4", "e:hammer e e:pull e e:slide e q", "1/2:HammerOn 1/2 1/2:PullOff 1/2 1/2:Slide 1/2 1")]
    [InlineData("4/4", "quarter:ghost 3 quarters:mute", "1:Ghost 1:PalmMute 1:PalmMute 1:PalmMute")]
    public void Reads_note_values(string meter, string written, string expected) => Read(written, meter, counted: false).ShouldBe(expected);

    // Syllables as they are taught: 1 e & a, 1 trip let, 1 la li (Eastman), numbers an eighth in odd meters. Common practice.
    [Theory]
    [InlineData("4/4", "1 2 3 4", "1 1 1 1")]
    [InlineData("4/4", "1 & 2 & 3 & 4 &", "1/2 1/2 1/2 1/2 1/2 1/2 1/2 1/2")]
    [InlineData("4/4", "1 and 2 + 3", "1/2 1/2 1/2 1/2 2")]
    [InlineData("4/4", "1 & 2 & 3 e & a 4", "1/2 1/2 1/2 1/2 1/4 1/4 1/4 1/4 1")]
    [InlineData("4/4", "1 a 2 & 3 4", "3/4 1/4 1/2 1/2 1 1")]
    [InlineData("4/4", "1 e & 2", "1/4 1/4 1/2 3")]
    [InlineData("4/4", "1 (2) 3 4", "1 -1 1 1")]
    [InlineData("4/4", "1 & 2 & (3) & 4 &", "1/2 1/2 1/2 1/2 -1/2 1/2 1/2 1/2")]
    [InlineData("4/4", "1 & & 4", "1/2 1 3/2 1")]
    [InlineData("4/4", "2 4", "-1 2 1")]
    [InlineData("4/4", "& 2", "-1/2 1/2 3")]
    [InlineData("4/4", "1 trip let 2 3 trip let 4", "1/3 1/3 1/3 1 1/3 1/3 1/3 1")]
    [InlineData("2/4", "1 trip let & trip let 2", "1/6 1/6 1/6 1/6 1/6 1/6 1")]
    [InlineData("2/4", "1 & trip let 2 (trip) let and", "1/2 1/6 1/6 1/6 1/6 -1/6 1/6 1/2")]
    [InlineData("2/4", "1 e & let 2", "1/4 1/4 1/3 1/6 1")]
    [InlineData("2/4", "1 ta trip ta let ta 2", "1/6 1/6 1/6 1/6 1/6 1/6 1")]
    [InlineData("4/4", "1 trip let 2 & 3 trip:ghost & 4", "1/3 1/3 1/3 1/2 1/2 1/6 1/3:Ghost 1/2 1")]
    [InlineData("4/4", "1 let 2 let 3 4", "2/3 1/3 2/3 1/3 1 1")]
    [InlineData("4/4", "1 3 | 1", "2 2 4")]
    [InlineData("4/4", "1 3 1 2", "2 2 1 3")]
    [InlineData("4/4", "1 2 3 4 & | (1) & 2", "1 1 1 1/2 1/2 -1/2 1/2 3")]
    [InlineData("4/4", "1 2 3 4 & | 2 3 4", "1 1 1 1/2 3/2 1 1 1")]
    [InlineData("4/4", "1:thumb & 2:ghost:accent &", "1/2:Thumb 1/2 1/2:Accent:Ghost 5/2")]
    [InlineData("3/4", "1 & 2 3", "1/2 1/2 1 1")]
    [InlineData("2/2", "1 & 2 e &", "1 1 1/2 1/2 1")]
    [InlineData("6/8", "1 la li 2 la li", "1/2 1/2 1/2 1/2 1/2 1/2")]
    [InlineData("6/8", "1 & a 2", "1/2 1/2 1/2 3/2")]
    [InlineData("6/8", "1 2 3 4 5 6", "1/2 1/2 1/2 1/2 1/2 1/2")]
    [InlineData("6/8", "1 3 4 6", "1 1/2 1 1/2")]
    [InlineData("6/8", "1 ta la li ta 2", "1/4 1/4 1/2 1/4 1/4 3/2")]
    [InlineData("6/8", "1 trip let la trip let li trip let 2", "1/6 1/6 1/6 1/6 1/6 1/6 1/6 1/6 1/6 3/2")]
    [InlineData("6/8", "1 la trip let li 2 trip let", "1/2 1/6 1/6 1/6 1/2 1/2 1/2 1/2")]
    [InlineData("6/8", "1 (la) trip let li ta 2", "1/2 -1/6 1/6 1/6 1/4 1/4 3/2")]
    [InlineData("6/8", "1 a trip let 2 & trip let", "1 1/6 1/6 1/6 1/2 1/6 1/6 2/3")]
    [InlineData("12/8", "1 li 2 li 3 li 4", "1 1/2 1 1/2 1 1/2 3/2")]
    [InlineData("7/8", "1 3 5", "1 1 3/2")]
    [InlineData("7/8", "1 2 & 3 4 5 6 7", "1/2 1/4 1/4 1/2 1/2 1/2 1/2 1/2")]
    [InlineData("5/4", "1 2 3 4 5", "1 1 1 1 1")]
    public void Reads_counts(string meter, string written, string expected) => Read(written, meter, counted: true).ShouldBe(expected);

    [Fact]
    public void Keeps_the_syllables()
    {
        var bag = new DiagnosticBag(new SourceText("", ""));
        var pattern = RhythmReader.ReadCounts(LocatedText.At("1 AND (2) 3 e", 0), new Meter(4, 4), bag)!;
        pattern.Cells.Select(c => c.Count).ShouldBe(["1", "&", "2", "3", "e"]);
    }

    [Theory]
    [InlineData("4/4", 16, "1 e & a 2 e & a 3 e & a 4 e & a")]
    [InlineData("3/4", 6, "1 & 2 & 3 &")]
    [InlineData("6/8", 6, "1 la li 2 la li")]
    [InlineData("6/8", 12, "1 ta la ta li ta 2 ta la ta li ta")]
    [InlineData("4/4", 12, "1 trip let 2 trip let 3 trip let 4 trip let")]
    [InlineData("7/8", 7, "1 2 3 4 5 6 7")]
    [InlineData("2/2", 8, "1 e & a 2 e & a")]
    public void Counts_any_meter_and_reads_its_own_counting(string meter, int strokes, string expected)
    {
        var step = MeterOf(meter).MeasureLength / strokes;
        var syllables = string.Join(' ', Enumerable.Range(0, strokes).Select(n => Counting.SyllableAt(MeterOf(meter), step * n)));
        syllables.ShouldBe(expected);
        Read(syllables, meter, counted: true).ShouldBe(string.Join(' ', Enumerable.Repeat(step.ToString(), strokes)));
    }

    [Fact]
    public void Marks_go_round_and_skip_rests()
    {
        var bag = new DiagnosticBag(new SourceText("", ""));
        var pattern = RhythmReader.ReadValues(LocatedText.At("q rq q q", 0), new Meter(4, 4), bag)!;
        var marked = pattern.WithMarks([new(Stroke: Stroke.Thumb), new(Stroke: Stroke.Pop)]);
        marked.Length.ShouldBe(new Fraction(8));
        string.Join(' ', marked.Cells.Select(Describe)).ShouldBe("1:Thumb -1 1:Pop 1:Thumb 1:Pop -1 1:Thumb 1:Pop");
        CheckWhole(marked);
    }

    [Fact]
    public void Every_mark_word_is_read_and_marks_something_of_its_own()
    {
        var bag = new DiagnosticBag(new SourceText("", ""));
        foreach (var (word, marks) in MarkWords.All) MarkWords.Read(LocatedText.At(word, 0), bag).ShouldBe(marks);
        bag.Items.ShouldBeEmpty();
        MarkWords.All.Select(m => m.Marks).Distinct().Count().ShouldBe(MarkWords.All.Count);
    }

    [Fact]
    public void Values_that_fill_bars_are_read_back_as_they_were_chosen()
    {
        // Any values whose sum is a whole number of bars make a pattern of just these lengths.
        var letters = new (string Text, Fraction Length)[] { ("w", 4), ("h", 2), ("h.", 3), ("q", 1), ("q.", new(3, 2)), ("e", new(1, 2)), ("e.", new(3, 4)), ("s", new(1, 4)), ("t", new(1, 8)) };
        Gen.Int[0, letters.Length - 1].Array[1, 12].Sample(picks =>
        {
            var sum = picks.Aggregate(Fraction.Zero, (s, p) => s + letters[p].Length);
            var written = string.Join(' ', picks.Select(p => letters[p].Text));
            var rest = new Fraction((sum / 4).Floor + 1) * 4 - sum;
            for (var unit = new Fraction(1, 8); rest > Fraction.Zero; rest -= unit) written += " t";
            var bag = new DiagnosticBag(new SourceText("", ""));
            var pattern = RhythmReader.ReadValues(LocatedText.At(written, 0), new Meter(4, 4), bag).ShouldNotBeNull();
            pattern.Cells.Take(picks.Length).Select(c => c.Duration).ShouldBe(picks.Select(p => letters[p].Length));
            CheckWhole(pattern);
        });
    }
}
