using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Publishing;

/// <summary>Writes chord symbols: root, kind, slash bass, degrees, chord diagram; and roman numerals as words.</summary>
internal sealed class HarmonyWriter(XmlOutput xml, ExercisePlan plan)
{
    // How many frets a chord diagram shows at least.
    private const int FrameFrets = 4;

    /// <summary>A chord symbol on the leading staff.</summary>
    /// <param name="mark">The symbol.</param>
    /// <param name="offset">Divisions after the point where it is written; 0 for none.</param>
    public void Write(HarmonyMark mark, long offset)
    {
        if (mark.Chord is { } chord) WriteChord(chord, mark, offset);
        else WriteNoChord(offset);
        if (plan.Score.ShowRomans && !string.IsNullOrEmpty(mark.Roman)) WriteWords(mark.Roman, "below", plan.Lowest, offset);
    }

    private void WriteChord(Chord chord, HarmonyMark mark, long offset)
    {
        var kind = HarmonyKind.Of(chord.Quality);
        xml.Open("harmony", ("placement", "above"), ("print-frame", HasFrame(mark) ? "yes" : "no"));
        WriteNote("root", chord.Root);
        xml.Leaf("kind", kind.Value, ("text", kind.Text), ("parentheses-degrees", kind.AreInBrackets ? "yes" : null));
        if (chord.Bass is { } bass) WriteNote("bass", bass);
        foreach (var degree in kind.Degrees)
        {
            xml.Open("degree");
            xml.Leaf("degree-value", degree.Number);
            xml.Leaf("degree-alter", degree.Alteration);
            xml.Leaf("degree-type", degree.Type, ("text", degree.Text));
            xml.Close();
        }
        if (HasFrame(mark)) WriteFrame(mark);
        WriteEnd(offset, plan.Leading);
        xml.Close();
    }

    // A reader that knows the kind "none" has nothing to print and one that does not would print a root: so words say it,
    // and the harmony, which ends the chord before, is not printed.
    private void WriteNoChord(long offset)
    {
        xml.Open("harmony", ("print-object", "no"), ("placement", "above"), ("print-frame", "no"));
        xml.Open("root");
        xml.Leaf("root-step", "C", ("text", ""));
        xml.Close();
        xml.Leaf("kind", "none", ("text", ""));
        WriteEnd(offset, plan.Leading);
        xml.Close();
        WriteWords("N.C.", "above", plan.Leading, offset);
    }

    private void WriteWords(string words, string placement, StaffRole staff, long offset)
    {
        xml.Open("direction", ("placement", placement));
        xml.Open("direction-type");
        xml.Leaf("words", words);
        xml.Close();
        WriteEnd(offset, staff);
        xml.Close();
    }

    private void WriteEnd(long offset, StaffRole staff)
    {
        if (offset != 0) xml.Leaf("offset", offset);
        if (staff.Label is { } label) xml.Leaf("staff", label);
    }

    private void WriteNote(string element, NoteName note)
    {
        xml.Open(element);
        xml.Leaf(element + "-step", note.Letter.ToString());
        if (note.Alteration != 0) xml.Leaf(element + "-alter", note.Alteration);
        xml.Close();
    }

    // A frame of the standard is a chord as it is struck; a map of tones is none.
    private static bool HasFrame(HarmonyMark mark) => !mark.Frame.IsEmpty && !mark.FrameIsMap;

    private void WriteFrame(HarmonyMark mark)
    {
        var lowest = mark.Frame.Where(p => p.Fret > 0).Select(p => p.Fret).DefaultIfEmpty(1).Min();
        var highest = mark.Frame.Max(p => p.Fret);
        var first = highest <= FrameFrets ? 1 : lowest;
        xml.Open("frame", ("unplayed", "x"));
        xml.Leaf("frame-strings", plan.Score.Instrument.StringCount);
        xml.Leaf("frame-frets", Math.Max(FrameFrets, highest - first + 1));
        if (first > 1) xml.Leaf("first-fret", first);
        // From the lowest string of the diagram to the highest, as it is read from left to right.
        foreach (var position in mark.Frame.OrderByDescending(p => p.String))
        {
            xml.Open("frame-note");
            xml.Leaf("string", position.String);
            xml.Leaf("fret", position.Fret);
            foreach (var barre in mark.FrameBarres)
            {
                // From the string with the higher number, where the frame begins, to the other.
                if (barre.Fret != position.Fret) continue;
                if (barre.LastString == position.String) xml.Empty("barre", ("type", "start"));
                else if (barre.FirstString == position.String) xml.Empty("barre", ("type", "stop"));
            }
            xml.Close();
        }
        xml.Close();
    }
}
