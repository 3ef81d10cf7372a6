using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Work.Steps;
using Xunit;

namespace Orlop.Work.Tests.Steps;

/// <summary>What the ways of the cables say must be opened is opened once before and closed once after.</summary>
public class PanelStepTests
{
    [Theory]
    [InlineData("sampling-winch")]
    [InlineData("sampling-winch-second")]
    [InlineData("drying-locker")]
    public void Plan_EachPanelOfTheWays_IsOpenedOnceBeforeItsCablesAndClosedOnceBetweenTestsAndHandOver(string id)
    {
        WorkPack pack = DemoBoat.Pack(id);
        foreach (string panel in pack.Ways.SelectMany(way => way.ToOpen).Distinct())
        {
            int open = pack.Steps.IndexOf(Assert.Single(pack.Steps, step => step.Text.ToString() == $"Open or take off: {panel}."));
            int close = pack.Steps.IndexOf(Assert.Single(pack.Steps, step => step.Text.ToString() == $"Close again: {panel}."));
            foreach (WorkStep run in pack.Steps.Where(step => step.Kind == StepKind.Run && pack.Ways.Any(way => way.CableId == step.About[0] && way.ToOpen.Contains(panel))))
            {
                Assert.True(open < pack.Steps.IndexOf(run), $"{run.Key} before {panel} is open");
            }

            Assert.All(pack.Steps.Where(step => step.Kind is StepKind.Test or StepKind.TestFree or StepKind.Commission), test => Assert.True(pack.Steps.IndexOf(test) < close));
            Assert.True(close < pack.Steps.IndexOf(pack.Steps.Single(step => step.Key == "hand-over:record")));
        }
    }

    [Fact]
    public void Plan_OldCableBehindALining_LiningIsOpenBeforeItComesOut()
    {
        BoatModel boat = Boats.Small.WithThings(Boats.Small.Things.Select(thing => thing is Way way ? way with { Opened = "Locker lining, six screws" } : thing));
        WorkPack pack = Boats.Plan(boat, new Alteration { Id = "work", Edits = [BoatEdits.Remove(boat.Find("lamp-cable")!)] });
        Assert.Equal(["open:locker-lining-six-screws", "remove:lamp-cable", "close:locker-lining-six-screws"],
            pack.Steps.Select(step => step.Key).Where(key => key.StartsWith("open:", StringComparison.Ordinal) || key.StartsWith("remove:", StringComparison.Ordinal) || key.StartsWith("close:", StringComparison.Ordinal)));
    }

    [Fact]
    public void Plan_NothingToOpen_HasNoSuchStep() =>
        Assert.DoesNotContain(Boats.PumpPack.Steps, step => step.Key.StartsWith("open:", StringComparison.Ordinal) || step.Key.StartsWith("close:", StringComparison.Ordinal));
}
