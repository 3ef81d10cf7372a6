using System.Collections.Immutable;
using Orlop.Electrics.Conductors;
using Orlop.Electrics.Working;

namespace Orlop.Electrics.Heat;

/// <summary>
/// How warm cables get that lie together along a way: a thermal network of a metre of it. Each cable's copper is a node that sets free I² R at its own temperature; cables that touch
/// exchange heat; those at the outside lose it through their insulation to still air, or to the conduit around them. Each is told as it would be in the middle, its worst place.
/// </summary>
public static class BundleHeat
{
    /// <summary>Conductivity of insulation, W/(m K): PVC's greater thermal resistivity, 6 K m/W (IEC 60287-2-1, from memory); most others conduct better.</summary>
    public const double InsulationWPerMK = 1.0 / 6;

    /// <summary>
    /// Conductivity across a bundle as a whole, W/(m K): no more than insulation of <see cref="InsulationWPerMK"/> and the air between round cables let through that are copper for three tenths of
    /// their diameter, heat taken straight across (a lower bound, worked out in the tests).
    /// </summary>
    public const double BundleWPerMK = 0.1;

    // Volumetric heat of insulation, J/(K mm³) (IEC 60949, PVC, from memory); half of it follows the copper.
    private const double InsulationHeatJPerKMm3 = 1.7e-3;
    private const double FollowingFraction = 0.5;
    private const double LengthM = 1;

    // Hexagons of this side over this distance carry the heat between neighbours: 1/√3.
    private static readonly double LinkWPerK = BundleWPerMK * LengthM / Math.Sqrt(3);

    private static readonly double CopperRisePerK = 1 / (AnnealedCopper.ZeroResistanceOffsetK + 20);

    /// <summary>The temperature of each cable at rest.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside the range that its property names.</exception>
    public static BundleResult Steady(BundleInput input)
    {
        Check(input);
        BundlePlaces places = new(input.Cables.Length);
        CableTemperature[] found = new CableTemperature[input.Cables.Length];
        double imbalance = 0;
        ImmutableArray<double> start = default;
        for (int cable = 0; cable < found.Length; cable++)
        {
            ThermalState state = ThermalSolver.Steady(NetworkOf(input, places, cable), start);
            if (!state.IsFound)
            {
                return new BundleResult([], state.WhyNone, state.ImbalanceFraction);
            }

            start = state.NodeC;
            imbalance = Math.Max(imbalance, state.ImbalanceFraction);
            found[cable] = new CableTemperature(input.Cables[cable].Id, state.NodeC[0]);
        }

        return new BundleResult([.. found], null, imbalance);
    }

    /// <summary>How a cable in the middle warms from the air's temperature, all currents switched on at once.</summary>
    /// <param name="cable">Its place in the input; node 0 of the result.</param>
    public static ThermalResponseResult Response(BundleInput input, int cable)
    {
        Check(input);
        return ThermalResponse.From(NetworkOf(input, new BundlePlaces(input.Cables.Length), cable), input.AmbientC);
    }

    /// <summary>The network of a metre, with one cable in the middle: cables first, in the order of their places, then surfaces, conduit, air.</summary>
    /// <param name="middle">Place in the input of the cable in the middle.</param>
    public static ThermalNetwork Network(BundleInput input, int middle)
    {
        Check(input);
        return NetworkOf(input, new BundlePlaces(input.Cables.Length), middle);
    }

    private static ThermalNetwork NetworkOf(BundleInput input, BundlePlaces places, int middle)
    {
        BundledCable[] placed = [input.Cables[middle], .. input.Cables.Where((_, index) => index != middle)];
        ImmutableArray<ThermalNode>.Builder nodes = ImmutableArray.CreateBuilder<ThermalNode>();
        ImmutableArray<ThermalBranch>.Builder branches = ImmutableArray.CreateBuilder<ThermalBranch>();
        nodes.AddRange(placed.Select(cable => new ThermalNode(cable.Id, CapacityJPerK(cable), cable.LossAt20WPerM * LengthM, CopperRisePerK)));
        branches.AddRange(places.Touching.Select(pair => new ConductionBranch(pair.One, pair.Other, LinkWPerK)));
        int air = nodes.Count;
        nodes.Add(new ThermalNode("air", HeldC: input.AmbientC));
        int? conduit = input.ConduitInnerMm is null ? null : nodes.Count;
        if (conduit is not null)
        {
            nodes.Add(new ThermalNode("conduit"));
            branches.Add(new CylinderSurfaceBranch(conduit.Value, air, input.ConduitInnerMm!.Value / 1000, Math.PI * input.ConduitInnerMm.Value / 1000 * LengthM * input.OpenFraction));
        }

        double bundleM = input.BundleMm / 1000, outside = placed.Index().Sum(cable => cable.Item.OuterDiameterMm * places.OpenFraction[cable.Index]);
        foreach ((int place, BundledCable cable) in placed.Index())
        {
            double open = places.OpenFraction[place];
            if (open <= 0)
            {
                continue;
            }

            double share = cable.OuterDiameterMm * open / outside;
            int surface = nodes.Count;
            nodes.Add(new ThermalNode($"{cable.Id}, outside"));
            branches.Add(new ConductionBranch(place, surface, open * 2 * Math.PI * InsulationWPerMK * LengthM / Math.Log(cable.OuterDiameterMm / CopperMm(cable))));
            branches.Add(conduit is { } pipe
                ? new AirGapBranch(surface, pipe, bundleM, input.ConduitInnerMm!.Value / 1000, LengthM, share)
                : new CylinderSurfaceBranch(surface, air, bundleM, share * Math.PI * bundleM * LengthM * input.OpenFraction));
        }

        return new ThermalNetwork(input.Subject, nodes.ToImmutable(), branches.ToImmutable());
    }

    private static double CopperMm(BundledCable cable) => Math.Sqrt(4 * cable.CopperMm2 / Math.PI);

    private static double CapacityJPerK(BundledCable cable)
    {
        double insulationMm2 = (Math.PI / 4 * cable.OuterDiameterMm * cable.OuterDiameterMm) - cable.CopperMm2;
        return 1000 * LengthM * ((AdiabaticWithstand.CopperHeatJPerKMm3 * cable.CopperMm2) + (FollowingFraction * InsulationHeatJPerKMm3 * insulationMm2));
    }

    private static void Check(BundleInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        Guard.InRange(input.Cables.Length, 1, 1000, "cables", input.Subject);
        Guard.InRange(input.AmbientC, -60, 150, "°C", input.Subject);
        Guard.Positive(input.OpenFraction, 1, "of the outside", input.Subject);
        foreach (BundledCable cable in input.Cables)
        {
            Guard.Positive(cable.CopperMm2, 2000, "mm²", cable.Id);
            Guard.InRange(cable.OuterDiameterMm, Math.BitIncrement(CopperMm(cable)), 150, "mm", cable.Id);
            Guard.InRange(cable.LossAt20WPerM, 0, 1e5, "W/m", cable.Id);
        }

        if (input.ConduitInnerMm is { } inner)
        {
            Guard.InRange(inner, Math.BitIncrement(input.BundleMm), 300, "mm", input.Subject);
        }
    }
}
