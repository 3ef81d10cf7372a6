using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Work.Loading;
using Xunit;

namespace Orlop.Work.Tests.Loading;

/// <summary>In which condition a boat is measured after the work, and why.</summary>
public sealed class MeasuringLoadingTests
{
    // The survey of October was made with one of the crew on deck: so is she loaded in one condition.
    [Fact]
    public void Loading_IsThatOfTheLatestSurvey()
    {
        WorkPack pack = DemoBoat.Pack("sampling-winch");
        Assert.Equal(("commissioning", 1), (pack.Weights.Condition!.Id, pack.Weights.PeopleAboardCount));
        Assert.Contains(pack.Steps.Single(step => step.Key == "freeboards:after").Details, detail => detail.ToString().StartsWith("That is who and what was carried at “Freeboards at the jetty, October”", StringComparison.Ordinal));
    }

    // Made with two of crew, stores and a bag of ice, as at anchor: she is loaded so again.
    [Fact]
    public void Loading_OfASurveyWithPeople_IsTheConditionNearestToIt()
    {
        BoatModel boat = DemoBoat.Read();
        FreeboardSurvey survey = boat.Find<FreeboardSurvey>("october-freeboards")!;
        AboardItem Item(string id, double massKg) => new(id, massKg, new Place(5, 0, 1)) { DeviationKg = 5, IsCarried = true };
        BoatModel manned = With(boat, survey with { Aboard = [.. survey.Aboard.Where(item => boat.Find(item.Id) is not Deadweight), Item("crew", 165), Item("stores", 60), Item("ice", 25)] });
        WeighingPlan plan = Boats.Plan(manned, Ballast(60)).Weights;

        Assert.Equal("at-anchor", plan.Condition!.Id);
        Assert.Contains("is the loading nearest to “Freeboards at the jetty, October”", plan.WhyLoaded!.ToString(), StringComparison.Ordinal);
        Assert.Contains("5 Kg differ", plan.WhyLoaded.ToString(), StringComparison.Ordinal);
    }

    // No survey: nobody aboard, nothing on the hook.
    [Fact]
    public void Loading_WithoutASurvey_IsThatWithTheFewestPeople()
    {
        BoatModel boat = DemoBoat.Read();
        WeighingPlan plan = Boats.Plan(boat.WithThings(boat.Things.Where(thing => thing is not FreeboardSurvey)), Ballast(60)).Weights;

        Assert.Equal("on-shore-power", plan.Condition!.Id);
        Assert.Contains("few people and little aboard", plan.WhyLoaded!.ToString(), StringComparison.Ordinal);
    }

    private static Alteration Ballast(double massKg) => new()
    {
        Id = "ballast",
        Name = "Ballast",
        Edits = [BoatEdits.Add(new Gear { Id = "pigs", Name = "Pigs of iron", MassKg = new Quantity(massKg, Knowledge.Measured, 1), Place = new Place(4.6, 0, 0.6) })],
    };

    private static BoatModel With(BoatModel boat, params Thing[] more) => boat.WithThings([.. boat.Things.Where(thing => more.All(other => other.Id != thing.Id)), .. more]);
}
