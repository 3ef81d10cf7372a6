using CsCheck;
using Orlop.Electrics.Heat;
using Xunit;

namespace Orlop.Electrics.Tests.Heat;

public sealed class SpaceHeatTests
{
    // Closed form: a closed box is P/(U A) over what is around it.
    [Fact]
    public void ClosedBox_IsHeatOverConductance() =>
        Assert.Equal(30 + (150 / 5.5), Steady(Box with { Openings = [], Sides = [new SpaceSide("sides", 5.5, 30)] }).InsideC, 1e-9);

    // Closed form: a fan that moves Q takes ρ cp Q for each kelvin.
    [Fact]
    public void Fan_TakesItsAirsHeat()
    {
        SpaceRest rest = Steady(Box with { Openings = [], FanM3PerH = 60 });
        Assert.Equal(30 + (150 / (353.05 / 303.15 * 1006 * 60 / 3600)), rest.InsideC, 1e-9);
        Assert.Equal(60, rest.FlowM3PerH, 1e-9);
    }

    // Closed form: with areas A₁ low and A₂ high, h apart, the neutral level is h/(1 + (A₁/A₂)²) over the low one, and the draught that of 1/Ae² = 1/A₁² + 1/A₂².
    [Theory]
    [InlineData(0.01, 0.01, 0.5)]
    [InlineData(0.01, 0.03, 1.2)]
    [InlineData(0.05, 0.02, 0.3)]
    public void TwoOpenings_HaveTheirNeutralLevel(double low, double high, double apart)
    {
        double effective = 1 / Math.Sqrt((1 / (low * low)) + (1 / (high * high))), level = NaturalDraught.NeutralLevelM(low, high, apart);
        Assert.Equal(effective * Math.Sqrt(apart), NaturalDraught.Coefficient([new AirOpening(low, 2), new AirOpening(high, 2 + apart)]), 1e-12);
        Assert.Equal(low * Math.Sqrt(level), high * Math.Sqrt(apart - level), 1e-12);
    }

    // Three openings: the level at which as much comes in as goes out, sought by itself in small steps.
    [Fact]
    public void ThreeOpenings_TakeInWhatTheyLetOut()
    {
        AirOpening[] openings = [new(0.01, 0), new(0.006, 0.4), new(0.012, 1)];
        double found = NaturalDraught.Coefficient(openings);
        double level = Enumerable.Range(1, 99_999).Select(step => step / 1e5).MinBy(at => Math.Abs(openings.Sum(opening => opening.AreaM2 * Math.Sign(opening.HeightM - at) * Math.Sqrt(Math.Abs(opening.HeightM - at)))));
        Assert.Equal(openings.Where(opening => opening.HeightM > level).Sum(opening => opening.AreaM2 * Math.Sqrt(opening.HeightM - level)), found, 1e-6);
    }

    [Fact]
    public void OpeningsAtOneHeight_DrawNothing()
    {
        Assert.Equal(0, NaturalDraught.Coefficient([new AirOpening(0.01, 1), new AirOpening(0.02, 1)]));
        Assert.Equal(0, NaturalDraught.Coefficient([]));
        Assert.Equal("no heat can leave box", SpaceHeat.Steady(Input(Box with { Openings = [new AirOpening(0.01, 1)] })).WhyNone);
    }

    // What is asked for is what keeps the limit.
    [Fact]
    public void OpeningNeeded_KeepsTheLimit()
    {
        double needed = SpaceHeat.OpeningNeededM2(150 - (2 * 20), 50, 30, 0.6)!.Value;
        HeatedSpace box = Box with { Openings = [new AirOpening(needed, 0), new AirOpening(needed, 0.6)], Sides = [new SpaceSide("sides", 2, 30)] };
        Assert.Equal(50, Steady(box).InsideC, 1e-8);
        Assert.Equal(0, SpaceHeat.OpeningNeededM2(-1, 50, 30, 0.6));
        Assert.Null(SpaceHeat.OpeningNeededM2(10, 30, 30, 0.6));
    }

    // A space that stands in another: what it loses the other gets, and both lose to the air.
    [Fact]
    public void SpaceInASpace_IsTheClosedForm()
    {
        HeatedSpace inner = new() { Id = "inner", HeatW = 30, Sides = [new SpaceSide("lining", 2, null, "outer")] };
        HeatedSpace outer = new() { Id = "outer", HeatW = 50, Sides = [new SpaceSide("hull", 10, 20)] };
        SpaceHeatResult result = SpaceHeat.Steady(new SpaceHeatInput("both", [inner, outer]));
        Assert.Equal(20 + (80.0 / 10), result.Spaces[1].InsideC, 1e-9);
        Assert.Equal(28 + (30.0 / 2), result.Spaces[0].InsideC, 1e-9);
    }

    // Air alone and 20 kJ/K: the moment it is within a share of its rise follows from the integral of C dT over what is left of the heat.
    [Fact]
    public void Response_OfADraught_IsItsIntegral()
    {
        HeatedSpace box = Box with { CapacityJPerK = 20_000 };
        ThermalResponseResult response = SpaceHeat.Response(Input(box), 30);
        double rest = response.Rest.NodeC[0], sought = 30 + (0.632 * (rest - 30)), integral = 0;
        AirExchangeBranch air = SpaceHeat.Network(Input(box)).Branches.OfType<AirExchangeBranch>().Single();
        const int steps = 200_000;
        for (int step = 0; step < steps; step++)
        {
            double inside = 30 + ((sought - 30) * (step + 0.5) / steps);
            integral += 20_000 * (sought - 30) / steps / (150 - air.HeatW(inside, 30));
        }

        Assert.Equal(1, response.TimeToS(0, 0.632)!.Value / integral, 1e-3);
    }

    private static readonly Gen<HeatedSpace> Boxes =
        from heat in Gen.Double[1, 500]
        from low in Gen.Double[0.0005, 0.05]
        from high in Gen.Double[0.0005, 0.05]
        from apart in Gen.Double[0.05, 2]
        from sides in Gen.Double[0, 10]
        from air in Gen.Double[-20, 45]
        from beyond in Gen.Double[-20, 60]
        from fan in Gen.OneOf(Gen.Const(0.0), Gen.Double[1, 200])
        select new HeatedSpace
        {
            Id = "box",
            HeatW = heat,
            AirC = air,
            FanM3PerH = fan,
            Openings = [new AirOpening(low, 0), new AirOpening(high, apart)],
            Sides = [new SpaceSide("sides", sides, beyond)],
        };

    [Fact]
    public void Random_BalanceOfHeat_IsKept() => Boxes.Sample(box =>
    {
        SpaceHeatResult result = SpaceHeat.Steady(Input(box));
        if (result.WhyNone is null)
        {
            SpaceRest rest = result.Spaces.Single();
            Assert.Equal(box.HeatW, rest.AirW + rest.SidesW, 1e-9 * (box.HeatW + Math.Abs(rest.AirW) + Math.Abs(rest.SidesW)));
        }
    }, iter: 500);

    // Sides no warmer than the air, else more air may bring less heat out and an opening let warm air in.
    [Fact]
    public void Random_MoreOpening_IsNeverHotter() => Same(box => box with { Openings = [box.Openings[0] with { AreaM2 = box.Openings[0].AreaM2 * 1.3 }, box.Openings[1]] }, isWarmer: false);

    [Fact]
    public void Random_LargerFan_IsNeverHotter() => Same(box => box with { FanM3PerH = box.FanM3PerH + 20 }, isWarmer: false);

    [Fact]
    public void Random_AddedSource_IsNeverCooler() => Same(box => box with { HeatW = box.HeatW + 10 }, isWarmer: true);

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(-1)]
    public void ImpossibleHeat_IsRefused(double heat) => Assert.Throws<ArgumentOutOfRangeException>(() => SpaceHeat.Steady(Input(Box with { HeatW = heat })));

    private static HeatedSpace Box { get; } = new() { Id = "box", HeatW = 150, AirC = 30, Openings = [new AirOpening(0.01, 0), new AirOpening(0.01, 0.5)] };

    private static void Same(Func<HeatedSpace, HeatedSpace> change, bool isWarmer) => Boxes.Sample(drawn =>
    {
        HeatedSpace box = drawn with { Sides = [drawn.Sides[0] with { OutsideC = drawn.AirC }] };
        SpaceHeatResult before = SpaceHeat.Steady(Input(box)), after = SpaceHeat.Steady(Input(change(box)));
        if (before.WhyNone is null && after.WhyNone is null)
        {
            double was = before.Spaces.Single().InsideC, becomes = after.Spaces.Single().InsideC;
            Assert.True(isWarmer ? becomes >= was - 1e-8 : becomes <= was + 1e-8);
        }
    }, iter: 300);

    private static SpaceRest Steady(HeatedSpace space) => SpaceHeat.Steady(Input(space)).Spaces.Single();

    private static SpaceHeatInput Input(HeatedSpace space) => new(space.Id, [space]);
}
