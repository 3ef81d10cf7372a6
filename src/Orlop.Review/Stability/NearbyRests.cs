using Orlop.Hull.Floating;
using Orlop.Hull.Measuring;

namespace Orlop.Review.Stability;

/// <summary>Where boats come to rest whose weight is one standard deviation off this one's, one number at a time: solved once, read by every check on the boat at rest.</summary>
internal sealed class NearbyRests
{
    private readonly LoadedBoat _loaded;
    private readonly Dictionary<FloatingInput, FloatingResult> _rests = [];

    /// <param name="loaded">The boat.</param>
    /// <param name="rests">Where her neighbours come to rest, in their order.</param>
    public NearbyRests(LoadedBoat loaded, IReadOnlyList<FloatingResult> rests)
    {
        _loaded = loaded;
        foreach ((FloatingInput boat, FloatingResult rest) in ResultDeviation.Neighbours(loaded).Zip(rests))
        {
            _rests[boat] = rest;
        }
    }

    /// <summary>Where her neighbours come to rest, sought near where she does herself.</summary>
    public static IReadOnlyList<FloatingResult> Solved(LoadedBoat loaded, FloatingResult? rest) => [.. ResultDeviation.Neighbours(loaded).Select(boat => Equilibrium.Solve(boat, rest?.Position?.Attitude))];

    /// <summary>What is read of the boat at rest, with its band; infinitely wide where a neighbour does not come to rest afloat.</summary>
    public Banded Banded(double value, Func<FloatingPosition, double?> read) => Stability.Banded.Of(value, _loaded, SlopesOf(read));

    private WeightSlopes? SlopesOf(Func<FloatingPosition, double?> read) =>
        ResultDeviation.SlopesOf(_loaded, boat => _rests[boat] is { Status: FloatingStatus.Floats, Position: { } at } ? read(at) : null);
}
