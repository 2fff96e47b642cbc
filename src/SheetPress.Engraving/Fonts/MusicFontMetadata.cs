using System.Buffers.Text;
using System.Globalization;
using System.Text;

namespace SheetPress.Engraving;

/// <summary>
/// Reads single entries out of the font's SMuFL metadata file without reading it whole. The places of its sections are
/// found once; an entry is found by searching its section for the quoted name, which takes some microseconds. A JSON
/// reader would cost more at start than all that is read.
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
        return new MusicGlyph(name, ReadCodePoint(name), ReadBox(box), NextNumber(ref advance), ReadAnchors(name));
    }

    internal EngravingDefaults ReadDefaults()
    {
        var section = _file.Bytes[SectionStart("engravingDefaults")..];
        return new EngravingDefaults
        {
            StaffLineThickness = Named(section, "\"staffLineThickness\":"u8),
            StemThickness = Named(section, "\"stemThickness\":"u8),
            BeamThickness = Named(section, "\"beamThickness\":"u8),
            BeamSpacing = Named(section, "\"beamSpacing\":"u8),
            LegerLineThickness = Named(section, "\"legerLineThickness\":"u8),
            LegerLineExtension = Named(section, "\"legerLineExtension\":"u8),
            SlurEndpointThickness = Named(section, "\"slurEndpointThickness\":"u8),
            SlurMidpointThickness = Named(section, "\"slurMidpointThickness\":"u8),
            TieEndpointThickness = Named(section, "\"tieEndpointThickness\":"u8),
            TieMidpointThickness = Named(section, "\"tieMidpointThickness\":"u8),
            ThinBarlineThickness = Named(section, "\"thinBarlineThickness\":"u8),
            ThickBarlineThickness = Named(section, "\"thickBarlineThickness\":"u8),
            BarlineSeparation = Named(section, "\"barlineSeparation\":"u8),
            RepeatBarlineDotSeparation = Named(section, "\"repeatBarlineDotSeparation\":"u8),
            BracketThickness = Named(section, "\"bracketThickness\":"u8),
            HairpinThickness = Named(section, "\"hairpinThickness\":"u8),
            RepeatEndingLineThickness = Named(section, "\"repeatEndingLineThickness\":"u8),
            TupletBracketThickness = Named(section, "\"tupletBracketThickness\":"u8),
            TextEnclosureThickness = Named(section, "\"textEnclosureThickness\":"u8),
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

    private static double Named(ReadOnlySpan<byte> section, ReadOnlySpan<byte> key)
    {
        var rest = section[(section.IndexOf(key) + key.Length)..];
        return NextNumber(ref rest);
    }

    /// <summary>The number that comes next, whatever stands before it; the text is moved behind it.</summary>
    private static double NextNumber(ref ReadOnlySpan<byte> json)
    {
        while (json[0] is not ((byte)'-' or (>= (byte)'0' and <= (byte)'9')))
        {
            json = json[1..];
        }
        if (!Utf8Parser.TryParse(json, out double value, out var length))
        {
            throw new InvalidDataException("The metadata of the music font holds a broken number.");
        }
        json = json[length..];
        return value;
    }

    /// <summary>Reads the corner at the north-east, then the one at the south-west.</summary>
    private static Box ReadBox(ReadOnlySpan<byte> json)
    {
        var (right, top) = (NextNumber(ref json), NextNumber(ref json));
        var (left, bottom) = (NextNumber(ref json), NextNumber(ref json));
        return new Box(left, 0 - top, right, 0 - bottom);
    }

    /// <summary>Reads an object whose members are pairs of numbers.</summary>
    private Dictionary<string, Point> ReadAnchors(string name)
    {
        var anchors = new Dictionary<string, Point>(StringComparer.Ordinal);
        if (TryFind(_anchors, name, out var json))
        {
            json = json[..json.IndexOf((byte)'}')];
            for (var quote = json.IndexOf((byte)'"'); quote >= 0; quote = json.IndexOf((byte)'"'))
            {
                json = json[(quote + 1)..];
                var key = Encoding.ASCII.GetString(json[..json.IndexOf((byte)'"')]);
                anchors.Add(key, new Point(NextNumber(ref json), 0 - NextNumber(ref json)));
            }
        }
        return anchors;
    }
}
