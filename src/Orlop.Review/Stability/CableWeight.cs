using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Review.Stability;

/// <summary>
/// A cable as a weight: its mass along its run. Where its mass per metre is not given, copper at 8.89 g/cm³ and 60 % more for strand, tin and insulation (from memory, of small
/// boat cable), with 15 % for what that misses. Its centre is that of the ways it follows, in proportion to their length; loose in a space, the middle of the space.
/// </summary>
internal static class CableWeight
{
    private const double CopperKgPerM3 = 8890;
    private const double CoveringFactor = 1.6;
    private const double RoughFraction = 0.15;
    private const double RunDeviationM = 0.3;

    /// <summary>The row of a cable; null when its length or where it runs is not given.</summary>
    public static WeightRow? Row(BoatModel boat, Cable cable)
    {
        if (MassPerM(cable) is not { } perM || LengthM(cable) is not { } length || Centre(boat, cable) is not { } centre)
        {
            return null;
        }

        double mass = perM.Value * length;
        return new WeightRow(cable.Id, cable.Title, WeightKind.Cable, mass, mass * perM.Share, centre, RunDeviationM,
            cable.MassKgPerM is null ? "copper and covering along its run" : "mass per metre along its run");
    }

    /// <summary>The mass per metre is given, or follows from the copper.</summary>
    public static bool HasMass(Cable cable) => MassPerM(cable) is not null;

    private static (double Value, double Share)? MassPerM(Cable cable)
    {
        if (cable.MassKgPerM is { Value: > 0 } given)
        {
            return (given.Value, WeightKnowledge.DeviationKg(given) / given.Value);
        }

        double copper = cable.AreaMm2.Value * 1e-6 * cable.Cores.Count * CopperKgPerM3;
        return copper > 0 ? (copper * CoveringFactor, RoughFraction) : null;
    }

    /// <summary>The cores' lengths, or the run's; null when neither is given.</summary>
    public static double? LengthM(Cable cable)
    {
        double?[] lengths = [.. cable.Cores.Select(core => (core.LengthM ?? cable.LengthM)?.Value)];
        double run = cable.Run.Sum(leg => leg.LengthM);
        return lengths.Length > 0 && lengths.All(length => length is not null) ? lengths.Average() : run > 0 ? run : null;
    }

    private static Place? Centre(BoatModel boat, Cable cable)
    {
        double sum = 0, x = 0, y = 0, z = 0;
        foreach (RunLeg leg in cable.Run)
        {
            if (Middle(boat, leg) is { } middle)
            {
                sum += leg.LengthM;
                x += leg.LengthM * middle.XM;
                y += leg.LengthM * middle.YM;
                z += leg.LengthM * middle.ZM;
            }
        }

        return sum > 0 ? new Place(x / sum, y / sum, z / sum) : null;
    }

    private static Place? Middle(BoatModel boat, RunLeg leg)
    {
        if (leg.Way is { } id && boat.Find<Way>(id) is { Points.Count: > 0 } way)
        {
            return AlongLine([.. way.Points]);
        }

        string? spaceId = leg.Space ?? (leg.Way is { } wayId ? boat.Find<Way>(wayId)?.Space : null);
        return spaceId is not null && boat.Find<Space>(spaceId) is { } space ? Half(space.From, space.To) : null;
    }

    private static Place AlongLine(Place[] points)
    {
        double sum = 0, x = 0, y = 0, z = 0;
        for (int i = 1; i < points.Length; i++)
        {
            double length = points[i].DistanceM(points[i - 1]);
            Place half = Half(points[i - 1], points[i]);
            (sum, x, y, z) = (sum + length, x + (length * half.XM), y + (length * half.YM), z + (length * half.ZM));
        }

        return sum > 0 ? new Place(x / sum, y / sum, z / sum) : points[0];
    }

    private static Place Half(Place a, Place b) => new((a.XM + b.XM) / 2, (a.YM + b.YM) / 2, (a.ZM + b.ZM) / 2);
}
