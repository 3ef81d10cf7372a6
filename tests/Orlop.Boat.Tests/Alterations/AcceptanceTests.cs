using Orlop.Boat.Alterations;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Xunit;

namespace Orlop.Boat.Tests.Alterations;

public sealed class AcceptanceTests
{
    private static readonly DateOnly Day = new(2026, 11, 25);
    private static readonly Alteration Draft = new() { Id = "work", Edits = [BoatEdits.Add(new Gear { Id = "chest" })] };

    [Fact]
    public void Become_KeepsTheDayOfAcceptance_AsLongAsItIsAccepted()
    {
        Alteration accepted = AlteredBoat.Become(Draft, AlterationStatus.Accepted, Day);
        Assert.Equal((AlterationStatus.Accepted, (DateOnly?)Day), (accepted.Status, accepted.AcceptedOn));
        BoatModel boat = new() { Things = [accepted] };
        Alteration built = BoatEdits.Apply(boat, AlteredBoat.Build(boat, accepted, ["chest"], Day.AddDays(7))).Boat.Find<Alteration>("work")!;
        Assert.Equal((AlterationStatus.Built, (DateOnly?)Day), (built.Status, built.AcceptedOn));
        Assert.Null(AlteredBoat.Become(accepted, AlterationStatus.Draft, Day.AddDays(1)).AcceptedOn);
        Assert.Null(AlteredBoat.Become(accepted, AlterationStatus.Dropped, Day.AddDays(1)).AcceptedOn);
    }

    // Files from before it was recorded.
    [Fact]
    public void File_WithoutTheDay_ReadsAndIsWrittenWithoutIt()
    {
        string old = BoatJson.Write(new BoatModel { Things = [Draft with { Status = AlterationStatus.Accepted }] });
        Assert.DoesNotContain("acceptedOn", old, StringComparison.Ordinal);
        Assert.Null(BoatJson.Read(old).Boat!.Find<Alteration>("work")!.AcceptedOn);
        string dated = BoatJson.Write(new BoatModel { Things = [AlteredBoat.Become(Draft, AlterationStatus.Accepted, Day)] });
        Assert.Contains("\"acceptedOn\": \"2026-11-25\"", dated, StringComparison.Ordinal);
        Assert.Equal(Day, BoatJson.Read(dated).Boat!.Find<Alteration>("work")!.AcceptedOn);
    }
}
