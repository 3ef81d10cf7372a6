using CsCheck;
using Orlop.Electrics.Networks;
using Xunit;

namespace Orlop.Electrics.Tests.Networks;

public sealed class NetworkPropertyTests
{
    private static readonly RandomNetworkKind Everything = new() { IsHeated = true, HasLimitedSources = true, HasConverters = true, HasJoins = true };
    private static readonly RandomNetworkKind Radial = new() { MeshFraction = 0, PointsPerBattery = 10_000, HasOtherLoads = false };

    private static readonly Gen<(int Seed, int PointCount)> Sizes = Gen.Select(Gen.Int[0, int.MaxValue - 1], Gen.Int[2, 60]);

    [Fact]
    public void Solve_AnyNetwork_BalancesCurrentAtEveryNode() => Sizes.Sample((seed, pointCount) =>
    {
        var network = RandomNetwork.Build(seed, pointCount, Everything);
        var point = Solved(network);
        var outA = point.NodeV.Keys.ToDictionary(n => n, _ => 0.0);
        var largestA = 1.0;
        foreach (var c in network.Conductors)
        {
            Carry(c.A, c.B, point.BranchA[c.Id]);
        }

        foreach (var c in network.Contacts)
        {
            Carry(c.A, c.B, point.BranchA[c.Id]);
        }

        foreach (var b in network.Batteries)
        {
            Carry(b.Minus, b.Plus, point.SourceA[b.Id]);
        }

        foreach (var s in network.LimitedSources)
        {
            Carry(s.Minus, s.Plus, point.SourceA[s.Id]);
        }

        foreach (var l in network.Loads)
        {
            Carry(l.Plus, l.Minus, point.LoadA[l.Id]);
        }

        foreach (var v in network.Converters)
        {
            Carry(v.InPlus, v.InMinus, point.LoadA[v.Id]);
            Carry(v.OutMinus, v.OutPlus, point.SourceA[v.Id]);
        }

        // Whatever leaves one of two minus terminals that are one comes in at the other.
        foreach (var v in network.Converters.Where(v => v.IsSharedMinus))
        {
            outA[v.InMinus] += outA[v.OutMinus];
            outA[v.OutMinus] = 0;
        }

        foreach (var (node, currentA) in outA)
        {
            Assert.True(Math.Abs(currentA) <= 2e-9 * largestA, $"{node}: {currentA} A, largest {largestA} A");
        }

        void Carry(string from, string to, double currentA)
        {
            outA[from] += currentA;
            outA[to] -= currentA;
            largestA = Math.Max(largestA, Math.Abs(currentA));
        }
    });

    [Fact]
    public void Solve_AnyNetwork_BalancesPower() => Sizes.Sample((seed, pointCount) =>
    {
        var point = Solved(RandomNetwork.Build(seed, pointCount, Everything));
        Assert.Equal(0, (point.SourcePowerW - point.LoadPowerW - point.LossPowerW) / Math.Max(1, point.SourcePowerW), 1e-8);
    });

    [Fact]
    public void Solve_LoadsOfPower_GetWhatTheyAsk() => Sizes.Sample((seed, pointCount) =>
    {
        var network = RandomNetwork.Build(seed, pointCount, Everything);
        var point = Solved(network);
        foreach (var load in network.Loads.Where(l => l.Kind == LoadKind.Power))
        {
            Assert.Equal(load.Amount, point.LoadA[load.Id] * point.LoadV[load.Id], 1e-9);
        }
    });

    [Fact]
    public void Solve_Conductors_ObeyTheirTemperature() => Sizes.Sample((seed, pointCount) =>
    {
        var network = RandomNetwork.Build(seed, pointCount, Everything);
        var point = Solved(network);
        foreach (var conductor in network.Conductors)
        {
            var heating = conductor.Heating!;
            var temperatureC = point.ConductorC[conductor.Id];
            var ohm = conductor.ResistanceAt20Ohm * (1 + ((temperatureC - 20) / 254.5));
            var ratedOhm = conductor.ResistanceAt20Ohm * (1 + ((heating.RatedC - 20) / 254.5));
            var load = point.BranchA[conductor.Id] / heating.RatedCurrentA;
            Assert.Equal(heating.AmbientC + ((heating.RatedC - heating.TableAmbientC) * load * load * ohm / ratedOhm), temperatureC, 1e-9);
            Assert.Equal(point.NodeV[conductor.A] - point.NodeV[conductor.B], point.BranchA[conductor.Id] * ohm, 1e-9);
        }
    });

    [Fact]
    public void Solve_LimitedSources_WorkInTheModeTheyReport() => Sizes.Sample((seed, pointCount) =>
    {
        var network = RandomNetwork.Build(seed, pointCount, Everything);
        var point = Solved(network);
        foreach (var source in network.LimitedSources)
        {
            var voltageV = point.NodeV[source.Plus] - point.NodeV[source.Minus];
            var wantedA = (source.SetpointV - voltageV) / source.SourceOhm;
            Assert.Equal(Math.Clamp(wantedA, 0, source.LimitA), point.SourceA[source.Id], 1e-7);
            var expected = wantedA > source.LimitA ? SourceMode.AtLimit : wantedA < 0 ? SourceMode.Off : SourceMode.HoldingVoltage;
            Assert.Equal(expected, point.SourceModes[source.Id]);
        }
    });

    [Fact]
    public void Solve_ListsInAnotherOrder_GivesTheSameBits() => Sizes.Sample((seed, pointCount) =>
    {
        var network = RandomNetwork.Build(seed, pointCount, Everything);
        var point = Solved(network);
        var shuffled = Solved(RandomNetwork.Shuffled(network, seed));
        Assert.Equal(point.NodeV.OrderBy(n => n.Key, StringComparer.Ordinal), shuffled.NodeV.OrderBy(n => n.Key, StringComparer.Ordinal));
        Assert.Equal(point.BranchA.OrderBy(n => n.Key, StringComparer.Ordinal), shuffled.BranchA.OrderBy(n => n.Key, StringComparer.Ordinal));
    });

    [Fact]
    public void Solve_EmfTimesFactorAndPowerTimesItsSquare_ScalesVoltages() =>
        Gen.Select(Sizes, Gen.Double[0.5, 4]).Sample((size, factor) =>
        {
            var network = RandomNetwork.Build(size.Seed, size.PointCount, new RandomNetworkKind { HasOtherLoads = false });
            var point = Solved(network);
            var scaled = Solved(network with
            {
                Batteries = [.. network.Batteries.Select(b => b with { OpenCircuitV = b.OpenCircuitV * factor })],
                Loads = [.. network.Loads.Select(l => l with { Amount = l.Amount * factor * factor })],
            });
            foreach (var (node, voltageV) in point.NodeV)
            {
                Assert.Equal(voltageV * factor, scaled.NodeV[node], 1e-7);
            }
        });

    [Fact]
    public void Solve_AnyNetwork_KeepsVoltagesBelowTheHighestSource() => Sizes.Sample((seed, pointCount) =>
    {
        var network = RandomNetwork.Build(seed, pointCount);
        var highestV = network.Batteries.Max(b => b.OpenCircuitV);
        Assert.All(Solved(network).LoadV.Values, v => Assert.InRange(v, 0, highestV));
    });

    [Fact]
    public void Solve_RadialNetworkWithLongerConductor_RaisesNoLoadVoltage() => Sizes.Sample((seed, pointCount) =>
    {
        var network = RandomNetwork.Build(seed, pointCount, Radial);
        var longer = network.Conductors[seed % network.Conductors.Length];
        var changed = network with { Conductors = network.Conductors.Replace(longer, longer with { ResistanceAt20Ohm = longer.ResistanceAt20Ohm * 1.7 }) };
        AssertNoneHigher(Solved(changed), Solved(network));
    });

    [Fact]
    public void Solve_RadialNetworkWithSecondConductorBesideOne_LowersNoLoadVoltage() => Sizes.Sample((seed, pointCount) =>
    {
        var network = RandomNetwork.Build(seed, pointCount, Radial);
        var doubled = network.Conductors[seed % network.Conductors.Length];
        AssertNoneHigher(Solved(network), Solved(network with { Conductors = network.Conductors.Add(doubled with { Id = "second" }) }));
    });

    [Fact]
    public void Solve_RadialNetworkWithAddedBattery_LowersNoLoadVoltage() => Sizes.Sample((seed, pointCount) =>
    {
        var network = RandomNetwork.Build(seed, pointCount, Radial);
        var at = seed % pointCount;
        var added = new Battery("added", $"p{at}", $"n{at}", network.Batteries[0].OpenCircuitV, 0.004);
        AssertNoneHigher(Solved(network), Solved(network with { Batteries = network.Batteries.Add(added) }));
    });

    [Fact]
    public void Solve_CurrentDrawnHere_LowersThereAsThereLowersHere() => Sizes.Sample((seed, pointCount) =>
    {
        var network = RandomNetwork.Build(seed, pointCount) with { Loads = [] };
        var (here, there) = (seed % pointCount, seed / 7 % pointCount);
        var idle = Solved(network);
        var fallThere = AcrossV(idle, there) - AcrossV(Solved(network with { Loads = [Drawing(here)] }), there);
        var fallHere = AcrossV(idle, here) - AcrossV(Solved(network with { Loads = [Drawing(there)] }), here);
        Assert.Equal(fallThere, fallHere, 1e-9);

        static Load Drawing(int at) => new("draw", $"p{at}", $"n{at}", LoadKind.Current, 10);

        static double AcrossV(OperatingPoint point, int at) => point.NodeV[$"p{at}"] - point.NodeV[$"n{at}"];
    });

    [Fact]
    public void At_MeshedNetworkWithSecondConductorBesideOne_NeverRaisesTheSourceResistance() => Sizes.Sample((seed, pointCount) =>
    {
        var network = RandomNetwork.Build(seed, pointCount);
        var doubled = network.Conductors[seed % network.Conductors.Length];
        var more = network with { Conductors = network.Conductors.Add(doubled with { Id = "second" }) };
        var last = pointCount - 1;
        var before = FaultCurrent.At(network, $"p{last}", $"n{last}").SourceOhm;
        var after = FaultCurrent.At(more, $"p{last}", $"n{last}").SourceOhm;
        Assert.True(after <= before * (1 + 1e-12), $"{after} ohm after, {before} ohm before");
    });

    private static OperatingPoint Solved(Network network)
    {
        var result = NetworkSolver.Solve(network);
        Assert.True(result.Status == SolveStatus.Converged, $"{result.Status}: {result.Shortfall} {string.Join(' ', result.Faults.Select(f => f.Message))}");
        return result.Point!;
    }

    private static void AssertNoneHigher(OperatingPoint lower, OperatingPoint higher)
    {
        foreach (var (id, voltageV) in lower.LoadV)
        {
            Assert.True(voltageV <= higher.LoadV[id] + 1e-8, $"{id}: {voltageV} V against {higher.LoadV[id]} V");
        }
    }
}
