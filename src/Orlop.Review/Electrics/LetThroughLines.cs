using Orlop.Electrics.Protection;
using Orlop.Review.Findings;

namespace Orlop.Review.Electrics;

/// <summary>The energy that devices let through, as a line of working.</summary>
internal static class LetThroughLines
{
    private const string What = "It lets through at most";

    /// <summary>An energy as an amount.</summary>
    public static Amount EnergyOf(double a2s) => new(a2s, "A2S");

    /// <summary>How an energy was found.</summary>
    /// <param name="found">The energy; one that has a bound.</param>
    /// <param name="source">Where the time or the energy is from.</param>
    /// <param name="isFromMemory">That source was not seen.</param>
    public static WorkingLine Of(LetThroughEnergy found, string source, bool isFromMemory) => found.Basis switch
    {
        LetThroughBasis.Sheet => new WorkingLine(What, "operating I²t", EnergyOf(found.A2S), source, isFromMemory),
        LetThroughBasis.LastGate => new WorkingLine(
            What, Formula.Of("{0} × {1} × {1} × {2}", v => v[0] * v[1] * v[1] * v[2], LetThrough.ArcingRatio, found.CurrentA, found.TimeS!.Value), EnergyOf(found.A2S),
            "three times the energy at its last gate: beyond it a fuse melts on no more, and arcing adds; common practice, no source", isFromMemory),
        _ => new WorkingLine(What, Formula.Of("{0} × {0} × {1}", v => v[0] * v[0] * v[1], found.CurrentA, found.TimeS!.Value), EnergyOf(found.A2S), source, isFromMemory),
    };
}
