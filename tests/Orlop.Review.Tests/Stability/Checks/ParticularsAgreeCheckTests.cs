using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Orlop.Review.Practices;
using Orlop.Review.Stability;
using Orlop.Review.Stability.Checks;
using Xunit;

namespace Orlop.Review.Tests.Stability.Checks;

/// <summary>A box of 10 × 4 × 2 m: its size is that of its points.</summary>
public sealed class ParticularsAgreeCheckTests
{
    private static readonly BoatModel Box = StableBoats.Box();

    [Theory]
    [InlineData(10.0, 4.0, 2.0)]
    [InlineData(10.19, 3.93, 2.03)]
    public void WithinTwoPercent_NothingIsSaid(double lengthM, double beamM, double depthM) => Assert.Empty(Run(lengthM, beamM, depthM));

    [Theory]
    [InlineData(10.3, 4.0, 2.0, "lengthOverAllM", 1.5)]
    [InlineData(9.7, 4.0, 2.0, "lengthOverAllM", 1.5)]
    [InlineData(10.0, 4.4, 2.0, "beamM", 5.0)]
    [InlineData(10.0, 4.0, 1.8, "depthM", 5.0)]
    public void FurtherApart_FailsAndSaysWhatIsUsedForWhat(double lengthM, double beamM, double depthM, string field, double use)
    {
        Finding finding = Assert.Single(Run(lengthM, beamM, depthM));
        Assert.Equal(Verdict.Fails, finding.Verdict);
        Assert.Equal(use, finding.UseFraction!.Value, 6);
        Assert.Contains(new FindingInput("particulars", field), finding.Inputs);
        Assert.Contains(finding.Working, line => line.What == "Used" && line.Expression.StartsWith("the typed one", StringComparison.Ordinal));
        Assert.Contains(finding.Working, line => line.What == "What floats her" && line.Expression.Contains("by the lines alone", StringComparison.Ordinal));
    }

    // 0.3 m apart, known to ± 0.2 m: twice that is allowed.
    [Fact]
    public void TypedToAWiderBand_IsAllowedTwiceIt() => Assert.Empty(Run(new Quantity(10.3, Knowledge.Estimated, 0.2), 4, 2));

    [Fact]
    public void AllApart_AreOneFinding()
    {
        Finding finding = Assert.Single(Run(11, 5, 3));
        Assert.Contains("2 others are apart too", finding.Headline.ToString(), StringComparison.Ordinal);
        Assert.Equal(4, finding.Inputs.Length);
    }

    [Fact]
    public void NotGiven_NothingIsSaid()
    {
        Assert.Empty(Run(null, null, null));
        Assert.Empty(Of(Box.Without("hull-lines").Change<Particulars>("particulars", particulars => particulars with { LengthOverAllM = 20 })));
    }

    private static Finding[] Run(Quantity? lengthM, Quantity? beamM, Quantity? depthM) =>
        Of(Box.Change<Particulars>("particulars", particulars => particulars with { LengthOverAllM = lengthM, BeamM = beamM, DepthM = depthM }));

    private static Finding[] Of(BoatModel boat) => [.. new ParticularsAgreeCheck().Run(new StabilityView(boat, Practice.Of(boat, new Memo()), new Memo()))];
}
