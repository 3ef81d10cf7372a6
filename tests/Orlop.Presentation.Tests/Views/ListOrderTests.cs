using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Validation;
using Orlop.Presentation.Views;
using Orlop.Review;
using Orlop.Review.Electrics;
using Xunit;

namespace Orlop.Presentation.Tests.Views;

/// <summary>A battery's curve: points in any order, and what is said where it does not reach.</summary>
public sealed class ListOrderTests
{
    private static readonly CultureInfo Culture = CultureInfo.GetCultureInfo("en");

    [Fact]
    public void Points_TypedInAnyOrder_AreKeptFromEmptyToFull()
    {
        ChargePoint[] typed = [new(1, 12.7), new(0, 11.8), new(0.5, 12.3)];

        Assert.Equal([0, 0.5, 1], ListOrder.Of(typed).Cast<ChargePoint>().Select(point => point.ChargeFraction));
        Assert.Equal(["b", "a"], ListOrder.Of(["b", "a"]));
    }

    [Theory]
    [InlineData(0.5, 1, "Open-circuit curve (it begins at 50\u00A0%; 30\u00A0% is needed)")]
    [InlineData(0, 0.2, "Open-circuit curve (it ends at 20\u00A0%; 30\u00A0% is needed)")]
    public void ChargeOutsideTheCurve_IsSaidWithWhatIsNeeded(double first, double last, string label)
    {
        BoatModel demo = DemoBoat.Read();
        BatteryBank bank = demo.All<BatteryBank>().First();
        BoatModel boat = new()
        {
            Things =
            [
                .. demo.Things.Select(thing => thing switch
                {
                    BatteryBank one when one.Id == bank.Id => one with { OpenCircuit = [new ChargePoint(first, 24), new ChargePoint(last, 26)] },
                    Condition condition => condition with { LowestChargeFraction = 0.3 },
                    _ => thing,
                }),
            ],
        };
        ReviewEngine engine = new([new ElectricsDiscipline()]);
        FindingsView view = new(engine.Review(boat, TestContext.Current.CancellationToken), engine.Checks, Presentation.Quantities.DisplayUnits.Metric, Culture);

        UntoldInput gap = view.Untold.Single(one => one.Input.ThingId == bank.Id && one.Input.Label == label);
        Assert.Equal("openCircuit", gap.Input.Field);
    }

    [Fact]
    public void RefusedCharge_IsSaidAsAPercentage()
    {
        BoatModel demo = DemoBoat.Read();
        BatteryBank bank = demo.All<BatteryBank>().First() with { OpenCircuit = [new ChargePoint(0.5, 24), new ChargePoint(0.3, 26)] };
        Problem problem = Assert.Single(BoatValidation.Check(demo, bank));

        Assert.EndsWith("Found: 30\u00A0%. Allowed: above 50\u00A0%.", new ProblemWords(demo, []).Of(problem), StringComparison.Ordinal);
    }
}
