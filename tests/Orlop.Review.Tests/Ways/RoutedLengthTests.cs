using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Orlop.Review.Ways;
using Xunit;

namespace Orlop.Review.Tests.Ways;

/// <summary>A cable that was given its way, and whose end has moved since.</summary>
public sealed class RoutedLengthTests
{
    private const string Check = "cable-reaches";

    private static readonly BoatModel Boat = WayBoat.Make(WayBoat.Preferences with { NewHoleM = 10 });

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public void NothingMoved_IsNoLongerThanItWasFound(int index)
    {
        CableRoute route = Boat.Routes().Routes[index];
        BoatModel routed = Routed(index);
        double nowM = RoutedLength.Of(routed.View(), routed.Find<Cable>("lamp-cable")!)!.LengthM!.Value;

        Assert.InRange(nowM, route.LengthM - (0.01 * route.Stretches.Length), route.LengthM + 1e-9);
        Assert.NotEqual(Verdict.Fails, routed.Worst(Check, "lamp-cable").Verdict);
    }

    [Fact]
    public void DemoBoat_CableGivenAnyWayThatIsFound_IsNoLongerThanThat()
    {
        BoatModel demo = ExampleBoats.Read("sandgrouse");
        WaysView view = demo.View();
        Assert.All(demo.All<Cable>().Where(cable => cable.Run.Count > 2), cable => Assert.All(RouteFinder.Find(view, cable).Routes, route =>
            Assert.InRange(RoutedLength.Of(view, route.Taken(cable))!.LengthM!.Value, 0.01, route.LengthM + 1e-9)));
    }

    // Fuse (1, 0, 1), "high" from (1, 0.8, 1.8) to (7, 0.8, 1.8), lamp from (7, 0, 1) to (7.8, 0, 1): √1.28 + 6 + √1.92 m and 5 % against √1.28 + 6 + √1.28 m and 5 %, each stretch rounded up to the centimetre: 8.68 m.
    [Fact]
    public void EndMoved_FailsByTheWaysThatItTakes()
    {
        Finding finding = Moved(0.8).Worst(Check, "lamp-cable");

        Assert.Equal(Verdict.Fails, finding.Verdict);
        Assert.Contains("along its ways it is now", finding.Headline.ToString(), StringComparison.Ordinal);
        Assert.Equal(1.05 * (Math.Sqrt(1.28) + 6 + Math.Sqrt(1.92)), finding.Working.Single(line => line.What == "Along its ways now").Value!.Value, 1e-9);
        Assert.Equal(8.68, finding.Working.Single(line => line.What == "Length one way").Value!.Value, 1e-9);
    }

    [Theory]
    [InlineData(0.1)]
    [InlineData(-0.8)]
    public void EndMovedByLittleOrNearer_DoesNotFail(double byM) =>
        Assert.NotEqual(Verdict.Fails, Moved(byM, nearer: byM < 0).Worst(Check, "lamp-cable").Verdict);

    [Theory]
    [InlineData(0.1, Verdict.Fails)]
    [InlineData(0.2, Verdict.Holds)]
    public void ItsOwnPlusMinus_CountsTwice(double plusMinusM, Verdict verdict) =>
        Assert.Equal(verdict, Moved(0.8).Change<Cable>("lamp-cable", cable => cable with { LengthM = cable.LengthM! with { PlusMinus = plusMinusM } }).Worst(Check, "lamp-cable").Verdict);

    [Fact]
    public void TypedOver_IsUnknown_AndNeverRouted_StaysAsItWas()
    {
        BoatModel typed = Moved(0.8).Change<Cable>("lamp-cable", cable => cable with { LengthM = cable.LengthM! with { Known = Knowledge.Measured } });
        BoatModel own = Moved(0.8).Change<Cable>("lamp-cable", cable => cable with { LengthM = cable.LengthM!.Value });

        Assert.Equal(Verdict.Unknown, typed.Worst(Check, "lamp-cable").Verdict);
        Assert.Equal(Verdict.Holds, own.Worst(Check, "lamp-cable").Verdict);
    }

    [Fact]
    public void NoWayLeadsThereAnyMore_IsUnknown()
    {
        Finding finding = Routed(0).Change<ElectricLoad>("lamp", lamp => lamp with { Place = new Place(7, 0, 6), Space = null }).Worst(Check, "lamp-cable");
        Assert.Equal(Verdict.Unknown, finding.Verdict);
        Assert.Contains("none leads along them", finding.Headline.ToString(), StringComparison.Ordinal);
    }

    private static BoatModel Routed(int index) => Boat.Change<Cable>("lamp-cable", Boat.Routes().Routes[index].Taken);

    private static BoatModel Moved(double byM, bool nearer = false) =>
        Routed(0).Change<ElectricLoad>("lamp", lamp => lamp with { Place = nearer ? new Place(7, -byM, 1.8) : new Place(7 + byM, 0, 1) });
}
