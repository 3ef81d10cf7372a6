using Orlop.Hull.Floating;
using Orlop.Hull.Hydrostatics;
using Orlop.Hull.Surfaces;
using Xunit;

namespace Orlop.Hull.Tests.Floating;

/// <summary>The derivatives that the search and every lever rest on are those of the energy, at any attitude, with tanks, a flooded space and a pull.</summary>
public sealed class FloatingEnergyTests
{
    private const double Step = 1e-5;

    private static readonly FloatingEnergy Energy = new(Boats.Working with
    {
        CentreOfGravity = new Point3(5.2, -0.1, 1.3),
        Tanks = [new Tank { Id = "fuel", Shape = Solids.Box(new Point3(2, 0.2, 0.6), new Point3(4, 1.2, 1.2)), FillFraction = 0.55, LiquidKgPerM3 = 850 }],
        Flooded = [new FloodedSpace("forepeak", Solids.Box(new Point3(8, -0.5, 0.7), new Point3(9, 0.5, 1.5)), 0.8)],
        Pulls = [new SidewaysPull("tow", 3000, new Point3(4, 0, 3), new Point3(5, 0, 0.4))],
    });

    [Fact]
    public void At_RandomAttitudes_SlopesAreThoseOfTheEnergy()
    {
        var random = new Random(51);
        for (var i = 0; i < 40; i++)
        {
            double[] at = [0.4 + random.NextDouble(), 0.4 * (random.NextDouble() - 0.5), Math.Tau * (random.NextDouble() - 0.5)];
            var state = At(at);
            double[] slopes = [state.OfDraught, state.OfTrim, state.OfHeel];
            double[,] curvatures =
            {
                { state.DraughtDraught, state.DraughtTrim, state.DraughtHeel },
                { state.DraughtTrim, state.TrimTrim, state.TrimHeel },
                { state.DraughtHeel, state.TrimHeel, state.HeelHeel },
            };
            for (var j = 0; j < 3; j++)
            {
                var (less, more) = (At(Moved(at, j, -Step)), At(Moved(at, j, Step)));
                Assert.Equal((more.Energy - less.Energy) / (2 * Step), slopes[j], 0.05);
                Assert.Equal((more.OfDraught - less.OfDraught) / (2 * Step), curvatures[j, 0], 5.0);
                Assert.Equal((more.OfTrim - less.OfTrim) / (2 * Step), curvatures[j, 1], 20.0);
                Assert.Equal((more.OfHeel - less.OfHeel) / (2 * Step), curvatures[j, 2], 20.0);
            }
        }
    }

    // Newton's method with exact curvatures doubles its digits at every step.
    [Fact]
    public void Solve_WorkingBoat_IsThereInFewSteps()
    {
        var result = Equilibrium.Solve(Boats.Working with { CentreOfGravity = new Point3(5.0, -0.1, 1.3) });
        Assert.InRange(result.StepCount, 1, 8);
        Assert.True(result.ResidualRatio < 1e-11);
    }

    private static EnergyAt At(double[] at) => Energy.At(WaterPlane.OfRadians(at[0], at[1], at[2]));

    private static double[] Moved(double[] at, int which, double step)
    {
        double[] moved = [.. at];
        moved[which] += step;
        return moved;
    }
}
