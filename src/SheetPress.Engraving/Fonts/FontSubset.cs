using System.Runtime.InteropServices;

namespace SheetPress.Engraving;

/// <summary>
/// Cuts a font file down to the glyphs that a document uses, with the subsetter of HarfBuzz. Glyphs keep their numbers, so
/// shaped text stays valid; tables that only shaping needs are left out. A face of 380 KB becomes one of 5 to 40 KB.
/// </summary>
/// <remarks>
/// The subsetter is part of the native library that HarfBuzzSharp ships for each platform, but has no managed face there,
/// hence the calls below. Source: HarfBuzz manual, hb-subset.h and hb-blob.h.
/// </remarks>
public static partial class FontSubset
{
    private const string Library = "libHarfBuzzSharp";
    private const uint NoHinting = 0x01;
    private const uint RetainGlyphIds = 0x02;
    private const int ReadOnlyMemory = 1;
    private const int DropTableSet = 3;

    /// <summary>The font file with only some glyphs; the same bytes for the same glyphs.</summary>
    /// <param name="font">The whole font file.</param>
    /// <param name="glyphs">True at the number of each glyph to keep; glyph 0 is kept anyway.</param>
    /// <exception cref="InvalidDataException">The file is not a font that can be cut down.</exception>
    public static unsafe byte[] Of(ReadOnlySpan<byte> font, ReadOnlySpan<bool> glyphs)
    {
        fixed (byte* start = font)
        {
            return Cut((nint)start, (uint)font.Length, glyphs);
        }
    }

    private static byte[] Cut(nint font, uint size, ReadOnlySpan<bool> glyphs)
    {
        var whole = hb_blob_create(font, size, ReadOnlyMemory, 0, 0);
        var face = hb_face_create(whole, 0);
        var input = hb_subset_input_create_or_fail();
        nint subset = 0;
        nint result = 0;
        try
        {
            hb_subset_input_set_flags(input, NoHinting | RetainGlyphIds);
            var kept = hb_subset_input_glyph_set(input);
            for (var glyph = 0; glyph < glyphs.Length; glyph++)
            {
                if (glyphs[glyph])
                {
                    hb_set_add(kept, (uint)glyph);
                }
            }
            var dropped = hb_subset_input_set(input, DropTableSet);
            foreach (var table in (string[])["GSUB", "GPOS", "GDEF", "STAT", "DSIG", "meta"])
            {
                hb_set_add(dropped, Tag(table));
            }
            subset = hb_subset_or_fail(face, input);
            if (subset == 0)
            {
                throw new InvalidDataException("The font cannot be cut down to the glyphs of the document.");
            }
            result = hb_face_reference_blob(subset);
            var data = hb_blob_get_data(result, out var length);
            var bytes = new byte[length];
            Marshal.Copy(data, bytes, 0, bytes.Length);
            return bytes;
        }
        finally
        {
            hb_blob_destroy(result);
            hb_face_destroy(subset);
            hb_subset_input_destroy(input);
            hb_face_destroy(face);
            hb_blob_destroy(whole);
        }
    }

    private static uint Tag(string name) => ((uint)name[0] << 24) | ((uint)name[1] << 16) | ((uint)name[2] << 8) | name[3];

    [LibraryImport(Library)]
    private static partial nint hb_blob_create(nint data, uint length, int mode, nint userData, nint destroy);

    [LibraryImport(Library)]
    private static partial nint hb_blob_get_data(nint blob, out uint length);

    [LibraryImport(Library)]
    private static partial void hb_blob_destroy(nint blob);

    [LibraryImport(Library)]
    private static partial nint hb_face_create(nint blob, uint index);

    [LibraryImport(Library)]
    private static partial nint hb_face_reference_blob(nint face);

    [LibraryImport(Library)]
    private static partial void hb_face_destroy(nint face);

    [LibraryImport(Library)]
    private static partial void hb_set_add(nint set, uint value);

    [LibraryImport(Library)]
    private static partial nint hb_subset_input_create_or_fail();

    [LibraryImport(Library)]
    private static partial nint hb_subset_input_glyph_set(nint input);

    [LibraryImport(Library)]
    private static partial nint hb_subset_input_set(nint input, int kind);

    [LibraryImport(Library)]
    private static partial void hb_subset_input_set_flags(nint input, uint flags);

    [LibraryImport(Library)]
    private static partial nint hb_subset_or_fail(nint face, nint input);

    [LibraryImport(Library)]
    private static partial void hb_subset_input_destroy(nint input);
}
