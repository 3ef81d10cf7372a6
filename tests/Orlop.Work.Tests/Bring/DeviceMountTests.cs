using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Work.Bring;
using Orlop.Work.Paper;
using Xunit;

namespace Orlop.Work.Tests.Bring;

/// <summary>A fuse of another form (ISO 8820-3 blade, ISO 8820-5 strip, IEC 60269 link) goes into no holder of the old one; a breaking capacity at AC says nothing of DC.</summary>
public class DeviceMountTests
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
    public void FuseForABreaker_TakesTheHolderOut_MakesTheEndsAnew_AndReadsAcrossThem()
    {
        WorkPack pack = Breaker();
        string[] keys = [.. pack.Steps.Select(step => step.Key)];
        string[] own = ["take-out:main-fuse", "exchange:main-fuse", "make-off:main-fuse", "connect:main-fuse", "switch-on:main-fuse"];
        Assert.Equal(own, keys.Where(own.Contains));
        Assert.Equal("exchange:main-fuse", Assert.Single(pack.Steps, step => step.Builds.Contains("main-fuse")).Key);
        Assert.Equal("Exchange Main fuse: fuse out, breaker in.", pack.Steps.Single(step => step.Key == "exchange:main-fuse").Text.ToString());
        Assert.Contains("bank-fuse; fuse-isolator", string.Join(' ', pack.Steps.Single(step => step.Key == "take-out:main-fuse").Details), StringComparison.Ordinal);

        Assert.Equal(["bank-fuse.one@to", "fuse-isolator.one@from"], pack.Ends.Select(end => end.Key));
        Assert.Equal(["bank-fuse.one@to", "fuse-isolator.one@from"], pack.Steps.Single(step => step.Key == "make-off:main-fuse").Ends);
        Assert.Equal(["bank-fuse.one", "fuse-isolator.one", "main-fuse"], pack.Readings.Select(reading => reading.Key).Where(key => key.Contains("/drop/", StringComparison.Ordinal)).Select(key => key.Split('/')[^1]).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void FuseForABreaker_BringsItsPlaceAndScrews_AndStandsInTheDiagram()
    {
        WorkPack pack = Breaker();
        BringItem place = Assert.Single(pack.Bring, item => item.Key == "place:main-fuse");
        Assert.Equal(StockState.Look, place.State);
        Assert.Contains("cut-out", place.What.ToString(), StringComparison.Ordinal);
        Assert.Equal(4, pack.Bring.Single(item => item.Key == "screws").Needed!.Value);
        string html = WorkPackHtml.Render(pack, new PaperOptions(Boats.Day, "1"));
        Assert.Contains("id=\"drawing\"", html, StringComparison.Ordinal);
        Assert.Contains("href=\"#drawing\"", html, StringComparison.Ordinal);
        Assert.Contains("Main fuse", html[html.IndexOf("id=\"drawing\"", StringComparison.Ordinal)..], StringComparison.Ordinal);
    }

    // What was crimped on for the old holder says nothing of the new terminals: until a stud is told, what is to be bought is not known.
    [Fact]
    public void FuseForABreaker_EndsAreThoseOfItsStuds_ElseNotGiven()
    {
        Assert.All(Breaker().Ends, end => Assert.Null(end.Means));
        Assert.Contains(Breaker().Bring, item => item.Key.StartsWith("termination:", StringComparison.Ordinal) && item.State == StockState.Look && item.Needed!.Value == 2);
        Assert.All(Breaker(new Stud("in", 6), new Stud("out", 6)).Ends, end => Assert.Equal((TerminationMeans.Ring, 6), (end.Means, end.StudMm)));
    }

    [Fact]
    public void BreakerForABreaker_IsSetAnewWhereItCanBe_AndStandsInTheDiagram()
    {
        BoatModel boat = Boats.Small.WithThings(Boats.Small.Things.Select(thing => thing is Protection { Id: "main-fuse" } fuse ? fuse with { Means = ProtectionMeans.Breaker } : thing));
        Protection old = boat.Find<Protection>("main-fuse")!;
        WorkPack pack = Boats.Plan(boat, new Alteration { Id = "work", Edits = [BoatEdits.Replace(old, old with { RatedA = 80 })] });
        Assert.Contains("set it anew", StepOf(pack), StringComparison.Ordinal);
        Assert.DoesNotContain(pack.Steps, step => step.Key == "take-out:main-fuse");
        Assert.Contains("id=\"drawing\"", WorkPackHtml.Render(pack, new PaperOptions(Boats.Day, "1")), StringComparison.Ordinal);
    }

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

    // Made a breaker on its sheet, a fuse keeps the gates it named: they are not told of the breaker.
    [Fact]
    public void BreakerThatNamesTheGatesOfAFuse_IsNotCalledOne()
    {
        Protection old = Boats.Small.Find<Protection>("main-fuse")!;
        WorkPack PackOf(string gates) => Boats.Plan(Boats.Small, new Alteration { Id = "work", Edits = [BoatEdits.Replace(old, old with { Means = ProtectionMeans.Breaker, RatedA = 15, Gates = gates })] });
        string Bought(WorkPack pack) => Assert.Single(pack.Bring, item => item.Kind == BringKind.Device && item.For.Contains("main-fuse")).What.ToString();

        Assert.Contains("type C (IEC 60898-1)", Bought(PackOf("breaker-c")), StringComparison.Ordinal);
        WorkPack pack = PackOf("blade-type-c");
        Assert.All([Bought(pack), StepOf(pack)], said => Assert.DoesNotContain("Blade fuse", said, StringComparison.Ordinal));
    }

    private static string StepOf(WorkPack pack) => string.Join(' ', pack.Steps.Single(step => step.Builds.Contains("main-fuse")).Details);

    private static WorkPack Breaker(params Stud[] studs)
    {
        Protection old = Boats.Small.Find<Protection>("main-fuse")!;
        return Boats.Plan(Boats.Small, new Alteration { Id = "work", Edits = [BoatEdits.Replace(old, old with { Means = ProtectionMeans.Breaker, RatedA = 80, Studs = [.. studs] })] });
    }

    private static WorkPack Exchanged(string? was, string? becomes)
    {
        BoatModel boat = Boats.Small.WithThings(Boats.Small.Things.Select(thing => thing is Protection { Id: "main-fuse" } fuse ? fuse with { Gates = was } : thing));
        Protection old = boat.Find<Protection>("main-fuse")!;
        return Boats.Plan(boat, new Alteration { Id = "work", Edits = [BoatEdits.Replace(old, old with { RatedA = 80, RatedV = 250, BreakingA = 25000, Gates = becomes })] });
    }
}
