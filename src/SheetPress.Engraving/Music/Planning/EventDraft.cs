using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>An event while its measure is being planned.</summary>
internal sealed class EventDraft(ScoreEvent @event, int voice, MarkOrigin origin)
{
    private MusicGlyph[]? _glyphs;

    public ScoreEvent Event { get; } = @event;
    public int Voice { get; } = voice;
    public MarkOrigin Origin { get; } = origin;

    /// <summary>Index of the voice in the score; it differs from <see cref="Voice"/> when a voice of rests is not shown.</summary>
    public required int ScoreVoice { get; init; }

    /// <summary>Steps of the tones, in the order of the tones.</summary>
    public ImmutableArray<int> Steps { get; init; } = [];
    public StemDirection Stem { get; set; }
    public bool IsBeamed { get; set; }
    public bool IsUnderBeam { get; set; }
    /// <summary>How far the whole event stands right of its column, to clear the other voice.</summary>
    public double Shift { get; set; }
    public double RestY { get; set; }
    public bool IsCentred { get; init; }
    public bool IsHidden { get; set; }

    public bool HasStem => Steps.Length > 0 && StemRules.HasStem(Event.Value);

    public MusicGlyph[] Glyphs => _glyphs ??= [.. Event.Tones.Select(t => Ink.Glyph(HeadGlyphs.Name(t.Head, Event.Value.Base)))];

    /// <summary>
    /// Left edge of the heads on the near side of the stem: heads of every width have their middle where that of a black head is,
    /// so that voices and fret numbers line up.
    /// </summary>
    public double NearX => Shift + ((Ink.Glyph("noteheadBlack").Bounds.Right - HeadWidth) / 2);

    /// <summary>Width of the heads on the near side of the stem.</summary>
    public double HeadWidth => Glyphs[0].Bounds.Right;

    /// <summary>The heads with displaced seconds.</summary>
    public ImmutableArray<HeadPlan> Heads()
    {
        var displaced = ChordShape.Displaced(Steps, Stem);
        var heads = ImmutableArray.CreateBuilder<HeadPlan>(Steps.Length);
        for (var i = 0; i < Steps.Length; i++)
        {
            var aside = HasStem ? HeadWidth - Ink.Defaults.StemThickness : HeadWidth;
            var x = NearX + (displaced[i] ? (Stem == StemDirection.Up ? aside : -aside) : 0);
            heads.Add(new HeadPlan(Event.Tones[i], Steps[i], x, Glyphs[i]));
        }
        return heads.MoveToImmutable();
    }
}
