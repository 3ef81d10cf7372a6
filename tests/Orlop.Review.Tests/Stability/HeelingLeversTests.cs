using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Review.Stability;
using Orlop.Review.Tests.Stability.Checks;
using Xunit;

namespace Orlop.Review.Tests.Stability;

public sealed class HeelingLeversTests
{
    // lw1 = 504·A·Z/(9.81·mass), Res. A.749(18) 3.2: 12 m² whose centre is 2 m above half the draught of 0.8 m, mass 32 800 kg; gust 1.5 times that.
    [Fact]
    public void Wind_IsLevelAndMeetsTheLeversWhereTheCriterionSays()
    {
        StabilityView view = JudgedBox.Of(JudgedBox.Rules(StabilityRule.Weather) with { WindAreaM2 = 12, WindCentreM = 2.4 }).View();
        HeelingLever[] levers = [.. HeelingLevers.Of(view, view.Conditions[0], 1)];

        double steady = 504 * 12 * 2 / (9.81 * JudgedBox.MassKg);
        Assert.Equal([HeelingCause.SteadyWind, HeelingCause.Gust], levers.Select(lever => lever.Cause));
        Assert.All(levers[0].Points, point => Assert.Equal(steady, point.LeverM, 1e-9));
        Assert.All(levers[1].Points, point => Assert.Equal(1.5 * steady, point.LeverM, 1e-9));
        // A wall-sided box: GZ = sin φ·(GM + BM·tan²φ/2), Scribanti.
        double heel = levers[0].MeetsDeg!.Value * Math.PI / 180;
        Assert.Equal(steady, Math.Sin(heel) * (JudgedBox.GmM + (JudgedBox.BmM * Math.Pow(Math.Tan(heel), 2) / 2)), 1e-4);
    }

    // Moved from the middle to 1.8 m off it, 0.2 m inside the deck edge: 4 × 75 kg · 1.8 m · cos φ over the displacement.
    [Fact]
    public void People_TakeTheirMomentFromTheLevers()
    {
        StabilityView view = JudgedBox.Of(JudgedBox.Rules(StabilityRule.SmallCraft) with { PeopleCount = 4 }, JudgedBox.Aboard("crew", DeadweightUse.People, 75, 5, 0, 2, count: 4)).View();
        HeelingLever people = Assert.Single(HeelingLevers.Of(view, view.Conditions[0], 1));

        Assert.Equal("4", people.Subject);
        Assert.All(people.Points.Where(point => point.HeelDeg <= 40), point => Assert.Equal(300 * 1.8 * Math.Cos(point.HeelDeg * Math.PI / 180) / (JudgedBox.MassKg + 300), point.LeverM, 1e-6));
        Assert.InRange(people.MeetsDeg!.Value, 0.5, 3);
    }

    [Fact]
    public void NoRuleOrNoWindArea_DrawsNothing()
    {
        StabilityView none = JudgedBox.Of(JudgedBox.Rules(StabilityRule.GeneralIntact)).View(), noArea = JudgedBox.Of(JudgedBox.Rules(StabilityRule.Weather)).View();
        Assert.Empty(HeelingLevers.Of(none, none.Conditions[0], 1));
        Assert.Empty(HeelingLevers.Of(noArea, noArea.Conditions[0], -1));
    }

    // Hung at (5, -1, 4): the levers once it is let go are those of the box without it.
    [Fact]
    public void HungWeight_ShowsTheLeversWithoutIt()
    {
        BoatModel boat = JudgedBox.Of(JudgedBox.Aboard("net", DeadweightUse.Hung, 400, 5, -1, 4));
        StabilityView view = boat.View(), without = JudgedBox.Of().View();
        HeelingLever hung = Assert.Single(HeelingLevers.Of(view, view.Conditions[0], 1));

        Assert.Equal(without.FloatingIn(without.Conditions[0])!.Starboard.At(20)!.GzM, hung.Points.Single(point => point.HeelDeg == 20).LeverM, 1e-6);
        Assert.Equal(view.FloatingIn(view.Conditions[0])!.Rest.Position!.Attitude.HeelDeg, hung.MeetsDeg!.Value, 1e-6);
        Assert.Null(Assert.Single(HeelingLevers.Of(view, view.Conditions[0], -1)).MeetsDeg);
    }
}
