using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Brings notes that lie off the neck back onto it by octaves, and reports those that cannot be played at all.</summary>
internal sealed class PitchPlacer(ExerciseContext context, NeckRange range)
{
    private bool _reported;

    /// <summary>The pitch itself when it can be played, else its nearest octave that can; its degree keeps its name.</summary>
    /// <param name="pitch">The pitch wanted.</param>
    /// <param name="start">When it sounds, in quarter notes from the start of the progression.</param>
    public NamedPitch Place(NamedPitch pitch, Fraction start)
    {
        var midi = pitch.Pitch.MidiNumber;
        if (range.CanPlay(midi)) return pitch;
        for (var octaves = 1; octaves <= 6; octaves++)
        {
            if (range.CanPlay(midi + (12 * octaves))) return pitch with { Pitch = pitch.Pitch + (Interval.Octave * octaves) };
            if (range.CanPlay(midi - (12 * octaves))) return pitch with { Pitch = pitch.Pitch - (Interval.Octave * octaves) };
        }
        if (!_reported)
        {
            _reported = true;
            context.Diagnostics.Error(
                DiagnosticCodes.OffTheNeck,
                context.Request.Span,
                $"{pitch.Pitch.Name.ToDisplayString()} in {ProgressionBars.Name(context.Progression, ProgressionBars.NumberAt(context.Progression, start) - 1)} has no place on the strings and frets that this exercise may use.",
                "Allow more frets or strings, or open strings, or leave the position to SheetPress.");
        }
        return pitch;
    }
}
