using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Engraving.Tests;

/// <summary>Handouts without music, of any length.</summary>
internal static class SampleHandout
{
    internal static Instrument Bass => InstrumentCatalogue.Find("bass-4")!;

    internal static HandoutContent Make(int chords = 4, int paragraphs = 2, string notes = "Say the **root** out loud as you land on it.", int diagrams = 2, int rows = 3) => new()
    {
        Title = "Round the cycle in C minor",
        Subtitle = "From plain roots to a walking line",
        Author = "Ilse Maringer",
        Facts = [new("Key", "C minor"), new("Meter", "4/4"), new("Tempo", "♩ = 92"), new("Instrument", "4-string bass"), new("Level", "2")],
        Harmony = [.. Enumerable.Range(0, chords).Select(i => Row((string[])["Cm7", "Fm7", "Bb7", "Ebmaj7", "Abmaj7", "Dm7b5", "G7"], i))],
        TheoryNotes = [.. Enumerable.Repeat("The roots fall by fifths through the whole key: [Cm7 | Fm7 | Bb7]. Only one of these steps is not a perfect fourth, and it is where the {b7} of one chord becomes the third of the next.", paragraphs)],
        TeacherNotes = notes,
        Diagrams = [.. Enumerable.Range(0, diagrams).Select(i => NeckDiagrams.ChordTones(Bass, Chord.Parse("Cm7"), 3, 6) with { Caption = "in third position" })],
        PracticePlan = [.. Enumerable.Range(1, rows).Select(i => new PracticeRow($"{i} Roots on the beat", ["60", "72", "84"], "4", "5"))],
        PracticeTotal = "15",
        Caution = "Warm up slowly, rest when you tire, and stop if anything hurts; keep the volume safe.",
    };

    private static HarmonyRow Row(string[] symbols, int index)
    {
        var chord = Chord.Parse(symbols[index % symbols.Length]);
        LabelledTone[] tones = [.. chord.Tones.Select(t => new LabelledTone(t.Note.ToDisplayString(), t.Degree))];
        return new HarmonyRow
        {
            Chord = chord,
            Measures = $"{index + 1}",
            Roman = "iiø7",
            Function = "prepares the dominant of the relative major",
            Tones = [.. tones],
            GuideTones = [tones[1], tones[3]],
            ScaleName = "C natural minor",
            ScaleNotes = [new("C"), new("D"), new("E♭"), new("F"), new("G"), new("A♭"), new("B", IsChanged: true)],
            Reason = "the notes of the key from its first degree, with the leading note raised",
        };
    }
}
