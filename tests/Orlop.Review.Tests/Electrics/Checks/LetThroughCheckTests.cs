using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Review.Tests.Electrics.Checks;

/// <summary>Worked by hand from k² S² of IEC 60364-4-43: 2.5 mm² from 90 to 160 °C bears 3.45e-3 × 254.5/17.241e-6 × ln(394.5/324.5) × 2.5² = 62.2 kA² s.</summary>
public sealed class LetThroughCheckTests
{
    private const string Check = "let-through";

    // Blade 10 A: last gate 60 A and 0.1 s, three times: 1080 A² s.
    [Fact]
    public void Fuse_BeyondItsLastGate_CountsThreeTimesThatGate()
    {
        Finding finding = SmallBoat.OneLamp().Worst(Check, "fuse");
        Assert.Equal(Verdict.Holds, finding.Verdict);
        double bearsA2S = 3.45e-3 * 254.5 / 17.241e-6 * Math.Log(394.5 / 324.5) * 6.25;
        Assert.Equal(3 * 60 * 60 * 0.1 / bearsA2S, finding.UseFraction!.Value, 1e-9);
    }

    // A breaker's gates say 0.1 s and no less: a hard fault for so long is more than thin copper bears, and only its sheet can tell.
    [Fact]
    public void Breaker_ByItsGatesAlone_IsUnknown() => Breaker(null).Worst(Check, "fuse").IsUnknownFor("fuse", "clearingA2S");

    [Theory]
    [InlineData(20_000, Verdict.Holds)]
    [InlineData(60_000, Verdict.Tight)]
    [InlineData(70_000, Verdict.Fails)]
    public void Breaker_ByItsSheet_IsHeldAgainstTheConductor(double clearingA2S, Verdict verdict) => Assert.Equal(verdict, Breaker(clearingA2S).Worst(Check, "fuse").Verdict);

    [Fact]
    public void InsulationNotGiven_IsUnknown() =>
        SmallBoat.OneLamp().Change<Cable>("lamp-cable", cable => cable with { InsulationC = null }).Worst(Check, "fuse").IsUnknownFor("lamp-cable", "insulationC");

    [Fact]
    public void OperatingTimesNotGiven_AreUnknown() => SmallBoat.OneLamp().Change<Protection>("fuse", fuse => fuse with { Gates = null }).Worst(Check, "fuse").IsUnknownFor("fuse", "gates");

    [Fact]
    public void InternalResistanceNotGiven_IsUnknown() =>
        Assert.Equal(Verdict.Unknown, SmallBoat.OneLamp().Change<BatteryBank>("bank", bank => bank with { InternalResistanceOhm = null }).Worst(Check, "fuse").Verdict);

    private static BoatModel Breaker(double? clearingA2S) => SmallBoat.OneLamp().Change<Protection>("fuse", fuse => fuse with
    {
        Means = ProtectionMeans.Breaker,
        Gates = "breaker-c",
        ClearingA2S = clearingA2S is { } typed ? typed : (Boat.Values.Quantity?)null,
    });
}
