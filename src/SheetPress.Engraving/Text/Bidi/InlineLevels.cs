using System.Text;

namespace SheetPress.Engraving;

/// <summary>The embedding levels of the inlines of one paragraph, read from its start to its end; a symbol of music counts as a word written to the right.</summary>
internal sealed class InlineLevels
{
    private static readonly InlineLevels AllToTheRight = new([], 0);

    private readonly byte[] _levels;
    private int _start;

    private InlineLevels(byte[] levels, byte baseLevel)
    {
        _levels = levels;
        BaseLevel = baseLevel;
    }

    /// <summary>The direction of the paragraph: 1 when it is written to the left.</summary>
    internal byte BaseLevel { get; }

    /// <summary>The levels of a paragraph.</summary>
    internal static InlineLevels Of(IReadOnlyList<Inline> inlines)
    {
        var mixed = false;
        foreach (var inline in inlines) mixed |= inline is TextInline words && BidiClasses.HasRightToLeft(words.Text);
        if (!mixed) return AllToTheRight;
        var text = new StringBuilder();
        foreach (var inline in inlines) text.Append(Stands(inline));
        var paragraph = text.ToString();
        var direction = BidiLevels.BaseLevel(paragraph);
        return new InlineLevels(BidiLevels.Of(paragraph, direction), direction);
    }

    /// <summary>The level at an index into the current inline.</summary>
    internal byte At(int index) => _levels.Length == 0 ? (byte)0 : _levels[_start + index];

    /// <summary>Goes on behind an inline.</summary>
    internal void Pass(Inline inline)
    {
        if (_levels.Length > 0) _start += Stands(inline).Length;
    }

    private static string Stands(Inline inline) => inline switch
    {
        TextInline words => words.Text,
        BreakInline => " ",
        _ => "M",
    };
}
