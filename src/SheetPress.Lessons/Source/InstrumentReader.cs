using System.Collections.Immutable;
using System.Globalization;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Reads the instrument: one of the catalogue, or one of it with a tuning, frets, capo or scale length of its own.</summary>
/// <param name="bag">Where problems go.</param>
internal sealed class InstrumentReader(DiagnosticBag bag)
{
    private static readonly string[] Names = ["base", "name", "tuning", "frets", "capo", "scale-length", "left-handed"];

    /// <summary>The instrument; null with the reason reported.</summary>
    public Instrument? Read(SourceNode node)
    {
        switch (node)
        {
            case ScalarNode scalar:
                return Find(scalar.Text.Trim());
            case MappingNode mapping:
                return ReadOwn(new FieldReader(mapping, Names, "an instrument", bag), mapping);
            default:
                bag.Add(node.Span, FieldProblems.WrongType("instrument", "a name, or entries such as base and tuning"));
                return null;
        }
    }

    private Instrument? Find(LocatedText name)
    {
        var id = name.Value.Replace(' ', '-').ToLowerInvariant();
        // "5 string bass", "bass 5 strings", "bass with 5 strings".
        var words = id.Split('-', StringSplitOptions.RemoveEmptyEntries);
        if (words.Length > 2 && words.Contains("string") | words.Contains("strings") && Array.Find(words, w => w.All(char.IsAsciiDigit)) is { } strings)
        {
            foreach (var kind in words) if (InstrumentCatalogue.Find($"{kind}-{strings}") is { } meant) return meant;
        }
        if (InstrumentCatalogue.Find(id) is { } instrument) return instrument;
        foreach (var other in InstrumentCatalogue.All) if (other.Name.Equals(name.Value, StringComparison.OrdinalIgnoreCase)) return other;
        bag.Add(name.Span, Unknown(name.Value));
        return null;
    }

    /// <summary>What to say of a name that no instrument has.</summary>
    public static Problem Unknown(string name)
    {
        var ids = InstrumentCatalogue.All.Select(i => i.Id).ToArray();
        var near = NearestWord.Find(name.Replace(' ', '-').ToLowerInvariant(), ids);
        return FieldProblems.UnknownInstrument(name, near is null || OfKind(name, ids) is { Length: > 1 } ? OfKind(name, ids) : [near], ids);
    }

    // All instruments of the kind that a name speaks of: "Electric Bass". A bass guitar is a bass.
    private static string[] OfKind(string name, string[] ids)
    {
        foreach (var (kind, word) in (ReadOnlySpan<(string, string)>)[("bass", "bass"), ("guitar", "guitar"), ("ukulele", "uke"), ("ukulele", "ukulele"), ("mandolin", "mandolin"), ("banjo", "banjo")])
        {
            if (name.Contains(word, StringComparison.OrdinalIgnoreCase)) return [.. ids.Where(i => i.Contains(kind, StringComparison.Ordinal))];
        }
        return [];
    }

    private Instrument? ReadOwn(FieldReader fields, MappingNode mapping)
    {
        fields.Require("base", FieldProblems.InstrumentWithoutBase(), mapping.Span);
        if (fields.Text("base") is not { } baseName || Find(baseName) is not { } instrument) return null;
        if (fields.JoinedText("tuning", ' ') is { } tuning && ReadTuning(tuning) is { } strings)
        {
            instrument = instrument with { OpenStrings = strings, Name = NameOf(instrument, strings) };
        }
        if (fields.Line("name", 60) is { } name) instrument = instrument with { Name = name };
        if (fields.Number("frets", 12, 36) is { } frets) instrument = instrument with { FretCount = frets };
        if (fields.Number("capo", 0, 12) is { } capo) instrument = instrument with { Capo = capo };
        if (fields.Text("scale-length") is { } length && ReadLength(length) is { } millimetres) instrument = instrument with { ScaleLength = millimetres };
        if (fields.Flag("left-handed") is { } leftHanded) instrument = instrument with { LeftHanded = leftHanded };
        return instrument;
    }

    // Written from the lowest string up, as tunings are spoken; kept from string 1 down.
    private ImmutableArray<Pitch>? ReadTuning(LocatedText text)
    {
        var words = text.Words();
        if (words.Length is < 3 or > 9)
        {
            bag.Add(text.Trim().Span, FieldProblems.StringCount());
            return null;
        }
        var strings = ImmutableArray.CreateBuilder<Pitch>();
        foreach (var word in words)
        {
            if (!Pitch.TryParse(word.Value, out var pitch))
            {
                bag.Add(word.Span, FieldProblems.UnknownPitch(word.Value));
                return null;
            }
            if (pitch.MidiNumber is < 12 or > 96)
            {
                bag.Add(word.Span, FieldProblems.StringOutOfRange(word.Value));
                return null;
            }
            strings.Add(pitch);
        }
        strings.Reverse();
        return strings.ToImmutable();
    }

    private static string NameOf(Instrument instrument, ImmutableArray<Pitch> strings)
    {
        if (strings.SequenceEqual(instrument.OpenStrings)) return instrument.Name;
        var tuning = string.Join(' ', strings.Reverse().Select(p => p.Name.ToDisplayString()));
        var name = strings.Length == instrument.StringCount ? instrument.Name
            : string.Create(CultureInfo.InvariantCulture, $"{strings.Length}-string {instrument.Family.ToString().ToLowerInvariant()}");
        return $"{name} in {tuning}";
    }

    private double? ReadLength(LocatedText text)
    {
        var value = text.Value.ToLowerInvariant();
        var unit = value.EndsWith("mm", StringComparison.Ordinal) ? 1.0 : value.EndsWith("in", StringComparison.Ordinal) || value.EndsWith('"') ? 25.4 : 0;
        var number = unit == 0 ? value : value.TrimEnd('m', 'i', 'n', '"').Trim();
        if (!double.TryParse(number, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var length))
        {
            bag.Add(text.Span, FieldProblems.UnknownLength(text.Value));
            return null;
        }
        // Without a unit: nobody's neck is 100 inches or 100 millimetres long.
        if (unit == 0) unit = length < 100 ? 25.4 : 1;
        length *= unit;
        if (length is >= 200 and <= 1200) return length;
        bag.Add(text.Span, FieldProblems.LengthOutOfRange());
        return null;
    }
}
