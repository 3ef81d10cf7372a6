using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Review.Tests.Electrics.Checks;

/// <summary>What fails for certain is not hidden by something else that is not known, and what is not known is not told as held.</summary>
public sealed class CertainFailureTests
{
    private static readonly BoatModel Boat = SmallBoat.OneLamp();

    [Fact]
    public void MoreThanItsRating_NoPractice_DeviceFails() =>
        Assert.Equal(Verdict.Fails, SmallBoat.OneLamp(runningA: 15).Without("practice").Worst("device-carries-load", "fuse").Verdict);

    [Fact]
    public void WithinItsRating_NoPractice_DeviceIsUnknown() =>
        Assert.Equal(Verdict.Unknown, Boat.Without("practice").Worst("device-carries-load", "fuse").Verdict);

    [Fact]
    public void StartOpensTheFuse_AnotherDrawNotGiven_Fails() => Assert.Equal(Verdict.Fails, Starting(6, 5).With(
        SmallBoat.Lamp("lamp-2", null), SmallBoat.LampCable("cable-2", "lamp-2")).Worst("start-opens-device", "fuse").Verdict);

    [Fact]
    public void StartHolds_AnotherDrawNotGiven_IsUnknown() => Starting(1.1, 0.01).With(
        SmallBoat.Lamp("lamp-2", null), SmallBoat.LampCable("cable-2", "lamp-2")).Worst("start-opens-device", "fuse").IsUnknownFor("lamp-2", "runningA");

    // A blade fuse's curve says nothing of the breaker that takes its place.
    [Fact]
    public void StartThroughABreakerWithTheGatesOfAFuse_IsUnknown() => Starting(1.1, 0.01)
        .Change<Protection>("fuse", fuse => fuse with { Means = ProtectionMeans.Breaker, Gates = "blade-type-c", OwnTimes = [] }).Worst("start-opens-device", "fuse").IsUnknownFor("fuse", "gates/fuse");

    /// <summary>IEC 60269-1: the series of gG ratings steps from 50 A to 63 A.</summary>
    [Fact]
    public void StartThroughAFuseOfARatingThatItsKindDoesNotHave_IsUnknownForTheRating()
    {
        Finding finding = Starting(6, 5).Change<Protection>("fuse", fuse => fuse with { Gates = "link-gg", RatedA = 60, OwnTimes = [] }).Worst("start-opens-device", "fuse");
        finding.IsUnknownFor("fuse", "gates/60/50/63");
        Assert.Contains("its kind has no operating times at 60 A, only at 50 A and 63 A", finding.Headline.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("start-opens-device", "fuse")]
    [InlineData("voltage-while-starting", "lamp")]
    public void LengthOfStartGivenButNotItsRatio_IsUnknown(string checkId, string subjectId) =>
        Starting(null, 1).Worst(checkId, subjectId).IsUnknownFor("lamp", "startRatio");

    [Fact]
    public void CrankingMotorWithoutRatio_VoltageWhileStarting_IsUnknown() => Boat
        .Change<ElectricLoad>("lamp", lamp => lamp with { IsCrankingMotor = true, StartRatio = null }).Worst("voltage-while-starting", "lamp").IsUnknownFor("lamp", "startRatio");

    [Theory]
    [InlineData(LoadBehaviour.Current)]
    [InlineData(LoadBehaviour.Power)]
    public void StartNotGiven_IsUnknown(LoadBehaviour behaviour) => Boat
        .Change<ElectricLoad>("lamp", lamp => lamp with { Behaviour = behaviour, StartRatio = null }).Worst("start-opens-device", "fuse").IsUnknownFor("lamp", "startRatio");

    [Fact]
    public void LoadOfResistance_StartNotGiven_IsNotJudged() => Assert.DoesNotContain(
        Boat.Change<ElectricLoad>("lamp", lamp => lamp with { Behaviour = LoadBehaviour.Resistance, StartRatio = null }).Findings(), finding => finding.CheckId == "voltage-while-starting");

    [Fact]
    public void SoftStart_IsNotJudged() => Assert.DoesNotContain(Boat.Findings(), finding => finding.CheckId == "voltage-while-starting");

    [Fact]
    public void ConverterBehindAStart_HowLongNotGiven_MoreThanAnyOverload_Fails() =>
        Assert.Equal(Verdict.Fails, WithConverter(startRatio: 9, startS: null).Worst("converter-carries-load", "converter").Verdict);

    [Fact]
    public void ConverterBehindAStart_HowLongNotGiven_WithinItsRating_IsUnknown() =>
        WithConverter(startRatio: 1.2, startS: null).Worst("converter-carries-load", "converter").IsUnknownFor("small", "startS");

    [Fact]
    public void ConverterBehindAStart_RatioNotGiven_IsUnknown() =>
        WithConverter(startRatio: null, startS: 1).Worst("converter-carries-load", "converter").IsUnknownFor("small", "startRatio");

    [Fact]
    public void PointsDoNotReachFull_DeviceVoltage_IsUnknown() => Boat
        .Change<BatteryBank>("bank", bank => bank with { OpenCircuit = [new ChargePoint(0, 11.8), new ChargePoint(0.5, 12.3)] })
        .Worst("device-voltage", "fuse").IsUnknownFor("bank", "openCircuit");

    [Fact]
    public void TwoBanksInSeries_DeviceVoltage_IsUnknownAndNoPass()
    {
        BoatModel boat = Boat.Change<Protection>("fuse", fuse => fuse with { RatedV = 16 }).Without("minus-strap").With(
            SmallBoat.Battery("bank-2"),
            new Link { Id = "series", From = new Terminal("bank", "-"), To = new Terminal("bank-2", "+"), LengthM = 0.1 },
            new Link { Id = "minus-strap", From = new Terminal("bank-2", "-"), To = new Terminal("minus", "bar"), LengthM = 0.1 });
        Assert.Equal(Verdict.Unknown, boat.Worst("device-voltage", "fuse").Verdict);
    }

    // 12.8 V behind 10 mΩ and a strap of 0.2 mΩ gives about 1250 A by itself.
    [Theory]
    [InlineData(500, Verdict.Fails)]
    [InlineData(2000, Verdict.Unknown)]
    public void OneBankOfTwoNotKnown_BreakingCapacity_FailsOnlyByTheOtherAlone(double breakingA, Verdict verdict) => Assert.Equal(
        verdict,
        Boat.Change<Protection>("fuse", fuse => fuse with { BreakingA = breakingA }).With(
            SmallBoat.Battery("bank-2") with { InternalResistanceOhm = null },
            new Link { Id = "plus-2", From = new Terminal("bank-2", "+"), To = new Terminal("bank", "+"), LengthM = 0.1 },
            new Link { Id = "minus-2", From = new Terminal("bank-2", "-"), To = new Terminal("minus", "bar"), LengthM = 0.1 }).Worst("breaking-capacity", "fuse").Verdict);

    [Fact]
    public void AskedMoreThanTheCircuitGives_ResistanceOfTheBankNotGiven_IsUnknown() => SmallBoat.OneLamp()
        .Change<ElectricLoad>("lamp", lamp => lamp with { Behaviour = LoadBehaviour.Power, RunningA = null, RunningW = 90_000 })
        .Change<BatteryBank>("bank", bank => bank with { InternalResistanceOhm = null })
        .Worst("load-can-be-served", "lamp").IsUnknownFor("bank", "internalResistanceOhm");

    [Fact]
    public void WayInNoKnownSpace_RunClearOfBilge_IsUnknown() => Boat
        .With(new Way { Id = "tray", Means = WayKind.Tray })
        .Change<Cable>("lamp-cable", cable => cable with { Run = [new RunLeg { Way = "tray", LengthM = 2 }] })
        .Worst("run-clear-of-bilge", "lamp-cable").IsUnknownFor("tray", "space");

    // 33 CFR 183.425 Table 5: 14 AWG (2.08 mm²), the next below 2.5 mm², carries 45 A with the best insulation, 200 °C; read in the practice's own table.
    [Theory]
    [InlineData(60, Verdict.Fails)]
    [InlineData(20, Verdict.Unknown)]
    public void InsulationNotGiven_Ampacity_FailsOnlyBeyondTheBest(double runningA, Verdict verdict) => Assert.Equal(
        verdict,
        SmallBoat.OneLamp(runningA, fuseA: 100, basis: "us-federal").Change<Cable>("lamp-cable", cable => cable with { InsulationC = null }).Worst("conductor-ampacity", "lamp-cable").Verdict);

    [Fact]
    public void OneTerminalOnAStud_IsSaidInTheSingular() =>
        Assert.Contains("1 terminal on one stud", Boat.Worst("rings-per-stud", "fuse.in").Headline.ToString(), StringComparison.Ordinal);

    private static BoatModel Starting(double? ratio, double startS) => Boat.Change<ElectricLoad>("lamp", lamp => lamp with
    {
        StartRatio = ratio is { } given ? given : (Quantity?)null,
        StartS = startS,
    });

    // 24 V out of 12 V, 2 A: 48 W, and a load of 1 A on it that starts.
    private static BoatModel WithConverter(double? startRatio, double? startS) => Boat.With(
        new DcConverter { Id = "converter", OutputV = 24, RatedA = 2, EfficiencyFraction = 0.9, LeastInputV = 9, IsIsolated = true },
        SmallBoat.LampCable("converter-cable", "converter") with { Cores = [SmallBoat.Core("plus", "fuse.out", "converter.in+"), SmallBoat.Core("minus", "minus.bar", "converter.in-")] },
        SmallBoat.Lamp("small", 1) with
        {
            NominalV = 24,
            LeastV = 20,
            StartRatio = startRatio is { } ratio ? ratio : (Quantity?)null,
            StartS = startS is { } lasts ? lasts : (Quantity?)null,
        },
        SmallBoat.LampCable("small-cable", "small") with { Cores = [SmallBoat.Core("plus", "converter.out+", "small.+"), SmallBoat.Core("minus", "converter.out-", "small.-")] });
}
