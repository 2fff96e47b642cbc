using System.Collections.Immutable;

namespace SheetPress.Lessons;

/// <summary>Reads the options of a style by what the style declares.</summary>
/// <param name="bag">Where problems go.</param>
internal sealed class OptionReader(DiagnosticBag bag)
{
    /// <summary>The options given, by name; faulty ones are left out with a report.</summary>
    public ImmutableDictionary<string, OptionValue> Read(ExerciseStyle style, FieldReader fields)
    {
        var values = ImmutableDictionary.CreateBuilder<string, OptionValue>();
        foreach (var option in style.Options)
        {
            if (ReadOne(option, fields) is { } value) values.Add(option.Name, value);
        }
        return values.ToImmutable();
    }

    private OptionValue? ReadOne(StyleOption option, FieldReader fields)
    {
        switch (option.Type)
        {
            case OptionType.Choice:
                if (fields.Text(option.Name) is not { } word) return null;
                var choices = option.Choices.Select((c, i) => (c, i)).ToArray();
                return fields.ChoiceOf(word, option.Name, choices) is { } index ? new OptionValue(word.As(option.Choices[index])) : null;
            case OptionType.Number:
                return fields.Text(option.Name) is { } number && fields.NumberOf(number, option.Name, option.Minimum, option.Maximum) is { } value ? new OptionValue(number) { Number = value } : null;
            case OptionType.Flag:
                return fields.Flag(option.Name) is { } flag ? new OptionValue(fields.Text(option.Name)!) { Flag = flag } : null;
            case OptionType.Degrees:
                return fields.JoinedText(option.Name, ' ') is { } degrees ? ReadDegrees(degrees) : null;
            default:
                return fields.JoinedText(option.Name, '\n') is { } text ? new OptionValue(text) : null;
        }
    }

    private OptionValue? ReadDegrees(LocatedText text)
    {
        var degrees = ImmutableArray.CreateBuilder<DegreeRequest>();
        var fine = true;
        foreach (var word in text.Words())
        {
            if (DegreeWords.TryParse(word.Value, out var degree))
            {
                degrees.Add(degree);
                continue;
            }
            fine = false;
            bag.Add(word.Span, ExerciseProblems.UnknownDegree(word.Value));
        }
        return fine ? new OptionValue(text) { Degrees = degrees.ToImmutable() } : null;
    }
}
