using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Review.Tests.Stability.Checks;

/// <summary>Tanks in a hull of 10 × 4 × 2 m.</summary>
public sealed class TankInsideHullCheckTests
{
    private static Tank Tank(Place from, Place to, bool isHullSided = false) =>
        new() { Id = "tank", Name = "Water tank", From = from, To = to, IsHullSided = isHullSided, LiquidKgPerM3 = 1000, FillFraction = 0.5 };

    // 5 m wide in a hull of 4 m: a fifth of the box is outside.
    [Fact]
    public void Box_WiderThanTheHull_IsUnknownAndSaysHowMuchIsOutside()
    {
        Finding finding = JudgedBox.Of(Tank(new Place(4, -2.5, 0.2), new Place(5, 2.5, 0.7))).Only("tank-inside-hull", "tank");

        Assert.Equal((Verdict.Unknown, null), (finding.Verdict, finding.ConditionId));
        Assert.Equal([0.2], finding.Amounts());
        Assert.Contains(finding.Inputs, input => input.Field == "isHullSided");
    }

    [Theory]
    [InlineData(-2, 0.2)]
    [InlineData(-1, 2.1)]
    public void Box_InsideOrOnDeck_Holds(double y, double z) =>
        Assert.Equal(Verdict.Holds, JudgedBox.Of(Tank(new Place(4, y, z), new Place(5, -y, z + 0.5))).Only("tank-inside-hull", "tank").Verdict);

    [Fact]
    public void Box_BesideTheHull_IsUnknown() =>
        Assert.Equal(Verdict.Unknown, JudgedBox.Of(Tank(new Place(4, 3, 0.2), new Place(5, 4, 0.7))).Only("tank-inside-hull", "tank").Verdict);

    [Fact]
    public void HullSidedTank_IsNotJudged() =>
        Assert.Empty(JudgedBox.Of(Tank(new Place(4, -2.5, 0.2), new Place(5, 2.5, 0.7), isHullSided: true)).Found("tank-inside-hull"));
}
