namespace SheetPress.Theory;

/// <summary>Finds the chord symbol that a mistyped one was probably meant to be.</summary>
internal static class NearestSymbol
{
    /// <summary>The known suffix with the fewest slips between it and the text after the root, with root and bass put back; null when none is near.</summary>
    internal static string? Find(NoteName root, string symbol, int suffixStart)
    {
        var written = symbol[suffixStart..];
        var slash = written.LastIndexOf('/');
        var (suffix, bass) = slash >= 0 && NoteName.TryParse(written[(slash + 1)..], out _) ? (written[..slash], written[slash..]) : (written, "");
        // What stands behind a slash may be a tone that was meant to be added.
        if (slash >= 0 && bass.Length == 0 && written[(slash + 1)..] is "9" or "2" or "11" or "4")
        {
            var added = root + written[..slash] + "add" + written[(slash + 1)..];
            return ChordParser.Parse(added).Success ? added : null;
        }
        return FindQuality(suffix) is { } quality ? root + quality.Suffix + bass : null;
    }

    /// <summary>The quality of the table with the fewest slips between one of its suffixes and a text; null when none is near.</summary>
    internal static ChordQuality? FindQuality(string suffix, bool onlyMinor = false)
    {
        if (suffix.AsSpan().IndexOfAny('(', ')') >= 0 && new ChordSuffixReader(string.Concat(suffix.Where(c => c is not ('(' or ')'))), 0) is var plain
            && plain.Read() is { } shape && (shape.IsMinor || !onlyMinor))
        {
            return ChordQualities.Of(shape);
        }
        ChordQuality? best = null;
        var limit = suffix.Length <= 2 ? 1 : Math.Max(2, suffix.Length / 3);
        // Of two suffixes equally near, the one with the same first letter wins, since few people slip on it.
        var bestDistance = (2 * limit) + 2;
        foreach (var quality in ChordQualities.All)
        {
            if (onlyMinor && !quality.Shape.IsMinor) continue;
            Try(quality.Suffix, quality);
            foreach (var alias in quality.Aliases) Try(alias, quality);
        }
        return best;

        void Try(string known, ChordQuality quality)
        {
            if (known.Length == 0 || suffix.Length == 0 || Math.Abs(known.Length - suffix.Length) > limit) return;
            var distance = Distance(suffix, known) + (Cost(suffix[0], known[0]) < 2 ? 0 : 1);
            if (distance < bestDistance) (best, bestDistance) = (quality, distance);
        }
    }

    /// <summary>
    /// Letters to insert, delete, replace or swap with a neighbour, two for each (optimal string alignment); one for a letter in the other case.
    /// </summary>
    private static int Distance(string a, string b)
    {
        var rows = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++) rows[i, 0] = 2 * i;
        for (var j = 0; j <= b.Length; j++) rows[0, j] = 2 * j;
        for (var i = 1; i <= a.Length; i++)
        {
            for (var j = 1; j <= b.Length; j++)
            {
                rows[i, j] = Math.Min(Math.Min(rows[i - 1, j] + 2, rows[i, j - 1] + 2), rows[i - 1, j - 1] + Cost(a[i - 1], b[j - 1]));
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1]) rows[i, j] = Math.Min(rows[i, j], rows[i - 2, j - 2] + 2);
            }
        }
        return rows[a.Length, b.Length];
    }

    private static int Cost(char a, char b)
    {
        if (Plain(a) == Plain(b)) return 0;
        return char.ToLowerInvariant(a) == char.ToLowerInvariant(b) ? 1 : 2;

        static char Plain(char c) => c switch { '♭' => 'b', '♯' => '#', _ => c };
    }
}
