using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Orlop.Review.Stability;
using Orlop.Review.Tests.Stability.Checks;
using Xunit;

namespace Orlop.Review.Tests.Stability;

/// <summary>A box of 32.8 t, KM 2.0667 m and KG 1.2 m, inclined in salt water: moment = displacement·GM·tan heel.</summary>
public sealed class WeakTestTests
{
    private const double MomentPerTan = 32_800 * (2.0666667 - 1.2);

    private static readonly double[] Eight = [1, 2, 1, 0, -1, -2, -1, 0];

    // 600 kg moved 2 m heels her by atan(1200/28 427) = 2.4°: between the 2° and 4° of annex 1, to both sides, eight shifts.
    [Fact]
    public void TestAsTheCodeAsksForIt_IsNotWeak() => Assert.Empty(Boat(600, Eight).View().Weight.Weak);

    // A tenth of that moment, four shifts, and readings that scatter by a fiftieth of the largest heel.
    [Theory]
    [InlineData(60, 8, 0, "largest heel 0.2°; 2° to 4° is asked for")]
    [InlineData(600, 6, 0, "6 readings; the zero and six shifts are the least")]
    [InlineData(600, 8, 0.09, "the line fits badly: its slope is known to ±")]
    public void WeakTest_CountsAndSaysWhy(double massKg, int count, double scatter, string why)
    {
        BoatModel boat = Boat(massKg, [.. Eight.Take(count)], scatter);
        WeakTest weak = Assert.Single(boat.View().Weight.Weak);
        Finding finding = boat.Only("berth-test-agrees", "inclining");

        Assert.Contains(why, weak.Why, StringComparison.Ordinal);
        Assert.Empty(boat.View().Weight.Trouble);
        Assert.Contains($"it is weak, and {weak.Share}", finding.Headline.ToString(), StringComparison.Ordinal);
        Assert.Contains(finding.Working, line => line.Expression.StartsWith($"weak: {why}", StringComparison.Ordinal) || line.Expression.Contains(why, StringComparison.Ordinal));
        Assert.Contains(boat.Only("floats-at-rest").Working, line => line.What == weak.Title && line.Expression.Contains(weak.Share, StringComparison.Ordinal));
    }

    // Two measurements of one number: the share of the second is its information over that of both. KG ± 0.05 m by the list; 60 kg moved up to 1 m on a pendulum of 2 m tells the slope to 0.5 mm/2 m over √Σtan²,
    // and KG to that share of GM (displacement sure to a gram).
    [Fact]
    public void Share_IsThatOfItsInformation()
    {
        double[] tangents = [.. Eight.Select(moved => 60 * moved / MomentPerTan)];
        double mean = tangents.Average(), spread = Math.Sqrt(tangents.Sum(tangent => Math.Pow(tangent - mean, 2)));
        double deviation = (2.0666667 - 1.2) * 0.00025 / spread;
        double expected = (1 / (deviation * deviation)) / ((1 / (deviation * deviation)) + (1 / (0.05 * 0.05)));

        Assert.Equal(expected, Assert.Single(Boat(60, Eight).View().Weight.Weak).KgShareFraction, 0.01);
        Assert.InRange(expected, 0.1, 0.9);
    }

    // With nothing else that tells KG all rests on it.
    [Fact]
    public void WeakTestAlone_IsAllThatIsKnown()
    {
        BoatModel boat = Boat(60, Eight).Without("bare-boat");
        Assert.Contains("all that is known of KG rests on it", Assert.Single(boat.With(Survey()).View().Weight.Weak).Share, StringComparison.Ordinal);
    }

    // Readings that lie alternately a fifth of the largest heel above and below make no straight line: they count for nothing and the finding is unknown.
    [Fact]
    public void ShiftsThatMakeNoStraightLine_TellNothing()
    {
        BoatModel boat = Boat(600, Eight, 0.2);
        Finding finding = boat.Only("berth-test-agrees", "inclining");

        Assert.Equal(Verdict.Unknown, finding.Verdict);
        Assert.Contains("make no straight line", finding.Headline.ToString(), StringComparison.Ordinal);
        Assert.Contains("2008 IS Code part B 8.4.1.2", finding.Headline.ToString(), StringComparison.Ordinal);
        Assert.Empty(boat.View().Weight.Weak);
        Assert.Equal(JudgedBox.Of(Bare()).View().Weight.Total!.KgDeviationM, boat.View().Weight.Total!.KgDeviationM, 1e-9);
    }

    private static BoatModel Boat(double massKg, double[] moved, double scatter = 0) => JudgedBox.Of(Bare(), new InclinationTest
    {
        Id = "inclining",
        On = new DateOnly(2026, 9, 1),
        IsBare = true,
        WaterDensityKgPerM3 = 1025,
        Readings =
        [
            .. moved.Select((metres, i) => new InclinedReading($"shift {i + 1}", massKg, metres, DeflectionM: 2 * massKg * (metres + (scatter * moved.Max() * (i % 2 == 0 ? 1 : -1))) / MomentPerTan, PendulumM: 2)),
        ],
    });

    private static BareBoat Bare() => JudgedBox.Bare(kgPlusMinus: 0.05);

    private static FreeboardSurvey Survey() => new()
    {
        Id = "survey",
        On = new DateOnly(2026, 9, 1),
        IsBare = true,
        WaterDensityKgPerM3 = 1025,
        Marks =
        [
            new FreeboardMark("aft, port", new Place(0, 2, 2), 1.2), new FreeboardMark("aft, starboard", new Place(0, -2, 2), 1.2),
            new FreeboardMark("fore, port", new Place(10, 2, 2), 1.2), new FreeboardMark("fore, starboard", new Place(10, -2, 2), 1.2),
        ],
    };
}
