using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Electrics.Diagnosis;
using Orlop.Review.Readings;
using Orlop.Work.Readings;
using Xunit;

namespace Orlop.Work.Tests;

/// <summary>What docs/demo-boat.md promises of the record in the demo boat: its ticks and its commissioning readings.</summary>
public sealed class DemoBoatRecordTests
{
    private static readonly BoatModel Boat = DemoBoat.Read();

    [Fact]
    public void DryingLocker_Readings_OneAloneIsOutsideItsBand() =>
        Assert.Equal("drying-reading-minus", Assert.Single(
            ReadingComparison.Compare(Boat, ReadingsOf("drying-locker"), TestContext.Current.CancellationToken),
            compared => compared.Standing != ReadingStanding.Within).Reading.Id);

    [Fact]
    public void DryingLocker_Readings_PointAtTheOneBadCrimp()
    {
        FaultReport report = Assert.Single(FaultFinding.Diagnose(Boat, ReadingsOf("drying-locker"), TestContext.Current.CancellationToken));
        Assert.Equal(DiagnosisStatus.Found, report.Status);
        Assert.Equal("drying-feed.minus@to", report.Suspects[0].ElementId);
        // The readings were made with 35 mΩ too much in that joint.
        Assert.InRange(report.Suspects[0].ExtraOhm, 0.033, 0.037);
        Assert.True(report.Suspects[0].ExtraHeatW > 3);
        Assert.StartsWith("Live and hot: ", report.Caution!.ToString(), StringComparison.Ordinal);
        Assert.Equal("drying-feed", report.Suspects[0].ThingId);
    }

    [Fact]
    public void SecondBilgePump_Readings_AgreeWithTheCircuit() =>
        Assert.Equal(
            DiagnosisStatus.NothingWrongSeen,
            Assert.Single(FaultFinding.Diagnose(Boat, ReadingsOf("second-bilge-pump"), TestContext.Current.CancellationToken)).Status);

    [Theory]
    [InlineData("second-bilge-pump")]
    [InlineData("drying-locker")]
    public void Tick_OfADemoAlteration_NamesAStepOfItsPack(string id)
    {
        Alteration alteration = Boat.Find<Alteration>(id)!;
        WorkPack pack = WorkPacks.Plan(Boat, alteration, TestContext.Current.CancellationToken);
        Assert.NotEmpty(alteration.Ticks);
        Assert.Subset(pack.Steps.Select(step => step.Key).ToHashSet(), alteration.Ticks.Select(tick => tick.Step).ToHashSet());
    }

    private static IEnumerable<Reading> ReadingsOf(string alteration) => Boat.All<Reading>().Where(reading => reading.Alteration == alteration);
}
