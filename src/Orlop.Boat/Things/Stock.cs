using System.ComponentModel;
using Orlop.Boat.Values;

namespace Orlop.Boat.Things;

/// <summary>What a stock item is for.</summary>
public enum StockUse { Cable, Termination, Fuse, Plug, Device, Fastening, Label, Consumable }

/// <summary>Something that lies ready, at home or on board.</summary>
[Kind("stock")]
public sealed record StockItem : Thing
{
    [Description("What it is for.")]
    public required StockUse Use { get; init; }

    [Description("Cross-section, for a cable or a termination."), Allowed(0.2, 500)]
    public Quantity? AreaMm2 { get; init; }

    [Description("Cores of a cable in one sheath; 1 for a single conductor. Left out, that of its catalogue part."), Allowed(1, 5)]
    public int? CoreCount { get; init; }

    [Description("Temperature a cable's insulation is rated for, as printed on it. Left out, that of its catalogue part."), Allowed(40, 250)]
    public Quantity? InsulationC { get; init; }

    [Description("How a cable's conductors are stranded. Left out, as its catalogue part says.")]
    public StrandClass? Strands { get; init; }

    [Description("Stud it fits, for a ring or fork."), Allowed(2, 16)]
    public double? StudMm { get; init; }

    [Description("Rating, for a fuse, plug or device."), Allowed(0.05, 5000)]
    public Quantity? RatedA { get; init; }

    [Description("Shape or key of a plug, in the words that the plug on board has.")]
    public string? Keying { get; init; }

    [Description("How it is made off, for a termination.")]
    public TerminationMeans? Means { get; init; }

    [Description("Length left, for a cable."), Allowed(0, 10_000)]
    public Quantity? LengthM { get; init; }

    [Description("How many there are, for anything else."), Allowed(0, 100_000)]
    public int? PieceCount { get; init; }

    [Description("Where it lies.")]
    public string? Where { get; init; }

    [Description("Id of the catalogue part that it is one of. Mending takes from stock only what says so: a rating alone does not tell breaking capacity or key. A cable may say its cores, insulation and stranding itself; without them neither mending nor the work pack counts on it.")]
    public string? Catalogue { get; init; }
}

/// <summary>Work a tool is taken along for.</summary>
public enum ToolUse { Crimping, Cutting, Stripping, Measuring, Drilling, Tightening, Labelling, Protecting, Pulling }

/// <summary>A tool the owner has.</summary>
[Kind("tool")]
public sealed record Tool : Thing
{
    [Description("Work it is taken along for.")]
    public required ToolUse Use { get; init; }

    [Description("Smallest conductor it works on."), Allowed(0, 500)]
    public double? FromMm2 { get; init; }

    [Description("Largest conductor it works on."), Allowed(0, 500)]
    public double? ToMm2 { get; init; }

    [Description("Power from the wall while it works, for a tool with a lead."), Allowed(1, 20_000)]
    public Quantity? RunningW { get; init; }

    [Description("Energy of one of its battery packs, for a cordless tool."), Allowed(1, 5000)]
    public Quantity? PackWh { get; init; }

    [Description("Mass."), Allowed(0, 500)]
    public Quantity? MassKg { get; init; }

    [Description("Where it lies.")]
    public string? Where { get; init; }
}
