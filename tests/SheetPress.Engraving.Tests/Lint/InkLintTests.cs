using System.Collections.Immutable;

namespace SheetPress.Engraving.Tests;

/// <summary>Distances of ink, judged by its shape.</summary>
public class InkLintTests
{
    // A beam that falls a quarter of a space for each space, its lower edge at y = 0 above x = 4.
    private static readonly PolygonMark Beam = new([new(0, -1.5), new(8, 0.5), new(8, 1), new(0, -1)]) { Role = MarkRole.Beam, Origin = new MarkOrigin(0, 0, 0, 0) };

    [Theory]
    [InlineData(0.2, false)]
    [InlineData(0.1, true)]
    [InlineData(-0.1, true)]
    public void A_slanted_beam_is_measured_where_it_passes_an_accidental(double below, bool isFound)
    {
        var sign = new LineMark(new Point(3.95, below), new Point(3.95, below + 2), 0.1) { Role = MarkRole.Accidental, Origin = new MarkOrigin(0, 0, 0, 1) };
        var findings = InkLint.Check([Beam, sign], 1).ToImmutableArray();
        (findings.Length > 0).ShouldBe(isFound);
    }
}
