using SheetPress.Scores;

namespace SheetPress.Publishing;

/// <summary>
/// Loudness of a voice along the written measures, as MIDI velocity: steps at dynamic marks, slopes under hairpins. The velocity of each mark is
/// the usual choice of notation playback, sixteen apart around mf at 80, from memory.
/// </summary>
internal sealed class DynamicCurve
{
    private const int Unmarked = 80;
    private const int HairpinStep = 16;

    private readonly List<(Fraction Time, int From, int To, Fraction End)> _pieces = [];

    public DynamicCurve(Score score, int voice)
    {
        var level = Unmarked;
        var marks = Marks(score, voice);
        for (var i = 0; i < marks.Count; i++)
        {
            var (time, direction) = marks[i];
            if (direction.Kind == DirectionKind.Dynamic)
            {
                level = LevelOf(direction.Text) ?? level;
                _pieces.Add((time, level, level, time));
            }
            else if (direction.Kind is DirectionKind.CrescendoStart or DirectionKind.DiminuendoStart)
            {
                var step = direction.Kind == DirectionKind.CrescendoStart ? HairpinStep : -HairpinStep;
                var (end, target) = EndOf(marks, i, Math.Clamp(level + step, 16, 124));
                _pieces.Add((time, level, target, end));
                level = target;
            }
        }
    }

    /// <summary>Velocity at a written time in quarter notes from the start of the score.</summary>
    public int At(Fraction time)
    {
        var level = Unmarked;
        foreach (var piece in _pieces)
        {
            if (piece.Time > time) break;
            var share = piece.End > piece.Time ? Math.Min(1, ((time - piece.Time) / (piece.End - piece.Time)).ToDouble()) : 1;
            level = (int)Math.Round(piece.From + ((piece.To - piece.From) * share));
        }
        return level;
    }

    private static List<(Fraction Time, Direction Direction)> Marks(Score score, int voice)
    {
        var marks = new List<(Fraction, Direction)>();
        var start = Fraction.Zero;
        foreach (var measure in score.Measures)
        {
            foreach (var direction in measure.Directions.Where(d => d.Voice is null || d.Voice == voice).OrderBy(d => d.Offset))
            {
                if (direction.Kind is DirectionKind.Dynamic or DirectionKind.CrescendoStart or DirectionKind.DiminuendoStart or DirectionKind.HairpinStop) marks.Add((start + direction.Offset, direction));
            }
            start += measure.Length;
        }
        return marks;
    }

    // A hairpin runs to its stop, or to the next mark; a dynamic right there is where it leads.
    private static (Fraction End, int Level) EndOf(List<(Fraction Time, Direction Direction)> marks, int index, int level)
    {
        if (index + 1 >= marks.Count) return (marks[index].Time, level);
        var (end, next) = marks[index + 1];
        for (var i = index + 1; i < marks.Count && marks[i].Time == end; i++)
        {
            if (marks[i].Direction.Kind == DirectionKind.Dynamic) return (end, LevelOf(marks[i].Direction.Text) ?? level);
        }
        return (end, next.Kind == DirectionKind.Dynamic ? LevelOf(next.Text) ?? level : level);
    }

    private static int? LevelOf(string mark) => mark switch
    {
        "ppp" => 20,
        "pp" => 33,
        "p" => 49,
        "mp" => 64,
        "mf" => 80,
        "f" => 96,
        "ff" => 112,
        "fff" => 124,
        _ => null,
    };
}
