namespace Orlop.Electrics.Networks;

/// <summary>The ids under which the numbers of a result are found.</summary>
internal sealed class ResultIds(Wiring wiring)
{
    public IdIndex Nodes { get; } = new(wiring.NodeNames);

    public KnownBranches BranchesWithCurrent { get; } = new(wiring);

    public IdIndex HeatedConductors { get; } = new([.. wiring.Conductors.Where(c => c.Heating is not null).Select(c => c.Id)]);

    public IdIndex Sources { get; } = new(
        [.. wiring.Batteries.Select(b => b.Id), .. wiring.LimitedSources.Select(s => s.Id), .. wiring.Converters.Select(c => c.Id)]);

    public IdIndex Sinks { get; } = new([.. wiring.Loads.Select(l => l.Id), .. wiring.Converters.Select(c => c.Id)]);

    public IdIndex LimitedSources { get; } = new([.. wiring.LimitedSources.Select(s => s.Id)]);

    public IdIndex Converters { get; } = new([.. wiring.Converters.Select(c => c.Id)]);
}
