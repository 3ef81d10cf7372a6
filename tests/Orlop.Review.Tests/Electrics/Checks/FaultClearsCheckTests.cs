using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Review.Tests.Electrics.Checks;

/// <summary>Worked by hand from IEC 60228 resistances and the adiabatic formula of IEC 60364-4-43.</summary>
public sealed class FaultClearsCheckTests
{
    private const string Check = "fault-clears";
    private const string Plus = "lamp-cable.plus";

    // 12.2 V at 40 % over 10 mΩ (bank) + 2 straps of 0.2 mΩ + fuse 5 mΩ + two joints of 0.3 mΩ + out and back 2 × 2 m × 8.21 mΩ/m (flexible, tinned) × (234.5 + 90)/254.5.
    private const double WeakestA = 12.2 / (0.01 + 0.0004 + 0.005 + 0.0006 + (4 * 0.00821 * 324.5 / 254.5));

    [Fact]
    public void ShortCable_BladeFuse_ClearsInATenth()
    {
        Finding finding = SmallBoat.OneLamp().Worst(Check, Plus);

        Assert.Equal(Verdict.Holds, finding.Verdict);
        Assert.Equal(WeakestA, finding.Working.Single(line => line.What == "Weakest fault at the far end").Value!.Value, 1e-6);
        Assert.Equal(0.1, finding.Working.Single(line => line.What == "It opens at the latest").Value!.Value);
        double adiabaticS = Math.Pow(2.5 / WeakestA, 2) * 3.45e-3 * 254.5 / 17.241e-6 * Math.Log(394.5 / 324.5);
        Assert.Equal(adiabaticS, finding.Working.Single(line => line.What == "Bears it, all heat kept in the copper").Value!.Value, 1e-9);
    }

    // 12 m: 0.251 Ω out and back, 46 A: at 1.43 × 32 A a gG link need not open within its hour, and the cable does not carry 46 A.
    [Fact]
    public void LongCable_BigLink_MayNeverOpenAndFails()
    {
        Finding finding = Long(32).Worst(Check, Plus);
        Assert.Equal(Verdict.Fails, finding.Verdict);
        Assert.Contains("may never open", finding.Headline.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void LongCable_SmallFuse_Holds() => Assert.Equal(Verdict.Holds, Long(10).Worst(Check, Plus).Verdict);

    [Fact]
    public void LengthNotGiven_IsUnknown() =>
        SmallBoat.OneLamp().Change<Cable>("lamp-cable", cable => cable with { LengthM = null }).Worst(Check, Plus).IsUnknownFor("lamp-cable", "lengthM");

    [Fact]
    public void InternalResistanceNotGiven_IsUnknown() =>
        Assert.Equal(Verdict.Unknown, SmallBoat.OneLamp().Change<BatteryBank>("bank", bank => bank with { InternalResistanceOhm = null }).Worst(Check, Plus).Verdict);

    // The wider its band inside, the nearer a fault that opened its fuse in time comes to one that may not: unknown in between, and what would settle it is named. Measured with no ±, it holds.
    [Theory]
    [InlineData(Knowledge.Guessed)]
    [InlineData(Knowledge.Measured)]
    public void Resistance_HoldsOnlyWhereItsMostDoes(Knowledge known)
    {
        BoatModel Of(Knowledge known, double? deviationOhm) => SmallBoat.OneLamp().Change<BatteryBank>("bank", bank => bank with { InternalResistanceOhm = new Quantity(0.010, known, deviationOhm) });
        Assert.Equal(Verdict.Holds, Of(known, 0.001).Worst(Check, Plus).Verdict);
        Assert.Equal(Verdict.Holds, Of(Knowledge.Measured, null).Change<Protection>("fuse", fuse => fuse with { RatedA = 40 }).Worst(Check, Plus).Verdict);

        // 10 + 2 × 100 mΩ: 47 A, which need not open a fuse of 40 A, and 2.5 mm² does not carry it for ever; as put down it is 210 A.
        Finding weak = Of(known, 0.1).Change<Protection>("fuse", fuse => fuse with { RatedA = 40 }).Worst(Check, Plus);
        Assert.Equal(Verdict.Unknown, weak.Verdict);
        Assert.Contains(new FindingInput("bank", "internalResistanceOhm", IsGuess: known == Knowledge.Guessed), weak.Inputs);
    }

    [Fact]
    public void OperatingTimesNotGiven_AreUnknown() =>
        SmallBoat.OneLamp().Change<Protection>("fuse", fuse => fuse with { Gates = null }).Worst(Check, Plus).IsUnknownFor("fuse", "gates");

    /// <summary>A fuse that is made a breaker keeps the id of its gates: they tell nothing of it, nor those of a breaker of a fuse.</summary>
    [Theory]
    [InlineData(ProtectionMeans.Breaker, "blade-type-c", "gates/fuse", "those of a fuse, and it is a breaker")]
    [InlineData(ProtectionMeans.Fuse, "breaker-c", "gates/breaker", "those of a breaker, and it is a fuse")]
    public void GatesOfTheOtherKind_CountAsNotGiven(ProtectionMeans means, string gates, string field, string words)
    {
        BoatModel boat = SmallBoat.OneLamp().Change<Protection>("fuse", fuse => fuse with { Means = means, Gates = gates, OwnTimes = [] });
        Assert.All(new[] { boat.Worst(Check, Plus), boat.Worst("let-through", "fuse") }, finding =>
        {
            finding.IsUnknownFor("fuse", field);
            Assert.Contains(words, finding.Headline.ToString(), StringComparison.Ordinal);
        });

        // A sheet of its own counts whatever gates are named beside it.
        Assert.NotEqual(Verdict.Unknown, boat.Change<Protection>("fuse", fuse => fuse with { OwnTimes = [new OperatingTime(1.2, 3600, null), new OperatingTime(4, 0.01, 0.1)] }).Worst(Check, Plus).Verdict);
    }

    /// <summary>The gG series steps from 50 A to 63 A and ends at 400 A in the table here (IEC 60269-1, from 16 A).</summary>
    [Theory]
    [InlineData(60, "gates/60/50/63", "no operating times at 60 A, only at 50 A and 63 A")]
    [InlineData(500, "gates/500//400", "no operating times at 500 A, only up to 400 A")]
    [InlineData(10, "gates/10/16/", "no operating times at 10 A, only from 16 A")]
    public void RatingThatItsKindDoesNotHave_IsToldWithTheNearest(double ratedA, string field, string words)
    {
        Finding finding = SmallBoat.OneLamp().Change<Protection>("fuse", fuse => fuse with { RatedA = ratedA, Gates = "link-gg", OwnTimes = [] }).Worst(Check, Plus);
        finding.IsUnknownFor("fuse", field);
        Assert.Contains(words, finding.Headline.ToString(), StringComparison.Ordinal);
    }

    // A breaker is gated on alternating current; its magnet pulls at 1.4 times that on direct current (from memory). 215 A is 10.8 × 20 A: past type C's 10, short of 14.
    [Fact]
    public void BreakerOnDirectCurrent_MagnetCountsLater()
    {
        Finding finding = SmallBoat.OneLamp().Change<Protection>("fuse", fuse => fuse with { Means = ProtectionMeans.Breaker, Gates = "breaker-c", RatedA = 20 }).Worst(Check, Plus);
        Assert.Equal(Verdict.Fails, finding.Verdict);
        Assert.Contains(finding.Working, line => line.Source.Contains("1.4", StringComparison.Ordinal) && line.IsFromMemory);
    }

    private static BoatModel Long(double ratedA) => SmallBoat.OneLamp()
        .Change<Cable>("lamp-cable", cable => cable with { LengthM = 12, Run = [new RunLeg { Space = "cabin", LengthM = 12 }] })
        .Change<Protection>("fuse", fuse => fuse with { RatedA = ratedA, Gates = ratedA > 20 ? "link-gg" : "blade-type-c" });
}
