using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Boat.Chains;

/// <summary>A usual chain to begin from. The numbers are common practice, no source, and marked as guesses; the review judges what becomes of them.</summary>
/// <param name="Name">What it is for.</param>
/// <param name="Plan">The plan with those numbers, without its ends.</param>
public sealed record CircuitTemplate(string Name, CircuitPlan Plan)
{
    /// <summary>All templates, for a boat of this voltage.</summary>
    public static IReadOnlyList<CircuitTemplate> For(double nominalV) =>
    [
        new("Light", Start("Light", nominalV, watts: 10, fuseA: 3, areaMm2: 1.5, DropClass.General) with { StartRatio = Guess(1) }),
        new("Navigation light", Start("Navigation light", nominalV, watts: 5, fuseA: 3, areaMm2: 1.5, DropClass.Critical) with { StartRatio = Guess(1) }),
        new("Pump", Start("Pump", nominalV, watts: 80, fuseA: 10, areaMm2: 2.5, DropClass.Critical) with { StartRatio = Guess(3), StartS = Guess(0.3) }),
        new("Radio or plotter", Start("Radio", nominalV, watts: 25, fuseA: 5, areaMm2: 2.5, DropClass.Critical) with { StartRatio = Guess(1) }),
        new("Socket for a portable tool", Start("Tool", nominalV, watts: 120, fuseA: 10, areaMm2: 2.5, DropClass.General) with { HasPlug = true, LeadM = Guess(2), StartRatio = Guess(3), StartS = Guess(0.5) }),
        new("Winch or windlass", Start("Winch", nominalV, watts: 1200, fuseA: 100, areaMm2: 35, DropClass.General) with { StartRatio = Guess(4), StartS = Guess(1), HasIsolator = true }),
    ];

    private static CircuitPlan Start(string name, double nominalV, double watts, double fuseA, double areaMm2, DropClass drop) => new()
    {
        LoadName = name,
        NominalV = nominalV,
        RunningW = Guess(watts),
        From = default,
        Return = default,
        Protection = ProtectionMeans.Fuse,
        ProtectionA = fuseA,
        AreaMm2 = areaMm2,
        Drop = drop,
    };

    private static Quantity Guess(double value) => new(value, Knowledge.Guessed);
}
