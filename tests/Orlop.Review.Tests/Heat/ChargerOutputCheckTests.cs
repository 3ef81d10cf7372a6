using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Review.Tests.Heat;

/// <summary>
/// A charger of 20 A at 14.4 V in a locker of 2 W/K at 19.95 °C outside. By hand: 20 × 14.4 × (1/0.9 - 1) = 32 W of its own make 35.95 °C; from 30 °C it loses 0.02 a kelvin: a reckoned temperature counts to the next tenth upwards, 1 - 0.02 × 6 = 0.88, 17.6 A.
/// </summary>
public sealed class ChargerOutputCheckTests
{
    private const string Check = "charger-output";

    private static readonly BoatModel Locker = SmallBoat.OneLamp()
        .Change<Condition>("in-use", condition => condition with { OutsideC = 19.95, EngineRuns = true })
        .Change<Space>("cabin", cabin => cabin with { Walls = [new SpaceWall("all round", 1, 2)], IsReckoned = true })
        .Change<Cable>("lamp-cable", cable => cable with { Run = [new RunLeg { Space = "passage", LengthM = 2 }] })
        .With(
            new Space { Id = "passage", Use = SpaceUse.Dry, From = new Place(4, -1, 0), To = new Place(6, 1, 2), AmbientC = 25 },
            new Charger { Id = "charger", Drive = ChargerDrive.Engine, LimitA = 20, SetpointV = 14.4, EfficiencyFraction = 0.9, Space = "cabin", FullRatingC = 30, LostPerKFraction = 0.02, MostAmbientC = 60 },
            new Link { Id = "charger-plus", From = new Terminal("charger", "+"), To = new Terminal("bank", "+"), LengthM = 0.05, ResistanceOhm = 0.0002 },
            new Link { Id = "charger-minus", From = new Terminal("charger", "-"), To = new Terminal("bank", "-"), LengthM = 0.05, ResistanceOhm = 0.0002 });

    private static BoatModel With(Func<Charger, Charger> change) => Locker.Change("charger", change);

    private static double GivesA(BoatModel boat) => boat.Worst(Check, "charger").Working.Single(line => line.What == "It gives").Value!.Value;

    [Fact]
    public void ItsOwnHeat_WarmsItsSpace_AndTakesFromIt()
    {
        Finding finding = Locker.Worst(Check, "charger");
        Assert.Equal(Verdict.Tight, finding.Verdict);
        Assert.Equal(17.6, GivesA(Locker), 1e-9);
    }

    [Theory]
    [InlineData(36, Verdict.Holds)]
    [InlineData(35.9, Verdict.Tight)]
    public void FullRatingC_IsTheEdge(double fullC, Verdict verdict) => Assert.Equal(verdict, With(charger => charger with { FullRatingC = fullC }).Worst(Check, "charger").Verdict);

    [Theory]
    [InlineData(0.2, 60)]
    [InlineData(0.02, 35)]
    public void WhereNothingIsLeft_Fails(double lostPerK, double mostC) =>
        Assert.Equal(Verdict.Fails, With(charger => charger with { LostPerKFraction = lostPerK, MostAmbientC = mostC }).Worst(Check, "charger").Verdict);

    [Fact]
    public void MissingInput_IsUnknownAndNamed()
    {
        With(charger => charger with { LostPerKFraction = null }).Worst(Check, "charger").IsUnknownFor("charger", "lostPerKFraction");
        With(charger => charger with { EfficiencyFraction = null }).Worst(Check, "charger").IsUnknownFor("charger", "efficiencyFraction");
        With(charger => charger with { Space = null }).Worst(Check, "charger").IsUnknownFor("charger", "space");
        Locker.Change<Condition>("in-use", condition => condition with { OutsideC = null }).Worst(Check, "charger").IsUnknownFor("in-use", "outsideC");
    }

    [Fact]
    public void ThatSaysNothing_OrDoesNotWork_HasNoFinding()
    {
        Assert.DoesNotContain(With(charger => charger with { FullRatingC = null, MostAmbientC = null }).Findings(), pair => pair.CheckId == Check);
        Assert.DoesNotContain(With(charger => charger with { Drive = ChargerDrive.Sun }).Findings(), pair => pair.CheckId == Check);
    }

    // Warmer outside, or more lost a kelvin: never more.
    [Fact]
    public void Properties_WarmerIsNeverMore()
    {
        double[] gives = [.. Enumerable.Range(0, 12).Select(step => GivesA(Locker.Change<Condition>("in-use", condition => condition with { OutsideC = 5.0 * step - 5 })))];
        Assert.Equal([.. gives.OrderDescending()], gives);
        Assert.Equal(20, gives[0]);
        Assert.Equal(0, gives[^1]);
    }

    // Conductors are held against its full output: its space may be cool.
    [Fact]
    public void Conductors_CarryItsFullOutput()
    {
        BoatModel wired = Locker.Without("charger-plus").With(new Cable
        {
            Id = "charger-cable",
            AreaMm2 = 6,
            InsulationC = 90,
            LengthM = 1,
            Cores = [SmallBoat.Core("plus", "charger.+", "bank.+")],
            Run = [new RunLeg { Space = "passage", LengthM = 1 }],
        });
        Assert.Equal(
            wired.Change<Charger>("charger", charger => charger with { FullRatingC = null, MostAmbientC = null }).Worst("conductor-ampacity", "charger-cable").UseFraction!.Value,
            wired.Worst("conductor-ampacity", "charger-cable").UseFraction!.Value, 1e-9);
    }
}
