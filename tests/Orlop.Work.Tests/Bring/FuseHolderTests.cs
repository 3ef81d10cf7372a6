using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Work.Bring;
using Xunit;

namespace Orlop.Work.Tests.Bring;

/// <summary>A fuse of another form (ISO 8820-3 blade, ISO 8820-5 strip, IEC 60269 link) goes into no holder of the old one; a breaking capacity at AC says nothing of DC.</summary>
public class FuseHolderTests
{
    [Fact]
    public void Exchange_BladeForLink_BringsAHolderAndMakesItsEndsAnew()
    {
        WorkPack pack = Exchanged("blade-type-c", "link-gg");
        BringItem holder = Assert.Single(pack.Bring, item => item.Key == "holder:80");
        Assert.Contains(holder.Remarks, remark => remark.ToString().Contains("a holder for it", StringComparison.Ordinal) && remark.ToString().Contains("fuse-isolator", StringComparison.Ordinal));
        string step = StepOf(pack);
        Assert.All(["Exchange the holder too", "Make the ends on it anew", "bank-fuse", "Look at the new holder"], words => Assert.Contains(words, step, StringComparison.Ordinal));
        Assert.DoesNotContain("Holder only", step, StringComparison.Ordinal);
    }

    [Fact]
    public void Exchange_SameForm_KeepsTheHolder()
    {
        WorkPack pack = Exchanged("link-gg", "link-gg");
        Assert.DoesNotContain(pack.Bring, item => item.Key == "holder:80");
        Assert.Contains("The holder stays", StepOf(pack), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(null, "link-gg")]
    [InlineData("link-gg", null)]
    public void Exchange_FormOfOneNotTold_SaysToLook(string? was, string? becomes) =>
        Assert.Contains("Nobody has said of what form", StepOf(Exchanged(was, becomes)), StringComparison.Ordinal);

    [Fact]
    public void Spec_OnDc_SaysDcOfVoltageAndBreakingCapacityInListCsvAndStep()
    {
        WorkPack pack = Exchanged("blade-type-c", "link-gg");
        string line = Assert.Single(pack.Bring, item => item.Kind == BringKind.Fuse && item.For.Contains("main-fuse")).What.ToString();
        Assert.All([line, StepOf(pack)], said =>
        {
            Assert.Contains("250 V DC", said, StringComparison.Ordinal);
            Assert.Contains("A at DC", said, StringComparison.Ordinal);
        });
        Assert.All(DemoBoat.Pack("sampling-winch").Bring.Where(item => item.Kind == BringKind.Fuse), item => Assert.Contains("V DC", item.What.ToString(), StringComparison.Ordinal));
    }

    [Fact]
    public void Spec_OnAc_SaysAc()
    {
        BoatModel boat = DemoBoat.Read();
        Protection was = boat.Find<Protection>("kettle-breaker")!;
        Alteration work = new() { Id = "work", Edits = [BoatEdits.Replace(was, was with { RatedA = 13 })] };
        BringItem item = Assert.Single(Boats.Plan(boat, work).Bring, item => item.For.Contains("kettle-breaker") && item.Kind == BringKind.Device);
        Assert.Contains("V AC", item.What.ToString(), StringComparison.Ordinal);
        Assert.Contains("A at AC", item.What.ToString(), StringComparison.Ordinal);
    }

    private static string StepOf(WorkPack pack) => string.Join(' ', pack.Steps.Single(step => step.Builds.Contains("main-fuse")).Details);

    private static WorkPack Exchanged(string? was, string? becomes)
    {
        BoatModel boat = Boats.Small.WithThings(Boats.Small.Things.Select(thing => thing is Protection { Id: "main-fuse" } fuse ? fuse with { Gates = was } : thing));
        Protection old = boat.Find<Protection>("main-fuse")!;
        return Boats.Plan(boat, new Alteration { Id = "work", Edits = [BoatEdits.Replace(old, old with { RatedA = 80, RatedV = 250, BreakingA = 25000, Gates = becomes })] });
    }
}
