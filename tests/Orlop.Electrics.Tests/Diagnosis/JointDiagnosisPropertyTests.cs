using System.Collections.Immutable;
using CsCheck;
using Orlop.Electrics.Diagnosis;
using Orlop.Electrics.Networks;
using Xunit;

namespace Orlop.Electrics.Tests.Diagnosis;

public sealed class JointDiagnosisPropertyTests
{
    private const double MeterV = 0.003;

    /// <summary>A random ladder with a bad joint that drops at least 60 mV; every conductor read with a noisy meter.</summary>
    private sealed record Case(Network Drawn, Network Real, string BadId, double ExtraOhm, ImmutableArray<VoltageReading> Readings);

    private static readonly Gen<Case> Cases = Gen.Int[0, int.MaxValue - 1].Select(Plant);

    [Fact]
    public void Solve_RandomLadderEveryConductorRead_FindsThePlantedJointWithinItsUncertainty() =>
        Cases.Sample(planted =>
        {
            var result = Diagnose(planted, planted.Readings);
            var best = result.Suspects[0];
            return result.Status == DiagnosisStatus.Found && best.ElementId == planted.BadId
                && Math.Abs(best.ExtraOhm - planted.ExtraOhm) < 5 * best.StandardUncertaintyOhm;
        }, iter: 60);

    [Fact]
    public void Solve_RandomLadderOneReading_NeverClaimsAWrongJoint() =>
        Cases.Sample(planted =>
        {
            var end = planted.Drawn.Loads[^1];
            var point = NetworkSolver.Solve(planted.Real).Point!;
            var result = Diagnose(planted, [new VoltageReading(end.Plus, end.Minus, point.NodeV[end.Plus] - point.NodeV[end.Minus], MeterV)]);
            var suspects = result.Groups[0].ElementIds;
            return result.Status == DiagnosisStatus.Found
                ? suspects.Single() == planted.BadId
                : result.Status != DiagnosisStatus.NotToldApart || (suspects.Length > 1 && result.Next is not null);
        }, iter: 60);

    private static DiagnosisResult Diagnose(Case planted, ImmutableArray<VoltageReading> readings) =>
        JointDiagnosis.Solve(new DiagnosisInput
        {
            Network = planted.Drawn,
            Voltages = readings,
            CandidateIds = [.. planted.Drawn.Conductors.Select(conductor => conductor.Id)],
        }, network => NetworkSolver.Solve(network));

    private static Case Plant(int seed)
    {
        var random = new Random(seed);
        var rungCount = random.Next(2, 5);
        var conductors = ImmutableArray.CreateBuilder<Conductor>();
        var loads = ImmutableArray.CreateBuilder<Load>();
        for (var i = 1; i <= rungCount; i++)
        {
            conductors.Add(new Conductor($"plus {i}", $"p{i - 1}", $"p{i}", 0.002 + (0.02 * random.NextDouble())));
            conductors.Add(new Conductor($"minus {i}", $"n{i}", $"n{i - 1}", 0.002 + (0.02 * random.NextDouble())));
            loads.Add(random.Next(2) == 0
                ? new Load($"load {i}", $"p{i}", $"n{i}", LoadKind.Power, 50 + (100 * random.NextDouble()))
                : new Load($"load {i}", $"p{i}", $"n{i}", LoadKind.Resistance, 4 + (8 * random.NextDouble())));
        }

        var drawn = new Network
        {
            Batteries = [new("battery", "p0", "n0", 24 + (2 * random.NextDouble()), 0.005)],
            Conductors = conductors.ToImmutable(),
            Loads = loads.ToImmutable(),
        };
        var bad = drawn.Conductors[random.Next(drawn.Conductors.Length)];
        var extraOhm = (0.06 + random.NextDouble()) / Math.Abs(NetworkSolver.Solve(drawn).Point!.BranchA[bad.Id]);
        var real = drawn with { Conductors = drawn.Conductors.Replace(bad, bad with { ResistanceAt20Ohm = bad.ResistanceAt20Ohm + extraOhm }) };
        var point = NetworkSolver.Solve(real).Point!;
        return new Case(drawn, real, bad.Id, extraOhm,
            [.. drawn.Conductors.Select(item => new VoltageReading(item.A, item.B, point.NodeV[item.A] - point.NodeV[item.B] + (MeterV * Normal(random)), MeterV))]);
    }

    private static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
