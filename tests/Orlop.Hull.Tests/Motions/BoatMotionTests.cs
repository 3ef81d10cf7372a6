using Orlop.Hull.Motions;
using Orlop.Hull.Surfaces;
using Xunit;

namespace Orlop.Hull.Tests.Motions;

public sealed class BoatMotionTests
{
    private static readonly MotionInput Still = new()
    {
        Subject = "crate",
        Place = new Point3(5, 0, 3),
        Centre = new Point3(5, 0, 1),
        RollDeg = 0,
        RollPeriodS = 4,
        PitchDeg = 0,
        PitchPeriodS = 4,
        HeaveMPerS2 = 0,
    };

    // Stability reference, section 7.2 (computed there): roll 30°, 4 s, 2 m over the axis 7.489 m/s²; 20° 5.078; 30°, 3.5 s, 2.5 m 9.124.
    [Theory]
    [InlineData(30, 4, 2, 7.489)]
    [InlineData(20, 4, 2, 5.078)]
    [InlineData(30, 3.5, 2.5, 9.124)]
    public void Across_WorkedRolls_Agree(double rollDeg, double periodS, double overM, double acrossMPerS2) =>
        Assert.Equal(acrossMPerS2, BoatMotion.Calculate(Still with { RollDeg = rollDeg, RollPeriodS = periodS, Place = new Point3(5, 0, 1 + overM) }).AcrossMPerS2, 5e-4);

    [Fact]
    public void Calculate_AtRest_FeelsItsWeight()
    {
        var result = BoatMotion.Calculate(Still);
        Assert.Equal(0, result.AcrossMPerS2);
        Assert.Equal(0, result.AlongMPerS2);
        Assert.Equal(9.81, result.MostDownMPerS2);
        Assert.Equal(9.81, result.LeastDownMPerS2);
        Assert.Equal(0, result.TiltDeg);
    }

    // Against the motion itself: place, turned by roll and pitch at each moment, differentiated twice by differences, gravity added, in the boat's axes.
    [Fact]
    public void Calculate_SmallRollThroughAPeriod_BoundsTheMotion()
    {
        var input = Still with { Place = new Point3(5, 1.5, 2.5), RollDeg = 10, RollPeriodS = 3 };
        var result = BoatMotion.Calculate(input);
        double most = 0, mostDown = 0, leastDown = double.MaxValue;
        for (var i = 0; i < 3000; i++)
        {
            var (y, z, angle) = Felt(0.001 * i);
            most = Math.Max(most, Math.Abs(y));
            mostDown = Math.Max(mostDown, z);
            leastDown = Math.Min(leastDown, z);
            Assert.True(Math.Abs(angle) * 180 / Math.PI <= result.TiltDeg + 1e-9);
        }

        Assert.InRange(most, 0.97 * result.AcrossMPerS2, result.AcrossMPerS2 * 1.001);
        Assert.InRange(mostDown, 0.97 * result.MostDownMPerS2, result.MostDownMPerS2 + 0.05);
        Assert.InRange(leastDown, result.LeastDownMPerS2 - 0.05, 1.05 * result.LeastDownMPerS2);

        // Force on a thing at (1.5, 1.5) from the centre, in the rolled boat's own across and up: acceleration plus gravity.
        static (double Across, double Up, double Angle) Felt(double t)
        {
            const double H = 1e-4;
            var (a, b, c) = (At(t - H), At(t), At(t + H));
            var (ay, az) = ((a.Y - (2 * b.Y) + c.Y) / (H * H), ((a.Z - (2 * b.Z) + c.Z) / (H * H)) + 9.81);
            var (sin, cos) = Math.SinCos(b.Angle);
            return ((ay * cos) + (az * sin), (az * cos) - (ay * sin), b.Angle);
        }

        static (double Y, double Z, double Angle) At(double t)
        {
            var angle = 10 * Math.PI / 180 * Math.Cos(Math.Tau * t / 3);
            var (sin, cos) = Math.SinCos(angle);
            return ((1.5 * cos) - (1.5 * sin), (1.5 * sin) + (1.5 * cos), angle);
        }
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(-1)]
    [InlineData(61)]
    public void Calculate_ImpossibleRoll_IsRefused(double rollDeg) =>
        Assert.StartsWith("crate: input.RollDeg", Assert.Throws<ArgumentOutOfRangeException>(() => BoatMotion.Calculate(Still with { RollDeg = rollDeg })).Message, StringComparison.Ordinal);
}
