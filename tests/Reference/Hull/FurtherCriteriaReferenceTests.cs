using Orlop.Hull.Criteria;
using Orlop.Hull.Floating;
using Orlop.Hull.Surfaces;
using Xunit;

namespace Orlop.Reference.Tests.Hull;

/// <summary>US, UK, small-craft and fishing criteria, and the drift of the empty boat, held to stability-criteria.csv and to what stability.md sections 4 and 5 worked.</summary>
public sealed class FurtherCriteriaReferenceTests
{
    private static readonly Opening High = new("vent", new Point3(5, 0, 9));

    private static readonly IReadOnlyList<ReferenceRow> Rows = ReferenceCsv.Load("stability-criteria.csv", expectedRows: 44);

    // Every row of a set has its limit in the results, in the row's own unit, and nothing is asked beyond the rows.
    [Fact]
    public void UsLevers_Limits_AreTheListedOnes()
    {
        Agree("46cfr170.173b", UsLeverCriteria.Section170173B(Barge("A")), ("gm", "us-initial-gm"), ("gz_at_ge_30", "us-lever-at-30"), ("angle_max_gz", "us-heel-of-greatest-lever"),
            ("area_0_30", "us-area-to-30"), ("area_0_40_or_flood", "us-area-to-40"), ("area_30_40_or_flood", "us-area-30-to-40"));
        Agree("46cfr170.173c", UsLeverCriteria.Section170173C(Barge("A")), ("gm", "us-early-initial-gm"), ("angle_max_gz", "us-early-heel-of-greatest-lever"),
            ("area_0_40_or_flood", "us-early-area-to-40"), ("area_30_40_or_flood", "us-early-area-30-to-40"), ("area_to_max_gz_ge_3.15+0.057*(30-y)", "us-early-area-to-greatest-lever"));
        Agree("46cfr28.570", UsLeverCriteria.Section28570(Barge("A")), ("gm", "us-fishing-initial-gm"), ("positive_gz_to", "us-fishing-righting-to"),
            ("area_0_30", "us-fishing-area-to-30"), ("area_0_40_or_flood", "us-fishing-area-to-40"), ("area_30_40_or_flood", "us-fishing-area-30-to-40"));
        Agree("46cfr174.185", UsLeverCriteria.Section174185(Barge("A")), ("area_to_min_of_maxgz_flood_40", "us-supply-area"), ("downflooding_angle", "us-supply-downflooding"), ("positive_gz_to", "us-supply-righting-to"));
    }

    [Fact]
    public void WorkboatLevers_Limits_AreTheListedOnes() =>
        Agree("mgn280_11.3", WorkboatCriteria.Levers(Barge("A")), ("area_0_30", "workboat-area-to-30"), ("area_0_40_or_flood", "workboat-area-to-40"), ("area_30_40", "workboat-area-30-to-40"),
            ("gz_at_ge_30", "workboat-lever-at-30"), ("angle_max_gz", "workboat-heel-of-greatest-lever"), ("gm", "workboat-initial-gm"));

    // stability.md 1.1 and 4.1: box A 0-30° 0.1294194311 m rad, vanishing 78.549453°, greatest lever 36.5277°; box B 0.0689932005, 70.466225°. The m deg are the same areas.
    [Theory]
    [InlineData("A", 0.1294194311, 78.549453)]
    [InlineData("B", 0.0689932005, 70.466225)]
    public void UsLevers_BoxBarges_HaveTheWorkedValues(string name, double to30, double vanishing)
    {
        var byId = UsLeverCriteria.Section170173B(Barge(name)).Concat(UsLeverCriteria.Section28570(Barge(name))).Concat(UsLeverCriteria.Section174185(Barge(name))).ToDictionary(result => result.Id);
        Assert.Equal(to30 * 180 / Math.PI, byId["us-area-to-30"].Value!.Value, 1e-7);
        Assert.Equal(to30, byId["us-fishing-area-to-30"].Value!.Value, 1e-9);
        Assert.Equal(vanishing, byId["us-fishing-righting-to"].Value!.Value, 1e-6);
        // The vent, 9 m up, goes under about when she lies on her side.
        Assert.InRange(byId["us-supply-downflooding"].Value!.Value, 80, 95);
        Assert.All(byId.Values, result => Assert.Equal(CriterionVerdict.Meets, result.Verdict));
    }

    // stability.md 4.3, computed: L 12, A 28, H 1.6, W 20 t, B 4, f 0.9: T 12.6804°, GM 0.54839, 0.35924, 0.27959.
    [Theory]
    [InlineData(WaterExposure.Exposed, 0.54839)]
    [InlineData(WaterExposure.PartiallyProtected, 0.35924)]
    [InlineData(WaterExposure.Protected, 0.27959)]
    public void WindHeelGm_SmallBoat_HasTheWorkedLeast(WaterExposure exposure, double leastM)
    {
        var input = new WindHeelGmInput("boat", exposure, 12, 4, 20_000, 0.9, 28, 1.6, leastM + 1e-5);
        var result = WindHeelGm.Check(input);
        Assert.Equal(leastM, result.Least, 5e-6);
        Assert.Equal(CriterionVerdict.Meets, result.Verdict);
        Assert.Equal(12.6804, result.Working.Single(step => step.Symbol == "T").Value!.Value, 5e-5);
        Assert.Equal(CriterionVerdict.Fails, WindHeelGm.Check(input with { GmM = leastM - 1e-5 }).Verdict);
    }

    // Wall-sided box A: level weights w·d = mass·GZ/cos φ with GZ = (GM + BM/2 tan²φ) sin φ, so tan φ (GM + BM/2 tan² φ) = M/mass (stability.md 2.1); the deck edge goes down by 2·tan φ, measured square to the water.
    [Fact]
    public void ProofTest_BoxBarge_HasTheWallSidedHeel()
    {
        const double Tangent = 0.1;
        var moment = 32_800 * Tangent * (0.8666666667 + (0.5 * 1.6666666667 * Tangent * Tangent));
        var results = ProofTest.Check(Proof(moment));
        var cos = 1 / Math.Sqrt(1 + (Tangent * Tangent));
        var freeboard = 1.2;
        var after = cos * (1.2 - (2 * Tangent));
        Assert.Equal((freeboard / 2) - (freeboard - after), results[0].Value!.Value, 1e-7);
        Assert.Equal(14 - (Math.Atan(Tangent) * 180 / Math.PI), results[1].Value!.Value, 1e-5);
        Assert.All(results, result => Assert.Equal(CriterionVerdict.Meets, result.Verdict));
    }

    // 46 CFR 178.330 as in stability.md 4.3: i = f(2L - 1.5L')/(4L) exposed, f(2L - L')/(4L) otherwise.
    [Theory]
    [InlineData(WaterExposure.Exposed, 4, 1.2 * (20 - 6) / 40)]
    [InlineData(WaterExposure.Protected, 4, 1.2 * (20 - 4) / 40)]
    public void ProofTest_Cockpit_AllowsLess(WaterExposure exposure, double cockpitM, double allowedM)
    {
        var results = ProofTest.Check(Proof(3000) with { Exposure = exposure, CockpitLengthM = cockpitM });
        Assert.Equal(allowedM, results[0].Working.Single(step => step.Symbol == "i").Value!.Value, 1e-9);
    }

    [Fact]
    public void ProofTest_WindGoverns_WhenItsMomentIsGreater()
    {
        var results = ProofTest.Check(Proof(1) with { WindAreaM2 = 20, WindHeightM = 1.5 });
        Assert.Equal(36.6 * 20 * 1.5, results[0].Working.Single(step => step.Symbol == "M wind").Value!.Value, 1e-9);
        var heel = results[0].Working.Single(step => step.Symbol == "φ").Value!.Value * Math.PI / 180;
        Assert.Equal(36.6 * 20 * 1.5 / 32_800, Math.Tan(heel) * (0.8666666667 + (0.5 * 1.6666666667 * Math.Pow(Math.Tan(heel), 2))), 1e-8);
    }

    // stability.md 4.6: LH 8.88 gives 15.761 on a filled public worksheet; 10, 12, 15, 24 m as computed there.
    [Theory]
    [InlineData(8.88, 15.761)]
    [InlineData(10, 14.573)]
    [InlineData(12, 12.880)]
    [InlineData(15, 11.215)]
    [InlineData(24, 10)]
    public void OffsetLoadLimit_HasTheWorkedValues(double lengthM, double limitDeg) => Assert.Equal(limitDeg, SmallCraftCriteria.OffsetLoadLimitDeg(lengthM), 6e-4);

    // stability.md 4.6: ALV 14, LWL 7.9, TM 0.54 gives 2806.5 N m at 17 m/s and 1641.2 at 13; speeds from the csv.
    [Theory]
    [InlineData(DesignCategory.C, 2806.5, "iso12217_C")]
    [InlineData(DesignCategory.D, 1641.2, "iso12217_D")]
    public void WindMoment_HasTheWorkedValues(DesignCategory category, double momentNm, string criterion)
    {
        var moment = SmallCraftCriteria.WindMomentNm(category, 14, 7.9, 0.54)!.Value;
        Assert.Equal(momentNm, moment, 0.05);
        Assert.Equal(Rows.Single(row => row.Text("criterion") == criterion).Number("limit"), Math.Sqrt(moment / (0.3 * 14 * ((14 / 7.9) + 0.54))), 1e-12);
    }

    [Fact]
    public void PersonsToOneSide_Limits_AreTheListedOnes()
    {
        var limits = Rows.Where(row => row.Text("criterion") == "mgn280_11.4").ToDictionary(row => row.Text("quantity"), row => row.Number("limit"));
        Assert.Equal(5, limits.Count);
        var kept = WorkboatCriteria.PersonsToOneSide(new WorkboatInput("boat", 18, 3, 0.2, 0.6, false));
        var lost = WorkboatCriteria.PersonsToOneSide(new WorkboatInput("boat", 18, 3, 0.05, 0.6, true));
        Assert.Equal(limits["heel_persons_one_side_if_freeboard_kept"], kept[0].Value + 3);
        Assert.Equal(limits["heel_persons_one_side"], lost[0].Value + 3);
        Assert.Equal(limits["residual_freeboard_decked"], kept[1].Least);
        Assert.Equal(limits["gm_estimated_displacement_over_15m"], kept[2].Least);
        Assert.Equal(limits["gm_known_displacement_over_15m"], lost[2].Least);
    }

    // stability.md 4.5: B 4.5, D 2.3, f 0.5, ls 3, L 14 gives 0.6179 m.
    [Fact]
    public void FishingVesselGm_HasTheWorkedLeast()
    {
        var input = new FishingVesselInput("boat", 14, 4.5, 2.3, 0.5, 3, 0.62);
        var result = FishingVesselGm.Check(input);
        Assert.Equal(0.6179, result.Least, 5e-5);
        Assert.Equal(CriterionVerdict.Meets, result.Verdict);
        Assert.Equal(CriterionVerdict.Fails, FishingVesselGm.Check(input with { GmM = 0.617 }).Verdict);
    }

    // stability.md 5: an inclining test again when mass changes more than 2 %, LCG 1 % L, VCG 1 %; amended papers at 1 %, 0.5 % L (0.5 % from memory).
    [Fact]
    public void EmptyBoatDrift_HasThePublishedThresholds()
    {
        var results = EmptyBoatDrift.Check("boat", 12, new EmptyBoat(10_000, 5, 1.2), new EmptyBoat(10_150, 5.03, 1.19));
        double[] expected = [2 - 1.5, 1 - 0.25, 1 - (1 / 1.2), 1 - 1.5, 0.5 - 0.25, 0.5 - (1 / 1.2)];
        Assert.Equal(expected, results.Select(result => Math.Round(result.Value!.Value, 9)), new NearNumbers());
        Assert.Equal([true, true, true, false, true, false], results.Select(result => result.Verdict == CriterionVerdict.Meets));
    }

    private static ProofTestInput Proof(double momentKgM) => new()
    {
        Curve = Barge("A"),
        Exposure = WaterExposure.Protected,
        LengthM = 10,
        LowestDeckEdge = new Point3(5, -2, 2),
        PersonsKg = momentKgM * 6 / 3,
        PersonsBreadthM = 3,
        WindAreaM2 = 1,
        WindHeightM = 0.01,
    };

    private static RightingCurve Barge(string name) => RightingCurve.Calculate(Barges.Curve(name, 180).Input with { Openings = [High] });

    private static void Agree(string criterion, IReadOnlyList<CriterionResult> results, params (string Quantity, string Id)[] pairs)
    {
        var rows = Rows.Where(row => row.Text("criterion") == criterion).ToDictionary(row => row.Text("quantity"));
        Assert.Equal(rows.Keys.Order(), pairs.Select(pair => pair.Quantity).Order());
        Assert.Equal(results.Select(result => result.Id).Order(), pairs.Select(pair => pair.Id).Order());
        foreach (var (quantity, id) in pairs)
        {
            var (row, result) = (rows[quantity], results.Single(result => result.Id == id));
            Assert.Equal(row.Number("limit"), result.Least, 1e-12);
            Assert.Equal(row.Text("unit").Replace('_', ' ').Replace("deg", result.Unit == "°" ? "°" : "deg", StringComparison.Ordinal), result.Unit);
            Assert.Equal(row.Text("status").Contains("memory", StringComparison.Ordinal), result.Source.Contains("memory", StringComparison.Ordinal));
        }
    }

    private sealed class NearNumbers : IEqualityComparer<double>
    {
        public bool Equals(double x, double y) => Math.Abs(x - y) < 1e-8;

        public int GetHashCode(double obj) => 0;
    }
}
