using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>The changes of clef and tempo of a written line that starts over until its progression ends.</summary>
internal static class LineChanges
{
    /// <summary>
    /// The changes in order. Each round begins with the clef and the tempo of the first, where the progression has no tempos of its own;
    /// what is in force already is left out.
    /// </summary>
    /// <param name="context">The exercise.</param>
    /// <param name="line">Its line.</param>
    public static ImmutableArray<LineChange> Of(ExerciseContext context, WrittenLine line)
    {
        if (line.Changes.Count == 0) return [];
        var changes = ImmutableArray.CreateBuilder<LineChange>();
        var progression = context.Progression;
        var usual = context.Instrument.Clef;
        var atStart = progression.Measures.Any(m => m.Directions.Any(d => d.Kind == DirectionKind.Tempo)) ? null : context.Request.Tempo ?? context.Lesson.Tempo;
        var (clef, tempo) = (usual, atStart);
        for (var round = Fraction.Zero; round < progression.Length; round += line.Length)
        {
            if (!line.Changes.Any(c => c.Start == Fraction.Zero && c.IsBass is not null)) TakeClef(usual, round);
            if (atStart is not null) TakeTempo(atStart, round);
            foreach (var change in line.Changes)
            {
                var start = round + change.Start;
                if (start >= progression.Length) break;
                if (change.IsBass is { } isBass) TakeClef(ClefOf(isBass, usual), start);
                if (change.Tempo is { } wanted) TakeTempo(wanted.Times(context.Request.TempoShare), start);
                if (change.Equation is { } equation) TakeEquation(equation, start);
            }
        }
        return changes.ToImmutable();

        void TakeClef(Clef wanted, Fraction start)
        {
            if (wanted != clef) changes.Add(new LineChange(start) { Clef = wanted });
            clef = wanted;
        }

        void TakeTempo(Tempo wanted, Fraction start)
        {
            if (wanted != tempo || atStart is null) changes.Add(new LineChange(start) { Tempo = wanted });
            tempo = wanted;
        }

        void TakeEquation(TempoEquation equation, Fraction start)
        {
            changes.Add(new LineChange(start) { Equation = equation });
            // Where both values are alike the tempo stays what it was.
            if (tempo is not null && equation.Before.Duration != equation.After.Duration) tempo = equation.From(tempo);
        }
    }

    // An instrument at home in the treble clef keeps its own kind of it.
    private static Clef ClefOf(bool isBass, Clef usual) => isBass ? Clef.Bass : usual == Clef.Bass ? Clef.Treble : usual;
}
