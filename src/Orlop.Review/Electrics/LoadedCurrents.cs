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
    public static double? GreatestA(ElectricsView view, Condition condition, string elementId) => view.CurrentsIn(condition).OfA(elementId);

    /// <summary>The case in which an element carries its greatest current, with every load that is on.</summary>
    public static SolvedNetwork GreatestCase(ElectricsView view, Condition condition, string elementId) => view.CurrentsIn(condition).CaseOf(elementId);

    /// <summary>The greatest of several elements; null where the network of one has no answer.</summary>
    public static double? GreatestA(ElectricsView view, Condition condition, IReadOnlyCollection<string> elementIds)
    {
        GreatestCurrents currents = view.CurrentsIn(condition);
        double? greatest = null;
        foreach (string id in elementIds)
        {
            if (currents.OfA(id) is not { } current)
            {
                return null;
            }

            greatest = Math.Max(greatest ?? current, current);
        }

        return greatest;
    }

    /// <summary>How many conductors are loaded together with a cable, along the way where they are most; the cable's own among them.</summary>
    public static int TogetherCount(ElectricsView view, Condition condition, Cable cable)
    {
        int most = Math.Max(1, view.LoadedCoresOf(cable, condition));
        foreach (RunLeg leg in cable.Run)
        {
            most = leg.Way is { } way ? Math.Max(most, view.LoadedCoresIn(way, condition)) : most;
        }

        return most;
    }

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
