using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>The four tones of each chord in every order.</summary>
internal sealed class Permutations : ExerciseStyle
{
    private const int OrdersFromRoot = 6;

    public override string Name => "permutations";
    public override string Title => "Chord tones in every order";
    public override string Summary => "The four tones of each chord in all their orders, one order after the other; a triad takes its octave along.";
    public override string Group => "chord tones";
    public override ImmutableArray<StyleOption> Options =>
    [
        new("order", OptionType.Number, "One order for all chords, 1 (upward) to 24 (downward); the next one with every chord when not given.", "") { Minimum = 1, Maximum = 24 },
        new("first", OptionType.Choice, "Whether every order starts with the root.", "any") { Choices = ["any", "root"] },
    ];

    public override string Instruction(ExerciseRequest request) => request.Number("order") is null
        ? "Every chord has its tones in another order: name the degrees before you play them."
        : "The same order over every chord: keep its shape in the ear, not only in the hand.";

    public override (string Option, Problem Problem)? ClashIn(ExerciseRequest request) =>
        request.Word("first") == "root" && request.Number("order") is { } order and > OrdersFromRoot ? ("order", OptionProblems.NoSuchOrder(order, OrdersFromRoot)) : null;

    public override Line Generate(ExerciseContext context)
    {
        var order = context.Request.Number("order");
        var rootFirst = context.Request.Word("first") == "root";
        var turn = context.Request.Seed - 1;
        return new CellLine(context, LevelRhythm.ForRuns(context)).Write((step, room) =>
        {
            // Where three notes are all there is room for, the triad is put in order.
            var count = room == 3 ? 3 : 4;
            var tones = ChordStack.Four(step);
            var indexes = Order(rootFirst, order is { } number ? number - 1 : turn++, count);
            return Figures.TurningBack([.. indexes.Select(i => tones[i])], room);
        });
    }

    // The orders as they stand in a dictionary of the figures 0 1 2 3.
    private static List<int> Order(bool rootFirst, int number, int count)
    {
        List<int> left = [.. Enumerable.Range(0, count)];
        var order = new List<int>(count);
        number %= Factorial(rootFirst ? count - 1 : count);
        for (var places = count; places >= 1; places--)
        {
            var each = Factorial(places - 1);
            var at = number / each;
            number %= each;
            order.Add(left[at]);
            left.RemoveAt(at);
        }
        return order;
    }

    private static int Factorial(int n) => n <= 1 ? 1 : n * Factorial(n - 1);
}
