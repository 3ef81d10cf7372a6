using System.Collections.Immutable;
using Orlop.Electrics.Diagnosis;
using Orlop.Electrics.Networks;
using Xunit;

namespace Orlop.Electrics.Tests.Diagnosis;

public sealed class JointDiagnosisTests
{
    private static readonly ImmutableArray<string> Candidates = ["p1", "p2", "p3", "lug", "n1", "n2", "n3"];

    /// <summary>Battery, three rungs out and back, a bolted lug of no resistance after the first, a load on each rung.</summary>
    private static Network Ladder() => new()
    {
        Batteries = [new("battery", "p0", "n0", 25.6, 0.006)],
        Conductors =
        [
            new("p1", "p0", "pA", 0.004), new("p2", "pB", "p2", 0.010), new("p3", "p2", "p3", 0.020),
            new("n1", "n1", "n0", 0.004), new("n2", "n2", "n1", 0.010), new("n3", "n3", "n2", 0.020),
        ],
        Contacts = [new("lug", "pA", "pB", 0)],
        Loads = [new("lights", "pB", "n1", LoadKind.Resistance, 5), new("pump", "p2", "n2", LoadKind.Power, 200), new("winch", "p3", "n3", LoadKind.Power, 400)],
    };

    private static Network Bad(string id, double extraOhm)
    {
        var network = Ladder();
        return network with
        {
            Conductors = [.. network.Conductors.Select(item => item.Id == id ? item with { ResistanceAt20Ohm = item.ResistanceAt20Ohm + extraOhm } : item)],
            Contacts = [.. network.Contacts.Select(item => item.Id == id ? item with { ResistanceOhm = item.ResistanceOhm + extraOhm } : item)],
        };
    }

    private static DiagnosisInput Read(Network real, params (string Plus, string Minus)[] pairs)
    {
        var point = Point(real);
        return new DiagnosisInput
        {
            Network = Ladder(),
            Voltages = [.. pairs.Select(pair => new VoltageReading(pair.Plus, pair.Minus, point.NodeV[pair.Plus] - point.NodeV[pair.Minus], 0.005))],
            CandidateIds = Candidates,
        };
    }

    private static NetworkResult Solve(Network network) => NetworkSolver.Solve(network, TestContext.Current.CancellationToken);

    private static OperatingPoint Point(Network network) => Solve(network).Point!;

    private static DiagnosisResult Diagnose(DiagnosisInput input) => JointDiagnosis.Solve(input, Solve, TestContext.Current.CancellationToken);

    [Theory]
    [InlineData("p1", 0.02)]
    [InlineData("p2", 0.008)]
    [InlineData("p3", 0.05)]
    [InlineData("lug", 0.01)]
    [InlineData("n2", 0.015)]
    public void Solve_EveryStretchRead_FindsTheBadOne(string bad, double extraOhm)
    {
        var result = Diagnose(Read(Bad(bad, extraOhm), ("p0", "pA"), ("pA", "pB"), ("pB", "p2"), ("p2", "p3"), ("n1", "n0"), ("n2", "n1"), ("n3", "n2")));
        Assert.Equal(DiagnosisStatus.Found, result.Status);
        Assert.Equal(bad, result.Suspects[0].ElementId);
        Assert.Equal(extraOhm, result.Suspects[0].ExtraOhm, Math.Max(1e-5, 1e-3 * extraOhm));
        Assert.Equal([bad], result.Groups[0].ElementIds);
        Assert.True(result.Groups[0].WeightFraction > 0.95);
        Assert.Equal(1, result.Suspects.Sum(suspect => suspect.WeightFraction) + result.NothingWrongFraction!.Value, 1e-9);
    }

    [Fact]
    public void Solve_OneReadingAtTheFarEnd_GroupsAndProposesAReadingThatSettlesIt()
    {
        var real = Bad("p2", 0.02);
        var taken = new List<(string, string)> { ("p3", "n3") };
        var result = Diagnose(Read(real, [.. taken]));
        Assert.Equal(DiagnosisStatus.NotToldApart, result.Status);
        Assert.Contains("p2", result.Groups[0].ElementIds);
        Assert.True(result.Groups[0].ElementIds.Length > 3);
        // A reading across each candidate by itself settles it at the latest.
        while (result.Status == DiagnosisStatus.NotToldApart && taken.Count <= Candidates.Length)
        {
            Assert.NotNull(result.Next);
            Assert.Equal(EndsOf(result.Next.ElementId), Ordered(result.Next.PlusNode, result.Next.MinusNode));
            Assert.Equal(result.Next.PredictedV.Values.Max(), result.Next.PredictedV[result.Next.ElementId]);
            Assert.True(result.Next.SpreadV > 0.01);
            taken.Add((result.Next.PlusNode, result.Next.MinusNode));
            result = Diagnose(Read(real, [.. taken]));
        }

        Assert.Equal((DiagnosisStatus.Found, "p2"), (result.Status, result.Suspects[0].ElementId));
        Assert.Equal(taken.Count, taken.Select(pair => Ordered(pair.Item1, pair.Item2)).Distinct().Count());
        // What is found is the bad one's own heat: extra resistance times the square of its current.
        Assert.Equal(0.02 * Math.Pow(Point(real).BranchA["p2"], 2), result.Suspects[0].ExtraHeatW, 0.1);
    }

    private static (string, string) EndsOf(string id) =>
        Ladder().Conductors.Where(item => item.Id == id).Select(item => Ordered(item.A, item.B)).Concat(Ladder().Contacts.Where(item => item.Id == id).Select(item => Ordered(item.A, item.B))).Single();

    private static (string, string) Ordered(string a, string b) => string.CompareOrdinal(a, b) < 0 ? (a, b) : (b, a);

    [Fact]
    public void Solve_EveryStretchRead_SolvesAtMostTwentyTimesACandidate()
    {
        var result = Diagnose(Read(Bad("p2", 0.008), ("p0", "pA"), ("pA", "pB"), ("pB", "p2"), ("p2", "p3"), ("n1", "n0"), ("n2", "n1"), ("n3", "n2")));
        Assert.InRange(result.SolveCount, Candidates.Length, 20 * Candidates.Length);
        Assert.All(result.ResidualRatios, residual => Assert.InRange(residual, -0.1, 0.1));
    }

    [Fact]
    public void Solve_NothingWrong_ClaimsNothing()
    {
        var result = Diagnose(Read(Ladder(), ("p3", "n3"), ("p2", "n2"), ("pB", "p2")));
        Assert.Equal(DiagnosisStatus.NothingWrongSeen, result.Status);
        Assert.All(result.Suspects, suspect => Assert.True(suspect.ExtraOhm < 1e-3));
    }

    [Fact]
    public void Solve_TwoBadJoints_AreNotExplainedByOne()
    {
        var real = Bad("p2", 0.03);
        real = real with { Conductors = [.. real.Conductors.Select(item => item.Id == "n3" ? item with { ResistanceAt20Ohm = 0.06 } : item)] };
        Assert.Equal(DiagnosisStatus.NotExplained, Diagnose(Read(real, ("pB", "p2"), ("n3", "n2"), ("p2", "p3"))).Status);
    }

    [Fact]
    public void Solve_LessResistanceThanDrawn_IsNotExplained() =>
        Assert.Equal(DiagnosisStatus.NotExplained, Diagnose(Read(Bad("p3", -0.015), ("p2", "p3"))).Status);

    [Fact]
    public void Solve_CurrentReading_CountsToo()
    {
        var real = Bad("p1", 0.05);
        var point = Point(real);
        var input = new DiagnosisInput { Network = Ladder(), Currents = [new("lights", point.LoadA["lights"], 0.001)], CandidateIds = ["p1", "p3"] };
        var result = Diagnose(input);
        Assert.Equal(DiagnosisStatus.Found, result.Status);
        Assert.Equal("p1", result.Suspects[0].ElementId);
    }

    [Fact]
    public void Solve_Uncertainty_IsMetersOverCurrent()
    {
        // A drop read to 5 mV across an element that carries I gives R to 5 mV / I, nearly.
        var real = Bad("p3", 0.05);
        var result = Diagnose(Read(real, ("p2", "p3")));
        var currentA = Point(real).BranchA["p3"];
        var p3 = result.Suspects.Single(suspect => suspect.ElementId == "p3");
        Assert.Equal(0.005 / currentA, p3.StandardUncertaintyOhm!.Value, 0.2 * 0.005 / currentA);
    }

    [Fact]
    public void Solve_NetworkThatHasNoAnswer_SaysSo()
    {
        var input = Read(Ladder(), ("p3", "n3"));
        var result = Diagnose(input with { Network = Ladder() with { Loads = [new("too much", "p3", "n3", LoadKind.Power, 1e5)] } });
        Assert.Equal(DiagnosisStatus.NotSolvable, result.Status);
        Assert.Empty(result.Suspects);
        Assert.Null(result.NothingWrongFraction);
    }

    [Fact]
    public void Solve_FaultyInput_IsRefusedByName()
    {
        var input = Read(Ladder(), ("p3", "n3"));
        Refused(input with { Voltages = [] }, "no reading");
        Refused(input with { CandidateIds = [] }, "no candidate");
        Refused(input with { CandidateIds = ["winch"] }, "winch");
        Refused(input with { Voltages = [new("p3", "nowhere", 24, 0.01)] }, "nowhere");
        Refused(input with { Currents = [new("nothing", 1, 0.01)] }, "nothing");
        Refused(input with { Voltages = [new("p3", "n3", double.NaN, 0.01)] }, "p3");
        Refused(input with { Voltages = [new("p3", "n3", 24, 0)] }, "p3");

        static void Refused(DiagnosisInput input, string name) =>
            Assert.Contains(name, Assert.ThrowsAny<ArgumentException>(() => Diagnose(input)).Message, StringComparison.Ordinal);
    }
}
