using System.Numerics;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>Watches that tuplets within tuplets are filled.</summary>
internal sealed class InnerTuplets
{
    private Fraction _filled;
    private int _tuplet;

    /// <summary>Where the one that is not filled yet begins; null when none is.</summary>
    public SourceSpan? Open { get; private set; }

    /// <summary>Takes the next value of the rhythm.</summary>
    /// <param name="tuplet">Notes of its inner tuplet; 0 outside.</param>
    /// <param name="time">Its time as <see cref="NotePhrase.InnerTime"/> gives it; null outside.</param>
    /// <param name="span">Where it is written.</param>
    /// <returns>Whether the value may stand here: not when another tuplet waits to be filled.</returns>
    public bool Take(int tuplet, Fraction? time, SourceSpan span)
    {
        if (Open is not null && tuplet != _tuplet) return false;
        if (time is not { } more) return true;
        Open ??= span;
        _tuplet = tuplet;
        _filled += more;
        if (!BitOperations.IsPow2(_filled.Denominator)) return true;
        Open = null;
        _filled = Fraction.Zero;
        return true;
    }

    /// <summary>Notes of the tuplet that is open.</summary>
    public int Tuplet => _tuplet;
}
