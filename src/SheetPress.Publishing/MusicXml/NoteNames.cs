using SheetPress.Scores;

namespace SheetPress.Publishing;

/// <summary>The words MusicXML has for our values.</summary>
internal static class NoteNames
{
    /// <summary>A note type.</summary>
    public static string TypeOf(NoteBase value) => value switch
    {
        NoteBase.Whole => "whole",
        NoteBase.Half => "half",
        NoteBase.Quarter => "quarter",
        NoteBase.Eighth => "eighth",
        NoteBase.Sixteenth => "16th",
        NoteBase.ThirtySecond => "32nd",
        _ => "64th",
    };

    /// <summary>An accidental; null where the standard has no sign for so many.</summary>
    public static string? AccidentalOf(int alteration) => alteration switch
    {
        -3 => "triple-flat",
        -2 => "flat-flat",
        -1 => "flat",
        0 => "natural",
        1 => "sharp",
        2 => "double-sharp",
        3 => "triple-sharp",
        _ => null,
    };

    /// <summary>A beam state.</summary>
    public static string BeamOf(BeamState state) => state switch
    {
        BeamState.Begin => "begin",
        BeamState.Continue => "continue",
        BeamState.End => "end",
        BeamState.ForwardHook => "forward hook",
        _ => "backward hook",
    };

    /// <summary>A notehead; null for an ordinary one. Ghost and dead notes are both an x, as on the page.</summary>
    public static string? HeadOf(Notehead head) => head switch
    {
        Notehead.Ghost or Notehead.Dead => "x",
        Notehead.Slash => "slash",
        Notehead.Harmonic => "diamond",
        _ => null,
    };
}
