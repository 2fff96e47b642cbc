using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>The fingers of one hand on the tones of a chord.</summary>
/// <param name="Fingers">Finger of each place, 1 to 4, 0 for an open string; one finger on several places lies flat over them.</param>
/// <param name="Hand">Fret at which the index finger lies, or would lie.</param>
/// <param name="Cost">Effort: how far fingers are from their own frets, and what barres ask for.</param>
internal readonly record struct ChordHold(ImmutableArray<int> Fingers, int Hand, double Cost);

/// <summary>
/// Lays the fingers of a hand on a chord. Common practice: fingers keep their order along the neck, on one fret the lower finger takes
/// the lower string, each finger stays near its own fret, and a finger lies over several strings where there are not enough
/// fingers or where that is easier. A flat finger stops whatever lies under it: no open string and no lower fret.
/// </summary>
internal static class ChordHand
{
    private const double Stretch = 1.5;
    private const double Squeeze = 0.7;
    private const double LittleFinger = 0.2;
    private const double Cramped = 0.9;
    private const double Barre = 1;
    private const double BarreString = 0.25;
    private const double BarreNearOpen = 0.3;
    private const double BarreUnderOpen = 1.2;
    private const double BarreOfOther = 0.8;
    private const double BarreOfLittle = 0.6;
    private const double BarreOffBass = 0.8;
    private const double Arch = 1;
    private const double OverMuted = 0.8;
    private const double UnusedFinger = 0.1;

    /// <summary>The easiest way to hold the places; null when one hand cannot.</summary>
    /// <param name="hand">The hand on its neck.</param>
    /// <param name="places">The places, each on a string of its own.</param>
    public static ChordHold? Hold(HandModel hand, ReadOnlySpan<FretPosition> places)
    {
        var search = new Search(hand, [.. places]);
        return search.Run();
    }

    /// <summary>Fingers that lie over several strings, from the places and fingers of a chord.</summary>
    public static ImmutableArray<Barre> Barres(IReadOnlyList<FretPosition> places, IReadOnlyList<int> fingers)
    {
        var barres = ImmutableArray.CreateBuilder<Barre>();
        for (var finger = 1; finger <= 4; finger++)
        {
            var (first, last, fret) = (int.MaxValue, 0, 0);
            for (var i = 0; i < places.Count; i++)
            {
                if (fingers[i] != finger) continue;
                first = Math.Min(first, places[i].String);
                last = Math.Max(last, places[i].String);
                fret = places[i].Fret;
            }
            if (first < last) barres.Add(new Barre(fret, first, last));
        }
        return barres.ToImmutable();
    }

    // Places that one finger takes, from the lower string to the higher.
    private readonly record struct Touch(int Fret, int LowString, int HighString)
    {
        public bool IsBarre => LowString != HighString;
    }

    private sealed class Search
    {
        private readonly HandModel _hand;
        private readonly FretPosition[] _places;
        private readonly int[] _fretOf;
        private readonly int[] _order;
        private readonly List<Touch> _touches = [];
        private readonly int[] _fingers = new int[8];
        private readonly int _low;
        private readonly bool _hasOpen;
        private ChordHold? _best;

        public Search(HandModel hand, FretPosition[] places)
        {
            _hand = hand;
            _places = places;
            _fretOf = new int[hand.Instrument.StringCount + 1];
            Array.Fill(_fretOf, -1);
            foreach (var place in places) _fretOf[place.String] = place.Fret;
            _order = [.. Enumerable.Range(0, places.Length).Where(i => places[i].Fret > 0).OrderBy(i => places[i].Fret).ThenByDescending(i => places[i].String)];
            _low = _order.Length == 0 ? 0 : places[_order[0]].Fret;
            _hasOpen = _order.Length < places.Length;
        }

        public ChordHold? Run()
        {
            if (_order.Length == 0) return new ChordHold([.. new int[_places.Length]], 1, 0);
            Group(0, 0);
            return _best;
        }

        // Takes the places in order, each by a finger of its own or together with those that follow on its fret.
        private void Group(int at, double cost)
        {
            if (_touches.Count > 4) return;
            if (at == _order.Length)
            {
                // Beside open strings the hand lies so that the middle finger can take the lowest fret.
                if (_hasOpen && _low > 1) Number(0, 0, _low - 1, cost);
                Number(0, 0, _low, cost);
                return;
            }
            var first = _places[_order[at]];
            for (var end = at + 1; end <= _order.Length; end++)
            {
                var last = _places[_order[end - 1]];
                if (last.Fret != first.Fret) break;
                var touch = new Touch(first.Fret, first.String, last.String);
                if (BarreCost(touch) is not { } barre) break;
                _touches.Add(touch);
                Group(end, cost + barre);
                _touches.RemoveAt(_touches.Count - 1);
            }
        }

        private double? BarreCost(Touch touch)
        {
            if (!touch.IsBarre) return 0;
            var cost = Barre + (BarreString * (touch.LowString - touch.HighString - 1)) + OpenBeside(touch);
            // A long barre that leaves lower strings to other fingers turns the hand.
            if (touch.LowString - touch.HighString > 1 && touch.LowString < _places.Max(p => p.String)) cost += BarreOffBass;
            for (var s = touch.HighString + 1; s < touch.LowString; s++)
            {
                if (_fretOf[s] >= 0 && _fretOf[s] < touch.Fret) return null;
                if (_fretOf[s] < 0) cost += OverMuted;
            }
            if (touch.Fret == _low) return cost;
            // The finger has to bend so that a higher string beside it sounds lower or open.
            for (var s = touch.HighString - 1; s >= 1; s--) if (_fretOf[s] >= 0 && _fretOf[s] < touch.Fret) return cost + Arch;
            return cost;
        }

        private double OpenBeside(Touch touch)
        {
            if (!_hasOpen) return 0;
            for (var s = 1; s < touch.HighString; s++) if (_fretOf[s] == 0) return BarreUnderOpen;
            return BarreNearOpen;
        }

        // Gives the touches growing fingers.
        private void Number(int at, int lastFinger, int handAt, double cost)
        {
            if (_best is { } best && cost >= best.Cost - 1e-9) return;
            if (at == _touches.Count)
            {
                _best = new ChordHold(ByPlace(), handAt, cost);
                return;
            }
            var touch = _touches[at];
            for (var finger = lastFinger + 1; finger <= 4 - (_touches.Count - at - 1); finger++)
            {
                var off = handAt + _hand.Reach(finger, handAt) - touch.Fret;
                _fingers[at] = finger;
                // On one fret with a silent string between them two fingers that are not neighbours lie easier (a minor tenth: 1 and 3).
                var cramped = at > 0 && finger == lastFinger + 1 && HasSilentBetween(_touches[at - 1], touch) ? Cramped : 0;
                var own = cramped + (finger == 4 ? LittleFinger : 0) + (touch.IsBarre && finger > 1 ? BarreOfOther + (finger == 4 ? BarreOfLittle : 0) : 0);
                Number(at + 1, finger, handAt, cost + (off < 0 ? Stretch * -off : Squeeze * Math.Min(off, 1)) + (finger == 3 && !_hand.OneFingerAFret(handAt) ? UnusedFinger : 0) + own);
            }
        }

        private bool HasSilentBetween(Touch lower, Touch higher)
        {
            if (lower.Fret != higher.Fret || lower.HighString - higher.LowString < 2) return false;
            for (var s = higher.LowString + 1; s < lower.HighString; s++) if (_fretOf[s] >= 0) return false;
            return true;
        }

        private ImmutableArray<int> ByPlace()
        {
            var fingers = new int[_places.Length];
            for (var i = 0; i < _places.Length; i++)
            {
                for (var t = 0; t < _touches.Count; t++)
                {
                    var touch = _touches[t];
                    if (_places[i].Fret == touch.Fret && _places[i].String <= touch.LowString && _places[i].String >= touch.HighString) fingers[i] = _fingers[t];
                }
            }
            return [.. fingers];
        }
    }
}
