namespace Orlop.Boat.Validation;

/// <summary>Collects problems; the first said of a place stands, so that one mistake is told once.</summary>
internal sealed class ProblemList
{
    private readonly List<(Spot Spot, Problem Problem)> _problems = [];
    private readonly HashSet<string> _paths = new(StringComparer.Ordinal);

    public int Count => _problems.Count;

    /// <summary>Something was said of this place already.</summary>
    public bool Has(Spot spot) => _paths.Contains(spot.ToString());

    public void Add(Spot spot, string found, string allowed, string message, string? about = null)
    {
        string path = spot.ToString();
        if (_paths.Add(path + about))
        {
            _problems.Add((spot, new Problem(path, found, allowed, message)));
        }
    }

    /// <summary>In the order of the boat's things.</summary>
    public IReadOnlyList<Problem> InOrder() => [.. WithSpots().Select(entry => entry.Problem)];

    /// <summary>The same, with the place as it was walked to.</summary>
    public IEnumerable<(Spot Spot, Problem Problem)> WithSpots() => _problems.OrderBy(entry => entry.Spot.Order);
}
