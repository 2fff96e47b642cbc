using SheetPress.Scores;

namespace SheetPress.Lessons.Tests;

/// <summary>Writes a progression as a line of text that tests can compare: lengths in quarter notes, every mark named.</summary>
internal static class ProgressionText
{
    public static string Of(Progression progression)
    {
        var bars = new List<string>();
        for (var i = 0; i < progression.Measures.Length; i++)
        {
            var measure = progression.Measures[i];
            var words = new List<string>();
            if (i == 0 || !measure.Meter.Equals(progression.Measures[i - 1].Meter)) words.Add($"<{measure.Meter}>");
            if (i > 0 && measure.Key != progression.Measures[i - 1].Key) words.Add($"<{measure.Key}>");
            if (measure.BreakBefore) words.Add("<line>");
            if (measure.RepeatStart) words.Add("<repeat>");
            if (!measure.EndingStart.IsEmpty) words.Add($"<ending {string.Join(',', measure.EndingStart)}>");
            words.AddRange(measure.Directions.Where(d => d.Offset == Fraction.Zero).Select(d => $"<{d.Kind}{(d.Text.Length > 0 ? " " + d.Text : "")}{TempoOf(d)}>"));
            words.AddRange(progression.Chords.Where(c => c.Measure == i).Select(c => $"{(c.IsHeld ? "~" : "")}{c.Chord?.ToString() ?? "N.C."}:{c.Duration}"));
            words.AddRange(measure.Directions.Where(d => d.Offset == measure.Length).Select(d => $"<{d.Kind} {d.Text}>"));
            if (measure.EndingStop) words.Add(measure.EndingClosed ? "<close>" : "<stop>");
            if (measure.RepeatEndTimes > 0) words.Add($"<x{measure.RepeatEndTimes}>");
            if (measure.Barline is { } barline) words.Add($"<{barline}>");
            bars.Add(string.Join(' ', words));
        }
        return (progression.Tempo is { } start ? $"<{start.BeatsPerMinute}> " : "") + string.Join(" | ", bars);
    }

    private static string TempoOf(Direction direction) => direction.Equation is { } equation ? $" {Value(equation.Before)}={Value(equation.After)}"
        : direction.Tempo is { } tempo ? $" {Value(tempo.Beat)}={tempo.BeatsPerMinute}" : "";

    private static string Value(NoteValue value) => value.Base + new string('.', value.Dots);
}
