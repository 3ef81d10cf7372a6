using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Review.Electrics;

namespace Orlop.Review.Heat;

/// <summary>The heat of a boat, for pages, paper and the command line.</summary>
public static class HeatTable
{
    /// <summary>Each described space in a condition, in the owner's order.</summary>
    public static ImmutableArray<SpaceWarmth> Spaces(ElectricsView view, Condition condition)
    {
        ArgumentNullException.ThrowIfNull(view);
        return view.WarmthsIn(condition).Each;
    }

    /// <summary>Each way with cables in a condition, in the owner's order.</summary>
    public static ImmutableArray<BundleWarmth> Bundles(ElectricsView view, Condition condition)
    {
        ArgumentNullException.ThrowIfNull(view);
        return [.. view.Boat.All<Way>().Where(way => !BundleWarmth.CablesOf(view, way).IsEmpty).Select(way => view.BundleIn(way, condition))];
    }

    /// <summary>The least of the temperatures that things in a space may stand in, or carry their full rating in; null where none says so.</summary>
    public static double? LimitC(ElectricsView view, Space space)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(space);
        return view.Boat.All<Part>().Where(part => part.Space == space.Id).Select(part => part.FullRatingC?.Value ?? part.MostAmbientC?.Value).Min();
    }
}
