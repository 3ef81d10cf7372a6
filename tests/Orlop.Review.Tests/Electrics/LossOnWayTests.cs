using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Review.Tests.Electrics;

/// <summary>The printed pieces of the voltage lost on the way: Ohm's law for each, and Kirchhoff's voltage law for their sum.</summary>
public sealed class LossOnWayTests
{
    private const string Sum = "All pieces together", Lost = "Lost on the way";

    // 5 A through 5 mΩ, 0.2 mΩ and joints of 0.3 mΩ at each end.
    [Theory]
    [InlineData("fuse", 5 * 0.005)]
    [InlineData("strap", 5 * 0.0002)]
    [InlineData("minus-strap", 5 * 0.0002)]
    [InlineData("lamp-cable, joints of core plus", 5 * 0.0006)]
    [InlineData("lamp-cable, joints of core minus", 5 * 0.0006)]
    public void Piece_IsItsCurrentTimesItsResistance(string what, double lossV) =>
        Assert.Equal(lossV, ValueOf(SmallBoat.OneLamp().Worst("voltage-drop", "lamp"), what), 1e-6);

    [Fact]
    public void DemoBoat_EveryLoss_IsTheSumOfItsPieces()
    {
        Finding[] findings = [.. ExampleBoats.Read("sandgrouse").Findings().Where(pair => pair.CheckId == "voltage-drop").SelectMany(pair => pair.After!.All).Where(finding => finding.Verdict != Verdict.Unknown && ValueOf(finding, Lost) > 0)];

        Assert.True(findings.Length > 20);
        Assert.All(findings, finding => Assert.Equal(ValueOf(finding, Lost), ValueOf(finding, Sum), 1e-6));
        Assert.Contains(findings, finding => finding.Working.Any(line => line.What.EndsWith(", contacts", StringComparison.Ordinal)));
    }

    private static double ValueOf(Finding finding, string what) => Assert.Single(finding.Working, line => line.What == what).Value!.Value;
}
