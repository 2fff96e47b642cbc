using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>
/// What makes a fingering hard, in points; one point is about the effort of a string skip. Weights are from memory of teaching
/// practice; the formulation (effort of each grip plus effort between neighbours, least sum over the line) follows
/// Sayegh, "Fingering for String Instruments with the Optimum Path Paradigm", Computer Music Journal 13(3), 1989.
/// </summary>
internal sealed class FingeringCosts
{
    private const double ShiftStart = 1.2;
    // A move by one fret is a pivot: the hand turns and the thumb stays.
    private const double PivotStart = 0.8;
    private const double ShiftPerMillimetre = 0.025;
    private const double StringCrossing = 0.2;
    private const double StringSkip = 0.1;
    private const double FingerRoll = 0.15;
    // One finger on two frets without a shift has to let go and jump.
    private const double FingerHop = 1.0;
    private const double ThirdInThreeFretHand = 0.6;
    private const double BeyondLevelPerFret = 0.6;
    private const double SlideRelief = 0.15;
    private const double RestRelief = 0.6;
    private const double NewChordRelief = 0.6;
    private const double WithinChordPenalty = 1.3;
    private const double OffBeatPenalty = 1.8;
    private const double StretchPerMillimetre = 0.04;
    private const double StretchStart = 0.6;
    private const double IndexStretch = 0.4;
    // Fingers closer together than a fret each, as chords have them.
    private const double Squeeze = 0.3;
    private const double HeightPerFret = 0.1;
    private const double OpenString = 0.6;
    private const double OpenStringFarFromHand = 0.4;
    private const int OpenStringRange = 3;
    private const double AnchorStart = 1.0;
    private const double AnchorPerFret = 0.8;
    private const double WrongSideForStroke = 0.8;
    private const double BeyondTheHand = 50;
    // A slide is one finger's; a hammer-on or pull-off needs two, in one place of the hand; a tone that sounds on keeps its finger.
    private const double SlideChangesFinger = 8;
    private const double JoinedByOneFinger = 8;
    private const double JoinedOverShift = 4;
    private const double HeldChangesFinger = 4;

    private static ReadOnlySpan<double> FingerEffort => [0, 0, 0, 0.08, 0.12];

    private readonly HandModel _hand;
    private readonly NeckRequest _neck;
    private readonly double[,] _shift;
    private readonly double _widestSpan;
    private readonly int _homeFret;
    private readonly double _stretch;

    public FingeringCosts(HandModel hand, NeckRequest neck, int level)
    {
        _widestSpan = HandModel.WidestSpan(level);
        _hand = hand;
        _neck = neck;
        _stretch = level switch { <= 1 => 1.6, 2 => 1.3, _ => 1 };
        // Who asks for a part of the neck is at home there.
        _homeFret = neck.Position is null && neck.LowestFret is null && neck.HighestFret is null && neck.Strings.IsEmpty ? HandModel.HomeFret(level) : int.MaxValue;
        var size = hand.HighestFret + 1;
        _shift = new double[size, size];
        for (var a = 1; a < size; a++)
        {
            for (var b = 1; b < size; b++) _shift[a, b] = a == b ? 0 : (Math.Abs(a - b) == 1 ? PivotStart : ShiftStart) + (ShiftPerMillimetre * hand.Distance(a, b));
        }
    }

    /// <summary>Effort of one finger on one fretted place, the stretch out of the hand's natural reach included.</summary>
    /// <param name="finger">1 to 4.</param>
    /// <param name="fret">Fret, 1 and up.</param>
    /// <param name="hand">Hand position.</param>
    public double Fretted(int finger, int fret, int hand)
    {
        var natural = hand + _hand.Reach(finger, hand);
        var cost = FingerEffort[finger] + (HeightPerFret * hand) + (BeyondLevelPerFret * Math.Max(0, fret - _homeFret));
        if (finger == 3 && !_hand.OneFingerAFret(hand)) cost += ThirdInThreeFretHand;
        if (fret < natural && fret >= hand) cost += Squeeze;
        else if (fret != natural) cost += _stretch * (StretchStart + (StretchPerMillimetre * _hand.Distance(fret, natural)) + (finger == 1 ? IndexStretch : 0));
        return cost + Anchor(hand);
    }

    /// <summary>Effort of sounding an open string.</summary>
    public static double Open() => OpenString;

    /// <summary>Effort of a chord's stretch: what it spans beyond the comfortable width of the hand.</summary>
    public static double Span(double millimetres) => StretchPerMillimetre * Math.Max(0, millimetres - (HandModel.ComfortableSpan * 0.75));

    /// <summary>Cost of striking a string with the thumb or popping it on the unusual side: the thumb wants low strings, the pop high ones.</summary>
    public double StrokeSide(Stroke stroke, int stringNumber)
    {
        var middle = (_hand.Instrument.StringCount + 1) / 2.0;
        return stroke switch
        {
            Stroke.Thumb when stringNumber < middle => WrongSideForStroke,
            Stroke.Pop when stringNumber > middle => 2 * WrongSideForStroke,
            _ => 0,
        };
    }

    /// <summary>Effort from one grip to the next.</summary>
    /// <param name="from">Grip before.</param>
    /// <param name="to">Grip after.</param>
    /// <param name="step">Time and joining of the two events.</param>
    public double Between(Grip from, Grip to, in FingeringStep step)
    {
        var cost = 0.0;
        if (from.Hand != to.Hand)
        {
            var shift = _shift[from.Hand, to.Hand] * step.Hurry;
            if (step.IsSlide) shift *= SlideRelief;
            else if (step.ArrivesOnNewChord) shift *= NewChordRelief;
            else if (from.IsOpen || step.IsLong) shift *= RestRelief;
            else shift *= step.ArrivesOnBeat ? WithinChordPenalty : OffBeatPenalty;
            cost += shift;
        }
        else if (!from.IsOpen && !to.IsOpen && from.Fret > 0 && to.Fret > 0 && _hand.Distance(from.Fret, to.Fret) > _widestSpan)
        {
            // Two stretches in opposite directions that one hand cannot join: a shift is always cheaper.
            cost += BeyondTheHand;
        }
        else if (from.Finger == to.Finger && from.Finger > 0 && from.Fret != to.Fret)
        {
            cost += FingerHop;
        }
        var crossing = Math.Abs(from.String - to.String);
        if (crossing > 0)
        {
            cost += (StringCrossing * crossing) + (crossing > 1 ? StringSkip : 0);
            if (from.Finger == to.Finger && from.Finger > 0 && from.Hand == to.Hand && from.Fret == to.Fret) cost += FingerRoll;
        }
        if (step.SameString)
        {
            for (var t = 0; t < to.Positions.Length; t++)
            {
                for (var f = 0; f < from.Positions.Length; f++)
                {
                    if (from.Positions[f].String == to.Positions[t].String) cost += Bond(from, f, to, t, step.IsSlide ? ToneBond.Slide : ToneBond.SameString);
                }
            }
        }
        // An open string belongs to the low positions, whether the hand comes from high up or goes there.
        if (to.IsOpen) cost += OpenStringFarFromHand * Math.Max(0, to.Hand - OpenStringRange);
        else if (from.IsOpen) cost += OpenStringFarFromHand * Math.Max(0, to.Hand - OpenStringRange);
        return cost;
    }

    /// <summary>Effort of single tones that depend on those of the grip before.</summary>
    public static double Bonds(Grip from, Grip to, ImmutableArray<ToneLink> links)
    {
        var cost = 0.0;
        foreach (var link in links) cost += Bond(from, link.Before, to, link.Now, link.Bond);
        return cost;
    }

    // Open strings need no finger.
    private static double Bond(Grip from, int before, Grip to, int now, ToneBond bond)
    {
        var (a, b) = (from.Fingers[before], to.Fingers[now]);
        if (a == 0 || b == 0) return 0;
        return bond switch
        {
            ToneBond.Held => a == b ? 0 : HeldChangesFinger,
            ToneBond.Slide => a == b ? 0 : SlideChangesFinger,
            _ => (a == b ? JoinedByOneFinger : 0) + (from.Hand == to.Hand ? 0 : JoinedOverShift),
        };
    }

    private double Anchor(int hand) =>
        _neck.Position is { } anchor && hand != anchor ? AnchorStart + (AnchorPerFret * Math.Abs(hand - anchor)) : 0;
}

/// <summary>What lies between two events, as far as the hand is concerned.</summary>
/// <param name="Hurry">1 for a quarter note or longer to move in, more when there is less time.</param>
/// <param name="IsLong">Whether the event before lasts long or is followed by a rest.</param>
/// <param name="ArrivesOnBeat">Whether the event after starts on a beat.</param>
/// <param name="ArrivesOnNewChord">Whether a new chord starts with the event after, or between the two.</param>
/// <param name="SameString">Whether both must be on one string (hammer-on, pull-off, slide).</param>
/// <param name="IsSlide">Whether the finger slides from one to the other.</param>
internal readonly record struct FingeringStep(double Hurry, bool IsLong, bool ArrivesOnBeat, bool ArrivesOnNewChord, bool SameString, bool IsSlide)
{
    /// <summary>The step between two events.</summary>
    /// <param name="from">Event before.</param>
    /// <param name="to">Event after.</param>
    /// <param name="chordStarts">Starts of the chords of the line, in order.</param>
    public static FingeringStep Between(LineNote from, LineNote to, ImmutableArray<Fraction> chordStarts)
    {
        var time = (to.Start - from.Start).ToDouble();
        var hurry = time >= 1 ? 1 : time >= 0.5 ? 1.3 : 1.8;
        var isLong = time >= 1.5 || to.Start > from.End;
        var chord = ChordTimes.IndexAt(chordStarts, to.Start);
        var isNewChord = chord >= 0 && chordStarts[chord] > from.Start;
        return new FingeringStep(hurry, isLong, to.Start.IsMultipleOf(1), isNewChord, from.Connection != Connection.None, from.Connection == Connection.Slide);
    }
}
