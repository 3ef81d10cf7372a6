using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Diagnosis;
using Orlop.Electrics.Networks;
using Orlop.Review.Networks;
using Orlop.Review.Practices;
using Xunit;

namespace Orlop.Review.Tests;

/// <summary>The commissioning readings in the demo boat, handed to the engine that looks for a bad joint.</summary>
public sealed class DemoBoatReadingsTests
{
    private static readonly BoatModel Boat = ExampleBoats.Read("sandgrouse");

    [Fact]
    public void DryingLocker_Readings_PointAtTheOneBadCrimp()
    {
        DiagnosisResult found = Diagnose("drying-locker", "drying-");
        Assert.Equal(DiagnosisStatus.Found, found.Status);
        Assert.Equal("drying-feed.minus@to", found.Suspects[0].ElementId);
        Assert.InRange(found.Suspects[0].ExtraOhm, 0.030, 0.040);
    }

    [Fact]
    public void SecondBilgePump_Readings_AgreeWithTheNetwork() =>
        Assert.Equal(DiagnosisStatus.NothingWrongSeen, Diagnose("second-bilge-pump", "bilge-").Status);

    private static DiagnosisResult Diagnose(string alteration, string candidatesBeginWith)
    {
        Condition condition = Boat.Find<Condition>("commissioning")!;
        Network network = new NetworkBuilder(Boat, Wiring.Of(Boat), Practice.Of(Boat.All<PracticeChoice>().Single()), condition)
            .Build(new NetworkCase(condition.Id, ChargeCase.Normal)).Network;
        ImmutableArray<Reading> readings = [.. Boat.All<Reading>().Where(reading => reading.Alteration == alteration)];
        Assert.NotEmpty(readings);
        DiagnosisInput input = new()
        {
            Network = network,
            Voltages = [.. readings.Where(reading => reading.VoltageV is not null).Select(reading => new VoltageReading(
                reading.Plus.ToString()!, reading.Minus.ToString()!, reading.VoltageV!.Value, reading.VoltageV.PlusMinus!.Value))],
            Currents = [.. readings.Where(reading => reading.CurrentA is not null).Select(reading => new CurrentReading(
                reading.Through!, reading.CurrentA!.Value, reading.CurrentA.PlusMinus!.Value))],
            CandidateIds = [.. network.Conductors.Select(conductor => conductor.Id).Concat(network.Contacts.Select(contact => contact.Id))
                .Where(id => id.StartsWith(candidatesBeginWith, StringComparison.Ordinal))],
        };
        return JointDiagnosis.Solve(input, candidate => NetworkSolver.Solve(candidate, TestContext.Current.CancellationToken), TestContext.Current.CancellationToken);
    }
}
