using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Review.Tests.Stability.Checks;

public sealed class ProofTestCheckTests
{
    private const double PeopleKg = 6 * 83.9;

    private static readonly StabilityBasis Chosen = JudgedBox.Rules(StabilityRule.SimplifiedUnited) with
    {
        PeopleCount = 6,
        PeopleBreadthM = 3.6,
        WindAreaM2 = 15,
        WindCentreM = 2.0,
        CockpitLengthM = 0,
        Waters = Waters.PartiallyProtected,
    };

    // 46 CFR 178.330: M = W·B/6 = 503.4 · 3.6/6 = 302.0 kg m for people; wind 48.8 · 15 · 1.188 = 869 kg m is the greater. Half of the freeboard may go under. Box: GZ cos-law, wall-sided.
    [Fact]
    public void Box_WindGreater_LeavesFreeboardByTheClosedForm()
    {
        Finding immersion = Box(Chosen).Only("proof-test", "stability-basis.us-proof-immersion"), heel = Box(Chosen).Only("proof-test", "stability-basis.us-proof-heel");
        double mass = JudgedBox.MassKg + PeopleKg, draught = mass / (1025 * 40), kg = ((JudgedBox.MassKg * 1.2) + (PeopleKg * 2.5)) / mass;
        double bm = 16 / (12 * draught), gm = (draught / 2) + bm - kg, moment = 48.8 * 15 * (2 - draught);
        double phi = JudgedBox.WallSidedDeg(gm, bm, moment / mass) * Math.PI / 180;
        Assert.Equal(Verdict.Holds, immersion.Verdict);
        Assert.Equal(((2 - draught) / 2) - (2 * Math.Tan(phi)), immersion.Amounts()[0], 2e-3);
        Assert.Equal(14 - (phi * 180 / Math.PI), heel.Amounts()[0], 0.02);
        Assert.Equal(moment, Moment(heel, "M wind"), 1);
        Assert.Equal(PeopleKg * 3.6 / 6, Moment(heel, "M persons"), 0.1);
    }

    [Fact]
    public void MuchWind_Fails()
    {
        Finding finding = Box(Chosen with { WindAreaM2 = 200 }).Only("proof-test", "stability-basis.us-proof-heel");
        Assert.Equal(Verdict.Fails, finding.Verdict);
        Assert.Contains("heels past 14° by", finding.Headline.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void AnythingNotGiven_IsUnknown()
    {
        StabilityBasis[] gaps =
        [
            Chosen with { PeopleCount = null }, Chosen with { PeopleBreadthM = null }, Chosen with { WindAreaM2 = null },
            Chosen with { WindCentreM = null }, Chosen with { CockpitLengthM = null }, Chosen with { Waters = null },
        ];
        Assert.All(gaps, gap => Assert.All(Box(gap).Found("proof-test"), finding => Assert.Equal(Verdict.Unknown, finding.Verdict)));
        Assert.All(JudgedBox.Of(Chosen).Found("proof-test"), finding => Assert.Equal(Verdict.Unknown, finding.Verdict));
    }

    // 46 CFR 178.310: to 19.8 m.
    [Fact]
    public void LongerBoat_IsUnknownAndSaysSo()
    {
        Finding finding = Box(Chosen, new Particulars { Id = "particulars", LengthOverAllM = 25, BeamM = 4, WaterDensityKgPerM3 = 1025 }).Only("proof-test", "stability-basis.us-proof-heel");
        Assert.Equal(Verdict.Unknown, finding.Verdict);
        Assert.Contains("19.8 m", finding.Headline.ToString(), StringComparison.Ordinal);
    }

    // G so far to port that she rests at 3.4° to port: to starboard the moment rights her to where GZ(φ) = M·cos φ/Δ, that is (GM + ½ BM tan² φ)·tan φ = y − M/Δ (wall-sided); to port, the worse side, to y + M/Δ.
    [Theory]
    [InlineData(1)]
    [InlineData(-1)]
    public void BoatWithAList_IsRightedPartOfTheWay_AndJudgedOnTheOtherSide(int toPort)
    {
        const double WindAreaM2 = 4;
        double mass = JudgedBox.MassKg + PeopleKg, draught = mass / (1025 * 40), kg = ((JudgedBox.MassKg * 1.2) + (PeopleKg * 2.5)) / mass;
        double bm = 16 / (12 * draught), gm = (draught / 2) + bm - kg, off = 0.05 * JudgedBox.MassKg / mass, lever = 302.04 / mass;
        BoatModel boat = Box(Chosen with { WindAreaM2 = WindAreaM2 }, JudgedBox.Bare(tcgM: toPort * 0.05));
        Finding heel = boat.Only("proof-test", "stability-basis.us-proof-heel");

        Assert.Equal(Verdict.Holds, heel.Verdict);
        Assert.Equal(14 - JudgedBox.WallSidedDeg(gm, bm, off + lever), heel.Amounts()[0], 0.02);
        Assert.Equal(JudgedBox.WallSidedDeg(gm, bm, off + lever), heel.Amounts()[1], 0.02);
        Assert.EndsWith(toPort > 0 ? "to port" : "to starboard", heel.Headline.ToString(), StringComparison.Ordinal);
        Assert.All(boat.Found("proof-test"), finding => Assert.DoesNotContain("never reach", finding.Headline.ToString(), StringComparison.Ordinal));
    }

    // A tank that the condition leaves empty is three-quarters full at the test: 0.75 · 1 m³ of water low in the boat.
    [Fact]
    public void Tanks_AreThreeQuartersFullAtTheTest()
    {
        Tank tank = new() { Id = "water", From = new Place(4, -0.5, 0), To = new Place(5, 0.5, 1), LiquidKgPerM3 = 1000, FillFraction = 0 };
        Finding without = Box(Chosen).Only("proof-test", "stability-basis.us-proof-heel"), with = Box(Chosen, tank).Only("proof-test", "stability-basis.us-proof-heel");
        Assert.True(with.Amounts()[0] != without.Amounts()[0]);
        Assert.Contains("all tanks 0.75 full", string.Concat(with.Working.Select(line => line.Expression)), StringComparison.Ordinal);
    }

    private static BoatModel Box(StabilityBasis basis, params Thing[] more) =>
        JudgedBox.Of([basis, JudgedBox.Aboard("crew", DeadweightUse.People, 75, 5, 0, 2.5, 2), .. more]);

    private static double Moment(Finding finding, string what)
    {
        string expression = Assert.Single(finding.Working, line => line.What == what).Expression;
        return double.Parse(expression[(expression.LastIndexOf('=') + 1)..].Replace("kg m", "", StringComparison.Ordinal), System.Globalization.CultureInfo.InvariantCulture);
    }
}
