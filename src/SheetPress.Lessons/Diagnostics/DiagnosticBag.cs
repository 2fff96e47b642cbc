namespace SheetPress.Lessons;

/// <summary>Collects the findings of one lesson. Not safe for use by several threads at once.</summary>
/// <param name="source">The file they are about.</param>
public sealed class DiagnosticBag(SourceText source)
{
    /// <summary>Findings kept; a file that is wrong from end to end says no more after as many.</summary>
    public const int Limit = 100;

    private readonly List<Diagnostic> _items = [];

    /// <summary>The file.</summary>
    public SourceText Source { get; } = source;

    /// <summary>The findings so far, in the order they were made. The same is said once at one place.</summary>
    public IReadOnlyList<Diagnostic> Items => _items;

    /// <summary>Findings that were made after the limit was reached.</summary>
    public int LeftOut { get; private set; }

    /// <summary>Whether any is an error.</summary>
    public bool HasErrors { get; private set; }

    /// <summary>The findings in the order of their places in the file.</summary>
    public IReadOnlyList<Diagnostic> Sorted() => [.. _items.OrderBy(d => d.Span.Start)];

    /// <summary>Adds a problem at a place.</summary>
    public void Add(SourceSpan span, Problem problem)
    {
        HasErrors |= problem.Severity == Severity.Error;
        foreach (var item in _items) if (item.Span == span && item.Code == problem.Code && item.Message == problem.Message) return;
        if (_items.Count >= Limit)
        {
            LeftOut++;
            return;
        }
        _items.Add(new(problem.Code, problem.Severity, problem.Message, problem.Advice, Source, span) { Suggestion = problem.Suggestion });
    }

    /// <summary>Adds an error.</summary>
    public void Error(string code, SourceSpan span, string message, string advice = "") => Add(span, new(code, Severity.Error, message, advice));

    /// <summary>Adds a warning.</summary>
    public void Warning(string code, SourceSpan span, string message, string advice = "") => Add(span, new(code, Severity.Warning, message, advice));
}
