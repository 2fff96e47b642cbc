using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Publishing;

/// <summary>Writes one event of a voice: a note, a chord or a rest.</summary>
internal sealed class NoteWriter(XmlOutput xml, ExercisePlan plan, Divisions divisions, NotationsWriter notations)
{
    /// <summary>A whole measure of rest.</summary>
    public void WriteMeasureRest(Measure measure, int voice, StaffRole role)
    {
        OpenRest(role);
        xml.Empty("rest", ("measure", "yes"));
        xml.Leaf("duration", divisions.Count(measure.Length));
        WriteVoice(role, voice);
        WriteStaff(role);
        // A fermata is the one mark that a silent measure can have.
        if (role.Leads) notations.WriteForRest(measure.Voices[voice], measure.Voices[voice].Events[0], 0, role);
        xml.Close();
    }

    /// <summary>An event on a staff.</summary>
    /// <param name="place">Where it stands.</param>
    /// <param name="role">The staff.</param>
    /// <param name="middleLine">The written pitch of the middle line of the notation staff, where slashes stand.</param>
    public void Write(EventPlace place, StaffRole role, Pitch middleLine)
    {
        var measure = plan.Score.Measures[place.Measure];
        var voice = measure.Voices[place.Voice];
        var e = voice.Events[place.Event];
        var first = true;
        for (var t = 0; t < e.Tones.Length; t++)
        {
            if (!role.Writes(e.Tones[t])) continue;
            WriteNote(place, measure, voice, e, t, first, role, middleLine);
            first = false;
        }
        if (first) WriteRest(place, voice, e, role);
    }

    private void WriteNote(EventPlace place, Measure measure, Voice voice, ScoreEvent e, int toneIndex, bool first, StaffRole role, Pitch middleLine)
    {
        var tone = e.Tones[toneIndex];
        xml.Open("note", ("dynamics", Loudness(tone, role)));
        if (!first) xml.Empty("chord");
        WritePitch(tone.Head == Notehead.Slash ? middleLine : plan.Score.Instrument.ToWritten(tone.Pitch));
        xml.Leaf("duration", divisions.Count(e.Value.Duration));
        if (tone.TieStop) xml.Empty("tie", ("type", "stop"));
        if (tone.TieStart) xml.Empty("tie", ("type", "start"));
        if (plan.InstrumentId is { } id) xml.Empty("instrument", ("id", id));
        WriteVoice(role, place.Voice);
        WriteValue(e, voice, place.Event, plan.Accidentals[place.Measure, place.Voice, place.Event, toneIndex], tone, role);
        WriteStem(e, measure, place.Voice, role);
        if (NoteNames.HeadOf(tone.Head) is { } head && !(role.IsTab && tone.Head == Notehead.Harmonic)) xml.Leaf("notehead", head);
        WriteStaff(role);
        if (first && role.Leads) WriteBeams(e);
        notations.Write(place, voice, e, toneIndex, first, role);
        if (first && role.Leads) WriteLyrics(e);
        if (role.Sounds && e.Articulations.HasFlag(Articulations.PalmMute))
        {
            xml.Open("play");
            xml.Leaf("mute", "palm");
            xml.Close();
        }
        xml.Close();
    }

    private void WriteRest(EventPlace place, Voice voice, ScoreEvent e, StaffRole role)
    {
        OpenRest(role);
        xml.Empty("rest");
        xml.Leaf("duration", divisions.Count(e.Value.Duration));
        WriteVoice(role, place.Voice);
        WriteValue(e, voice, place.Event, AccidentalSign.None, null, role);
        WriteStaff(role);
        notations.WriteForRest(voice, e, place.Event, role);
        if (role.Leads) WriteLyrics(e);
        xml.Close();
    }

    private void OpenRest(StaffRole role) => xml.Open("note", ("print-object", role.Leads ? null : "no"));

    private void WriteVoice(StaffRole role, int voice) => xml.Leaf("voice", role.VoiceNumber(voice));

    private void WriteStaff(StaffRole role)
    {
        if (role.Label is { } staff) xml.Leaf("staff", staff);
    }

    private void WritePitch(Pitch pitch)
    {
        xml.Open("pitch");
        xml.Leaf("step", pitch.Name.Letter.ToString());
        if (pitch.Name.Alteration != 0) xml.Leaf("alter", pitch.Name.Alteration);
        xml.Leaf("octave", pitch.Octave);
        xml.Close();
    }

    private void WriteValue(ScoreEvent e, Voice voice, int index, AccidentalSign sign, Tone? tone, StaffRole role)
    {
        xml.Leaf("type", NoteNames.TypeOf(e.Value.Base));
        for (var i = 0; i < e.Value.Dots; i++) xml.Empty("dot");
        if (tone is not null && sign != AccidentalSign.None && role is { IsTab: false, IsShown: true } && NoteNames.AccidentalOf(tone.Pitch.Name.Alteration) is { } accidental)
            xml.Leaf("accidental", accidental, ("cautionary", sign == AccidentalSign.Courtesy ? "yes" : null));
        if (!e.Value.IsTuplet) return;
        xml.Open("time-modification");
        xml.Leaf("actual-notes", e.Value.ActualNotes);
        xml.Leaf("normal-notes", e.Value.NormalNotes);
        if (TupletUnits.Innermost(voice, index) is { } span && TupletUnits.Of(span, voice) is { } unit && (unit.Base, unit.Dots) != (e.Value.Base, e.Value.Dots))
        {
            xml.Leaf("normal-type", NoteNames.TypeOf(unit.Base));
            for (var i = 0; i < unit.Dots; i++) xml.Empty("normal-dot");
        }
        xml.Close();
    }

    // A tab below a staff has no stems; two voices on one staff have theirs apart; else the reader knows best.
    private void WriteStem(ScoreEvent e, Measure measure, int voice, StaffRole role)
    {
        if (!role.Leads) xml.Leaf("stem", "none");
        else if (measure.Voices.Length > 1 && e.Value.Base != NoteBase.Whole) xml.Leaf("stem", voice == 0 ? "up" : "down");
    }

    private void WriteBeams(ScoreEvent e)
    {
        for (var i = 0; i < e.Beams.Length; i++) xml.Leaf("beam", NoteNames.BeamOf(e.Beams[i]), ("number", XmlOutput.Number(i + 1)));
    }

    private void WriteLyrics(ScoreEvent e)
    {
        var line = 1;
        if (plan.Score.ShowCounts)
        {
            if (e.Count is { } count) WriteLyric(line, "counts", count);
            line++;
        }
        if (!plan.Score.ShowDegrees) return;
        var degrees = string.Join(' ', e.Tones.Where(t => !t.TieStop && t.Degree is not null).Select(t => t.Degree!.Value.ToDisplayString()));
        if (degrees.Length > 0) WriteLyric(line, "degrees", degrees);
    }

    private void WriteLyric(int line, string name, string text)
    {
        xml.Open("lyric", ("number", XmlOutput.Number(line)), ("name", name), ("placement", "below"));
        xml.Leaf("syllabic", "single");
        xml.Leaf("text", text);
        xml.Close();
    }

    // Percent of the standard's default loudness: silence for what only shows, less for what is felt more than heard.
    private static string? Loudness(Tone tone, StaffRole role)
    {
        if (!role.Sounds || tone.Head == Notehead.Slash) return "0";
        return tone.Head is Notehead.Ghost or Notehead.Dead ? "50" : null;
    }
}
