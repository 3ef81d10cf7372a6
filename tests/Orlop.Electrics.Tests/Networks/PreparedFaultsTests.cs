using Orlop.Electrics.Networks;
using Xunit;

namespace Orlop.Electrics.Tests.Networks;

/// <summary>Faults of one network, factored once, against the operating point of the same network with the fault in it.</summary>
public sealed class PreparedFaultsTests
{
    private static readonly Network Meshed = new()
    {
        Batteries = [new Battery("one", "bus", "zero", 25.6, 0.010), new Battery("two", "panel", "zero", 25.2, 0.020)],
        Conductors = [new Conductor("tie", "bus", "panel", 0.004), new Conductor("feed", "panel", "far", 0.008), new Conductor("second", "bus", "far", 0.012), new Conductor("return", "far-minus", "zero", 0.005)],
        Contacts = [new Contact("breaker", "far", "end", 0.002), new Contact("lug", "end", "tip", 0)],
    };

    [Fact]
    public void FlowBetween_Mesh_IsWhatTheSolverFindsInEveryBranch()
    {
        FaultFlow flow = PreparedFaults.OfSound(Meshed, FaultConditions.Least)!.FlowBetween("tip", "far-minus")!;
        NetworkResult solved = NetworkSolver.Solve(Meshed with { Contacts = [.. Meshed.Contacts, new Contact("fault", "tip", "far-minus", 1e-9)] }, TestContext.Current.CancellationToken);

        Assert.Equal(solved.Point!.BranchA["fault"], flow.Fault.CurrentA, 1e-3);
        Assert.All(["tie", "feed", "second", "return", "breaker"], id => Assert.Equal(solved.Point.BranchA[id], flow.BranchA(id)!.Value, 1e-3));
        Assert.Null(flow.BranchA("lug"));
        Assert.Null(flow.BranchA("nowhere"));
    }

    [Fact]
    public void FlowBetween_EveryJunction_CurrentIsConserved()
    {
        FaultFlow flow = PreparedFaults.OfSound(Meshed, FaultConditions.Least)!.FlowBetween("tip", "far-minus")!;

        // What comes to the far end on both ways goes through the breaker, and all of it returns.
        Assert.Equal(flow.BranchA("breaker")!.Value, flow.BranchA("feed")!.Value + flow.BranchA("second")!.Value, 1e-9);
        Assert.Equal(flow.Fault.CurrentA, flow.BranchA("breaker")!.Value, 1e-9);
        Assert.Equal(flow.Fault.CurrentA, flow.BranchA("return")!.Value, 1e-9);
    }

    // What a current gives off in the whole is the sum over the parts: R = Σ R·share² (Tellegen's theorem), here against the resistance that Thévenin's gives.
    [Fact]
    public void PiecesBetween_Mesh_AddUpToTheResistance()
    {
        PreparedFaults prepared = PreparedFaults.OfSound(Meshed, FaultConditions.Least)!;
        var pieces = prepared.PiecesBetween("tip", "far-minus");

        Assert.Equal(prepared.Between("tip", "far-minus")!.SourceOhm, pieces.Sum(piece => piece.PartOhm), 1e-12);
        Assert.Equal(1, pieces.Single(piece => piece.Id == "return").ShareFraction);
        Assert.DoesNotContain(pieces, piece => piece.Id == "lug");
    }

    // By hand: one way, 10 + 2 + 3 mΩ; two like batteries side by side, each half the current, 2 × 10 × 0.5² = 5 mΩ.
    [Fact]
    public void PiecesBetween_OneWayAndTwoLikeBatteries_AreAsByHand()
    {
        Network one = new() { Batteries = [new Battery("one", "bus", "zero", 12.6, 0.010)], Conductors = [new Conductor("out", "bus", "far", 0.002), new Conductor("back", "far-minus", "zero", 0.003)] };
        Network two = one with { Batteries = [.. one.Batteries, new Battery("two", "bus", "zero", 12.6, 0.010)] };

        Assert.Equal([("back", 0.003), ("one", 0.010), ("out", 0.002)], Pieces(one));
        Assert.Equal([("back", 0.003), ("one", 0.0025), ("out", 0.002), ("two", 0.0025)], Pieces(two));

        static IEnumerable<(string, double)> Pieces(Network network) => PreparedFaults.OfSound(network, FaultConditions.Greatest)!.PiecesBetween("far", "far-minus")
            .Select(piece => (piece.Id, Math.Round(piece.PartOhm, 12))).OrderBy(piece => piece.Id, StringComparer.Ordinal);
    }

    [Fact]
    public void Between_FromManyThreads_IsAsOneByOne()
    {
        var network = RandomNetwork.Build(5, 60, new RandomNetworkKind { HasLimitedSources = true, HasConverters = true });
        var pairs = Enumerable.Range(1, 59).Select(k => ($"p{k}", $"n{k}")).ToArray();
        PreparedFaults prepared = PreparedFaults.OfSound(network, FaultConditions.Greatest)!;
        var found = new FaultCurrentResult?[pairs.Length];
        Parallel.For(0, pairs.Length, new ParallelOptions { CancellationToken = TestContext.Current.CancellationToken }, k => found[k] = prepared.Between(pairs[k].Item1, pairs[k].Item2));

        Assert.Equal(FaultCurrent.AtEach(network, pairs), found);
    }

    [Fact]
    public void OfSound_NetworkWithAFault_IsNone() =>
        Assert.Null(PreparedFaults.OfSound(Meshed with { Conductors = [.. Meshed.Conductors, new Conductor("short", "bus", "zero", 0)] }, FaultConditions.Greatest));
}
