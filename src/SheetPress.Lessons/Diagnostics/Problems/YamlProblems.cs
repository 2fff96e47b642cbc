namespace SheetPress.Lessons;

/// <summary>What can be wrong with the YAML of a lesson, before its entries have any meaning.</summary>
public static class YamlProblems
{
    /// <summary>The file holds nothing.</summary>
    public static Problem EmptyFile() => Error(DiagnosticCodes.EmptyFile, "There is nothing in this file.", "A lesson has a title, a key and a progression at least; 'new' writes one to start from.");

    /// <summary>The top of the file is no list of entries.</summary>
    public static Problem NotEntries() => Error(DiagnosticCodes.NotEntries, "A lesson is made of entries, each with a name, a colon and a value.", "Write entries such as 'title: My first lesson', one below the other.");

    /// <summary>A second document in one file.</summary>
    public static Problem SecondDocument() => Error(DiagnosticCodes.SecondDocument, "A second lesson starts here.", "Write each lesson in a file of its own and take the line '---' away.");

    /// <summary>Nested too deep.</summary>
    public static Problem TooDeep() => Error(DiagnosticCodes.TooDeep, "Lists and entries are nested too deep here.", "No part of a lesson is nested more than four levels.");

    /// <summary>An entry's name is a list or a mapping.</summary>
    public static Problem NameNotText() => Error(DiagnosticCodes.NameNotText, "The name of an entry has to be a word.", "Write a name, a colon and the value.");

    /// <summary>A tab, or a blank that looks like a space, indents a line.</summary>
    public static Problem Tab() => Error(DiagnosticCodes.Tab, "A tab, or another blank that is no space, indents this line.", "Indent with spaces: two for each level.");

    /// <summary>A quote is never closed.</summary>
    public static Problem UnclosedQuote() => Error(DiagnosticCodes.UnclosedQuote, "The quotation mark that opens here is never closed.", "Close it at the end of the value, or leave both away.");

    /// <summary>An escape YAML does not know.</summary>
    public static Problem Escape() => Error(DiagnosticCodes.Escape, "A backslash in double quotes starts a special sign, and this is none.", "Put the value in single quotes, or write the backslash twice.");

    /// <summary>Text follows a block sign.</summary>
    public static Problem BlockSignWithText() => Error(DiagnosticCodes.BlockSignWithText, "A value that begins with a bar has to start on the next line.", "Write '|' alone after the colon, and the text on the lines below, indented by two spaces.");

    /// <summary>Text follows a closed quote.</summary>
    public static Problem TextBehindQuote() => Error(DiagnosticCodes.TextBehindQuote, "The quoted text ends before this, and nothing may follow it.", "Put the whole value in quotes; a quotation mark inside is written twice ('don''t').");

    /// <summary>Text follows a bracket that begins a value.</summary>
    public static Problem TextBehindBracket(char bracket) =>
        Error(DiagnosticCodes.TextBehindBracket, $"A value that begins with '{bracket}' is taken for a list, and no text may follow it.", "Put the whole value in quotes, or write '|' alone after the colon and the text on the lines below.");

    /// <summary>No space after a colon.</summary>
    public static Problem NoSpaceAfterColon() => Error(DiagnosticCodes.NoSpaceAfterColon, "There is no space after the colon.", "Write a space between the colon and the value.");

    /// <summary>No space after the dash of a list.</summary>
    public static Problem NoSpaceAfterDash() => Error(DiagnosticCodes.NoSpaceAfterDash, "There is no space after the dash.", "Write '- ' in front of each item of a list.");

    /// <summary>A sign that means something in YAML begins a value.</summary>
    public static Problem SignAtStart(char sign) => Error(DiagnosticCodes.SignAtStart, $"A value cannot begin with the sign '{sign}'.", "Put the whole value in quotes.");

    /// <summary>A bracket is never closed.</summary>
    public static Problem UnclosedBracket(char bracket) => Error(DiagnosticCodes.UnclosedBracket, $"The '{bracket}' that opens here is not closed where it should be.", $"Close it with '{(bracket == '[' ? ']' : '}')}', or put the value in quotes if it is part of a text.");

    /// <summary>A list starts on the line of its name.</summary>
    public static Problem ListOnSameLine() => Error(DiagnosticCodes.ListOnSameLine, "A list cannot start on the line of its name.", "Write the first '-' on the next line.");

    /// <summary>A value holds a colon and a space.</summary>
    public static Problem ColonInValue() => Error(DiagnosticCodes.ColonInValue, "A colon with a space after it cannot stand inside a value.", "Put the whole value in quotes.");

    /// <summary>A line without a colon.</summary>
    public static Problem NoColon() => Error(DiagnosticCodes.NoColon, "This line has no colon, so it is no entry.", "Write a name, a colon and the value; text that goes on from the line above is indented.");

    /// <summary>The indentation fits nothing.</summary>
    public static Problem Indentation() => Error(DiagnosticCodes.Indentation, "This line is indented unlike the lines it belongs with.", "Entries of one list or exercise start in the same column; what belongs to them is two spaces further in.");

    /// <summary>A line of a text that starts in another column than the lines above.</summary>
    public static Problem TextIndentation() => Error(DiagnosticCodes.Indentation, "This line does not go on with the text above it.", "All lines of a text start in the same column; a quoted text ends with its quotation mark.");

    /// <summary>The same where what is hidden is music.</summary>
    public static Problem CommentHidesMusic() => Error(DiagnosticCodes.CommentHidesText, "A # behind a blank starts a comment in YAML, so everything from here on is lost.", "Put the whole value in quotes, or write it on the next line behind a |.");

    /// <summary>A remark inside a text of several lines.</summary>
    public static Problem RemarkInText() => Error(DiagnosticCodes.Indentation, "This remark ends the text, so the lines below it belong to nothing.", "Write a | behind the colon above, and the text indented below it: a progression may have remarks there.");

    /// <summary>Any other fault.</summary>
    public static Problem Syntax() => Error(DiagnosticCodes.Syntax, "This cannot be read as an entry, a list or a value.", "Check colons, quotes and indentation here and in the line above.");

    /// <summary>A comment sign swallows part of a value.</summary>
    public static Problem CommentHidesText() => new(DiagnosticCodes.CommentHidesText, Severity.Warning, "Everything from this sign on is taken as a comment and left out.", "Put the whole value in quotes if it belongs to it; write a space after the sign if it is a comment.");

    private static Problem Error(string code, string message, string advice) => new(code, Severity.Error, message, advice);
}
