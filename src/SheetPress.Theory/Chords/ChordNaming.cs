using System.Globalization;
using System.Text;

namespace SheetPress.Theory;

/// <summary>Writes the canonical suffix of a chord and its name in words.</summary>
internal static class ChordNaming
{
    /// <summary>The suffix of a shape in its two parts.</summary>
    internal static SuffixParts Parts(ChordShape shape)
    {
        var main = Main(shape);
        var changes = new List<string>();
        var additions = new List<string>();
        var fifthIsNamed = shape.IsDiminished || shape.IsAugmented;
        foreach (var degree in shape.Degrees)
        {
            var altered = degree.Alteration != 0;
            switch (degree.Number)
            {
                case 5 when altered && !fifthIsNamed:
                case 9 or 11 or 13 when altered && shape.Top >= 6:
                    // Beside the natural tone the altered one is an addition.
                    if (shape.Has(degree.Number)) additions.Add("add" + degree);
                    else changes.Add(degree.ToString());
                    break;
                case 6 or 9 or 11 or 13 when altered:
                case 9 when shape.Top < 6:
                case 11 when shape.Top < 11 || (shape.Top == 13 && !shape.IsMinor):
                case 13 when shape.Top < 13:
                    additions.Add("add" + degree);
                    break;
            }
        }
        if (main == "7" && changes is ["#5", "b9", "#9"]) changes = ["alt"];
        changes.AddRange(additions);
        if (shape.Third is null && !shape.IsSuspendedFourth && !shape.IsSuspendedSecond && main != "5") changes.Add("no3");
        if (!shape.HasNumber(5)) changes.Add("no5");
        return new(main, [.. changes]);
    }

    private static string Main(ChordShape shape)
    {
        var top = shape.Top.ToString(CultureInfo.InvariantCulture);
        if (shape.IsDiminished) return shape.Seventh switch { null => "dim", { Alteration: 0 } => "dimMaj" + top, _ => "dim" + top };
        if (shape.IsAugmented) return "aug";
        var suspension = (shape.IsSuspendedSecond, shape.IsSuspendedFourth) switch { (true, true) => "sus2(4)", (true, _) => "sus2", (_, true) => "sus4", _ => "" };
        var minor = shape.IsMinor ? "m" : "";
        var body = shape.Seventh switch
        {
            { Alteration: 0 } => (shape.IsMinor ? "Maj" : "maj") + top,
            { } => top,
            null when shape.HasSixth => shape.Has(9) ? "6/9" : "6",
            null when shape.Third is null && suspension.Length == 0 && shape.Has(5) => "5",
            _ => "",
        };
        return minor + body + suspension;
    }

    /// <summary>A name in words made from the build, for qualities that have no name of their own in the table.</summary>
    internal static string Words(ChordShape shape)
    {
        var (main, changes) = Parts(shape);
        var name = new StringBuilder(MainWords(shape, main));
        foreach (var change in changes)
        {
            var (word, degree) = change switch
            {
                "alt" => (" altered", ""),
                _ when change.StartsWith("add", StringComparison.Ordinal) => (" added ", change[3..]),
                _ when change.StartsWith("no", StringComparison.Ordinal) => (" without ", change[2..]),
                _ => (" ", change),
            };
            name.Append(word);
            if (degree.Length > 0) name.Append(DegreeWords(Degree.Parse(degree)));
        }
        return name.ToString();
    }

    private static string MainWords(ChordShape shape, string main)
    {
        if (main == "5") return "power chord";
        var family = (shape.IsDiminished, shape.IsAugmented, shape.IsMinor, shape.Seventh) switch
        {
            (true, _, _, { Alteration: 0 }) => "diminished major",
            (true, _, _, _) => "diminished",
            (_, true, _, _) => "augmented",
            (_, _, true, { Alteration: 0 }) => "minor-major",
            (_, _, true, _) => "minor",
            (_, _, _, { Alteration: 0 }) => "major",
            (_, _, _, { }) => "dominant",
            _ => "major",
        };
        var size = shape.Top switch { 0 => "triad", 6 => main.Contains('/', StringComparison.Ordinal) ? "six-nine" : "sixth", var top => Ordinal(top) };
        var suspension = (shape.IsSuspendedSecond, shape.IsSuspendedFourth) switch
        {
            (true, true) => "suspended second and fourth",
            (true, _) => "suspended second",
            (_, true) => "suspended fourth",
            _ => "",
        };
        if (suspension.Length == 0) return $"{family} {size}";
        return shape.Top == 0 ? suspension : $"{(family == "dominant" ? "" : family + " ")}{size} {suspension}";
    }

    private static string DegreeWords(Degree degree)
    {
        var alteration = degree.Alteration switch { 0 => "", -1 => "flat ", 1 => "sharp ", < 0 => "double-flat ", _ => "double-sharp " };
        return alteration + Ordinal(degree.Number);
    }

    private static string Ordinal(int number) => number switch
    {
        2 => "second",
        3 => "third",
        4 => "fourth",
        5 => "fifth",
        6 => "sixth",
        7 => "seventh",
        9 => "ninth",
        11 => "eleventh",
        _ => "thirteenth",
    };
}
