using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Boat.Chains;

/// <summary>A circuit as a person thinks of it: a load, where it is fed from, what protects it, its cable and what stands in between.</summary>
public sealed record CircuitPlan
{
    /// <summary>What people call the load; ids and names of everything else are made of it.</summary>
    public required string LoadName { get; init; }

    /// <summary>Nominal voltage of the load, in volts.</summary>
    public required Quantity NominalV { get; init; }

    /// <summary>Running power; this or the current must be given.</summary>
    public Quantity? RunningW { get; init; }

    /// <summary>Running current; this or the power must be given.</summary>
    public Quantity? RunningA { get; init; }

    /// <summary>Starting over running current, where it starts hard.</summary>
    public Quantity? StartRatio { get; init; }

    /// <summary>How long the start lasts, in seconds.</summary>
    public Quantity? StartS { get; init; }

    /// <summary>How much voltage may be lost on the way.</summary>
    public DropClass Drop { get; init; } = DropClass.General;

    /// <summary>Conditions in which the load is on.</summary>
    public ValueList<string> OnIn { get; init; } = [];

    /// <summary>Share of the time that it runs in those, 0 to 1.</summary>
    public double DutyFraction { get; init; } = 1;

    /// <summary>Terminal that feeds it: <c>main-plus.bar</c>, <c>bank.+</c>.</summary>
    public required Terminal From { get; init; }

    /// <summary>A wire leads from that terminal to the first device; otherwise the device is bolted to it.</summary>
    public bool HasFeedWire { get; init; }

    /// <summary>Length of that wire; null where it is not known.</summary>
    public Quantity? FeedM { get; init; }

    /// <summary>Terminal that the current returns to.</summary>
    public required Terminal Return { get; init; }

    /// <summary>Fuse or breaker at the feeding end; null for none.</summary>
    public ProtectionMeans? Protection { get; init; }

    /// <summary>Rating of that fuse or breaker; needed where there is one.</summary>
    public Quantity? ProtectionA { get; init; }

    /// <summary>An isolator stands behind the protection.</summary>
    public bool HasIsolator { get; init; }

    /// <summary>The load is plugged in at the end of the cable.</summary>
    public bool HasPlug { get; init; }

    /// <summary>Length of the lead between plug and load; the cable's own length is without it.</summary>
    public Quantity? LeadM { get; init; }

    /// <summary>Cross-section of each core, in mm².</summary>
    public required Quantity AreaMm2 { get; init; }

    /// <summary>Length of the core to the load.</summary>
    public Quantity? OutM { get; init; }

    /// <summary>Length of the core back; as long as the one out when left out.</summary>
    public Quantity? BackM { get; init; }

    /// <summary>Temperature the insulation is rated for.</summary>
    public Quantity? InsulationC { get; init; }

    /// <summary>The way the cable follows; null when not known yet.</summary>
    public string? Way { get; init; }
}
