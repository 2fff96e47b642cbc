using System.Globalization;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Publishing.Tests.MusicXml;

/// <summary>
/// Reads lines of test music. Words are notes one after another: tones joined by '+', ':' and a length in quarter notes ("1", "3/2"),
/// then marks after '!'. A tone is a head (none, x dead, g ghost, o harmonic, / slash), a pitch, and '@string.fret' where it matters;
/// else it lies on the first string from the floor that has it. "r:1" is silence.
/// </summary>
internal static class LineText
{
    public static Line Read(Instrument instrument, string text)
    {
        var notes = new List<LineNote>();
        var at = Fraction.Zero;
        foreach (var word in text.Split([' ', '\n', '|'], StringSplitOptions.RemoveEmptyEntries))
        {
            var marks = word.Split('!');
            var parts = marks[0].Split(':');
            var duration = ReadFraction(parts[1]);
            if (parts[0] != "r")
            {
                var note = new LineNote { Start = at, Duration = duration, Tones = [.. parts[0].Split('+').Select(t => ReadTone(instrument, t))] };
                notes.Add(marks.Skip(1).Aggregate(note, Mark));
            }
            at += duration;
        }
        return new Line([.. notes], at);
    }

    public static Fraction ReadFraction(string text)
    {
        var parts = text.Split('/').Select(p => long.Parse(p, CultureInfo.InvariantCulture)).ToArray();
        return new Fraction(parts[0], parts.Length > 1 ? parts[1] : 1);
    }

    private static LineTone ReadTone(Instrument instrument, string text)
    {
        var head = text[0] switch { 'x' => Notehead.Dead, 'g' => Notehead.Ghost, 'o' => Notehead.Harmonic, '/' => Notehead.Slash, _ => Notehead.Normal };
        var parts = (head == Notehead.Normal ? text : text[1..]).Split('@');
        var pitch = Pitch.Parse(parts[0]);
        FretPosition? position = null;
        if (parts.Length > 1)
        {
            var place = parts[1].Split('.').Select(p => int.Parse(p, CultureInfo.InvariantCulture)).ToArray();
            position = new FretPosition(place[0], place[1]);
        }
        else if (head != Notehead.Slash)
        {
            position = Enumerable.Range(1, instrument.StringCount)
                .Select(s => new FretPosition(s, pitch.MidiNumber - instrument.MidiNumberAt(s, 0)))
                .First(p => p.Fret >= 0 && p.Fret <= instrument.PlayableFrets);
        }
        return new LineTone(pitch) { Head = head, Position = position, Finger = position is null ? null : position.Value.Fret == 0 ? 0 : 1 + (position.Value.Fret % 4) };
    }

    private static LineNote Mark(LineNote note, string mark) => mark switch
    {
        "H" => note with { Connection = Connection.HammerOn },
        "P" => note with { Connection = Connection.PullOff },
        "S" => note with { Connection = Connection.Slide },
        "in-below" => note with { SlideIn = LooseSlide.Below },
        "in-above" => note with { SlideIn = LooseSlide.Above },
        "out-below" => note with { SlideOut = LooseSlide.Below },
        "out-above" => note with { SlideOut = LooseSlide.Above },
        "bend1" => note with { BendHalfSteps = 1 },
        "bend.5" => note with { BendHalfSteps = 0.5 },
        "bend2" => note with { BendHalfSteps = 2 },
        "<" => note with { Hairpin = Hairpin.Crescendo },
        ">" => note with { Hairpin = Hairpin.Diminuendo },
        _ when mark.StartsWith('*') => note with { Dynamic = mark[1..] },
        _ when mark.StartsWith('=') => note with { Count = mark[1..] },
        _ when mark.StartsWith('°') => note with { Tones = [.. note.Tones.Select(t => t with { Degree = Degree.Parse(mark[1..]) })] },
        _ when Enum.TryParse<Stroke>(mark, out var stroke) => note with { Stroke = stroke },
        _ => note with { Articulations = note.Articulations | Enum.Parse<Articulations>(mark) },
    };
}
