using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Networks;
using Orlop.Review.Networks;
using Orlop.Review.Practices;

namespace Orlop.Review.Electrics;

/// <summary>What the checks of the electrics read: the boat, its wiring, and its networks solved when first asked for.</summary>
public sealed class ElectricsView
{
    private readonly Memo _memo;
    private readonly CancellationToken _token;
    private readonly Dictionary<NetworkCase, SolvedNetwork> _solved = [];
    private readonly Dictionary<string, SupplyPaths> _paths = new(StringComparer.Ordinal);
    private readonly Dictionary<string, ProtectionReach> _reaches = new(StringComparer.Ordinal);

    public ElectricsView(BoatModel boat, Practice? practice, Memo memo, CancellationToken token)
    {
        Boat = boat;
        Practice = practice;
        Wiring = Wiring.Of(boat);
        Conditions = [.. boat.All<Condition>()];
        Grounding = Grounding.Of(boat, Wiring);
        _memo = memo;
        _token = token;
    }

    public BoatModel Boat { get; }

    /// <summary>The chosen practice; null when the boat has chosen none, and every limit is unknown.</summary>
    public Practice? Practice { get; }

    public Wiring Wiring { get; }

    public ImmutableArray<Condition> Conditions { get; }

    /// <summary>Which nodes stay at the hull's potential.</summary>
    public Grounding Grounding { get; }

    /// <summary>The network of a case, solved.</summary>
    public SolvedNetwork Solve(NetworkCase networkCase)
    {
        if (!_solved.TryGetValue(networkCase, out SolvedNetwork? solved))
        {
            Condition condition = Conditions.Single(condition => condition.Id == networkCase.ConditionId);
            BuiltNetwork built = NetworkBuilder.Build(Boat, Wiring, Practice, condition, networkCase);
            _solved[networkCase] = solved = new SolvedNetwork(built, [.. NetworkGroups.Split(built.Network).Select(SolveGroup)]);
        }

        return solved;
    }

    /// <summary>The network of a condition with its batteries charged as given.</summary>
    public SolvedNetwork Solve(Condition condition, ChargeCase charge) => Solve(new NetworkCase(condition.Id, charge));

    /// <summary>What carries power to what in a condition.</summary>
    public SupplyPaths PathsIn(Condition condition)
    {
        if (!_paths.TryGetValue(condition.Id, out SupplyPaths? paths))
        {
            _paths[condition.Id] = paths = SupplyPaths.Of(Boat, Wiring, condition.Id);
        }

        return paths;
    }

    /// <summary>How well each node is protected in a condition.</summary>
    public ProtectionReach ReachIn(Condition condition)
    {
        if (!_reaches.TryGetValue(condition.Id, out ProtectionReach? reach))
        {
            _reaches[condition.Id] = reach = ProtectionReach.Of(this, condition.Id);
        }

        return reach;
    }

    private SolvedGroup SolveGroup(Network group)
    {
        _token.ThrowIfCancellationRequested();
        return _memo.Get(NetworkKey.Of(group), () => new SolvedGroup(group, NetworkSolver.Solve(group, _token)));
    }
}
