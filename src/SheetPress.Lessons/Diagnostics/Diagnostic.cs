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
    /// <summary>Line and column where it starts.</summary>
    public LinePosition Position => Source.PositionOf(Span.Start);
}

/// <summary>Collects the findings of one lesson. Not safe for use by several threads at once.</summary>
/// <param name="source">The file they are about.</param>
public sealed class DiagnosticBag(SourceText source)
{
    private readonly List<Diagnostic> _items = [];

    /// <summary>The file.</summary>
    public SourceText Source { get; } = source;

    /// <summary>The findings so far, in the order they were made.</summary>
    public IReadOnlyList<Diagnostic> Items => _items;

    /// <summary>Whether any is an error.</summary>
    public bool HasErrors => _items.Exists(d => d.Severity == Severity.Error);

    /// <summary>Adds an error.</summary>
    public void Error(string code, SourceSpan span, string message, string advice = "") => _items.Add(new(code, Severity.Error, message, advice, Source, span));

    /// <summary>Adds a warning.</summary>
    public void Warning(string code, SourceSpan span, string message, string advice = "") => _items.Add(new(code, Severity.Warning, message, advice, Source, span));
}
