using System.Diagnostics;
using Orlop.Hull.Floating;
using Orlop.Hull.Surfaces;
using Orlop.Hull.Tests.Shapes;
using Xunit;

namespace Orlop.Hull.Tests.Floating;

/// <summary>Loads no sane person would carry: every one ends, and what is called rest is rest.</summary>
public sealed class NonsenseTests
{
    [Fact]
    public void Solve_ExtremeLoads_EndAndAreWhatTheySay()
    {
        var random = new Random(77);
        var seen = new Dictionary<FloatingStatus, int>();
        var clock = Stopwatch.StartNew();
        for (var i = 0; i < 400; i++)
        {
            var result = Equilibrium.Solve(Extreme(random));
            seen[result.Status] = seen.GetValueOrDefault(result.Status) + 1;
            var isAtRest = result.Status is FloatingStatus.Floats or FloatingStatus.Capsizes;
            Assert.Equal(isAtRest, result.Position is not null);
            if (result.Position is { } position)
            {
                Assert.True(result.ResidualRatio <= 1e-8, result.Message);
                Assert.True(double.IsFinite(position.MetacentricHeightM) && position.CentreOfBuoyancy.IsFinite && position.CentreOfGravity.IsFinite);
                Assert.Equal(result.MassKg, 1000 * position.DisplacedM3, 1e-6 * result.MassKg);
            }
        }

        Assert.True(clock.Elapsed < TimeSpan.FromSeconds(60), $"took {clock.Elapsed}");
        Assert.All(new[] { FloatingStatus.Floats, FloatingStatus.Capsizes, FloatingStatus.DoesNotFloat, FloatingStatus.Sinks }, status => Assert.True(seen.GetValueOrDefault(status) > 3, $"{status}: {string.Join(", ", seen)}"));
        Assert.DoesNotContain(FloatingStatus.NotConverged, seen.Keys);
    }

    [Fact]
    public void Calculate_ExtremeLoads_CurvesEnd()
    {
        var random = new Random(78);
        for (var i = 0; i < 40; i++)
        {
            var curve = RightingCurve.Calculate(new RightingInput { Boat = Extreme(random), ToDeg = random.Next(2) == 0 ? 180 : -180, StepDeg = 5 });
            Assert.All(curve.Points, point => Assert.True(double.IsFinite(point.GzM) && double.IsFinite(point.RiseM)));
            Assert.Equal(curve.Status == FloatingStatus.Floats, curve.Points.Length == 37);
        }
    }

    private static FloatingInput Extreme(Random random)
    {
        var body = RandomBody.Create(random, rings: 5);
        var size = body.Highest - body.Lowest;
        var middle = 0.5 * (body.Lowest + body.Highest);
        Point3 Inside() => middle + new Point3(size.XM * 0.2 * (random.NextDouble() - 0.5), size.YM * 0.2 * (random.NextDouble() - 0.5), size.ZM * 0.2 * (random.NextDouble() - 0.5));
        TriangleMesh Space(double share)
        {
            var place = Inside();
            return Solids.Box(place - (share * 0.3 * size), place + (share * 0.3 * size));
        }
        return new FloatingInput
        {
            Subject = "nonsense",
            Buoyancy = [body],
            MassKg = 1000 * body.SignedVolumeM3 * 1.15 * Math.Pow(random.NextDouble(), 0.7),
            CentreOfGravity = middle + new Point3(0.3 * size.XM * (random.NextDouble() - 0.5), size.YM * (random.NextDouble() - 0.5), 2 * size.ZM * (random.NextDouble() - 0.5)),
            WaterKgPerM3 = 1000,
            Tanks = random.Next(2) == 0 ? [] : [new Tank { Id = "tank", Shape = Space(0.5), FillFraction = random.NextDouble(), LiquidKgPerM3 = 900 }],
            Flooded = random.Next(2) == 0 ? [] : [new FloodedSpace("space", Space(0.9), random.NextDouble())],
            Pulls = random.Next(3) > 0 ? [] : [new SidewaysPull("pull", 20_000 * (random.NextDouble() - 0.5), middle + new Point3(0, 0, 3), middle)],
        };
    }
}
