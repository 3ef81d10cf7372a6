using System.Collections.Concurrent;
using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Conductors;
using Orlop.Electrics.Heat;
using Orlop.Electrics.Isolation;
using Orlop.Electrics.Protection;
using Orlop.Electrics.Starts;
using Orlop.Review.Electrics.AcSide;
using Orlop.Review.Heat;
using Orlop.Review.Isolation;
using Orlop.Review.Networks;
using Orlop.Review.Practices;
using Orlop.Review.Ways;

namespace Orlop.Review.Electrics;

/// <summary>What the checks of the electrics read: the boat, its wiring, and its networks solved when first asked for. Safe from several threads.</summary>
public sealed class ElectricsView
{
    private readonly CancellationToken _token;
    private readonly ElectricThings _things;
    private ReachingSources? _reaching;
    private FaultsToEarth? _faultsToEarth;
    private readonly CaseNetworks _cases;
    private readonly ConcurrentDictionary<NetworkCase, SolvedNetwork> _solved = [];
    private readonly ConcurrentDictionary<(string Condition, ChargeCase Charge), SolvedNetwork> _charged = [];
    private readonly ConcurrentDictionary<string, SupplyPaths> _paths = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, ProtectionReach> _reaches = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<(string Cable, string Condition), AmpacityOfCable> _ampacities = [];
    private readonly ConcurrentDictionary<(string Cable, string Condition), int> _loadedCores = [];
    private readonly ConcurrentDictionary<(string Way, string Condition), int> _loadedInWay = [];
    private readonly ConcurrentDictionary<(string Taker, string Condition), ShortestWay> _ways = [];
    private readonly ConcurrentDictionary<string, KnownGates> _gates = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, SpaceWarmths> _warmths = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<(string Way, string Condition), BundleWarmth> _bundles = [];
    private readonly ConcurrentDictionary<string, FarEnds> _farEnds = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, SystemVolts> _systemV = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, GreatestCurrents> _currents = new(StringComparer.Ordinal);
    private ILookup<string, Cable>? _alongWays;
    private StudRings? _rings;
    private WaysView? _alongRuns;

    public ElectricsView(BoatModel boat, Practice? practice, Memo memo, CancellationToken token)
    {
        Boat = boat;
        Practice = practice;
        Memo = memo;
        _token = token;
        _things = new ElectricThings(boat, memo);
        Wiring = memo.Get(_things.Wired, () => Wiring.Of(boat));
        Conditions = [.. boat.All<Condition>()];
        Grounding = memo.Get((Wiring, _things.Supplying), () => Grounding.Of(boat, Wiring));
        CrankingMotors = [.. boat.All<ElectricLoad>().Where(load => load.IsCrankingMotor)];
        Air = new SpaceAir(boat, practice, WarmthsIn);
        Strings = new StringsByCondition(boat, Wiring, Conditions, _things, memo);
        Faults = new NetworkFaults(memo, Wiring, _things);
        _cases = new CaseNetworks(boat, _things, Wiring, practice, Air, memo, token);
    }

    public BoatModel Boat { get; }

    /// <summary>The chosen practice; null when the boat has chosen none, and every limit is unknown.</summary>
    public Practice? Practice { get; }

    internal Memo Memo { get; }

    public Wiring Wiring { get; }

    public ImmutableArray<Condition> Conditions { get; }

    /// <summary>The loads that crank an engine.</summary>
    internal ImmutableArray<ElectricLoad> CrankingMotors { get; }

    /// <summary>The temperature of the air in each space.</summary>
    internal SpaceAir Air { get; }

    /// <summary>The strings of her batteries.</summary>
    internal StringsByCondition Strings { get; }

    /// <summary>The faults of her networks.</summary>
    internal NetworkFaults Faults { get; }

    /// <summary>Which nodes stay at the hull's potential.</summary>
    public Grounding Grounding { get; }

    /// <summary>The network of a case; its groups are solved when first asked.</summary>
    public SolvedNetwork Solve(NetworkCase networkCase) => Cached(
        _solved, networkCase, (View: this, Case: networkCase), static asked => asked.View._cases.Solve(asked.Case, asked.View.Conditions.Single(condition => condition.Id == asked.Case.ConditionId)));

    /// <summary>The network of a condition with its batteries charged as given.</summary>
    public SolvedNetwork Solve(Condition condition, ChargeCase charge)
    {
        ArgumentNullException.ThrowIfNull(condition);
        return Cached(_charged, (condition.Id, charge), (View: this, condition.Id, charge), static asked => asked.View.Solve(new NetworkCase(asked.Id, asked.charge)));
    }

    /// <summary>
    /// Works out what most checks ask for, a condition beside the other, so that checks that run beside each other seldom work out or wait for
    /// the same.
    /// </summary>
    internal void SolveAhead(CancellationToken token) => Parallel.ForEach(
        Partitioner.Create(Conditions, EnumerablePartitionerOptions.NoBuffering),
        new ParallelOptions { CancellationToken = token },
        condition =>
        {
            _ = FarEndsIn(condition);
            foreach (Cable cable in Boat.All<Cable>())
            {
                _ = AmpacityOf(cable, condition);
            }
        });

    /// <summary>What carries power to what in a condition.</summary>
    public SupplyPaths PathsIn(Condition condition) => Cached(_paths, condition.Id, (View: this, condition.Id), static asked => asked.View.Memo.Get(
        asked.View._things.ShapeIn(asked.View.Wiring, asked.Id), () => SupplyPaths.Of([.. asked.View.Boat.All<Part>()], asked.View.Wiring, asked.Id)));

    /// <summary>How well each node is protected in a condition.</summary>
    public ProtectionReach ReachIn(Condition condition) => Cached(_reaches, condition.Id, (View: this, condition.Id), static asked => asked.View.Reach(asked.Id));

    private ProtectionReach Reach(string conditionId) => Memo.Get(
        ProtectionReach.KeyOf(Wiring, _things.Supplying, conditionId), () => new ProtectionReach([.. _things.Supplying.Things.OfType<Part>()], Wiring, Grounding, conditionId));

    /// <summary>The sources that reach any terminal of a part without passing a grounded node, with everything closed.</summary>
    internal IEnumerable<Part> SourcesReaching(Part part) => SourcesReaching(part.TerminalNames.Select(name => part.At(name).ToString()));

    /// <summary>The sources that reach any of these nodes without passing a grounded node, with everything closed.</summary>
    internal IEnumerable<Part> SourcesReaching(IEnumerable<string> nodes) => (_reaching ??= Memo.Get(
        (Wiring, _things.Supplying), () => new ReachingSources(_things.Supplying.Things.OfType<Part>(), Wiring, Grounding))).To(nodes);

    /// <summary>The shortest way from a source to a taker in a condition.</summary>
    internal ShortestWay WayTo(Part taker, Condition condition) => Cached(_ways, (taker.Id, condition.Id), (View: this, Taker: taker, condition.Id), static asked => asked.View.Memo.Get(
        (asked.View._things.ShapeIn(asked.View.Wiring, asked.Id), asked.Taker.Id), () => ShortestWay.Of(Chain.Trace(asked.View.Boat, asked.View.Wiring, asked.Taker, asked.Id))));

    /// <summary>The source at the end of the shortest way from a load in a condition; null when none feeds it.</summary>
    internal Part? SourceOf(ElectricLoad load, Condition condition) => WayTo(load, condition).SourceId is { } id ? Boat.Find<Part>(id) : null;

    /// <summary>How warm the described spaces get in a condition.</summary>
    internal SpaceWarmths WarmthsIn(Condition condition) => Cached(_warmths, condition.Id, (View: this, condition), static asked => new SpaceWarmths(asked.View, asked.condition));

    /// <summary>How warm the cables of a way get together in a condition.</summary>
    internal BundleWarmth BundleIn(Way way, Condition condition) => Cached(_bundles, (way.Id, condition.Id), (View: this, way, condition), static asked => BundleWarmth.Of(asked.View, asked.way, asked.condition));

    /// <summary>Cables together, remembered by content.</summary>
    internal BundleResult HeatOf(BundleInput input) => Memo.Get(input, () => BundleHeat.Steady(input));

    /// <summary>What a cable may carry in a condition.</summary>
    internal AmpacityOfCable AmpacityOf(Cable cable, Condition condition) =>
        Cached(_ampacities, (cable.Id, condition.Id), (View: this, cable, condition), static asked => AmpacityOfCable.Of(asked.View, asked.cable, asked.condition));

    /// <summary>What a conductor may carry, remembered by what it is reckoned from.</summary>
    internal AmpacityResult AmpacityFor(AmpacityInput input) => Memo.Get(
        (input.Table.Rows, input.BundleFactors?.Rows, input.AreaMm2, input.InsulationC, input.AmbientC, input.LoadedCount, input.AmbientFactor), () => Ampacity.Calculate(input));

    /// <summary>The greatest currents of a condition.</summary>
    internal GreatestCurrents CurrentsIn(Condition condition) =>
        Cached(_currents, condition.Id, (View: this, condition), static asked => new GreatestCurrents(asked.View, asked.condition));

    /// <summary>How many cores of a cable are loaded in a condition.</summary>
    internal int LoadedCoresOf(Cable cable, Condition condition) =>
        Cached(_loadedCores, (cable.Id, condition.Id), (View: this, cable, condition), static asked => LoadedCurrents.LoadedCores(asked.View, asked.condition, asked.cable));

    /// <summary>How many cores are loaded in a way in a condition.</summary>
    internal int LoadedCoresIn(string way, Condition condition) =>
        Cached(_loadedInWay, (way, condition.Id), (View: this, way, condition), static asked => asked.View.CablesAlong(asked.way).Sum(cable => asked.View.LoadedCoresOf(cable, asked.condition)));

    /// <summary>The cables that run along a way, in the owner's order.</summary>
    internal IEnumerable<Cable> CablesAlong(string way) => (_alongWays ??= Boat.All<Cable>()
        .SelectMany(cable => cable.Run.Select(leg => leg.Way).OfType<string>().Distinct().Select(id => (Way: id, Cable: cable)))
        .ToLookup(along => along.Way, along => along.Cable, StringComparer.Ordinal))[way];

    /// <summary>Highest nominal voltage of the sources that reach a cable, with everything closed; null when none does.</summary>
    internal double? SystemV(Cable cable) => Cached(_systemV, cable.Id, (View: this, cable), static asked => new SystemVolts(asked.View
        .SourcesReaching(asked.cable.Cores.SelectMany(core => new[] { core.From.ToString(), core.To.ToString() })).Select(SystemVoltage.NominalV).Max())).NominalV;

    private sealed record SystemVolts(double? NominalV);

    private sealed record KnownGates(OperatingGates? Gates);

    /// <summary>The operating times of a fuse or breaker on direct current, looked up once.</summary>
    internal OperatingGates? GatesOnDc(Protection device) => Cached(_gates, device.Id, device, static asked => new KnownGates(DeviceGates.OnDc(asked))).Gates;

    /// <summary>Which of two devices in series opens first at every current, remembered by the two, the greatest fault and what the earlier carries besides.</summary>
    internal SelectivityResult SelectivityOf(Protection earlier, Protection nearer, SelectivityInput input) =>
        Memo.Get((earlier, nearer, input.GreatestA, input.BesidesA), () => Selectivity.Between(input));

    /// <summary>A start in time, remembered by what it is made from.</summary>
    internal StartResult StartOf(StartInput input) => Memo.Get(
        (new NetworkKey(input.Network), input.Stores.FirstOrDefault(), input.Currents.FirstOrDefault(), input.HorizonS), () => StartStudy.Run(input, _token));

    /// <summary>The far ends of conductors in a condition.</summary>
    internal FarEnds FarEndsIn(Condition condition) => Cached(_farEnds, condition.Id, (View: this, condition), static asked => FarEnds.Of(asked.View, asked.condition));

    /// <summary>The ways that her cables take.</summary>
    internal WaysView Ways => _alongRuns ??= new WaysView(Boat, Practice, Memo, this, _token);

    /// <summary>What is bolted to each terminal.</summary>
    public StudRings Rings => _rings ??= StudRings.Of(Boat);

    private sealed record FaultsToEarth(ImmutableArray<EarthFault> All);

    /// <summary>The fault to earth of each circuit of alternating current, with each source that feeds it.</summary>
    internal ImmutableArray<EarthFault> EarthFaults => (_faultsToEarth ??= new FaultsToEarth([.. AcCircuits.Of(this).Select(circuit => EarthFault.Of(this, circuit))])).All;

    /// <summary>How each of these parts is made dead.</summary>
    internal IEnumerable<(Part Part, IsolationResult? Plan)> PlansToMakeDead(IReadOnlyList<Part> parts) => IsolationPlans.PlanEach(Boat, Wiring, parts, Memo);

    // Two threads may make the same; the first is kept. What is asked for thousands of times is made by a static function, so that asking allocates nothing.
    private static TValue Cached<TKey, TState, TValue>(ConcurrentDictionary<TKey, TValue> cache, TKey key, TState state, Func<TState, TValue> make)
        where TKey : notnull => cache.TryGetValue(key, out TValue? value) ? value : cache.GetOrAdd(key, make(state));
}
