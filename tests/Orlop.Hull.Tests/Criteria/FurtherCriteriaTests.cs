using Orlop.Hull.Criteria;
using Orlop.Hull.Floating;
using Orlop.Hull.Surfaces;
using Orlop.Hull.Tests.Floating;
using Xunit;

namespace Orlop.Hull.Tests.Criteria;

public sealed class FurtherCriteriaTests
{
    private static readonly RightingCurve Curve = RightingCurve.Calculate(new RightingInput { Boat = Boats.Barge(4, 2, 0.8, 1.2) });

    private static readonly SmallCraftInput Craft = new() { Subject = "boat", Category = DesignCategory.C, HullLengthM = 10, HullBeamM = 3 };

    private static readonly ProofTestInput Proof = new()
    {
        Curve = Curve,
        Exposure = WaterExposure.Exposed,
        LengthM = 10,
        LowestDeckEdge = new Point3(5, -2, 2),
        PersonsKg = 900,
        PersonsBreadthM = 3,
        WindAreaM2 = 15,
        WindHeightM = 1,
    };

    [Fact]
    public void MissingInput_IsUnknownAndSaysWhat()
    {
        CriterionResult[] results =
        [
            .. SmallCraftCriteria.Check(Craft),
            .. ProofTest.Check(Proof with { WindAreaM2 = null }),
            .. ProofTest.Check(Proof with { PersonsBreadthM = null }),
            .. WorkboatCriteria.PersonsToOneSide(new WorkboatInput("boat", 16, null, null, null, true)),
            .. EmptyBoatDrift.Check("boat", 12, new EmptyBoat(null, null, null), new EmptyBoat(10_000, 5, 1)),
            WindHeelGm.Check(new WindHeelGmInput("boat", WaterExposure.Exposed, 12, 4, 20_000, null, 28, 1.6, 1)),
            WindHeelGm.Check(new WindHeelGmInput("boat", WaterExposure.Exposed, 12, 4, 20_000, 0.9, 28, 1.6, null)),
            FishingVesselGm.Check(new FishingVesselInput("boat", 14, 4.5, 2.3, null, 3, 1)),
            FishingVesselGm.Check(new FishingVesselInput("boat", 16, 4.5, 2.3, 0.5, 3, null)),
            UsLeverCriteria.Section174185(Curve).Single(result => result.Id == "us-supply-downflooding"),
        ];
        Assert.Equal(21, results.Length);
        Assert.All(results, result =>
        {
            Assert.Equal(CriterionVerdict.Unknown, result.Verdict);
            Assert.Null(result.Value);
            Assert.Contains("given", Assert.Single(result.Remarks), StringComparison.Ordinal);
        });
    }

    [Fact]
    public void NotApplying_IsUnknownAndSaysWhy()
    {
        Assert.All(ProofTest.Check(Proof with { LengthM = 20 }), result => Assert.Equal((CriterionVerdict.Unknown, "does not apply: 20 m is over 19.8 m (65 ft)"), (result.Verdict, result.Remarks[0])));
        var fishing = FishingVesselGm.Check(new FishingVesselInput("boat", 31, 4.5, 1.2, 1.5, 20, 5));
        Assert.Equal((CriterionVerdict.Unknown, 4), (fishing.Verdict, fishing.Remarks.Length));
        Assert.All(SmallCraftCriteria.Check(Craft with { Category = DesignCategory.A }).Where(result => result.Id == "craft-waves-and-wind"), result => Assert.Equal(CriterionVerdict.Unknown, result.Verdict));
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(-1)]
    [InlineData(double.PositiveInfinity)]
    public void ImpossibleInput_IsRefused(double value)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => ProofTest.Check(Proof with { WindHeightM = value }));
        Assert.Throws<ArgumentOutOfRangeException>(() => SmallCraftCriteria.Check(Craft with { HullLengthM = value }));
        Assert.Throws<ArgumentOutOfRangeException>(() => WindHeelGm.Check(new WindHeelGmInput("boat", WaterExposure.Exposed, 12, 4, 20_000, value, 28, 1.6, 1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => FishingVesselGm.Check(new FishingVesselInput("boat", 14, 4.5, 2.3, 0.5, value, 1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => EmptyBoatDrift.Check("boat", 12, new EmptyBoat(value, 5, 1), new EmptyBoat(1, 5, 1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => WorkboatCriteria.PersonsToOneSide(new WorkboatInput("boat", value, 1, 1, 1, true)));
    }

    [Fact]
    public void SmallCraft_WindIsAskedOnlyOfMuchSide()
    {
        var windy = Craft with { WindAreaM2 = 31, WaterlineLengthM = 9, DraughtM = 0.8, Curve = Curve };
        var wind = SmallCraftCriteria.Check(windy).Single(result => result.Id == "craft-wind");
        // Wall-sided lever of case A, stability.md 1.1, at the heel found.
        var heel = ((SmallCraftCriteria.OffsetLoadLimitDeg(10) / 2) - wind.Value!.Value) * Math.PI / 180;
        var lever = SmallCraftCriteria.WindMomentNm(DesignCategory.C, 31, 9, 0.8)!.Value / (9.80665 * 32_800);
        Assert.Equal(lever, (0.8666666667 + (0.5 * 1.6666666667 * Math.Pow(Math.Tan(heel), 2))) * Math.Sin(heel), 1e-8);
        Assert.DoesNotContain(SmallCraftCriteria.Check(windy with { WindAreaM2 = 29 }), result => result.Id == "craft-wind");
    }

    [Fact]
    public void SmallCraft_DownfloodingHeight_KeepsItsBounds()
    {
        double Least(DesignCategory category, double length) => SmallCraftCriteria.Check(Craft with { Category = category, HullLengthM = length }).Single(result => result.Id == "craft-downflooding-height").Least;
        Assert.Equal(10.0 / 17, Least(DesignCategory.C, 10), 1e-12);
        Assert.Equal((0.5, 1.41, 0.75, 0.4, 0.2), (Least(DesignCategory.A, 3), Least(DesignCategory.A, 24), Least(DesignCategory.C, 24), Least(DesignCategory.D, 12), Least(DesignCategory.D, 3)));
    }

    [Fact]
    public void ProofTest_TooMuchWind_FailsWithoutANumber() =>
        Assert.All(ProofTest.Check(Proof with { WindAreaM2 = 1000 }), result => Assert.Equal((CriterionVerdict.Fails, (double?)null), (result.Verdict, result.Value)));

    [Fact]
    public void ProofTest_ToPort_IsTheSame()
    {
        var port = ProofTest.Check(Proof with { Curve = RightingCurve.Calculate(Curve.Input with { ToDeg = -180 }), LowestDeckEdge = new Point3(5, 2, 2) });
        Assert.All(ProofTest.Check(Proof).Zip(port), pair => Assert.Equal(pair.First.Value!.Value, pair.Second.Value!.Value, 1e-6));
    }

    // G 0.05 m to port: M/Δ = 900·3/6/32 800 = 0.0137 m to starboard leaves y − M/Δ = 0.0363 m, (GM + ½ BM tan² φ)·tan φ of case A (wall-sided, stability.md 1.1).
    [Fact]
    public void ProofTest_OfABoatThatLists_EndsShortOfUpright()
    {
        var boat = Curve.Input.Boat;
        var listed = RightingCurve.Calculate(Curve.Input with { Boat = boat with { CentreOfGravity = boat.CentreOfGravity + new Point3(0, 0.05, 0) } });
        var results = ProofTest.Check(Proof with { Curve = listed, WindAreaM2 = 0.1 });
        var tangent = Math.Tan(results[1].Working.Single(step => step.Symbol == ProofTest.HeelSymbol).Value!.Value * Math.PI / 180);
        Assert.Equal(-(0.05 - (450 / 32_800.0)), tangent * (0.8666666667 + (0.5 * 1.6666666667 * tangent * tangent)), 1e-7);
        Assert.Equal(14 - Math.Abs(Math.Atan(tangent) * 180 / Math.PI), results[1].Value!.Value, 1e-6);
    }

    [Fact]
    public void UsLevers_EarlyGreatestLever_AsksForMoreArea()
    {
        // Flooding at 16.7° (atan 0.3) caps the greatest lever there.
        var curve = RightingCurve.Calculate(Curve.Input with { Openings = [new Opening("hatch", new Point3(5, -2, 1.4))] });
        var area = UsLeverCriteria.Section170173C(curve).Single(result => result.Id == "us-early-area-to-greatest-lever");
        Assert.Equal(3.15 + (0.057 * (30 - (Math.Atan(0.3) * 180 / Math.PI))), area.Least, 1e-5);
    }

    [Fact]
    public void UsLevers_ShortCurve_IsUnknown()
    {
        var curve = RightingCurve.Calculate(Curve.Input with { ToDeg = 20 });
        foreach (var result in UsLeverCriteria.Section28570(curve).Concat(UsLeverCriteria.Section170173C(curve)).Where(result => !result.Id.EndsWith("gm", StringComparison.Ordinal)))
        {
            Assert.Equal(CriterionVerdict.Unknown, result.Verdict);
        }
    }

    // A scuttle at the side, 0.3 m over the water of a box 4 m broad, goes under at atan(0.3/2) (wall-sided): no lever beyond it is righting.
    [Fact]
    public void RightingTo_EndsWhereTheFirstOpeningGoesUnder()
    {
        var flooding = RightingCurve.Calculate(Curve.Input with { Openings = [new Opening("scuttle", new Point3(5, -2, 1.1))] });
        var found = UsLeverCriteria.Section28570(flooding).Single(result => result.Id == "us-fishing-righting-to");
        Assert.Equal(Math.Atan(0.3 / 2) * 180 / Math.PI, found.Value!.Value, 1e-4);
        Assert.Equal(CriterionVerdict.Fails, found.Verdict);
        Assert.True(UsLeverCriteria.Section28570(Curve).Single(result => result.Id == "us-fishing-righting-to").Value > 30);
    }
}
