namespace SheetPress.Theory;

/// <summary>Reads the lists of degrees that tables are written in.</summary>
internal static class DegreeList
{
    /// <summary>Degrees parted by single blanks.</summary>
    /// <exception cref="FormatException">One of them is no degree.</exception>
    internal static Degree[] Read(string text)
    {
        var words = text.Split(' ');
        var degrees = new Degree[words.Length];
        for (var i = 0; i < words.Length; i++) degrees[i] = Degree.Parse(words[i]);
        return degrees;
    }
}
