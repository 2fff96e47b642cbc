namespace SheetPress.Lessons;

/// <summary>Finds the known word that a mistyped one was probably meant to be.</summary>
public static class NearestWord
{
    /// <summary>
    /// The known word with the smallest number of single-letter slips (insert, leave out, replace, swap two neighbours), letter case
    /// not counted; null when none is near enough: one slip for every three letters, at least one. Without one,
    /// a word of several parts that begins with it. The first of equals wins.
    /// </summary>
    /// <remarks>Optimal string alignment distance (Damerau 1964, restricted to one swap a place), as in textbooks.</remarks>
    public static string? Find(string word, IEnumerable<string> known)
    {
        if (word.Length is 0 or > 40) return null;
        var lower = word.ToLowerInvariant();
        string? best = null;
        var bestDistance = Math.Max(1, word.Length / 3) + 1;
        foreach (var candidate in known)
        {
            if (Math.Abs(candidate.Length - word.Length) >= bestDistance) continue;
            var distance = Distance(lower, candidate.ToLowerInvariant());
            if (distance >= bestDistance || distance >= candidate.Length) continue;
            best = candidate;
            bestDistance = distance;
        }
        return best ?? StartingWith(lower, known);
    }

    // "bass" for bass-4, "walking" for walking-line.
    private static string? StartingWith(string lower, IEnumerable<string> known)
    {
        if (lower.Length < 4) return null;
        foreach (var candidate in known) if (candidate.StartsWith(lower + "-", StringComparison.Ordinal)) return candidate;
        return null;
    }

    /// <summary>The number of slips between two words.</summary>
    public static int Distance(string a, string b)
    {
        var before = new int[b.Length + 1];
        var last = new int[b.Length + 1];
        var row = new int[b.Length + 1];
        for (var j = 0; j <= b.Length; j++) last[j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var replace = last[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                row[j] = Math.Min(replace, Math.Min(last[j], row[j - 1]) + 1);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1]) row[j] = Math.Min(row[j], before[j - 2] + 1);
            }
            (before, last, row) = (last, row, before);
        }
        return last[b.Length];
    }
}
