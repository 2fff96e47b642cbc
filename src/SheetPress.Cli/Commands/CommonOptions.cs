using System.Collections.Immutable;
using System.CommandLine;
using System.CommandLine.Parsing;
using SheetPress.Engraving;
using SheetPress.Lessons;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Cli;

/// <summary>Options and arguments that several commands share.</summary>
internal static class CommonOptions
{
    public static Argument<string[]> Paths() => new("PATH")
    {
        Description = "Lesson files, or folders that are searched for *.yaml and *.yml.",
        Arity = ArgumentArity.OneOrMore,
    };

    public static Option<Key?> Key(string description, bool required = false) => new("--key")
    {
        Description = description,
        HelpName = "KEY",
        Required = required,
        CustomParser = result => Single(result, text => Theory.Key.TryParse(text, out var key) ? key : null,
            text => $"'{text}' is no key: write a tonic and a mode, as in \"C minor\" or \"Eb major\"."),
    };

    public static Option<string?> Instrument(string description)
    {
        var option = new Option<string?>("--instrument")
        {
            Description = description + " One of: " + string.Join(", ", InstrumentCatalogue.All.Select(i => i.Id)) + ".",
            HelpName = "ID",
        };
        option.Validators.Add(result =>
        {
            if (result.Tokens is not [var token] || InstrumentCatalogue.Find(token.Value) is not null) return;
            var ids = InstrumentCatalogue.All.Select(i => i.Id).ToArray();
            var nearest = NearestWord.Find(token.Value, ids);
            result.AddError($"'{token.Value}' is no instrument{(nearest is null ? "" : $" (did you mean {nearest}?)")}. Write one of: {string.Join(", ", ids)}.");
        });
        return option;
    }

    public static Option<string> Paper()
    {
        var option = new Option<string>("--paper") { Description = "Paper of the sheets.", DefaultValueFactory = _ => PaperSize.A4.Name };
        option.AcceptOnlyFromAmong([.. Papers.Select(p => p.Name)]);
        return option;
    }

    public static PaperSize PaperOf(string name) => Papers.First(p => p.Name == name);

    public static Option<string?> Pages()
    {
        var option = new Option<string?>("--pages") { Description = "Set every lesson on pages of this kind, in place of what it says itself." };
        option.AcceptOnlyFromAmong([.. PageKinds.Words.Select(w => w.Word)]);
        return option;
    }

    public static PageKind? PagesOf(string? word) => word is null ? null : PageKinds.Find(word);

    private static ImmutableArray<PaperSize> Papers => [PaperSize.A4, PaperSize.Letter, PaperSize.A5];

    private static T? Single<T>(ArgumentResult result, Func<string, T?> parse, Func<string, string> error) where T : class
    {
        if (result.Tokens is not [var token]) return null;
        if (parse(token.Value) is { } value) return value;
        result.AddError(error(token.Value));
        return null;
    }
}
