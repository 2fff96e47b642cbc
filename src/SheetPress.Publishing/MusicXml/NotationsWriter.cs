using System.Collections.Frozen;
using SheetPress.Scores;

namespace SheetPress.Publishing;

/// <summary>Writes the notations of a note: ties, slurs, tuplets, slides, ornaments, technical marks, articulations.</summary>
internal sealed class NotationsWriter(XmlOutput xml, ExercisePlan plan, SpanNumbers numbers)
{
    private readonly FrozenSet<(int Measure, int Voice, int Event)> _stringNumbers = StringNumbers.Of(plan.Score);

    /// <summary>Everything on one note of an event.</summary>
    /// <param name="place">Where the event stands.</param>
    /// <param name="voice">Its voice.</param>
    /// <param name="e">The event.</param>
    /// <param name="toneIndex">Which of its tones.</param>
    /// <param name="first">Whether it is the first note written for the event, which carries what belongs to all of them.</param>
    /// <param name="role">The staff.</param>
    public void Write(EventPlace place, Voice voice, ScoreEvent e, int toneIndex, bool first, StaffRole role)
    {
        var tone = e.Tones[toneIndex];
        xml.OpenGroup("notations");
        if (tone.TieStop) xml.Empty("tied", ("type", "stop"));
        if (tone.TieStart) xml.Empty("tied", ("type", "start"));
        else if (role.IsShown && e.Articulations.HasFlag(Articulations.LetRing)) xml.Empty("tied", ("type", "let-ring"));
        if (first && role.Leads) WritePhrase(place, e, role);
        if (first) WriteTuplets(voice, place.Event, role);
        if (role.IsShown)
        {
            WriteJoins(place, toneIndex, role);
            if (first && role.Leads && e.Articulations.HasFlag(Articulations.Vibrato)) WriteVibrato();
            WriteTechnical(place, e, tone, toneIndex, first, role);
            if (first) WriteArticulations(e, role);
            if (first && role.Leads) WriteFermata(e);
        }
        xml.Close();
        numbers.Settle();
    }

    /// <summary>What a rest can carry: its place in a tuplet and a fermata.</summary>
    public void WriteForRest(Voice voice, ScoreEvent e, int index, StaffRole role)
    {
        xml.OpenGroup("notations");
        WriteTuplets(voice, index, role);
        if (role.Leads) WriteFermata(e);
        xml.Close();
    }

    private void WritePhrase(EventPlace place, ScoreEvent e, StaffRole role)
    {
        if (e.SlurStop && numbers.Stop("slur", role.Number, PhraseOf(place)) is { } ended) xml.Empty("slur", ("type", "stop"), ("number", ended));
        if (e.SlurStart) xml.Empty("slur", ("type", "start"), ("number", numbers.Start("slur", role.Number, PhraseOf(place))));
    }

    // One phrase can be open in each voice.
    private static string PhraseOf(EventPlace place) => place.Voice == 0 ? "upper phrase" : "lower phrase";

    private void WriteTuplets(Voice voice, int index, StaffRole role)
    {
        // Outer brackets open first and close last; a score nests them once.
        for (var level = 0; level <= 1; level++)
            foreach (var span in voice.Tuplets)
                if (span.First == index && span.Level == level) WriteTupletStart(span, voice, role);
        for (var level = 1; level >= 0; level--)
            foreach (var span in voice.Tuplets)
                if (span.Last == index && span.Level == level) xml.Empty("tuplet", ("type", "stop"), ("number", XmlOutput.Number(level + 1)));
    }

    private void WriteTupletStart(TupletSpan span, Voice voice, StaffRole role)
    {
        xml.Open("tuplet", ("type", "start"), ("number", XmlOutput.Number(span.Level + 1)), ("bracket", role.Leads ? null : "no"), ("show-number", role.Leads ? null : "none"));
        var unit = TupletUnits.Of(span, voice);
        WritePortion("tuplet-actual", span.Actual, unit);
        WritePortion("tuplet-normal", span.Normal, unit);
        xml.Close();
    }

    private void WritePortion(string name, int count, NoteValue? unit)
    {
        xml.Open(name);
        xml.Leaf("tuplet-number", count);
        if (unit is { } value)
        {
            xml.Leaf("tuplet-type", NoteNames.TypeOf(value.Base));
            for (var i = 0; i < value.Dots; i++) xml.Empty("tuplet-dot");
        }
        xml.Close();
    }

    // A hammer-on or pull-off is a slur on both staves, a slide a line on both.
    private void WriteJoins(EventPlace place, int tone, StaffRole role)
    {
        foreach (var join in plan.Joins.EndingAt(place))
        {
            var element = ElementOf(join);
            if (join.ToTone == tone && numbers.Stop(element, role.Number, join) is { } number) xml.Empty(element, ("type", "stop"), ("number", number));
        }
        foreach (var join in plan.Joins.StartingAt(place))
        {
            if (join.FromTone != tone || !WrittenAtEnd(join, role)) continue;
            var element = ElementOf(join);
            xml.Empty(element, ("type", "start"), ("number", numbers.Start(element, role.Number, join)), ("line-type", element == "slide" ? "solid" : null));
        }
    }

    private static string ElementOf(Join join) => join.Kind == Connection.Slide ? "slide" : "slur";

    private bool WrittenAtEnd(Join join, StaffRole role) =>
        role.Writes(plan.Score.Measures[join.To.Measure].Voices[join.To.Voice].Events[join.To.Event].Tones[join.ToTone]);

    // One note is wavy from its start to its end.
    private void WriteVibrato()
    {
        xml.Open("ornaments");
        xml.Empty("wavy-line", ("type", "start"), ("number", "1"));
        xml.Empty("wavy-line", ("type", "stop"), ("number", "1"));
        xml.Close();
    }

    private void WriteTechnical(EventPlace place, ScoreEvent e, Tone tone, int toneIndex, bool first, StaffRole role)
    {
        xml.OpenGroup("technical");
        if (role.Leads)
        {
            if (first) WriteStroke(e.Stroke);
            if (plan.Score.ShowFingers && !tone.TieStop && tone.Finger is { } finger) xml.Leaf("fingering", finger);
            if (_stringNumbers.Contains((place.Measure, place.Voice, place.Event)) && !tone.TieStop && tone.Position is { } at) xml.Leaf("string", at.String);
        }
        if (role.Frets)
        {
            WriteHammerAndPull(place, toneIndex, role);
            if (role.IsTab && tone.Position is { } position)
            {
                xml.Leaf("string", position.String);
                xml.Leaf("fret", position.Fret);
            }
            if (e.BendHalfSteps is { } bend)
            {
                xml.Open("bend");
                xml.Leaf("bend-alter", XmlOutput.Number(bend));
                xml.Close();
            }
            if (tone.Head == Notehead.Harmonic) WriteHarmonic();
        }
        xml.Close();
    }

    private void WriteHarmonic()
    {
        xml.Open("harmonic");
        xml.Empty("natural");
        xml.Empty("sounding-pitch");
        xml.Close();
    }

    private void WriteHammerAndPull(EventPlace place, int tone, StaffRole role)
    {
        foreach (var join in plan.Joins.EndingAt(place))
            if (join.ToTone == tone && MarkOf(join.Kind) is var (element, _) && numbers.Stop(element, role.Number, join) is { } number)
                xml.Empty(element, ("type", "stop"), ("number", number));
        foreach (var join in plan.Joins.StartingAt(place))
            if (join.FromTone == tone && WrittenAtEnd(join, role) && MarkOf(join.Kind) is var (element, letter))
                xml.Leaf(element, letter, ("type", "start"), ("number", numbers.Start(element, role.Number, join)));
    }

    private static (string Element, string Letter)? MarkOf(Connection kind) => kind switch
    {
        Connection.HammerOn => ("hammer-on", "H"),
        Connection.PullOff => ("pull-off", "P"),
        _ => null,
    };

    // Thumb and pop have no element of their own: "thumb-position" is a position of the fretting hand, and in "pluck" a P would be
    // read as the thumb of the p-i-m-a letters.
    private void WriteStroke(Stroke stroke)
    {
        switch (stroke)
        {
            case Stroke.Thumb: xml.Leaf("other-technical", "T"); break;
            case Stroke.Pop: xml.Leaf("other-technical", "P"); break;
            case Stroke.Down: xml.Empty("down-bow"); break;
            case Stroke.Up: xml.Empty("up-bow"); break;
            case Stroke.Index: xml.Leaf("pluck", "i"); break;
            case Stroke.Middle: xml.Leaf("pluck", "m"); break;
            case Stroke.Ring: xml.Leaf("pluck", "a"); break;
            default: break;
        }
    }

    private void WriteArticulations(ScoreEvent e, StaffRole role)
    {
        xml.OpenGroup("articulations");
        if (role.Leads)
        {
            if (e.Articulations.HasFlag(Articulations.Accent)) xml.Empty("accent");
            if (e.Articulations.HasFlag(Articulations.Marcato)) xml.Empty("strong-accent", ("type", "up"));
            if (e.Articulations.HasFlag(Articulations.Staccato)) xml.Empty("staccato");
            if (e.Articulations.HasFlag(Articulations.Tenuto)) xml.Empty("tenuto");
        }
        // The standard's slides of no definite pitch: into the note from below and above, out of it down and up.
        if (e.SlideIn != LooseSlide.None) xml.Empty(e.SlideIn == LooseSlide.Below ? "scoop" : "plop");
        if (e.SlideOut != LooseSlide.None) xml.Empty(e.SlideOut == LooseSlide.Below ? "falloff" : "doit");
        xml.Close();
    }

    private void WriteFermata(ScoreEvent e)
    {
        if (e.Articulations.HasFlag(Articulations.Fermata)) xml.Empty("fermata", ("type", "upright"));
    }
}
