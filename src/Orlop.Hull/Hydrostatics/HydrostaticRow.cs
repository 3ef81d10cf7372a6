namespace Orlop.Hull.Hydrostatics;

/// <summary>Hydrostatics at one draught, upright. Places in the boat's axes; K is the base line.</summary>
public sealed record HydrostaticRow
{
    public required double DraughtM { get; init; }

    public required double VolumeM3 { get; init; }

    /// <summary>ρ·V.</summary>
    public required double DisplacementKg { get; init; }

    /// <summary>Centre of buoyancy forward of the after perpendicular.</summary>
    public required double LcbM { get; init; }

    /// <summary>Centre of buoyancy above the base line.</summary>
    public required double KbM { get; init; }

    /// <summary>Centre of flotation forward of the after perpendicular.</summary>
    public required double LcfM { get; init; }

    public required double WaterplaneAreaM2 { get; init; }

    /// <summary>Mass that sinks her one centimetre: ρ·A/100.</summary>
    public required double ImmersionKgPerCm { get; init; }

    /// <summary>Moment that changes trim by one centimetre over the trim length, with BML for GML: ρ·V·BML/(100·L). Common practice.</summary>
    public required double TrimmingKgMPerCm { get; init; }

    /// <summary>Transverse second moment of the waterplane over volume.</summary>
    public required double BmM { get; init; }

    /// <summary>Longitudinal second moment of the waterplane over volume.</summary>
    public required double LongitudinalBmM { get; init; }

    /// <summary>Transverse metacentre above the base line.</summary>
    public required double KmM { get; init; }

    /// <summary>Longitudinal metacentre above the base line.</summary>
    public required double LongitudinalKmM { get; init; }

    public required double WaterlineLengthM { get; init; }

    public required double WaterlineBreadthM { get; init; }

    /// <summary>V/(Lwl·Bwl·draught to the lowest point of the hull).</summary>
    public required double BlockCoefficient { get; init; }

    /// <summary>A/(Lwl·Bwl).</summary>
    public required double WaterplaneCoefficient { get; init; }

    public required double WettedAreaM2 { get; init; }
}
