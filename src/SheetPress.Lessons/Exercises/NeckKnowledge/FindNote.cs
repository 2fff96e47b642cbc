using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>One note of each chord, everywhere on the neck: each of its places once, from the nut upward, the last of them held.</summary>
internal sealed class FindNote : ExerciseStyle
{
    public override string Name => "find-the-note";
    public override string Title => "Find the note everywhere";
    public override string Summary => "The root of each chord, or another tone of it, in all its places on the neck, each once from the nut upward.";
    public override string Group => "neck";
    public override bool IsAboutPlaces => true;
    public override ImmutableArray<StyleOption> Options => [new("tone", OptionType.Degrees, "The tone to find.", "R")];
    public override string Instruction(ExerciseRequest request) => "Say the name of the note each time you find it; do not go by patterns, look for it.";

    public override Line Generate(ExerciseContext context)
    {
        var request = context.Request.Degrees("tone") is [var first, ..] ? first : new DegreeRequest(Degree.Root, false);
        var track = HarmonyTrack.Of(context);
        var places = track.Sounding.ToDictionary(s => s.Index, s => Places(context, s, ToneOf(request, s)));
        var slots = RhythmTiler.Tile(context.Progression, LevelRhythm.Or(context, EvenRhythms.Beats));
        // Where a chord is too short for all places at a note a beat, all chords have two.
        if (track.Sounding.Any(s => places[s.Index].Length > slots[s.Index].Length)) slots = RhythmTiler.Tile(context.Progression, LevelRhythm.Or(context, EvenRhythms.Eighths));
        var range = NeckRange.Of(context);
        var writer = new LineWriter();
        foreach (var step in track.Sounding)
        {
            var own = slots[step.Index];
            if (own.IsEmpty || places[step.Index].IsEmpty) continue;
            Write(writer, step, own, Until(step, slots), places[step.Index], range);
        }
        return writer.Finish(context.Progression.Length);
    }

    // A note of the next chord may come before its beat, in a rhythm that goes across the change.
    private static Fraction Until(HarmonyStep step, IReadOnlyList<ImmutableArray<Slot>> slots) =>
        step.Next is { } next && next.Index > step.Index && slots[next.Index] is [var first, ..] ? Fraction.Min(step.End, first.Start) : step.End;

    private static void Write(LineWriter writer, HarmonyStep step, ImmutableArray<Slot> slots, Fraction until, ImmutableArray<PlacedTone> places, NeckRange range)
    {
        var isRoot = places[0].Pitch.Pitch.Name.PitchClass == step.Chord.Root.PitchClass || places[0].Pitch.Degree == step.BassDegree;
        // The line ends on the root, whatever it looks for; the highest places give way where there is no room.
        var rests = step.IsFinal && !isRoot;
        var count = Math.Min(places.Length, rests ? slots.Length - 1 : slots.Length);
        for (var k = 0; k < count; k++) Add(k, places[k].Pitch, [places[k].Place], k == count - 1 && !rests);
        if (rests) Add(count, Resting.Root(new Pitch(step.Chord.Root, places[Math.Max(0, count - 1)].Pitch.Pitch.Octave), places[Math.Max(0, count - 1)].Pitch.Pitch, range), [], true);

        void Add(int at, NamedPitch pitch, ImmutableArray<FretPosition> place, bool isLast) =>
            writer.Add(isLast ? slots[at] with { Duration = until - slots[at].Start } : slots[at], [pitch], default, place);
    }

    private static Degree ToneOf(DegreeRequest request, HarmonyStep step) => request.Degree == Degree.Root ? step.BassDegree : DegreeResolver.Resolve(request, step);

    // Up to the frets of the level, or those that the lesson asks for; further where the note has no place there.
    private static ImmutableArray<PlacedTone> Places(ExerciseContext context, HarmonyStep step, Degree degree)
    {
        var (lowest, highest) = NeckWindow.Frets(context, Math.Min(context.Instrument.PlayableFrets, LevelTable.Of(context.Level).HighestFret));
        var last = context.Request.Neck.HighestFret is null ? context.Instrument.PlayableFrets : highest;
        var pitchClass = step.Chord.NoteOf(degree).PitchClass;
        var strings = NeckWindow.Strings(context).ToArray();
        var tones = ImmutableArray.CreateBuilder<PlacedTone>();
        for (var fret = lowest; fret <= last && (fret <= highest || tones.Count == 0); fret++)
        {
            foreach (var number in strings)
            {
                if (NoteMath.Modulo(context.Instrument.MidiNumberAt(number, fret), 12) == pitchClass && context.Request.Neck.Allows(new FretPosition(number, fret))) tones.Add(NeckWindow.At(context.Instrument, step, degree, new FretPosition(number, fret)));
            }
        }
        return tones.ToImmutable();
    }
}
