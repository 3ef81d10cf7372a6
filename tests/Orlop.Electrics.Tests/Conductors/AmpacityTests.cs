using Orlop.Electrics.Conductors;
using Orlop.Electrics.Working;
using Xunit;

namespace Orlop.Electrics.Tests.Conductors;

public sealed class AmpacityTests
{
    private static readonly AmpacityTable Table = new("a table for tests", 30,
        [new(2.5, 70, 20), new(2.5, 90, 25), new(4, 70, 30), new(4, 90, 36), new(10, 70, 55), new(10, 90, 64)]);

    private static readonly BundleFactorTable Bundles = new([new(3, 3, 0.7), new(4, 6, 0.6), new(7, null, 0.5)], "a grouping table for tests");

    [Fact]
    public void Calculate_ExactRow_MultipliesAndShowsEveryStep()
    {
        // By hand: 36 A × sqrt((90-50)/(90-30)) × 0.6 = 36 × 0.816497 × 0.6 = 17.6363 A.
        var result = Ampacity.Calculate(Input() with { AmbientC = 50, LoadedCount = 5 });
        Assert.Equal(LookupKind.Exact, result.Lookup);
        Assert.Equal(17.6363, result.CurrentA!.Value, 1e-4);
        Assert.Equal(21.6, result.GroupedTableCurrentA!.Value, 1e-9);
        Assert.Equal(["I_table", "f_amb", "f_bundle", "I"], result.Working.Select(step => step.Symbol));
        Assert.Equal(result.CurrentA, result.Working[^1].Value);
        Assert.Equal(result.CurrentA!.Value, result.Working[0].Value!.Value * Math.Round(result.Working[1].Value!.Value, 5) * result.Working[2].Value!.Value, 1e-9);
    }

    [Theory]
    [InlineData(6, 90, 36)]
    [InlineData(9.9, 105 - 15, 36)]
    [InlineData(4, 85, 30)]
    [InlineData(3.99, 90, 36)]
    [InlineData(10.04, 90, 64)]
    public void Lookup_BetweenRows_StepsDownNeverUp(double areaMm2, double insulationC, double expectedA)
    {
        var lookup = Table.Lookup(areaMm2, insulationC);
        Assert.Equal(expectedA, lookup.Row!.CurrentA);
        Assert.Equal(Math.Abs(areaMm2 - lookup.Row.AreaMm2) < 0.05 && lookup.Row.InsulationC == insulationC, lookup.Lookup == LookupKind.Exact);
    }

    [Theory]
    [InlineData(1.5, 90)]
    [InlineData(16, 90)]
    [InlineData(4, 60)]
    [InlineData(4, 105)]
    public void Calculate_OutsideTable_HasNoCurrentAndSaysWhy(double areaMm2, double insulationC)
    {
        var result = Ampacity.Calculate(Input() with { AreaMm2 = areaMm2, InsulationC = insulationC });
        Assert.Equal(LookupKind.OutsideValidity, result.Lookup);
        Assert.Null(result.CurrentA);
        Assert.NotNull(result.WhyNone);
    }

    [Theory]
    [InlineData(90)]
    [InlineData(120)]
    public void Calculate_AmbientAtOrAboveRating_CarriesNothing(double ambientC)
    {
        var formula = Ampacity.Calculate(Input() with { AmbientC = ambientC });
        var stated = Ampacity.Calculate(Input() with { AmbientC = ambientC, AmbientFactor = new StatedFactor(0.82, "a rule") });
        Assert.True(formula.IsTooHot);
        Assert.Equal(0, formula.CurrentA);
        Assert.Equal(0, stated.CurrentA);
    }

    [Fact]
    public void Calculate_StatedFactor_ReplacesTheFormula() =>
        Assert.Equal(36 * 0.82, Ampacity.Calculate(Input() with { AmbientC = 50, AmbientFactor = new StatedFactor(0.82, "a rule") }).CurrentA!.Value, 1e-9);

    [Fact]
    public void Calculate_GapInGroupingTable_HasNoCurrent()
    {
        var gap = new BundleFactorTable([new(3, 3, 0.7), new(7, null, 0.5)], "a table with a gap");
        Assert.Null(Ampacity.Calculate(Input() with { BundleFactors = gap, LoadedCount = 5 }).CurrentA);
        Assert.Null(Ampacity.Calculate(Input() with { BundleFactors = new BundleFactorTable([], "empty") }).CurrentA);
    }

    [Fact]
    public void AmbientCorrection_Hotter_NeverCarriesMore()
    {
        var last = double.PositiveInfinity;
        for (var ambientC = -40.0; ambientC <= 110; ambientC += 0.5)
        {
            var factor = AmbientCorrection.Calculate(90, ambientC, 30).Factor;
            Assert.True(factor < last || (factor == 0 && last == 0));
            last = factor;
        }
    }

    [Theory]
    [InlineData(double.NaN, 90, 30, 1)]
    [InlineData(0, 90, 30, 1)]
    [InlineData(-4, 90, 30, 1)]
    [InlineData(1001, 90, 30, 1)]
    [InlineData(4, double.PositiveInfinity, 30, 1)]
    [InlineData(4, 90, double.NaN, 1)]
    [InlineData(4, 90, 301, 1)]
    [InlineData(4, 90, 30, 0)]
    public void Calculate_ImpossibleInput_IsRefusedWithPlaceAndRange(double areaMm2, double insulationC, double ambientC, int loadedCount)
    {
        var refusal = Assert.Throws<ArgumentOutOfRangeException>(() => Ampacity.Calculate(
            Input() with { AreaMm2 = areaMm2, InsulationC = insulationC, AmbientC = ambientC, LoadedCount = loadedCount }));
        Assert.Contains("winch feed", refusal.Message, StringComparison.Ordinal);
        Assert.Contains("allowed", refusal.Message, StringComparison.Ordinal);
    }

    private static AmpacityInput Input() => new()
    {
        Subject = "winch feed",
        Table = Table,
        AreaMm2 = 4,
        InsulationC = 90,
        AmbientC = 30,
        LoadedCount = 1,
        BundleFactors = Bundles,
    };
}
