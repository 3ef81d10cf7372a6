namespace Orlop.Boat.Validation;

/// <summary>Collects problems; the first said of a place stands, so that one mistake is told once.</summary>
internal sealed class ProblemList
{
    private readonly List<(int Order, Problem Problem)> _problems = [];
    private readonly HashSet<string> _paths = new(StringComparer.Ordinal);

    public int Count => _problems.Count;

    public void Add(Spot spot, string found, string allowed, string message, string? about = null)
    {
        string path = spot.ToString();
        if (_paths.Add(path + about))
        {
            _problems.Add((spot.Order, new Problem(path, found, allowed, message)));
        }
    }

    /// <summary>In the order of the boat's things.</summary>
    public IReadOnlyList<Problem> InOrder() => [.. _problems.OrderBy(entry => entry.Order).Select(entry => entry.Problem)];
}
