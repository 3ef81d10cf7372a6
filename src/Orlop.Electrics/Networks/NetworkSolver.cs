using System.Diagnostics.CodeAnalysis;

namespace Orlop.Electrics.Networks;

/// <summary>
/// Solves a network for its steady operating point: potentials, currents and conductor temperatures, on the stable branch of higher
/// voltage. Equations and limits of use: docs/engines/network.md.
/// </summary>
public static class NetworkSolver
{
    /// <summary>
    /// Checks and solves. A network with faults, or one that cannot deliver what is asked, is a result that says so; it is no exception.
    /// </summary>
    /// <param name="progress">Told the part done, 0 to 1.</param>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    [SuppressMessage("Design", "CA1068", Justification = "Cancelling is asked for more often than progress.")]
    public static NetworkResult Solve(Network network, CancellationToken token = default, IProgress<double>? progress = null)
    {
        var (faults, wiring) = NetworkCheck.Examine(network);
        return faults.IsEmpty && wiring is not null
            ? PreparedNetwork.OfSound(wiring).Solve(token, progress)
            : new NetworkResult { Status = SolveStatus.FaultyNetwork, Faults = faults };
    }
}
