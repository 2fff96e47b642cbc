using System.Collections.Immutable;

namespace SheetPress.Engraving.Tests;

public class ParagraphSetterTests
{
    private const string Words = "Play the root of each chord on the first beat and let it ring until the next one arrives; then add the fifth, and listen for the place where the line wants to fall instead of rise.";

    private static TextStyle Body => new PageStyle().Body;

    [Theory]
    [InlineData(40)]
    [InlineData(60)]
    [InlineData(83)]
    [InlineData(170)]
    public void No_line_is_wider_than_its_column(double width)
    {
        foreach (var edge in Enum.GetValues<ParagraphEdge>())
        {
            var lines = Set(Words, width, edge);
            lines.ShouldNotBeEmpty();
            foreach (var line in lines) Ink(line).Right.ShouldBeLessThanOrEqualTo(width + 0.05);
        }
    }

    // Common practice: a word that is cut ends with a hyphen and leaves more than a letter or two for the next line; an address is cut as it is.
    [Fact]
    public void A_word_longer_than_a_line_is_cut_with_a_hyphen()
    {
        var style = new PageStyle().Body;
        var words = Lines("Septakkordgriffwechselgeschwindigkeitsübung");
        words.Length.ShouldBeGreaterThan(2);
        words[..^1].ShouldAllBe(w => w.EndsWith('-'));
        words[^1].Length.ShouldBeGreaterThanOrEqualTo(3);
        string.Concat(words.Select(w => w.TrimEnd('-'))).ShouldBe("Septakkordgriffwechselgeschwindigkeitsübung");
        string.Concat(Lines("example.org/abcdefghijklmnopqrstuvwxyz")).ShouldBe("example.org/abcdefghijklmnopqrstuvwxyz");

        string[] Lines(string text) => [.. ParagraphSetter.Set([new TextInline(text)], style, 25).Select(l => string.Concat(l.Marks.OfType<TextMark>().Select(t => t.Run.Text)))];
    }

    // A sign after a space stands no nearer to the word before it than letters do, whichever way it comes into the line.
    [Theory]
    [InlineData(" ")]
    [InlineData("\u00A0")]
    public void The_space_before_a_sign_is_a_space(string space)
    {
        var letters = White([new TextInline("leads to" + space), new RomanInline("vii")]);
        White([new TextInline("leads to" + space), new RomanInline("bvii")]).ShouldBeGreaterThanOrEqualTo(letters - 0.02);
        White([new TextInline("leads to" + space), new DegreeInline(new(7, -1))]).ShouldBeGreaterThanOrEqualTo(letters - 0.02);
        White([new TextInline("leads to" + space + "♭7")]).ShouldBeGreaterThanOrEqualTo(letters - 0.02);

        static double White(ImmutableArray<Inline> text)
        {
            var marks = ParagraphSetter.Set(text, Body, 100).Single().Marks;
            return marks[1].Bounds.Left - marks[0].Bounds.Right;
        }
    }

    [Fact]
    public void Justified_lines_but_the_last_end_level_where_words_allow_it()
    {
        var lines = Set(Words, 83, ParagraphEdge.Justified);
        lines.Length.ShouldBeGreaterThan(2);
        foreach (var line in lines[..^1]) line.Width.ShouldBe(83, 0.01);
        lines[^1].Width.ShouldBeLessThan(83);
    }

    [Fact]
    public void A_justified_line_is_left_ragged_rather_than_torn_apart()
    {
        // Two words that fill half of the line: their space would have to grow many times over.
        var lines = Set("unreasonably extraordinarily-long_unbreakable_word_that_fills_a_line", 50, ParagraphEdge.Justified);
        lines.Length.ShouldBeGreaterThan(1);
        lines[0].Width.ShouldBeLessThan(50);
    }

    [Fact]
    public void Every_word_is_set_once_and_in_order()
    {
        var text = string.Concat(Set(Words, 55, ParagraphEdge.Ragged).SelectMany(l => l.Marks.OfType<TextMark>()).Select(m => m.Run.Text));
        text.ShouldBe(Words);
    }

    [Fact]
    public void Words_of_a_line_are_one_run_with_every_glyph_in_its_place()
    {
        var line = Set("one two, three", 200, ParagraphEdge.Ragged).ShouldHaveSingleItem();
        var mark = line.Marks.ShouldHaveSingleItem().ShouldBeOfType<TextMark>();
        mark.Run.Text.ShouldBe("one two, three");
        var whole = TextShaper.Run("one two, three", Body.Upright);
        mark.Run.Glyphs.Select(g => (g.GlyphId, g.Cluster, Math.Round(g.X, 4))).ShouldBe(whole.Glyphs.Select(g => (g.GlyphId, g.Cluster, Math.Round(g.X, 4))));
        mark.Run.Advance.ShouldBe(whole.Advance, 1e-6);
    }

    [Fact]
    public void A_word_wider_than_the_column_is_cut()
    {
        var lines = Set(new string('m', 60), 30, ParagraphEdge.Ragged);
        lines.Length.ShouldBeGreaterThan(2);
        foreach (var line in lines) line.Width.ShouldBeLessThanOrEqualTo(30.01);
    }

    [Fact]
    public void A_tempo_is_never_parted_from_its_note()
    {
        for (var width = 12.0; width < 40; width += 1)
        {
            foreach (var line in Set("at a tempo of ♩ = 92 or so", width, ParagraphEdge.Ragged))
            {
                var hasNote = line.Marks.OfType<GlyphMark>().Any();
                var hasNumber = line.Marks.OfType<TextMark>().Any(m => m.Run.Text.Contains("92", StringComparison.Ordinal));
                hasNote.ShouldBe(hasNumber);
            }
        }
    }

    // Common practice: a number stays with the word that it counts, and a line that begins with "3." reads like the item of a list.
    [Fact]
    public void A_number_stays_with_its_word()
    {
        for (var width = 45.0; width < 90; width += 0.5)
        {
            var lines = Texts("There are two roots to find: one on beat 1, one on beat 3. Everything between lies from fret 5 to fret 12.", width);
            foreach (var line in lines) char.IsAsciiDigit(line[0]).ShouldBeFalse($"{width}: {line}");
        }
    }

    // Common practice: the name of a key is not parted, and a line that ends with "A" reads as if the article stood there.
    [Fact]
    public void The_name_of_a_key_stays_in_one_line()
    {
        for (var width = 45.0; width < 90; width += 0.5)
        {
            var lines = Texts("A twelve-bar blues in A minor: play the notes of B♭ harmonic minor over C♯ and in F♯ major, then D Dorian, and then go on.", width);
            foreach (var line in lines) line.Split(' ')[^1].ShouldNotBeOneOf("A", "B♭", "F♯", "D");
        }
    }

    // Common practice: no last line of one short word.
    [Fact]
    public void A_short_word_is_not_left_alone_in_the_last_line()
    {
        var together = 0;
        for (var width = 50.0; width < 90; width += 0.5)
        {
            var lines = Texts("First pass: play and sing the roots, nothing else.", width);
            if (lines.Length < 2) continue;
            lines[^1].ShouldNotBe("else.", $"{width}: {string.Join(" | ", lines)}");
            if (lines[^1] == "nothing else.") together++;
        }
        together.ShouldBeGreaterThan(0);
    }

    // Common practice in French (spaces before double signs and within quotation marks) and of the SI (a space before the per cent sign).
    [Fact]
    public void Signs_that_close_something_begin_no_line_and_those_that_open_end_none()
    {
        for (var width = 12.0; width < 60; width += 0.5)
        {
            var lines = Texts("Jouez : « la basse est libre » ! Trop vite ? Alors 50 % moins vite ; et encore – toujours – plus lent.", width);
            foreach (var line in lines) ":;!?»%–".Contains(line[0], StringComparison.Ordinal).ShouldBeFalse($"{width}: {line}");
            foreach (var line in lines) line.ShouldNotEndWith("«");
        }
    }

    // From memory of JIS X 4051: small kana, the sign of a long vowel and closing punctuation begin no line, opening brackets end none.
    [Fact]
    public void Japanese_breaks_after_its_punctuation_and_not_before()
    {
        var ended = new HashSet<char>();
        for (var width = 20.0; width < 60; width += 0.5)
        {
            var lines = Texts("ゆっくり弾いてから、「ベース」は左手で、ちょっとだけ速くしてください。そして、もう一度。", width);
            foreach (var line in lines) "、。」っょー".Contains(line[0], StringComparison.Ordinal).ShouldBeFalse($"{width}: {line}");
            foreach (var line in lines) line.ShouldNotEndWith("「");
            foreach (var line in lines[..^1]) ended.Add(line[^1]);
        }
        ended.ShouldContain('、');
        ended.ShouldContain('。');
    }

    [Fact]
    public void Words_that_run_to_the_left_stand_in_their_own_order()
    {
        // Unicode Bidirectional Algorithm (UAX 9): a run of right-to-left words is laid out from right to left.
        var line = Set("one שלום עולם two", 200, ParagraphEdge.Ragged).ShouldHaveSingleItem();
        var x = line.Marks.OfType<TextMark>().ToDictionary(m => m.Run.Text.Trim(), m => m.Position.X);
        x["one"].ShouldBeLessThan(x["עולם"]);
        x["עולם"].ShouldBeLessThan(x["שלום"]);
        x["שלום"].ShouldBeLessThan(x["two"]);
    }

    [Fact]
    public void An_underline_runs_on_between_the_words_of_a_link()
    {
        var link = new TextInline("two words") { Link = "https://example.org" };
        var line = ParagraphSetter.Set([new TextInline("see "), link, new TextInline(" here")], Body, 200).ShouldHaveSingleItem();
        line.Marks.OfType<LineMark>().ShouldHaveSingleItem();
        line.Marks.OfType<TextMark>().Where(m => m.Link is not null).ShouldHaveSingleItem().Run.Text.ShouldBe("two words");
    }

    [Fact]
    public void Least_width_is_that_of_the_widest_word_and_natural_width_that_of_the_line()
    {
        ImmutableArray<Inline> text = [new TextInline("a remarkable line")];
        ParagraphSetter.LeastWidth(text, Body).ShouldBe(TextSetter.Measure("remarkable", Body.Upright, Body.Size), 1e-6);
        ParagraphSetter.Set(text, Body, ParagraphSetter.NaturalWidth(text, Body)).Length.ShouldBe(1);
        ParagraphSetter.Set(text, Body, ParagraphSetter.NaturalWidth(text, Body) - 0.1).Length.ShouldBe(2);
    }

    private static string[] Texts(string text, double width) =>
        [.. Set(text, width, ParagraphEdge.Ragged).Select(l => string.Concat(l.Marks.OfType<TextMark>().OrderBy(t => t.Position.X).Select(t => t.Run.Text)).Trim())];

    [Fact]
    public void Degrees_in_a_row_stand_farther_apart_than_words()
    {
        var marks = ParagraphSetter.Set(MusicMarkup.Read("{5 b7}"), Body, 100).Single().Marks;
        var flat = marks.OfType<GlyphMark>().ShouldHaveSingleItem().Bounds;
        (flat.Left - marks[0].Bounds.Right).ShouldBeGreaterThan(1.8 * TextSetter.Measure(" ", Body.Upright, Body.Size));
    }

    private static ImmutableArray<SetLine> Set(string text, double width, ParagraphEdge edge) => ParagraphSetter.Set([new TextInline(text)], Body, width, edge);

    private static Box Ink(SetLine line) => new Drawing(line.Marks).Bounds;
}
