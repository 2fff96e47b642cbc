namespace SheetPress.Lessons;

/// <summary>In what way an exercise is built up step by step, each step an exercise of its own.</summary>
public enum LadderKind
{
    /// <summary>From roots to the style itself: root, octave, fifth, third, seventh, approach.</summary>
    Tones,
    /// <summary>From slow to the full tempo.</summary>
    Tempo,
    /// <summary>From long notes to short ones.</summary>
    Rhythm,
    /// <summary>From straight to syncopated.</summary>
    Syncopation,
    /// <summary>In a low and in a high position.</summary>
    Positions,
}
