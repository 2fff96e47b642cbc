using SheetPress.Scores;

namespace SheetPress.Publishing;

/// <summary>Writes the marks that stand at a point in time: words, tempo, dynamics, hairpins, jumps.</summary>
internal sealed class DirectionWriter(XmlOutput xml, ExercisePlan plan)
{
    private static readonly string[] NamedDynamics =
        ["pppp", "ppp", "pp", "p", "mp", "mf", "f", "ff", "fff", "ffff", "n", "fp", "pf", "rf", "rfz", "sf", "sfp", "sfpp", "sffz", "sfz", "sfzp", "fz"];

    private int _segni;
    private int _codas;

    /// <summary>The title of an exercise within a lesson.</summary>
    public void WriteTitle(string title) =>
        WriteWords(title, 0, ("font-weight", "bold"), ("font-size", "14"));

    /// <summary>The line that says what to do.</summary>
    public void WriteInstruction(string instruction) => WriteWords(instruction, 0, ("font-style", "italic"));

    /// <summary>The tempo and feel at the start of an exercise.</summary>
    /// <param name="stateFeel">Whether to say "straight" too: needed once something before may have swung.</param>
    public void WriteTempo(bool stateFeel)
    {
        var tempo = plan.Score.Tempo;
        xml.Open("direction", ("placement", "above"));
        if (plan.Score.Feel != Feel.Straight)
        {
            xml.Open("direction-type");
            xml.Leaf("words", "Swing", ("font-weight", "bold"));
            xml.Close();
        }
        xml.Open("direction-type");
        WriteMetronome(tempo);
        xml.Close();
        WriteStaff(plan.Leading);
        xml.Empty("sound", SoundOf(tempo));
        xml.Close();
        if (plan.Score.Feel != Feel.Straight || stateFeel) WriteFeel();
    }

    /// <summary>The tempo for players alone, where the page says nothing since the way there says it.</summary>
    public void WriteSoundingTempo(Tempo tempo) => xml.Empty("sound", SoundOf(tempo));

    /// <summary>A name, which nobody sees, for the first measure of an exercise: "D.C." within a lesson means back to here.</summary>
    public void WriteStartName() => xml.Empty("sound", ("segno", StartName));

    /// <summary>How often a section is played, where the repeat sign alone does not say it.</summary>
    public void WriteTimes(int times) => WriteWords(XmlOutput.Number(times) + "×", 0);

    /// <summary>The start of a palm-muted run, or its end; below the staff for the lower of two voices.</summary>
    public void WriteMute(bool starts, bool lasts, int voice, StaffRole staff)
    {
        xml.Open("direction", ("placement", voice == 0 ? "above" : "below"));
        if (starts)
        {
            xml.Open("direction-type");
            xml.Leaf("words", "P.M.");
            xml.Close();
        }
        if (lasts)
        {
            xml.Open("direction-type");
            xml.Empty("dashes", ("type", starts ? "start" : "stop"), ("number", XmlOutput.Number(voice + 1)));
            xml.Close();
        }
        WriteStaff(staff);
        xml.Close();
    }

    /// <summary>A direction of the score.</summary>
    /// <param name="direction">The direction.</param>
    /// <param name="offset">Divisions after the point where it is written; 0 for none.</param>
    public void Write(Direction direction, long offset)
    {
        switch (direction.Kind)
        {
            case DirectionKind.Words: WriteWords(direction.Text, offset, ("font-style", "italic")); break;
            case DirectionKind.Rehearsal: WriteMark(offset, () => xml.Leaf("rehearsal", direction.Text)); break;
            case DirectionKind.Dynamic: WriteDynamic(direction, offset); break;
            case DirectionKind.CrescendoStart: WriteWedge(direction, "crescendo", offset); break;
            case DirectionKind.DiminuendoStart: WriteWedge(direction, "diminuendo", offset); break;
            case DirectionKind.HairpinStop: WriteWedge(direction, "stop", offset); break;
            case DirectionKind.Segno: WriteMark(offset, () => xml.Empty("segno"), sound: ("segno", SegnoName(++_segni))); break;
            case DirectionKind.Coda: WriteMark(offset, () => xml.Empty("coda"), sound: ("coda", CodaName(++_codas))); break;
            case DirectionKind.Tempo: WriteMark(offset, () => WriteMetronome(direction), sound: SoundOf(direction.Tempo!)); break;
            case DirectionKind.DaCapo: WriteJump(direction.Text, "D.C.", offset, plan.Index == 0 ? ("dacapo", "yes") : ("dalsegno", StartName)); break;
            case DirectionKind.DalSegno: WriteJump(direction.Text, "D.S.", offset, _segni > 0 ? ("dalsegno", SegnoName(_segni)) : null); break;
            case DirectionKind.ToCoda: WriteJump(direction.Text, "To Coda", offset, _codas < Count(DirectionKind.Coda) ? ("tocoda", CodaName(_codas + 1)) : null); break;
            default: WriteJump(direction.Text, "Fine", offset, EndsAtFine ? ("fine", "yes") : null); break;
        }
    }

    private void WriteMetronome(Direction direction)
    {
        if (direction.Equation is not { } equation)
        {
            WriteMetronome(direction.Tempo!);
            return;
        }
        xml.Open("metronome");
        WriteBeat(equation.Before);
        WriteBeat(equation.After);
        xml.Close();
    }

    private void WriteMetronome(Tempo tempo)
    {
        xml.Open("metronome");
        WriteBeat(tempo.Beat);
        xml.Leaf("per-minute", XmlOutput.Number(tempo.BeatsPerMinute));
        xml.Close();
    }

    private void WriteBeat(NoteValue value)
    {
        xml.Leaf("beat-unit", NoteNames.TypeOf(value.Base));
        for (var i = 0; i < value.Dots; i++) xml.Empty("beat-unit-dot");
    }

    private static (string, string?) SoundOf(Tempo tempo) => ("tempo", XmlOutput.Number(tempo.QuartersPerMinute));

    // Names are told apart by exercise, since the whole file is one movement to a player.
    private string StartName => "start" + XmlOutput.Number(plan.Index + 1);

    private string SegnoName(int count) => Named("segno", count);

    private string CodaName(int count) => Named("coda", count);

    private string Named(string kind, int count) => kind + XmlOutput.Number(plan.Index + 1) + (count == 1 ? "" : "-" + XmlOutput.Number(count));

    // A player stops at any Fine and is lost without a name that it is sent to: what leads nowhere is words alone.
    private bool EndsAtFine => Directions.Any(d => d.Kind is DirectionKind.DaCapo or DirectionKind.DalSegno && JumpWords.MayEnd(d.Text));

    private int Count(DirectionKind kind) => Directions.Count(d => d.Kind == kind);

    private IEnumerable<Direction> Directions => plan.Score.Measures.SelectMany(m => m.Directions);

    private void WriteJump(string text, string usual, long offset, (string, string?)? sound) =>
        WriteMark(offset, () => xml.Leaf("words", text.Length > 0 ? text : usual, ("font-weight", "bold")), sound: sound);

    private void WriteWords(string text, long offset, params (string, string?)[] style)
    {
        if (text.Length > 0) WriteMark(offset, () => xml.Leaf("words", text, style));
    }

    // Hairpins of two voices may be open at once: the number tells them apart.
    private void WriteWedge(Direction direction, string type, long offset) =>
        WriteLoudness(direction, offset, () => xml.Empty("wedge", ("type", type), ("number", direction.Voice is { } voice ? XmlOutput.Number(voice + 1) : null)));

    private void WriteDynamic(Direction direction, long offset)
    {
        var percent = PercentOf(direction.Text);
        WriteLoudness(direction, offset, Sign, percent is null ? null : ("dynamics", percent));

        void Sign()
        {
            xml.Open("dynamics");
            if (NamedDynamics.Contains(direction.Text)) xml.Empty(direction.Text);
            else xml.Leaf("other-dynamics", direction.Text);
            xml.Close();
        }
    }

    private void WriteLoudness(Direction direction, long offset, Action sign, (string, string?)? sound = null) =>
        WriteMark(offset, sign, direction.Voice == 0 ? "above" : "below", sound, direction.Voice);

    private void WriteMark(long offset, Action sign, string placement = "above", (string, string?)? sound = null, int? voice = null)
    {
        xml.Open("direction", ("placement", placement));
        xml.Open("direction-type");
        sign();
        xml.Close();
        if (offset != 0) xml.Leaf("offset", offset, ("sound", sound is null ? null : "yes"));
        if (voice is { } number) xml.Leaf("voice", plan.Leading.VoiceNumber(number));
        WriteStaff(plan.Leading);
        if (sound is { } attribute) xml.Empty("sound", attribute);
        xml.Close();
    }

    private void WriteFeel()
    {
        xml.Open("sound");
        xml.Open("swing");
        if (plan.Score.Feel == Feel.Straight)
        {
            xml.Empty("straight");
        }
        else
        {
            xml.Leaf("first", 2);
            xml.Leaf("second", 1);
            xml.Leaf("swing-type", plan.Score.Feel == Feel.SwingEighths ? "eighth" : "16th");
        }
        xml.Close();
        xml.Close();
    }

    private void WriteStaff(StaffRole staff)
    {
        if (staff.Label is { } label) xml.Leaf("staff", label);
    }

    // Percent of velocity 90, the standard's default forte; the velocities are common practice.
    private static string? PercentOf(string dynamic)
    {
        var velocity = dynamic switch { "ppp" => 16, "pp" => 33, "p" => 49, "mp" => 64, "mf" => 80, "f" => 96, "ff" => 112, "fff" => 126, _ => 0 };
        return velocity == 0 ? null : XmlOutput.Number(Math.Round(velocity / 0.9, 2));
    }
}
