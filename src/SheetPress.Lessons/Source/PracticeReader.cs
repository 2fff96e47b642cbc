using System.Collections.Immutable;
using System.Globalization;

namespace SheetPress.Lessons;

/// <summary>Reads the practice plan.</summary>
/// <param name="exercises">How many exercises the lesson lists.</param>
/// <param name="bag">Where problems go.</param>
internal sealed class PracticeReader(int exercises, DiagnosticBag bag)
{
    private const int MaximumSteps = 60;
    private static readonly string[] Names = ["do", "exercise", "tempo", "times", "minutes"];

    /// <summary>The steps in order; none for the word "none".</summary>
    public ImmutableArray<PracticeStep> Read(SourceNode node)
    {
        if (node is ScalarNode word && word.Text.Trim().Value.Equals("none", StringComparison.OrdinalIgnoreCase)) return [];
        if (node is not SequenceNode list)
        {
            bag.Add(node.Span, ExerciseProblems.PracticeNotList());
            return [];
        }
        if (list.Items.Length > MaximumSteps)
        {
            bag.Add(list.Items[MaximumSteps].Span, ExerciseProblems.TooManySteps(MaximumSteps));
            return [];
        }
        var steps = ImmutableArray.CreateBuilder<PracticeStep>();
        foreach (var item in list.Items)
        {
            switch (item)
            {
                case ScalarNode { IsEmpty: false } scalar:
                    steps.Add(new PracticeStep(scalar.Text.Trim().Value, [], 0, 0));
                    break;
                case MappingNode mapping:
                    steps.Add(ReadMapping(mapping));
                    break;
                case BrokenNode:
                    break;
                default:
                    bag.Add(item.Span, ExerciseProblems.StepOfNothing());
                    break;
            }
        }
        return steps.ToImmutable();
    }

    private PracticeStep ReadMapping(MappingNode mapping)
    {
        var fields = new FieldReader(mapping, Names, "the practice plan", bag);
        var task = fields.Line("do", 300) ?? "";
        if (!fields.IsGiven("do") && !fields.IsGiven("exercise") && mapping.IsComplete)
        {
            bag.Add(mapping.Entries.IsEmpty ? mapping.Span : mapping.Entries[0].Name.Span, ExerciseProblems.StepOfNothing());
        }
        int? exercise = null;
        if (fields.Text("exercise") is { } number && fields.NumberOf(number, "exercise", 1, 999) is { } wanted)
        {
            if (wanted <= exercises) exercise = wanted - 1;
            else bag.Add(number.Span, ExerciseProblems.NoSuchExercise(wanted, exercises));
        }
        return new PracticeStep(task, Tempos(fields), fields.Number("times", 1, 100) ?? 0, Minutes(fields)) { Exercise = exercise };
    }

    private ImmutableArray<double> Tempos(FieldReader fields)
    {
        var tempos = ImmutableArray.CreateBuilder<double>();
        foreach (var word in fields.Words("tempo")) if (TempoReader.Number(word, bag) is { } tempo) tempos.Add(tempo);
        return tempos.ToImmutable();
    }

    private double Minutes(FieldReader fields)
    {
        if (fields.Text("minutes") is not { } text) return 0;
        if (double.TryParse(text.Value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var minutes) && minutes is > 0 and <= 600) return minutes;
        bag.Add(text.Span, ExerciseProblems.BadMinutes());
        return 0;
    }
}
