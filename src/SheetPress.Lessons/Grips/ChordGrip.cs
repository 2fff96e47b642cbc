using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>A chord as one hand holds it.</summary>
public sealed record ChordGrip
{
    /// <summary>String and fret of each tone that sounds, from the string with the highest number to string 1.</summary>
    public required ImmutableArray<FretPosition> Places { get; init; }

    /// <summary>Finger of each place, 1 to 4, 0 for an open string.</summary>
    public required ImmutableArray<int> Fingers { get; init; }

    /// <summary>The chord's degree at each place; null for a note outside the chord.</summary>
    public required ImmutableArray<Degree?> Degrees { get; init; }

    /// <summary>Effort, for comparing grips of one chord: less is better.</summary>
    public double Cost { get; init; }

    /// <summary>Fingers that lie over several strings.</summary>
    public ImmutableArray<Barre> Barres => ChordHand.Barres(Places, Fingers);

    /// <summary>The lowest fret that a finger stops; 0 when all strings are open.</summary>
    public int LowestFret
    {
        get
        {
            var lowest = 0;
            foreach (var place in Places) if (place.Fret > 0 && (lowest == 0 || place.Fret < lowest)) lowest = place.Fret;
            return lowest;
        }
    }

    /// <summary>The highest fret.</summary>
    public int HighestFret
    {
        get
        {
            var highest = 0;
            foreach (var place in Places) highest = Math.Max(highest, place.Fret);
            return highest;
        }
    }

    /// <summary>The grip in the shorthand that players write, from the lowest string to the highest: "x32010"; two-digit frets are parted by hyphens.</summary>
    public string Shorthand(int stringCount)
    {
        var words = new string[stringCount];
        Array.Fill(words, "x");
        foreach (var place in Places) words[stringCount - place.String] = place.Fret.ToString(System.Globalization.CultureInfo.InvariantCulture);
        return string.Join(HighestFret > 9 ? "-" : "", words);
    }
}
