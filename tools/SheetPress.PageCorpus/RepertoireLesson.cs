using System.Globalization;
using System.Text;
using SheetPress.Lessons;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.PageCorpus;

/// <summary>Writes lessons over the forms of the repertoire: any key, and the ways in which people write chord symbols.</summary>
internal static class RepertoireLesson
{
    /// <summary>The ways to write a chord symbol: the canonical one first, then a column of other spellings each.</summary>
    public const int Dialects = 5;

    /// <summary>The keys a form is written in.</summary>
    public const int Keys = 15;

    /// <summary>The lessons of <see cref="Write(int)"/>: each form in each key.</summary>
    public static int Count => RepertoireForms.All.Length * Keys;

    /// <summary>A lesson with every style of the catalogue: form, key, way of writing, instrument and level follow from the number, which counts from 1.</summary>
    public static string Write(int number)
    {
        var form = RepertoireForms.All[(number - 1) % RepertoireForms.All.Length];
        var turn = (number - 1) / RepertoireForms.All.Length;
        var (key, progression) = Write(form, ((number * 4) + turn) % Keys, (number + turn) % Dialects);
        var instrument = InstrumentCatalogue.All[((number * 3) + turn) % InstrumentCatalogue.All.Length];
        return Lesson(form.Name, key, form.Meter, progression, instrument.Id, 1 + ((number + (2 * turn)) % 5), ExerciseStyles.All.Where(s => !s.Options.Any(o => o.Required)));
    }

    /// <summary>A form in another key (0 to 14, from seven flats to seven sharps) and another way of writing, as the text of a progression.</summary>
    public static (Key Key, string Progression) Write(RepertoireForm form, int key, int dialect)
    {
        var home = Theory.Key.Parse(form.Key);
        var there = Theory.Key.All(home.Mode)[key];
        var move = new KeyTransposition(home, there);
        var text = new StringBuilder();
        var inMark = false;
        foreach (var word in form.Progression.Split(' '))
        {
            if (text.Length > 0) text.Append(' ');
            inMark |= word.StartsWith('[');
            text.Append(inMark ? word : Word(word, move, dialect));
            inMark &= !word.EndsWith(']');
        }
        return (there, MoveKeys(text.ToString(), move));
    }

    /// <summary>A whole lesson over a progression.</summary>
    /// <param name="title">Its title.</param>
    /// <param name="key">The key.</param>
    /// <param name="meter">The meter.</param>
    /// <param name="progression">The progression.</param>
    /// <param name="instrument">The instrument's id.</param>
    /// <param name="level">The level, 1 to 5.</param>
    /// <param name="styles">The styles of its exercises.</param>
    public static string Lesson(string title, Key key, string meter, string progression, string instrument, int level, IEnumerable<ExerciseStyle> styles)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"title: {title}\nkey: {key}\nmeter: {meter}\ninstrument: {instrument}\nlevel: {level}\npractice: none\nprogression: |\n  {progression}\nexercises:\n");
        foreach (var style in styles) text.Append(CultureInfo.InvariantCulture, $"  - style: {style.Name}\n");
        return text.ToString();
    }

    private static string Word(string word, KeyTransposition move, int dialect)
    {
        var colon = word.IndexOf(':', StringComparison.Ordinal);
        var symbol = colon < 0 ? word : word[..colon];
        if (!Chord.TryParse(symbol, out var chord)) return word;
        var moved = move.Apply(chord);
        // Roots with two signs are written out by those who spell strictly, and simplified by the others.
        if (dialect % 2 == 0 || Math.Abs(moved.Root.Alteration) > 2 || Math.Abs(moved.Lowest.Alteration) > 2) moved = moved.Readable;
        return Symbol(moved, dialect) + (colon < 0 ? "" : word[colon..]);
    }

    // Column by column of the other spellings, so that every spelling of the table comes up in some key or form.
    private static string Symbol(Chord chord, int dialect)
    {
        var suffix = chord.Quality.Suffix;
        var others = chord.Quality.Aliases;
        if (dialect > 0 && others.Length > 0) suffix = others[(dialect - 1 + NoteNumber(chord.Root)) % others.Length];
        // An accidental straight behind the root would belong to it.
        if (suffix.Length > 0 && suffix[0] is 'b' or '#') suffix = $"({suffix})";
        var symbol = chord.Root + suffix + (chord.Bass is { } bass ? "/" + bass : "");
        return dialect % 2 == 0 ? symbol : symbol.Replace('b', '♭').Replace('#', '♯').Replace("♭lues", "blues", StringComparison.Ordinal);
    }

    private static int NoteNumber(NoteName note) => ((note.Fifths % 12) + 12) % 12;

    private static string MoveKeys(string progression, KeyTransposition move)
    {
        const string Mark = "[key ";
        for (var at = progression.IndexOf(Mark, StringComparison.Ordinal); at >= 0; at = progression.IndexOf(Mark, at + 1, StringComparison.Ordinal))
        {
            var start = at + Mark.Length;
            var end = progression.IndexOf(']', start);
            progression = progression[..start] + move.Apply(Theory.Key.Parse(progression[start..end])) + progression[end..];
        }
        return progression;
    }
}
