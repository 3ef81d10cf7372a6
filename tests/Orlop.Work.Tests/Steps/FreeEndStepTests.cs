using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Work.Steps;
using Xunit;

namespace Orlop.Work.Tests.Steps;

/// <summary>Continuity and insulation are measured while both ends are free; what is not free is named.</summary>
public class FreeEndStepTests
{
    public static TheoryData<string> Alterations => [.. DemoBoat.Alterations];

    [Theory]
    [MemberData(nameof(Alterations))]
    public void Plan_OfADemoAlteration_KindsOfStepsComeInOrder(string alteration)
    {
        StepKind[] kinds = [.. DemoBoat.Pack(alteration).Steps.Select(step => step.Kind)];
        Assert.Equal(kinds.Order(), kinds);
    }

    [Theory]
    [MemberData(nameof(Alterations))]
    public void Plan_OfADemoAlteration_TestsFreeEndsBeforeConnectingAndPolarityAfter(string alteration)
    {
        string[] keys = [.. DemoBoat.Pack(alteration).Steps.Select(step => step.Key)];
        int First(string start) => Array.FindIndex(keys, key => key.StartsWith(start, StringComparison.Ordinal));
        int Last(string start) => Array.FindLastIndex(keys, key => key.StartsWith(start, StringComparison.Ordinal));
        Assert.InRange(First("test:continuity"), Last("make-off:") + 1, First("connect:") - 1);
        Assert.InRange(First("test:insulation"), First("test:continuity") + 1, First("connect:") - 1);
        Assert.InRange(First("test:open"), Last("connect:") + 1, First("test:polarity") - 1);
    }

    [Fact]
    public void Plan_OnlyOneEndChanges_TheOthersAreLiftedForTheTestsAndNotMadeOffAgain()
    {
        WorkPack pack = Boats.Plan(Boats.Small, Rewired);
        WorkStep joined = pack.Steps.Single(step => step.Key == "test:continuity");
        Assert.Contains(joined.Details, detail => detail.ToString() == "Lift first, and put back when it is connected: lamp-cable, minus core, off Minus bar.");
        Assert.Equal(3, joined.Details.Count(detail => detail.ToString().StartsWith("Lift first", StringComparison.Ordinal)));
        Assert.Contains(pack.Steps.Single(step => step.Key == "test:insulation").Details, detail => detail.ToString().Contains("bonded to the hull", StringComparison.Ordinal));
        Assert.Equal(["lamp-cable.plus@from"], pack.Steps.Single(step => step.Key == "make-off:lamp-cable").Ends);
        Assert.Equal(3, pack.Ends.Count(end => end.IsKept));
    }

    [Fact]
    public void Plan_CableIsNew_NothingIsToBeLifted() =>
        Assert.DoesNotContain(Boats.PumpPack.Steps.Single(step => step.Key == "test:continuity").Details, detail => detail.ToString().Contains("Lift", StringComparison.Ordinal));

    [Fact]
    public void Plan_CableIsBuiltAlready_SaysThatItIsConnected() => Assert.Contains(
        DemoBoat.Pack("drying-locker").Steps.Single(step => step.Key == "test:continuity").Details,
        detail => detail.ToString().StartsWith("Recorded as built, so connected: Drying locker feed; Thermostat to fan heater.", StringComparison.Ordinal));

    [Fact]
    public void Plan_ContinuityStep_SaysThatItJudgesNoCrimp()
    {
        WorkStep step = Boats.PumpPack.Steps.Single(step => step.Key == "test:continuity");
        Assert.Contains(step.Details, detail => detail.ToString().Contains("says nothing of the crimps", StringComparison.Ordinal) && detail.ToString().Contains("millivolt readings under load", StringComparison.Ordinal));
    }

    // The lamp's plus goes to the isolator's outlet; its three other ends stay.
    private static Alteration Rewired
    {
        get
        {
            Cable was = Boats.Small.Find<Cable>("lamp-cable")!;
            return new Alteration { Id = "work", Edits = [BoatEdits.Replace(was, was with { Cores = [was.Cores[0] with { From = Terminal.Parse("isolator.out") }, was.Cores[1]] })] };
        }
    }
}
