using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Hull.Surfaces;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Views.Hulls;
using Xunit;

namespace Orlop.Presentation.Tests.Views.Hulls;

public sealed class HullFactsTests
{
    private static readonly CultureInfo English = CultureInfo.GetCultureInfo("en-GB");
    private static readonly HullLines Box = HullEdit.Of(StartingForm.Create("box", StartingShape.Box, 10, 4, 2), null);

    // A box 10 m by 4 m floats 32 m³ deep 0.8 m, wet over 10 x 4 + 2 x 0.8 x (10 + 4) m².
    [Fact]
    public void Of_Box_HasTheBoxesNumbers()
    {
        HullFacts facts = HullFacts.Of(Box, 0.8, 1000);
        Assert.Equal(32, facts.AtDraught!.VolumeM3, 1e-9);
        Assert.Equal(62.4, facts.AtDraught.WettedAreaM2, 1e-9);
        IReadOnlyList<HullComparison> rows = HullComparison.Of(facts, HullFacts.Of(Box, 0.4, 1000), DisplayUnits.Metric, English);
        Assert.Equal(("Displacement", "32,000\u00A0kg", "16,000\u00A0kg", true), (rows[0].Name, rows[0].Now, rows[0].Before, rows[0].IsOther));
    }

    [Theory]
    [InlineData(null)]
    [InlineData(0.0)]
    [InlineData(2.5)]
    public void Of_NoDraughtOrNoneThatSheReaches_IsUnknown(double? draughtM)
    {
        HullFacts facts = HullFacts.Of(Box, draughtM, 1000);
        Assert.Null(facts.AtDraught);
        Assert.All(HullComparison.Of(facts, null, DisplayUnits.Metric, English), row => Assert.Equal("—", row.Now));
    }

    [Fact]
    public void Doubt_IsSaidWithItsPlaceItsAmountAndItsSide()
    {
        HullLines lines = HullEdit.Of(StartingForm.Create("hull", StartingShape.SingleChine, 10, 3, 1.5), null, 3);
        HullSpot spot = new(false, 5, 1);
        StationPoint right = HullEdit.At(lines, spot)!;
        HullFacts facts = HullFacts.Of(HullEdit.WithPoint(lines, spot, right with { HalfBreadthM = right.HalfBreadthM + 0.06 }), 0.7, 1025);
        FormDoubt doubt = Assert.Single(facts.Bodies.Doubts);
        Assert.Equal(spot, facts.SpotOf(doubt));
        Assert.Matches(@"^Point 2 of station 0\.5 is (5\d|6\d) mm wide of(, \d+ mm (above|below))? a fair line through its neighbours along the boat\.$", HullWords.Doubt(doubt, DisplayUnits.Metric, English));
        Assert.StartsWith("Fair there: half-breadth 1.", HullWords.Fair(doubt, DisplayUnits.Metric, English), StringComparison.Ordinal);
    }
}
