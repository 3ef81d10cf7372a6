using System.Collections.Immutable;
using Orlop.Electrics.Working;

namespace Orlop.Electrics.Heat;

/// <summary>How warm a closed or vented space gets with heat set free in it, and how soon: P = ρ cp Q (Ti - To) + Σ U A (Ti - outside), Q by natural draught or by a fan.</summary>
public static class SpaceHeat
{
    /// <summary>All spaces at rest.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside the range that its property names.</exception>
    public static SpaceHeatResult Steady(SpaceHeatInput input)
    {
        ThermalNetwork network = Network(input);
        ThermalState state = ThermalSolver.Steady(network);
        return state.IsFound
            ? new SpaceHeatResult([.. input.Spaces.Select((space, index) => Rest(network, state, space, index))], null, state.ImbalanceFraction)
            : new SpaceHeatResult([], state.WhyNone, state.ImbalanceFraction);
    }

    /// <summary>How they warm from one temperature, all heat switched on at once. Node k is space k.</summary>
    public static ThermalResponseResult Response(SpaceHeatInput input, double startC) => ThermalResponse.From(Network(input), startC);

    /// <summary>
    /// Free area that each of two openings needs, one low and one high, that a space stays at a temperature by its own draught, its other openings shut. 0 where its sides are enough; null where
    /// no area is: the air around is not cooler.
    /// </summary>
    /// <param name="heatW">Heat set free, less what its sides lose at that temperature.</param>
    /// <param name="limitC">The temperature.</param>
    /// <param name="airC">Air around.</param>
    /// <param name="apartM">Height between the middles of the two, above 0.</param>
    public static double? OpeningNeededM2(double heatW, double limitC, double airC, double apartM)
    {
        Guard.Positive(apartM, 100, "m", "openings");
        if (heatW <= 0)
        {
            return 0;
        }

        if (limitC <= airC)
        {
            return null;
        }

        double flow = heatW / (StillAir.DensityKgPerM3(airC) * StillAir.HeatJPerKgK * (limitC - airC));
        return flow / NaturalDraught.FlowM3PerS(Math.Sqrt(apartM / 2), limitC, airC);
    }

    /// <summary>The network: a node for each space, then one for each temperature that is held.</summary>
    public static ThermalNetwork Network(SpaceHeatInput input)
    {
        Check(input);
        ImmutableArray<ThermalNode>.Builder nodes = ImmutableArray.CreateBuilder<ThermalNode>();
        ImmutableArray<ThermalBranch>.Builder branches = ImmutableArray.CreateBuilder<ThermalBranch>();
        nodes.AddRange(input.Spaces.Select(space => new ThermalNode(space.Id, space.CapacityJPerK, space.HeatW)));
        Dictionary<string, int> places = input.Spaces.Index().ToDictionary(space => space.Item.Id, space => space.Index, StringComparer.Ordinal);
        foreach ((int index, HeatedSpace space) in input.Spaces.Index())
        {
            foreach (SpaceSide side in space.Sides)
            {
                branches.Add(new ConductionBranch(index, Other(side.SpaceId, side.OutsideC, side.Name), side.ConductanceWPerK));
            }

            double draught = NaturalDraught.Coefficient(space.Openings);
            if (draught > 0 || space.FanM3PerH > 0)
            {
                branches.Add(new AirExchangeBranch(index, Other(space.AirSpaceId, space.AirC, "air"), draught, space.FanM3PerH));
            }
        }

        return new ThermalNetwork(input.Subject, nodes.ToImmutable(), branches.ToImmutable());

        int Other(string? spaceId, double? heldC, string name)
        {
            if (spaceId is not null)
            {
                return places[spaceId];
            }

            nodes.Add(new ThermalNode(name, HeldC: heldC));
            return nodes.Count - 1;
        }
    }

    private static SpaceRest Rest(ThermalNetwork network, ThermalState state, HeatedSpace space, int index)
    {
        double air = 0, sides = 0, flow = 0;
        double? airC = null;
        foreach (ThermalBranch branch in network.Branches.Where(branch => branch.From == index))
        {
            double heat = branch.HeatW(state.NodeC[branch.From], state.NodeC[branch.To]);
            if (branch is AirExchangeBranch exchange)
            {
                airC = state.NodeC[branch.To];
                (air, flow) = (air + heat, exchange.FlowM3PerH(state.NodeC[branch.From], state.NodeC[branch.To]));
            }
            else
            {
                sides += heat;
            }
        }

        return new SpaceRest(space.Id, state.NodeC[index], airC, flow, air, sides);
    }

    private static void Check(SpaceHeatInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        foreach (HeatedSpace space in input.Spaces)
        {
            Guard.InRange(space.HeatW, 0, 1e6, "W", space.Id);
            Guard.InRange(space.FanM3PerH, 0, 1e6, "m³/h", space.Id);
            Guard.InRange(space.AirC ?? 0, -60, 150, "°C", space.Id);
            foreach (SpaceSide side in space.Sides)
            {
                Guard.InRange(side.ConductanceWPerK, 0, 1e6, "W/K", space.Id);
                Guard.InRange(side.OutsideC ?? 0, -60, 250, "°C", space.Id);
            }

            foreach (AirOpening opening in space.Openings)
            {
                Guard.Positive(opening.AreaM2, 1000, "m²", space.Id);
                Guard.InRange(opening.HeightM, -1000, 1000, "m", space.Id);
            }
        }
    }
}
