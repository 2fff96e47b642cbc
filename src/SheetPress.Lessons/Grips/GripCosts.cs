using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>
/// What players look for in a grip, in points; less is better. Weights are from memory of teaching practice, set so that the chords
/// of the first year and the movable forms every method teaches come out first.
/// </summary>
internal static class GripCosts
{
    private const double PerFinger = 0.35;
    private const double HandEffort = 0.6;
    private const double BarreInFirstMonths = 1;
    private const double BarreInFirstYear = 0.25;
    private const double LowestFret = 0.25;
    private const double HighestFret = 0.15;
    private const double FirstPosition = 0.3;
    private const int FirstPositionEnd = 3;
    private const double NutReach = 130;
    private const double PerTone = 0.9;
    private const double PerToneBeyondEnough = 0.45;
    private const int Enough = 4;
    private const double Thin = 2;
    private const double Gap = 1.4;
    private const double SilentOfFew = 2;
    private const double SilentTop = 0.75;
    private const double SilentTopOfRich = 0.3;
    private const double NoFifth = 0.7;
    private const double Missing = 0.5;
    private const double SecondThird = 0.4;
    private const double LowThird = 0.9;
    private const double LowMinorThird = 1.8;
    private const double LowDull = 1.5;
    private const double LowExtension = 1.2;
    private const double NinthUnderThird = 3;
    private const double BassTwice = 2;
    private const double OpenBetween = 0.4;
    private const double ArchHigh = 0.6;
    private const double OpenUnderHighFret = 0.7;
    private const double OpenUnderHand = 1.4;

    /// <summary>Thirds below this growl in close position (common practice): major ones below C3, minor ones a little higher.</summary>
    private const int ClearFrom = 48;

    /// <summary>The effort of a grip.</summary>
    /// <param name="instrument">The instrument.</param>
    /// <param name="tones">The chord.</param>
    /// <param name="places">Places from the lowest string on.</param>
    /// <param name="hold">The fingers on them.</param>
    /// <param name="span">Millimetres from the lowest fret to the highest.</param>
    /// <param name="level">Level, 1 to 5: barres are hard in the first years.</param>
    public static double Of(Instrument instrument, GripTones tones, ReadOnlySpan<FretPosition> places, ChordHold hold, double span, int level)
    {
        var sounds = new int[places.Length];
        for (var i = 0; i < places.Length; i++) sounds[i] = instrument.MidiNumberAt(places[i].String, places[i].Fret);
        return Hand(instrument, places, hold, span, level) + Fullness(instrument, tones, places) + Sound(tones, sounds);
    }

    private static double Hand(Instrument instrument, ReadOnlySpan<FretPosition> places, ChordHold hold, double span, int level)
    {
        var (lowest, highest, open, between, fingers) = (int.MaxValue, 0, 0, 0, 0);
        for (var i = 0; i < places.Length; i++)
        {
            var fret = places[i].Fret;
            fingers |= 1 << hold.Fingers[i];
            highest = Math.Max(highest, fret);
            if (fret > 0) lowest = Math.Min(lowest, fret);
            else open++;
            if (fret == 0 && i > 0 && i < places.Length - 1 && places[i - 1].Fret > 0 && places[i + 1].Fret > 0) between++;
        }
        var cost = (PerFinger * System.Numerics.BitOperations.PopCount((uint)fingers >> 1)) + (HandEffort * hold.Cost) + FingeringCosts.Span(span);
        if (highest == 0) return cost;
        if (level < 3 && HasLongBarre(places, hold)) cost += level < 2 ? BarreInFirstMonths : BarreInFirstYear;
        var isFar = instrument.FretDistance(instrument.Capo + highest) - instrument.FretDistance(instrument.Capo) > NutReach;
        cost += (LowestFret * (lowest - 1)) + (HighestFret * highest);
        // A finger arched over an open string, and open strings under a hand that has left the nut.
        cost += (OpenBetween + (isFar ? ArchHigh : 0)) * between;
        if (isFar) cost += OpenUnderHighFret * open;
        if (highest <= FirstPositionEnd) cost -= FirstPosition;
        return open > 0 && lowest > 2 ? cost + (OpenUnderHand * (lowest - 2)) : cost;
    }

    private static bool HasLongBarre(ReadOnlySpan<FretPosition> places, ChordHold hold)
    {
        var under = 0;
        for (var i = 0; i < places.Length; i++) if (hold.Fingers[i] == 1) under++;
        return under > 1 && places.Length > 4;
    }

    private static double Fullness(Instrument instrument, GripTones tones, ReadOnlySpan<FretPosition> places)
    {
        // A power chord is root, fifth and octave and no more.
        var isBare = tones.Chord.Quality.Degrees.Length == 2;
        var isRich = tones.Chord.Quality.Degrees.Length > 3;
        var count = places.Length;
        var cost = isBare ? 0 : isRich && count > Enough ? -(PerTone * Enough) - (PerToneBeyondEnough * (count - Enough)) : -PerTone * count;
        if (count < Enough && !isBare && instrument.StringCount > Enough) cost += Thin;
        // With few strings there is none to spare.
        if (instrument.StringCount <= Enough) cost += SilentOfFew * (instrument.StringCount - places[0].String);
        for (var i = 1; i < count; i++) cost += Gap * (places[i - 1].String - places[i].String - 1);
        if (isBare) return cost;
        var silent = instrument.StringCount <= Enough ? SilentOfFew : isRich ? SilentTopOfRich : SilentTop;
        return cost + (silent * (places[^1].String - 1));
    }

    private static double Sound(GripTones tones, int[] sounds)
    {
        var root = tones.Chord.Root.PitchClass;
        var lowest = sounds.Min();
        var (has, thirds, bass) = (0, 0, 0);
        var (highestThird, lowestNinth) = (int.MinValue, int.MaxValue);
        var cost = 0.0;
        foreach (var sound in sounds)
        {
            var step = NoteMath.Modulo(sound - root, 12);
            has |= 1 << step;
            if (step == tones.BassStep) bass++;
            if (step == tones.ThirdStep)
            {
                thirds++;
                highestThird = Math.Max(highestThird, sound);
            }
            if (!tones.IsExtension(step)) continue;
            if (sound - lowest < 12) cost += LowExtension;
            if (tones.ThirdStep == 4 && step == 3) lowestNinth = Math.Min(lowestNinth, sound);
        }
        // A sharp ninth under the third is a minor ninth between them.
        if (lowestNinth < highestThird) cost += NinthUnderThird;
        if (tones.FifthStep >= 0 && (has & (1 << tones.FifthStep)) == 0) cost += NoFifth;
        cost += Missing * System.Numerics.BitOperations.PopCount((uint)(tones.All & ~has & ~(1 << 7)));
        if (thirds > 1) cost += SecondThird * (thirds - 1);
        if (bass > 1 && !tones.BassIsTone) cost += BassTwice * (bass - 1);
        // Whoever writes a slash wants that bass, whatever it sounds like.
        if (tones.Chord.Bass is not null) return cost;
        var second = int.MaxValue;
        foreach (var sound in sounds) if (sound > lowest) second = Math.Min(second, sound);
        return cost + LowInterval(lowest, second - lowest);
    }

    private static double LowInterval(int lowest, int interval) => interval switch
    {
        3 when lowest < ClearFrom + 3 => LowMinorThird,
        4 when lowest < ClearFrom => LowThird,
        1 or 2 or 5 or 8 or 9 when lowest < ClearFrom + 3 => LowDull,
        _ => 0,
    };
}
