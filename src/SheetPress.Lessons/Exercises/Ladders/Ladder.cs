using System.Collections.Immutable;
using System.Globalization;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>Turns an exercise that is asked for as a ladder into its steps.</summary>
public static class Ladder
{
    private static readonly (string Style, string Options, string Name)[] ToneSteps =
    [
        ("roots", "", "roots"),
        ("root-octave", "", "root and octave"),
        ("tone-cell", "R 5 8 5", "with the fifth"),
        ("tone-cell", "R 3 5 8", "with the third"),
        ("tone-cell", "R 3 5 7", "with the seventh"),
        ("approaches", "R 3 5 7", "with an approach"),
    ];

    /// <summary>The exercises that a request stands for: itself, or the steps of its ladder in order, named and numbered.</summary>
    /// <param name="request">What the lesson asks for.</param>
    /// <param name="lesson">The lesson.</param>
    public static ImmutableArray<ExerciseRequest> Expand(ExerciseRequest request, Lesson lesson)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(lesson);
        if (request.Ladder is not { } kind) return request.Style.Expand(request);
        var plain = request with { Ladder = null };
        var steps = kind switch
        {
            LadderKind.Tones => Tones(plain),
            LadderKind.Tempo => Tempos(plain, lesson),
            // A style that leads from chord to chord has nothing to say in one note a bar.
            LadderKind.Rhythm => Rhythms(plain, LongToShort(lesson.Meter).Skip(plain.Style.Group == "links" ? 1 : 0)),
            LadderKind.Syncopation => Rhythms(plain, StraightToSyncopated(lesson.Meter)),
            _ => Positions(plain, lesson),
        };
        var title = request.Title ?? request.Style.TitleIn(lesson.Progression);
        return [.. steps.Select((s, i) => s.Request with { Title = string.Create(CultureInfo.InvariantCulture, $"{title}, step {i + 1} of {steps.Count}: {s.Name}") })];
    }

    // The steps up to the style, which is the last of them; a style on the way ends the ladder there.
    private static List<(ExerciseRequest Request, string Name)> Tones(ExerciseRequest request)
    {
        var steps = new List<(ExerciseRequest, string)>();
        foreach (var (name, tones, words) in ToneSteps)
        {
            if (name == request.Style.Name) break;
            var style = ExerciseStyles.Find(name)!;
            var options = ImmutableDictionary<string, OptionValue>.Empty;
            if (tones.Length > 0) options = options.Add("tones", new OptionValue(LocatedText.At(tones, request.Span.Start)) { Degrees = DegreeWords.ParseList(tones) });
            // The instruction of the whole is for its last step; the others have their own.
            steps.Add((request with { Style = style, Options = options, Instruction = null }, words));
        }
        var title = request.Style.Title;
        steps.Add((request, char.ToLower(title[0], CultureInfo.InvariantCulture) + title[1..]));
        return steps;
    }

    private static List<(ExerciseRequest Request, string Name)> Tempos(ExerciseRequest request, Lesson lesson)
    {
        var full = request.Tempo ?? lesson.Tempo;
        var steps = new List<(ExerciseRequest, string)>();
        foreach (var (part, name) in (ReadOnlySpan<(double, string)>)[(0.6, "slowly"), (0.75, "moving"), (0.9, "nearly there"), (1.0, "in tempo")])
        {
            // Metronomes are set to whole, mostly even, numbers.
            var beats = part == 1 ? full.BeatsPerMinute : Math.Max(30, Math.Round(full.BeatsPerMinute * part / 2) * 2);
            steps.Add((request with { Tempo = full with { BeatsPerMinute = beats }, TempoShare = beats / full.BeatsPerMinute }, name));
        }
        return steps;
    }

    private static List<(ExerciseRequest Request, string Name)> Rhythms(ExerciseRequest request, IEnumerable<(RhythmPattern Rhythm, string Name)> rhythms) =>
        [.. rhythms.Select(r => (request with { Rhythm = r.Rhythm.WithMarks(request.Marks) }, r.Name))];

    private static IEnumerable<(RhythmPattern, string)> LongToShort(Meter meter)
    {
        yield return (EvenRhythms.Measures(meter), "one note a bar");
        yield return (EvenRhythms.Beats(meter), "one note a beat");
        yield return (EvenRhythms.Eighths(meter), "eighths");
        if (!meter.IsCompound && meter.BeatUnit == 4) yield return (EvenRhythms.Repeat(new Fraction(1, 3)), "triplets");
        yield return (EvenRhythms.Sixteenths(meter), "sixteenths");
    }

    private static IEnumerable<(RhythmPattern, string)> StraightToSyncopated(Meter meter)
    {
        yield return (EvenRhythms.Beats(meter), "on the beats");
        yield return (EvenRhythms.Eighths(meter), "eighths");
        yield return (SyncopatedRhythms.Leaning(meter), "leaning on the beats");
        yield return (SyncopatedRhythms.Anticipated(meter), "before the beats");
        yield return (SyncopatedRhythms.OffBeats(meter), "off the beats");
    }

    private static List<(ExerciseRequest Request, string Name)> Positions(ExerciseRequest request, Lesson lesson)
    {
        var low = request.Neck.Position ?? 2;
        var high = low + 5 <= lesson.Instrument.PlayableFrets - 4 ? low + 5 : Math.Max(1, low - 5);
        return
        [
            (request with { Neck = request.Neck with { Position = low } }, string.Create(CultureInfo.InvariantCulture, $"near fret {low}")),
            (request with { Neck = request.Neck with { Position = high } }, string.Create(CultureInfo.InvariantCulture, $"near fret {high}")),
        ];
    }
}
