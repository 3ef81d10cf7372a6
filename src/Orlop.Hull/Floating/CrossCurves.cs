using System.Collections.Immutable;
using Orlop.Hull.Surfaces;
using Orlop.Hull.Working;

namespace Orlop.Hull.Floating;

/// <summary>One displacement of a set of cross curves: KN at each heel; null at a heel where no balance was found, and at all when she would not float.</summary>
public sealed record CrossCurve(double DisplacementKg, ImmutableArray<CrossCurvePoint> Points);

/// <summary>KN at one heel: GZ for a centre of gravity on the base line. GZ = KN - KG·sin(heel).</summary>
public sealed record CrossCurvePoint(double HeelDeg, double? KnM);

/// <summary>
/// Cross curves of stability. Trim is free about a centre of gravity that lies, at each displacement, over the centre of buoyancy of the level boat, at a stated height; that height
/// touches KN only through the trim.
/// </summary>
public static class CrossCurves
{
    public static ImmutableArray<CrossCurve> Calculate(string subject, TriangleMesh hull, double waterKgPerM3, double assumedKgM, ImmutableArray<double> displacementsKg, ImmutableArray<double> heelsDeg)
    {
        ArgumentNullException.ThrowIfNull(hull);
        hull.Closed(subject);
        Guard.Water(waterKgPerM3, subject);
        Guard.InRange(assumedKgM, -100, 100, "m", subject);
        return [.. displacementsKg.Select(displacementKg => Curve(subject, hull, waterKgPerM3, assumedKgM, Guard.Positive(displacementKg, 1e7, "kg", subject), heelsDeg))];
    }

    private static CrossCurve Curve(string subject, TriangleMesh hull, double waterKgPerM3, double kgM, double displacementKg, ImmutableArray<double> heelsDeg)
    {
        var level = new FloatingInput { Subject = subject, Buoyancy = [hull], MassKg = displacementKg, CentreOfGravity = new Point3(hull.Centre.XM, 0, kgM), WaterKgPerM3 = waterKgPerM3 };
        var energy = new FloatingEnergy(level);
        if (Equilibrium.Overweight(energy, subject) is not null)
        {
            return new CrossCurve(displacementKg, [.. heelsDeg.Select(heelDeg => new CrossCurvePoint(heelDeg, null))]);
        }

        var upright = new EquilibriumSearch(energy).From(FloatingStart.Afloat(energy, level, 0, 0).Draught, 0, 0, Freedom.DraughtOnly);
        var boat = level with { CentreOfGravity = new Point3(upright.State.VolumeMoment.XM / upright.State.DisplacedVolume, 0, kgM) };
        var (starboard, port) = (Side(boat, heelsDeg, 1), Side(boat, heelsDeg, -1));
        return new CrossCurve(displacementKg,
        [
            .. heelsDeg.Select(heelDeg => new CrossCurvePoint(heelDeg,
                (heelDeg >= 0 ? starboard : port)?.At(heelDeg)?.GzM + (kgM * Math.Sin(heelDeg * Math.PI / 180)))),
        ]);
    }

    private static RightingCurve? Side(FloatingInput boat, ImmutableArray<double> heelsDeg, int side)
    {
        var farthest = heelsDeg.Select(heelDeg => side * heelDeg).Append(0).Max();
        return farthest > 0 || (side > 0 && heelsDeg.Contains(0))
            ? RightingCurve.Calculate(new RightingInput { Boat = boat, ToDeg = side * farthest, StepDeg = 5 })
            : null;
    }
}
