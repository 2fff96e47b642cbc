namespace SheetPress.Lessons;

/// <summary>How serious a finding is.</summary>
public enum Severity
{
    /// <summary>The sheet can be made, but something may not be as meant.</summary>
    Warning,
    /// <summary>The lesson cannot be made.</summary>
    Error,
}

/// <summary>One finding about a lesson.</summary>
/// <param name="Code">Stable code such as "unknown-chord".</param>
/// <param name="Severity">How serious it is.</param>
/// <param name="Message">What is wrong, in a sentence a teacher understands.</param>
/// <param name="Advice">What to write instead; empty when the message says it all.</param>
/// <param name="Source">The file.</param>
/// <param name="Span">Where in it.</param>
public sealed record Diagnostic(string Code, Severity Severity, string Message, string Advice, SourceText Source, SourceSpan Span)
{
    /// <summary>The word that was probably meant by the text at the span; null when there is none.</summary>
    public string? Suggestion { get; init; }

    /// <summary>Line and column where it starts.</summary>
    public LinePosition Position => Source.PositionOf(Span.Start);
}

/// <summary>What is wrong, without its place: the catalogue of messages makes these.</summary>
/// <param name="Code">Stable code.</param>
/// <param name="Severity">How serious it is.</param>
/// <param name="Message">What is wrong, in a sentence a teacher understands.</param>
/// <param name="Advice">What to write instead; empty when the message says it all.</param>
public sealed record Problem(string Code, Severity Severity, string Message, string Advice = "")
{
    /// <summary>The word that was probably meant; null when there is none.</summary>
    public string? Suggestion { get; init; }
}
