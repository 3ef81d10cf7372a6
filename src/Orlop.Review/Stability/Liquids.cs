using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Review.Findings;
using EngineTank = Orlop.Hull.Floating.Tank;
using Tank = Orlop.Boat.Things.Tank;

namespace Orlop.Review.Stability;

/// <summary>The tanks of a boat in a condition, as the engine takes them.</summary>
/// <param name="Tanks">Those with something in them.</param>
/// <param name="Missing">Fills and densities that are not given, and tanks of which nothing is inside the hull that should be their side.</param>
public sealed record Liquids(ImmutableArray<EngineTank> Tanks, ImmutableArray<FindingInput> Missing)
{
    /// <summary>The tanks of a condition. A tank of which the fill or the liquid is not given is named, and left out.</summary>
    public static Liquids Of(BoatModel boat, Condition condition, HullBodies bodies)
    {
        ArgumentNullException.ThrowIfNull(boat);
        ArgumentNullException.ThrowIfNull(condition);
        ArgumentNullException.ThrowIfNull(bodies);
        ImmutableArray<EngineTank>.Builder tanks = ImmutableArray.CreateBuilder<EngineTank>();
        ImmutableArray<FindingInput>.Builder missing = ImmutableArray.CreateBuilder<FindingInput>();
        foreach (Tank tank in boat.All<Tank>())
        {
            double? fill = tank.Fills.FirstOrDefault(fill => fill.Condition == condition.Id)?.FillFraction ?? tank.FillFraction?.Value;
            if (fill is null)
            {
                missing.Add(new FindingInput(tank.Id, "fillFraction", IsMissing: true));
            }
            else if (tank.LiquidKgPerM3 is not { } density)
            {
                missing.Add(new FindingInput(tank.Id, "liquidKgPerM3", IsMissing: true));
            }
            else if (fill > 0 && bodies.ShapeOf(tank) is { } shape)
            {
                tanks.Add(new EngineTank { Id = tank.Id, Shape = shape, FillFraction = fill.Value, LiquidKgPerM3 = density.Value });
            }
            else if (fill > 0 && bodies.Hull is null)
            {
                missing.Add(new FindingInput(boat.All<HullLines>().FirstOrDefault()?.Id ?? "hull-lines", "stations", IsMissing: true));
            }
            else if (fill > 0)
            {
                // The box, and with it the liquid, lies outside the hull: it is nowhere, and not left out in silence.
                missing.Add(new FindingInput(tank.Id, "from"));
            }
        }

        return new Liquids(tanks.ToImmutable(), missing.ToImmutable());
    }
}
