using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Work.Bring;
using Orlop.Work.Ends;
using Orlop.Work.Paper;
using Xunit;

namespace Orlop.Work.Tests.Ends;

/// <summary>A ring of which nobody told the thread: its stud tells it, else the other rings on that stud; else one looks, and nothing of it is to buy.</summary>
public sealed class ThreadTests
{
    private const string Key = "lamp-cable.plus@to";

    [Fact]
    public void ToldNowhere_IsLookedFor()
    {
        WorkPack pack = Plan(Boats.Small);
        CableEnd end = Assert.Single(pack.Ends, end => end.Key == Key);
        Assert.True(end.IsThreadUntold);
        BringItem rings = Assert.Single(pack.Bring, item => item.What.ToString().EndsWith("thread of the stud not known", StringComparison.Ordinal));
        Assert.Equal((StockState.Look, null), (rings.State, rings.ToBuy));
        Assert.Contains("Lamp, plus", string.Join(' ', rings.Remarks), StringComparison.Ordinal);
        Assert.Contains(pack.Steps.Single(step => step.Key == "make-off:lamp-cable").Details, detail => detail.ToString().StartsWith("Lamp, plus: the thread of its stud is told neither", StringComparison.Ordinal));
        Assert.Contains("Ring, thread of the stud: look", WorkPackHtml.Render(pack, new PaperOptions(Boats.Day, "1")), StringComparison.Ordinal);
    }

    [Fact]
    public void ToldByItsStud_IsOfThatThread() =>
        Assert.Equal(5, Assert.Single(Plan(Changed<ElectricLoad>("lamp", lamp => lamp with { Studs = [new Stud("+", 5)] })).Ends, end => end.Key == Key).StudMm);

    [Fact]
    public void ToldByTheOtherRingOnTheStud_IsOfThatThread()
    {
        BoatModel boat = Boats.Small.WithThings([.. Boats.Small.Things, Boats.Wire("second", "fuse-block.out", "lamp.+", 4, 1, 8)]);
        Assert.Equal(8, Assert.Single(Plan(boat).Ends, end => end.Key == Key).StudMm);
    }

    // Two rings of two threads cannot lie on one stud: one of them is wrong, and neither tells.
    [Fact]
    public void ToldOtherwiseByTwoRings_IsNotTold()
    {
        BoatModel boat = Boats.Small.WithThings([.. Boats.Small.Things, Boats.Wire("second", "fuse-block.out", "lamp.+", 4, 1, 8), Boats.Wire("third", "fuse-block.out", "lamp.+", 4, 1, 6)]);
        Assert.True(Assert.Single(Plan(boat).Ends, end => end.Key == Key).IsThreadUntold);
    }

    private static BoatModel Changed<T>(string id, Func<T, T> becomes)
        where T : Thing => Boats.Small.WithThings(Boats.Small.Things.Select(thing => thing is T one && one.Id == id ? becomes(one) : thing));

    private static WorkPack Plan(BoatModel boat)
    {
        Cable was = boat.Find<Cable>("lamp-cable")!;
        Cable becomes = was with { AreaMm2 = 2.5, Cores = [was.Cores[0] with { ToEnd = new Termination(TerminationMeans.Ring, null) }, was.Cores[1]] };
        return Boats.Plan(boat, new Alteration { Id = "work", Edits = [BoatEdits.Replace(was, becomes)] });
    }
}
