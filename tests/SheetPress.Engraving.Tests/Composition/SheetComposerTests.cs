using SheetPress.Theory;

namespace SheetPress.Engraving.Tests;

public class SheetComposerTests
{
    private const string LongNotes = """
        # Before you start

        Some words of advice, with a [Cm7] and a list:

        1. first
           - nested
        2. second

        > Quiet is quicker.

        | Bar | Chord |
        |:--|:--|
        | 1 | [Cm7] |
        | 2 | [Fm7] |
        """;

    public static TheoryData<string, int, int, int, int> Shapes => new()
    {
        { "a4", 0, 0, 0, 0 },
        { "a4", 7, 3, 2, 5 },
        { "letter", 7, 3, 2, 5 },
        { "a4", 40, 12, 9, 30 },
        { "letter", 40, 40, 1, 60 },
    };

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Nothing_is_outside_the_margins(string paper, int chords, int paragraphs, int diagrams, int rows)
    {
        var style = Style(paper);
        foreach (var page in Compose(style, chords, paragraphs, diagrams, rows).Pages)
        {
            var ink = page.Drawing.Bounds;
            ink.Left.ShouldBeGreaterThanOrEqualTo(15);
            ink.Top.ShouldBeGreaterThanOrEqualTo(15);
            ink.Right.ShouldBeLessThanOrEqualTo(page.Width - 15);
            ink.Bottom.ShouldBeLessThanOrEqualTo(page.Height - 15);
            ink.Left.ShouldBeGreaterThanOrEqualTo(style.SideMargin - 0.2);
            ink.Right.ShouldBeLessThanOrEqualTo(page.Width - style.SideMargin + 0.2);
        }
    }

    [Theory]
    [MemberData(nameof(Shapes))]
    public void No_text_is_below_seven_points_and_there_are_four_sizes_of_it(string paper, int chords, int paragraphs, int diagrams, int rows)
    {
        var sizes = new SortedSet<double>();
        foreach (var text in Compose(Style(paper), chords, paragraphs, diagrams, rows).Pages.SelectMany(p => p.Drawing.Marks).OfType<TextMark>())
        {
            text.Size.ShouldBeGreaterThanOrEqualTo(TextStyle.SmallestSize - 1e-9);
            if (text.Role is MarkRole.BodyText or MarkRole.Title) sizes.Add(Math.Round(text.Size / TextStyle.Point, 2));
        }
        sizes.Count.ShouldBeLessThanOrEqualTo(4);
    }

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Lines_of_text_do_not_run_into_each_other(string paper, int chords, int paragraphs, int diagrams, int rows)
    {
        foreach (var page in Compose(Style(paper), chords, paragraphs, diagrams, rows).Pages)
        {
            var texts = page.Drawing.Marks.OfType<TextMark>().Where(t => t.Run.Text.Trim().Length > 0 && t.Role != MarkRole.Diagram).ToList();
            for (var i = 0; i < texts.Count; i++)
            {
                for (var j = i + 1; j < texts.Count; j++)
                {
                    // Neighbours in one line may kern into each other by a hair.
                    texts[i].Bounds.Inflate(-0.1).Overlaps(texts[j].Bounds.Inflate(-0.1)).ShouldBeFalse($"'{texts[i].Run.Text}' and '{texts[j].Run.Text}'");
                }
            }
        }
    }

    [Fact]
    public void Page_numbers_and_running_heads_are_where_they_belong()
    {
        var pages = Compose(Style("a4"), 40, 12, 9, 30).Pages;
        pages.Length.ShouldBeGreaterThan(2);
        for (var i = 0; i < pages.Length; i++)
        {
            var texts = pages[i].Drawing.Marks.OfType<TextMark>().ToList();
            texts.ShouldContain(t => t.Run.Text == $"{i + 1} / {pages.Length}");
            var head = texts.Where(t => t.Run.Text == "Round the cycle in C minor" && t.Position.Y < 25 && t.Role != MarkRole.Title);
            head.Any().ShouldBe(i > 0);
        }
    }

    [Fact]
    public void The_header_of_a_long_table_is_repeated_on_each_of_its_pages()
    {
        var pages = Compose(Style("a4"), 60, 0, 0, 0).Pages;
        pages.Length.ShouldBeGreaterThan(2);
        foreach (var page in pages)
        {
            var texts = page.Drawing.Marks.OfType<TextMark>().Select(t => t.Run.Text).ToList();
            texts.Any(t => t.StartsWith("Guide", StringComparison.Ordinal)).ShouldBe(texts.Any(t => t.Contains("prepares", StringComparison.Ordinal)));
        }
    }

    // A reader of the next page has to learn what the underlining means too.
    [Theory]
    [InlineData(4, 1)]
    [InlineData(60, 3)]
    public void What_the_underlining_means_is_said_once_over_the_harmony_table_on_each_page_it_takes(int chords, int leastPages)
    {
        var labels = new SheetLabels();
        var pages = Compose(Style("a4"), chords, 0, 0, 0).Pages;
        var tables = 0;
        foreach (var page in pages)
        {
            var texts = page.Drawing.Marks.OfType<TextMark>().ToList();
            var said = texts.Where(t => t.Run.Text.Trim() == labels.ChangedNotes).ToList();
            if (!texts.Exists(t => t.Run.Text.Contains("prepares", StringComparison.Ordinal)))
            {
                said.ShouldBeEmpty();
                continue;
            }
            var note = said.ShouldHaveSingleItem();
            note.Position.Y.ShouldBeLessThan(texts.First(t => t.Run.Text.Trim() == labels.Chord).Position.Y - 2);
            if (tables++ == 0) note.Position.Y.ShouldBeGreaterThan(texts.First(t => t.Run.Text.Trim() == labels.Harmony).Position.Y);
        }
        tables.ShouldBeGreaterThanOrEqualTo(leastPages);
    }

    [Fact]
    public void A_table_that_goes_on_without_anything_underlined_says_nothing_of_it()
    {
        var content = SampleHandout.Make(60, 0, "", 0, 0);
        content = content with { Harmony = [content.Harmony[0], .. content.Harmony.Skip(1).Select(r => r with { ScaleNotes = [.. r.ScaleNotes.Select(n => n with { IsChanged = false })] })] };
        var pages = SheetComposer.Compose(content, Style("a4")).Pages;
        pages.Select((p, i) => (i, p.Drawing.Marks.OfType<TextMark>().Any(t => t.Run.Text.Trim() == new SheetLabels().ChangedNotes))).Where(p => p.Item2).Select(p => p.i).ShouldBe([0]);
    }

    [Fact]
    public void Sections_have_bookmarks_in_order()
    {
        var document = Compose(Style("a4"), 7, 3, 2, 5);
        document.Bookmarks.Select(b => b.Title).ShouldBe(["The harmony at a glance", "What is going on", "From your teacher", "On the neck", "Practice plan"]);
        document.Bookmarks.Select(b => (b.PageIndex * 1000) + b.Top).ShouldBeInOrder();
        document.Title.ShouldBe("Round the cycle in C minor");
    }

    [Fact]
    public void The_same_content_gives_the_same_pages()
    {
        string Text() => string.Concat(Compose(Style("a4"), 12, 4, 3, 6).Pages.Select(p => DrawingText.Of(p.Drawing)));
        Text().ShouldBe(Text());
    }

    [Fact]
    public void A_title_of_many_words_and_many_facts_stay_in_the_band()
    {
        var content = SampleHandout.Make() with
        {
            Title = string.Join(' ', Enumerable.Repeat("Around and around the cycle", 4)),
            Facts = [.. Enumerable.Range(1, 14).Select(i => new FactItem($"Fact {i}", "a value of some length"))],
        };
        var page = SheetComposer.Compose(content, new PageStyle()).Pages[0];
        page.Drawing.Bounds.Right.ShouldBeLessThanOrEqualTo(page.Width - 17.8);
        var name = page.Drawing.Marks.OfType<TextMark>().First(t => t.Run.Text == "Name");
        // Too long to stand beside the form: the form is below, name and date in one line.
        foreach (var title in page.Drawing.Marks.OfType<TextMark>().Where(t => t.Role == MarkRole.Title)) title.Bounds.Bottom.ShouldBeLessThan(name.Bounds.Top);
        page.Drawing.Marks.OfType<TextMark>().First(t => t.Run.Text == "Date").Position.Y.ShouldBe(name.Position.Y, 1e-9);
    }

    [Fact]
    public void A_title_of_some_words_stands_beside_the_form()
    {
        var page = SheetComposer.Compose(SampleHandout.Make() with { Title = "Around and around the cycle in C minor" }, new PageStyle()).Pages[0];
        var name = page.Drawing.Marks.OfType<TextMark>().First(t => t.Run.Text == "Name");
        var title = page.Drawing.Marks.OfType<TextMark>().Where(t => t.Role == MarkRole.Title).ToList();
        title.Count.ShouldBe(2);
        foreach (var line in title) line.Bounds.Right.ShouldBeLessThan(name.Bounds.Left);
    }

    [Fact]
    public void A_title_of_one_word_is_cut_in_the_running_head()
    {
        var style = PageStyle.Handout(PaperSize.A5);
        var content = SampleHandout.Make(20, 8) with { Title = string.Concat(Enumerable.Repeat("Septakkordgriffwechsel", 5)) };
        var pages = SheetComposer.Compose(content, style).Pages;
        pages.Length.ShouldBeGreaterThan(1);
        foreach (var page in pages) page.Drawing.Bounds.Right.ShouldBeLessThanOrEqualTo(page.Width - style.SideMargin + 0.2);
        pages[1].Drawing.Marks.OfType<TextMark>().ShouldContain(t => t.Run.Text.StartsWith("Septakkordgriff", StringComparison.Ordinal) && t.Run.Text.EndsWith('…'));
    }

    [Fact]
    public void A_title_of_many_words_is_cut_at_a_word_in_the_running_head_and_nowhere_else()
    {
        const string Title = "Small steps down a long and winding stair that never seems to reach the bottom floor";
        foreach (var style in (PageStyle[])[PageStyle.LargePrint(PaperSize.A5), PageStyle.Handout(PaperSize.A5), PageStyle.Handout(PaperSize.A4)])
        {
            var pages = SheetComposer.Compose(SampleHandout.Make(20, 8) with { Title = Title }, style).Pages;
            var first = pages[0].Drawing.Marks.OfType<TextMark>().ToList();
            string.Join(' ', first.Where(t => t.Role == MarkRole.Title).Select(t => t.Run.Text.Trim())).ShouldBe(Title);
            first.ShouldAllBe(t => !t.Run.Text.Contains('…'));
            foreach (var page in pages.Skip(1))
            {
                var head = page.Drawing.Marks.OfType<TextMark>().Single(t => t.Run.Text.StartsWith("Small steps", StringComparison.Ordinal)).Run.Text;
                if (head == Title) continue;
                head.ShouldEndWith(" …");
                Title.ShouldStartWith(head[..^1]);
            }
        }
    }

    [Fact]
    public void The_key_to_the_dots_stands_on_the_first_page_that_has_dots()
    {
        var divided = 0;
        for (var chords = 4; chords < 16; chords++)
        {
            var pages = SheetComposer.Compose(SampleHandout.Make(chords, 2, "Say the root.", 9, 0), new PageStyle()).Pages;
            var withDots = pages.Where(p => p.Drawing.Marks.Any(m => m.Role == MarkRole.Diagram)).ToList();
            var withKey = pages.Where(p => p.Drawing.Marks.OfType<TextMark>().Any(t => t.Run.Text == new SheetLabels().RootLegend)).ToList();
            withKey.ShouldHaveSingleItem().ShouldBe(withDots[0], $"{chords} chords");
            if (withDots.Count > 1) divided++;
        }
        divided.ShouldBeGreaterThan(0);
    }

    // Where the first of two rows fits, it is not carried over for the sake of the second.
    [Fact]
    public void A_row_of_diagrams_that_fits_stands_at_the_foot_of_the_page()
    {
        var style = new PageStyle();
        var foot = style.Paper.Height - style.BottomMargin - style.FootHeight;
        var divided = 0;
        for (var chords = 3; chords < 16; chords++)
        {
            for (var paragraphs = 0; paragraphs < 6; paragraphs++)
            {
                var content = SampleHandout.Make(chords, paragraphs, "", 4, 8);
                var before = SheetComposer.Compose(content with { Diagrams = [], PracticePlan = [], Caution = "" }, style).Pages;
                if (before.Length > 1) continue;
                var end = before[0].Drawing.Marks.Where(m => m.Bounds.Bottom < foot).Max(m => m.Bounds.Bottom);
                var legend = DiagramRows.Legend(DiagramRows.Shapes(content.Diagrams), new SheetLabels(), style)!.Height;
                var row = DiagramRows.Make(content.Diagrams, style)[0].Height;
                // Below the last ink stands what the last line keeps for descenders.
                if (end + style.SectionGap + style.Heading.Leading + legend + row + 5 > foot) continue;
                var pages = SheetComposer.Compose(content, style).Pages;
                pages[0].Drawing.Marks.ShouldContain(m => m.Role == MarkRole.Diagram, $"{chords} chords, {paragraphs} paragraphs");
                if (pages.Skip(1).Any(p => p.Drawing.Marks.Any(m => m.Role == MarkRole.Diagram))) divided++;
            }
        }
        divided.ShouldBeGreaterThan(0);
    }

    [Fact]
    public void A_short_text_stands_on_one_page_with_its_heading()
    {
        for (var chords = 4; chords < 30; chords++)
        {
            var content = SampleHandout.Make(chords, 0, "", 0, 18) with { TheoryNotes = ["First the roots fall.", "Then a third stays. It becomes a seventh, and so on to the end of the form.", "Last the phrase stops."] };
            var pages = SheetComposer.Compose(content, new PageStyle()).Pages;
            var begun = pages.Select(p => p.Drawing.Marks.OfType<TextMark>().Count(t => t.Run.Text.StartsWith("First the", StringComparison.Ordinal) || t.Run.Text.StartsWith("Then a", StringComparison.Ordinal) || t.Run.Text.StartsWith("Last the", StringComparison.Ordinal))).ToList();
            begun.Where(n => n > 0).ShouldBe([3], $"{chords} chords");
        }
    }

    [Fact]
    public void The_caution_is_not_alone_on_a_page()
    {
        for (var rows = 1; rows < 40; rows++)
        {
            var pages = SheetComposer.Compose(SampleHandout.Make(4, 2, "Say the root.", 0, rows), new PageStyle()).Pages;
            var last = pages[^1].Drawing.Marks.OfType<TextMark>().Select(t => t.Run.Text.Trim()).ToList();
            last.ShouldContain(t => t.StartsWith("Warm up", StringComparison.Ordinal));
            last.ShouldContain("Total", $"{rows} rows");
        }
    }

    [Fact]
    public void Long_notes_stand_in_two_columns_under_each_of_their_headings()
    {
        var style = new PageStyle();
        var words = string.Join(' ', Enumerable.Repeat("Play each root on the beat and hear where it wants to go.", 12));
        var notes = string.Join("\n\n", Enumerable.Range(1, 6).Select(i => $"## Part {i}\n\n{words}"));
        var texts = SheetComposer.Compose(SampleHandout.Make(0, 0, notes, 0, 0), style).Pages.SelectMany(p => p.Drawing.Marks).OfType<TextMark>().ToList();
        texts.Count(t => t.Run.Text.StartsWith("Part ", StringComparison.Ordinal)).ShouldBe(6);
        var right = style.SideMargin + ((style.TextWidth + style.ColumnGap) / 2);
        texts.Count(t => Math.Abs(t.Position.X - right) < 1e-6).ShouldBeGreaterThan(20);
    }

    [Fact]
    public void The_binding_has_its_white_at_the_inner_edge()
    {
        var style = PageStyle.Book(PaperSize.A4);
        var pages = SheetComposer.Compose(SampleHandout.Make(40, 12, LongNotes, 9, 30), style).Pages;
        for (var i = 1; i < pages.Length; i++)
        {
            // Common practice: the first page is a right-hand one, bound at its left.
            var inner = i % 2 == 0 ? pages[i].Drawing.Bounds.Left : style.Paper.Width - pages[i].Drawing.Bounds.Right;
            inner.ShouldBe(style.SideMargin + style.BindingMargin, 0.3);
        }
    }

    [Fact]
    public void Both_lines_of_a_row_of_the_harmony_table_are_level_in_all_its_cells()
    {
        var style = new PageStyle();
        var row = TableSetter.Set(HarmonyTable.Make(SampleHandout.Make(1), style), 400).Rows.ShouldHaveSingleItem();
        row.Drawing.Marks.OfType<TextMark>().Where(t => t.Size == style.Small.Size && t.Run.Text.Trim().Length > 0).Select(t => Math.Round(t.Position.Y, 3)).Distinct().Count().ShouldBe(2);
    }

    [Fact]
    public void All_lines_of_a_row_of_the_narrow_harmony_table_stand_on_one_grid()
    {
        var style = PageStyle.LargePrint(PaperSize.A5);
        var table = HarmonyTable.Make(SampleHandout.Make(3), style);
        table.Columns.Length.ShouldBe(2);
        foreach (var row in TableSetter.Set(table, style.TextWidth).Rows)
        {
            var texts = row.Drawing.Marks.OfType<TextMark>().ToList();
            var lines = texts.Where(t => t.Size == style.Small.Size && t.Run.Text.Trim().Length > 0).Append(texts.First(t => t.Run.Text.StartsWith("ii", StringComparison.Ordinal))).ToList();
            var first = lines.Min(t => t.Position.Y);
            foreach (var text in lines)
            {
                var line = (text.Position.Y - first) / style.Small.Leading;
                line.ShouldBe(Math.Round(line), 1e-6, text.Run.Text);
            }
        }
    }

    [Fact]
    public void Chord_tones_stand_apart_in_proportion_to_their_size()
    {
        Apart(new PageStyle()).ShouldBe(Apart(PageStyle.LargePrint(PaperSize.A5)), 1e-6);

        static double Apart(PageStyle style)
        {
            var notes = TableSetter.Set(HarmonyTable.Make(SampleHandout.Make(1), style), style.TextWidth).Rows[0].Drawing.Marks.OfType<TextMark>().Where(t => t.Size == style.Small.Size).ToList();
            return (notes.First(t => t.Run.Text == "G").Position.X - notes.First(t => t.Run.Text == "C").Position.X) / style.Small.Size;
        }
    }

    [Fact]
    public void Chord_tones_and_their_degrees_stand_in_even_columns_through_all_rows()
    {
        var table = HarmonyTable.Make(SampleHandout.Make(7), new PageStyle());
        double[] Lefts(CellPart part) => [.. ((DrawnPart)part).Drawing.Marks.OfType<TextMark>().Where(t => char.IsLetter(t.Run.Text[0])).Select(t => Math.Round(t.Position.X, 6))];
        var step = Lefts(table.Rows[0][3].Parts[0])[1];
        step.ShouldBeGreaterThan(0);
        foreach (var row in table.Rows)
        {
            Lefts(row[3].Parts[0]).ShouldBe([0, step, 2 * step, 3 * step], 1e-5);
            var degrees = ((DrawnPart)row[3].Parts[1]).Drawing.Marks;
            for (var i = 0; i < 4; i++) degrees.Min(m => Math.Abs(m.Bounds.Left - (i * step))).ShouldBeLessThan(1);
        }
    }

    [Fact]
    public void The_harmony_table_keeps_its_words_whole_on_narrow_paper()
    {
        var style = PageStyle.Handout(new PaperSize("narrow", 120, 200));
        var words = SheetComposer.Compose(SampleHandout.Make(7, 0, "", 0, 0), style).Pages.SelectMany(p => p.Drawing.Marks).OfType<TextMark>().Select(t => t.Run.Text.Trim()).ToList();
        words.ShouldContain("Chord tones");
        words.ShouldContain("Bar 1");
        words.ShouldContain(w => w.StartsWith("Guide tones", StringComparison.Ordinal));
        words.ShouldNotContain("Scale to use, and why");
        SheetComposer.Compose(SampleHandout.Make(7, 0, "", 0, 0), new PageStyle()).Pages[0].Drawing.Marks.OfType<TextMark>().ShouldContain(t => t.Run.Text.Trim() == "Scale to use, and why");
    }

    [Fact]
    public void In_large_print_on_small_paper_the_harmony_begins_under_the_title_and_keeps_within_the_page()
    {
        var style = PageStyle.LargePrint(PaperSize.A5);
        var content = SampleHandout.Make(5, 0, "", 0, 0);
        // Eight notes with signs are the longest scale there is.
        ScaleNote[] notes = [.. ((string[])["G♯", "A♯", "B", "C♯", "D", "E", "F", "F♯♯"]).Select(n => new ScaleNote(n, IsChanged: true))];
        content = content with
        {
            Subtitle = "A tune that never settles, with applied chords and alterations on most of them",
            Harmony = [content.Harmony[0] with { Function = "tonic", Reason = "the notes of C minor, from C" }, .. content.Harmony[1..].Select(r => r with { ScaleName = "G♯ whole-half diminished", ScaleNotes = [.. notes], Function = "secondary dominant of [ii]" })],
        };
        var pages = SheetComposer.Compose(content, style).Pages;
        pages[0].Drawing.Marks.OfType<TextMark>().ShouldContain(t => t.Run.Text.Trim() == "Bar 1");
        foreach (var page in pages) page.Drawing.Bounds.Right.ShouldBeLessThanOrEqualTo(page.Width - style.SideMargin + 0.2);
    }

    [Theory]
    [InlineData(174, 4)]
    [InlineData(75, 4)]
    public void Notes_that_are_not_in_the_key_are_underlined_in_every_column(double width, int lines)
    {
        var content = SampleHandout.Make(1);
        LabelledTone[] tones = [new("G", Degree.Root), new("B", new Degree(3), IsChanged: true), new("D♯", new Degree(5, 1), IsChanged: true)];
        content = content with { Harmony = [content.Harmony[0] with { Tones = [.. tones], GuideTones = [tones[1]], ScaleNotes = [new("G"), new("B", IsChanged: true)] }] };
        var style = PageStyle.Handout(new PaperSize("test", width + 36, 300));
        var row = TableSetter.Set(HarmonyTable.Make(content, style), width).Rows[0];
        var under = row.Drawing.Marks.OfType<LineMark>().Where(l => l.Role == MarkRole.BodyText).ToList();
        under.Count.ShouldBe(lines);
        foreach (var line in under)
        {
            var note = row.Drawing.Marks.OfType<TextMark>().Where(t => t.Run.Text.Trim() is "B" or "D" && t.Position.Y < line.From.Y && line.From.Y - t.Position.Y < 1).MinBy(t => Math.Abs(t.Position.X - line.From.X));
            note.ShouldNotBeNull().Position.X.ShouldBe(line.From.X, 0.1);
        }
    }

    [Fact]
    public void The_name_of_a_scale_stands_further_from_its_notes_than_they_from_each_other()
    {
        var content = SampleHandout.Make(1);
        content = content with { Harmony = [content.Harmony[0] with { Tones = [], GuideTones = [], ScaleName = "G Lydian", ScaleNotes = [new("G", IsChanged: true), new("B", IsChanged: true), new("D", IsChanged: true)] }] };
        var marks = TableSetter.Set(HarmonyTable.Make(content, new PageStyle()), 400).Rows[0].Drawing.Marks;
        var name = marks.OfType<TextMark>().Single(t => t.Run.Text.Contains("Lydian", StringComparison.Ordinal));
        var notes = marks.OfType<LineMark>().Where(l => l.Role == MarkRole.BodyText).OrderBy(l => l.From.X).ToList();
        notes.Count.ShouldBe(3);
        notes[0].From.Y.ShouldBe(name.Position.Y, 1);
        var between = notes[1].From.X - notes[0].To.X;
        (notes[2].From.X - notes[1].To.X).ShouldBe(between, 0.01);
        (notes[0].From.X - name.Bounds.Right).ShouldBeInRange(1.8 * between, 2.4 * between);
    }

    [Fact]
    public void A_numeral_in_the_harmony_table_stays_with_the_word_before_it()
    {
        var content = SampleHandout.Make(1);
        content = content with { Harmony = [content.Harmony[0] with { Function = "secondary dominant of [ii]", Roman = "V7/ii" }] };
        var table = HarmonyTable.Make(content, new PageStyle());
        var least = TableSetter.LeastWidth(table);
        for (var width = least; width < least + 100; width += 0.5)
        {
            var row = TableSetter.Set(table, width).Rows[0];
            var word = row.Drawing.Marks.OfType<TextMark>().Single(t => t.Run.Text.TrimEnd().EndsWith("of", StringComparison.Ordinal) && t.Run.Text.Contains("dominant", StringComparison.Ordinal) || t.Run.Text.Trim() == "of");
            row.Drawing.Marks.OfType<TextMark>().ShouldContain(t => t.Run.Text.Trim() == "ii" && Math.Abs(t.Position.Y - word.Position.Y) < 0.1, $"{width}");
        }
    }

    [Theory]
    [InlineData(174, 1)]
    [InlineData(75, 2)]
    public void Facts_end_level_with_the_edge_and_stand_in_even_rows(double width, int rows)
    {
        var style = PageStyle.Handout(new PaperSize("test", width + 36, 300));
        var content = SampleHandout.Make() with { NameAndDate = false, Facts = [new("Key", "C minor"), new("Meter", "4/4"), new("Tempo", "♩ = 92"), new("Instrument", "4-string bass"), new("Level", "2 of 5")] };
        var texts = TitleBand.Make(content, style).Drawings.SelectMany(d => d.Drawing.Marks).OfType<TextMark>().ToList();
        var labels = content.Facts.Select(f => texts.Single(t => t.Run.Text.Trim() == f.Label)).ToList();
        labels.Select(l => Math.Round(l.Position.Y, 3)).Distinct().Count().ShouldBe(rows);
        if (rows == 1) texts.Where(t => t.Run.Text.Trim() is "2 of 5" or "5").Max(t => t.Bounds.Right).ShouldBe(width, 0.5);
        else labels[..3].Zip(labels[3..]).ShouldAllBe(p => Math.Abs(p.First.Position.X - p.Second.Position.X) < 1e-6);
    }

    [Fact]
    public void A_long_title_is_set_smaller_than_a_short_one()
    {
        var style = new PageStyle();
        TitleSize("Roots").ShouldBe(style.Title.Size);
        TitleSize(string.Join(' ', Enumerable.Repeat("around the cycle", 5))).ShouldBeLessThan(style.Title.Size);

        double TitleSize(string title) => SheetComposer.Compose(SampleHandout.Make() with { Title = title }, style).Pages[0].Drawing.Marks.OfType<TextMark>().First(t => t.Role == MarkRole.Title).Size;
    }

    [Fact]
    public void Title_and_subject_share_the_running_head()
    {
        var content = SampleHandout.Make(notes: string.Join("\n\n", Enumerable.Repeat("Words of the teacher that go on and on.", 80))) with
        {
            Title = string.Join(' ', Enumerable.Repeat("Around the cycle", 12)),
            Labels = new SheetLabels { TeacherNotes = string.Join(' ', Enumerable.Repeat("What your teacher says", 8)) },
        };
        var page = SheetComposer.Compose(content, new PageStyle()).Pages[1];
        var rule = page.Drawing.Marks.OfType<LineMark>().Min(l => l.From.Y);
        var head = page.Drawing.Marks.OfType<TextMark>().Where(t => t.Position.Y < rule).OrderBy(t => t.Position.X).ToList();
        head.Count.ShouldBe(2);
        head[0].Run.Text.ShouldStartWith("Around the cycle Around");
        head[1].Run.Text.ShouldStartWith("What your teacher says");
        head[1].Bounds.Left.ShouldBeGreaterThan(head[0].Bounds.Right + 4);
    }

    [Fact]
    public void Page_numbers_of_a_book_stand_at_the_outer_edges()
    {
        var style = PageStyle.Book(PaperSize.A4);
        var pages = SheetComposer.Compose(SampleHandout.Make(40, 12, LongNotes, 9, 30), style).Pages;
        pages.Length.ShouldBeGreaterThan(2);
        for (var i = 0; i < pages.Length; i++)
        {
            var number = pages[i].Drawing.Marks.OfType<TextMark>().Single(t => t.Run.Text.Trim() == $"{i + 1} / {pages.Length}");
            if (i % 2 == 1) number.Position.X.ShouldBe(style.SideMargin, 0.5);
            else (number.Position.X + (number.Run.Advance * number.Size)).ShouldBe(style.Paper.Width - style.SideMargin, 0.5);
        }
    }

    [Fact]
    public void Words_are_data()
    {
        var german = new SheetLabels { Name = "Schüler", Date = "Datum", Harmony = "Die Harmonien", PageOf = "Seite {0} von {1}", Practice = "Übeplan" };
        var document = SheetComposer.Compose(SampleHandout.Make() with { Labels = german, Language = "de" }, new PageStyle());
        var words = document.Pages.SelectMany(p => p.Drawing.Marks).OfType<TextMark>().Select(t => t.Run.Text).ToList();
        words.ShouldContain("Schüler");
        words.ShouldContain("Die Harmonien");
        words.ShouldContain($"Seite 1 von {document.Pages.Length}");
        words.ShouldNotContain("Name");
        document.Language.ShouldBe("de");
    }

    [Fact]
    public void Large_print_is_a_matter_of_style()
    {
        var style = new PageStyle
        {
            Title = new TextStyle(30, 36, TextFont.SerifSemiBold, TextFont.SerifItalic, TextFont.SerifBold),
            Heading = new TextStyle(20, 24, TextFont.SansSemiBold, TextFont.SansItalic, TextFont.SansBold),
            Body = new TextStyle(18, 24, TextFont.Serif, TextFont.SerifItalic, TextFont.SerifSemiBold),
            Small = new TextStyle(16, 20, TextFont.Sans, TextFont.SansItalic, TextFont.SansSemiBold),
            HeadHeight = 13,
            FootHeight = 14,
        };
        foreach (var page in SheetComposer.Compose(SampleHandout.Make(7, 3, LongNotes), style).Pages)
        {
            page.Drawing.Bounds.Right.ShouldBeLessThanOrEqualTo(page.Width - 17.8);
            page.Drawing.Bounds.Bottom.ShouldBeLessThanOrEqualTo(page.Height - 15);
        }
    }

    [Fact]
    public void Snapshot_of_a_small_sheet() =>
        Snapshot.Match(DrawingText.Of(Compose(Style("a4"), 1, 1, 1, 1).Pages.ShouldHaveSingleItem().Drawing));

    private static PageStyle Style(string paper) => PageStyle.Handout(paper == "a4" ? PaperSize.A4 : PaperSize.Letter);

    private static SheetDocument Compose(PageStyle style, int chords, int paragraphs, int diagrams, int rows) =>
        SheetComposer.Compose(SampleHandout.Make(chords, paragraphs, LongNotes, diagrams, rows), style);
}
