using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Stability;
using Orlop.Review.Tests.Stability.Checks;
using Xunit;

namespace Orlop.Review.Tests.Stability;

public sealed class MotionAtTests
{
    private static readonly StatedMotion Rolling = new(RollDeg: 20, PitchDeg: 0, PitchPeriodS: 5, HeaveM: 0.5, HeavePeriodS: 4);

    // Harmonic motion by hand: a box, centre of flotation amidships at the water, 0.8 m up; the place 3 m above it and 1 m to port. T = f·B/√GM with f 0.80, Res. A.749(18) annex 3.
    [Fact]
    public void Place_FeelsRollAndHeaveByHand()
    {
        MotionAt found = At(Rolling, new Place(5, 1, 3.8));

        double period = 0.80 * 4 / Math.Sqrt(JudgedBox.GmM), roll = 20 * Math.PI / 180, turning = Math.Pow(2 * Math.PI / period, 2) * roll, heave = Math.Pow(2 * Math.PI / 4, 2) * 0.5;
        Assert.True(found.IsPeriodPredicted);
        Assert.Equal((9.81 * Math.Sin(roll)) + (turning * 3), found.Result!.AcrossMPerS2, 1e-3);
        Assert.Equal(0, found.Result.AlongMPerS2, 1e-9);
        Assert.Equal(9.81 + turning + heave, found.Result.MostDownMPerS2, 1e-3);
        Assert.Equal(20, found.Result.TiltDeg, 1e-9);
        Assert.Contains(found.Working, line => line.What == "Roll period, predicted" && line.Source.Contains("A.749", StringComparison.Ordinal));
    }

    [Fact]
    public void Place_StatedPeriod_IsTaken()
    {
        MotionAt found = At(Rolling with { RollPeriodS = 6 }, new Place(5, 0, 3.8));

        Assert.False(found.IsPeriodPredicted);
        Assert.Equal((9.81 * Math.Sin(20 * Math.PI / 180)) + (Math.Pow(2 * Math.PI / 6, 2) * 20 * Math.PI / 180 * 3), found.Result!.AcrossMPerS2, 1e-3);
    }

    [Fact]
    public void Place_NothingStated_IsUnknownAndSaysWhatIsMissing()
    {
        MotionAt found = At(null, new Place(5, 0, 3));

        Assert.Null(found.Result);
        Assert.Contains(found.Missing, input => input is { ThingId: "at-sea", Field: "motion", IsMissing: true });
    }

    [Fact]
    public void Place_NoHull_IsUnknown()
    {
        StabilityView view = JudgedBox.Of(new Condition { Id = "at-sea", Name = "At sea", Motion = Rolling }).Without("hull-lines").View();
        Assert.Null(MotionAt.Of(view, view.Conditions[0], new Place(5, 0, 3), "chest").Result);
    }

    // A heave of 5 m in 1 s is beyond what the method is for: refused, with no number.
    [Fact]
    public void Place_BeyondTheMethod_IsRefused()
    {
        MotionAt found = At(Rolling with { HeaveM = 5, HeavePeriodS = 1 }, new Place(5, 0, 3));
        Assert.Null(found.Result);
        Assert.NotNull(found.WhyNot);
    }

    private static MotionAt At(StatedMotion? motion, Place place)
    {
        StabilityView view = JudgedBox.Of(new Condition { Id = "at-sea", Name = "At sea", Motion = motion }).View();
        return MotionAt.Of(view, view.Conditions[0], place, "chest");
    }
}
