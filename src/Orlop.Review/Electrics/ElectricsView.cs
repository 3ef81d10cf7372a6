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
    private readonly Dictionary<(string Cable, string Condition), AmpacityOfCable> _ampacities = [];
    private readonly Dictionary<(string Cable, string Condition), int> _loadedCores = [];
    private readonly Dictionary<(string Way, string Condition), int> _loadedInWay = [];
    private readonly Dictionary<string, SystemVolts> _systemV = new(StringComparer.Ordinal);
    private readonly Dictionary<string, NetworkBuilder> _builders = new(StringComparer.Ordinal);

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
            BuiltNetwork built = BuilderOf(networkCase.ConditionId).Build(networkCase);
            if (networkCase.StartingLoadId is not null)
            {
                built = built with { Network = StartTemperatures.Hold(built.Network, Solve(networkCase with { StartingLoadId = null })) };
            }

            _solved[networkCase] = solved = new SolvedNetwork(built, GroupsOf(built.Network));
        }

        return solved;
    }

    /// <summary>The network of a condition with its batteries charged as given.</summary>
    public SolvedNetwork Solve(Condition condition, ChargeCase charge) => Solve(new NetworkCase(condition.Id, charge));

    /// <summary>What carries power to what in a condition.</summary>
    public SupplyPaths PathsIn(Condition condition) => Cached(_paths, condition.Id, () => SupplyPaths.Of(Boat, Wiring, condition.Id));

    /// <summary>How well each node is protected in a condition.</summary>
    public ProtectionReach ReachIn(Condition condition) => Cached(_reaches, condition.Id, () => ProtectionReach.Of(this, condition.Id));

    /// <summary>What a cable may carry in a condition.</summary>
    internal AmpacityOfCable AmpacityOf(Cable cable, Condition condition) =>
        Cached(_ampacities, (cable.Id, condition.Id), () => AmpacityOfCable.Of(this, cable, condition));

    /// <summary>How many cores of a cable are loaded in a condition.</summary>
    internal int LoadedCoresOf(Cable cable, Condition condition) =>
        Cached(_loadedCores, (cable.Id, condition.Id), () => LoadedCurrents.LoadedCores(this, condition, cable));

    /// <summary>How many cores are loaded in a way in a condition.</summary>
    internal int LoadedCoresIn(string way, Condition condition) =>
        Cached(_loadedInWay, (way, condition.Id), () => Boat.All<Cable>().Where(cable => cable.Run.Any(leg => leg.Way == way)).Sum(cable => LoadedCoresOf(cable, condition)));

    /// <summary>Highest nominal voltage of the sources that reach a cable, with everything closed; null when none does.</summary>
    internal double? SystemV(Cable cable) => Cached(_systemV, cable.Id, () => new SystemVolts(SystemVoltage
        .Sources(this, cable.Cores.SelectMany(core => new[] { core.From.ToString(), core.To.ToString() })).Select(SystemVoltage.NominalV).Max())).NominalV;

    private sealed record SystemVolts(double? NominalV);

    private sealed record FaultCurrents(ImmutableArray<FaultCurrentResult?> Each);

    /// <summary>Greatest bolted fault current between each pair of nodes of a network, remembered; null where the two are joined.</summary>
    internal ImmutableArray<FaultCurrentResult?> FaultsIn(Network network, IReadOnlyList<(string Plus, string Minus)> pairs) => _memo.Get(
        (NetworkKey.Of(network), string.Join('\n', pairs)), () => new FaultCurrents(FaultCurrent.AtEach(network, pairs))).Each;

    private NetworkBuilder BuilderOf(string conditionId) => Cached(
        _builders, conditionId, () => new NetworkBuilder(Boat, Wiring, Practice, Conditions.Single(condition => condition.Id == conditionId)));

    private static TValue Cached<TKey, TValue>(Dictionary<TKey, TValue> cache, TKey key, Func<TValue> make)
        where TKey : notnull
    {
        if (!cache.TryGetValue(key, out TValue? value))
        {
            cache[key] = value = make();
        }

        return value;
    }

    private sealed record SolvedGroups(ImmutableArray<SolvedGroup> Groups);

    // A network met before is not even split again.
    private ImmutableArray<SolvedGroup> GroupsOf(Network network) => _memo.Get(
        NetworkKey.Of(network), () => new SolvedGroups([.. NetworkGroups.Split(network).Select(SolveGroup)])).Groups;

    private SolvedGroup SolveGroup(Network group)
    {
        _token.ThrowIfCancellationRequested();
        return _memo.Get(NetworkKey.Of(group), () => new SolvedGroup(group, NetworkSolver.Solve(group, _token)));
    }
}
