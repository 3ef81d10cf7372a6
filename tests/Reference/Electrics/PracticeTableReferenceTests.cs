using Orlop.Electrics.Conductors;
using Orlop.Review.Practices;
using Xunit;

namespace Orlop.Reference.Tests.Electrics;

/// <summary>The tables of the practices are the published ones, row for row.</summary>
public sealed class PracticeTableReferenceTests
{
    [Theory]
    [InlineData("us-federal")]
    [InlineData("owner")]
    public void Ampacity_33Cfr183425Table5_IsThePracticesTable(string practiceId)
    {
        AmpacityTable table = PracticeFiles.ById[practiceId].Ampacities;
        IReadOnlyList<ReferenceRow> rows = ReferenceCsv.Load("electrical-cfr-ampacity.csv", 105);
        Assert.Equal(rows.Count, table.Rows.Length);
        Assert.All(rows, row =>
        {
            Assert.True(AmericanWireGauge.TryParse(row.Text("awg"), out int gauge), row.ToString());
            AmpacityRow found = Assert.Single(table.Rows, each => Math.Abs(each.AreaMm2 - AmericanWireGauge.AreaMm2(gauge)) < 1e-9 && each.InsulationC == row.Number("insulation_temp_c"));
            row.Agrees(row.Number("ampacity_a"), found.CurrentA, 0);
        });
    }

    [Theory]
    [InlineData("us-federal")]
    [InlineData("owner")]
    [InlineData("iso-small-craft")]
    public void Grouping_33Cfr183425Table5Note2_IsThePracticesTable(string practiceId)
    {
        var table = PracticeFiles.ById[practiceId].Groupings;
        IReadOnlyList<ReferenceRow> rows = ReferenceCsv.Load("electrical-cfr-bundling-factor.csv", 4);
        Assert.Equal(rows.Count, table.Rows.Length);
        Assert.All(rows, row => row.Agrees(row.Number("factor"), Assert.Single(table.Rows, each => each.LeastCount == (int)row.Number("conductors_min")).Factor, 0));
    }

    // 33 CFR 183.455(c)(1): below 50 V a device of at most 150 % of the Table 5 amperage; the published table works it out.
    [Fact]
    public void DeviceRatio_33Cfr183455_GivesThePublishedLargestDevice()
    {
        double ratio = PracticeFiles.ById["us-federal"].Limits[LimitIds.DeviceOverAmpacityBelow50VRatio].Value;
        Assert.All(ReferenceCsv.Load("electrical-cfr-ampacity.csv", 105), row => row.Agrees(row.Number("max_overcurrent_device_below_50v_a"), ratio * row.Number("ampacity_a"), 1e-9));
    }
}
