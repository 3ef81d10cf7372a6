using Orlop.Hull.Criteria;
using Xunit;

namespace Orlop.Reference.Tests.Hull;

/// <summary>IMO general criteria and weather criterion held to the tables, and to the examples worked in stability.md 4.1 and 4.2 (computed there, not published).</summary>
public sealed class CriteriaReferenceTests
{
    private static readonly RollbackInput Example = new()
    {
        Subject = "example",
        WaterlineLengthM = 12,
        BeamM = 4,
        DraughtM = 1,
        BlockCoefficient = 0.5,
        KgM = 1.4,
        GmM = 0.9,
        Bilge = BilgeShape.Round,
    };

    // Limits of criterion imo_is_2.2 in stability-criteria.csv, each row marked verified.
    [Fact]
    public void GeneralCriteria_Limits_AreThePublishedOnes()
    {
        var limits = ReferenceCsv.Load("stability-criteria.csv", expectedRows: 44).Where(row => row.Text("criterion") == "imo_is_2.2").ToDictionary(row => row.Text("quantity"), row => row.Number("limit"));
        var results = GeneralCriteria.Check(Barges.Curve("A", 180)).ToDictionary(result => result.Id, result => result.Least);
        Assert.Equal(limits["area_gz_0_30"], results["area-to-30"]);
        Assert.Equal(limits["area_gz_0_40_or_flood"], results["area-to-40"]);
        Assert.Equal(limits["area_gz_30_40_or_flood"], results["area-30-to-40"]);
        Assert.Equal(limits["gz_at_ge_30"], results["lever-at-30"]);
        Assert.Equal(limits["angle_max_gz"], results["heel-of-greatest-lever"]);
        Assert.Equal(limits["gm0"], results["initial-gm"]);
        Assert.Equal(6, limits.Count);
    }

    // stability.md 4.1: box A 0.1294, 0.2197, 0.0902, 0.5253 at 36.5°, 0.867; box B 0.0690, 0.1117, 0.0427, 0.2468 at 35.7°, 0.476. Both meet all six.
    [Theory]
    [InlineData("A", 0.1294, 0.2197, 0.0902, 0.5253, 36.5, 0.867)]
    [InlineData("B", 0.0690, 0.1117, 0.0427, 0.2468, 35.7, 0.476)]
    public void GeneralCriteria_BoxBarges_HaveTheWorkedValues(string name, double to30, double to40, double between, double lever, double heelDeg, double gmM)
    {
        var results = GeneralCriteria.Check(Barges.Curve(name, 180));
        Assert.All(results, result => Assert.Equal(CriterionVerdict.Meets, result.Verdict));
        double[] expected = [to30, to40, between, lever, heelDeg, gmM];
        double[] halfDigit = [5e-5, 5e-5, 5e-5, 5e-5, 0.05, 5e-4];
        for (var i = 0; i < 6; i++)
        {
            Assert.Equal(expected[i], results[i].Value!.Value, halfDigit[i]);
        }
    }

    // stability.md 4.2: C 0.45984, T 3.8777 s, r 0.97, φ1 22.2698°.
    [Fact]
    public void Rollback_SmallBoat_HasTheWorkedValues()
    {
        var roll = Rollback.Calculate(Example);
        Assert.Equal(0.45984, Step(roll, "C"), 1e-10);
        Assert.Equal(3.8777, roll.PeriodS!.Value, 5e-5);
        Assert.Equal(0.97, Step(roll, "r"), 1e-12);
        Assert.Equal(22.2698, roll.RollbackDeg!.Value, 5e-5);
        Assert.Contains(roll.Warnings, warning => warning.Contains("24 m", StringComparison.Ordinal));
        Assert.Contains(roll.Warnings, warning => warning.Contains("B/d = 4", StringComparison.Ordinal));
        Assert.Contains(roll.Warnings, warning => warning.Contains("roll period", StringComparison.Ordinal));
    }

    // stability-weather-criterion-factors.csv, the rows of the IMO table; the extension rows are national and not used.
    [Fact]
    public void Rollback_EveryTableRow_IsRead()
    {
        foreach (var row in ReferenceCsv.Load("stability-weather-criterion-factors.csv", expectedRows: 40).Where(row => row.Text("set") == "imo"))
        {
            var argument = row.Number("argument_value");
            var (symbol, input) = row.Text("factor") switch
            {
                "x1" => ("X1", Example with { BeamM = argument }),
                "x2" => ("X2", Example with { BlockCoefficient = argument }),
                "k" => ("k", Example with { Bilge = BilgeShape.Keels, KeelAreaM2 = argument * 12 * 4 / 100 }),
                _ => ("s", Example with { GmM = Math.Pow(2 * 0.45984 * 4 / argument, 2) }),
            };
            row.Agrees(row.Number("factor_value"), Step(Rollback.Calculate(input), symbol), 1e-9);
        }
    }

    [Fact]
    public void Rollback_SharpBilge_HasSevenTenths() => Assert.Equal(0.7, Step(Rollback.Calculate(Example with { Bilge = BilgeShape.Sharp }), "k"));

    // stability.md 4.2: box A, lw1 0.08 m, φ1 22.27°, limit 50°: φ0 5.25355°, crossing 7.81630°, a 0.083497, b 0.207521 m rad.
    [Fact]
    public void GustAreas_BoxBarge_HasTheWorkedValues()
    {
        var areas = GustAreas.Calculate(Barges.Curve("A", 180), Barges.Curve("A", -180), 0.08, 22.27);
        Assert.Equal(5.25355, areas.SteadyHeelDeg!.Value, 5e-6);
        Assert.Equal(7.81630, areas.GustHeelDeg!.Value, 5e-6);
        Assert.Equal(50, areas.EndDeg);
        Assert.Equal(0.083497, areas.AreaAMRad!.Value, 5e-7);
        Assert.Equal(0.207521, areas.AreaBMRad!.Value, 5e-7);
        var mirrored = GustAreas.Calculate(Barges.Curve("A", -180), Barges.Curve("A", 180), 0.08, 22.27);
        Assert.Equal(areas.AreaAMRad.Value, mirrored.AreaAMRad!.Value, 1e-9);
        Assert.Equal(areas.AreaBMRad.Value, mirrored.AreaBMRad!.Value, 1e-9);
    }

    // stability.md 4.2: lw1 for A 25 m², Z 1.8 m, 20 t: 0.115596 m; here for the barge's 32.8 t.
    [Fact]
    public void WeatherCriterion_BoxBarge_HasTheSteadyLever()
    {
        var result = WeatherCriterion.Check(Weather("A", 25));
        Assert.Equal(0.115596 * 20_000 / 32_800, result.SteadyLeverM, 5e-7);
        Assert.Equal(CriterionVerdict.Meets, result.SteadyHeel.Verdict);
        Assert.Equal(CriterionVerdict.Meets, result.Reserve.Verdict);
    }

    [Fact]
    public void WeatherCriterion_HugeSails_FailsWithoutANumber()
    {
        var result = WeatherCriterion.Check(Weather("A", 2000));
        Assert.Equal(CriterionVerdict.Fails, result.Reserve.Verdict);
        Assert.Null(result.Reserve.Value);
        Assert.Equal(CriterionVerdict.Fails, result.SteadyHeel.Verdict);
    }

    [Fact]
    public void WeatherCriterion_NoGm_IsUnknown()
    {
        var input = Weather("A", 25);
        var result = WeatherCriterion.Check(input with { Roll = input.Roll with { GmM = -0.1 } });
        Assert.Equal(CriterionVerdict.Unknown, result.Reserve.Verdict);
        Assert.Equal(CriterionVerdict.Unknown, result.SteadyHeel.Verdict);
    }

    private static WeatherInput Weather(string name, double areaM2) => new()
    {
        Leeward = Barges.Curve(name, 180),
        Windward = Barges.Curve(name, -180),
        WindAreaM2 = areaM2,
        WindLeverM = 1.8,
        Roll = new RollbackInput { Subject = "barge", WaterlineLengthM = 10, BeamM = 4, DraughtM = 0.8, BlockCoefficient = 1, KgM = 1.2, GmM = 0.8666666667, Bilge = BilgeShape.Sharp },
    };

    private static double Step(RollbackResult roll, string symbol) => roll.Working.Single(step => step.Symbol == symbol).Value!.Value;
}
