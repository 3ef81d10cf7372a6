using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Electrics.Heat;
using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Review.Tests.Heat;

public sealed class BundleCheckTests
{
    private const string Check = "bundle-temperature";

    // Two lamps on cables of their own along one way.
    private static readonly BoatModel Boat = SmallBoat.OneLamp(fuseA: 40).With(
        new Way { Id = "lining", Name = "Lining", Means = WayKind.Lining, Space = "cabin" },
        SmallBoat.Lamp("lamp-2", 12),
        SmallBoat.LampCable("lamp-cable", "lamp") with { OuterDiameterMm = 9, Run = [new RunLeg { Way = "lining", LengthM = 2 }] },
        SmallBoat.LampCable("lamp-2-cable", "lamp-2") with { OuterDiameterMm = 9, Run = [new RunLeg { Way = "lining", LengthM = 2 }] });

    [Fact]
    public void TwoCables_HeatEachOther_AndTheTableStandsBeside()
    {
        Finding both = Boat.Worst(Check, "lining"), one = Boat.Change<ElectricLoad>("lamp-2", lamp => lamp with { RunningA = 0 }).Worst(Check, "lining");
        Assert.Equal(Verdict.Holds, both.Verdict);
        Assert.True(both.UseFraction > one.UseFraction);
        Assert.Contains(both.Working, line => line.What == "By the table it may carry" && line.Value!.Suffix == "A");
        Assert.Contains(both.Working, line => line.What == "Copper at rest" && line.Value!.Suffix == "C");
    }

    // The rise of the working is that of the engine by itself, from I² R of 2.5 mm², class 5 tinned: 8.21 Ω/km (IEC 60228); losses count to three digits upwards.
    [Fact]
    public void Rise_IsThatOfTheEngine()
    {
        double Loss(double current) => 2 * current * current * 8.21e-3;
        BundleResult alone = BundleHeat.Steady(new BundleInput
        {
            Subject = "lining",
            AmbientC = 25,
            OpenFraction = 0.8,
            Cables = [new BundledCable("a", 9, 5, Loss(5)), new BundledCable("b", 9, 5, Loss(12))],
        });
        Assert.Equal(1, Boat.Worst(Check, "lining").UseFraction!.Value * (90 - 25) / (alone.Cables.Max(cable => cable.ConductorC) - 25), 0.01);
    }

    [Fact]
    public void TooMuchCurrent_Fails() => Assert.Equal(Verdict.Fails, Boat.Change<ElectricLoad>("lamp-2", lamp => lamp with { RunningA = 60 }).Worst(Check, "lining").Verdict);

    [Fact]
    public void SpaceAsHotAsTheInsulation_Fails()
    {
        Finding finding = Boat.Change<Space>("cabin", cabin => cabin with { AmbientC = 90 }).Worst(Check, "lining");
        Assert.Equal((Verdict.Fails, null), (finding.Verdict, finding.UseFraction));
    }

    [Fact]
    public void MissingInput_IsUnknownAndNamed()
    {
        Boat.Change<Cable>("lamp-cable", cable => cable with { OuterDiameterMm = null }).Worst(Check, "lining").IsUnknownFor("lamp-cable", "outerDiameterMm");
        Boat.Change<Cable>("lamp-cable", cable => cable with { InsulationC = null }).Worst(Check, "lining").IsUnknownFor("lamp-cable", "insulationC");
        Boat.Change<Way>("lining", way => way with { Space = null }).Worst(Check, "lining").IsUnknownFor("lining", "space");
        Boat.Change<Way>("lining", way => way with { Means = WayKind.Conduit }).Worst(Check, "lining").IsUnknownFor("lining", "innerDiameterMm");
        Boat.Change<Space>("cabin", cabin => cabin with { AmbientC = null }).Worst(Check, "lining").IsUnknownFor("cabin", "ambientC");
        Boat.Change<ElectricLoad>("lamp", lamp => lamp with { RunningA = (Quantity?)null }).Worst(Check, "lining").IsUnknownFor("lamp", "runningA");
    }

    [Fact]
    public void WhatDoesNotFit_IsInTheWay()
    {
        Finding conduit = Boat.Change<Way>("lining", way => way with { Means = WayKind.Conduit, InnerDiameterMm = 12 }).Worst(Check, "lining");
        Finding cable = Boat.Change<Cable>("lamp-cable", cable => cable with { OuterDiameterMm = 2.5 }).Worst(Check, "lining");
        Assert.Equal((Verdict.Unknown, Verdict.Unknown), (conduit.Verdict, cable.Verdict));
        Assert.Contains(conduit.Inputs, input => input is { ThingId: "lining", Field: "innerDiameterMm", IsMissing: false });
        Assert.Contains(cable.Inputs, input => input is { ThingId: "lamp-cable", Field: "outerDiameterMm", IsMissing: false });
    }

    [Fact]
    public void WayWithoutCables_SaysNothing() => Assert.DoesNotContain(Boat.With(new Way { Id = "empty", Means = WayKind.Tray }).Findings(), finding => finding.SubjectId == "empty");

    // A name changed, or a lamp in another condition, solves no bundle anew.
    [Fact]
    public void NameChanged_SolvesNoBundle()
    {
        ReviewEngine engine = new([new Orlop.Review.Electrics.ElectricsDiscipline()]);
        engine.Review(Boat, TestContext.Current.CancellationToken);
        long solved = engine.Memo.ComputedCountOf<BundleResult>();
        Assert.True(solved > 0);
        engine.Review(Boat.Change<ElectricLoad>("lamp", lamp => lamp with { Name = "Reading lamp" }), TestContext.Current.CancellationToken);
        Assert.Equal(solved, engine.Memo.ComputedCountOf<BundleResult>());
    }
}
