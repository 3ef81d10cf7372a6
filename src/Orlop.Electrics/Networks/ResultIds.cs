namespace Orlop.Electrics.Networks;

/// <summary>The ids under which the numbers of a result are found.</summary>
internal sealed class ResultIds
{
    public ResultIds(Wiring wiring)
    {
        Nodes = new IdIndex(wiring.NodeNames);
        BranchesWithCurrent = new KnownBranches(wiring);
        HeatedConductors = Heated(wiring);
        Sources = new IdIndex([.. wiring.Batteries.Select(b => b.Id), .. wiring.LimitedSources.Select(s => s.Id), .. wiring.Converters.Select(c => c.Id)]);
        Sinks = new IdIndex([.. wiring.Loads.Select(l => l.Id), .. wiring.Converters.Select(c => c.Id)]);
        LimitedSources = new IdIndex([.. wiring.LimitedSources.Select(s => s.Id)]);
        Converters = new IdIndex([.. wiring.Converters.Select(c => c.Id)]);
    }

    /// <summary>The ids of the same elements, of which others may warm.</summary>
    public ResultIds(Wiring wiring, ResultIds same)
    {
        (Nodes, BranchesWithCurrent, Sources, Sinks) = (same.Nodes, same.BranchesWithCurrent, same.Sources, same.Sinks);
        (LimitedSources, Converters) = (same.LimitedSources, same.Converters);
        HeatedConductors = Heated(wiring);
    }

    public IdIndex Nodes { get; }

    public KnownBranches BranchesWithCurrent { get; }

    public IdIndex HeatedConductors { get; }

    public IdIndex Sources { get; }

    public IdIndex Sinks { get; }

    public IdIndex LimitedSources { get; }

    public IdIndex Converters { get; }

    private static IdIndex Heated(Wiring wiring) => new([.. wiring.Conductors.Where(c => c.Heating is not null).Select(c => c.Id)]);
}
