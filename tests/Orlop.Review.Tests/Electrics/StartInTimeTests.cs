using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Electrics.Networks;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;
using Orlop.Review.Networks;
using Orlop.Review.Practices;
using Xunit;

namespace Orlop.Review.Tests.Electrics;

/// <summary>A winch that starts beside a lamp: how low the lamp gets in time, what drops out, and what the check makes of it.</summary>
public sealed class StartInTimeTests
{
    private const string CheckId = "voltage-while-starting";

    [Fact]
    public void Start_IsLowestAtItsFirstInstant_WhereTheMotorIsItsResistance()
    {
        StartInTime start = Start(Winch())!;

        // The same network solved with the motor as 12 V / 120 A = 0.1 ohm.
        ElectricsView view = View(Winch());
        SolvedNetwork running = view.Solve(view.Conditions[0], ChargeCase.Lowest);
        Network atRest = running.GroupOf("winch")!.Network;
        Load motor = atRest.Loads.Single(load => load.Id == "winch");
        OperatingPoint expected = NetworkSolver.Solve(Held(atRest, running) with { Loads = atRest.Loads.Replace(motor, motor with { Kind = LoadKind.Resistance, Amount = 0.1 }) }, TestContext.Current.CancellationToken).Point!;
        Assert.Equal(expected.LoadV["winch"], start.Takers[0].Voltage!.LowestV, 1e-6);
        Assert.Equal(expected.LoadV["lamp"], start.Takers.Single(taker => taker.Part.Id == "lamp").Voltage!.LowestV, 1e-6);
        Assert.Equal(0, start.Takers[0].Voltage!.LowestAtS);
        Assert.Equal(expected.BranchA["fuse"], Assert.Single(start.Devices).MostA, 1e-6);
    }

    [Fact]
    public void WhatAConstantCurrentShowsTooLow_AndNeverDropsOutInTime_IsTight()
    {
        (double boundV, double lowestV) = LampV();
        Assert.True(boundV < lowestV - 0.2, $"{boundV} {lowestV}");

        Finding between = Judged((boundV + lowestV) / 2), above = Judged(lowestV + 0.05), below = Judged(boundV - 0.05);

        Assert.Equal(Verdict.Tight, between.Verdict);
        Assert.InRange(between.UseFraction!.Value, 0, 1);
        Assert.Contains(between.Working, line => line.What == "In time");
        Assert.Equal(Verdict.Fails, above.Verdict);
        Assert.Contains(above.Working, line => line.What == "lamp drops out");
        Assert.NotEqual(Verdict.Fails, below.Verdict);
    }

    [Fact]
    public void AnInverterThatBearsItsCutOffLonger_StaysOn()
    {
        BoatModel boat = Winch().Change<ElectricLoad>("winch", winch => winch with { LeastV = 1 }).Change<ElectricLoad>("lamp", lamp => lamp with { LeastV = 1 }).With(
            new Inverter { Id = "inverter", RatedW = 200, OutputV = 230, IdleW = 1, ProportionalLossFraction = 0.1, OhmicLossPerW = 0, CutOffV = 11.9 }, InverterCable());
        BoatModel patient = boat.Change<Inverter>("inverter", inverter => inverter with { CutOffDelayS = 30 });

        Assert.Equal(true, Taker(boat, "inverter").DropsOut);
        Assert.Equal(false, Taker(patient, "inverter").DropsOut);
        Assert.Equal(Verdict.Fails, boat.Worst(CheckId, "winch").Verdict);
        Assert.Equal(Verdict.Tight, patient.Worst(CheckId, "winch").Verdict);
    }

    [Theory]
    [InlineData("startRatio")]
    [InlineData("startS")]
    [InlineData("runningA")]
    public void WhatIsNotGiven_IsNamed(string field)
    {
        StartInTime start = Start(Winch().Change<ElectricLoad>("winch", winch => field switch
        {
            "startRatio" => winch with { StartRatio = null },
            "startS" => winch with { StartS = null },
            _ => winch with { RunningA = null },
        }))!;

        Assert.Null(start.Start);
        Assert.NotNull(start.WhyNone);
        Assert.Contains(start.Missing, missing => missing.ThingId == "winch" && missing.Field == field);
    }

    [Fact]
    public void ALoadThatIsOff_OrHasNoStart_TellsNothing()
    {
        Assert.Null(Start(Winch().Change<ElectricLoad>("winch", winch => winch with { Uses = [] })));
        Assert.Null(Start(Winch().Change<ElectricLoad>("winch", winch => winch with { StartRatio = 1 })));
    }

    private static BoatModel Winch() => SmallBoat.OneLamp().With(
        SmallBoat.Lamp("winch", 30) with { StartRatio = 4, StartS = 0.5, LeastV = 1 }, SmallBoat.LampCable("winch-cable", "winch"));

    private static Cable InverterCable()
    {
        Cable cable = SmallBoat.LampCable("inverter-cable", "inverter");
        return cable with { Cores = [SmallBoat.Core("plus", "fuse.out", "inverter.in+"), SmallBoat.Core("minus", "minus.bar", "inverter.in-")] };
    }

    private static Finding Judged(double lampLeastV) => Winch().Change<ElectricLoad>("lamp", lamp => lamp with { LeastV = lampLeastV }).Worst(CheckId, "winch");

    private static (double BoundV, double LowestV) LampV()
    {
        ElectricsView view = View(Winch());
        return (view.Solve(new NetworkCase("in-use", ChargeCase.Lowest, "winch")).LoadV("lamp")!.Value, Taker(Winch(), "lamp").Voltage!.LowestV);
    }

    // As the review holds them: each conductor at the temperature it has while all is running.
    private static Network Held(Network network, SolvedNetwork running) => network with
    {
        Conductors = [.. network.Conductors.Select(conductor => running.ConductorC(conductor.Id) is { } warm
            ? conductor with { ResistanceAt20Ohm = conductor.ResistanceAt20Ohm * (234.5 + warm) / 254.5, Heating = null } : conductor)],
    };

    private static StartTaker Taker(BoatModel boat, string id) => Start(boat)!.Takers.Single(taker => taker.Part.Id == id);

    private static StartInTime? Start(BoatModel boat)
    {
        ElectricsView view = View(boat);
        return StartInTime.Of(view, boat.Find<ElectricLoad>("winch")!, view.Conditions[0], ChargeCase.Lowest);
    }

    private static ElectricsView View(BoatModel boat)
    {
        Memo memo = new();
        return new ElectricsView(boat, Practice.Of(boat, memo), memo, TestContext.Current.CancellationToken);
    }
}
