using System.Collections.Immutable;
using Orlop.Hull.Hydrostatics;
using Orlop.Hull.Surfaces;

namespace Orlop.Hull.Floating;

/// <summary>
/// A loaded boat as one potential energy. Boat of mass m at height of G, liquids at their own level, water lifted by the displaced volume:
/// E = m·(Up·G - d) + ρ·(d·V - Up·∫p dV), d the draught. Its stationary points are the floating positions, its minima the stable ones.
/// </summary>
internal sealed class FloatingEnergy
{
    private const double StandardGravityMPerS2 = 9.80665;

    private readonly ImmutableArray<(TriangleMesh Shape, double Density)> _buoyancy;
    private readonly ImmutableArray<PreparedTank> _tanks;
    private readonly ImmutableArray<SidewaysPull> _pulls;
    private readonly Point3 _fixedMoment;

    public FloatingEnergy(FloatingInput input)
    {
        input.Check();
        _buoyancy =
        [
            .. input.Buoyancy.Select(shape => (shape, input.WaterKgPerM3)),
            .. input.Flooded.Where(space => space.PermeabilityFraction > 0).Select(space => (space.Shape, -input.WaterKgPerM3 * space.PermeabilityFraction)),
        ];
        _tanks = [.. input.Tanks.Select(tank => new PreparedTank(tank)).Where(tank => !tank.IsEmpty)];
        _pulls = input.Pulls;
        _fixedMoment = input.MassKg * input.CentreOfGravity;
        WaterKgPerM3 = input.WaterKgPerM3;
        MassKg = input.MassKg + _tanks.Sum(tank => tank.MassKg);
        IntactLimitKg = input.WaterKgPerM3 * input.Buoyancy.Sum(shape => shape.SignedVolumeM3);
        LimitKg = _buoyancy.Sum(part => part.Density * part.Shape.SignedVolumeM3);
        var low = input.Buoyancy.Select(shape => shape.Lowest).Aggregate(Point3.Least);
        var high = input.Buoyancy.Select(shape => shape.Highest).Aggregate(Point3.Greatest);
        Size = high - low;
    }

    public double WaterKgPerM3 { get; }

    /// <summary>All masses, liquids in tanks among them.</summary>
    public double MassKg { get; }

    /// <summary>Mass at which the intact boat goes under.</summary>
    public double IntactLimitKg { get; }

    /// <summary>Mass at which she goes under with her flooded spaces.</summary>
    public double LimitKg { get; }

    /// <summary>Length, breadth and height of all buoyancy together.</summary>
    public Point3 Size { get; }

    /// <summary>Mass of water pushed aside, and how much more each metre of draught adds.</summary>
    public (double Kg, double PerM) Displaced(in WaterPlane plane)
    {
        var (displaced, perM) = (0.0, 0.0);
        foreach (var (shape, density) in _buoyancy)
        {
            var immersion = Immersion.Below(plane, shape);
            displaced += density * immersion.Volume;
            perM += density * immersion.Area;
        }

        return (displaced, perM);
    }

    public EnergyAt At(in WaterPlane plane)
    {
        var state = new EnergyAt { MassMoment = _fixedMoment };
        PlaneMoments surfaces = default;
        foreach (var tank in _tanks)
        {
            var (moment, surface) = tank.At(plane);
            state.MassMoment += moment;
            surfaces += surface;
        }

        double displaced = 0;
        Point3 lift = default;
        PlaneMoments cut = default;
        foreach (var (shape, density) in _buoyancy)
        {
            var immersion = Immersion.Below(plane, shape);
            displaced += density * immersion.Volume;
            lift += density * immersion.Moment;
            cut += density * immersion.CutSurface(plane);
        }

        state.FreeSurfaces = surfaces;
        state.DisplacedVolume = displaced / WaterKgPerM3;
        state.VolumeMoment = (1 / WaterKgPerM3) * lift;
        state.Cut = (1 / WaterKgPerM3) * cut;
        var turning = state.MassMoment - lift;
        var (up, along, across) = (plane.Up.Dot(turning), plane.Along.Dot(turning), plane.Across.Dot(turning));
        state.Energy = up + (plane.Draught * (displaced - MassKg));
        state.OfDraught = displaced - MassKg;
        state.OfTrim = along;
        state.OfHeel = plane.CosTrim * across;
        state.DraughtDraught = cut.Area;
        state.DraughtTrim = -cut.Along;
        state.DraughtHeel = -plane.CosTrim * cut.Across;
        state.TrimTrim = cut.SecondAlong - surfaces.SecondAlong - up;
        state.TrimHeel = (plane.CosTrim * (cut.Product - surfaces.Product)) - (plane.SinTrim * across);
        state.HeelHeel = (plane.CosTrim * plane.CosTrim * (cut.SecondAcross - surfaces.SecondAcross)) - (plane.CosTrim * plane.HeelOutward.Dot(turning));
        AddPulls(plane, ref state);
        return state;
    }

    // A level force F at one point and its opposite at another: E = F/g · Across·(arm), so that dE/dh = -F/g · (height of the arm).
    private void AddPulls(in WaterPlane plane, ref EnergyAt state)
    {
        foreach (var pull in _pulls)
        {
            var arm = (pull.ForceN / StandardGravityMPerS2) * (pull.At - pull.MetAt);
            state.Energy += plane.Across.Dot(arm);
            state.OfHeel -= plane.HeelOutward.Dot(arm);
            state.HeelHeel -= plane.Across.Dot(arm);
        }
    }
}
