using Orlop.Hull.Criteria;
using Orlop.Hull.Floating;
using Orlop.Hull.Surfaces;
using Orlop.Hull.Tests.Floating;
using Xunit;

namespace Orlop.Hull.Tests.Criteria;

public sealed class GeneralCriteriaTests
{
    [Fact]
    public void Check_EarlyDownflooding_EndsTheAreasAndFailsTheRest()
    {
        var results = Check(180, new Opening("hatch", new Point3(5, -2, 1.4)));
        var byId = results.ToDictionary(result => result.Id);
        // Case A floods at atan(0.6/2) = 16.7°; closed form of the wall-sided area, stability.md 1.1.
        var heel = Math.Atan(0.3);
        Assert.Equal((0.8666666666666667 * (1 - Math.Cos(heel))) + (0.5 * 1.6666666666666667 * ((1 / Math.Cos(heel)) + Math.Cos(heel) - 2)), byId["area-to-30"].Value!.Value, 1e-9);
        Assert.Equal(0, byId["area-30-to-40"].Value!.Value, 1e-12);
        Assert.Equal(CriterionVerdict.Fails, byId["area-30-to-40"].Verdict);
        Assert.Equal(CriterionVerdict.Fails, byId["lever-at-30"].Verdict);
        Assert.Equal(CriterionVerdict.Fails, byId["heel-of-greatest-lever"].Verdict);
        Assert.Contains("hatch goes under", byId["area-to-30"].Remarks[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Check_CurveTooShort_IsUnknownNotMet()
    {
        var byId = Check(20).ToDictionary(result => result.Id);
        Assert.Equal(CriterionVerdict.Unknown, byId["area-to-30"].Verdict);
        Assert.Equal(CriterionVerdict.Unknown, byId["area-to-40"].Verdict);
        Assert.Equal(CriterionVerdict.Unknown, byId["lever-at-30"].Verdict);
        Assert.Equal(CriterionVerdict.Meets, byId["initial-gm"].Verdict);
    }

    [Fact]
    public void Check_DoesNotFloat_IsUnknownAndSaysWhy()
    {
        var curve = RightingCurve.Calculate(new RightingInput { Boat = Boats.Barge(4, 2, 0.8, 1.2) with { MassKg = 90_000 } });
        Assert.All(GeneralCriteria.Check(curve), result =>
        {
            Assert.Equal(CriterionVerdict.Unknown, result.Verdict);
            Assert.Contains("82000 kg", result.Remarks[0], StringComparison.Ordinal);
        });
    }

    [Fact]
    public void Check_ToPort_IsTheSameAsToStarboard() =>
        Assert.All(Check(180).Zip(Check(-180)), pair => Assert.Equal(pair.First.Value!.Value, pair.Second.Value!.Value, 1e-5));

    [Fact]
    public void Check_TopHeavy_Fails()
    {
        var curve = RightingCurve.Calculate(new RightingInput { Boat = Boats.Barge(4, 2, 1.6, 2.5) });
        Assert.All(GeneralCriteria.Check(curve), result => Assert.Equal(CriterionVerdict.Fails, result.Verdict));
    }

    private static IReadOnlyList<CriterionResult> Check(double toDeg, params Opening[] openings) =>
        GeneralCriteria.Check(RightingCurve.Calculate(new RightingInput { Boat = Boats.Barge(4, 2, 0.8, 1.2), ToDeg = toDeg, Openings = [.. openings] }));
}
