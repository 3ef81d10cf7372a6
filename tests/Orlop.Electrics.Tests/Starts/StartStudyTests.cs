using Orlop.Electrics.Networks;
using Orlop.Electrics.Starts;
using Xunit;
using static Orlop.Electrics.Tests.Starts.StartCircuits;

namespace Orlop.Electrics.Tests.Starts;

/// <summary>Starts in time against closed forms: a capacitor through a resistance, a motor behind one.</summary>
public sealed class StartStudyTests
{
    private static CancellationToken Token => TestContext.Current.CancellationToken;

    [Fact]
    public void Motor_HeldAtItsNominalVoltage_KeepsWhatWasDeclared()
    {
        // A source of next to no resistance: four times the running current at first, 5 % of the excess left at 0.8 s.
        StartingStore motor = Motor();
        Network stiff = new() { Batteries = [new Battery("bank", "bar.+", "bar.-", 24, 1e-6)] };

        StartResult start = StartStudy.Run(new StartInput { Network = stiff, Stores = [motor], HorizonS = 0.8, ToleranceV = 1e-4 }, Token);

        double[] current = [.. start.CurrentOf("motor")!.Value];
        Assert.Equal(80, current[0], 0.001);
        Assert.Equal(20 + (0.05 * 60), current[^1], 0.01);
        Assert.Equal(0.8, start.EndedS);
    }

    [Fact]
    public void Motor_BehindASourceResistance_FallsAsTheExponential()
    {
        StartingStore motor = Motor();

        StartResult start = StartStudy.Run(new StartInput { Network = Source(), Stores = [motor], HorizonS = 2, ToleranceV = 1e-3 }, Token);

        Assert.Equal(SolveStatus.Converged, start.Status);
        Assert.Equal(OpenV, start.Before!.NodeV["bar.+"] - start.Before.NodeV["bar.-"], 1e-9);
        Assert.All(start.Moments, moment =>
        {
            double expectedA = MotorA(motor, moment.TimeS);
            Assert.Equal(expectedA, moment.Stores[0].CurrentA, 0.02);
            Assert.Equal(OpenV - (SourceOhm * expectedA), moment.Stores[0].TerminalV, 0.001);
        });
    }

    [Fact]
    public void Capacitor_ThroughAResistance_ChargesAsTheExponential()
    {
        StartingStore capacitor = StartingStore.Capacitor("input", "bar.+", "bar.-", 0.02, 0.15, prechargeV: 5);

        StartResult start = StartStudy.Run(new StartInput { Network = Source(), Stores = [capacitor], HorizonS = 0.03, ToleranceV = 1e-3 }, Token);

        Assert.All(start.Moments, moment =>
            Assert.Equal(OpenV - ((OpenV - 5) * Math.Exp(-moment.TimeS / (0.2 * 0.02))), moment.Stores[0].HeldV, 0.002));
    }

    [Fact]
    public void HalfTheStep_HasAQuarterOfTheError()
    {
        StartingStore motor = Motor();
        double[] errors = [.. new[] { 0.04, 0.02, 0.01 }.Select(stepS =>
        {
            StartResult start = StartStudy.Run(new StartInput { Network = Source(), Stores = [motor], HorizonS = 0.4, StepS = stepS }, Token);
            return Math.Abs(start.Moments[^1].Stores[0].CurrentA - MotorA(motor, 0.4));
        })];

        Assert.InRange(errors[0] / errors[1], 3.7, 4.3);
        Assert.InRange(errors[1] / errors[2], 3.8, 4.2);
    }

    [Fact]
    public void AStiffCapacitor_IsPassedInLongSteps_WithoutRinging()
    {
        // A time constant of 1.2 ms in steps of a hundred times that: what is L-stable goes to the end at once and stays.
        StartingStore small = StartingStore.Capacitor("input", "bar.+", "bar.-", 0.02, 0.01);

        StartResult start = StartStudy.Run(new StartInput { Network = Source(), Stores = [small, Motor()], HorizonS = 1.2, StepS = 0.12 }, Token);

        double[] held = [.. start.Moments.Select(moment => moment.Stores[0].HeldV)];
        Assert.All(held.Skip(2), volts => Assert.InRange(volts, 18, OpenV));
        Assert.Equal(held.Skip(2).Order(), held.Skip(2));
    }

    [Theory]
    [InlineData(0.02, 1e-3)]
    [InlineData(0.001, 1e-4)]
    public void Energy_AddsUp(double toleranceV, double mostFraction)
    {
        Load[] loads = [new("lamp", "bar.+", "bar.-", LoadKind.Resistance, 6), new("radio", "bar.+", "bar.-", LoadKind.Power, 60)];
        StartResult start = StartStudy.Run(new StartInput
        {
            Network = Source(loads),
            Stores = [Motor(), StartingStore.Capacitor("input", "bar.+", "bar.-", 0.05, 0.5)],
            Currents = [new StartingCurrent("compressor", "bar.+", "bar.-", 30, 0.3)],
            HorizonS = 2,
            ToleranceV = toleranceV,
        }, Token);

        StartEnergy energy = start.Energy!;
        Assert.True(energy.SourceWh > 0 && energy.LoadWh > 0 && energy.LossWh > 0 && energy.StoredWh > 0 && energy.SinkWh > 0, $"{energy}");
        Assert.InRange(energy.ResidualFraction, 0, mostFraction);
        Assert.All(start.Moments, moment =>
        {
            // At every moment the sources, stores among them, give what loads and losses take.
            OperatingPoint point = moment.Point;
            Assert.Equal(point.SourcePowerW, point.LoadPowerW + point.LossPowerW, 1e-6 * Math.Max(1, Math.Abs(point.SourcePowerW)));
        });
    }

    [Fact]
    public void NothingThatStarts_ChangesNothing()
    {
        StartResult start = StartStudy.Run(new StartInput { Network = Source(new Load("lamp", "bar.+", "bar.-", LoadKind.Power, 100)), HorizonS = 1 }, Token);

        Assert.All(start.VoltageOf("lamp")!.Value, volts => Assert.Equal(start.Before!.LoadV["lamp"], volts, 1e-12));
        Assert.InRange(start.Energy!.ResidualFraction, 0, 1e-12);
    }

    [Fact]
    public void ACurrentThatEnds_LeavesTheVoltageAsItWas()
    {
        StartResult start = StartStudy.Run(new StartInput
        {
            Network = Source(new Load("lamp", "bar.+", "bar.-", LoadKind.Current, 10)),
            Currents = [new StartingCurrent("compressor", "bar.+", "bar.-", 40, 0.5)],
            HorizonS = 1,
        }, Token);

        Assert.Equal(2, start.Moments.Count(moment => moment.TimeS == 0.5));
        Assert.All(start.Moments.Zip(start.VoltageOf("lamp")!.Value).Where(pair => pair.First.TimeS < 0.5), pair => Assert.Equal(OpenV - (SourceOhm * 50), pair.Second, 1e-9));
        Assert.All(start.Moments.Zip(start.VoltageOf("lamp")!.Value).Where(pair => pair.First.TimeS > 0.5), pair => Assert.Equal(OpenV - (SourceOhm * 10), pair.Second, 1e-9));
    }

    [Fact]
    public void AMotorTooWeakForItsLoad_StandsStill()
    {
        // Behind 5 ohm it gets 25.2/5.3 A = 4.75 A, less than the 20 A that its load needs: it never turns.
        Network weak = Source() with { Batteries = [new Battery("bank", "bank.+", "bank.-", OpenV, 4.97)] };

        StartResult start = StartStudy.Run(new StartInput { Network = weak, Stores = [Motor()], HorizonS = 3 }, Token);

        Assert.All(start.Moments, moment => Assert.Equal(0, moment.Stores[0].HeldV));
        Assert.All(start.Moments, moment => Assert.Equal(OpenV / 5.3, moment.Stores[0].CurrentA, 1e-9));
    }

    [Fact]
    public void ALoadThatCannotBeServedMeanwhile_IsTold()
    {
        StartResult start = StartStudy.Run(new StartInput { Network = Source(new Load("inverter", "bar.+", "bar.-", LoadKind.Power, 2500)), Stores = [Motor(runningA: 60)], HorizonS = 1 }, Token);

        Assert.Equal(SolveStatus.NoOperatingPoint, start.Status);
        Assert.Equal("inverter", start.Shortfall!.LoadId);
        Assert.Equal(0, start.EndedS);
        Assert.NotNull(start.Before);
        Assert.Null(start.Energy);
    }

    [Fact]
    public void ANetworkThatIsFaulty_IsTold()
    {
        StartResult start = StartStudy.Run(new StartInput { Network = Source(new Load("lamp", "nowhere", "bar.-", LoadKind.Power, 10)), Stores = [Motor()], HorizonS = 1 }, Token);

        Assert.Equal(SolveStatus.FaultyNetwork, start.Status);
        Assert.NotEmpty(start.Faults);
        Assert.Null(start.VoltageOf("lamp"));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(0)]
    [InlineData(double.NaN)]
    public void AStartingRatioThatIsNone_IsRefused(double startRatio) => Assert.Throws<ArgumentOutOfRangeException>(() => Motor(startRatio));

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void ANumberThatIsNone_IsRefused(double number)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Motor(startS: number));
        Assert.Throws<ArgumentOutOfRangeException>(() => StartingStore.Capacitor("c", "a", "b", number, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => StartStudy.Run(new StartInput { Network = Source(), HorizonS = number }, Token));
        Assert.Throws<ArgumentOutOfRangeException>(() => StartStudy.Run(new StartInput { Network = Source(), HorizonS = 1, StepS = number }, Token));
    }
}
