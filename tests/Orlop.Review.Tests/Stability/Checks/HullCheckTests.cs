using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Review.Tests.Stability.Checks;

/// <summary>Checks on hull lines and through-hulls.</summary>
public sealed class HullCheckTests
{
    [Theory]
    [InlineData(0.3, true, Verdict.Holds)]
    [InlineData(0.3, false, Verdict.Fails)]
    [InlineData(0.3, null, Verdict.Unknown)]
    [InlineData(0.85, false, Verdict.Fails)]
    [InlineData(1.5, false, Verdict.Holds)]
    [InlineData(1.5, null, Verdict.Holds)]
    public void ThroughHull_ByHeightAndSeacock(double heightM, bool? hasSeacock, Verdict verdict) => Assert.Equal(
        verdict, JudgedBox.Of(Through(new Place(2, 2, heightM), hasSeacock)).Only("through-hull-shuts", "drain").Verdict);

    // A box whose stations are a form's: one finding says so, criteria that hold say it too, what fails or cannot be told needs it not.
    [Theory]
    [InlineData(StationOrigin.Form, "3 of 3 stations are the form's, not measured")]
    [InlineData(StationOrigin.Measured, null)]
    [InlineData(null, null)]
    public void StationsOfAForm_AreOneFinding_AndEveryCriterionThatHoldsSaysSo(StationOrigin? origin, string? said)
    {
        BoatModel boat = JudgedBox.Of(JudgedBox.Own(Orlop.Review.Practices.LimitIds.LeastGmM, 0.3)).Change<HullLines>("hull-lines", lines => lines with { Stations = [.. lines.Stations.Select(station => station with { Origin = origin })] });
        Finding[] told = [.. boat.Found("hull-lines-fair").Where(finding => finding.SubjectId == "hull-lines.measured")];
        Finding gm = boat.Only("least-gm");

        Assert.Equal(said is null ? 0 : 1, told.Length);
        Assert.All(told, finding => Assert.Equal(Verdict.Unknown, finding.Verdict));
        Assert.All(told, finding => Assert.Contains(said!, finding.Headline.ToString(), StringComparison.Ordinal));
        Assert.Equal(Verdict.Holds, gm.Verdict);
        Assert.Equal(said is not null, gm.Headline.ToString().Contains("stations", StringComparison.Ordinal));
        Assert.Equal(said is null ? [] : [said], gm.Working.Where(line => line.What == "Hull").Select(line => line.Expression));
    }

    [Fact]
    public void ThroughHull_WithoutPlace_IsUnknown() => JudgedBox.Of(Through(null, false)).Only("through-hull-shuts", "drain").IsUnknownFor("drain", "place");

    [Fact]
    public void ThroughHull_SeacockNotTold_NamesTheField() => JudgedBox.Of(Through(new Place(2, 2, 0.3), null)).Only("through-hull-shuts", "drain").IsUnknownFor("drain", "hasSeacock");

    [Fact]
    public void ThroughHull_WeightUnsure_IsUnknown() => Assert.Equal(
        Verdict.Unknown, JudgedBox.Of(Through(new Place(2, 2, 0.95), false), JudgedBox.Bare(massPlusMinus: 4000)).Only("through-hull-shuts", "drain").Verdict);

    [Fact]
    public void ThroughHull_IsNoDownflooding() => Assert.Equal(
        Verdict.Holds, JudgedBox.Of(JudgedBox.Rules(StabilityRule.GeneralIntact), Through(new Place(2, 2, 0.3), true)).Only("general-intact", "particulars.area-to-40").Verdict);

    // A box 0.8 m deep in the water: an outlet at the side, 2 m off and 1.5 m up, goes under at atan(0.7/2) = 19.29° (wall-sided, draught amidships unchanged by heel).
    [Theory]
    [InlineData(OpeningUse.ThroughHull, false, null, true)]
    [InlineData(OpeningUse.ThroughHull, null, null, true)]
    [InlineData(OpeningUse.ThroughHull, true, false, true)]
    [InlineData(OpeningUse.Exhaust, null, null, true)]
    [InlineData(OpeningUse.ThroughHull, true, null, false)]
    [InlineData(OpeningUse.ThroughHull, true, true, false)]
    public void ThroughHull_WithoutATightSeacock_FloodsAsAVentDoes(OpeningUse use, bool? hasSeacock, bool? isTight, bool floods)
    {
        HullOpening drain = Through(new Place(5, 2, 1.5), hasSeacock) with { Use = use, IsTightWhenShut = isTight };
        double? flooding = JudgedBox.Of(drain).Floating("at-sea").Port.Features.DownfloodingDeg;

        Assert.Equal(floods, flooding is { } heel && Math.Abs(Math.Abs(heel) - 19.29) < 0.05);
    }

    // A swan neck at the centre line, 1.9 m up, stays dry where its outlet goes under.
    [Fact]
    public void ThroughHull_WithALoop_FloodsOverItsTop()
    {
        HullOpening exhaust = Through(new Place(5, 2, 1.5), false) with { LoopTop = new Place(5, 0, 1.9) };
        double? flooding = JudgedBox.Of(exhaust).Floating("at-sea").Port.Features.DownfloodingDeg;

        Assert.False(flooding is { } heel && Math.Abs(heel) < 30, $"floods at {flooding}");
    }

    [Fact]
    public void ThroughHull_HighUp_IsNotApproved()
    {
        string said = JudgedBox.Of(Through(new Place(2, 2, 1.5), false)).Only("through-hull-shuts", "drain").Headline.ToString();

        Assert.DoesNotContain("needs no", said, StringComparison.Ordinal);
        Assert.Contains("lets water in", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Lines_OfTheBox_Hold() => Assert.Equal(Verdict.Holds, JudgedBox.Of().Only("hull-lines-fair", "hull-lines").Verdict);

    [Fact]
    public void Lines_UpsideDown_FailAndSayWhere()
    {
        HullStation wrong = new() { Name = "aft", Points = [new StationPoint(0, 2, 2), new StationPoint(0, 2, 0)] };
        Finding finding = JudgedBox.Of().Change<HullLines>("hull-lines", lines => lines with { Stations = [wrong, .. lines.Stations.Skip(1)] }).Only("hull-lines-fair", "hull-lines");
        Assert.Equal(Verdict.Fails, finding.Verdict);
        Assert.Contains("aft", finding.Headline.ToString(), StringComparison.Ordinal);
    }

    // A round form of seven stations whose fourth has one point 0.2 m too far out.
    [Fact]
    public void Lines_PointOffItsNeighbours_IsDoubted()
    {
        HullLines lines = new() { Id = "hull-lines", Stations = [.. Enumerable.Range(0, 7).Select(i => Round(i, i == 3 ? 0.2 : 0))] };
        Finding[] doubts = [.. JudgedBox.Of(lines).Found("hull-lines-fair").Where(finding => finding.Verdict == Verdict.Unknown)];
        Assert.Contains(doubts, finding => finding.SubjectId.StartsWith("hull-lines.station 3-", StringComparison.Ordinal));
    }

    private static HullStation Round(int number, double outM)
    {
        double breadth = 2 - (0.05 * Math.Pow(number - 3, 2));
        return new HullStation
        {
            Name = $"station {number}",
            Points = [.. Enumerable.Range(0, 6).Select(k => new StationPoint(number * 1.5, (breadth * Math.Sin(k * Math.PI / 10)) + (k == 3 ? outM : 0), 2 - (2 * Math.Cos(k * Math.PI / 10))))],
        };
    }

    private static HullOpening Through(Place? place, bool? hasSeacock) => new() { Id = "drain", Use = OpeningUse.ThroughHull, Place = place, HasSeacock = hasSeacock };
}
