using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Hull.Surfaces;
using Orlop.Review.Findings;
using EngineTank = Orlop.Hull.Floating.Tank;
using Tank = Orlop.Boat.Things.Tank;

namespace Orlop.Review.Stability;

/// <summary>The tanks of a boat in a condition, as the engine takes them.</summary>
/// <param name="Tanks">Those with something in them.</param>
/// <param name="Missing">Fills and densities that are not given.</param>
public sealed record Liquids(ImmutableArray<EngineTank> Tanks, ImmutableArray<FindingInput> Missing)
{
    /// <summary>The tanks of a condition. A tank of which the fill or the liquid is not given is named, and left out.</summary>
    public static Liquids Of(BoatModel boat, Condition condition, Func<Tank, TriangleMesh?> shapeOf)
    {
        ArgumentNullException.ThrowIfNull(boat);
        ArgumentNullException.ThrowIfNull(condition);
        ArgumentNullException.ThrowIfNull(shapeOf);
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
            else if (fill > 0 && shapeOf(tank) is { } shape)
            {
                tanks.Add(new EngineTank { Id = tank.Id, Shape = shape, FillFraction = fill.Value, LiquidKgPerM3 = density.Value });
            }
        }

        return new Liquids(tanks.ToImmutable(), missing.ToImmutable());
    }

    /// <summary>A tank as a closed body: its box.</summary>
    public static TriangleMesh BoxOf(Tank tank)
    {
        ArgumentNullException.ThrowIfNull(tank);
        return Solids.Box(WeightLedger.At(tank.From), WeightLedger.At(tank.To));
    }
}
