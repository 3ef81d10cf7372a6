using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Work.Steps;
using Xunit;

namespace Orlop.Work.Tests.Steps;

/// <summary>Points are read live before they are proved dead; a battery's minus is off while its posts are worked on (common practice, no source).</summary>
public class LiveAndBareTests
{
    public static TheoryData<string> Drafts => ["sampling-winch", "sampling-winch-second"];

    [Theory]
    [MemberData(nameof(Drafts))]
    public void Plan_EachProofThatComparesWithAReadingBefore_HasThatReadingBeforeTheFirstOpening(string id)
    {
        WorkPack pack = DemoBoat.Pack(id);
        WorkStep read = pack.Steps.Single(step => step.Key == "read-before:all");
        Assert.DoesNotContain(pack.Steps[..pack.Steps.IndexOf(read)], step => step.Key.StartsWith("isolate:", StringComparison.Ordinal) && step.Key is not ("isolate:loads-off" or "isolate:panels"));
        string[] points = [.. read.Details[..read.WriteDown!.ReadingCount!.Value].Select(Place)];
        Assert.NotEmpty(points);
        Assert.Distinct(points);
        string[] compared = [.. pack.Steps.Where(step => step.Kind == StepKind.ProveDead).SelectMany(step => step.Details).Where(detail => detail.ToString().Contains("compare with what you noted", StringComparison.Ordinal)).Select(Place)];
        Assert.Equal(compared.Distinct().Order(), points.Order());
    }

    // The bank's nominal voltage; 12 V stands in the boat of the tests.
    [Fact]
    public void Plan_ReadBefore_SaysTheLiveVoltageAndThatCoveredPointsAreWrittenSo()
    {
        WorkStep read = Boats.PumpPack.Steps.Single(step => step.Key == "read-before:all");
        Assert.All(read.Details[..read.WriteDown!.ReadingCount!.Value], detail => Assert.Contains(detail.Parts, part => part.Amount is { Value: 12, Suffix: "V" }));
        Assert.Contains(read.Details, detail => detail.ToString().Contains("write “covered”", StringComparison.Ordinal));
        Assert.Contains(ReadBefore.Live, read.Cautions);
    }

    [Fact]
    public void Plan_LeadGoesOntoALivePlusPost_MinusComesOffFirstAndGoesOnLast()
    {
        WorkPack pack = DemoBoat.Pack("sampling-winch");
        int Index(string key) => pack.Steps.IndexOf(pack.Steps.Single(step => step.Key == key));
        int off = Index("isolate:minus:bank"), connect = Index("connect:winch-tail"), on = Index("restore:minus:bank");
        Assert.True(off < Index("stays-live:bank"));
        Assert.InRange(connect, off + 1, on - 1);
        string named = pack.AsBuilt.Find("bank-minus")!.Title;
        Assert.Contains(pack.Steps[off].Details, detail => detail.ToString().Contains(named, StringComparison.Ordinal));
        Assert.Contains(pack.Steps[on].Details, detail => detail.ToString().Contains(named, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("pump")]
    [InlineData("sampling-winch")]
    [InlineData("sampling-winch-second")]
    [InlineData("drying-locker")]
    [InlineData("second-bilge-pump")]
    public void Plan_CautionSaysMinusFirst_AStepTakesItOffAndAnotherPutsItOn(string id)
    {
        WorkPack pack = id == "pump" ? Boats.PumpPack : DemoBoat.Pack(id);
        bool says = pack.Steps.SelectMany(step => step.Cautions).Any(caution => caution.Text.Contains("minus lead comes off first", StringComparison.Ordinal));
        Assert.Equal(says, pack.Steps.Any(step => step.Key.StartsWith("isolate:minus:", StringComparison.Ordinal)));
        Assert.Equal(says, pack.Steps.Any(step => step.Key.StartsWith("restore:minus:", StringComparison.Ordinal)));
    }

    [Fact]
    public void Plan_NewLeadOnTheMinusPost_IsNotPutOnBeforeTheMinusLeadsAre()
    {
        Alteration work = new() { Id = "work", Edits = [BoatEdits.Add(Boats.Wire("second-minus", "bank.-", "minus.bar", 35, 1, 8) with { Name = "Second minus" })] };
        WorkPack pack = Boats.Plan(Boats.Small, work);
        Assert.Contains(pack.Steps, step => step.Key == "isolate:minus:bank");
        Assert.Contains(pack.Steps.Single(step => step.Key == "connect:second-minus").Details, detail => detail.ToString().Contains(MinusSteps.NotYet, StringComparison.Ordinal));
        Assert.Contains(pack.Steps.Single(step => step.Key == "restore:minus:bank").Details, detail => detail.ToString().Contains("Second minus", StringComparison.Ordinal));
        Assert.DoesNotContain(pack.Steps.Single(step => step.Key == "isolate:minus:bank").Details, detail => detail.ToString().Contains("Second minus", StringComparison.Ordinal));
    }

    // A lamp straight on the posts: until its cable is on, the posts are all that is live, and nothing of it is fed.
    [Fact]
    public void Plan_NewCircuitOnThePosts_StaysLiveIsToldOfTheBoatAsSheStands()
    {
        Alteration work = new()
        {
            Id = "work",
            Edits =
            [
                BoatEdits.Add(new ElectricLoad { Id = "cabin-light", Name = "Cabin light", Behaviour = LoadBehaviour.Power, NominalV = 12, RunningW = 10, Space = "locker" }),
                BoatEdits.Add(Boats.Wire("feed", "bank.+", "cabin-light.+", 2.5, 2, 6)),
                BoatEdits.Add(Boats.Wire("back", "bank.-", "cabin-light.-", 2.5, 2, 6)),
            ],
        };
        string[] live = [.. Boats.Plan(Boats.Small, work).Steps.SelectMany(step => step.Cautions).Where(caution => caution.Kind == CautionKind.StaysLive).Select(caution => caution.Text)];

        string bank = Assert.Single(live, text => text.StartsWith("Bank: ", StringComparison.Ordinal));
        Assert.Contains("Nearest live point: Bank, plus", bank, StringComparison.Ordinal);
        Assert.All(live, text => Assert.DoesNotContain("Cabin light", text, StringComparison.Ordinal));
    }

    // "Bar, terminal to the other, on DC volts: …".
    private static string Place(Review.Findings.Sentence detail) => detail.ToString().Split(", on DC volts")[0];
}
