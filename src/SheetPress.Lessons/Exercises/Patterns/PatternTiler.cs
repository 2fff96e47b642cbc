using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>
/// Lays the lines of a pattern over the chords.
/// <list type="bullet">
/// <item>Each chord is filled with the longest line that fits what is left of it, a line of several bars only from a bar line on.
/// A chord shorter than every line gets the beginning of the shortest.</item>
/// <item>Of lines of one length those of the highest level that the lesson allows take turns, those for the chord's own third first.</item>
/// <item>The bars that lead into a new phrase have a fill where one fits: of several the one that leaves the shortest way to the next root.</item>
/// <item>The last chord is struck once, on its root, and held; so is one in whose time the pattern would be silent.</item>
/// </list>
/// </summary>
internal sealed class PatternTiler(Pattern pattern, ExerciseContext context, HarmonyTrack track, bool[] hasFill)
{
    private static readonly WrittenNote RestingRoot = new(Fraction.Zero, Fraction.One, [new DegreeWord(new DegreeRequest(Degree.Root, false), 0)], default, default, null, default);

    private readonly List<PlacedNote> _placed = [];
    private readonly Dictionary<Fraction, int> _turns = [];

    /// <summary>A meter of the progression that no line is written for; null when there is none.</summary>
    public Meter? OddMeter { get; private set; }

    /// <summary>How far a fill leaves the player from the next root, in half steps; null to take fills by turns.</summary>
    public Func<PatternLine, HarmonyStep, int>? WayOn { get; init; }

    /// <summary>The notes in order of time.</summary>
    public List<PlacedNote> Tile()
    {
        for (var i = 0; i < track.Sounding.Length; i++)
        {
            var step = track.Sounding[i];
            if (step.IsFinal)
            {
                var rest = pattern.IsTiedOver ? RestingRoot with { Tones = [] } : RestingRoot;
                _placed.Add(new PlacedNote(rest, step.Start, step.End - step.Start, step));
                continue;
            }
            var end = step.End;
            while (i + 1 < track.Sounding.Length && !track.Sounding[i + 1].IsFinal && track.Sounding[i + 1].Continues(track.Sounding[i])) end = track.Sounding[++i].End;
            var before = _placed.Count;
            Fill(step.Start, end);
            // A chord too short for more than the rest that its line begins with is heard all the same.
            if (_placed.Count == before) _placed.Add(new PlacedNote(RestingRoot, step.Start, end - step.Start, step));
        }
        return _placed;
    }

    private void Fill(Fraction from, Fraction end)
    {
        while (from < end)
        {
            var (index, start) = MeasureAt(from);
            var step = track.At(from)!;
            var measures = context.Progression.Measures;
            var barEnd = start + measures[index].Length;
            var until = Fraction.Min(end, hasFill[index] ? barEnd : NextFill(index, start));
            var room = until - from;
            var line = hasFill[index] && until == barEnd ? ChooseFill(measures[index].Meter, room, step) : null;
            line ??= ChooseLine(measures[index].Meter, room, from == start, barEnd - from, step);
            var length = Fraction.Min(line.Line.Length, room);
            // Cut at the bar line when it would begin inside a bar and run over it.
            if (from != start) length = Fraction.Min(length, barEnd - from);
            Place(line.Line, from, length);
            from += length;
        }
    }

    private PatternLine ChooseLine(Meter meter, Fraction room, bool atBarLine, Fraction barRest, HarmonyStep step)
    {
        var most = atBarLine ? room : Fraction.Min(room, barRest);
        var usable = Usable(pattern.Lines, meter, step);
        // In a meter that it is not written for, the beginning of its longest line is the pattern; a shorter line is not.
        if (!pattern.IsFor(meter) && usable.Where(l => l.Line.Bars == 1).MaxBy(l => l.Line.Length) is { } longest) return longest;
        var fitting = usable.Where(l => l.Line.Length <= most).ToList();
        if (fitting.Count == 0) return usable.MinBy(l => l.Line.Length)!;
        var length = fitting.Max(l => l.Line.Length);
        return InTurn([.. fitting.Where(l => l.Line.Length == length)]);
    }

    private PatternLine? ChooseFill(Meter meter, Fraction room, HarmonyStep step)
    {
        var fitting = Usable(pattern.Fills, meter, step).Where(l => l.Line.Length == room).ToList();
        if (fitting.Count == 0) return null;
        if (WayOn is not { } wayOn) return InTurn(fitting);
        var best = Best(fitting);
        var shortest = best.Min(l => wayOn(l, step));
        return InTurn([.. best.Where(l => wayOn(l, step) == shortest)]);
    }

    // The highest level, and of that the lines made for the kind of chord.
    private static List<PatternLine> Best(List<PatternLine> lines)
    {
        var level = lines.Max(l => l.Level);
        var ofLevel = lines.Where(l => l.Level == level).ToList();
        var made = ofLevel.Where(l => l.Over is not null).ToList();
        return made.Count > 0 ? made : ofLevel;
    }

    private PatternLine InTurn(List<PatternLine> lines)
    {
        var equals = Best(lines);
        var length = equals[0].Line.Length;
        var turn = _turns.GetValueOrDefault(length, context.Request.Seed - 1);
        _turns[length] = turn + 1;
        return equals[turn % equals.Count];
    }

    // Lines of the meter, chord and level; of any meter where the pattern has none for this one, the easiest where all are too hard.
    private List<PatternLine> Usable(ImmutableArray<PatternLine> lines, Meter meter, HarmonyStep step)
    {
        var ofMeter = lines.Where(l => Pattern.Alike(l.Meter, meter)).ToList();
        if (ofMeter.Exists(l => l.Meter.Equals(meter))) ofMeter.RemoveAll(l => !l.Meter.Groups.SequenceEqual(meter.Groups));
        if (ofMeter.Count == 0 && lines == pattern.Lines)
        {
            OddMeter ??= meter;
            ofMeter = [.. lines];
        }
        var third = ThirdOf(step);
        var ofChord = ofMeter.Where(l => l.Over is null || l.Over == third).ToList();
        if (ofChord.Count == 0) ofChord = ofMeter;
        var ofLevel = ofChord.Where(l => l.Level <= context.Level).ToList();
        if (ofLevel.Count > 0 || ofChord.Count == 0 || lines != pattern.Lines) return ofLevel;
        var easiest = ofChord.Min(l => l.Level);
        return [.. ofChord.Where(l => l.Level == easiest)];
    }

    private static ThirdKind? ThirdOf(HarmonyStep step) => step.ChordDegree(3)?.Alteration switch { 0 => ThirdKind.Major, -1 => ThirdKind.Minor, _ => null };

    // Where the next bar with a fill begins, so that no longer line runs over it.
    private Fraction NextFill(int index, Fraction start)
    {
        var measures = context.Progression.Measures;
        for (; index < measures.Length; index++)
        {
            if (hasFill[index]) return start;
            start += measures[index].Length;
        }
        return start;
    }

    private (int Index, Fraction Start) MeasureAt(Fraction time)
    {
        var start = Fraction.Zero;
        var measures = context.Progression.Measures;
        for (var i = 0; i < measures.Length - 1; i++)
        {
            if (time < start + measures[i].Length) return (i, start);
            start += measures[i].Length;
        }
        return (measures.Length - 1, start);
    }

    private void Place(WrittenLine line, Fraction from, Fraction length)
    {
        foreach (var note in line.Notes)
        {
            if (note.Start >= length) break;
            var start = from + note.Start;
            _placed.Add(new PlacedNote(note, start, Fraction.Min(note.Duration, length - note.Start), track.At(start)));
        }
    }
}
