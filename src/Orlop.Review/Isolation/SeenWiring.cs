using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Isolation;

namespace Orlop.Review.Isolation;

/// <summary>
/// A boat's wiring made ready to plan on. Three kinds of source are stopped whole (common practice, no source): the shore lead comes out before
/// anything that it feeds with mains is worked on; an engine that is stopped for one of its chargers is stopped for all; panels are covered where they
/// keep the work live, and what else feeds it is opened all the same.
/// </summary>
internal sealed class SeenWiring
{
    private readonly IsolationInput _input;
    private readonly HashSet<string> _nodes;
    private readonly HashSet<string> _mains;
    private readonly Dictionary<string, Stopped> _kinds;
    private readonly Dictionary<Stopped, PreparedIsolation?> _prepared = [];

    public SeenWiring(BoatModel boat, IsolationInput input)
    {
        _input = input;
        _nodes = [.. input.Edges.SelectMany(edge => new[] { edge.A, edge.B }), .. input.Sources.SelectMany(source => source.PoleNodes), .. input.Feeds.SelectMany(feed => new[] { feed.InputNode, feed.OutputNode })];
        _kinds = boat.All<Part>().Where(part => KindOf(part) != Stopped.Nothing).ToDictionary(part => part.Id, KindOf, StringComparer.Ordinal);
        _mains = MainsReach.Of(input, boat.All<ShoreInlet>().Select(inlet => Poles.Giving(inlet)!.Plus));
    }

    [Flags]
    private enum Stopped
    {
        Nothing = 0,
        Shore = 1,
        Engine = 2,
        Sun = 4,
    }

    /// <summary>The plan that makes these nodes dead; null, which means unknown, when none of them is in the wiring or the boat has no source.</summary>
    public IsolationResult? Find(IEnumerable<string> nodes)
    {
        ImmutableArray<string> targets = [.. nodes.Where(_nodes.Contains).Distinct(StringComparer.Ordinal)];
        if (targets.IsEmpty || _input.Sources.IsEmpty)
        {
            return null;
        }

        Stopped stopped = targets.Any(_mains.Contains) ? Stopped.Shore : Stopped.Nothing;
        ImmutableArray<IsolationSource> told = [.. _input.Sources.Where(source => stopped.HasFlag(Stopped.Shore) && KindOf(source) == Stopped.Shore)];
        IsolationResult plan = Planned(stopped, told, targets);
        bool isSunny = plan.CannotBeMadeDead.Any(node => _kinds.GetValueOrDefault(node.SourceId) == Stopped.Sun);
        if (isSunny)
        {
            stopped |= Stopped.Sun;
            plan = Planned(stopped, told, targets);
        }

        if (_input.Sources.FirstOrDefault(source => KindOf(source) == Stopped.Engine && plan.Openings.Any(opening => opening.Id == source.Id)) is { } engine)
        {
            stopped |= Stopped.Engine;
            plan = Planned(stopped, [.. told, engine], targets);
        }

        return WithoutProofsOfTheLive(isSunny ? InLight(plan, stopped, targets) : plan);
    }

    /// <summary>A plan made on other wiring, with what stays live and where the meter is tried as they are in this; see <see cref="IsolationPlans.CarriedOut"/>.</summary>
    public IsolationResult CarriedOut(IsolationResult plan, IEnumerable<string> nodes, IEnumerable<string> alsoOff)
    {
        ImmutableArray<string> targets = [.. nodes.Where(_nodes.Contains).Distinct(StringComparer.Ordinal)];
        if (targets.IsEmpty)
        {
            return plan;
        }

        HashSet<string> off = [.. plan.Openings.SelectMany(opening => opening.EdgeIds), .. alsoOff], told = [.. plan.Openings.Select(opening => opening.Id)];
        Stopped stopped = _input.Sources.Where(source => told.Contains(source.Id)).Aggregate(Stopped.Nothing, (all, source) => all | KindOf(source));
        IsolationResult live = new PreparedIsolation(_input with
        {
            Edges = [.. _input.Edges.Select(edge => off.Contains(edge.Id) ? edge with { IsClosed = false } : edge)],
            Sources = [.. Running(stopped).Where(source => !told.Contains(source.Id)).Select(source => source with { Stop = null })],
        }).Find(targets);
        return plan with { StaysLive = live.StaysLive, TryMeterAtNode = live.TryMeterAtNode };
    }

    // What is stopped first, then the plan for what still runs. With nothing left running, the plan for everything stops it all the same.
    private IsolationResult Planned(Stopped stopped, ImmutableArray<IsolationSource> told, ImmutableArray<string> targets)
    {
        if (Prepared(stopped) is not { } rest)
        {
            return Prepared(Stopped.Nothing)!.Find(targets);
        }

        IsolationResult plan = rest.Find(targets);
        ImmutableArray<Opening> stops = [.. told.Select(source => new Opening(source.Id, null, source.Stop!.How, [], source.Stop.Cost))];
        return stops.IsEmpty ? plan : plan with
        {
            Status = plan.Status == IsolationStatus.AlreadyDead ? IsolationStatus.CanBeMadeDead : plan.Status,
            Openings = [.. stops, .. plan.Openings],
            Cost = plan.Cost + stops.Sum(stop => (long)stop.Cost),
        };
    }

    // A cover may let light through: what the panels reach once all is opened is still called live.
    private IsolationResult InLight(IsolationResult plan, Stopped stopped, ImmutableArray<string> targets)
    {
        HashSet<string> opened = [.. plan.Openings.SelectMany(opening => opening.EdgeIds)];
        IsolationResult lit = new PreparedIsolation(_input with
        {
            Edges = [.. _input.Edges.Select(edge => opened.Contains(edge.Id) ? edge with { IsClosed = false } : edge)],
            Sources = Running(stopped & ~Stopped.Sun),
        }).Find(targets);
        return lit with { Openings = plan.Openings, Cost = plan.Cost, KeepOpen = plan.KeepOpen };
    }

    private static IsolationResult WithoutProofsOfTheLive(IsolationResult plan)
    {
        HashSet<string> live = [.. plan.CannotBeMadeDead.Select(node => node.Node)];
        return live.Count == 0 ? plan : plan with { Proofs = [.. plan.Proofs.Where(proof => !live.Contains(proof.Node) && (proof.OtherNode is null || !live.Contains(proof.OtherNode)))] };
    }

    private PreparedIsolation? Prepared(Stopped stopped)
    {
        if (!_prepared.TryGetValue(stopped, out PreparedIsolation? prepared))
        {
            ImmutableArray<IsolationSource> running = Running(stopped);
            prepared = _prepared[stopped] = running.IsEmpty ? null : new PreparedIsolation(_input with { Sources = running });
        }

        return prepared;
    }

    private ImmutableArray<IsolationSource> Running(Stopped stopped) => [.. _input.Sources.Where(source => (KindOf(source) & stopped) == Stopped.Nothing)];

    private Stopped KindOf(IsolationSource source) => _kinds.GetValueOrDefault(source.Id);

    private static Stopped KindOf(Part part) => part switch
    {
        ShoreInlet => Stopped.Shore,
        Charger { Drive: ChargerDrive.Engine } => Stopped.Engine,
        Charger { Drive: ChargerDrive.Sun } => Stopped.Sun,
        _ => Stopped.Nothing,
    };
}
