using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Electrics.Heat;
using Orlop.Review.Findings;

namespace Orlop.Review.Heat;

/// <summary>How warm a described space gets in a condition.</summary>
public sealed record SpaceWarmth
{
    /// <summary>The space.</summary>
    public required Space Space { get; init; }

    /// <summary>The condition.</summary>
    public required Condition Condition { get; init; }

    /// <summary>What gives heat in it.</summary>
    public required ImmutableArray<HeatPart> Heats { get; init; }

    /// <summary>The space taken apart for the engine, everything on, with its neighbours held at what they come to; null where something is missing.</summary>
    public HeatedSpace? Input { get; init; }

    /// <summary>At rest with everything on for good: no more than that can come of it.</summary>
    public SpaceRest? Most { get; init; }

    /// <summary>At rest with each load on for its share of the time.</summary>
    public SpaceRest? Mean { get; init; }

    /// <summary>Why it never comes to rest; null where it does, or something is missing.</summary>
    public string? WhyNone { get; init; }

    /// <summary>What is missing.</summary>
    public ImmutableArray<FindingInput> Missing { get; init; } = [];

    /// <summary>The same with its fan stopped and its openings as they are; null where it has no fan that runs.</summary>
    public SpaceRest? WithoutFan { get; init; }

    /// <summary>Heat of everything in it, with everything on.</summary>
    public double HeatW => Heats.Sum(heat => heat.MostW);

    /// <summary>Height between the middles of its lowest and highest opening; from floor to top where it has not two at different heights.</summary>
    public double OpeningsApartM => Space.Vents.Count > 0 && Space.Vents.Max(vent => vent.HeightM) - Space.Vents.Min(vent => vent.HeightM) is > 0 and var apart ? apart : Space.To.ZM - Space.From.ZM;

    /// <summary>Free area of each of two openings, low and high, that keeps it at a temperature by its own draught; null where none does or it cannot be told.</summary>
    public double? OpeningNeededCm2(double limitC)
    {
        if (Input is null || OpeningsApartM <= 0 || AirAroundC is not { } air)
        {
            return null;
        }

        double lost = Input.Sides.Sum(side => side.ConductanceWPerK * (limitC - side.OutsideC!.Value));
        return SpaceHeat.OpeningNeededM2(Input.HeatW - lost, limitC, air, OpeningsApartM) * 1e4;
    }

    /// <summary>Temperature of the air that openings take in, or would.</summary>
    public double? AirAroundC { get; init; }

    /// <summary>How it warms from the air around it; null where it cannot be told.</summary>
    public ThermalResponseResult? Response() => Input is null || Most is null ? null
        : SpaceHeat.Response(new SpaceHeatInput(Space.Id, [Input]), AirAroundC ?? Input.Sides.Min(side => side.OutsideC!.Value));

    /// <summary>Somebody described how heat leaves it.</summary>
    public static bool IsDescribed(Space space)
    {
        ArgumentNullException.ThrowIfNull(space);
        return space.Walls.Count > 0 || space.Vents.Count > 0 || space.FanM3PerH is not null;
    }
}
