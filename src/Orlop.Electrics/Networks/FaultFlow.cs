namespace Orlop.Electrics.Networks;

/// <summary>A fault, and what flows to it on which way.</summary>
public sealed class FaultFlow
{
    private readonly IReadOnlyDictionary<string, int> _branchOf;
    private readonly double[] _branchA;

    internal FaultFlow(FaultCurrentResult fault, IReadOnlyDictionary<string, int> branchOf, double[] branchA)
    {
        Fault = fault;
        _branchOf = branchOf;
        _branchA = branchA;
    }

    /// <summary>The fault itself.</summary>
    public FaultCurrentResult Fault { get; }

    /// <summary>
    /// Current of a conductor or contact during the fault, A, positive from its first end; null for a contact without resistance, whose two nodes are one, and for what is not in the network.
    /// </summary>
    public double? BranchA(string id) => _branchOf.TryGetValue(id, out var branch) ? _branchA[branch] : null;
}
