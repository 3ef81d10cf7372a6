using Orlop.Hull.Criteria;
using Orlop.Hull.Floating;
using Orlop.Hull.Surfaces;
using Orlop.Hull.Tests.Floating;
using Xunit;

namespace Orlop.Hull.Tests.Criteria;

public sealed class WeatherCriterionTests
{
    // 80 % of the deck-edge angle, or 16°, whichever is less (from memory, stability reference 4.2).
    [Theory]
    [InlineData(15.0, 12.0)]
    [InlineData(20.0, 16.0)]
    [InlineData(40.0, 16.0)]
    public void SteadyHeel_DeckEdge_LimitsTheHeel(double deckEdgeDeg, double limitDeg)
    {
        var result = WeatherCriterion.Check(Input() with { DeckEdgeDeg = deckEdgeDeg });
        Assert.Equal(limitDeg - result.Areas!.SteadyHeelDeg!.Value, result.SteadyHeel.Value!.Value, 1e-12);
        Assert.DoesNotContain(result.SteadyHeel.Remarks, remark => remark.Contains("deck-edge", StringComparison.Ordinal));
    }

    [Fact]
    public void SteadyHeel_NoDeckEdge_SaysWhatItIsHeldAgainst() =>
        Assert.Contains(WeatherCriterion.Check(Input()).SteadyHeel.Remarks, remark => remark.Contains("16° alone", StringComparison.Ordinal));

    [Fact]
    public void Reserve_EarlyDownflooding_EndsAreaB()
    {
        var result = WeatherCriterion.Check(Input(new Opening("hatch", new Point3(5, -2, 1.4))));
        Assert.Equal(Math.Atan(0.3) * 180 / Math.PI, result.Areas!.EndDeg!.Value, 1e-6);
        Assert.True(result.Areas.AreaBMRad < WeatherCriterion.Check(Input()).Areas!.AreaBMRad);
    }

    [Fact]
    public void Reserve_FloodingBeforeTheGustHeel_LeavesNone()
    {
        var result = WeatherCriterion.Check(Input(new Opening("low vent", new Point3(5, -2, 0.82))));
        Assert.Equal(0, result.Areas!.AreaBMRad);
        Assert.Equal(CriterionVerdict.Fails, result.Reserve.Verdict);
    }

    [Fact]
    public void Check_CurvesToOneSide_IsRefused()
    {
        var input = Input();
        Assert.Contains("one to each side", Assert.Throws<ArgumentException>(() => WeatherCriterion.Check(input with { Windward = input.Leeward })).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => WeatherCriterion.Check(input with { WindAreaM2 = double.NaN }));
        Assert.Throws<ArgumentOutOfRangeException>(() => WeatherCriterion.Check(input with { DeckEdgeDeg = 0 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => WeatherCriterion.Check(input with { Roll = input.Roll with { BlockCoefficient = double.NaN } }));
    }

    private static WeatherInput Input(params Opening[] openings)
    {
        RightingCurve Side(double toDeg) => RightingCurve.Calculate(new RightingInput { Boat = Boats.Barge(4, 2, 0.8, 1.2), ToDeg = toDeg, Openings = [.. openings] });
        return new WeatherInput
        {
            Leeward = Side(180),
            Windward = Side(-180),
            WindAreaM2 = 25,
            WindLeverM = 1.8,
            Roll = new RollbackInput { Subject = "barge", WaterlineLengthM = 10, BeamM = 4, DraughtM = 0.8, BlockCoefficient = 1, KgM = 1.2, GmM = 0.8666666667, Bilge = BilgeShape.Round },
        };
    }
}
