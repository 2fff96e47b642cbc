using System.Collections.Immutable;
using System.Globalization;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Engraving.Tests;

/// <summary>
/// Makes scores from one line of text for tests. Notes are "E2:1" (pitch, length in quarter notes), chords "E2+B2:2", rests
/// "r:1"; after "!" come attributes: ho po sl (joins), st te ac ma fe vi pm lr (articulations), T P dn up i m a (strokes), gh de
/// ha sh (heads), si sa so (slides in from below, in from above, out downward), ss se (a slur starts, ends), *ff (a dynamic) < > (hairpins), f0..f4 (finger), b1 (bend), =text (count). Bars "|" are for the eye.
/// </summary>
internal static class ScoreText
{
    public static Score Parse(string text, string instrument = "bass-4", string key = "C major", string meter = "4/4", StaffLayout layout = StaffLayout.StaffAndTab, string? lower = null, Func<int, FrameMeasure, FrameMeasure>? frame = null, Func<ScoreHeader, ScoreHeader>? header = null)
    {
        var player = InstrumentCatalogue.Find(instrument)!;
        var line = LineOf(text, player);
        var second = lower is null ? null : LineOf(lower, player);
        var parts = meter.Split('/');
        var theMeter = new Meter(int.Parse(parts[0], CultureInfo.InvariantCulture), int.Parse(parts[1], CultureInfo.InvariantCulture));
        var measures = new List<FrameMeasure>();
        var at = Fraction.Zero;
        while (at < line.Length || measures.Count == 0)
        {
            var measure = new FrameMeasure { Meter = theMeter, Key = Key.Parse(key), Length = theMeter.MeasureLength };
            if (frame is not null) measure = frame(measures.Count, measure);
            measures.Add(measure);
            at += measure.Length;
        }
        var head = new ScoreHeader
        {
            Id = "test",
            Title = "Test",
            Instrument = player,
            Tempo = new Tempo(92, new NoteValue(NoteBase.Quarter)),
            Layout = layout,
        };
        return ScoreBuilder.Build(header is null ? head : header(head), measures, line, second);
    }

    private static Line LineOf(string text, Instrument instrument)
    {
        var notes = ImmutableArray.CreateBuilder<LineNote>();
        var at = Fraction.Zero;
        foreach (var token in text.Split([' ', '|', '\n'], StringSplitOptions.RemoveEmptyEntries))
        {
            var pieces = token.Split('!');
            var colon = pieces[0].IndexOf(':', StringComparison.Ordinal);
            var length = FractionOf(pieces[0][(colon + 1)..]);
            var names = pieces[0][..colon];
            if (names != "r")
            {
                var used = new HashSet<int>();
                var note = new LineNote { Start = at, Duration = length, Tones = [.. names.Split('+').Select(n => ToneOf(n, instrument, used))] };
                foreach (var attribute in pieces[1..]) note = With(note, attribute);
                notes.Add(note);
            }
            at += length;
        }
        return new Line(notes.ToImmutable(), at);
    }

    private static Fraction FractionOf(string text)
    {
        var parts = text.Split('/');
        return new Fraction(long.Parse(parts[0], CultureInfo.InvariantCulture), parts.Length > 1 ? long.Parse(parts[1], CultureInfo.InvariantCulture) : 1);
    }

    private static LineTone ToneOf(string name, Instrument instrument, HashSet<int> used)
    {
        var degree = name.Split('%');
        var pitch = Pitch.Parse(degree[0]);
        FretPosition? best = null;
        for (var s = 1; s <= instrument.StringCount; s++)
        {
            var fret = pitch.MidiNumber - instrument.OpenStrings[s - 1].MidiNumber;
            if (fret < 0 || fret > instrument.PlayableFrets || used.Contains(s)) continue;
            if (best is null || fret < best.Value.Fret) best = new FretPosition(s, fret);
        }
        if (best is { } place) used.Add(place.String);
        return new LineTone(pitch) { Position = best, Degree = degree.Length > 1 ? Degree.Parse(degree[1]) : null };
    }

    private static LineNote With(LineNote note, string attribute) => attribute switch
    {
        "ho" => note with { Connection = Connection.HammerOn },
        "po" => note with { Connection = Connection.PullOff },
        "sl" => note with { Connection = Connection.Slide },
        "st" => note with { Articulations = note.Articulations | Articulations.Staccato },
        "te" => note with { Articulations = note.Articulations | Articulations.Tenuto },
        "ac" => note with { Articulations = note.Articulations | Articulations.Accent },
        "ma" => note with { Articulations = note.Articulations | Articulations.Marcato },
        "fe" => note with { Articulations = note.Articulations | Articulations.Fermata },
        "vi" => note with { Articulations = note.Articulations | Articulations.Vibrato },
        "pm" => note with { Articulations = note.Articulations | Articulations.PalmMute },
        "lr" => note with { Articulations = note.Articulations | Articulations.LetRing },
        "T" => note with { Stroke = Stroke.Thumb },
        "P" => note with { Stroke = Stroke.Pop },
        "dn" => note with { Stroke = Stroke.Down },
        "up" => note with { Stroke = Stroke.Up },
        "i" => note with { Stroke = Stroke.Index },
        "m" => note with { Stroke = Stroke.Middle },
        "a" => note with { Stroke = Stroke.Ring },
        "gh" => Heads(note, Notehead.Ghost),
        "de" => Heads(note, Notehead.Dead),
        "ha" => Heads(note, Notehead.Harmonic),
        "sh" => note with { Tones = [.. note.Tones.Select(t => t with { Head = Notehead.Slash, Position = null })] },
        "si" => note with { SlideIn = LooseSlide.Below },
        "sa" => note with { SlideIn = LooseSlide.Above },
        "ss" => note with { SlurStart = true },
        "se" => note with { SlurStop = true },
        "so" => note with { SlideOut = LooseSlide.Below },
        "<" => note with { Hairpin = Hairpin.Crescendo },
        ">" => note with { Hairpin = Hairpin.Diminuendo },
        _ when attribute[0] == '*' => note with { Dynamic = attribute[1..] },
        _ when attribute[0] == 'f' => note with { Tones = [.. note.Tones.Select(t => t with { Finger = attribute[1] - '0' })] },
        _ when attribute[0] == 'b' => note with { BendHalfSteps = double.Parse(attribute[1..], CultureInfo.InvariantCulture) },
        _ when attribute[0] == '=' => note with { Count = attribute[1..] },
        _ => throw new ArgumentException($"No attribute '{attribute}'."),
    };

    private static LineNote Heads(LineNote note, Notehead head) => note with { Tones = [.. note.Tones.Select(t => t with { Head = head })] };
}
