namespace SheetPress.Scores;

/// <summary>Articulations and playing marks of one event; several can be set.</summary>
[Flags]
public enum Articulations
{
    /// <summary>None.</summary>
    None = 0,
    /// <summary>Short, a dot.</summary>
    Staccato = 1,
    /// <summary>Held full length, a dash.</summary>
    Tenuto = 2,
    /// <summary>Accent.</summary>
    Accent = 4,
    /// <summary>Strong accent, a wedge.</summary>
    Marcato = 8,
    /// <summary>Fermata.</summary>
    Fermata = 16,
    /// <summary>Vibrato.</summary>
    Vibrato = 32,
    /// <summary>Palm mute.</summary>
    PalmMute = 64,
    /// <summary>Let the note ring on.</summary>
    LetRing = 128,
}

/// <summary>How the plucking hand plays an event.</summary>
public enum Stroke
{
    /// <summary>Not said.</summary>
    None,
    /// <summary>Slapped with the thumb.</summary>
    Thumb,
    /// <summary>Popped with a finger.</summary>
    Pop,
    /// <summary>Pick downward.</summary>
    Down,
    /// <summary>Pick upward.</summary>
    Up,
    /// <summary>Index finger (i).</summary>
    Index,
    /// <summary>Middle finger (m).</summary>
    Middle,
    /// <summary>Ring finger (a).</summary>
    Ring,
}

/// <summary>How an event is joined to the one that follows it in its voice.</summary>
public enum Connection
{
    /// <summary>Not joined.</summary>
    None,
    /// <summary>Hammer-on to the next, higher note.</summary>
    HammerOn,
    /// <summary>Pull-off to the next, lower note.</summary>
    PullOff,
    /// <summary>Slide to the next note.</summary>
    Slide,
}

/// <summary>A slide from or to no definite pitch.</summary>
public enum LooseSlide
{
    /// <summary>None.</summary>
    None,
    /// <summary>From below.</summary>
    Below,
    /// <summary>From above.</summary>
    Above,
}

/// <summary>A gradual change of loudness that starts or ends at a note.</summary>
public enum Hairpin
{
    /// <summary>None.</summary>
    None,
    /// <summary>Growing louder from here to the next dynamic, hairpin or end.</summary>
    Crescendo,
    /// <summary>Growing softer from here on.</summary>
    Diminuendo,
    /// <summary>The change is complete where this note ends.</summary>
    Stop,
}

/// <summary>The state of one beam level at an event.</summary>
public enum BeamState
{
    /// <summary>The beam starts here.</summary>
    Begin,
    /// <summary>It goes on.</summary>
    Continue,
    /// <summary>It ends here.</summary>
    End,
    /// <summary>A partial beam to the right.</summary>
    ForwardHook,
    /// <summary>A partial beam to the left.</summary>
    BackwardHook,
}
