using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Publishing;

/// <summary>Writes what holds from a measure on: key, meter, clefs, tuning, transposition, signs that stand for whole measures.</summary>
internal sealed class AttributesWriter(XmlOutput xml, Divisions divisions)
{
    private Key? _key;
    private Meter? _meter;
    private Instrument? _instrument;
    private readonly Dictionary<int, bool> _shown = [];
    private bool _repeating;

    /// <summary>The written pitch of the middle line of the notation staff.</summary>
    public Pitch MiddleLine { get; private set; }

    /// <summary>The attributes of a measure; at the start of an exercise all that a player has to know again.</summary>
    public void Write(ExercisePlan plan, int measureIndex)
    {
        var measure = plan.Score.Measures[measureIndex];
        var starts = measureIndex == 0;
        var veryFirst = _instrument is null;
        xml.OpenGroup("attributes");
        if (veryFirst) xml.Leaf("divisions", divisions.PerQuarter);
        if (starts || _key != measure.Key) WriteKey(measure.Key);
        if (starts || _meter is null || (_meter.Beats, _meter.BeatUnit) != (measure.Meter.Beats, measure.Meter.BeatUnit)) WriteTime(measure.Meter);
        if (veryFirst && plan.Staves.Length > 1) xml.Leaf("staves", plan.Staves.Length);
        var instrument = plan.Score.Instrument;
        if (starts || measure.ClefChange is not null) WriteClefs(plan, measure.ClefChange ?? instrument.Clef, starts);
        if (starts) WriteStaffDetails(plan);
        if (starts && (veryFirst ? instrument.OctaveShift != 0 : instrument.OctaveShift != _instrument!.OctaveShift)) WriteTranspose(instrument);
        WriteMeasureRepeat(plan, measureIndex);
        xml.Close();
        _key = measure.Key;
        _meter = measure.Meter;
        _instrument = instrument;
    }

    private void WriteKey(Key key)
    {
        xml.Open("key");
        xml.Leaf("fifths", key.Fifths);
        xml.Leaf("mode", key.Mode.ToString().ToLowerInvariant());
        xml.Close();
    }

    private void WriteTime(Meter meter)
    {
        xml.Open("time");
        xml.Leaf("beats", meter.Beats);
        xml.Leaf("beat-type", meter.BeatUnit);
        xml.Close();
    }

    private void WriteClefs(ExercisePlan plan, Clef clef, bool starts)
    {
        // One rule for the octave: where the part transposes, the clef does not say it again.
        var eighth = clef == Clef.Treble8 && plan.Score.Instrument.OctaveShift == 0;
        MiddleLine = clef == Clef.Bass ? new Pitch(Letter.D, 0, 3) : new Pitch(Letter.B, 0, eighth ? 3 : 4);
        foreach (var staff in plan.Staves)
        {
            if (staff.IsTab && !starts) continue;
            xml.Open("clef", ("number", staff.Label));
            if (staff.IsTab)
            {
                xml.Leaf("sign", "TAB");
            }
            else
            {
                xml.Leaf("sign", clef == Clef.Bass ? "F" : "G");
                xml.Leaf("line", clef == Clef.Bass ? 4 : 2);
                if (eighth) xml.Leaf("clef-octave-change", -1);
            }
            xml.Close();
        }
    }

    private void WriteStaffDetails(ExercisePlan plan)
    {
        var instrument = plan.Score.Instrument;
        foreach (var staff in plan.Staves)
        {
            var tuned = staff.IsTab && !ReferenceEquals(instrument, _instrument);
            var shown = _shown.GetValueOrDefault(staff.Number, true) != staff.IsShown;
            _shown[staff.Number] = staff.IsShown;
            if (!tuned && !shown) continue;
            xml.Open("staff-details", ("number", staff.Label), ("print-object", shown ? (staff.IsShown ? "yes" : "no") : null));
            if (tuned) WriteTuning(instrument);
            xml.Close();
        }
    }

    private void WriteTuning(Instrument instrument)
    {
        xml.Leaf("staff-type", "alternate");
        xml.Leaf("staff-lines", instrument.StringCount);
        // Lines count from the bottom, strings from the top.
        for (var line = 1; line <= instrument.StringCount; line++)
        {
            var open = instrument.OpenStrings[instrument.StringCount - line];
            xml.Open("staff-tuning", ("line", XmlOutput.Number(line)));
            xml.Leaf("tuning-step", open.Name.Letter.ToString());
            if (open.Name.Alteration != 0) xml.Leaf("tuning-alter", open.Name.Alteration);
            xml.Leaf("tuning-octave", open.Octave);
            xml.Close();
        }
        if (instrument.Capo > 0) xml.Leaf("capo", instrument.Capo);
    }

    private void WriteTranspose(Instrument instrument)
    {
        xml.Open("transpose");
        xml.Leaf("diatonic", 0);
        xml.Leaf("chromatic", 0);
        xml.Leaf("octave-change", instrument.OctaveShift);
        xml.Close();
    }

    // "Repeat the measure before" is a way to print; the notes are written all the same, as the standard asks.
    private void WriteMeasureRepeat(ExercisePlan plan, int measureIndex)
    {
        var repeats = plan.Score.Measures[measureIndex].RepeatsPrevious;
        if (repeats == _repeating) return;
        _repeating = repeats;
        xml.Open("measure-style");
        xml.Leaf("measure-repeat", repeats ? "1" : "", ("type", repeats ? "start" : "stop"));
        xml.Close();
    }
}
