using System.Globalization;
using System.Text;
using System.Text.Json;

namespace SheetPress.Engraving;

/// <summary>
/// Reads single entries out of the font's SMuFL metadata file without reading it whole. The places of its sections are
/// found once; an entry is found by searching its section for the quoted name, which takes some microseconds.
/// Format: SMuFL 1.4, "Font-specific metadata"; y upward there, turned downward here.
/// </summary>
internal sealed class MusicFontMetadata
{
    private readonly FontFile _file = FontFile.Named("bravura-metadata.json");
    private readonly FontFile _codePoints = FontFile.Named("smufl-code-points.txt");
    private readonly Range _advances;
    private readonly Range _boxes;
    private readonly Range _anchors;
    private readonly Range _optional;
    private readonly Range _ligatures;

    internal MusicFontMetadata()
    {
        // The sections stand one after another; each ends where the next begins.
        var advances = SectionStart("glyphAdvanceWidths");
        var boxes = SectionStart("glyphBBoxes");
        var alternates = SectionStart("glyphsWithAlternates");
        var anchors = SectionStart("glyphsWithAnchors");
        var ligatures = SectionStart("ligatures");
        var optional = SectionStart("optionalGlyphs");
        var sets = SectionStart("sets");
        _advances = advances..boxes;
        _boxes = boxes..alternates;
        _anchors = anchors..ligatures;
        _ligatures = ligatures..optional;
        _optional = optional..sets;
    }

    internal MusicGlyph ReadGlyph(string name)
    {
        if (!TryFind(_boxes, name, out var box) || !TryFind(_advances, name, out var advance))
        {
            throw new KeyNotFoundException($"The music font has no glyph named \"{name}\".");
        }
        return new MusicGlyph(name, ReadCodePoint(name), ReadBox(box), ReadNumber(advance), ReadAnchors(name));
    }

    internal EngravingDefaults ReadDefaults()
    {
        var values = new Dictionary<string, double>(StringComparer.Ordinal);
        var reader = new Utf8JsonReader(_file.Bytes[SectionStart("engravingDefaults")..], isFinalBlock: false, default);
        reader.Read();
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            var name = reader.GetString()!;
            reader.Read();
            if (reader.TokenType == JsonTokenType.Number)
            {
                values.Add(name, reader.GetDouble());
            }
            else
            {
                while (reader.TokenType != JsonTokenType.EndArray)
                {
                    reader.Read();
                }
            }
        }
        return new EngravingDefaults
        {
            StaffLineThickness = values["staffLineThickness"],
            StemThickness = values["stemThickness"],
            BeamThickness = values["beamThickness"],
            BeamSpacing = values["beamSpacing"],
            LegerLineThickness = values["legerLineThickness"],
            LegerLineExtension = values["legerLineExtension"],
            SlurEndpointThickness = values["slurEndpointThickness"],
            SlurMidpointThickness = values["slurMidpointThickness"],
            TieEndpointThickness = values["tieEndpointThickness"],
            TieMidpointThickness = values["tieMidpointThickness"],
            ThinBarlineThickness = values["thinBarlineThickness"],
            ThickBarlineThickness = values["thickBarlineThickness"],
            BarlineSeparation = values["barlineSeparation"],
            RepeatBarlineDotSeparation = values["repeatBarlineDotSeparation"],
            BracketThickness = values["bracketThickness"],
            HairpinThickness = values["hairpinThickness"],
            RepeatEndingLineThickness = values["repeatEndingLineThickness"],
            TupletBracketThickness = values["tupletBracketThickness"],
            TextEnclosureThickness = values["textEnclosureThickness"],
        };
    }

    /// <summary>Names in the list of standard code points.</summary>
    internal IEnumerable<string> ListedNames()
    {
        foreach (var line in Encoding.ASCII.GetString(_codePoints.Bytes).Split('\n'))
        {
            if (line.Length > 0 && line[0] != '#')
            {
                yield return line[..line.IndexOf(' ', StringComparison.Ordinal)];
            }
        }
    }

    private int SectionStart(string name)
    {
        var key = Encoding.ASCII.GetBytes($"\n\t\"{name}\":");
        var at = _file.Bytes.IndexOf(key);
        return at >= 0 ? at + key.Length : throw new InvalidDataException($"The metadata of the music font lacks \"{name}\".");
    }

    /// <summary>The bytes after the colon of an entry.</summary>
    private bool TryFind(Range section, string name, out ReadOnlySpan<byte> value)
    {
        var bytes = _file.Bytes[section];
        var key = Encoding.ASCII.GetBytes($"\n\t\t\"{name}\":");
        var at = bytes.IndexOf(key);
        value = at < 0 ? default : bytes[(at + key.Length)..];
        return at >= 0;
    }

    private int ReadCodePoint(string name)
    {
        var key = Encoding.ASCII.GetBytes($"\n{name} ");
        var at = _codePoints.Bytes.IndexOf(key);
        if (at >= 0)
        {
            return Hexadecimal(_codePoints.Bytes.Slice(at + key.Length, 4));
        }
        if (TryFind(_optional, name, out var entry) || TryFind(_ligatures, name, out entry))
        {
            var code = "\"codepoint\":\"U+"u8;
            return Hexadecimal(entry.Slice(entry.IndexOf(code) + code.Length, 4));
        }
        throw new KeyNotFoundException($"The code point of the music glyph \"{name}\" is not in smufl-code-points.txt.");
    }

    private static int Hexadecimal(ReadOnlySpan<byte> digits) => int.Parse(digits, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture);

    private static double ReadNumber(ReadOnlySpan<byte> json)
    {
        var end = json.IndexOfAny(",\n}"u8);
        return double.Parse(json[..end], NumberStyles.Float, CultureInfo.InvariantCulture);
    }

    private static Box ReadBox(ReadOnlySpan<byte> json)
    {
        var corners = ReadPoints(json);
        var (northEast, southWest) = (corners["bBoxNE"], corners["bBoxSW"]);
        return new Box(southWest.X, northEast.Y, northEast.X, southWest.Y);
    }

    private Dictionary<string, Point> ReadAnchors(string name) => TryFind(_anchors, name, out var json) ? ReadPoints(json) : [];

    /// <summary>Reads an object whose members are pairs of numbers.</summary>
    private static Dictionary<string, Point> ReadPoints(ReadOnlySpan<byte> json)
    {
        var points = new Dictionary<string, Point>(StringComparer.Ordinal);
        var reader = new Utf8JsonReader(json, isFinalBlock: false, default);
        reader.Read();
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            var name = reader.GetString()!;
            reader.Read();
            reader.Read();
            var x = reader.GetDouble();
            reader.Read();
            var y = reader.GetDouble();
            reader.Read();
            points.Add(name, new Point(x, 0 - y));
        }
        return points;
    }
}
