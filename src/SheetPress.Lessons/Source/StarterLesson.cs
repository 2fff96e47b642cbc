using System.Text;

namespace SheetPress.Lessons;

/// <summary>The lesson that a new author starts from: short, commented, and buildable as it is.</summary>
public static class StarterLesson
{
    private const int LongestTitle = 100;

    /// <summary>The YAML of a starter lesson, lines ended with line feeds.</summary>
    /// <param name="title">Its title; may hold any characters.</param>
    public static string Text(string title)
    {
        ArgumentNullException.ThrowIfNull(title);
        return $$"""
            # A lesson. Lines like this one, with a # in front, are remarks for you; they are not printed.
            title: {{Quoted(title)}}
            # subtitle: First steps
            # author: Your name

            key: C minor            # C minor, Eb major, D dorian, ...
            meter: 4/4              # 3/4, 6/8, 5/4, 7/8 (2+2+3), ...
            tempo: 80               # beats a minute, or: dotted quarter = 60
            # feel: swing           # straight, swing, swing-sixteenths
            instrument: bass-4      # bass-5, bass-6, guitar-6, guitar-7, ukulele, mandolin, tenor-banjo
            level: 2                # 1 (first months) to 5 (advanced)

            # Chord symbols or roman numerals, bars parted by |. More that you can write:
            #   Dm7b5 G7        two chords share a bar        Cm7:3 G7:1   three beats and one
            #   same   hold     the bar, the chord again      N.C.         no chord
            #   |: ... :|       repeat      |1. ... :|2. ...  first and second ending
            #   [A]             rehearsal mark                [3/4] [key G minor]  changes
            progression: |
              Cm7 | Fm7 | Dm7b5 G7 | Cm7 |

            # Your own words to the student. *Slanted*, **strong**, - lists; [Cm7] is a chord, {b3} a degree.
            notes: |
              Say the root out loud as you land on it. On [Dm7b5] look ahead: its {b5} falls
              a half step to the root of [G7].

            # One '- style' for each exercise; the command 'styles' shows all of them with their options.
            exercises:
              - style: roots
                rhythm: quarters             # eighths, dotted quarters, triplets, or one by one: q q e e q
              - style: root-octave
                count: 1 & 2 & (3) & 4      # or count it; what is in brackets is silent
              - style: arpeggio
                rhythm: eighths
                show: degrees fingers

            # Neck diagrams; leave this away and you get one for each chord.
            # diagrams:
            #   - Cm7
            #   - scale: C natural minor
            #     frets: 3-8

            # A plan for practice; leave this away and one is made from the exercises.
            # practice:
            #   - do: Sing the roots while you play them
            #     minutes: 3
            #   - exercise: 1
            #     tempo: 60 70 80
            #     times: 4

            # pages: large-print     # handout, book (with even edges, for binding), large-print

            """.ReplaceLineEndings("\n");
    }

    // Single quotes take every character but line ends and controls as it is.
    private static string Quoted(string title)
    {
        var line = new StringBuilder();
        foreach (var rune in title.Trim().EnumerateRunes())
        {
            if (line.Length >= LongestTitle) break;
            if (Rune.IsControl(rune) || rune.Value is 0xFEFF or 0xFFFE or 0xFFFF or 0x2028 or 0x2029) line.Append(' ');
            else line.Append(rune.ToString());
        }
        var text = line.ToString().Trim();
        return text.Length == 0 ? "'A new lesson'" : $"'{text.Replace("'", "''", StringComparison.Ordinal)}'";
    }
}
