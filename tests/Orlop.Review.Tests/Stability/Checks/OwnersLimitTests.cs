using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Orlop.Review.Practices;
using Xunit;

namespace Orlop.Review.Tests.Stability.Checks;

public sealed class OwnersLimitTests
{
    // What the centres give is what she was found to lie at: G plumb over B.
    [Theory]
    [InlineData("list", LimitIds.MostListDeg, "Heel at rest")]
    [InlineData("trim", LimitIds.MostTrimDeg, "Trim at rest")]
    public void Working_GivesTheAngleFromTheTwoCentres(string checkId, string limitId, string line)
    {
        Finding finding = JudgedBox.Of(JudgedBox.Own(limitId, 20), JudgedBox.Bare(tcgM: 0.1, lcgM: 5.3)).Only(checkId);
        Assert.True(finding.Amounts()[0] > 0.5);
        Assert.Equal(finding.Amounts()[0], Math.Abs(finding.Number(line)), 1e-8);
    }

    [Theory]
    [InlineData("list")]
    [InlineData("trim")]
    [InlineData("freeboard")]
    [InlineData("least-gm")]
    [InlineData("roll-period")]
    public void NoLimitSet_NoFinding(string checkId) => Assert.Empty(JudgedBox.Of().Found(checkId));

    // 1 t moved in from 1.5 m to port: G 0.0443787 m off, exact for straight sides.
    [Theory]
    [InlineData(1.5, "to port")]
    [InlineData(-1.5, "to starboard")]
    public void List_OffsetWeight_IsTheWallSidedAngle(double y, string side)
    {
        BoatModel boat = JudgedBox.Of(JudgedBox.Own(LimitIds.MostListDeg, 5), JudgedBox.Gear("ingot", 1000, 5, y, 1.2));
        double mass = JudgedBox.MassKg + 1000, draught = mass / (1025 * 40), bm = 16 / (12 * draught), gm = (draught / 2) + bm - 1.2;
        double expected = JudgedBox.WallSidedDeg(gm, bm, 1000 * 1.5 / mass);
        Finding finding = boat.Only("list");
        Assert.Equal(expected, finding.Amounts()[0], 1e-6);
        Assert.Equal(expected / 5, finding.UseFraction!.Value, 1e-6);
        Assert.Contains(side, finding.Headline.ToString(), StringComparison.Ordinal);
    }

    // tan φ = m d/(Δ GM) for a small angle.
    [Fact]
    public void List_SmallWeight_IsTheSmallAngleFormula()
    {
        double found = JudgedBox.Of(JudgedBox.Own(LimitIds.MostListDeg, 5), JudgedBox.Bare(tcgM: -0.001)).Only("list").Amounts()[0];
        Assert.Equal(Math.Atan(0.001 / JudgedBox.GmM) * 180 / Math.PI, found, 1e-6);
    }

    [Fact]
    public void Trim_OffsetWeight_IsTheWallSidedAngle()
    {
        double bml = 100 / (12 * 0.8), gml = 0.4 + bml - 1.2;
        Finding finding = JudgedBox.Of(JudgedBox.Own(LimitIds.MostTrimDeg, 1), JudgedBox.Bare(lcgM: 4.9)).Only("trim");
        Assert.Equal(JudgedBox.WallSidedDeg(gml, bml, 0.1), finding.Amounts()[0], 1e-6);
        Assert.Contains("by the stern", finding.Headline.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1.0, Verdict.Holds)]
    [InlineData(1.15, Verdict.Tight)]
    [InlineData(1.3, Verdict.Fails)]
    public void Freeboard_Box_IsDepthLessDraught(double least, Verdict verdict)
    {
        Finding finding = JudgedBox.Of(JudgedBox.Own(LimitIds.LeastFreeboardM, least)).Only("freeboard");
        Assert.Equal(verdict, finding.Verdict);
        Assert.Equal(1.2, finding.Amounts()[0], 1e-6);
    }

    // LCG unsure by 0.1 m trims her by 0.1/GML, GML = 0.4 + 100/(12·0.8) − 1.2 = 9.617 m: ± 0.104 m at the ends. The hatch amidships stands lower, 1.15 m, and is sure.
    [Fact]
    public void Freeboard_PlaceWithTheWiderBand_IsHeldToo()
    {
        HullOpening hatch = new() { Id = "vent", Use = OpeningUse.Hatch, Place = new Place(5, 0, 1.95) };
        Finding sure = JudgedBox.Of(JudgedBox.Own(LimitIds.LeastFreeboardM, 1.12), hatch).Only("freeboard");
        Finding unsure = JudgedBox.Of(JudgedBox.Own(LimitIds.LeastFreeboardM, 1.12), hatch, JudgedBox.Bare() with { LcgM = JudgedBox.Sure(5, 0.1) }).Only("freeboard");

        Assert.Equal((Verdict.Tight, Verdict.Unknown), (sure.Verdict, unsure.Verdict));
        Assert.Contains("deck edge at ", unsure.Headline.ToString(), StringComparison.Ordinal);
        Assert.Equal(2 * 5 * 0.1 / (0.4 + (100 / 9.6) - 1.2), unsure.Number("Band"), 1e-3);
    }

    [Fact]
    public void Freeboard_LowHatch_IsNamed() => Assert.Contains(
        "vent", JudgedBox.Of(JudgedBox.Own(LimitIds.LeastFreeboardM, 1), new HullOpening { Id = "vent", Use = OpeningUse.Hatch, Place = new Place(5, 0, 1) }).Only("freeboard").Headline.ToString(), StringComparison.Ordinal);

    [Theory]
    [InlineData(0.5, Verdict.Holds)]
    [InlineData(0.8, Verdict.Tight)]
    [InlineData(0.9, Verdict.Fails)]
    public void Gm_Box_IsTheClosedForm(double least, Verdict verdict)
    {
        Finding finding = JudgedBox.Of(JudgedBox.Own(LimitIds.LeastGmM, least)).Only("least-gm");
        Assert.Equal(verdict, finding.Verdict);
        Assert.Equal(JudgedBox.GmM, finding.Amounts()[0], 1e-6);
    }

    [Fact]
    public void Gm_BandAcrossTheLimit_IsUnknown() => Assert.Equal(
        Verdict.Unknown, JudgedBox.Of(JudgedBox.Own(LimitIds.LeastGmM, 0.8), JudgedBox.Bare(kgPlusMinus: 0.05)).Only("least-gm").Verdict);

    // 0.80 · 4 / √0.8667 = 3.437 s, 6 % unsure by the scatter of 0.80: 3.02 to 3.87 s.
    [Theory]
    [InlineData(LimitIds.LongestRollPeriodS, 5, Verdict.Holds)]
    [InlineData(LimitIds.LongestRollPeriodS, 3.5, Verdict.Unknown)]
    [InlineData(LimitIds.LongestRollPeriodS, 2.5, Verdict.Fails)]
    [InlineData(LimitIds.ShortestRollPeriodS, 2.5, Verdict.Holds)]
    [InlineData(LimitIds.ShortestRollPeriodS, 4.5, Verdict.Fails)]
    public void RollPeriod_HeldWithTheScatterOfItsFactor(string limitId, double limit, Verdict verdict)
    {
        Finding finding = JudgedBox.Of(JudgedBox.Own(limitId, limit)).Only("roll-period");
        Assert.Equal(verdict, finding.Verdict);
        Assert.Equal(3.2 / Math.Sqrt(JudgedBox.GmM), finding.Amounts()[0], 1e-6);
    }

    // T = f B/√GM: ∂T/∂f = T/f, ∂T/∂KG = T/(2 GM). What the other leaves of half the distance to the limit, over the slope. T 3.4374 s.
    [Theory]
    [InlineData(0.01, 3.6, "a rolling test, timed where an inclining test tells her GM, that knows f")]
    [InlineData(0.12, 3.9, "an inclining test that knows KG")]
    public void RollPeriod_BandAcrossTheLimit_NamesTheTestThatSettlesItAndHowWell(double kgPlusMinus, double limit, string test)
    {
        Finding finding = JudgedBox.Of(JudgedBox.Own(LimitIds.LongestRollPeriodS, limit), JudgedBox.Bare(kgPlusMinus: kgPlusMinus)).Only("roll-period");
        double period = 3.2 / Math.Sqrt(JudgedBox.GmM), perFactor = period / 0.8, perKg = period / (2 * JudgedBox.GmM), margin = limit - period;
        bool isRolling = test.Contains("rolling", StringComparison.Ordinal);
        double left = Math.Sqrt((margin * margin / 4) - Math.Pow(isRolling ? perKg * kgPlusMinus : perFactor * 0.05, 2)) / (isRolling ? perFactor : perKg);
        string said = finding.Headline.ToString();

        Assert.Equal(Verdict.Unknown, finding.Verdict);
        Assert.Contains("her weight and her rolling factor are so unsure", said, StringComparison.Ordinal);
        Assert.Contains($"{test} to ± ", said, StringComparison.Ordinal);
        string told = said.Split($"{test} to ± ")[1].Split(' ')[0];
        Assert.Equal(2 * left, double.Parse(told, CultureInfo.InvariantCulture), 0.001 + (0.02 * 2 * left));
        Assert.EndsWith("(two standard deviations) would settle it", said, StringComparison.Ordinal);
    }

    // 3.4374 s is 3 ms from the limit: no test is that fine, and f makes most of the band.
    [Fact]
    public void RollPeriod_TooNearForOneTest_NamesWhatWouldDoMost() => Assert.Contains(
        "too near the limit for one berth test to settle; a rolling test, timed where an inclining test tells her GM, that knows f better would do most",
        JudgedBox.Of(JudgedBox.Own(LimitIds.LongestRollPeriodS, 3.44)).Only("roll-period").Headline.ToString(), StringComparison.Ordinal);

    // Told so well by her own test, it holds: what the sentence asks for is enough.
    [Theory]
    [InlineData(0.015, Verdict.Tight)]
    [InlineData(0.03, Verdict.Unknown)]
    public void RollPeriod_OwnFactor_SettlesItWhenKnownSoWell(double plusMinus, Verdict verdict) => Assert.Equal(
        verdict,
        JudgedBox.Of(JudgedBox.Own(LimitIds.LongestRollPeriodS, 3.6), JudgedBox.Bare(kgPlusMinus: 0.01), new RollingTest { Id = "own", On = new DateOnly(2026, 5, 1), RollingFactor = JudgedBox.Sure(0.8, plusMinus) }).Only("roll-period").Verdict);

    [Fact]
    public void RollPeriod_NoBeam_IsUnknown() => JudgedBox.Of(JudgedBox.Own(LimitIds.LongestRollPeriodS, 5), new Particulars { Id = "particulars" }).Only("roll-period").IsUnknownFor("particulars", "beamM");

    [Fact]
    public void OwnersOnlyLimits_AreLimitsThatCount()
    {
        BoatModel boat = JudgedBox.Of(new PracticeChoice { Id = "practice", Basis = "owner", Own = [.. LimitIds.OwnersOnly.Select(id => new OwnLimit(id, 1, "as wanted"))] });
        Assert.Equal(Verdict.Holds, Assert.Single(boat.Findings(), pair => pair.CheckId == "owner-limit").Shown.Verdict);
    }

    [Fact]
    public void TooHeavyToFloat_FailsWithoutANumber()
    {
        BoatModel boat = JudgedBox.Of(JudgedBox.Own(LimitIds.LeastGmM, 0.1), JudgedBox.Bare(massKg: 90_000));
        Finding finding = boat.Only("floats-at-rest");
        Assert.Equal((Verdict.Fails, null), (finding.Verdict, finding.UseFraction));
        Assert.Equal(0.1, finding.Number("Not kept either"));
        Assert.Empty(boat.Found("least-gm"));
    }

    // GM stands 1 mm over its limit: no test of a small boat is that fine. A chest of 500 kg ± 100 kg makes most of the band, or nothing on the list does.
    [Theory]
    [InlineData(100, 1e-6, "too near the limit for one berth test to settle; weighing chest, ± 200 kg now, would")]
    [InlineData(0.001, 0.05, "too near the limit for one berth test to settle; no thing listed makes much of it")]
    public void BandThatNoTestSettles_SaysWhatWould(double chestPlusMinusKg, double kgPlusMinusM, string said)
    {
        double mass = JudgedBox.MassKg + 500, draught = mass / (1025 * 40), gm = (draught / 2) + (16 / (12 * draught)) - (((JudgedBox.MassKg * 1.2) + (500 * 3)) / mass);
        Finding finding = JudgedBox.Of(
            JudgedBox.Own(LimitIds.LeastGmM, gm - 0.001), JudgedBox.Bare(kgPlusMinus: kgPlusMinusM), JudgedBox.Gear("chest", 500, 5, 0, 3) with { MassKg = JudgedBox.Sure(500, chestPlusMinusKg) }).Only("least-gm");
        Assert.Equal(Verdict.Unknown, finding.Verdict);
        Assert.Contains(said, finding.Headline.ToString(), StringComparison.Ordinal);
    }
}
