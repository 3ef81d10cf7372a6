using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Review.Tests.Findings;

public sealed class VerdictsTests
{
    [Theory]
    [InlineData(0, Verdict.Holds)]
    [InlineData(0.8999999, Verdict.Holds)]
    [InlineData(0.9, Verdict.Tight)]
    [InlineData(1, Verdict.Tight)]
    [InlineData(1.0000001, Verdict.Fails)]
    [InlineData(0.3 * 3, Verdict.Tight)]
    [InlineData(14.4 / (1.2 * 12), Verdict.Tight)]
    [InlineData(-0.1, Verdict.Unknown)]
    [InlineData(double.NaN, Verdict.Unknown)]
    [InlineData(double.PositiveInfinity, Verdict.Unknown)]
    public void OfUse_AtTheEdges(double use, Verdict verdict) => Assert.Equal(verdict, Verdicts.OfUse(use));

    [Theory]
    [InlineData(9, 10, Verdict.Tight, 0.9)]
    [InlineData(10, 10, Verdict.Tight, 1.0)]
    [InlineData(0, 0, Verdict.Holds, 0.0)]
    [InlineData(5, 0, Verdict.Fails, null)]
    [InlineData(1e300, 1e-300, Verdict.Fails, null)]
    [InlineData(double.NaN, 10, Verdict.Unknown, null)]
    [InlineData(double.PositiveInfinity, 10, Verdict.Unknown, null)]
    [InlineData(5, double.NaN, Verdict.Unknown, null)]
    [InlineData(-1, 10, Verdict.Unknown, null)]
    [InlineData(5, -1, Verdict.Unknown, null)]
    public void AskedOverAllowed_AtTheEdges(double asked, double allowed, Verdict verdict, double? use) =>
        Assert.Equal((verdict, use), (Verdicts.Of(asked, allowed), Verdicts.UseOf(asked, allowed)));

    [Fact]
    public void NoUse_IsUnknown() => Assert.Equal(Verdict.Unknown, Verdicts.OfUse(null));

    // A lamp of a constant 5 A: use is 5 A over the switch's rating.
    [Theory]
    [InlineData(5.0, Verdict.Tight)]
    [InlineData(5.0 / 0.9, Verdict.Tight)]
    [InlineData(5.6, Verdict.Holds)]
    [InlineData(4.99, Verdict.Fails)]
    public void SwitchThatCarriesFiveAmperes_AtTheEdges(double ratedA, Verdict verdict) => Assert.Equal(verdict, SmallBoat.OneLamp()
        .With(new IsolatorSwitch { Id = "switch", RatedA = ratedA }, new Link { Id = "tail", From = new Terminal("switch", "out"), To = new Terminal("lamp", "+") })
        .Change<Cable>("lamp-cable", cable => cable with { Cores = [SmallBoat.Core("plus", "fuse.out", "switch.in"), SmallBoat.Core("minus", "minus.bar", "lamp.-")] })
        .Worst("part-carries-current", "switch").Verdict);
}
