namespace SheetPress.Lessons;

// Codes about YAML, before anything is known of the lesson.
public static partial class DiagnosticCodes
{
    /// <summary>The file holds nothing.</summary>
    public const string EmptyFile = "empty-file";

    /// <summary>The top of the file is no list of entries.</summary>
    public const string NotEntries = "not-entries";

    /// <summary>A second document in one file.</summary>
    public const string SecondDocument = "second-document";

    /// <summary>Nested too deep.</summary>
    public const string TooDeep = "too-deep";

    /// <summary>An entry's name is a list or a mapping.</summary>
    public const string NameNotText = "name-not-text";

    /// <summary>A tab indents a line.</summary>
    public const string Tab = "tab";

    /// <summary>A quote is never closed.</summary>
    public const string UnclosedQuote = "unclosed-quote";

    /// <summary>An escape YAML does not know.</summary>
    public const string Escape = "escape";

    /// <summary>Text follows a block sign.</summary>
    public const string BlockSignWithText = "block-sign-with-text";

    /// <summary>Text follows a closed quote.</summary>
    public const string TextBehindQuote = "text-behind-quote";

    /// <summary>Text follows a bracket that begins a value.</summary>
    public const string TextBehindBracket = "text-behind-bracket";

    /// <summary>No space after a colon.</summary>
    public const string NoSpaceAfterColon = "no-space-after-colon";

    /// <summary>No space after the dash of a list.</summary>
    public const string NoSpaceAfterDash = "no-space-after-dash";

    /// <summary>A sign that means something in YAML begins a value.</summary>
    public const string SignAtStart = "sign-at-start";

    /// <summary>A bracket is never closed.</summary>
    public const string UnclosedBracket = "unclosed-bracket";

    /// <summary>A list starts on the line of its name.</summary>
    public const string ListOnSameLine = "list-on-same-line";

    /// <summary>A value holds a colon and a space.</summary>
    public const string ColonInValue = "colon-in-value";

    /// <summary>A line without a colon.</summary>
    public const string NoColon = "no-colon";

    /// <summary>The indentation fits nothing.</summary>
    public const string Indentation = "indentation";

    /// <summary>Any other fault.</summary>
    public const string Syntax = "syntax";

    /// <summary>A comment sign swallows part of a value.</summary>
    public const string CommentHidesText = "comment-hides-text";
}
