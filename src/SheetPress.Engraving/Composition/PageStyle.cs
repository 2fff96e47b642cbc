namespace SheetPress.Engraving;

/// <summary>How pages look: paper, margins, text sizes, staff size, distances. Lengths are in millimetres.</summary>
public sealed record PageStyle
{
    /// <summary>The paper.</summary>
    public PaperSize Paper { get; init; } = PaperSize.A4;

    /// <summary>White at the left and right edge, 15 mm or more.</summary>
    public double SideMargin { get; init; } = 18;

    /// <summary>White above the text area of a page, room for the running head within it; 15 mm or more beyond the head.</summary>
    public double TopMargin { get; init; } = 16;

    /// <summary>White below the footer, 15 mm or more.</summary>
    public double BottomMargin { get; init; } = 15;

    /// <summary>Height that the running head takes from the top of the text area from page two.</summary>
    public double HeadHeight { get; init; } = 9;

    /// <summary>Height that the footer takes from the bottom of the text area.</summary>
    public double FootHeight { get; init; } = 10;

    /// <summary>Title of the sheet.</summary>
    public TextStyle Title { get; init; } = new(23, 27, TextFont.SerifSemiBold, TextFont.SerifItalic, TextFont.SerifBold);

    /// <summary>Headings of sections.</summary>
    public TextStyle Heading { get; init; } = new(13, 16, TextFont.SansSemiBold, TextFont.SansItalic, TextFont.SansBold);

    /// <summary>Titles of exercises and chord symbols as titles, smaller than headings, since they stand a level below them.</summary>
    public TextStyle ItemTitle { get; init; } = new(11.5, 14, TextFont.SansSemiBold, TextFont.SansItalic, TextFont.SansBold);

    /// <summary>Running text and instructions.</summary>
    public TextStyle Body { get; init; } = new(10, 13.4, TextFont.Serif, TextFont.SerifItalic, TextFont.SerifSemiBold);

    /// <summary>Tables, captions, running head and footer.</summary>
    public TextStyle Small { get; init; } = new(8.5, 11, TextFont.Sans, TextFont.SansItalic, TextFont.SansSemiBold);

    /// <summary>Length of a staff space; the staff is four of them high.</summary>
    public double StaffSpace { get; init; } = 1.75;

    /// <summary>Measures of neck diagrams.</summary>
    public DiagramStyle Diagram { get; init; } = new();

    /// <summary>Whether paragraphs are set to an even right edge where the words allow it.</summary>
    public bool Justify { get; init; }

    /// <summary>Whether the pages are bound, two and three facing each other: such pairs end level, and page numbers stand at the outer edges.</summary>
    public bool FacingPages { get; init; }

    /// <summary>White between the columns of text.</summary>
    public double ColumnGap { get; init; } = 8;

    /// <summary>White above a section heading, before slack is shared out.</summary>
    public double SectionGap { get; init; } = 7;

    /// <summary>White above an exercise after the first.</summary>
    public double ExerciseGap { get; init; } = 6.5;

    /// <summary>The least white between the ink of two systems.</summary>
    public double SystemGap { get; init; } = 4.5;

    /// <summary>White that the bound edge of a page has beyond its margin.</summary>
    public double BindingMargin { get; init; }

    /// <summary>Width of the text area.</summary>
    public double TextWidth => Paper.Width - (2 * SideMargin) - BindingMargin;

    /// <summary>White at the left of a page.</summary>
    /// <param name="page">Index of the page: the first stands at the right of its pair and is bound at its left.</param>
    public double LeftMargin(int page) => SideMargin + (page % 2 == 0 ? BindingMargin : 0);

    /// <summary>The handout on a paper.</summary>
    public static PageStyle Handout(PaperSize paper) => new() { Paper = paper };

    /// <summary>Pages of a bound book: justified text, facing pages that end level, white for the binding, a staff of 6.5 mm.</summary>
    public static PageStyle Book(PaperSize paper) => new() { Paper = paper, FacingPages = true, Justify = true, SideMargin = 17, BindingMargin = 3, StaffSpace = 1.625 };

    /// <summary>The handout for readers who see little: text of 16 points and more, a staff of 10 mm.</summary>
    public static PageStyle LargePrint(PaperSize paper) => new()
    {
        Paper = paper,
        HeadHeight = 13,
        FootHeight = 14,
        Title = new(28, 33, TextFont.SansSemiBold, TextFont.SansItalic, TextFont.SansBold),
        Heading = new(21, 25, TextFont.SansSemiBold, TextFont.SansItalic, TextFont.SansBold),
        ItemTitle = new(19, 23, TextFont.SansSemiBold, TextFont.SansItalic, TextFont.SansBold),
        Body = new(17, 23, TextFont.Sans, TextFont.SansItalic, TextFont.SansBold),
        Small = new(16, 20.5, TextFont.Sans, TextFont.SansItalic, TextFont.SansSemiBold),
        StaffSpace = 2.5,
        Diagram = new DiagramStyle().Enlarged(1.7),
    };
}
