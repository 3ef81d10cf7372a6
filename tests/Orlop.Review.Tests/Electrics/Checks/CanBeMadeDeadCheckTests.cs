using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Review.Tests.Electrics.Checks;

public sealed class CanBeMadeDeadCheckTests
{
    private const string Check = "can-be-made-dead";

    [Fact]
    public void OnlyAFuse_IsTight() => Assert.Equal(Verdict.Tight, SmallBoat.OneLamp().Worst(Check, "lamp").Verdict);

    [Fact]
    public void ABreaker_Holds() =>
        Assert.Equal(Verdict.Holds, SmallBoat.OneLamp().Change<Protection>("fuse", fuse => fuse with { Means = ProtectionMeans.Breaker }).Worst(Check, "lamp").Verdict);

    [Fact]
    public void NothingButTheBatteryLead_Fails()
    {
        Finding finding = SmallBoat.OneLamp().Without("fuse").Without("strap")
            .Change<Cable>("lamp-cable", cable => cable with { Cores = [SmallBoat.Core("plus", "bank.+", "lamp.+"), SmallBoat.Core("minus", "minus.bar", "lamp.-")] })
            .Worst(Check, "lamp");
        Assert.Equal(Verdict.Fails, finding.Verdict);
        Assert.Contains("battery lead", finding.Headline.ToString(), StringComparison.Ordinal);
        Assert.NotNull(finding.Caution);
    }

    [Fact]
    public void NoSource_IsUnknown() => Assert.Equal(Verdict.Unknown, SmallBoat.OneLamp().Without("bank").Worst(Check, "lamp").Verdict);

    [Fact]
    public void WhatStaysLive_StandsInTheWorking() =>
        Assert.Contains(SmallBoat.OneLamp().Worst(Check, "lamp").Working, line => line.What == "Stays live" && line.Expression.StartsWith("bank", StringComparison.Ordinal));

    [Fact]
    public void AHandledSwitchThatIsNoIsolator_DoesNotCount()
    {
        IsolatorSwitch toggle = new() { Id = "toggle", RatedA = 10, IsIsolator = false };
        Assert.Equal(Verdict.Tight, SmallBoat.OneLamp().With(toggle)
            .Change<Cable>("lamp-cable", cable => cable with { Cores = [SmallBoat.Core("plus", "fuse.out", "toggle.in"), SmallBoat.Core("minus", "minus.bar", "lamp.-")] })
            .With(new Link { Id = "tail", From = new Terminal("toggle", "out"), To = new Terminal("lamp", "+") }).Worst(Check, "lamp").Verdict);
    }
}
