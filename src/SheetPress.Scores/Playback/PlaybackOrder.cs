using System.Collections.Immutable;

namespace SheetPress.Scores;

/// <summary>
/// The order in which measures are played: repeats, endings, D.C., D.S., coda and fine followed. Common practice: a jump is taken
/// once, at the end of its measure and after the repeats before it; after it repeats are not taken and the last ending is played,
/// until the coda, where repeats count again; "Fine" and "To Coda" count only after a jump, at the end of their measure. D.S. goes to the
/// last segno before it, To Coda to the next coda; one that has none is passed over, so nothing is skipped that was not played.
/// </summary>
public static class PlaybackOrder
{
    /// <summary>Most measures that are unrolled; an order that would be longer stops there.</summary>
    public const int MostMeasures = 20_000;

    /// <summary>Indexes of the measures of a score in the order they sound; at least one, every one valid. A form in which nothing would sound is played as written.</summary>
    public static ImmutableArray<int> Of(Score score) => Of(score.Measures);

    /// <summary>The same for measures alone, at least one.</summary>
    public static ImmutableArray<int> Of(ImmutableArray<Measure> measures) => new Walk(measures).Run();

    private sealed class Walk(ImmutableArray<Measure> measures)
    {
        private readonly ImmutableArray<int>.Builder _order = ImmutableArray.CreateBuilder<int>();
        private readonly HashSet<int> _jumped = [];
        private int _repeatStart;
        private int _pass = 1;
        private bool _afterJump;
        private bool _mayEnd;
        private bool _mayGoToCoda;

        public ImmutableArray<int> Run()
        {
            for (var i = 0; i < measures.Length && _order.Count < MostMeasures;)
            {
                var measure = measures[i];
                if (measure.RepeatStart && i != _repeatStart) BeginSection(i);
                if (!measure.EndingStart.IsEmpty && !IsPlayed(i))
                {
                    i = EndOfEnding(i) + 1;
                    if (!IsEndingStart(i)) BeginSection(i);
                    continue;
                }
                _order.Add(i);
                i = NextAfter(i);
            }
            return _order.Count > 0 ? _order.ToImmutable() : [.. Enumerable.Range(0, measures.Length)];
        }

        private void BeginSection(int index)
        {
            _repeatStart = index;
            _pass = 1;
        }

        private int NextAfter(int index)
        {
            var measure = measures[index];
            if (_afterJump)
            {
                if (_mayEnd && Has(measure, DirectionKind.Fine)) return measures.Length;
                if (_mayGoToCoda && Has(measure, DirectionKind.ToCoda) && CodaAfter(index) is { } coda)
                {
                    _afterJump = false;
                    BeginSection(coda);
                    return coda;
                }
            }
            else if (measure.RepeatEndTimes > 0)
            {
                if (_pass < Math.Max(measure.RepeatEndTimes, HighestEnding(index)))
                {
                    _pass++;
                    return _repeatStart;
                }
                BeginSection(index + 1);
            }
            else if (IsEndOfLastEnding(index))
            {
                BeginSection(index + 1);
            }
            return JumpFrom(measure, index) ?? index + 1;
        }

        private int? JumpFrom(Measure measure, int index)
        {
            foreach (var direction in measure.Directions)
            {
                int? target = direction.Kind switch
                {
                    DirectionKind.DaCapo => 0,
                    DirectionKind.DalSegno => SegnoBefore(index),
                    _ => null,
                };
                if (target is not { } to || !_jumped.Add(index)) continue;
                _afterJump = true;
                _mayEnd = JumpWords.MayEnd(direction.Text);
                _mayGoToCoda = JumpWords.MayGoToCoda(direction.Text);
                return to;
            }
            return null;
        }

        private bool IsPlayed(int index)
        {
            var numbers = measures[index].EndingStart;
            return _afterJump ? numbers.Contains(HighestEnding(index)) : numbers.Contains(_pass);
        }

        private bool IsEndingStart(int index) => index < measures.Length && !measures[index].EndingStart.IsEmpty;

        private bool IsEndOfLastEnding(int index)
        {
            var start = index;
            while (start >= 0 && measures[start].EndingStart.IsEmpty) start--;
            return start >= 0 && EndOfEnding(start) == index && !IsEndingStart(index + 1);
        }

        // The last measure under the bracket: where it stops, or before the next one starts.
        private int EndOfEnding(int start)
        {
            for (var i = start; i < measures.Length; i++)
            {
                if (measures[i].EndingStop) return i;
                if (IsEndingStart(i + 1)) return i;
            }
            return measures.Length - 1;
        }

        // The highest number among the endings that stand side by side around a measure; 0 outside endings.
        private int HighestEnding(int index)
        {
            var start = index;
            while (start >= 0 && measures[start].EndingStart.IsEmpty) start--;
            if (start < 0 || EndOfEnding(start) < index) return 0;
            while (PrecedingEnding(start) is { } before) start = before;
            var highest = 0;
            while (IsEndingStart(start))
            {
                foreach (var number in measures[start].EndingStart) highest = Math.Max(highest, number);
                start = EndOfEnding(start) + 1;
            }
            return highest;
        }

        private int? PrecedingEnding(int start)
        {
            for (var i = start - 1; i >= 0; i--)
            {
                if (!measures[i].EndingStart.IsEmpty) return EndOfEnding(i) == start - 1 ? i : null;
            }
            return null;
        }

        private int? SegnoBefore(int index)
        {
            for (var i = index; i >= 0; i--) if (Has(measures[i], DirectionKind.Segno)) return i;
            return null;
        }

        private int? CodaAfter(int index)
        {
            for (var i = index + 1; i < measures.Length; i++) if (Has(measures[i], DirectionKind.Coda)) return i;
            return null;
        }

        private static bool Has(Measure measure, DirectionKind kind)
        {
            foreach (var direction in measure.Directions) if (direction.Kind == kind) return true;
            return false;
        }
    }
}
