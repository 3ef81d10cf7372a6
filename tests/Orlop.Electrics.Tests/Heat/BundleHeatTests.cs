using CsCheck;
using Orlop.Electrics.Heat;
using Xunit;

namespace Orlop.Electrics.Tests.Heat;

public sealed class BundleHeatTests
{
    private const double AmbientC = 30;

    // Closed form: what one cylinder sets free goes through its insulation, then from its surface; written down here by itself.
    [Theory]
    [InlineData(8, 3, 4)]
    [InlineData(16, 35, 12)]
    public void OneCable_IsTheClosedForm(double outerMm, double copperMm2, double lossWPerM)
    {
        double copper = BundleHeat.Steady(Bundle(new BundledCable("one", outerMm, copperMm2, lossWPerM))).Cables.Single().ConductorC;
        double heat = lossWPerM * (234.5 + copper) / 254.5;
        double surface = copper - (heat * Math.Log(outerMm / Math.Sqrt(4 * copperMm2 / Math.PI)) / (2 * Math.PI / 6));
        double film = StillAir.CylinderFilmWPerM2K(outerMm / 1000, surface, AmbientC) + StillAir.RadiationWPerM2K(0.9, surface, AmbientC);
        Assert.Equal(heat, film * Math.PI * outerMm / 1000 * (surface - AmbientC), 1e-7 * heat);
    }

    // Closed form: a cylinder that sets heat free evenly is warmer in its middle than at its outside by q'/(4 π k). 61 cables are a hexagon of five rings; half a ring lies outside the outermost middles.
    [Fact]
    public void ManyAlike_MiddleOverOutermost_IsThatOfAnEvenCylinder()
    {
        const int count = 61, rings = 4;
        const double loss = 0.4;
        BundleInput input = Bundle([.. Enumerable.Range(0, count).Select(k => new BundledCable($"c{k}", 8, 3, loss))]);
        ThermalNetwork network = BundleHeat.Network(input, 0);
        ThermalState state = ThermalSolver.Steady(network with { Nodes = [.. network.Nodes.Select(node => node with { RisePerK = 0 })] });
        // Along the middle of a side of the hexagon, r = 4 × √3/2 of the pitch; at its corner 4: what q r²/(4 k) gives lies between.
        double density = loss / (Math.Sqrt(3) / 2), middle = state.NodeC[0];
        double[] outer = [.. Enumerable.Range(count - (6 * rings), 6 * rings).Select(place => middle - state.NodeC[place])];
        double Even(double pitches) => density * pitches * pitches / (4 * BundleHeat.BundleWPerMK);
        Assert.InRange(outer.Average(), Even(rings * Math.Sqrt(3) / 2), Even(rings));
    }

    // A bound from below by itself: between two round cables that touch heat goes straight across copper, insulation, air, insulation, copper, in strips that give each other none.
    [Fact]
    public void AcrossABundle_ConductsNoMoreThanStrips()
    {
        const double copper = 0.3, insulation = 1.0 / 6, air = 0.026;
        const int strips = 20_000;
        double link = 0;
        for (int strip = 0; strip < strips; strip++)
        {
            double y = copper * (strip + 0.5) / strips, outside = Math.Sqrt(1 - (y * y)), inside = Math.Sqrt((copper * copper) - (y * y));
            link += 2 * copper / strips / ((2 * (outside - inside) / insulation) + (2 * (1 - outside) / air));
        }

        Assert.InRange(BundleHeat.BundleWPerMK, 0.9 * Math.Sqrt(3) * link, Math.Sqrt(3) * link);
    }

    // The hull of circles is no shorter than the circle of their area; two and seven alike have hulls of (π + 2) D and (π + 6) D.
    [Theory]
    [InlineData(2, 2)]
    [InlineData(7, 6)]
    public void Outside_IsNoMoreThanTheHull(int count, double straights)
    {
        BundleInput input = Bundle([.. Enumerable.Range(0, count).Select(k => new BundledCable($"c{k}", 8, 3, 1))]);
        Assert.InRange(Math.PI * input.BundleMm, 0.8 * (Math.PI + straights) * 8, (Math.PI + straights) * 8);
    }

    [Fact]
    public void Conduit_IsWarmerThanInTheOpen()
    {
        BundleInput open = Bundle([.. Enumerable.Range(0, 4).Select(k => new BundledCable($"c{k}", 8, 3, 2))]);
        Assert.True(Hottest(open with { ConduitInnerMm = 25 }) > Hottest(open));
    }

    // Random bundles, some in a conduit, some against a wall.
    private static readonly Gen<BundleInput> Bundles =
        from count in Gen.Int[1, 9]
        from cables in Gen.Select(Gen.Double[0.1, 0.6], Gen.Double[4, 20], Gen.Double[0, 6], (share, outer, loss) => (share, outer, loss)).Array[count]
        from ambient in Gen.Double[-10, 60]
        from open in Gen.Double[0.5, 1]
        from spare in Gen.Double[1.05, 3]
        from isInConduit in Gen.Bool
        let made = new BundleInput
        {
            Subject = "random",
            AmbientC = ambient,
            OpenFraction = open,
            Cables = [.. cables.Select((cable, k) => new BundledCable($"c{k}", cable.outer, Math.PI / 4 * cable.share * cable.share * cable.outer * cable.outer, cable.loss))],
        }
        select isInConduit && made.BundleMm * spare < 300 ? made with { ConduitInnerMm = made.BundleMm * spare } : made;

    [Fact]
    public void Random_BalanceOfHeat_IsKept() => Bundles.Sample(input =>
    {
        BundleResult result = BundleHeat.Steady(input);
        Assert.True(result.WhyNone is not null || result.ImbalanceFraction <= 1e-9);
        Assert.All(result.Cables, cable => Assert.True(cable.ConductorC >= input.AmbientC - 1e-9));
    }, iter: 200);

    // Another method: each node by itself from its neighbours, over and over.
    [Fact]
    public void Random_FixedPointNodeByNode_Agrees() => Bundles.Sample(input =>
    {
        ThermalNetwork network = BundleHeat.Network(input, 0);
        ThermalState state = ThermalSolver.Steady(network);
        if (state.IsFound)
        {
            double[] relaxed = Relaxation.Steady(network);
            Assert.All(Enumerable.Range(0, relaxed.Length), node => Assert.Equal(relaxed[node], state.NodeC[node], 1e-5));
        }
    }, iter: 40);

    [Fact]
    public void Random_MoreCurrent_IsNeverCooler() => Both((input, k, by) => input with { Cables = input.Cables.SetItem(k, input.Cables[k] with { LossAt20WPerM = input.Cables[k].LossAt20WPerM + by }) }, isWarmer: true);

    [Fact]
    public void Random_WarmerAir_IsNeverCooler() => Both((input, _, by) => input with { AmbientC = input.AmbientC + by }, isWarmer: true);

    // More copper at the same current: less loss in the same proportion.
    [Fact]
    public void Random_MoreCopper_IsNeverHotter() => Both((input, k, by) =>
    {
        BundledCable cable = input.Cables[k];
        double more = Math.Min(cable.CopperMm2 * (1 + (by / 10)), 0.9 * Math.PI / 4 * cable.OuterDiameterMm * cable.OuterDiameterMm);
        return input with { Cables = input.Cables.SetItem(k, cable with { CopperMm2 = more, LossAt20WPerM = cable.LossAt20WPerM * cable.CopperMm2 / more }) };
    }, isWarmer: false);

    // A hundred-odd millimetres of copper and of air: it follows as one lump, whose time is capacity over what leaves it for each kelvin.
    [Fact]
    public void OneCable_SmallRise_TakesTheTimeOfALump()
    {
        BundleInput input = Bundle(new BundledCable("one", 8, 3, 1e-4));
        ThermalResponseResult response = BundleHeat.Response(input, 0);
        double rise = response.Rest.NodeC[0] - AmbientC, capacity = BundleHeat.Network(input, 0).Nodes[0].CapacityJPerK;
        Assert.Equal(1, response.TimeToS(0, 1 - Math.Exp(-1))!.Value / (capacity * rise / 1e-4), 0.05);
    }

    [Theory]
    [InlineData(0, 3, 1)]
    [InlineData(2, 3.2, 1)]
    [InlineData(8, 3, double.NaN)]
    [InlineData(8, 3, -1)]
    [InlineData(double.NaN, 3, 1)]
    public void ImpossibleCable_IsRefused(double outerMm, double copperMm2, double loss) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => BundleHeat.Steady(Bundle(new BundledCable("one", outerMm, copperMm2, loss))));

    [Fact]
    public void TooSmallConduit_IsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => BundleHeat.Steady(Bundle(new BundledCable("one", 8, 3, 1)) with { ConduitInnerMm = 8 }));

    // A kilowatt a metre has no rest that insulation could know of.
    [Fact]
    public void Glowing_SaysSo() => Assert.Contains("never comes to rest", BundleHeat.Steady(Bundle(new BundledCable("one", 8, 3, 1000))).WhyNone, StringComparison.Ordinal);

    private static void Both(Func<BundleInput, int, double, BundleInput> change, bool isWarmer) => Gen.Select(Bundles, Gen.Double[0.1, 5], Gen.Int[0, 8]).Sample((input, by, at) =>
    {
        BundleResult before = BundleHeat.Steady(input), after = BundleHeat.Steady(change(input, at % input.Cables.Length, by));
        if (before.WhyNone is null && after.WhyNone is null)
        {
            Assert.All(before.Cables.Zip(after.Cables), pair => Assert.True(isWarmer ? pair.Second.ConductorC >= pair.First.ConductorC - 1e-7 : pair.Second.ConductorC <= pair.First.ConductorC + 1e-7));
        }
    }, iter: 150);

    private static double Hottest(BundleInput input) => BundleHeat.Steady(input).Cables.Max(cable => cable.ConductorC);

    private static BundleInput Bundle(params BundledCable[] cables) => new() { Subject = "bundle", AmbientC = AmbientC, Cables = [.. cables] };
}
