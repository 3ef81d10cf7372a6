using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Review.Electrics.Checks;
using Orlop.Review.Networks;

namespace Orlop.Review.Electrics;

/// <summary>Currents of cores and devices in a condition, the larger of normal and lowest charge.</summary>
internal static class LoadedCurrents
{
    /// <summary>Share of its table current from which a conductor counts as loaded in a group (reference page, section 1.1).</summary>
    private const double LoadedFromFraction = 0.3;

    /// <summary>Greatest current of an element in a condition; null where the network has no answer.</summary>
    public static double? GreatestA(ElectricsView view, Condition condition, string elementId)
    {
        double? normal = view.Solve(condition, ChargeCase.Normal).BranchA(elementId);
        double? lowest = view.Solve(condition, ChargeCase.Lowest).BranchA(elementId);
        return normal is { } n && lowest is { } l ? Math.Max(Math.Abs(n), Math.Abs(l)) : null;
    }

    /// <summary>The case in which an element carries its greatest current, with every load that is on.</summary>
    public static SolvedNetwork GreatestCase(ElectricsView view, Condition condition, string elementId) =>
        new[] { ChargeCase.Normal, ChargeCase.Lowest }.Select(charge => view.Solve(condition, charge)).MaxBy(solved => Math.Abs(solved.BranchA(elementId) ?? 0))!;

    /// <summary>The greatest of several elements; null where the network of one has no answer.</summary>
    public static double? GreatestA(ElectricsView view, Condition condition, IReadOnlyCollection<string> elementIds)
    {
        double?[] each = [.. elementIds.Select(id => GreatestA(view, condition, id))];
        return each.Any(current => current is null) ? null : each.Max();
    }

    /// <summary>How many conductors are loaded together with a cable, along the way where they are most; the cable's own among them.</summary>
    public static int TogetherCount(ElectricsView view, Condition condition, Cable cable) => Math.Max(1, cable.Run
        .Select(leg => leg.Way).OfType<string>().Distinct()
        .Select(way => view.LoadedCoresIn(way, condition))
        .Append(view.LoadedCoresOf(cable, condition))
        .Max());

    /// <summary>How many cores of a cable are loaded; a core whose current cannot be told counts as loaded.</summary>
    public static int LoadedCores(ElectricsView view, Condition condition, Cable cable)
    {
        double? tableA = view.Practice is { } practice && cable.InsulationC is { } insulation
            ? practice.Ampacities.Lookup(cable.AreaMm2.Value, insulation.Value).Row?.CurrentA
            : null;
        return cable.Cores.Where(core => !ConductorAmpacityCheck.IsEarth(core)).Select(core => ElementIds.Core(cable, core)).Count(id =>
            (GreatestA(view, condition, id) is { } current ? current > LoadedFromFraction * (tableA ?? 0) : view.PathsIn(condition).TakersBehind(id).Count > 0)
            || MissingInputs.OfCurrent(view, condition, id).Length > 0);
    }
}
