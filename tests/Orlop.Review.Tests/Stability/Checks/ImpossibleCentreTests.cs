using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Orlop.Review.Practices;
using Orlop.Review.Stability;
using Xunit;

namespace Orlop.Review.Tests.Stability.Checks;

/// <summary>A centre of gravity that no boat of her hull has. Box at 0.8 m: KM 2.0667 m (closed form); nothing typed of the bare boat, freeboards and rolls tell all of her.</summary>
public sealed class ImpossibleCentreTests
{
    private const double KmM = 0.4 + JudgedBox.BmM;
    private const double RollS = 0.80 * 4;

    // Half rolls counted whole: half the period is four times the GM of 0.8667 m, 3.4667 m, which is KG −1.4 m, 1.4 m below the keel.
    [Fact]
    public void HalfRollsCountedWhole_FailAndLetNothingHold()
    {
        BoatModel right = Rolled(JudgedBox.GmM, 0.01), half = Rolled(4 * JudgedBox.GmM, 0.01);
        Finding test = half.Only("berth-test-agrees", "rolling"), least = half.Only("least-gm");

        Assert.Null(right.View().Weight.Impossible);
        Assert.Equal(Verdict.Holds, right.Only("least-gm").Verdict);
        Assert.Equal(Verdict.Fails, test.Verdict);
        Assert.Contains("did you count half rolls? A roll is there and back", test.Headline.ToString(), StringComparison.Ordinal);
        Assert.Equal((4 * JudgedBox.GmM) - KmM, test.Amounts()[0], 5e-3);
        Assert.Equal(Verdict.Unknown, least.Verdict);
        Assert.Contains("where no boat has it", least.Headline.ToString(), StringComparison.Ordinal);
        Assert.Equal((4 * JudgedBox.GmM) - KmM, half.View().BelowKeelM(half.Find<RollingTest>("rolling")!)!.Value, 5e-3);
        Assert.Null(right.View().BelowKeelM(right.Find<RollingTest>("rolling")!));
    }

    // GM 2.2 m ± 0.55 m (two deviations of f): KG −0.13 m, and that may as well be above the keel.
    [Fact]
    public void BandThatReachesBack_IsUnknown()
    {
        BoatModel boat = Rolled(2.2, 0.05);

        Assert.False(boat.View().Weight.Impossible!.IsSure);
        Assert.Equal(Verdict.Unknown, boat.Only("berth-test-agrees", "rolling").Verdict);
        Assert.Equal(Verdict.Unknown, boat.Only("least-gm").Verdict);
    }

    // 8 t listed 1.9 m up of 32.8 t with KG 0.3 m: all the rest, 24.8 t, would lie at (32.8·0.3 − 8·1.9)/24.8 = −0.216 m.
    [Fact]
    public void AllTheRest_BelowTheKeel_IsOutOfReachThoughTheWholeIsNot()
    {
        ImpossibleCentre found = Rolled(KmM - 0.3, 0.002, JudgedBox.Gear("tower", 8000, 5, 0, 1.9)).View().Weight.Impossible!;

        Assert.StartsWith("all the rest", found.Of, StringComparison.Ordinal);
        Assert.Equal(((JudgedBox.MassKg * 0.3) - (8000 * 1.9)) / (JudgedBox.MassKg - 8000), found.KgM, 5e-3);
        Assert.True(found.IsSure);
    }

    // No test tells KG: the bare boat's own figure, over her deck edge at 2 m, where nothing is listed higher.
    [Theory]
    [InlineData(2.3, true)]
    [InlineData(1.9, false)]
    public void BareBoatsOwnFigure_IsHeldToTheSame(double kgM, bool isFound)
    {
        BoatModel boat = JudgedBox.Of(JudgedBox.Bare(kgM: kgM));

        Assert.Equal(isFound, boat.View().Weight.Impossible is not null);
        Assert.Equal(isFound, boat.Found("berth-test-agrees").Any(finding => finding is { SubjectId: "bare-boat", Verdict: Verdict.Fails }));
    }

    private static BoatModel Rolled(double gmM, double factorDeviation, params Gear[] aboard)
    {
        AboardItem[] listed = [.. aboard.Select(gear => new AboardItem(gear.Id, gear.MassKg!.Value, gear.Place!))];
        BoatModel boat = JudgedBox.Of(
        [
            .. aboard,
            JudgedBox.Own(LimitIds.LeastGmM, 0.05),
            new FreeboardSurvey
            {
                Id = "survey",
                Aboard = [.. listed],
                IsBare = listed.Length == 0,
                Marks = [.. new[] { 0.0, 10 }.SelectMany(x => new[] { -2.0, 2 }.Select(y => new FreeboardMark($"mark {x} {y}", new Place(x, y, 2), 1.2)))],
            },
            new RollingTest
            {
                Id = "rolling",
                Aboard = [.. listed],
                IsBare = listed.Length == 0,
                RollingFactor = new Quantity(0.80, Knowledge.Measured, factorDeviation),
                Runs = [new TimedRolls(100, 100 * RollS / Math.Sqrt(gmM))],
            },
        ]);
        return boat with { Things = [.. boat.Things.Where(thing => thing is not BareBoat)] };
    }
}
