using System.Collections.Immutable;
using Orlop.Hull.Surfaces;
using Orlop.Hull.Working;

namespace Orlop.Hull.Floating;

/// <summary>A loaded boat in still water.</summary>
public sealed record FloatingInput
{
    /// <summary>What it is, for messages.</summary>
    public required string Subject { get; init; }

    /// <summary>Everything that keeps water out: hull to the deck, and a deckhouse that counts. Closed bodies that do not overlap.</summary>
    public required ImmutableArray<TriangleMesh> Buoyancy { get; init; }

    /// <summary>Mass of all but the liquids in <see cref="Tanks"/>, above 0 to 10 000 000.</summary>
    public required double MassKg { get; init; }

    /// <summary>Centre of that mass.</summary>
    public required Point3 CentreOfGravity { get; init; }

    /// <summary>Density of the water she floats in, 950 to 1100 (fresh 1000, salt 1025).</summary>
    public required double WaterKgPerM3 { get; init; }

    public ImmutableArray<Tank> Tanks { get; init; } = [];

    public ImmutableArray<FloodedSpace> Flooded { get; init; } = [];

    public ImmutableArray<SidewaysPull> Pulls { get; init; } = [];

    /// <summary>The same boat with a mass added at a place, where a hung weight is at its hook.</summary>
    public FloatingInput With(WeightItem added)
    {
        ArgumentNullException.ThrowIfNull(added);
        Guard.InRange(added.MassKg, 0, 1e7, "kg", added.Id);
        Guard.Place(added.Place, added.Id);
        var mass = MassKg + added.MassKg;
        return this with { MassKg = mass, CentreOfGravity = (1 / mass) * ((MassKg * CentreOfGravity) + (added.MassKg * added.Place)) };
    }

    internal void Check()
    {
        if (Buoyancy.IsDefaultOrEmpty)
        {
            throw new ArgumentException($"{Subject}: there is no hull; at least one closed body is needed.");
        }

        foreach (var body in Buoyancy)
        {
            body.Closed($"{Subject}: hull");
        }

        Guard.Positive(MassKg, 1e7, "kg", Subject);
        Guard.Place(CentreOfGravity, Subject);
        Guard.Water(WaterKgPerM3, Subject);
        foreach (var tank in Tanks)
        {
            tank.Shape.Closed(tank.Id);
            Guard.InRange(tank.FillFraction, 0, 1, "", tank.Id);
            Guard.InRange(tank.LiquidKgPerM3, 500, 2500, "kg/m³", tank.Id);
        }

        foreach (var space in Flooded)
        {
            space.Shape.Closed(space.Id);
            Guard.InRange(space.PermeabilityFraction, 0, 1, "", space.Id);
        }

        foreach (var pull in Pulls)
        {
            Guard.InRange(pull.ForceN, -1e7, 1e7, "N", pull.Id);
            Guard.Place(pull.At, pull.Id);
            Guard.Place(pull.MetAt, pull.Id);
        }
    }
}
