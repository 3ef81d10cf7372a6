using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Boat.Validation;
using Orlop.Boat.Values;
using Orlop.Presentation.Views;
using Xunit;

namespace Orlop.Presentation.Tests.Views;

public sealed class ProblemWordsTests
{
    private static readonly BoatModel Demo = DemoBoat.Read();

    [Fact]
    public void Of_AThingInUseIsRemoved_NamesThingsAndFieldsAndNoPathNorId()
    {
        foreach (Thing thing in Demo.Things.Where(thing => thing is Busbar or Way or Condition))
        {
            Edit removal = new() { Id = thing.Id, Was = thing };
            BoatModel without = new() { Things = Demo.Things.Where(other => other.Id != thing.Id).ToValueList() };
            foreach (Problem problem in BoatValidation.Check(without))
            {
                string said = new ProblemWords(Demo, [removal]).Of(problem);
                Assert.DoesNotContain("things[", said, StringComparison.Ordinal);
                Assert.DoesNotContain($"'{thing.Id}", said, StringComparison.Ordinal);
                Assert.Contains($"“{thing.Title}”", said, StringComparison.Ordinal);
            }
        }
    }

    [Fact]
    public void Of_ADraftLosesWhatItRestsOn_SaysInWhichDraft()
    {
        Alteration draft = Demo.Find<Alteration>("sampling-winch")!;
        Edit fuse = draft.Edits.First(edit => edit is { Was: null, Becomes: Protection });
        Alteration without = draft with { Edits = draft.Edits.Where(edit => edit != fuse).ToValueList() };
        Edit[] edits = [BoatEdits.Replace(draft, without)];
        IReadOnlyList<Problem> problems = BoatValidation.Check(Demo, without);

        Assert.NotEmpty(problems);
        string said = new ProblemWords(Demo, edits).Of(problems);
        Assert.StartsWith("In “Sampling winch”, ", said, StringComparison.Ordinal);
        Assert.Contains($"“{fuse.Becomes!.Title}”", said, StringComparison.Ordinal);
        Assert.DoesNotContain("things[", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_ValuesThatDoNotAgree_NamesFieldsByTheirLabels()
    {
        ElectricLoad load = Demo.Find<ElectricLoad>("horn")!;
        ElectricLoad both = load with { RunningA = 5, RunningW = 60 };
        Problem problem = Assert.Single(BoatValidation.Check(Demo, both));

        Assert.Equal(
            $"{load.Title}, running current: A load gives its running power or its running current, not both. Found: running power and running current. Allowed: one of them.",
            new ProblemWords(Demo, [BoatEdits.Replace(load, both)]).Of(problem));
    }

    [Fact]
    public void WhyNotRemoved_AFuseInItsCircuit_NamesWhatUsesItAndWhatToDo()
    {
        Thing fuse = Demo.Find("main-fuse")!;
        string why = ThingUses.WhyNotRemoved(Demo, fuse)!;

        Assert.NotEmpty(ThingUses.Of(Demo, fuse.Id));
        Assert.All(ThingUses.Of(Demo, fuse.Id).Take(5), user => Assert.Contains(user.Title, why, StringComparison.Ordinal));
        Assert.Contains("take it out of its circuit", why, StringComparison.Ordinal);
    }

    [Fact]
    public void WhyNotRemoved_TellsOfExactlyTheThingsThatTheRulesWouldRefuse()
    {
        BoatModel boat = new() { Things = Demo.Things.Where(thing => thing is not Alteration and not Reading).ToValueList() };
        foreach (Thing thing in boat.Things)
        {
            BoatModel without = new() { Things = boat.Things.Where(other => other.Id != thing.Id).ToValueList() };
            Assert.Equal(BoatValidation.Check(without).Count > 0, ThingUses.WhyNotRemoved(boat, thing) is not null);
        }
    }
}
